#include "kernel/document/limits.h"
#include "kernel/document/sections.h"

namespace roundlay {

namespace {

constexpr Word<OpeningKind> kinds[] = {{"door", OpeningKind::door}, {"window", OpeningKind::window}};

/// Cuts are named after their opening on sheets and lists: two of one name are allowed, but easily mixed up.
void check_name(Reading &reading, const TableReader &table, const Shell &before, const Opening &opening) {
    if (opening.name.empty()) return;
    for (std::size_t i = 0; i < before.openings.size(); ++i) {
        if (before.openings[i].name != opening.name) continue;
        const int line = reading.place_of("opening[" + std::to_string(i) + "].name").line;
        reading.warning(table.place_of("name"),
                        "two openings are called " + quoted_for_message(opening.name) +
                            "; the other one stands in line " + std::to_string(line),
                        "a name of its own for each opening");
        return;
    }
}

OwnTrim read_own_trim(Reading &reading, TableReader &table, OpeningKind kind) {
    OwnTrim trim;
    table.length("spline_width", trim.spline_width, bounds::short_gap);
    table.length("spline_depth", trim.spline_depth, bounds::short_gap);
    Slope slope;
    if (table.slope("sill_slope", slope, false)) trim.sill_slope = slope;
    if (trim.sill_slope && kind == OpeningKind::door)
        reading.warning(table.place_of("sill_slope"), "the sill of a door is not sloped",
                        "kind = \"window\"");
    table.length("settle_space", trim.settle_space, bounds::short_gap);
    table.length("header_bearing", trim.header_bearing, bounds::short_gap);
    return trim;
}

Opening read_opening(Reading &reading, TableReader &table, const Shell &shell) {
    Opening opening;
    if (table.text("name", opening.name)) check_name(reading, table, shell, opening);
    table.choice("kind", opening.kind, kinds);
    table.require("wall", "the wall it is in: wall = \"A\"");
    if (table.text("wall", opening.wall)) find_wall(reading, table.place_of("wall"), shell, opening.wall);
    table.require("from_left",
                  "the distance from the wall's left outside corner, seen from outside, to the left jamb");
    table.length("from_left", opening.from_left, bounds::long_place);
    table.require("sill", "the height of its underside over the foundation");
    table.length("sill", opening.sill, bounds::long_place);
    table.require("width", "the clear width between the jambs");
    table.length("width", opening.width, bounds::long_size);
    table.require("height", "the clear height from sill to header");
    table.length("height", opening.height, bounds::long_size);
    opening.trim = read_own_trim(reading, table, opening.kind);
    table.finish();
    return opening;
}

} // namespace

void read_openings(Reading &reading, TableReader &document, Shell &shell) {
    for (const toml::table *entry : document.entries("opening", limits::openings)) {
        const std::string path = "opening[" + std::to_string(shell.openings.size()) + "]";
        TableReader table(reading, entry, path, reading.place_of(path));
        shell.openings.push_back(read_opening(reading, table, shell));
    }
}

void read_steps(Reading &reading, TableReader &document, Shell &shell) {
    for (const toml::table *entry : document.entries("step", limits::openings)) {
        const std::string path = "step[" + std::to_string(shell.steps.size()) + "]";
        TableReader table(reading, entry, path, reading.place_of(path));
        FoundationStep step;
        table.require("wall", "the wall that stands on it: wall = \"A\"");
        if (table.text("wall", step.wall)) find_wall(reading, table.place_of("wall"), shell, step.wall);
        table.require("from_left", "where it starts, from the wall's left corner seen from outside");
        table.length("from_left", step.from_left, bounds::long_place);
        table.require("width", "how far it runs along the wall");
        table.length("width", step.width, bounds::long_size);
        table.require("rise", "how much higher than the lowest foundation it is");
        table.length("rise", step.rise, bounds::long_size);
        table.finish();
        shell.steps.push_back(step);
    }
}

} // namespace roundlay
