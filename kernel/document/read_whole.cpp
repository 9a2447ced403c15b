#include "kernel/document/limits.h"
#include "kernel/document/sections.h"

namespace roundlay {

namespace {

constexpr Word<UnitSystem> systems[] = {{"metric", UnitSystem::metric}, {"imperial", UnitSystem::imperial}};

} // namespace

void read_shell_table(Reading &reading, TableReader &document, Shell &shell) {
    document.require("shell", "a table [shell] with at least a thickness");
    const toml::table *stated = document.table("shell");
    if (!stated) return;
    TableReader table(reading, stated, "shell", reading.place_of("shell"));
    table.text("name", shell.name);
    table.choice("units", shell.units, systems);
    table.require("thickness", "thickness = \"8 in\"");
    table.length("thickness", shell.thickness, bounds::short_size);
    table.finish();
}

void read_pegs(Reading &reading, TableReader &document, Shell &shell) {
    const toml::table *stated = document.table("pegs");
    if (!stated) return;
    TableReader table(reading, stated, "pegs", reading.place_of("pegs"));
    table.flag("wanted", shell.pegs.wanted);
    table.length("diameter", shell.pegs.diameter, bounds::short_size);
    table.length("spacing", shell.pegs.spacing, bounds::long_size);
    table.length("end_distance", shell.pegs.end_distance, bounds::short_gap);
    table.length("between", shell.pegs.between, bounds::short_gap);
    table.number("depth_below", shell.pegs.depth_below, 0, false, 1,
                 "a part of the lower log's height, over 0 and up to 1");
    table.count("fewest", shell.pegs.fewest, 0, limits::fastenings);
    table.length("draw", shell.pegs.draw, bounds::short_gap);
    table.length("square", shell.pegs.square, bounds::short_size);
    table.finish();
}

void read_wood(Reading &reading, TableReader &document, Shell &shell) {
    const toml::table *stated = document.table("wood");
    if (!stated) return;
    TableReader table(reading, stated, "wood", reading.place_of("wood"));
    if (table.text("species", shell.wood.species) && shell.wood.species.empty())
        reading.error(table.place_of("species"), "\"species\" is empty",
                      "the name of a wood, such as \"eastern hemlock\"");
    double moisture = 0;
    if (table.number("moisture", moisture, 0, true, limits::moisture,
                     "percent of ovendry mass, from 0 to 300, without quotes"))
        shell.wood.moisture = moisture;
    table.finish();
}

} // namespace roundlay
