// What a cut is, as numbers by which it is compared.
#pragma once

#include "kernel/layout/cuts/blank.h"
#include "kernel/layout/cuts/cut.h"

#include <type_traits>
#include <vector>

namespace roundlay {

/// Put down one after another, cut by cut.
struct CutNumbers {
    std::vector<int> kinds;      ///< what is not measured: kinds, ends, sides, uses of cuts, in their order
    std::vector<double> numbers; ///< millimetres; a plane by its places at points a metre apart

    template <typename... All> void put(const All &...all) { (put_one(all), ...); }

  private:
    template <typename Number> void put_one(const Number &number) {
        if constexpr (std::is_floating_point_v<Number>)
            numbers.push_back(number);
        else
            kinds.push_back(static_cast<int>(number));
    }
    void put_one(const Vec3 &p) { put(p.x, p.y, p.z); }
    void put_one(const Plane &plane);
};

/// All that the wood depends on, and no tag or name.
void put_numbers(CutNumbers &all, const Blank &blank);
void put_numbers(CutNumbers &all, const Cut &cut);

} // namespace roundlay
