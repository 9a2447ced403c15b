#include "kernel/document/describe.h"
#include "kernel/document/describe_found_parts.h"

namespace roundlay::format {

namespace {

constexpr char nobody_knows[] = "nobody knows";

/// Where it lies, and what it has to do with other logs.
std::vector<Item> identity() {
    return items<FoundLog>(
        {text<&FoundLog::tag>("tag", "what the log is called for ever: any text that no other log has",
                              {.missing = "its tag, which no other log has: tag = \"A 1.1\""}),
         text<&FoundLog::place, &FoundPlace::wall>(
             "wall",
             "where it lies; walls may be renamed and rounds put in between, and the log stays the same",
             {.left_out = nobody_knows}),
         count<&FoundLog::place, &FoundPlace::round>("round", {1, limits::logs_high},
                                                     "the round it lies in; 1 is the sill log",
                                                     {.left_out = nobody_knows}),
         count<&FoundLog::place, &FoundPlace::piece>(
             "piece", {1, limits::pieces},
             "which of the logs it is that openings part the round into, from the left",
             {.left_out = "the whole round"}),
         text<&FoundLog::place, &FoundPlace::timber>(
             "timber",
             "of a joist, beam or trimmer: its tag in the plan, such as `L-J03`, instead of wall and round",
             {.left_out = "it is a log of a wall"}),
         texts<&FoundLog::scarfed_to>("scarfed_to", "tags of the logs that it makes one timber with"),
         text<&FoundLog::cut_from>(
             "cut_from", "what the log was called before it was cut up; its other pieces say the same",
             {.left_out = "it is whole"}),
         text<&FoundLog::replaces>("replaces", "tag of the log in whose place it came", {.left_out = "none"}),
         text<&FoundLog::sheet>("sheet", "the `[[record.sheet]]` that its numbers stand on",
                                {.left_out = "as in `[record]`"}),
         text<&FoundLog::by>("by", "who says so, where a number does not say itself",
                             {.left_out = "as its sheet or `[record]` says"}),
         text<&FoundLog::on>("on", "when, in any words", {.left_out = "as its sheet or `[record]` says"})});
}

std::vector<Item> sizes() {
    return items<FoundLog>(
        {text<&FoundLog::zero>("zero", "the corner that running dimensions along it start from",
                               {.left_out = "not said"}),
         noted<&FoundLog::length>("length", "over all"),
         noted<&FoundLog::between_shoulders>("between_shoulders", "from shoulder to shoulder"),
         text<&FoundLog::butt>("butt", "the corner at which its butt end lies", {.left_out = nobody_knows}),
         noted<&FoundLog::bow>("bow", "how far its middle stands out of the line between its ends"),
         one_of<&FoundLog::bow_to>("bow_to", "the face that it bows out to", {.left_out = "not said"}),
         noted<&FoundLog::wind>("wind",
                                "how far an edge at one end stands out of the plane of the other end")});
}

std::vector<Item> wood() {
    static constexpr char finish_what[] = "what each face is left as, in any words";
    return items<FoundLog>(
        {text<&FoundLog::species>("species", "of its wood", {.left_out = nobody_knows}),
         text<&FoundLog::finish, &FaceFinish::outside>("finish_outside", finish_what),
         text<&FoundLog::finish, &FaceFinish::inside>("finish_inside", finish_what),
         text<&FoundLog::finish, &FaceFinish::top>("finish_top", finish_what),
         text<&FoundLog::finish, &FaceFinish::under>("finish_under", finish_what),
         texts<&FoundLog::marks>("marks", "old marks on it"),
         texts<&FoundLog::photographs>("photographs", "file names; the pictures stay where they are"),
         text<&FoundLog::condition>("condition", "what it is like as a whole"),
         text<&FoundLog::cause>("cause", "why it is like that"),
         text<&FoundLog::urgency>("urgency", "when something must be done"),
         text<&FoundLog::note>("note", "whatever should be known of it")});
}

std::vector<Item> all_items() {
    std::vector<Item> all = identity();
    for (const auto &some : {sizes(), wood()})
        all.insert(all.end(), some.begin(), some.end());
    return all;
}

const TableOf<FoundLog> &found_table() {
    static const TableOf<FoundLog> table{{.name = "found",
                                          .summary = "A log of a house that stands, as it was found.",
                                          .items = all_items(),
                                          .lists = lists_of_found()}};
    return table;
}

} // namespace

Section found_section() {
    Section section = list<&Record::logs>(found_table(), limits::logs);
    section.of_record = true;
    section.known_by = "tag";
    return section;
}

} // namespace roundlay::format
