#include "kernel/survey/survey_text.h"

#include "kernel/document/toml_text.h"
#include "kernel/survey/survey_cells.h"

namespace roundlay {

SurveyText::SurveyText(const CsvTable &table, const std::vector<SurveyOfHouse> &house,
                       const std::vector<SurveyLog> &logs, const std::set<SurveyCell> &left_out)
    : table_(table), left_out_(left_out) {
    for (const SurveyOfHouse &each : house)
        of_house(each);
    for (const SurveyLog &each : logs)
        log(each);
}

std::optional<SurveyCell> SurveyText::cell_at(std::size_t offset) const {
    const auto behind = begins_.upper_bound(offset);
    if (behind == begins_.begin()) return std::nullopt;
    return std::prev(behind)->second;
}

void SurveyText::put(const SurveyCell &cell, const std::string &text) {
    begins_[text_.size()] = cell;
    text_ += text;
}

std::string SurveyText::statement(const format::Key &key, const SurveyCell &cell) const {
    return std::string(key.name) + " = " +
           statement_of(key.kind, table_.cell(cell.row, cell.column), table_.unit(cell.column));
}

void SurveyText::of_house(const SurveyOfHouse &each) {
    const auto &[part, row] = each;
    if (!stands({row, ""}) || !stands({row, survey_tag})) return;
    put({row, ""}, "\n[[" + part->section->table->name + "]]\n");
    if (!part->by.empty())
        put({row, survey_tag}, part->by + " = " + toml_text(table_.cell(row, survey_tag)) + "\n");
    for (const SurveyColumn &column : survey_columns()) {
        const format::Key *key = survey_key(*part, column.name);
        const SurveyCell cell{row, column.name};
        if (key && stands(cell) && !table_.cell(row, column.name).empty())
            put(cell, statement(*key, cell) + "\n");
    }
}

void SurveyText::log(const SurveyLog &log) {
    const std::size_t row = log.own.value_or(log.first);
    // One without a row of its own does not go with the first of its other rows.
    if ((log.own && !stands({row, ""})) || !stands({row, survey_tag})) return;
    put({row, ""}, "\n[[found]]\n");
    put({row, survey_tag}, "tag = " + toml_text(log.tag) + "\n");
    for (const SurveyColumn &column : survey_columns()) {
        const format::Key *key = survey_key(survey_parts().front(), column.name);
        const SurveyCell cell{row, column.name};
        if (!log.own || !key || column.name == survey_tag || !stands(cell)) continue;
        if (!table_.cell(row, column.name).empty()) put(cell, statement(*key, cell) + "\n");
    }
    for (const SurveyPart &part : survey_parts().subspan(1))
        list(log, part);
}

void SurveyText::list(const SurveyLog &log, const SurveyPart &part) {
    const auto rows = log.parts.find(part.name);
    if (rows == log.parts.end()) return;
    put({rows->second.front(), ""}, part.name + " = [\n");
    for (const std::size_t row : rows->second) {
        if (!stands({row, ""})) continue;
        put({row, ""}, "  {");
        bool first = true;
        for (const SurveyColumn &column : survey_columns()) {
            const format::Key *key = survey_key(part, column.name);
            const SurveyCell cell{row, column.name};
            if (!key || !stands(cell) || table_.cell(row, column.name).empty()) continue;
            put({row, ""}, first ? " " : ", ");
            put(cell, statement(*key, cell));
            first = false;
        }
        put({row, ""}, " },\n");
    }
    put({rows->second.back(), ""}, "]\n");
}

} // namespace roundlay
