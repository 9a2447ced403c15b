#include "kernel/document/describe.h"

namespace roundlay::format {

namespace {

const TableOf<PegRule> &pegs_table() {
    static const TableOf<PegRule> table{
        {.name = "pegs",
         .summary = "A peg runs down through one log and into the one below it, on the wall's centre line.",
         .items = items<PegRule>(
             {yes_no<&PegRule::wanted>("wanted", "whether there are any"),
              one_of<&PegRule::bored>("bored",
                                      "into each log by its sheet, or through the standing wall as each "
                                      "log is laid: the logs then have no holes for pegs",
                                      {.only_where_other = true}),
              size<&PegRule::diameter>("diameter", bounds::short_size, "of the bore"),
              size<&PegRule::spacing>("spacing", bounds::long_size,
                                      "fastening places of a log are never further apart",
                                      {.remark = "fastening places are never further apart"}),
              size<&PegRule::end_distance>(
                  "end_distance", bounds::short_gap,
                  "from a bore's centre to a cut end, a jamb or a shoulder, at least",
                  {.remark = "from a bore to a cut end, a jamb or a shoulder, at least"}),
              size<&PegRule::between>("between", bounds::short_gap,
                                      "between the centres of two bores in one log, at least",
                                      {.remark = "between two bores in one log, at least"}),
              number<&PegRule::depth_below>(
                  "depth_below", {0, false, 1, "a part of the lower log's height, over 0 and up to 1"},
                  "how deep into the lower log; of round logs a part of the pitch, from the lower log's "
                  "crown down",
                  {.remark = "into the lower log, as a part of its height"}),
              count<&PegRule::fewest>(
                  "fewest", {0, limits::fastenings},
                  "fastening places of a log on the one below it; corners that lock count",
                  {.remark = "fastening places of every log"}),
              size<&PegRule::draw>(
                  "draw", bounds::short_gap,
                  "draw-bore: the hole in the lower log lies this much nearer to the upper log's nearer end",
                  {.remark = "the lower hole nearer to the log's end by this", .only_where_other = true}),
              size<&PegRule::square>("square", bounds::short_size,
                                     "the side of square pegs, driven into the round bores",
                                     {.left_out = "round pegs", .remark = "side of square pegs"})})}};
    return table;
}

void check_end(TableReading &at, StatedBore &bore) {
    if (*bore.to_round < bore.from_round)
        at.reading.error(at.table.place_of("to_round"), "the bore ends below its start",
                         "round " + std::to_string(bore.from_round) + " or a higher one");
}

const TableOf<StatedBore> &bore_table() {
    static const TableOf<StatedBore> table{
        {.name = "bore",
         .summary = "An upright bore at a stated place, down through the rounds of one wall.",
         .items = items<StatedBore>(
             {text<&StatedBore::name>("name", "what you call it"),
              one_of<&StatedBore::use>(
                  "use", "a through bolt, a hold-down rod, a way for wiring, or a hole found in old wood",
                  {.missing = "use = \"bolt\", \"rod\", \"wire\" or \"hole\""}),
              wall_name<&StatedBore::wall>("wall", "the wall it stands in",
                                           {.missing = "the wall it stands in: wall = \"A\""}),
              size<&StatedBore::from_left>(
                  "from_left", bounds::long_place,
                  "from the wall's left outside corner, seen from outside, to its middle",
                  {.missing =
                       "from the wall's left outside corner, seen from outside, to the bore's middle"}),
              size<&StatedBore::from_outside>("from_outside", bounds::short_size,
                                              "from the outside face to its middle",
                                              {.left_out = "the middle of the wall"}),
              size<&StatedBore::diameter>("diameter", bounds::short_size, "of the bore",
                                          {.missing = "diameter = \"20 mm\""}),
              count<&StatedBore::from_round>("from_round", {1, limits::logs_high},
                                             "the lowest and the highest round that it goes through",
                                             {.left_out = "the first"}),
              count<&StatedBore::to_round>("to_round", {1, limits::logs_high},
                                           "the lowest and the highest round that it goes through",
                                           {.left_out = "the last"})
                  .check<check_end>(),
              size<&StatedBore::drift>(
                  "drift", bounds::short_shift,
                  "as found: how far to the right each log's hole lies of the one below it; negative to the "
                  "left",
                  {.remark = "of each log's hole to the right of the one below",
                   .only_where_other = true})})}};
    return table;
}

void check_species(TableReading &at, Wood &wood) {
    if (wood.species.empty())
        at.reading.error(at.table.place_of("species"), "\"species\" is empty",
                         "the name of a wood, such as \"eastern hemlock\"");
}

const TableOf<Wood> &wood_table() {
    static const TableOf<Wood> table{
        {.name = "wood",
         .summary = "What the logs are, for weights and spans.",
         .items = items<Wood>(
             {text<&Wood::species>("species", "the name of the wood, for weights and spans",
                                   {.left_out = "eastern hemlock is taken, and said to be",
                                    .absent = "species = \"eastern hemlock\" # for weights and spans; left "
                                              "out, that is taken and said to be"})
                  .check<check_species>(),
              number<&Wood::moisture>(
                  "moisture",
                  {0, true, limits::moisture, "percent of ovendry mass, from 0 to 300, without quotes"},
                  "often over 100 in green wood",
                  {.left_out = "green",
                   .remark = "percent of ovendry mass",
                   .absent = "moisture = 19 # percent of ovendry mass; left out means green"})})}};
    return table;
}

} // namespace

Section pegs_section() {
    return once<&Shell::pegs>(pegs_table());
}

Section bore_section() {
    return told_by({"name"}, list<&Shell::bores>(bore_table(), limits::bores));
}

Section wood_section() {
    return once<&Shell::wood>(wood_table());
}

} // namespace roundlay::format
