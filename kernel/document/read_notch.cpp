#include "kernel/document/limits.h"
#include "kernel/document/sections.h"

#include <tuple>

namespace roundlay {

namespace {

constexpr Word<NotchKind> kinds[] = {{"full dovetail", NotchKind::full_dovetail},
                                     {"half dovetail", NotchKind::half_dovetail},
                                     {"square lap", NotchKind::square_lap},
                                     {"stated", NotchKind::stated},
                                     {"saddle", NotchKind::saddle}};
constexpr Word<std::optional<NotchKind>> own_kinds[] = {{"full dovetail", NotchKind::full_dovetail},
                                                        {"half dovetail", NotchKind::half_dovetail},
                                                        {"square lap", NotchKind::square_lap},
                                                        {"stated", NotchKind::stated}};

bool has_slope(NotchKind kind) {
    return kind == NotchKind::full_dovetail || kind == NotchKind::half_dovetail;
}

void warn_unused(Reading &reading, const TableReader &table, const char *key, const char *used_by) {
    if (table.states(key))
        reading.warning(table.place_of(key),
                        quoted_for_message(key) + " is not used here, only by " + used_by);
}

/// Deep is over zero, proud under it.
void read_shoulder(Reading &reading, TableReader &table, Length &shoulder) {
    Length deep, proud;
    const bool is_deep = table.length("shoulder_deep", deep, bounds::short_gap);
    const bool is_proud = table.length("shoulder_proud", proud, bounds::short_gap);
    if (is_deep && is_proud)
        reading.error(table.place_of("shoulder_proud"), "a shoulder cannot be both deep and proud",
                      "one of shoulder_deep and shoulder_proud");
    else if (is_deep)
        shoulder = deep;
    else if (is_proud)
        shoulder = Length() - proud;
}

/// `rule` holds what the table leaves out: the defaults, or the shell's notch for a corner.
void read_notch_keys(Reading &reading, TableReader &table, NotchRule &rule) {
    const bool stated_before = rule.kind == NotchKind::stated;
    table.choice("kind", rule.kind, kinds);
    table.slope("slope", rule.slope, false);
    table.slope("along", rule.along, true);
    table.slope("across", rule.across, true);
    table.length("overhang", rule.overhang, bounds::short_gap);
    table.length("least_tail", rule.least_tail, bounds::short_gap);
    read_shoulder(reading, table, rule.shoulder);
    table.length("scribe", rule.scribe, bounds::short_gap);
    if (rule.kind != NotchKind::saddle) warn_unused(reading, table, "scribe", "kind = \"saddle\"");
    if (!has_slope(rule.kind)) warn_unused(reading, table, "slope", "a full or half dovetail");
    if (rule.kind != NotchKind::stated) {
        warn_unused(reading, table, "along", "kind = \"stated\"");
        warn_unused(reading, table, "across", "kind = \"stated\"");
    } else if (!stated_before) {
        table.require("along", "the slope of the tail's top along its own log, outward");
        table.require("across", "the slope of the tail's top along the crossing log, outward");
    }
}

bool is_corner(std::size_t first, std::size_t second, std::size_t count) {
    return (first + 1) % count == second;
}

/// The walls in the order of the walk, whichever way round they are stated. Two empty names where they are wrong.
std::pair<std::string, std::string> read_between(Reading &reading, TableReader &table, const Shell &shell) {
    constexpr const char *expected = "two walls that meet, such as between = [\"A\", \"B\"]";
    table.require("between", expected);
    std::vector<std::string> names;
    if (!table.texts("between", names)) return {};
    const Place place = table.place_of("between");
    if (names.size() != 2) {
        reading.error(place, "\"between\" does not name two walls", expected);
        return {};
    }
    const auto first = find_wall(reading, place, shell, names[0]),
               second = find_wall(reading, place, shell, names[1]);
    if (!first || !second) return {};
    const std::size_t count = shell.walls.size();
    const bool partition = *first >= count || *second >= count;
    const bool walked = partition || is_corner(*first, *second, count);
    if (*first == *second || (!walked && !is_corner(*second, *first, count))) {
        reading.error(place, "walls \"" + names[0] + "\" and \"" + names[1] + "\" do not meet at a corner",
                      "two walls that follow each other");
        return {};
    }
    return {names[walked ? 0 : 1], names[walked ? 1 : 0]};
}

void check_corner_once(Reading &reading, const TableReader &table, const Shell &shell,
                       const std::string &first, const std::string &second) {
    for (std::size_t i = 0; i < shell.corners.size(); ++i) {
        if (shell.corners[i].first != first || shell.corners[i].second != second) continue;
        const int line = reading.place_of("corner[" + std::to_string(i) + "]").line;
        reading.error(table.place(),
                      "the corner of \"" + first + "\" and \"" + second +
                          "\" is stated twice; the other one stands in line " + std::to_string(line),
                      "one [[corner]] for each corner");
        return;
    }
}

} // namespace

void read_log_notch(Reading &reading, TableReader &table, LogNotch &notch) {
    table.choice("kind", notch.kind, own_kinds);
    Slope slope;
    for (const auto &[key, into, may_fall] : {std::tuple("slope", &notch.slope, false), std::tuple("along", &notch.along, true),
                                              std::tuple("across", &notch.across, true)})
        if (table.slope(key, slope, may_fall)) *into = slope;
    if (notch.kind && *notch.kind != NotchKind::stated)
        for (const char *key : {"along", "across"}) warn_unused(reading, table, key, "kind = \"stated\"");
    table.length("overhang_left", notch.overhang_left, bounds::short_gap);
    table.length("overhang_right", notch.overhang_right, bounds::short_gap);
}

void read_notch(Reading &reading, TableReader &document, Shell &shell) {
    const toml::table *stated = document.table("notch");
    if (!stated) return;
    TableReader table(reading, stated, "notch", reading.place_of("notch"));
    read_notch_keys(reading, table, shell.notch);
    table.finish();
}

void read_corners(Reading &reading, TableReader &document, Shell &shell) {
    for (const toml::table *entry : document.entries("corner", limits::walls)) {
        const std::string path = "corner[" + std::to_string(shell.corners.size()) + "]";
        TableReader table(reading, entry, path, reading.place_of(path));
        const auto [first, second] = read_between(reading, table, shell);
        if (!first.empty()) check_corner_once(reading, table, shell, first, second);
        shell.corners.push_back({first, second, shell.notch});
        read_notch_keys(reading, table, shell.corners.back().notch);
        table.finish();
    }
}

} // namespace roundlay
