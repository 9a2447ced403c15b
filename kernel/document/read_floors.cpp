#include "kernel/document/limits.h"
#include "kernel/document/sections.h"

namespace roundlay {

namespace {

constexpr Word<PocketKind> pockets[] = {{"square", PocketKind::square}, {"tailed", PocketKind::tailed}};
constexpr const char *load_expected = "a load in kPa (kN per square metre), over 0 up to 50, without quotes";
constexpr double heaviest_load = 50;

void read_load(TableReader &table, std::string_view key, std::optional<double> &load) {
    double kpa = 0;
    if (table.number(key, kpa, 0, false, heaviest_load, load_expected)) load = kpa;
}

Beam read_beam(TableReader &table) {
    Beam beam;
    table.require("from_wall",
                  "from the wall that the joists start in, its inside face, to the beam's middle");
    table.length("from_wall", beam.from_wall, bounds::long_place);
    table.require("width", "the width of the beam");
    table.length("width", beam.size.width, bounds::short_size);
    table.require("height", "the height of the beam");
    table.length("height", beam.size.height, bounds::short_size);
    table.finish();
    return beam;
}

FloorOpening read_floor_opening(TableReader &table) {
    FloorOpening opening;
    table.text("name", opening.name);
    table.require("from_left", "from the room's left side to the opening");
    table.length("from_left", opening.from_left, bounds::long_place);
    table.require("from_wall", "from the wall that the joists start in to the opening");
    table.length("from_wall", opening.from_wall, bounds::long_place);
    table.require("width", "the clear width of the opening, along that wall");
    table.length("width", opening.width, bounds::long_size);
    table.require("length", "the clear length of the opening, along the joists");
    table.length("length", opening.length, bounds::long_size);
    table.finish();
    return opening;
}

void read_joists(TableReader &table, Floor &floor) {
    table.length("width", floor.joist.width, bounds::short_size);
    table.length("height", floor.joist.height, bounds::short_size);
    table.length("tip_width", floor.tip_width, bounds::short_size);
    table.length("tip_height", floor.tip_height, bounds::short_size);
    table.length("spacing", floor.spacing, bounds::long_size);
    table.length("first", floor.first, bounds::long_size);
    table.length("bearing", floor.bearing, bounds::short_size);
    table.choice("pocket", floor.pocket, pockets);
    table.slope("tail", floor.tail, false);
    read_load(table, "live_load", floor.live_load);
    read_load(table, "dead_load", floor.dead_load);
}

void read_ends(Reading &reading, TableReader &table, const Shell &shell, Floor &floor) {
    table.require("from", "the wall that its joists start in: from = \"A\"");
    if (table.text("from", floor.from)) find_wall(reading, table.place_of("from"), shell, floor.from);
    table.require("to", "the wall across the room: to = \"C\"");
    if (table.text("to", floor.to)) find_wall(reading, table.place_of("to"), shell, floor.to);
    if (!floor.from.empty() && floor.from == floor.to)
        reading.error(table.place_of("to"), "joists cannot lie from wall \"" + floor.from + "\" to itself",
                      "the wall across the room");
}

template <typename Entry, typename Read>
void read_parts(Reading &reading, TableReader &table, const char *key, std::vector<Entry> &into, Read read) {
    for (const toml::table *entry : table.entries(key, limits::floor_parts)) {
        const std::string path = table.path_of(key) + "[" + std::to_string(into.size()) + "]";
        TableReader part(reading, entry, path, reading.place_of(path));
        into.push_back(read(part));
    }
}

Floor read_floor(Reading &reading, TableReader &table, const Shell &shell) {
    Floor floor;
    table.require("name", "name = \"G\"");
    if (table.text("name", floor.name)) check_tag_name(reading, table, shell, floor.name, "floor");
    read_ends(reading, table, shell, floor);
    table.require("level", "how high the tops of its joists lie over the foundation");
    table.length("level", floor.level, bounds::long_size);
    read_joists(table, floor);
    read_parts(reading, table, "beam", floor.beams, read_beam);
    read_parts(reading, table, "opening", floor.openings, read_floor_opening);
    table.finish();
    return floor;
}

} // namespace

void read_floors(Reading &reading, TableReader &document, Shell &shell) {
    for (const toml::table *entry : document.entries("floor", limits::floors)) {
        const std::string path = "floor[" + std::to_string(shell.floors.size()) + "]";
        TableReader table(reading, entry, path, reading.place_of(path));
        shell.floors.push_back(read_floor(reading, table, shell));
    }
}

} // namespace roundlay
