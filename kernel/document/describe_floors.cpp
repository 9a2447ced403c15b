#include "kernel/document/describe.h"
#include "kernel/measure/load.h"

namespace roundlay::format {

namespace {

const TableOf<Beam> &beam_table() {
    static const TableOf<Beam> table{
        {.name = "floor.beam",
         .summary = "Carries the joists between the walls and lies in the two walls at its own ends.",
         .items = items<Beam>(
             {size<&Beam::from_wall>(
                  "from_wall", bounds::long_place,
                  "from the wall that the joists start in, its inside face, to the beam's middle",
                  {.missing = "from the wall that the joists start in, its inside face, to the beam's middle",
                   .remark = "inside face to the beam's middle"}),
              size<&Beam::size, &TimberSize::width>("width", bounds::short_size, "of the beam",
                                                    {.missing = "the width of the beam"}),
              size<&Beam::size, &TimberSize::height>("height", bounds::short_size, "of the beam",
                                                     {.missing = "the height of the beam"})})}};
    return table;
}

const TableOf<FloorOpening> &floor_opening_table() {
    static const TableOf<FloorOpening> table{
        {.name = "floor.opening",
         .summary = "For a stair or a hatch: a joist along each side, a trimmer across each end that joists "
                    "would cross.",
         .items = items<FloorOpening>(
             {text<&FloorOpening::name>("name", "what you call it"),
              size<&FloorOpening::from_left>("from_left", bounds::long_place,
                                             "from the room's left side to the opening",
                                             {.missing = "from the room's left side to the opening"}),
              size<&FloorOpening::from_wall>(
                  "from_wall", bounds::long_place,
                  "from the wall that the joists start in, its inside face, to the opening",
                  {.missing = "from the wall that the joists start in to the opening"}),
              size<&FloorOpening::width>(
                  "width", bounds::long_size, "clear, along that wall",
                  {.missing = "the clear width of the opening, along that wall", .remark = "along the wall"}),
              size<&FloorOpening::length>("length", bounds::long_size, "clear, along the joists",
                                          {.missing = "the clear length of the opening, along the joists",
                                           .remark = "along the joists"})})}};
    return table;
}

void check_across(TableReading &at, Floor &floor) {
    if (!floor.from.empty() && floor.from == floor.to)
        at.reading.error(at.table.place_of("to"),
                         "joists cannot lie from wall \"" + floor.from + "\" to itself",
                         "the wall across the room");
}

constexpr Load bearable{
    most_load,
    "a load over 0 up to 50 kPa: a number up to 10 in kPa without quotes, or text with its unit such as "
    "\"40 psf\""};

const TableOf<Floor> &floor_table() {
    static const TableOf<Floor> table{
        {.name = "floor",
         .summary = "Joists that lie from one wall to the one across the room, square to the first.",
         .items = items<Floor>(
             {tag_name<&Floor::name>("name", "floor",
                                     "other than that of any wall or floor; it stands on tags",
                                     {.missing = "name = \"G\""}),
              wall_name<&Floor::from>("from", "two walls or partitions that are parallel, but for 1 in 50",
                                      {.missing = "the wall that its joists start in: from = \"A\""}),
              wall_name<&Floor::to>("to", "two walls or partitions that are parallel, but for 1 in 50",
                                    {.missing = "the wall across the room: to = \"C\""})
                  .check<check_across>(),
              size<&Floor::level>("level", bounds::long_size, "foundation to the tops of the joists",
                                  {.missing = "how high the tops of its joists lie over the foundation",
                                   .remark = "tops of the joists over the foundation"}),
              size<&Floor::joist, &TimberSize::width>("width", bounds::short_size, "of a joist, at its butt",
                                                      {.remark = "of a joist"}),
              size<&Floor::joist, &TimberSize::height>("height", bounds::short_size,
                                                       "of a joist, at its butt"),
              size<&Floor::tip_width>("tip_width", bounds::short_size,
                                      "of joists from tapered logs; their tops lie level",
                                      {.left_out = "as the butt"}),
              size<&Floor::tip_height>("tip_height", bounds::short_size,
                                       "of joists from tapered logs; their tops lie level",
                                       {.left_out = "as the butt"}),
              size<&Floor::spacing>("spacing", bounds::long_size, "on centre", {.remark = "on centre"}),
              size<&Floor::first>("first", bounds::long_size,
                                  "from the room's left side to the middle of the first joist",
                                  {.left_out = "the spacing",
                                   .remark = "from the room's left side to the first joist's middle"}),
              size<&Floor::bearing>("bearing", bounds::short_size, "how far the ends lie in the walls",
                                    {.remark = "in the wall"}),
              one_of<&Floor::pocket>("pocket",
                                     "a tailed one widens into the wall, which ties the walls together",
                                     {.only_where_other = true}),
              slope<&Floor::tail>("tail", "by how much each cheek of a tailed end widens",
                                  {.remark = "each cheek of a tailed end", .only_where_other = true}),
              load<&Floor::live_load>("live_load", bearable, "on the floor: with it, spans are screened",
                                      {.left_out = "no screen"}),
              load<&Floor::dead_load>(
                  "dead_load", bearable,
                  "of boards, ceilings and what stands on them; the timbers' own weight comes on top of it",
                  {.left_out = "0.5 kPa, and the screen says so"}),
              text<&Floor::species>("species", "of its timbers, for their weight and the screen",
                                    {.left_out = "as in `[wood]`"}),
              one_of<&Floor::fabric>("fabric",
                                     "what became of its timbers in an old house, or that they are none",
                                     {.left_out = "`\"new\"`"})}),
         .lists = {told_by({"from_wall"}, list<&Floor::beams>(beam_table(), limits::floor_parts)),
                   told_by({"name"}, list<&Floor::openings>(floor_opening_table(), limits::floor_parts))},
         .comment = "Joists lie from one wall to the one across the room."}};
    return table;
}

} // namespace

Section floor_section() {
    return told_by({"name"}, list<&Shell::floors>(floor_table(), limits::floors));
}

} // namespace roundlay::format
