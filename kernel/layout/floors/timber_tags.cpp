#include "kernel/layout/floors/timber_tags.h"

#include <algorithm>
#include <cstdio>

namespace roundlay {

namespace {

const char *letter(TimberUse use) {
    switch (use) {
    case TimberUse::beam:
        return "B";
    case TimberUse::trimmer:
        return "T";
    case TimberUse::joist:
    case TimberUse::trimmed:
        break;
    }
    return "J";
}

} // namespace

std::vector<std::string> tags_of(const FloorPlan &plan) {
    std::vector<std::size_t> order(plan.timbers.size());
    for (std::size_t i = 0; i < order.size(); ++i)
        order[i] = i;
    const auto key = [&](std::size_t i) {
        const PlannedTimber &t = plan.timbers[i];
        return t.across() ? std::pair(t.from.y, t.from.x) : std::pair(t.from.x, t.from.y);
    };
    std::stable_sort(order.begin(), order.end(),
                     [&](std::size_t a, std::size_t b) { return key(a) < key(b); });
    int beams = 0, trimmers = 0, joists = 0;
    std::vector<std::string> tags(order.size());
    for (const std::size_t i : order) {
        const TimberUse use = plan.timbers[i].use;
        int &count = use == TimberUse::beam ? beams : use == TimberUse::trimmer ? trimmers : joists;
        char text[16];
        std::snprintf(text, sizeof text, "-%s%02d", letter(use), ++count);
        tags[i] = plan.place.name + text;
    }
    return tags;
}

} // namespace roundlay
