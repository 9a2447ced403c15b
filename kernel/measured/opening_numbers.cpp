#include "kernel/measured/opening_numbers.h"

#include "kernel/layout/openings/openings.h"

namespace roundlay {

namespace {

struct OneJamb {
    std::optional<double> at, leans;
    int count = 0;
};

OneJamb jamb_of(const NotedLength &at_sill, const NotedLength &at_head) {
    const auto low = taken(at_sill), high = taken(at_head);
    if (low && high) return {(*low + *high) / 2, *high - *low, 2};
    if (low || high) return {low ? low : high, {}, 1};
    return {};
}

} // namespace

Jambs jambs_of(const RecordedOpening &opening) {
    const OneJamb near = jamb_of(opening.near_at_sill, opening.near_at_head),
                  far = jamb_of(opening.far_at_sill, opening.far_at_head);
    return {near.at, far.at, near.leans, far.leans, near.count + far.count};
}

std::vector<std::size_t> openings_called(const Shell &shell, const RecordedOpening &opening) {
    std::vector<std::size_t> all;
    for (std::size_t i = 0; i < shell.openings.size(); ++i)
        if (name_of(shell, i) == opening.name &&
            (opening.wall.empty() || opening.wall == shell.openings[i].wall))
            all.push_back(i);
    return all;
}

} // namespace roundlay
