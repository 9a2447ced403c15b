#include "kernel/document/describe.h"

namespace roundlay::format {

namespace {

/// Cuts are named after their opening on sheets and lists: two of one name are allowed, but easily mixed up.
void check_name(TableReading &at, Opening &opening) {
    if (opening.name.empty()) return;
    const auto &before = at.shell.openings;
    for (std::size_t i = 0; i < before.size(); ++i) {
        if (before[i].name != opening.name) continue;
        const int line = at.reading.place_of("opening[" + std::to_string(i) + "].name").line;
        at.reading.warning(at.table.place_of("name"),
                           "two openings are called " + quoted_for_message(opening.name) +
                               "; the other one stands in line " + std::to_string(line),
                           "a name of its own for each opening");
        return;
    }
}

void check_sill(TableReading &at, Opening &opening) {
    if (opening.kind == OpeningKind::door)
        at.reading.warning(at.table.place_of("sill_slope"), "the sill of a door is not sloped",
                           "kind = \"window\"");
}

const TableOf<Opening> &opening_table() {
    static const TableOf<Opening> table{
        {.name = "opening",
         .summary = "A rough opening, measured on the wall's outside face.",
         .items = items<Opening>(
             {text<&Opening::name>("name", "what you call it; it stands on sheets and lists")
                  .check<check_name>(),
              one_of<&Opening::kind>("kind", "what it is for"),
              wall_name<&Opening::wall>("wall", "the wall it is in",
                                        {.missing = "the wall it is in: wall = \"A\""}),
              size<&Opening::from_left>(
                  "from_left", bounds::long_place,
                  "from the wall's left outside corner, seen from outside, to the left jamb",
                  {.missing = "the distance from the wall's left outside corner, seen from outside, to the "
                              "left jamb"}),
              size<&Opening::sill>("sill", bounds::long_place, "foundation to the underside of the opening",
                                   {.missing = "the height of its underside over the foundation"}),
              size<&Opening::width>("width", bounds::long_size, "jamb to jamb",
                                    {.missing = "the clear width between the jambs"}),
              size<&Opening::height>("height", bounds::long_size, "sill to header",
                                     {.missing = "the clear height from sill to header"}),
              size<&Opening::trim, &OwnTrim::spline_width>("spline_width", bounds::short_gap,
                                                           "as in `[trim]`, of this opening alone",
                                                           {.left_out = "as in `[trim]`"}),
              size<&Opening::trim, &OwnTrim::spline_depth>(
                  "spline_depth", bounds::short_gap,
                  "as in `[trim]`, of this opening alone; 0 leaves its jambs without a groove",
                  {.left_out = "as in `[trim]`"}),
              slope<&Opening::trim, &OwnTrim::sill_slope>(
                  "sill_slope", "as in `[trim]`, of this opening alone", {.left_out = "as in `[trim]`"})
                  .check<check_sill>(),
              size<&Opening::trim, &OwnTrim::settle_space>("settle_space", bounds::short_gap,
                                                           "as in `[trim]`, of this opening alone",
                                                           {.left_out = "as in `[trim]`"}),
              one_of<&Opening::trim, &OwnTrim::settling>(
                  "settling",
                  "the rule of this opening alone, as where a frame stands in other wood; it goes before a "
                  "settle space of `[trim]`",
                  {.left_out = "as in `[trim]`"}),
              size<&Opening::trim, &OwnTrim::header_bearing>("header_bearing", bounds::short_gap,
                                                             "as in `[trim]`, of this opening alone",
                                                             {.left_out = "as in `[trim]`"})}),
         .comment = "Openings: from_left runs from the wall's left corner seen from outside, sill from the "
                    "foundation."}};
    return table;
}

const TableOf<FoundationStep> &step_table() {
    static const TableOf<FoundationStep> table{
        {.name = "step",
         .summary =
             "A stretch of a wall where the foundation stands higher: the rounds below it start there.",
         .items = items<FoundationStep>(
             {wall_name<&FoundationStep::wall>("wall", "the wall that stands on it",
                                               {.missing = "the wall that stands on it: wall = \"A\""}),
              size<&FoundationStep::from_left>(
                  "from_left", bounds::long_place,
                  "where it starts, from the wall's left corner seen from outside",
                  {.missing = "where it starts, from the wall's left corner seen from outside"}),
              size<&FoundationStep::width>("width", bounds::long_size, "how far it runs along the wall",
                                           {.missing = "how far it runs along the wall"}),
              size<&FoundationStep::rise>("rise", bounds::long_size, "over the lowest foundation",
                                          {.missing = "how much higher than the lowest foundation it is",
                                           .remark = "over the lowest foundation"})})}};
    return table;
}

constexpr const char *groove_needs = "a spline groove needs a width and a depth",
                     *groove_expected = "both of spline_width and spline_depth, or neither";

void check_groove(TableReading &at, Trim &trim) {
    if ((trim.spline_width.mm() > 0) != (trim.spline_depth.mm() > 0))
        at.reading.error(at.table.place(), groove_needs, groove_expected);
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
                      groove_needs, groove_expected);
}

void check_own_grooves(Reading &reading, void *around) {
    const Shell &shell = *static_cast<const Shell *>(around);
    for (std::size_t i = 0; i < shell.openings.size(); ++i)
        check_own_groove(reading, shell, i);
}

const TableOf<Trim> &trim_table() {
    static const TableOf<Trim> table{
        {.name = "trim",
         .summary = "What is cut at openings for their frames, and the space the logs need to come down as "
                    "they dry.",
         .items = items<Trim>(
             {size<&Trim::spline_width>(
                  "spline_width", bounds::short_gap,
                  "the upright groove in the middle of each jamb that a spline slides in; both or neither",
                  {.left_out = "none", .remark = "the groove in each jamb", .only_where_other = true}),
              size<&Trim::spline_depth>(
                  "spline_depth", bounds::short_gap,
                  "the upright groove in the middle of each jamb that a spline slides in; both or neither",
                  {.left_out = "none", .only_where_other = true}),
              slope<&Trim::sill_slope>("sill_slope", "by which the log under a window falls outward",
                                       {.remark = "falls outward", .only_where_other = true}),
              size<&Trim::settle_space>(
                  "settle_space", bounds::short_gap, "over each frame; less than the opening is high",
                  {.left_out = "by the settling of the logs beside it", .remark = "over each frame"}),
              one_of<&Trim::settling>(
                  "settling", "the rule by which the settle space is worked out where none is stated",
                  {.left_out = "by the kind of wall", .remark = "where no settle_space is stated"}),
              size<&Trim::header_bearing>(
                  "header_bearing", bounds::short_gap,
                  "the log over an opening runs past it by this at both sides, at least",
                  {.remark = "of the log over an opening, at both sides", .only_where_other = true})}),
         .check = checked<Trim, check_groove>}};
    return table;
}

} // namespace

Section opening_section() {
    return told_by({"name"}, list<&Shell::openings>(opening_table(), limits::openings));
}

Section step_section() {
    return told_by({"wall", "from_left"}, list<&Shell::steps>(step_table(), limits::openings));
}

Section trim_section() {
    Section section = once<&Shell::trim>(trim_table());
    section.only_where_other = true;
    section.check = check_own_grooves;
    return section;
}

} // namespace roundlay::format
