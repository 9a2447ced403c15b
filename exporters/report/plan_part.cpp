#include "exporters/report/marks.h"
#include "exporters/report/parts.h"
#include "exporters/report/plan_drawing.h"
#include "exporters/sheets/drawing/columns.h"
#include "kernel/record/numbers.h"
#include "kernel/survey/survey.h"

#include <algorithm>
#include <map>

namespace roundlay::sheets {

namespace {

/// "K 12, M 1": how many logs of the wall each decision takes.
std::string counts_of(const std::vector<FormLog> &logs, const Words &words) {
    std::map<std::string, int> counts;
    std::vector<std::string> letters, all;
    for (const MarkOf &mark : decision_marks(words))
        letters.push_back(mark.letter);
    for (const FormLog &log : logs)
        ++counts[log.recorded ? mark_of(last_decision(log.found), words).letter
                              : mark_of_unrecorded(words).letter];
    for (const std::string &letter : letters)
        if (counts.contains(letter)) all.push_back(letter + " " + std::to_string(counts[letter]));
    return joined(all);
}

/// Nothing where no scale that is drawn to fits.
std::optional<Block> plan_of(const Draft &draft, const Record &record, const ReportPages &pages) {
    const Words &words = pages.words();
    const FormLogs logs = form_logs(record, draft.layout);
    const PlanMarks marks{
        [&](Index<WallPlace> wall) { return counts_of(logs.walls[wall], words); },
        [&](const std::string &corner) { return corner_name(record, draft.layout, corner); },
        {},
        {}};
    const double tallest = pages.room().height() * 0.48;
    const Scale *scale = plan_scale({{&draft, &marks}}, words, pages.room().width(), tallest);
    if (scale == nullptr) return {};
    return drawn_plan(draft, marks, words, *scale);
}

Table corner_table(const Record &record, const Words &words) {
    Table table = table_called(words, words.say("Corners, as they were measured"));
    table.columns = {
        flush_left(words.say("Corner"), 18),      flush_left(words.say("Level"), 22),
        flush_left(words.say("Plane"), 16),       flush_left(words.say("Leans out, first wall"), 26),
        flush_left(words.say("second wall"), 24), flush_left(words.say("over"), 20),
        flush_left(words.say("Note"), 55)};
    for (const RecordedCorner &corner : record.corners)
        table.rows.push_back({corner.name, noted_words(corner.level, words), corner.plane,
                              noted_words(corner.lean_first, words), noted_words(corner.lean_second, words),
                              noted_words(corner.lean_over, words), corner.note});
    return table;
}

Table length_table(const Record &record, const Words &words) {
    Table table = table_called(words, words.say("Walls and diagonals, as they were measured"));
    table.columns = {flush_left(words.say("What"), 50), flush_left(words.say("Side"), 30),
                     flush_left(words.say("Length"), 35), flush_left(words.say("Note"), 55)};
    const auto side = [&](ReadFrom from) {
        return from == ReadFrom::outside ? words.say("outside") : words.say("inside");
    };
    for (const RecordedWall &wall : record.walls)
        table.rows.push_back({words.say("Wall %1", wall.wall), side(wall.read_from),
                              noted_words(wall.length, words), wall.note});
    for (const Diagonal &diagonal : record.diagonals)
        table.rows.push_back({words.say("from %1 to %2", diagonal.from, diagonal.to), side(diagonal.side),
                              noted_words(diagonal.length, words), ""});
    return table;
}

/// A number at the sill and one at the head, where both were taken.
std::string at_both(const NotedLength &sill, const NotedLength &head, const Words &words) {
    const std::string low = noted_words(sill, words), high = noted_words(head, words);
    return low.empty() || high.empty() || low == high ? (low.empty() ? high : low) : low + "; " + high;
}

Table opening_table(const Record &record, const Words &words) {
    Table table = table_called(words, words.say("Openings, as they were measured on the outside face"));
    table.columns = {flush_left(words.say("Opening"), 24),   flush_left(words.say("from corner"), 14),
                     flush_left(words.say("Near jamb"), 24), flush_left(words.say("far jamb"), 24),
                     flush_left(words.say("Width"), 17),     flush_left(words.say("Height"), 17),
                     flush_left(words.say("Sill"), 17),      flush_left(words.say("Head"), 17),
                     flush_left(words.say("Plane"), 10),     flush_left(words.say("Note"), 50)};
    for (const RecordedOpening &each : record.openings)
        if (is_measured(each))
            table.rows.push_back({words.name(each.name), words.name(each.zero),
                                  at_both(each.near_at_sill, each.near_at_head, words),
                                  at_both(each.far_at_sill, each.far_at_head, words),
                                  noted_words(each.width, words), noted_words(each.height, words),
                                  noted_words(each.sill, words), noted_words(each.head, words), each.plane,
                                  each.note});
    return table;
}

} // namespace

void plan_part(ReportPages &pages, const Draft &draft, const ReportSource &source) {
    const Words &words = pages.words();
    pages.begin_part(words.say("Plan"), "report-plan");
    pages.hold();
    if (auto plan = plan_of(draft, *source.record, pages)) pages.add(std::move(*plan));
    pages.add_text(words.say("Beside each wall: how many of its logs each decision takes."));
    pages.add(key_of(decision_marks(words), pages.room().width()));
    pages.release();
    for (const Table &table : {length_table(*source.record, words), corner_table(*source.record, words),
                               opening_table(*source.record, words)})
        if (!table.rows.empty()) pages.add(table);
}

} // namespace roundlay::sheets
