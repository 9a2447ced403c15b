#include "kernel/document/describe.h"

namespace roundlay::format {

namespace {

/// What only another kind of mend has. What it needs itself is told where the log is cut, with all that does
/// not fit it.
void check_mend(TableReading &at, Mend &mend) {
    if (!at.table.is_right("kind")) return;
    if (mend.kind != MendKind::splice) warn_unused(at, "lap", "kind = \"splice\"");
    if (mend.kind == MendKind::splice) warn_unused(at, "from", "kind = \"let in\", kind = \"face\"");
    if (mend.kind != MendKind::let_in)
        for (const char *key : {"low", "high"})
            warn_unused(at, key, "kind = \"let in\"");
}

std::vector<Item> which_log() {
    return items<Mend>(
        {text<&Mend::name>("name", "what you call it; states tell mends apart by it"),
         text<&Mend::mark>("mark",
                           "what is written on the log, in a measured state its tag; or `wall` and `round`",
                           {.left_out = "the log is named by its place"}),
         wall_name<&Mend::wall>("wall", "the wall that the log lies in",
                                {.left_out = "the log is named by its mark"}),
         count<&Mend::round>("round", {1, limits::logs_high}, "the round it lies in; 1 is the sill log",
                             {.left_out = "the log is named by its mark"}),
         count<&Mend::piece>("piece", {1, limits::pieces},
                             "which of the logs that openings part the round into, counted from the left",
                             {.left_out = "the round has one log only"})});
}

std::vector<Item> where_it_is_cut() {
    return items<Mend>(
        {one_of<&Mend::kind>("kind",
                             "a piece let into a part of one face; one whole face renewed over a length, "
                             "which from below is a half-sole; or a new end, lapped with what stays",
                             {.missing = "kind = \"let in\", \"face\" or \"splice\""}),
         one_of<&Mend::face>("face",
                             "the face that it opens to; of a splice the half of the log that the new end's "
                             "lap lies in: top or under make its plane level, outside or inside upright"),
         one_of<&Mend::end>("end",
                            "the log's end that lengths start from, seen from outside; of a splice the new "
                            "one"),
         size<&Mend::from>("from", bounds::long_place,
                           "along the log from that end, tail and all; stated unless it is a splice",
                           {.left_out = "none"}),
         size<&Mend::to>("to", bounds::long_size,
                         "along the log from that end; of a splice where the old wood begins",
                         {.missing = "how far along the log the new wood reaches"}),
         size<&Mend::lap>("lap", bounds::long_size,
                          "of a splice, and stated there: how far both halves lie side by side, on from "
                          "`to`. No least length is published: it is the maker's choice",
                          {.left_out = "none"}),
         size<&Mend::depth>("depth", bounds::short_size,
                            "from the face as hewn, and even along it; stated unless it is a splice",
                            {.left_out = "of a splice half the log"}),
         size<&Mend::low>("low", bounds::short_gap,
                          "of a piece let in, across its face: on a side face over the log's under face, on "
                          "the top and under face from its outside face, both where it begins",
                          {.left_out = "from edge to edge"}),
         size<&Mend::high>("high", bounds::short_size,
                           "of a piece let in, across its face: on a side face over the log's under face, on "
                           "the top and under face from its outside face, both where it begins",
                           {.left_out = "from edge to edge"})});
}

std::vector<Item> what_comes_in() {
    return items<Mend>(
        {text<&Mend::species>("species", "of the new wood, for its weight; sound and dry, as the old is",
                              {.left_out = "as in `[wood]`"}),
         one_of<&Mend::finish>("finish", "what the new wood's faces are left as",
                               {.left_out = "as the log's"}),
         text<&Mend::by>("by", "who chose the lengths; it stands on the cut sheets"),
         text<&Mend::note>("note",
                           "whatever should be known of it; it stands on the new piece's cut sheet and in "
                           "lists")});
}

const TableOf<Mend> &mend_table() {
    static const TableOf<Mend> table = [] {
        TableOf<Mend> made{
            {.name = "mend",
             .summary = "A part of one log that is taken out, and the piece of new wood that comes in its "
                        "place.",
             .items = which_log(),
             .check = checked<Mend, check_mend>}};
        for (const auto &more : {where_it_is_cut(), what_comes_in()})
            made.items.insert(made.items.end(), more.begin(), more.end());
        return made;
    }();
    return table;
}

} // namespace

Section mend_section() {
    return told_by({"name"}, list<&Shell::mends>(mend_table(), limits::mends));
}

} // namespace roundlay::format
