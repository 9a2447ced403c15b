#include "kernel/document/limits.h"
#include "kernel/document/sections.h"

namespace roundlay {

namespace {

constexpr Word<NotchKind> kinds[] = {{"full dovetail", NotchKind::full_dovetail},
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

/// `rule` holds what the table leaves out: the defaults, or the shell's notch for a corner.
void read_notch_keys(Reading &reading, TableReader &table, NotchRule &rule) {
    const bool stated_before = rule.kind == NotchKind::stated;
    table.choice("kind", rule.kind, kinds);
    table.slope("slope", rule.slope, false);
    table.slope("along", rule.along, true);
    table.slope("across", rule.across, true);
    table.length("overhang", rule.overhang, bounds::short_gap);
    table.length("least_tail", rule.least_tail, bounds::short_gap);
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

/// Puts the walls in the order of the walk, whichever way round they are stated.
bool read_between(Reading &reading, TableReader &table, const Shell &shell, CornerNotch &corner) {
    constexpr const char *expected = "two walls that meet, such as between = [\"A\", \"B\"]";
    table.require("between", expected);
    std::vector<std::string> names;
    if (!table.texts("between", names)) return false;
    const Place place = table.place_of("between");
    if (names.size() != 2) {
        reading.error(place, "\"between\" does not name two walls", expected);
        return false;
    }
    const auto first = find_wall(reading, place, shell, names[0]),
               second = find_wall(reading, place, shell, names[1]);
    if (!first || !second) return false;
    const std::size_t count = shell.walls.size();
    const bool walked = is_corner(*first, *second, count);
    if (*first == *second || (!walked && !is_corner(*second, *first, count))) {
        reading.error(place, "walls \"" + names[0] + "\" and \"" + names[1] + "\" do not meet at a corner",
                      "two walls that follow each other");
        return false;
    }
    corner.first = names[walked ? 0 : 1];
    corner.second = names[walked ? 1 : 0];
    return true;
}

void check_corner_once(Reading &reading, const TableReader &table, const Shell &shell,
                       const CornerNotch &corner) {
    for (std::size_t i = 0; i < shell.corners.size(); ++i) {
        if (shell.corners[i].first != corner.first || shell.corners[i].second != corner.second) continue;
        const int line = reading.place_of("corner[" + std::to_string(i) + "]").line;
        reading.error(table.place(),
                      "the corner of \"" + corner.first + "\" and \"" + corner.second +
                          "\" is stated twice; the other one stands in line " + std::to_string(line),
                      "one [[corner]] for each corner");
        return;
    }
}

} // namespace

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
        CornerNotch corner{{}, {}, shell.notch};
        if (read_between(reading, table, shell, corner)) check_corner_once(reading, table, shell, corner);
        read_notch_keys(reading, table, corner.notch);
        table.finish();
        shell.corners.push_back(corner);
    }
}

} // namespace roundlay
