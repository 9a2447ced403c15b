#include "kernel/document/limits.h"
#include "kernel/document/sections.h"

namespace roundlay {

namespace {

constexpr Word<BoreUse> uses[] = {
    {"bolt", BoreUse::bolt}, {"rod", BoreUse::rod}, {"wire", BoreUse::wire}, {"hole", BoreUse::hole}};

constexpr Word<SettlingRuleName> rules[] = {{"13 mm in 300 mm", SettlingRuleName::per_300_mm},
                                            {"6 percent", SettlingRuleName::six_percent},
                                            {"4 percent", SettlingRuleName::four_percent},
                                            {"3/16 in per log", SettlingRuleName::per_chinked_log}};

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

void read_shell_trim(Reading &reading, TableReader &document, Shell &shell) {
    const toml::table *stated = document.table("trim");
    if (!stated) return;
    TableReader table(reading, stated, "trim", reading.place_of("trim"));
    table.length("spline_width", shell.trim.spline_width, bounds::short_gap);
    table.length("spline_depth", shell.trim.spline_depth, bounds::short_gap);
    table.slope("sill_slope", shell.trim.sill_slope, false);
    table.length("settle_space", shell.trim.settle_space, bounds::short_gap);
    SettlingRuleName rule{};
    if (table.choice("settling", rule, rules)) shell.trim.settling = rule;
    table.length("header_bearing", shell.trim.header_bearing, bounds::short_gap);
    if ((shell.trim.spline_width.mm() > 0) != (shell.trim.spline_depth.mm() > 0))
        reading.error(table.place(), "a spline groove needs a width and a depth",
                      "both of spline_width and spline_depth, or neither");
    table.finish();
}

/// An opening may state one of the two sizes where the other is the shell's; a depth of 0 is no groove.
void check_own_groove(Reading &reading, const Shell &shell, std::size_t i) {
    const Opening &o = shell.openings[i];
    const Length width = o.trim.spline_width.value_or(shell.trim.spline_width);
    const Length depth = o.trim.spline_depth.value_or(shell.trim.spline_depth);
    const bool width_alone = o.trim.spline_width.value_or(Length()).mm() > 0 && depth.mm() <= 0;
    const bool depth_alone = o.trim.spline_depth.value_or(Length()).mm() > 0 && width.mm() <= 0;
    if (width_alone || depth_alone)
        reading.error(reading.place_of("opening[" + std::to_string(i) + "]." +
                                       (width_alone ? "spline_width" : "spline_depth")),
                      "a spline groove needs a width and a depth",
                      "both of spline_width and spline_depth, or neither");
}

} // namespace

void read_trim(Reading &reading, TableReader &document, Shell &shell) {
    read_shell_trim(reading, document, shell);
    for (std::size_t i = 0; i < shell.openings.size(); ++i)
        check_own_groove(reading, shell, i);
}

void read_bores(Reading &reading, TableReader &document, Shell &shell) {
    for (const toml::table *entry : document.entries("bore", limits::bores)) {
        const std::string path = "bore[" + std::to_string(shell.bores.size()) + "]";
        TableReader table(reading, entry, path, reading.place_of(path));
        shell.bores.push_back(read_bore(reading, table, shell));
    }
}

} // namespace roundlay
