#include "kernel/survey/survey_text.h"

#include "kernel/document/toml_text.h"
#include "kernel/survey/survey_cells.h"

#include <algorithm>

namespace roundlay {

namespace {

constexpr const char *zero = "zero"; ///< of a log, of an opening

} // namespace

SurveyText::SurveyText(const CsvTable &table, const std::vector<SurveyOfHouse> &house,
                       const std::vector<SurveyLog> &logs, const Record &context,
                       const std::set<SurveyCell> &left_out)
    : table_(table), context_(context), left_out_(left_out) {
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
    if (part->section->table->name != "record.opening" || says_zero(row)) return;
    const auto before =
        std::ranges::find(context_.openings, table_.cell(row, survey_tag), &RecordedOpening::name);
    if (before != context_.openings.end()) keep_zero({row, ""}, before->zero);
}

bool SurveyText::says_zero(std::size_t row) const {
    return stands({row, zero}) && !table_.cell(row, zero).empty();
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
    const auto before = std::ranges::find(context_.logs, log.tag, &FoundLog::tag);
    if (before != context_.logs.end() && !(log.own && says_zero(row))) keep_zero({row, ""}, before->zero);
    for (const SurveyPart &part : survey_parts().subspan(1))
        list(log, part);
}

void SurveyText::keep_zero(const SurveyCell &row, const std::string &of_context) {
    if (!of_context.empty()) put(row, std::string(zero) + " = " + toml_text(of_context) + "\n");
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
