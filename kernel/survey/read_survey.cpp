#include "kernel/document/document.h"
#include "kernel/survey/survey.h"
#include "kernel/survey/survey_cells.h"
#include "kernel/survey/survey_rows.h"
#include "kernel/survey/survey_sheets.h"
#include "kernel/survey/survey_text.h"

#include <algorithm>

namespace roundlay {

namespace {

constexpr int most_rounds = 200; ///< of reading what is left when what was wrong is left out

/// Reads one table: what it could not take is told and left out, until what is left can be read.
class SurveyReader {
  public:
    SurveyReader(const CsvTable &table, CsvReport &report, const Shell &shell, const Record &context)
        : table_(table), report_(report), shell_(shell), context_(context),
          rows_(gathered_rows(table, report, context)) {
        if (rows_.head) take_head(*rows_.head);
    }

    SurveyRead read();

  private:
    void take_head(std::size_t row);
    Record context_without_rows() const;
    void keep_what_is_not_said(Record &record) const;
    bool read_once(SurveyRead &out, const std::string &begin);
    bool drop_a_log(const SurveyText &rows, const ReadResult &read, std::size_t begin);
    void tell(const SurveyCell &cell, const Problem &problem);
    std::string all_it_says(std::size_t row) const;
    std::string known_by(const std::string &part, std::size_t row) const;
    void note_lines(SurveyRead &out) const;
    bool lost_a_cell(std::size_t row) const {
        return std::ranges::any_of(left_out_, [&](const SurveyCell &cell) { return cell.row == row; });
    }

    const CsvTable &table_;
    CsvReport &report_;
    const Shell &shell_;
    Record context_; ///< with the head that its rows have
    SurveyRows rows_;
    std::set<SurveyCell> left_out_;
};

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
    const SurveyText rows(table_, rows_.house, rows_.logs, context_, left_out_);
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
        const auto log = std::ranges::find(rows_.logs, tag, &SurveyLog::tag);
        if (log == rows_.logs.end()) continue;
        report_.problem(table_.line(log->first), "log " + tag,
                        "all rows of log \"" + tag + "\" are left out: " + problem.message);
        rows_.logs.erase(log);
        return true;
    }
    return false;
}

/// Each by itself: what one cell says wrong takes no other with it. How bare numbers count must be known
/// before the other rows are read.
void SurveyReader::take_head(std::size_t row) {
    for (const SurveyColumn &column : survey_columns()) {
        const format::Key *key = survey_key(survey_head(), column.name);
        const std::string cell = table_.cell(row, column.name);
        if (!key || cell.empty()) continue;
        const ReadResult read = read_document(write_document(shell_) + "\n[record]\n" + key->name + " = " +
                                                  statement_of(key->kind, cell, "") + "\n",
                                              "");
        if (!has_errors(read.problems)) {
            if (const auto value = key->value(&read.record)) key->set(&context_, *value);
            continue;
        }
        const auto wrong = std::ranges::find(read.problems, Weight::error, &Problem::weight);
        left_out_.insert({row, column.name});
        tell({row, column.name}, *wrong);
    }
}

void empty(Record &record, const SurveyPart &part) {
    if (part.name == "sheet") record.sheets.clear();
    if (part.name == "level") record.planes.clear();
    if (part.name == "wall") record.walls.clear();
    if (part.name == "corner") record.corners.clear();
    if (part.name == "diagonal") record.diagonals.clear();
    if (part.name == "opening") record.openings.clear();
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
        return std::ranges::any_of(rows_.house, [&](const SurveyOfHouse &each) {
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
    for (const SurveyOfHouse &each : rows_.house)
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

/// What a row of a log is known by among its like: as conflicts name it.
std::string SurveyReader::known_by(const std::string &part, std::size_t row) const {
    if (part == "end") return table_.cell(row, "corner");
    if (part == "zone") return table_.cell(row, "from") + " to " + table_.cell(row, "to");
    return table_.cell(row, "at");
}

void SurveyReader::note_lines(SurveyRead &out) const {
    for (const SurveyOfHouse &each : rows_.house)
        out.lines.emplace(std::pair(known_by_row(table_, each), ""), table_.line(each.row));
    if (rows_.head) out.lines.emplace(std::pair(survey_head().name, ""), table_.line(*rows_.head));
    for (const SurveyLog &log : rows_.logs) {
        out.lines[{log.tag, ""}] = table_.line(log.first);
        for (const auto &[part, rows] : log.parts)
            for (const std::size_t row : rows)
                out.lines.emplace(std::pair(log.tag, part + " " + known_by(part, row)), table_.line(row));
    }
}

SurveyRead SurveyReader::read() {
    const std::string begin = write_document(shell_, context_without_rows());
    SurveyRead out;
    for (int round = 0; round < most_rounds && !read_once(out, begin); ++round)
        continue;
    note_lines(out);
    out.rows = table_.rows();
    keep_what_is_not_said(out.record);
    out.counts = row_counts(out.record);
    if (rows_.head) out.counts.push_back({survey_head().name, survey_head().french, 1});
    for (SurveyCount &of_house : out.counts)
        if (of_house.name != "log" && std::ranges::count(house_parts(), of_house.name, &SurveyPart::name) > 0)
            of_house.count =
                static_cast<std::size_t>(std::ranges::count_if(rows_.house, [&](const auto &each) {
                    return each.part->name == of_house.name && !left_out_.contains({each.row, ""});
                }));
    return out;
}

SurveyRead read_table(const CsvTable &table, CsvReport &report, const Shell &shell, const Record &context) {
    SurveyRead out;
    if (report.good()) out = SurveyReader(table, report, shell, context).read();
    out.problems = report.problems();
    out.not_taken = report.count();
    out.notices = report.notices();
    return out;
}

/// The first that has a header; else the first that has anything.
std::size_t sheet_to_read(const std::vector<ReadSheet> &sheets) {
    const auto headed = std::ranges::find_if(sheets, [](const ReadSheet &sheet) { return has_tags(sheet); });
    return headed == sheets.end() ? 0 : static_cast<std::size_t>(headed - sheets.begin());
}

void put_in_order(std::vector<CsvProblem> &problems) {
    std::ranges::stable_sort(problems, {}, &CsvProblem::line);
}

SurveyRead read_sheets(std::vector<ReadSheet> sheets, const Shell &shell, const Record &context) {
    SurveyRead out;
    if (sheets.empty()) return out.problems.push_back({1, "no cell of it holds anything"}), out;
    ReadSheet &sheet = sheets[sheet_to_read(sheets)];
    take_days(sheet);
    CsvReport report;
    const CsvTable table(sheet.rows, known_columns(), report);
    out = read_table(table, report, shell, context);
    const std::string in = "sheet \"" + sheet.name + "\", ";
    for (auto *told : {&out.problems, &out.notices})
        for (CsvProblem &problem : *told)
            problem.message = in + problem.message;
    for (const SheetRemark &remark : sheet.remarks)
        out.problems.push_back({remark.row, in + remark.cell + ": " + remark.message});
    for (const auto &doubts : {sheet.doubts, doubtful_numbers(sheet, context)})
        for (const SheetRemark &doubt : doubts)
            out.notices.push_back({doubt.row, in + doubt.cell + ": " + doubt.message});
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
        auto sheets = read_xlsx(bytes);
        if (const auto *why = std::get_if<std::string>(&sheets)) {
            SurveyRead out;
            out.problems.push_back({1, *why});
            return out;
        }
        return read_sheets(std::get<std::vector<ReadSheet>>(std::move(sheets)), shell, context);
    }
    CsvReport report;
    return read_table(CsvTable(bytes, known_columns(), report), report, shell, context);
}

} // namespace roundlay
