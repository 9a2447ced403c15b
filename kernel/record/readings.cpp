#include "kernel/record/readings.h"

#include <algorithm>
#include <type_traits>

namespace roundlay {

template <> std::span<const NamedReading<LevelPlane>> readings_of() {
    static constexpr NamedReading<LevelPlane> all[] = {{"offset", &LevelPlane::offset, Range::up_or_down}};
    return all;
}

template <> std::span<const NamedReading<RecordedWall>> readings_of() {
    static constexpr NamedReading<RecordedWall> all[] = {{"length", &RecordedWall::length, Range::along}};
    return all;
}

template <> std::span<const NamedReading<RecordedCorner>> readings_of() {
    static constexpr NamedReading<RecordedCorner> all[] = {
        {"level", &RecordedCorner::level, Range::up_or_down},
        {"lean_first", &RecordedCorner::lean_first, Range::up_or_down},
        {"lean_second", &RecordedCorner::lean_second, Range::up_or_down},
        {"lean_over", &RecordedCorner::lean_over, Range::along}};
    return all;
}

template <> std::span<const NamedReading<Diagonal>> readings_of() {
    static constexpr NamedReading<Diagonal> all[] = {{"length", &Diagonal::length, Range::along}};
    return all;
}

template <> std::span<const NamedReading<FoundLog>> readings_of() {
    static constexpr NamedReading<FoundLog> all[] = {
        {"length", &FoundLog::length, Range::along},
        {"between_shoulders", &FoundLog::between_shoulders, Range::along},
        {"bow", &FoundLog::bow, Range::gap},
        {"wind", &FoundLog::wind, Range::up_or_down}};
    return all;
}

template <> std::span<const NamedReading<FoundEnd>> readings_of() {
    static constexpr NamedReading<FoundEnd> all[] = {
        {"height", &FoundEnd::height, Range::size},
        {"width", &FoundEnd::width, Range::size},
        {"shoulder_outside", &FoundEnd::shoulder_outside, Range::size},
        {"shoulder_inside", &FoundEnd::shoulder_inside, Range::size},
        {"end_outside", &FoundEnd::end_outside, Range::size},
        {"end_inside", &FoundEnd::end_inside, Range::size},
        {"overhang", &FoundEnd::overhang, Range::gap},
        {"gap", &FoundEnd::gap, Range::gap},
        {"level", &FoundEnd::level, Range::up_or_down}};
    return all;
}

template <> std::span<const NamedReading<Station>> readings_of() {
    static constexpr NamedReading<Station> all[] = {{"at", &Station::at, Range::along},
                                                    {"height", &Station::height, Range::size},
                                                    {"width", &Station::width, Range::size},
                                                    {"gap_below", &Station::gap_below, Range::gap},
                                                    {"gap_above", &Station::gap_above, Range::gap},
                                                    {"level", &Station::level, Range::up_or_down}};
    return all;
}

template <> std::span<const NamedReading<ConditionZone>> readings_of() {
    static constexpr NamedReading<ConditionZone> all[] = {{"from", &ConditionZone::from, Range::along},
                                                          {"to", &ConditionZone::to, Range::along},
                                                          {"depth", &ConditionZone::depth, Range::gap}};
    return all;
}

template <> std::span<const NamedReading<WoodTest>> readings_of() {
    static constexpr NamedReading<WoodTest> all[] = {{"at", &WoodTest::at, Range::along},
                                                     {"depth", &WoodTest::depth, Range::gap}};
    return all;
}

template <> std::span<const NamedReading<MoistureReading>> readings_of() {
    static constexpr NamedReading<MoistureReading> all[] = {{"at", &MoistureReading::at, Range::along},
                                                            {"depth", &MoistureReading::depth, Range::gap}};
    return all;
}

template <> std::span<const NamedReading<FoundPeg>> readings_of() {
    static constexpr NamedReading<FoundPeg> all[] = {{"at", &FoundPeg::at, Range::along},
                                                     {"diameter", &FoundPeg::diameter, Range::size},
                                                     {"depth", &FoundPeg::depth, Range::size}};
    return all;
}

template <> std::span<const NamedReading<LaterCut>> readings_of() {
    static constexpr NamedReading<LaterCut> all[] = {{"at", &LaterCut::at, Range::along}};
    return all;
}

namespace {

/// Walks over the numbers of a record, or of one that is only looked at.
template <typename Visitor> struct Walk {
    const Visitor &visit;

    template <typename Owner>
    void part(Owner &owner, const std::string &path, const std::string &sheet) const {
        for (const auto &each : readings_of<std::remove_const_t<Owner>>())
            if (auto &reading = owner.*each.reading; reading.is_taken())
                visit(NumberAt{path + "." + each.name, sheet, each.range}, reading);
    }
    template <typename Parts>
    void list(Parts &parts, const std::string &path, const std::string &sheet) const {
        for (std::size_t i = 0; i < parts.size(); ++i)
            part(parts[i], path + "[" + std::to_string(i) + "]", sheet);
    }
    /// Of parts that name their sheet themselves.
    template <typename Parts> void sheeted(Parts &parts, const std::string &path) const {
        for (std::size_t i = 0; i < parts.size(); ++i)
            part(parts[i], path + "[" + std::to_string(i) + "]", parts[i].sheet);
    }
    template <typename Log> void log(Log &log, const std::string &path) const {
        part(log, path, log.sheet);
        list(log.ends, path + ".end", log.sheet);
        list(log.stations, path + ".station", log.sheet);
        list(log.zones, path + ".zone", log.sheet);
        list(log.tests, path + ".test", log.sheet);
        list(log.moistures, path + ".moisture", log.sheet);
        list(log.pegs, path + ".peg", log.sheet);
        list(log.later_cuts, path + ".later_cut", log.sheet);
    }
};

} // namespace

void each_number(Record &record, const std::function<void(const NumberAt &, Reading &)> &visit) {
    const Walk<std::function<void(const NumberAt &, Reading &)>> walk{visit};
    walk.sheeted(record.planes, "record.level");
    walk.sheeted(record.walls, "record.wall");
    walk.sheeted(record.corners, "record.corner");
    walk.sheeted(record.diagonals, "record.diagonal");
    for (std::size_t i = 0; i < record.logs.size(); ++i)
        walk.log(record.logs[i], log_path(i));
}

void each_number_of(const FoundLog &log, const std::string &path,
                    const std::function<void(const NumberAt &, const Reading &)> &visit) {
    Walk<std::function<void(const NumberAt &, const Reading &)>>{visit}.log(log, path);
}

std::string log_path(std::size_t log) {
    return "found[" + std::to_string(log) + "]";
}

Notation notation_of(const Record &record, const std::string &sheet) {
    Notation notation = record.notation;
    const auto own = std::ranges::find(record.sheets, sheet, &FieldSheet::name);
    if (own == record.sheets.end()) return notation;
    if (own->notation.denominator) notation.denominator = own->notation.denominator;
    if (own->notation.two_fields) notation.two_fields = own->notation.two_fields;
    if (own->notation.unit) notation.unit = own->notation.unit;
    return notation;
}

} // namespace roundlay
