#include "exporters/report/parts.h"
#include "exporters/sheets/drawing/columns.h"

#include <algorithm>

namespace roundlay::sheets {

namespace {

/// An end by its corner, with its height and width; empty cells where it was not recorded.
void add_end(std::vector<std::string> &row, const FoundLog &log, std::size_t end, const Words &words) {
    if (end >= log.ends.size()) {
        row.resize(row.size() + 3);
        return;
    }
    const FoundEnd &is = log.ends[end];
    row.insert(row.end(), {is.corner, noted_words(is.height, words), noted_words(is.width, words)});
}

Table size_table(const Record &record, const Words &words) {
    Table table = table_called(words, words.say("Every log, its sizes as they were measured"));
    table.columns = {flush_left(words.say("Tag"), 18), flush_left(words.say("Length"), 26)};
    for (int end = 0; end < 2; ++end) {
        table.columns.push_back(flush_left(words.say("End"), 26));
        table.columns.push_back(flush_left(words.say("Height"), 26));
        table.columns.push_back(flush_left(words.say("Width"), 16));
    }
    table.columns.push_back(flush_left(words.say("Butt"), 14));
    for (const FoundLog &log : record.logs) {
        std::vector<std::string> row{log.tag, noted_words(log.length, words)};
        for (std::size_t end = 0; end < 2; ++end)
            add_end(row, log, end, words);
        row.push_back(log.butt);
        table.rows.push_back(std::move(row));
    }
    return table;
}

/// Over its plane, which is told where there are several. Logs that nobody levelled are left out.
Table level_table(const Record &record, const Words &words) {
    Table table = table_called(words, words.say("Levels of the upper edges of logs at their ends"));
    table.columns = {flush_left(words.say("Tag"), 18)};
    for (int end = 0; end < 2; ++end) {
        table.columns.push_back(flush_left(words.say("End"), 30));
        table.columns.push_back(flush_left(words.say("Level"), 30));
        table.columns.push_back(flush_left(words.say("Plane"), 20));
    }
    for (const FoundLog &log : record.logs) {
        std::vector<std::string> row{log.tag};
        for (const FoundEnd &end : log.ends)
            if (end.level.is_taken())
                row.insert(row.end(), {end.corner, noted_words(end.level, words), end.plane});
        if (row.size() == 1) continue;
        row.resize(table.columns.size());
        table.rows.push_back(std::move(row));
    }
    return table;
}

/// Logs of which nobody said anything of that are left out.
Table wood_table(const Record &record, const Words &words) {
    Table table = table_called(words, words.say("Every log, its wood, finish and old marks"));
    table.columns = {flush_left(words.say("Tag"), 18), flush_left(words.say("Wood"), 34),
                     flush_left(words.say("Finish outside"), 42), flush_left(words.say("Finish inside"), 42),
                     flush_left(words.say("Old marks"), 48)};
    for (const FoundLog &log : record.logs) {
        std::vector<std::string> row{log.tag, words.word(log.species), log.finish.outside, log.finish.inside,
                                     joined(log.marks)};
        if (std::ranges::any_of(row.begin() + 1, row.end(), [](const auto &cell) { return !cell.empty(); }))
            table.rows.push_back(std::move(row));
    }
    return table;
}

bool has_station_without_zero(const FoundLog &log) {
    return log.zero.empty() && std::ranges::any_of(log.stations, [](const FoundStation &station) {
               return station.at.is_taken();
           });
}

Table station_table(const Telling &of) {
    const Words &words = of.words;
    Table table = table_called(words, words.say("Logs as they were measured along their length"));
    table.columns = {flush_left(words.say("Tag"), 18),       flush_left(words.say("Where"), 34),
                     flush_left(words.say("Height"), 20),    flush_left(words.say("Width"), 20),
                     flush_left(words.say("Gap under"), 20), flush_left(words.say("Gap over"), 20),
                     flush_left(words.say("Level"), 20),     flush_left(words.say("Note"), 38)};
    for (const FoundLog &log : of.record.logs)
        for (const FoundStation &station : log.stations)
            table.rows.push_back({log.tag, where(station.at, log, of), noted_words(station.height, words),
                                  noted_words(station.width, words), noted_words(station.gap_below, words),
                                  noted_words(station.gap_above, words), noted_words(station.level, words),
                                  station.note});
    return table;
}

} // namespace

void size_part(ReportPages &pages, const Draft &draft, const ReportSource &source) {
    const Words &words = pages.words();
    pages.begin_part(words.say("Sizes, wood and finish of logs"), "report-sizes");
    pages.add(size_table(*source.record, words));
    if (const Table levels = level_table(*source.record, words); !levels.rows.empty()) pages.add(levels);
    const Table wood = wood_table(*source.record, words);
    if (!wood.rows.empty()) pages.add(wood);
    const Table along = station_table({*source.record, draft.layout, words});
    if (!along.rows.empty()) pages.add(along);
    if (std::ranges::any_of(source.record->logs, has_station_without_zero))
        pages.add_text(said_of_places_without_zero(words));
}

} // namespace roundlay::sheets
