#include "exporters/lists/fabric_table.h"
#include "exporters/report/found_numbers.h"
#include "exporters/report/parts.h"
#include "exporters/report/wall_marks.h"
#include "exporters/sheets/drawing/columns.h"
#include "exporters/sheets/schedule/list_paper.h"
#include "kernel/fabric/fabric.h"
#include "kernel/fabric/unrecorded.h"
#include "kernel/record/places.h"

#include <algorithm>

namespace roundlay::sheets {

namespace {

/// The state whose walls are drawn, and the one whose decisions are counted, where that is another.
std::string states_of(const Draft &draft, const ReportSource &source, const Words &words) {
    const std::string &drawn = draft.shell.state, &counted = source.counted_in;
    const std::string of = drawn.empty() ? words.say("the house as the document states it, a state without a "
                                                     "name")
                                         : words.say("the house in its state “%1”", drawn);
    if (counted.empty() || counted == drawn) return of;
    return words.say("%1; old wood that stays and mends by its state “%2”", of, counted);
}

/// Of numbers that stand in this report without a unit.
std::string unit_words(const Record &record, const Words &words) {
    const std::string noted = notation_words(record.notation, words);
    const std::string by_sheet =
        words.say("as it was noted: %1", noted.empty() ? words.say("not stated") : noted);
    return words.system() == UnitSystem::metric
               ? words.say("millimetres (mm); what stands in the record, %1", by_sheet)
               : by_sheet;
}

Table facts(const Draft &draft, const ReportSource &source, const Words &words) {
    const Record &record = *source.record;
    const NumberCounts counts = counts_of(record);
    Table table = table_called(words, words.say("What this rests on"));
    table.columns = {flush_left("", 45), flush_left("", 125)};
    const auto row = [&](std::string what, std::string is) {
        table.rows.push_back({std::move(what), is.empty() ? words.say("not stated") : std::move(is)});
    };
    row(words.say("what is drawn"), states_of(draft, source, words));
    row(words.say("lengths without a unit"), unit_words(record, words));
    row(words.say("measured by"), by_and_on(record.by, record.on, words));
    row(words.say("how exact, and how"), record.exactness);
    row(words.say("not seen"), record.not_seen);
    row(words.say("how new wood is marked"), record.new_work);
    row(words.say("logs recorded"), std::to_string(record.logs.size()));
    row(words.say("numbers of logs"),
        words.say("%1 measured, %2 proposed where nobody has measured, %3 contradicted by another measure",
                  counts.measured, counts.proposed, counts.contradicted));
    return table;
}

/// What the state that is counted makes of openings, and which logs that takes or brings.
Table opening_changes(const ReportSource &source, const Words &words) {
    Table table = table_called(words, words.say("Openings that are closed or cut"));
    table.columns = {flush_left(words.say("Opening"), 40), flush_left("", 25),
                     flush_left(words.say("Old logs that go"), 50),
                     flush_left(words.say("Logs that come"), 50)};
    for (const OpeningChange &change : source.openings)
        table.rows.push_back({words.say("%1, wall %2", words.name(change.name), change.wall),
                              change.closed ? words.say("closed") : words.say("new"), joined(change.goes),
                              joined(change.comes)});
    return table;
}

/// As they stand, then as they stood by the first, the second decision of each log.
std::vector<FabricFigures> figures_of(const Draft &draft, const ReportSource &source) {
    if (!source.fabric.empty()) return source.fabric;
    std::vector<FabricFigures> all{fabric_figures(*source.record, draft.layout, draft.bodies)};
    for (std::size_t i = 1; i < all.front().most; ++i)
        all.push_back(fabric_figures(*source.record, draft.layout, draft.bodies, i));
    return all;
}

void add_fabric(ReportPages &pages, const Draft &draft, const ReportSource &source) {
    const Words &words = pages.words();
    const std::vector<FabricFigures> all = figures_of(draft, source);
    const FabricFigures &figures = all.front();
    const std::vector<FabricFigures> earlier(all.begin() + 1, all.end());
    pages.add(
        on_paper(fabric_table(figures, earlier, words), words, words.say("How much of the old wood stays")));
    for (const std::string &sentence : fabric_words(figures, words))
        pages.add_text(sentence);
}

using Question = bool (*)(const FoundLog &log);

std::vector<std::string> tags_where(const Record &record, Question asked) {
    std::vector<std::string> tags;
    for (const FoundLog &log : record.logs)
        if (asked(log)) tags.push_back(log.tag);
    return tags;
}

bool is_contradicted(const FoundLog &log) {
    return counts_of(log).contradicted > 0;
}
bool has_open_notes(const FoundLog &log) {
    return counts_of(log).open > 0;
}
bool has_harm_of_unknown_depth(const FoundLog &log) {
    return std::ranges::any_of(log.zones, [](const ConditionZone &zone) {
        return (zone.what == Soundness::soft || zone.what == Soundness::rotten) && !zone.depth.is_taken();
    });
}
bool is_decided_without_reason(const FoundLog &log) {
    return !log.decisions.empty() && log.decisions.back().why.empty() &&
           log.decisions.back().what != Decision::keep;
}

/// Logs of the drawing whose zero is neither of their ends nor of their wall's, by whatever name.
std::vector<std::string> tags_off_the_drawing(const Record &record, const Layout &layout) {
    std::vector<std::string> tags;
    for (const auto &logs : form_logs(record, layout).walls)
        for (const FormLog &log : logs)
            if (!log.found.zero.empty() && parts_with_places(log.found) && !zero_of(record, layout, log))
                tags.push_back(log.found.tag);
    return tags;
}

/// What somebody still has to find out or decide, each with the logs that it is about.
Table open_questions(const Record &record, const Layout &layout, const Words &words) {
    const struct {
        Said what;
        Question asked;
    } questions[] = {
        {said("nobody has decided"), [](const FoundLog &log) { return log.decisions.empty(); }},
        {said("decided without a reason"), is_decided_without_reason},
        {said("measures contradict one another"), is_contradicted},
        {said("notes that stay open until their sheet says how they count"), has_open_notes},
        {said("no height or width was measured"),
         [](const FoundLog &log) { return !has_a_size(log) && !is_gone(log); }},
        {said("soft or rotten, and how deep is not recorded"), has_harm_of_unknown_depth},
        {said("where it lay is not known"),
         [](const FoundLog &log) { return log.place.wall.empty() && log.place.timber.empty(); }},
        {said("places along it are noted, and not from which corner: they are drawn nowhere"), lacks_zero},
    };
    Table table = table_called(words, words.say("Open questions"));
    table.columns = {flush_left(words.say("Question"), 60), flush_right(words.say("Logs"), 14),
                     flush_left(words.say("Tags"), 95)};
    const auto add = [&](const Said &what, const std::vector<std::string> &tags) {
        if (!tags.empty())
            table.rows.push_back({words.words(what), std::to_string(tags.size()), joined(tags)});
    };
    for (const auto &question : questions)
        add(question.what, tags_where(record, question.asked));
    add(said("stands in the drawing, and nobody recorded it"), unrecorded_logs(record, layout));
    add(said("places along it are measured from a corner that is no end of it in the drawing: they are drawn "
             "nowhere"),
        tags_off_the_drawing(record, layout));
    return table;
}

} // namespace

void summary_part(ReportPages &pages, const Draft &draft, const ReportSource &source) {
    const Record &record = *source.record;
    pages.begin_part(pages.words().say("Summary"), "report-summary");
    const Words &words = pages.words();
    pages.add(facts(draft, source, words));
    add_fabric(pages, draft, source);
    if (!source.openings.empty()) pages.add(opening_changes(source, words));
    const Table open = open_questions(record, draft.layout, words);
    if (open.rows.empty())
        pages.add_text(words.say("The record leaves no question open that this report asks."));
    else
        pages.add(open);
    pages.add_text(
        words.say("What is stated of a house by law or by its protection is for whoever looks after "
                  "it to say; this report holds what was found and decided, and passes no judgement."));
}

} // namespace roundlay::sheets
