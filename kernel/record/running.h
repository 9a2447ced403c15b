// What is measured from a stated place: running dimensions along a log, heights from a level plane.
#pragma once

#include "kernel/measure/said.h"
#include "kernel/record/noted_length.h"

#include <span>
#include <string_view>
#include <variant>
#include <vector>

namespace roundlay {

/// The parts between running dimensions, the first from their zero on. Refused where one lies before the one
/// in front of it.
std::variant<std::vector<Length>, Said> parts_of(std::span<const Length> running);

/// A level plane through the house. The instrument must be moved, so that there are often several: each has
/// its offset from the first, up or down.
struct LevelPlane {
    std::string name;
    NotedLength offset; ///< over the plane that all offsets are told from; not taken: it is that plane
    std::string where;  ///< its marks on the house
    std::string sheet;
    bool operator==(const LevelPlane &) const = default;
};

/// A height read from a plane, over the plane that all offsets are told from. Nothing where no plane is
/// called so, or its offset is not known.
std::optional<Length> over_first_plane(std::span<const LevelPlane> planes, std::string_view plane,
                                       Length height);

} // namespace roundlay
