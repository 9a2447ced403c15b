#include "kernel/record/running.h"

#include <algorithm>

namespace roundlay {

std::variant<std::vector<Length>, Said> parts_of(std::span<const Length> running) {
    std::vector<Length> parts;
    Length before;
    for (const Length each : running) {
        if (each < before)
            return said("running dimension %1 is %2 and lies before the one in front of it, %3: put them in "
                        "order, or look at the sheet again",
                        parts.size() + 1, in_mm(each.mm()), in_mm(before.mm()));
        parts.push_back(each - before);
        before = each;
    }
    return parts;
}

std::optional<Length> over_first_plane(std::span<const LevelPlane> planes, std::string_view plane,
                                       Length height) {
    const auto found = std::ranges::find(planes, plane, &LevelPlane::name);
    if (found == planes.end()) return std::nullopt;
    if (!found->offset.is_taken()) return height;
    if (!found->offset.value) return std::nullopt;
    return *found->offset.value + height;
}

} // namespace roundlay
