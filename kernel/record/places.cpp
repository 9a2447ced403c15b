#include "kernel/record/places.h"

namespace roundlay {

namespace {

template <typename Part>
void add_places(std::vector<PlaceAlong> &all, const std::vector<Part> &parts, std::string_view list,
                NotedLength Part::*at, std::string_view key = "at") {
    for (std::size_t i = 0; i < parts.size(); ++i)
        all.push_back({list, i, key, parts[i].*at});
}

/// What the parts of a list are called by people.
Said called(std::string_view list) {
    if (list == "station") return said("stations");
    if (list == "zone") return said("zones");
    if (list == "test") return said("tests");
    if (list == "moisture") return said("moisture readings");
    if (list == "peg") return said("pegs");
    return said("later cuts");
}

} // namespace

std::string path_of(const PlaceAlong &place) {
    return std::string(place.list) + "[" + std::to_string(place.index) + "]." + std::string(place.key);
}

std::vector<PlaceAlong> places_along(const FoundLog &log) {
    std::vector<PlaceAlong> all;
    add_places(all, log.stations, "station", &FoundStation::at);
    add_places(all, log.zones, "zone", &ConditionZone::from, "from");
    add_places(all, log.zones, "zone", &ConditionZone::to, "to");
    add_places(all, log.tests, "test", &WoodTest::at);
    add_places(all, log.moistures, "moisture", &MoistureReading::at);
    add_places(all, log.pegs, "peg", &FoundPeg::at);
    add_places(all, log.later_cuts, "later_cut", &LaterCut::at);
    return all;
}

std::optional<Said> parts_with_places(const FoundLog &log) {
    std::optional<Said> all;
    std::string_view told;
    for (const PlaceAlong &place : places_along(log)) {
        if (!place.number.is_taken() || place.list == told) continue;
        told = place.list;
        all = all ? said("%1, %2", *std::move(all), called(told)) : called(told);
    }
    return all;
}

bool lacks_zero(const FoundLog &log) {
    return log.zero.empty() && parts_with_places(log).has_value();
}

} // namespace roundlay
