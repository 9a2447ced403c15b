#include "exporters/report/marks.h"
#include "exporters/report/parts.h"
#include "exporters/sheets/drawing/columns.h"

namespace roundlay::sheets {

namespace {

std::string decided(const FoundDecision &decision, const Words &words) {
    const MarkOf mark = mark_of(std::optional(decision.what), words);
    const std::string what = words.say("%1 %2", mark.letter, mark.meaning);
    return decision.what == Decision::use_elsewhere
               ? words.say("%1: %2", what, place_words(decision.to, words))
               : what;
}

std::string short_place(const FoundPlace &place) {
    const auto number = [](std::optional<int> n) { return n ? std::to_string(*n) : std::string(); };
    return joined({place.wall, number(place.round), number(place.piece)});
}

Table log_table(const Record &record, const Words &words) {
    Table table = table_called(words, words.say("Every log, its condition and what is decided"));
    table.columns = {flush_left(words.say("Tag"), 16),       flush_left(words.say("Wall, round, piece"), 20),
                     flush_left(words.say("Condition"), 32), flush_left(words.say("Cause"), 24),
                     flush_left(words.say("Urgency"), 20),   flush_left(words.say("Decision"), 24),
                     flush_left(words.say("Reason"), 34),    flush_left(words.say("By, on"), 20)};
    for (const FoundLog &log : record.logs) {
        std::vector<std::string> row{log.tag, short_place(log.place), log.condition, log.cause, log.urgency};
        if (log.decisions.empty()) {
            const MarkOf mark = mark_of(std::optional<Decision>(), words);
            row.insert(row.end(), {words.say("%1 %2", mark.letter, mark.meaning), "", ""});
        } else {
            const FoundDecision &last = log.decisions.back();
            row.insert(row.end(), {decided(last, words), last.why, by_and_on(last.by, last.on, words)});
        }
        table.rows.push_back(std::move(row));
    }
    return table;
}

/// Decisions that were taken before another one, in the order in which they were.
Table changes_of_mind(const Record &record, const Words &words) {
    Table table = table_called(words, words.say("Changes of mind"));
    table.columns = {flush_left(words.say("Tag"), 20), flush_right(words.say("No."), 10),
                     flush_left(words.say("Decision"), 40), flush_left(words.say("Reason"), 65),
                     flush_left(words.say("By, on"), 35)};
    for (const FoundLog &log : record.logs)
        for (std::size_t i = 0; log.decisions.size() > 1 && i < log.decisions.size(); ++i) {
            const FoundDecision &each = log.decisions[i];
            table.rows.push_back({log.tag, std::to_string(i + 1), decided(each, words), each.why,
                                  by_and_on(each.by, each.on, words)});
        }
    return table;
}

} // namespace

std::vector<Sheet> log_part(const Draft &draft, const ReportSource &source) {
    ReportPages pages = pages_of(draft, draft.words().say("Logs"), "logs");
    pages.add(log_table(*source.record, pages.words()));
    const Table changes = changes_of_mind(*source.record, pages.words());
    if (!changes.rows.empty()) pages.add(changes);
    return pages.finished();
}

} // namespace roundlay::sheets
