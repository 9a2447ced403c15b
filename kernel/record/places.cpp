#include "kernel/record/places.h"

#include <algorithm>
#include <initializer_list>

namespace roundlay {

namespace {

template <typename Part>
bool any_taken(const std::vector<Part> &parts, std::initializer_list<NotedLength Part::*> places) {
    return std::ranges::any_of(parts, [&](const Part &part) {
        return std::ranges::any_of(places, [&](NotedLength Part::*at) { return (part.*at).is_taken(); });
    });
}

} // namespace

std::optional<Said> parts_with_places(const FoundLog &log) {
    std::optional<Said> all;
    const auto add = [&](bool taken, Said what) {
        if (taken) all = all ? said("%1, %2", *std::move(all), std::move(what)) : std::move(what);
    };
    add(any_taken(log.stations, {&FoundStation::at}), said("stations"));
    add(any_taken(log.zones, {&ConditionZone::from, &ConditionZone::to}), said("zones"));
    add(any_taken(log.tests, {&WoodTest::at}), said("tests"));
    add(any_taken(log.moistures, {&MoistureReading::at}), said("moisture readings"));
    add(any_taken(log.pegs, {&FoundPeg::at}), said("pegs"));
    add(any_taken(log.later_cuts, {&LaterCut::at}), said("later cuts"));
    return all;
}

bool lacks_zero(const FoundLog &log) {
    return log.zero.empty() && parts_with_places(log).has_value();
}

} // namespace roundlay
