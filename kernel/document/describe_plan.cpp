#include "kernel/document/describe.h"
#include "kernel/shell/close_plan.h"

namespace roundlay::format {

namespace {

/// Its length is left out where it closes the plan.
using WallLength =
    Through<Wall,
            [](const Wall &wall) { return wall.closes ? std::nullopt : std::optional<Length>(wall.length); },
            [](Wall &wall, Length length) { wall.length = length, wall.closes = false; }>;

const TableOf<Wall> &wall_table() {
    static const TableOf<Wall> table{
        {.name = "wall",
         .summary =
             "One for each side, in the order of a walk once round the outside, counter-clockwise seen "
             "from above.",
         .items = items<Wall>(
             {tag_name<&Wall::name>("name", "wall",
                                    "the wall's letter, each wall its own; it stands on every tag",
                                    {.missing = "name = \"A\""}),
              direction<&Wall::heading>("toward", "which way the walk goes along it",
                                        {.missing = heading_expected}),
              key_by<WallLength>("length", Size{bounds::long_size}, "of the outside face, corner to corner",
                                 {.left_out = "follows: it closes the plan",
                                  .absent = "length left out: this wall closes the plan"}),
              size<&Wall::thickness>("thickness", bounds::short_size, "where it differs from the shell's",
                                     {.left_out = "the shell's"}),
              size<&Wall::pitch>("pitch", bounds::short_size,
                                 "the height of one round of this wall, gap included",
                                 {.left_out = "that of `[rounds]`"}),
              size<&Wall::log_height>("log_height", bounds::short_size, "the height of this wall's logs",
                                      {.left_out = "pitch less gap"})}),
         .comment = "The walls: a walk once round the outside faces, counter-clockwise seen from above."}};
    return table;
}

/// Lengths that are left out follow from right ones only.
void close_walls(Reading &reading, void *around) {
    auto &walls = static_cast<Shell *>(around)->walls;
    for (std::size_t i = 0; i < walls.size(); ++i) {
        const std::string path = "wall[" + std::to_string(i) + "].";
        if (!reading.is_right(path + "toward")) return;
        if (reading.places().states(path + "length") && !reading.is_right(path + "length")) return;
    }
    if (const auto fault = close_plan(walls))
        reading.error(reading.place_of("wall[" + std::to_string(fault->wall) + "]"), fault->message,
                      fault->expected);
}

const TableOf<Partition> &partition_table() {
    static const TableOf<Partition> table{
        {.name = "partition",
         .summary =
             "A wall indoors: it starts in one wall, ends in another, and its tails pass through both.",
         .items = items<Partition>(
             {tag_name<&Partition::name>("name", "wall", "as a wall's; no two walls or partitions share one",
                                         {.missing = "name = \"P\""}),
              wall_name<&Partition::from>(
                  "from", "the wall it starts in, stated before it",
                  {.missing = "the wall it starts in, stated before it: from = \"A\""}),
              size<&Partition::from_left>(
                  "from_left", bounds::long_place,
                  "along that wall, from its left outside corner to where its middle line crosses that of "
                  "the partition",
                  {.missing = "from_left = \"3 m\", along that wall's outside to the middle of this one"}),
              direction<&Partition::heading>(
                  "toward", "which way it runs, where that is not square to the wall it starts in, inward",
                  {.left_out = "square, inward"}),
              later_wall_name<&Partition::to>("to", "the wall it ends in",
                                              {.missing = "the wall it ends in: to = \"C\""}),
              size<&Partition::thickness>("thickness", bounds::short_size,
                                          "where it differs from the shell's", {.left_out = "the shell's"}),
              size<&Partition::pitch>("pitch", bounds::short_size,
                                      "the height of one round of this wall, gap included",
                                      {.left_out = "that of `[rounds]`"}),
              size<&Partition::log_height>("log_height", bounds::short_size, "the height of this wall's logs",
                                           {.left_out = "pitch less gap"})}),
         .comment = "Partitions: from one wall to another; from_left runs along the first one's outside."}};
    return table;
}

/// Partitions can end in one another, so all of them are read first.
void check_where_partitions_end(Reading &reading, void *around) {
    const Shell &shell = *static_cast<const Shell *>(around);
    for (std::size_t i = 0; i < shell.partitions.size(); ++i) {
        const Place place = reading.place_of("partition[" + std::to_string(i) + "].to");
        const Partition &wall = shell.partitions[i];
        if (wall.to.empty()) continue; // reported where it is read
        if (!find_wall(reading, place, shell, wall.to)) continue;
        if (wall.to == wall.name || wall.to == wall.from)
            reading.error(place, "partition \"" + wall.name + "\" cannot end in wall \"" + wall.to + "\"",
                          "another wall than itself and the one it starts in");
    }
}

constexpr const char *two_of_three = "two of count, height and pitch; the third follows from them";

void check_two_of_three(TableReading &at, Rounds &) {
    const int stated = at.table.states("count") + at.table.states("height") + at.table.states("pitch");
    if (stated == 3)
        at.reading.error(at.table.place(),
                         "[rounds] states count, height and pitch, which may contradict each other",
                         two_of_three);
    if (stated < 2)
        at.reading.error(at.table.place(),
                         stated == 1 ? "[rounds] states only one of count, height and pitch"
                                     : "[rounds] states none of count, height and pitch",
                         two_of_three);
}

const TableOf<Rounds> &rounds_table() {
    static const TableOf<Rounds> table{
        {.name = "rounds",
         .summary = "A round is one log of each wall. Two of count, height and pitch; the third follows.",
         .items = items<Rounds>(
             {count<&Rounds::count>("count", {1, limits::rounds}, "how many rounds", {.left_out = "follows"}),
              size<&Rounds::height>(
                  "height", bounds::long_size, "foundation to the top of the last round, its gap included",
                  {.left_out = "follows", .remark = "foundation to the top of the last round"}),
              size<&Rounds::pitch>("pitch", bounds::short_size, "height of one round: log and gap",
                                   {.left_out = "follows", .remark = "one round, its gap included"}),
              size<&Rounds::gap>("gap", bounds::short_gap,
                                 "chink or settling gap between the logs of one wall",
                                 {.remark = "between the logs of one wall"}),
              wall_name<&Rounds::full_first>(
                  "full_first",
                  "a wall that starts with a full log; the walls that meet it start with a half log",
                  {.left_out = "the first wall", .remark = "this wall starts with a full log"}),
              one_of<&Rounds::top>("top", "closed with half logs, or left staggered as the rounds end",
                                   {.remark = "\"level\" or \"staggered\""})}),
         .check = checked<Rounds, check_two_of_three>,
         .under_header = "Two of count, height and pitch; the third follows."}};
    return table;
}

const TableOf<Shell> &shell_table() {
    static const TableOf<Shell> table{
        {.name = "shell",
         .summary = "The shell as a whole.",
         .items = items<Shell>(
             {text<&Shell::name>("name", "what the shell is called on sheets, lists and models"),
              text<&Shell::state>(
                  "state", "which state of the house this shell is, such as `\"as found\"`: it stands on "
                           "sheets and lists, and must be said where there are others, `[[state]]`"),
              one_of<&Shell::units>("units", "how lengths are shown; never changes the shell itself",
                                    {.remark = "how lengths are shown: \"metric\" or \"imperial\""}),
              size<&Shell::thickness>(
                  "thickness", bounds::short_size,
                  "outside face to inside face, of every wall that does not state its own",
                  {.missing = "thickness = \"8 in\"",
                   .remark = "of every wall that does not state its own"})})}};
    return table;
}

} // namespace

Section shell_section() {
    Section section{.table = &shell_table(), .missing = "a table [shell] with at least a thickness"};
    section.fresh = [](const Shell &) -> std::shared_ptr<void> { return std::make_shared<Shell>(); };
    section.in = [](void *around) { return around; };
    return section;
}

Section wall_section() {
    Section section = list<&Shell::walls>(wall_table(), limits::walls);
    section.told_by = {"name"};
    section.missing = "one [[wall]] for each side, walking once round the outside";
    section.fresh = [](const Shell &) -> std::shared_ptr<void> {
        const auto wall = std::make_shared<Wall>();
        wall->closes = true; // until a length is stated
        return wall;
    };
    section.check = close_walls;
    return section;
}

Section partition_section() {
    Section section = list<&Shell::partitions>(partition_table(), limits::walls);
    section.told_by = {"name"};
    section.check = check_where_partitions_end;
    return section;
}

Section rounds_section() {
    Section section = once<&Shell::rounds>(rounds_table());
    section.missing = "a table [rounds] with two of count, height and pitch";
    return section;
}

} // namespace roundlay::format
