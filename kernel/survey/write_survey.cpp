#include "kernel/csv/csv_field.h"
#include "kernel/survey/survey.h"
#include "kernel/survey/survey_cells.h"
#include "kernel/survey/survey_parts.h"

#include <algorithm>
#include <map>

namespace roundlay {

namespace {

/// The cells of one row, by column.
using Row = std::map<std::string, std::string>;

Row row_of(const SurveyPart &part, const std::string &tag, const void *owner, const SurveyStyle &style) {
    Row row{{survey_tag, tag}, {survey_row, style.in_french ? part.french : part.name}};
    for (const SurveyColumn &column : survey_columns())
        if (const format::Key *key = survey_key(part, column.name))
            if (const auto value = key->value(owner))
                row[column.name] = cell_of(key->kind, *value, style.in_french);
    return row;
}

std::vector<Row> rows_of(const Record &record, const SurveyStyle &style) {
    std::vector<Row> rows;
    constexpr std::size_t names = 2; // of the row and its tag: without more it says nothing
    if (Row head = row_of(survey_head(), "", &record, style); style.all_columns || head.size() > names)
        rows.push_back(std::move(head));
    for (const SurveyPart &part : house_parts())
        for (std::size_t i = 0; i < part.section->size(&record); ++i) {
            const void *owner = part.section->at(&record, i);
            rows.push_back(row_of(part, part.by.empty() ? "" : known_as(part, owner), owner, style));
        }
    for (const FoundLog &log : record.logs) {
        rows.push_back(row_of(survey_parts().front(), log.tag, &log, style));
        for (const SurveyPart &part : survey_parts().subspan(1))
            for (std::size_t i = 0; i < part.section->size(&log); ++i)
                rows.push_back(row_of(part, log.tag, part.section->at(&log, i), style));
    }
    return rows;
}

std::string line(const std::vector<std::string> &cells) {
    std::string text;
    for (std::size_t i = 0; i < cells.size(); ++i)
        text += (i > 0 ? "," : "") + csv_field(cells[i], ";");
    return text + "\r\n";
}

bool is_used(const std::vector<Row> &rows, const std::string &column) {
    return std::ranges::any_of(rows, [&](const Row &row) { return row.contains(column); });
}

} // namespace

SurveyTable survey_table(const Record &record, const SurveyStyle &style) {
    const std::vector<Row> rows = rows_of(record, style);
    SurveyTable table;
    table.in_french = style.in_french;
    for (const SurveyColumn &column : survey_columns())
        if (style.all_columns || column.name == survey_tag || is_used(rows, column.name)) {
            table.keys.push_back(column.name);
            table.columns.push_back(style.in_french ? column.french : column.name);
        }
    for (const Row &row : rows) {
        table.rows.emplace_back();
        for (const std::string &name : table.keys) {
            const auto cell = row.find(name);
            table.rows.back().push_back(cell == row.end() ? std::string() : cell->second);
        }
    }
    return table;
}

std::vector<SurveyCount> row_counts(const Record &record) {
    const auto parts = survey_parts();
    std::vector<SurveyCount> counts{{parts.front().name, parts.front().french, record.logs.size()}};
    for (const SurveyPart &part : house_parts())
        counts.push_back({part.name, part.french, part.section->size(&record)});
    for (const SurveyPart &part : parts.subspan(1)) {
        counts.push_back({part.name, part.french, 0});
        for (const FoundLog &log : record.logs)
            counts.back().count += part.section->size(&log);
    }
    return counts;
}

std::string survey_csv(const SurveyTable &table) {
    std::string csv = line(table.columns);
    for (const auto &row : table.rows)
        csv += line(row);
    return csv;
}

} // namespace roundlay
