#include "kernel/document/describe.h"

namespace roundlay::format {

namespace {

const TableOf<LogSizes> &logs_table() {
    static const TableOf<LogSizes> table{
        {.name = "logs",
         .summary = "Butt and tip of every log. State nothing here where all logs are alike from end to end.",
         .items = items<LogSizes>(
             {size<&LogSizes::butt_height>(
                  "butt_height", bounds::short_size,
                  "at the two ends of a log; a half log is half of such a one, less half the gap; not in a "
                  "shell of saddles, whose logs are even cylinders",
                  {.left_out = "the wall's log height"}),
              size<&LogSizes::tip_height>(
                  "tip_height", bounds::short_size,
                  "at the two ends of a log; a half log is half of such a one, less half the gap; not in a "
                  "shell of saddles, whose logs are even cylinders",
                  {.left_out = "the wall's log height"}),
              size<&LogSizes::butt_width>("butt_width", bounds::short_size,
                                          "at the two ends of a log; at most the wall's thickness, which is "
                                          "that of its widest log; not in a shell of saddles",
                                          {.left_out = "the wall's thickness"}),
              size<&LogSizes::tip_width>("tip_width", bounds::short_size,
                                         "at the two ends of a log; at most the wall's thickness, which is "
                                         "that of its widest log; not in a shell of saddles",
                                         {.left_out = "the wall's thickness"}),
              size<&LogSizes::diameter>("diameter", bounds::short_size,
                                        "of the round stick that a log is made of; what of its section would "
                                        "lie outside that is wane",
                                        {.left_out = "no wane; in a shell of saddles the wall's thickness"}),
              one_of<&LogSizes::butt>("butt", "where the butt lies, seen from outside",
                                      {.left_out = "changes from round to round, left in round 1"}),
              one_of<&LogSizes::finish>("finish", "what its faces are left as",
                                        {.left_out = "hewn; of round logs peeled"})}),
         .comment =
             "Butt and tip of every log; butt = \"left\" or \"right\", seen from outside. Left out: as "
             "the wall."}};
    return table;
}

/// Logs that an opening parts lie in one straight line: what shapes them is stated of the whole round.
constexpr const char *of_rounds[] = {"butt_height",   "tip_height",     "butt_width", "tip_width", "diameter",
                                     "butt",          "kind",           "slope",      "along",     "across",
                                     "overhang_left", "overhang_right", "gap_left",   "gap_right", "scribe"};

void say_of_rounds(TableReading &at, const char *key) {
    at.reading.error(at.table.place_of(key),
                     "\"" + std::string(key) +
                         "\" cannot be stated of one piece of a round, whose logs lie in "
                         "one straight line",
                     "it in a [[log]] without \"piece\"");
}

void check_of_piece(TableReading &at, OwnLog &) {
    for (const char *key : of_rounds)
        if (at.table.states(key)) say_of_rounds(at, key);
}

/// Measured logs come from long lists, so a log that stands there twice is more likely a slip than meant.
void check_log_once(TableReading &at, OwnLog &log) {
    if (!at.table.is_right("wall") || !at.table.is_right("round")) return;
    const auto &before = at.shell.own_logs;
    for (std::size_t i = 0; i < before.size(); ++i) {
        if (before[i].wall != log.wall || before[i].round != log.round || before[i].piece != log.piece)
            continue;
        const int line = at.reading.place_of("log[" + std::to_string(i) + "]").line;
        at.reading.warning(at.table.place(),
                           "round " + std::to_string(log.round) + " of wall \"" + log.wall +
                               "\" is stated twice; where this one differs from the other in line " +
                               std::to_string(line) + ", this one counts");
        return;
    }
}

void check_log(TableReading &at, OwnLog &log) {
    check_log_once(at, log);
    if (log.piece && !log.tails.empty()) say_of_rounds(at, "tail");
    if (log.notch.kind && *log.notch.kind != NotchKind::stated)
        for (const char *key : {"along", "across"})
            warn_unused(at, key, "kind = \"stated\"");
}

void check_tail(TableReading &at, OwnTail &tail) {
    if (tail.along.has_value() != tail.across.has_value())
        at.table.require(tail.along ? "across" : "along",
                         "the other slope of the tail's top: both, or neither");
}

const TableOf<OwnTail> &tail_table() {
    static const TableOf<OwnTail> table{
        {.name = "log.tail",
         .summary = "The tail at one end of a log, where it was measured or is cut by itself.",
         .items = items<OwnTail>(
             {one_of<&OwnTail::end>("end", "at which end of the log, seen from outside",
                                    {.missing = "the end it is at, seen from outside"}),
              falling_slope<&OwnTail::along>("along", "of its top, outward along the log; `across` with it",
                                             {.left_out = "as of the log's other tail"}),
              falling_slope<&OwnTail::across>("across",
                                              "of its top, outward along the crossing log; `along` with it",
                                              {.left_out = "as of the log's other tail"}),
              size<&OwnTail::height>(
                  "height", bounds::short_size,
                  "from what it lies on to its top, where the middles of the two walls cross",
                  {.left_out = "the seam lies midway between the middles of the two logs"}),
              size<&OwnTail::gap>("gap", bounds::short_gap,
                                  "left open between what it would lie on and its underside; its height is "
                                  "of the wood over it. Not of the lowest log",
                                  {.left_out = "0"})}),
         .check = checked<OwnTail, check_tail>}};
    return table;
}

std::vector<Item> where_it_lies() {
    return items<OwnLog>(
        {wall_name<&OwnLog::wall>("wall", "the wall it lies in",
                                  {.missing = "the wall it lies in: wall = \"A\""}),
         // A wall that starts with a half log can end with one more than there are rounds.
         count<&OwnLog::round>("round", {1, limits::logs_high}, "the round it lies in; 1 is the sill log",
                               {.missing = "the round it lies in, the sill log being 1"}),
         count<&OwnLog::piece>(
             "piece", {1, limits::pieces},
             "only that one of the logs that openings part the round into, counted "
             "from the left: its `mark`, `finish`, `bow`, `fabric`, `species` and "
             "`note`; all else is stated of the whole round, whose logs lie in one straight line",
             {.left_out = "the whole round", .remark = "counted from the left"})
             .check<check_of_piece>(),
         text<&OwnLog::mark>("mark", "what is written on the log itself", {.left_out = "nothing"})});
}

std::vector<Item> how_it_is_cut() {
    return items<OwnLog>(
        {shared<&OwnLog::sizes>(logs_table(), "as in `[logs]`"),
         one_of_but<&OwnLog::notch, &LogNotch::kind>("kind", "saddle",
                                                     "of the tops of this log's tails, as in `[notch]`",
                                                     {.left_out = "as at its corners"}),
         slope<&OwnLog::notch, &LogNotch::slope>("slope", "of the tops of this log's tails, as in `[notch]`",
                                                 {.left_out = "as at its corners"}),
         falling_slope<&OwnLog::notch, &LogNotch::along>(
             "along", "of the tops of this log's tails, as in `[notch]`", {.left_out = "as at its corners"}),
         falling_slope<&OwnLog::notch, &LogNotch::across>("across",
                                                          "of the tops of this log's tails, as in `[notch]`",
                                                          {.left_out = "as at its corners"})});
}

std::vector<Item> where_it_ends() {
    return items<OwnLog>({size<&OwnLog::notch, &LogNotch::overhang_left>(
                              "overhang_left", bounds::long_place,
                              "how far its two ends run past the crossing walls, seen from outside",
                              {.left_out = "as at its corners"}),
                          size<&OwnLog::notch, &LogNotch::overhang_right>(
                              "overhang_right", bounds::long_place,
                              "how far its two ends run past the crossing walls, seen from outside",
                              {.left_out = "as at its corners"})});
}

std::vector<Item> what_it_lies_on() {
    return items<OwnLog>(
        {size<&OwnLog::gap_left>(
             "gap_left", bounds::short_gap,
             "from the top of the log below to its underside at its left end, seen from outside; of the "
             "first log from the lowest foundation, on packing. Not in a shell of saddles",
             {.left_out = "the wall's gap; of the first log 0", .remark = "under its left end"}),
         size<&OwnLog::gap_right>(
             "gap_right", bounds::short_gap, "the same at its right end",
             {.left_out = "the wall's gap; of the first log 0", .remark = "under its right end"}),
         size<&OwnLog::scribe>(
             "scribe", bounds::short_gap,
             "so far its seams at corners are cut clear of those of the logs that they "
             "meet, and scribed to them at the wall: for a log that comes between old ones. "
             "Not in a shell of saddles, whose `[notch]` says so",
             {.left_out = "0"})});
}

std::vector<Item> what_is_known_of_it() {
    return items<OwnLog>(
        {size<&OwnLog::bow>("bow", bounds::short_gap,
                            "as measured: how far its middle stands out of the line between its ends. It "
                            "stands on the cut sheet and in the list, and the check says what it does to "
                            "gaps; the model stays straight, as a log is hewn or turned to lie",
                            {.left_out = "straight", .remark = "out of the line between its ends"}),
         one_of<&OwnLog::fabric>("fabric", "what became of an old log, or that it is none",
                                 {.left_out = "`\"new\"`"}),
         text<&OwnLog::species>("species", "of its wood, for its weight", {.left_out = "as in `[wood]`"}),
         text<&OwnLog::note>("note",
                             "whatever should be known of it; it stands on the cut sheet and in the list",
                             {.left_out = "nothing"})});
}

std::vector<Item> together(std::initializer_list<std::vector<Item>> parts) {
    std::vector<Item> all;
    for (const std::vector<Item> &part : parts)
        all.insert(all.end(), part.begin(), part.end());
    return all;
}

const TableOf<OwnLog> &log_table() {
    static const TableOf<OwnLog> table{
        {.name = "log",
         .summary =
             "One log that differs from its fellows, or was measured. What it leaves out is as in [logs].",
         .items = together(
             {where_it_lies(), how_it_is_cut(), where_it_ends(), what_it_lies_on(), what_is_known_of_it()}),
         .lists = {told_by({"end"}, list_in_lines<&OwnLog::tails>(tail_table(), 2))},
         .check = checked<OwnLog, check_log>}};
    return table;
}

} // namespace

Section logs_section() {
    Section section = once<&Shell::logs>(logs_table());
    section.only_where_other = true;
    return section;
}

Section log_section() {
    Section section = list<&Shell::own_logs>(log_table(), limits::logs);
    section.told_by = {"wall", "round", "piece"};
    section.only_says_more = true;
    return section;
}

} // namespace roundlay::format
