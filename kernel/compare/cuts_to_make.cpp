#include "kernel/compare/cuts_to_make.h"

#include "kernel/compare/nearly_alike.h"
#include "kernel/layout/cuts/asked.h"
#include "kernel/layout/cuts/moved.h"

#include <algorithm>
#include <cmath>
#include <string>

namespace roundlay {

namespace {

const Piece *only_one(const Layout &layout, std::string Piece::*by, const std::string &value) {
    const Piece *found = nullptr;
    for (const Piece &piece : layout.pieces) {
        if (piece.*by != value) continue;
        if (found) return nullptr;
        found = &piece;
    }
    return found;
}

/// What is written on a log goes with it; its tag is of its place.
const Piece *as_it_was(const Layout &found, const Piece &now) {
    if (!now.mark.empty())
        if (const Piece *same = only_one(found, &Piece::mark, now.mark)) return same;
    const Piece *there = only_one(found, &Piece::tag, now.tag);
    return there && (now.mark.empty() || there->mark.empty() || there->mark == now.mark) ? there : nullptr;
}

CutNumbers numbers_of(const Cut &cut) {
    CutNumbers numbers;
    put_numbers(numbers, cut);
    return numbers;
}

/// The cuts of a piece as it was, told in its frame as it is.
class Held {
  public:
    Held(const Piece &was, const Piece &is) {
        // A log that lies elsewhere now has its cuts where it had them.
        const Vec3 origin = was.tag == is.tag ? was.frame.to_local(is.frame.origin) : Vec3{};
        for (const Cut &cut : was.cuts) {
            if (is_mend(cut)) continue;
            cuts_.push_back(moved(cut, origin, was.blank, is.blank));
            numbers_.push_back(numbers_of(cuts_.back()));
        }
    }

    bool has(const Cut &cut) const {
        if (is_mend(cut)) return false;
        if (const Bore *bore = bore_of(cut)) return has_hole(*bore);
        const CutNumbers own = numbers_of(cut);
        return std::ranges::any_of(numbers_, [&](const CutNumbers &each) { return nearly_alike(each, own); });
    }

  private:
    /// A mend may have shortened it.
    bool has_hole(const Bore &bore) const {
        const auto near = [](double a, double b) { return std::abs(a - b) <= hair; };
        return std::ranges::any_of(cuts_, [&](const Cut &each) {
            const Bore *was = bore_of(each);
            return was && near(was->x, bore.x) && near(was->y, bore.y) &&
                   near(was->diameter, bore.diameter) && was->z_from <= bore.z_from + hair &&
                   was->z_to >= bore.z_to - hair;
        });
    }

    static constexpr double hair = 0.02; ///< mm, as nearly_alike
    std::vector<Cut> cuts_;              ///< but mends
    std::vector<CutNumbers> numbers_;
};

std::vector<bool> all_cuts(const Piece &piece) {
    return std::vector<bool>(piece.cuts.size(), true);
}

} // namespace

Indexed<CutsToMake, Piece> cuts_to_make(const Layout &found, const Layout &now) {
    Indexed<CutsToMake, Piece> all;
    for (const Piece &piece : now.pieces) {
        if (!is_old_wood(piece)) {
            all.push_back(all_cuts(piece));
            continue;
        }
        const Piece *was = as_it_was(found, piece);
        if (!was) {
            all.push_back({});
            continue;
        }
        std::vector<bool> make = all_cuts(piece);
        const Held held(*was, piece);
        std::transform(piece.cuts.begin(), piece.cuts.end(), make.begin(),
                       [&](const Cut &cut) { return !held.has(cut); });
        all.push_back(std::move(make));
    }
    return all;
}

} // namespace roundlay
