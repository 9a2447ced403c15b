#include "kernel/document/limits.h"
#include "kernel/document/sections.h"

namespace roundlay {

namespace {

constexpr Word<TopRule> tops[] = {{"level", TopRule::level}, {"staggered", TopRule::staggered}};
constexpr const char *two_of_three = "two of count, height and pitch; the third follows from them";

void check_two_of_three(Reading &reading, const TableReader &table) {
    const int stated = table.states("count") + table.states("height") + table.states("pitch");
    if (stated == 3)
        reading.error(table.place(),
                      "[rounds] states count, height and pitch, which may contradict each other",
                      two_of_three);
    if (stated < 2)
        reading.error(table.place(),
                      stated == 1 ? "[rounds] states only one of count, height and pitch"
                                  : "[rounds] states none of count, height and pitch",
                      two_of_three);
}

} // namespace

void read_rounds(Reading &reading, TableReader &document, Shell &shell) {
    document.require("rounds", "a table [rounds] with two of count, height and pitch");
    const toml::table *stated = document.table("rounds");
    if (!stated) return;
    TableReader table(reading, stated, "rounds", reading.place_of("rounds"));
    int count = 0;
    if (table.count("count", count, 1, limits::rounds)) shell.rounds.count = count;
    table.length("height", shell.rounds.height, bounds::long_size);
    table.length("pitch", shell.rounds.pitch, bounds::short_size);
    check_two_of_three(reading, table);
    table.length("gap", shell.rounds.gap, bounds::short_gap);
    if (table.text("full_first", shell.rounds.full_first))
        find_wall(reading, table.place_of("full_first"), shell, shell.rounds.full_first);
    table.choice("top", shell.rounds.top, tops);
    table.finish();
}

} // namespace roundlay
