#include "exporters/report/marks.h"
#include "exporters/report/parts.h"
#include "exporters/sheets/drawing/columns.h"
#include "kernel/record/found_words.h"

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
    return joined({place.wall, number(place.round), number(place.piece), place.timber});
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

std::string mend_kind(MendKind kind, const Words &words) {
    switch (kind) {
    case MendKind::let_in:
        return words.say("a piece let in");
    case MendKind::face:
        return words.say("a new face");
    case MendKind::splice:
        break;
    }
    return words.say("a new end, lapped");
}

std::string mend_face(LogSide face, const Words &words) {
    switch (face) {
    case LogSide::outside:
        return words.words(said_of(FoundFace::outside));
    case LogSide::inside:
        return words.words(said_of(FoundFace::inside));
    case LogSide::top:
        return words.words(said_of(FoundFace::top));
    case LogSide::under:
        break;
    }
    return words.words(said_of(FoundFace::under));
}

/// From which end the lengths are: seen from outside.
std::string mend_reach(const Mend &mend, const Words &words) {
    const auto length = [&](const std::optional<Length> &l) {
        return words.length(l.value_or(Length{}).mm());
    };
    const std::string end = mend.end == LogEnd::left ? words.say("left end") : words.say("right end");
    if (mend.kind == MendKind::splice)
        return words.say("%1: new to %2, lap %3 on from there", end, length(mend.to), length(mend.lap));
    return words.say("%1: from %2 to %3", end, length(mend.from), length(mend.to));
}

/// How the new wood lies in the old: stated in the shell, and not in the record.
Table mend_table(const ReportSource &source, const Words &words) {
    Table table = table_called(words, words.say("Mends"));
    table.columns = {flush_left(words.say("Tag"), 20),   flush_left(words.say("New wood"), 28),
                     flush_left(words.say("How"), 30),   flush_left(words.say("Face"), 20),
                     flush_left(words.say("Where"), 50), flush_left(words.say("Depth"), 20),
                     flush_left(words.say("Note"), 40)};
    for (const NewWood &wood : source.mends) {
        const Mend &mend = wood.mend;
        const std::string by = mend.by.empty() ? "" : words.say("lengths chosen by %1", mend.by);
        table.rows.push_back({source.record->logs[wood.log].tag, wood.tag, mend_kind(mend.kind, words),
                              mend_face(mend.face, words), mend_reach(mend, words),
                              mend.depth ? words.length(mend.depth->mm()) : words.say("half the log"),
                              joined({mend.note, by})});
    }
    return table;
}

} // namespace

std::string said_of_mend_areas(const Words &words) {
    return words.say("Crossed, edged and marked M1, M2 …: new wood that mends the log; dashed: in its inside "
                     "face.");
}

void log_part(ReportPages &pages, const Draft &, const ReportSource &source) {
    pages.begin_part(pages.words().say("Logs"), "report-logs");
    pages.add(log_table(*source.record, pages.words()));
    const Table changes = changes_of_mind(*source.record, pages.words());
    if (!changes.rows.empty()) pages.add(changes);
    if (!source.mends.empty()) {
        pages.add(mend_table(source, pages.words()));
        pages.add_text(pages.words().say("Ends are left and right as seen from outside. No least length of a "
                                         "splice or a patch is published."));
    }
}

} // namespace roundlay::sheets
