#include "kernel/document/describe.h"

namespace roundlay::format {

namespace {

static_assert(pieces_of_one_entry == limits::texts);

const TableOf<Done> &done_table() {
    static const TableOf<Done> table{
        {.name = "done",
         .summary = "What is done already, piece by piece: taken down, cut, looked over, raised, pegged.",
         .items =
             items<Done>({one_of<&Done::what>("what", "what was done to these pieces",
                                              {.missing = "what was done: what = \"up\""}),
                          texts<&Done::pieces>(
                              "pieces", "their tags; one that the shell no longer has stays as it stands",
                              {.missing = "the tags of the pieces: pieces = [\"A-01-1\"]"}),
                          text<&Done::state>("state", "the state of the house that they are pieces of",
                                             {.left_out = "whichever is seen"}),
                          text<&Done::by>("by", "who did it"), text<&Done::on>("on", "when, in any words"),
                          text<&Done::note>("note", "whatever should be known of it")}),
         .comment = "What is done already, by the tags of the pieces."}};
    return table;
}

} // namespace

Section done_section() {
    Section section = list<&Record::done>(done_table(), limits::logs);
    section.of_record = true;
    return section;
}

} // namespace roundlay::format
