#include "kernel/layout/floors/timber_tags.h"

#include <algorithm>
#include <cstdio>
#include <utility>
#include <vector>

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

Indexed<std::string, PlannedTimber> tags_of(const FloorPlan &plan) {
    std::vector<Index<PlannedTimber>> order;
    for (const auto i : plan.timbers.indices())
        order.push_back(i);
    const auto key = [&](Index<PlannedTimber> i) {
        const PlannedTimber &t = plan.timbers[i];
        return t.across() ? std::pair(t.from.y, t.from.x) : std::pair(t.from.x, t.from.y);
    };
    std::ranges::stable_sort(order, {}, key);
    int beams = 0, trimmers = 0, joists = 0;
    Indexed<std::string, PlannedTimber> tags(order.size());
    for (const auto i : order) {
        const TimberUse use = plan.timbers[i].use;
        int &count = use == TimberUse::beam ? beams : use == TimberUse::trimmer ? trimmers : joists;
        char text[16];
        std::snprintf(text, sizeof text, "-%s%02d", letter(use), ++count);
        tags[i] = plan.place.name + text;
    }
    return tags;
}

} // namespace roundlay
