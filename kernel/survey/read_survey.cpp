#include "kernel/document/document.h"
#include "kernel/measure/character.h"
#include "kernel/measure/nearest_name.h"
#include "kernel/shell/limits.h"
#include "kernel/survey/survey.h"
#include "kernel/survey/survey_sheets.h"
#include "kernel/survey/survey_text.h"

#include <algorithm>

namespace roundlay {

namespace {

constexpr int most_rounds = 200; ///< of reading what is left when what was wrong is left out

/// What a row tells of its log; a row that does not say is the log's own. Null where it says what nobody
/// knows.
const SurveyPart *part_of(const CsvTable &table, std::size_t row) {
    std::string word = table.word(row, survey_row);
    std::ranges::replace(word, ' ', '_');
    if (word.empty()) return &survey_parts().front();
    for (const auto parts : {survey_parts(), house_parts()})
        for (const SurveyPart &part : parts)
            if (word == part.name || word == plain_letters(part.french)) return &part;
    return nullptr;
}

std::string part_names(bool french) {
    std::string names;
    for (const auto parts : {survey_parts(), house_parts()})
        for (const SurveyPart &part : parts)
            names += (names.empty() ? "" : ", ") + (french ? part.french : part.name);
    return names;
}

/// Reads one table: what it could not take is told and left out, until what is left can be read.
class SurveyReader {
  public:
    SurveyReader(const CsvTable &table, CsvReport &report, const Shell &shell, const Record &context)
        : table_(table), report_(report), shell_(shell), context_(context) {}

    SurveyRead read();

  private:
    void gather();
    void take_of_house(const SurveyPart &part, std::size_t row);
    void take_row(std::size_t row);
    Record context_without_rows() const;
    void keep_what_is_not_said(Record &record) const;
    void take_part(SurveyLog &log, const SurveyPart &part, std::size_t row);
    bool says_more_than(std::size_t row, const std::string &column) const;
    void tell_lost_cells(std::size_t row, const SurveyPart &part);
    void drop_strangers();
    bool read_once(SurveyRead &out, const std::string &begin);
    bool drop_a_log(const SurveyText &rows, const ReadResult &read, std::size_t begin);
    void tell(const SurveyCell &cell, const Problem &problem);
    std::string all_it_says(std::size_t row) const;
    bool lost_a_cell(std::size_t row) const {
        return std::ranges::any_of(left_out_, [&](const SurveyCell &cell) { return cell.row == row; });
    }

    const CsvTable &table_;
    CsvReport &report_;
    const Shell &shell_;
    const Record &context_;
    std::vector<SurveyOfHouse> house_;
    std::vector<SurveyLog> logs_;
    std::set<SurveyCell> left_out_;
};

/// What stands in a column that its part does not have would be lost.
void SurveyReader::tell_lost_cells(std::size_t row, const SurveyPart &part) {
    for (const SurveyColumn &column : survey_columns()) {
        if (column.name == survey_tag || column.name == survey_row || survey_key(part, column.name)) continue;
        if (!table_.cell(row, column.name).empty())
            table_.problem(row, "lost " + part.name + column.name,
                           table_.name(column.name) + " is nothing that a row \"" +
                               (table_.in_french() ? part.french : part.name) + "\" has");
    }
}

/// What else than what it is known by.
bool SurveyReader::says_more_than(std::size_t row, const std::string &column) const {
    return std::ranges::any_of(survey_columns(), [&](const SurveyColumn &each) {
        return each.name != survey_tag && each.name != survey_row && each.name != column &&
               !table_.cell(row, each.name).empty();
    });
}

/// An end is known by its corner: where one of two rows of it is blank, the other one is meant.
void SurveyReader::take_part(SurveyLog &log, const SurveyPart &part, std::size_t row) {
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
void SurveyReader::take_of_house(const SurveyPart &part, std::size_t row) {
    tell_lost_cells(row, part);
    table_.check_end(row);
    if (!part.by.empty() && table_.cell(row, survey_tag).empty())
        return table_.problem(row, "no tag", table_.name(survey_tag) + " is missing");
    house_.push_back({&part, row});
}

void SurveyReader::take_row(std::size_t row) {
    const std::string tag = table_.cell(row, survey_tag);
    const SurveyPart *part = part_of(table_, row);
    if (part && part->of_house) return take_of_house(*part, row);
    if (tag.empty()) return table_.problem(row, "no tag", table_.name(survey_tag) + " is missing");
    if (!part)
        return table_.problem(row, "row",
                              table_.name(survey_row) + " \"" + table_.cell(row, survey_row) +
                                  "\" is not known; expected " + part_names(table_.in_french()));
    auto log = std::ranges::find(logs_, tag, &SurveyLog::tag);
    if (log == logs_.end()) log = logs_.insert(logs_.end(), {tag, {}, {}, row});
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
void SurveyReader::drop_strangers() {
    std::vector<std::string> tags;
    for (const FoundLog &log : context_.logs)
        tags.push_back(log.tag);
    for (const SurveyLog &log : logs_)
        if (log.own) tags.push_back(log.tag);
    std::erase_if(logs_, [&](const SurveyLog &log) {
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

/// So that nothing goes without a word: "; with it went place "1843", diameter "25"".
std::string SurveyReader::all_it_says(std::size_t row) const {
    std::string said;
    for (const SurveyColumn &column : survey_columns()) {
        const std::string cell = table_.cell(row, column.name);
        if (cell.empty() || column.name == survey_row || column.name == survey_tag ||
            left_out_.contains({row, column.name}))
            continue;
        said += (said.empty() ? "; with it go " : ", ") + table_.name(column.name) + " \"" + cell + "\"";
    }
    return said;
}

void SurveyReader::tell(const SurveyCell &cell, const Problem &problem) {
    const std::string expected = problem.expected.empty() ? "" : "; expected " + problem.expected;
    const std::string where =
        cell.column.empty() || cell.column == survey_tag
            ? ""
            : table_.name(cell.column) + " \"" + table_.cell(cell.row, cell.column) + "\": ";
    const std::string message = where + problem.message + expected;
    if (problem.weight == Weight::error && cell.column.empty() &&
        lost_a_cell(cell.row)) // why was told with the cell
        report_.notice(table_.line(cell.row),
                       "the whole row is left out: " + problem.message + all_it_says(cell.row));
    else if (problem.weight == Weight::error)
        report_.problem(table_.line(cell.row), cell.column + message, message);
    else
        report_.notice(table_.line(cell.row), message);
}

/// True where nothing had to be left out any more.
bool SurveyReader::read_once(SurveyRead &out, const std::string &begin) {
    const SurveyText rows(table_, house_, logs_, left_out_);
    const ReadResult read = read_document(begin + rows.text(), "");
    const std::size_t before = left_out_.size();
    for (const Problem &problem : read.problems) {
        if (problem.place.line == 0 && !has_errors(read.problems))
            report_.notice(1, problem.message);            // more of them than are listed
        if (problem.place.offset < begin.size()) continue; // of the shell that the rows belong to
        const auto cell = rows.cell_at(problem.place.offset - begin.size());
        if (!cell || (problem.weight != Weight::error && has_errors(read.problems))) continue;
        tell(*cell, problem);
        if (problem.weight == Weight::error) left_out_.insert(*cell);
    }
    if (left_out_.size() == before && has_errors(read.problems)) return !drop_a_log(rows, read, begin.size());
    out.record = read.record;
    return left_out_.size() == before;
}

/// What cannot be mended by leaving cells out must not take the other logs with it.
bool SurveyReader::drop_a_log(const SurveyText &rows, const ReadResult &read, std::size_t begin) {
    for (const Problem &problem : read.problems) {
        if (problem.weight != Weight::error || problem.place.offset < begin) continue;
        const auto cell = rows.cell_at(problem.place.offset - begin);
        const std::string tag = cell ? table_.cell(cell->row, survey_tag) : std::string();
        const auto log = std::ranges::find(logs_, tag, &SurveyLog::tag);
        if (log == logs_.end()) continue;
        report_.problem(table_.line(log->first), "log " + tag,
                        "all rows of log \"" + tag + "\" are left out: " + problem.message);
        logs_.erase(log);
        return true;
    }
    return false;
}

void empty(Record &record, const SurveyPart &part) {
    if (part.name == "level") record.planes.clear();
    if (part.name == "wall") record.walls.clear();
    if (part.name == "corner") record.corners.clear();
    if (part.name == "diagonal") record.diagonals.clear();
}

/// As its rows know one of the house.
std::string known_by_row(const CsvTable &table, const SurveyOfHouse &each) {
    if (!each.part->by.empty()) return table.cell(each.row, survey_tag);
    std::string from = table.cell(each.row, "from"), to = table.cell(each.row, "to");
    if (to < from) std::swap(from, to);
    return from + " - " + to;
}

/// Of the house only what no row tells anew.
Record SurveyReader::context_without_rows() const {
    Record plain = context_;
    plain.logs.clear();
    const auto told = [&](const std::string &part, const std::string &name) {
        return std::ranges::any_of(house_, [&](const SurveyOfHouse &each) {
            return each.part->name == part && known_by_row(table_, each) == name;
        });
    };
    for (const SurveyPart &part : house_parts()) {
        Record kept = plain;
        empty(kept, part);
        for (std::size_t i = 0; i < part.section->size(&plain); ++i)
            if (const void *owner = part.section->at(&plain, i); !told(part.name, known_as(part, owner)))
                part.section->add(&kept, owner);
        plain = std::move(kept);
    }
    return plain;
}

/// From which side a wall is read is always said: by the record, where the row does not.
void SurveyReader::keep_what_is_not_said(Record &record) const {
    for (const SurveyOfHouse &each : house_)
        for (std::size_t i = 0; i < each.part->section->size(&record); ++i) {
            void *owner = const_cast<void *>(each.part->section->at(&record, i)); // ours
            const void *before = one_known_as(*each.part, context_, known_as(*each.part, owner));
            if (!before || known_as(*each.part, owner) != known_by_row(table_, each)) continue;
            for (const SurveyColumn &column : survey_columns())
                if (const format::Key *key = survey_key(*each.part, column.name);
                    key && table_.cell(each.row, column.name).empty() && key->value(owner))
                    if (const auto value = key->value(before)) key->set(owner, *value);
        }
}

SurveyRead SurveyReader::read() {
    for (std::size_t row = 0; row < table_.rows(); ++row)
        take_row(row);
    if (table_.rows() == 0) report_.problem(1, "empty", "there is no row under the header");
    drop_strangers();
    const std::string begin = write_document(shell_, context_without_rows());
    SurveyRead out;
    for (int round = 0; round < most_rounds && !read_once(out, begin); ++round)
        continue;
    for (const SurveyLog &log : logs_)
        out.lines[log.tag] = table_.line(log.first);
    out.rows = table_.rows();
    keep_what_is_not_said(out.record);
    out.counts = row_counts(out.record);
    for (SurveyCount &of_house : out.counts)
        if (of_house.name != "log" && std::ranges::count(house_parts(), of_house.name, &SurveyPart::name) > 0)
            of_house.count = static_cast<std::size_t>(std::ranges::count_if(house_, [&](const auto &each) {
                return each.part->name == of_house.name && !left_out_.contains({each.row, ""});
            }));
    return out;
}

} // namespace

namespace {

SurveyRead read_table(const CsvTable &table, CsvReport &report, const Shell &shell, const Record &context) {
    SurveyRead out;
    if (report.good()) out = SurveyReader(table, report, shell, context).read();
    out.problems = report.problems();
    out.not_taken = report.count();
    out.notices = report.notices();
    return out;
}

/// The first that has a header; else the first that has anything.
const ReadSheet &sheet_to_read(const std::vector<ReadSheet> &sheets) {
    const auto headed = std::ranges::find_if(sheets, [](const ReadSheet &sheet) { return has_tags(sheet); });
    return headed == sheets.end() ? sheets.front() : *headed;
}

void put_in_order(std::vector<CsvProblem> &problems) {
    std::ranges::stable_sort(problems, {}, &CsvProblem::line);
}

SurveyRead read_sheets(const std::vector<ReadSheet> &sheets, const Shell &shell, const Record &context) {
    SurveyRead out;
    if (sheets.empty()) return out.problems.push_back({1, "no cell of it holds anything"}), out;
    const ReadSheet &sheet = sheet_to_read(sheets);
    CsvReport report;
    const CsvTable table(sheet.rows, known_columns(), report);
    out = read_table(table, report, shell, context);
    const std::string in = "sheet \"" + sheet.name + "\", ";
    for (auto *told : {&out.problems, &out.notices})
        for (CsvProblem &problem : *told)
            problem.message = in + problem.message;
    for (const SheetRemark &remark : sheet.remarks)
        out.problems.push_back({remark.row, in + remark.cell + ": " + remark.message});
    for (const SheetRemark &number : doubtful_numbers(sheet, context))
        out.notices.push_back({number.row, in + number.cell + ": " + number.message});
    for (const ReadSheet &other : sheets)
        if (&other != &sheet)
            out.problems.push_back({1, "sheet \"" + other.name + "\" is left out, for sheet \"" + sheet.name +
                                           "\" is read: put all rows into one, or save each as a file"});
    put_in_order(out.problems), put_in_order(out.notices);
    return out;
}

} // namespace

SurveyRead read_survey(std::string_view bytes, const Shell &shell, const Record &context) {
    if (looks_like_spreadsheet(bytes)) {
        const auto sheets = read_xlsx(bytes);
        if (const auto *why = std::get_if<std::string>(&sheets)) {
            SurveyRead out;
            out.problems.push_back({1, *why});
            return out;
        }
        return read_sheets(std::get<std::vector<ReadSheet>>(sheets), shell, context);
    }
    CsvReport report;
    return read_table(CsvTable(bytes, known_columns(), report), report, shell, context);
}

} // namespace roundlay
