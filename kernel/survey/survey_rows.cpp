#include "kernel/survey/survey_rows.h"

#include "kernel/measure/character.h"
#include "kernel/measure/nearest_name.h"

#include <algorithm>

namespace roundlay {

namespace {

/// What a row tells of its log; a row that does not say is the log's own. Null where it says what nobody
/// knows.
const SurveyPart *part_of(const CsvTable &table, std::size_t row) {
    std::string word = table.word(row, survey_row);
    std::ranges::replace(word, ' ', '_');
    if (word.empty()) return &survey_parts().front();
    for (const SurveyPart *part : all_survey_parts())
        if (word == part->name || word == plain_letters(part->french)) return part;
    return nullptr;
}

std::string part_names(bool french) {
    std::string names;
    for (const SurveyPart *part : all_survey_parts())
        names += (names.empty() ? "" : ", ") + (french ? part->french : part->name);
    return names;
}

class Gathering {
  public:
    explicit Gathering(const CsvTable &table) : table_(table) {}

    void take_row(std::size_t row);
    void drop_strangers(const Record &context);
    SurveyRows &rows() { return rows_; }

  private:
    void take_of_house(const SurveyPart &part, std::size_t row);
    void take_head(const SurveyPart &part, std::size_t row);
    void take_part(SurveyLog &log, const SurveyPart &part, std::size_t row);
    bool says_more_than(std::size_t row, const std::string &column) const;
    void tell_lost_cells(std::size_t row, const SurveyPart &part);

    const CsvTable &table_;
    SurveyRows rows_;
};

/// What stands in a column that its part does not have would be lost.
void Gathering::tell_lost_cells(std::size_t row, const SurveyPart &part) {
    for (const SurveyColumn &column : survey_columns()) {
        if (column.name == survey_tag || column.name == survey_row || survey_key(part, column.name)) continue;
        if (!table_.cell(row, column.name).empty())
            table_.problem(row, "lost " + part.name + column.name,
                           table_.name(column.name) + " is nothing that a row \"" +
                               (table_.in_french() ? part.french : part.name) + "\" has");
    }
}

/// What else than what it is known by.
bool Gathering::says_more_than(std::size_t row, const std::string &column) const {
    return std::ranges::any_of(survey_columns(), [&](const SurveyColumn &each) {
        return each.name != survey_tag && each.name != survey_row && each.name != column &&
               !table_.cell(row, each.name).empty();
    });
}

/// An end is known by its corner: where one of two rows of it is blank, the other one is meant.
void Gathering::take_part(SurveyLog &log, const SurveyPart &part, std::size_t row) {
    std::vector<std::size_t> &rows = log.parts[part.name];
    const std::string corner = part.name == "end" ? table_.cell(row, "corner") : std::string();
    for (std::size_t &other : rows) {
        if (corner.empty() || corner != table_.cell(other, "corner")) continue;
        if (!says_more_than(row, "corner")) return;
        if (!says_more_than(other, "corner")) return void(other = row);
        return table_.problem(row, "twice " + log.tag + corner,
                              "the end \"" + corner + "\" of log \"" + log.tag +
                                  "\" stands there twice, first in line " +
                                  std::to_string(table_.line(other)));
    }
    if (rows.size() >= part.section->most)
        return table_.problem(row, "many " + log.tag + part.name,
                              "log \"" + log.tag + "\" has " + std::to_string(part.section->most) +
                                  " rows \"" + (table_.in_french() ? part.french : part.name) +
                                  "\" already, as many as a log can have");
    rows.push_back(row);
}

/// A wall or a corner has its name in the column of tags.
void Gathering::take_of_house(const SurveyPart &part, std::size_t row) {
    tell_lost_cells(row, part);
    table_.check_end(row);
    if (!part.by.empty() && table_.cell(row, survey_tag).empty())
        return table_.problem(row, "no tag", table_.name(survey_tag) + " is missing");
    rows_.house.push_back({&part, row});
}

/// A sheet has one head.
void Gathering::take_head(const SurveyPart &part, std::size_t row) {
    tell_lost_cells(row, part);
    table_.check_end(row);
    if (rows_.head)
        return table_.problem(row, "twice head",
                              std::string("the row \"") + (table_.in_french() ? part.french : part.name) +
                                  "\" stands there twice, first in line " +
                                  std::to_string(table_.line(*rows_.head)));
    rows_.head = row;
}

void Gathering::take_row(std::size_t row) {
    const std::string tag = table_.cell(row, survey_tag);
    const SurveyPart *part = part_of(table_, row);
    if (part == &survey_head()) return take_head(*part, row);
    if (part && part->of_house) return take_of_house(*part, row);
    if (tag.empty()) return table_.problem(row, "no tag", table_.name(survey_tag) + " is missing");
    if (!part)
        return table_.problem(row, "row",
                              table_.name(survey_row) + " \"" + table_.cell(row, survey_row) +
                                  "\" is not known; expected " + part_names(table_.in_french()));
    auto log = std::ranges::find(rows_.logs, tag, &SurveyLog::tag);
    if (log == rows_.logs.end()) log = rows_.logs.insert(rows_.logs.end(), {tag, {}, {}, row});
    tell_lost_cells(row, *part);
    table_.check_end(row);
    if (part != &survey_parts().front()) return take_part(*log, *part, row);
    if (log->own)
        return table_.problem(row, "twice " + tag,
                              "the log \"" + tag + "\" stands there twice, first in line " +
                                  std::to_string(table_.line(*log->own)));
    log->own = row;
}

/// A mistyped tag must not become another log.
void Gathering::drop_strangers(const Record &context) {
    std::vector<std::string> tags;
    for (const FoundLog &log : context.logs)
        tags.push_back(log.tag);
    for (const SurveyLog &log : rows_.logs)
        if (log.own) tags.push_back(log.tag);
    std::erase_if(rows_.logs, [&](const SurveyLog &log) {
        if (std::ranges::find(tags, log.tag) != tags.end()) return false;
        const auto nearest = nearest_name(log.tag, tags);
        table_.problem(
            log.first, "stranger " + log.tag,
            "no log has the " + table_.name(survey_tag) + " \"" + log.tag + "\"" +
                (nearest ? "; did you mean \"" + *nearest + "\"?" : ".") + " A new log has a row \"" +
                (table_.in_french() ? survey_parts().front().french : survey_parts().front().name) +
                "\" of its own");
        return true;
    });
}

} // namespace

SurveyRows gathered_rows(const CsvTable &table, CsvReport &report, const Record &context) {
    Gathering gathering(table);
    for (std::size_t row = 0; row < table.rows(); ++row)
        gathering.take_row(row);
    if (table.rows() == 0) report.problem(1, "empty", "there is no row under the header");
    gathering.drop_strangers(context);
    return std::move(gathering.rows());
}

} // namespace roundlay
