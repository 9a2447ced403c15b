#include "kernel/document/limits.h"
#include "kernel/document/sections.h"

namespace roundlay {

namespace {

constexpr Word<BoreUse> uses[] = {
    {"bolt", BoreUse::bolt}, {"rod", BoreUse::rod}, {"wire", BoreUse::wire}, {"hole", BoreUse::hole}};

StatedBore read_bore(Reading &reading, TableReader &table, const Shell &shell) {
    StatedBore bore;
    table.text("name", bore.name);
    table.require("use", "use = \"bolt\", \"rod\", \"wire\" or \"hole\"");
    table.choice("use", bore.use, uses);
    table.require("wall", "the wall it stands in: wall = \"A\"");
    if (table.text("wall", bore.wall)) find_wall(reading, table.place_of("wall"), shell, bore.wall);
    table.require("from_left",
                  "from the wall's left outside corner, seen from outside, to the bore's middle");
    table.length("from_left", bore.from_left, bounds::long_place);
    table.length("from_outside", bore.from_outside, bounds::short_size);
    table.require("diameter", "diameter = \"20 mm\"");
    table.length("diameter", bore.diameter, bounds::short_size);
    table.count("from_round", bore.from_round, 1, limits::rounds + 1);
    int to_round = 0;
    if (table.count("to_round", to_round, 1, limits::rounds + 1)) {
        bore.to_round = to_round;
        if (to_round < bore.from_round)
            reading.error(table.place_of("to_round"), "the bore ends below its start",
                          "round " + std::to_string(bore.from_round) + " or a higher one");
    }
    table.length("drift", bore.drift, bounds::short_shift);
    table.finish();
    return bore;
}

} // namespace

void read_trim(Reading &reading, TableReader &document, Shell &shell) {
    const toml::table *stated = document.table("trim");
    if (!stated) return;
    TableReader table(reading, stated, "trim", reading.place_of("trim"));
    table.length("spline_width", shell.trim.spline_width, bounds::short_gap);
    table.length("spline_depth", shell.trim.spline_depth, bounds::short_gap);
    table.slope("sill_slope", shell.trim.sill_slope, false);
    table.length("settle_space", shell.trim.settle_space, bounds::short_gap);
    table.length("header_bearing", shell.trim.header_bearing, bounds::short_gap);
    if ((shell.trim.spline_width.mm() > 0) != (shell.trim.spline_depth.mm() > 0))
        reading.error(table.place(), "a spline groove needs a width and a depth",
                      "both of spline_width and spline_depth, or neither");
    table.finish();
}

void read_bores(Reading &reading, TableReader &document, Shell &shell) {
    for (const toml::table *entry : document.entries("bore", limits::bores)) {
        const std::string path = "bore[" + std::to_string(shell.bores.size()) + "]";
        TableReader table(reading, entry, path, reading.place_of(path));
        shell.bores.push_back(read_bore(reading, table, shell));
    }
}

} // namespace roundlay
