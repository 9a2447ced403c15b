#include "kernel/record/numbers.h"

#include <algorithm>
#include <type_traits>

namespace roundlay {

template <> std::span<const NamedNumber<LevelPlane>> numbers_of() {
    static constexpr NamedNumber<LevelPlane> all[] = {
        {"offset", &LevelPlane::offset, NumberRange::up_or_down}};
    return all;
}

template <> std::span<const NamedNumber<RecordedWall>> numbers_of() {
    static constexpr NamedNumber<RecordedWall> all[] = {
        {"length", &RecordedWall::length, NumberRange::along}};
    return all;
}

template <> std::span<const NamedNumber<RecordedCorner>> numbers_of() {
    static constexpr NamedNumber<RecordedCorner> all[] = {
        {"level", &RecordedCorner::level, NumberRange::up_or_down},
        {"lean_first", &RecordedCorner::lean_first, NumberRange::up_or_down},
        {"lean_second", &RecordedCorner::lean_second, NumberRange::up_or_down},
        {"lean_over", &RecordedCorner::lean_over, NumberRange::along}};
    return all;
}

template <> std::span<const NamedNumber<Diagonal>> numbers_of() {
    static constexpr NamedNumber<Diagonal> all[] = {{"length", &Diagonal::length, NumberRange::along}};
    return all;
}

template <> std::span<const NamedNumber<RecordedOpening>> numbers_of() {
    static constexpr NamedNumber<RecordedOpening> all[] = {
        {"near_at_sill", &RecordedOpening::near_at_sill, NumberRange::along},
        {"near_at_head", &RecordedOpening::near_at_head, NumberRange::along},
        {"far_at_sill", &RecordedOpening::far_at_sill, NumberRange::along},
        {"far_at_head", &RecordedOpening::far_at_head, NumberRange::along},
        {"width", &RecordedOpening::width, NumberRange::along},
        {"height", &RecordedOpening::height, NumberRange::along},
        {"sill", &RecordedOpening::sill, NumberRange::up_or_down},
        {"head", &RecordedOpening::head, NumberRange::up_or_down}};
    return all;
}

template <> std::span<const NamedNumber<FoundLog>> numbers_of() {
    static constexpr NamedNumber<FoundLog> all[] = {
        {"length", &FoundLog::length, NumberRange::along},
        {"between_shoulders", &FoundLog::between_shoulders, NumberRange::along},
        {"bow", &FoundLog::bow, NumberRange::gap},
        {"wind", &FoundLog::wind, NumberRange::up_or_down}};
    return all;
}

template <> std::span<const NamedNumber<FoundEnd>> numbers_of() {
    static constexpr NamedNumber<FoundEnd> all[] = {
        {"height", &FoundEnd::height, NumberRange::size},
        {"width", &FoundEnd::width, NumberRange::size},
        {"shoulder_outside", &FoundEnd::shoulder_outside, NumberRange::size},
        {"shoulder_inside", &FoundEnd::shoulder_inside, NumberRange::size},
        {"end_outside", &FoundEnd::end_outside, NumberRange::size},
        {"end_inside", &FoundEnd::end_inside, NumberRange::size},
        {"overhang", &FoundEnd::overhang, NumberRange::gap},
        {"gap", &FoundEnd::gap, NumberRange::gap},
        {"level", &FoundEnd::level, NumberRange::up_or_down}};
    return all;
}

template <> std::span<const NamedNumber<FoundStation>> numbers_of() {
    static constexpr NamedNumber<FoundStation> all[] = {
        {"at", &FoundStation::at, NumberRange::along},
        {"height", &FoundStation::height, NumberRange::size},
        {"width", &FoundStation::width, NumberRange::size},
        {"gap_below", &FoundStation::gap_below, NumberRange::gap},
        {"gap_above", &FoundStation::gap_above, NumberRange::gap},
        {"level", &FoundStation::level, NumberRange::up_or_down}};
    return all;
}

template <> std::span<const NamedNumber<ConditionZone>> numbers_of() {
    static constexpr NamedNumber<ConditionZone> all[] = {{"from", &ConditionZone::from, NumberRange::along},
                                                         {"to", &ConditionZone::to, NumberRange::along},
                                                         {"depth", &ConditionZone::depth, NumberRange::gap}};
    return all;
}

template <> std::span<const NamedNumber<WoodTest>> numbers_of() {
    static constexpr NamedNumber<WoodTest> all[] = {{"at", &WoodTest::at, NumberRange::along},
                                                    {"depth", &WoodTest::depth, NumberRange::gap}};
    return all;
}

template <> std::span<const NamedNumber<MoistureReading>> numbers_of() {
    static constexpr NamedNumber<MoistureReading> all[] = {
        {"at", &MoistureReading::at, NumberRange::along},
        {"depth", &MoistureReading::depth, NumberRange::gap}};
    return all;
}

template <> std::span<const NamedNumber<FoundPeg>> numbers_of() {
    static constexpr NamedNumber<FoundPeg> all[] = {{"at", &FoundPeg::at, NumberRange::along},
                                                    {"diameter", &FoundPeg::diameter, NumberRange::size},
                                                    {"depth", &FoundPeg::depth, NumberRange::size}};
    return all;
}

template <> std::span<const NamedNumber<LaterCut>> numbers_of() {
    static constexpr NamedNumber<LaterCut> all[] = {{"at", &LaterCut::at, NumberRange::along}};
    return all;
}

namespace {

/// Walks over the numbers of a record, or of one that is only looked at.
template <typename Visitor> struct Walk {
    const Visitor &visit;

    template <typename Owner>
    void part(Owner &owner, const std::string &path, const std::string &sheet) const {
        for (const auto &each : numbers_of<std::remove_const_t<Owner>>())
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

void each_number(Record &record, const std::function<void(const NumberAt &, NotedLength &)> &visit) {
    const Walk<std::function<void(const NumberAt &, NotedLength &)>> walk{visit};
    walk.sheeted(record.planes, "record.level");
    walk.sheeted(record.walls, "record.wall");
    walk.sheeted(record.corners, "record.corner");
    walk.sheeted(record.diagonals, "record.diagonal");
    walk.sheeted(record.openings, "record.opening");
    for (std::size_t i = 0; i < record.logs.size(); ++i)
        walk.log(record.logs[i], log_path(i));
}

void each_number_of(const FoundLog &log, const std::string &path,
                    const std::function<void(const NumberAt &, const NotedLength &)> &visit) {
    Walk<std::function<void(const NumberAt &, const NotedLength &)>>{visit}.log(log, path);
}

bool is_measured(const RecordedOpening &opening) {
    return std::ranges::any_of(numbers_of<RecordedOpening>(),
                               [&](const auto &number) { return (opening.*number.reading).is_taken(); });
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
