// Rows of a survey as the text of a document, so that one reader knows what a record may say.
#pragma once

#include "kernel/csv/csv_table.h"
#include "kernel/record/record.h"
#include "kernel/survey/survey_parts.h"

#include <map>
#include <optional>
#include <set>
#include <string>
#include <vector>

namespace roundlay {

/// A cell of the table; without a column the row as a whole.
struct SurveyCell {
    std::size_t row = 0;
    std::string column;
    auto operator<=>(const SurveyCell &) const = default;
};

/// Rows of one log, by what they tell.
struct SurveyLog {
    std::string tag;
    std::optional<std::size_t> own;                        ///< its row `log`
    std::map<std::string, std::vector<std::size_t>> parts; ///< of each list, by the name of the part
    std::size_t first = 0;
};

/// A row that tells of the house as a whole.
struct SurveyOfHouse {
    const SurveyPart *part = nullptr;
    std::size_t row = 0;
};

/// `[[record.wall]]` and others of the house, `[[found]]` of each of the logs, and where in the text each
/// cell came to stand.
class SurveyText {
  public:
    /// Cells that are left out are not stated; neither is what hangs on them alone. Of a log or an
    /// opening whose zero no row says, the one that `context` has is stated: places are told from there.
    SurveyText(const CsvTable &table, const std::vector<SurveyOfHouse> &house,
               const std::vector<SurveyLog> &logs, const Record &context,
               const std::set<SurveyCell> &left_out);

    const std::string &text() const { return text_; }
    /// Which cell stands at that byte of the text.
    std::optional<SurveyCell> cell_at(std::size_t offset) const;

  private:
    void of_house(const SurveyOfHouse &each);
    void log(const SurveyLog &log);
    void keep_zero(const SurveyCell &row, const std::string &of_context);
    void list(const SurveyLog &log, const SurveyPart &part);
    bool says_zero(std::size_t row) const;
    bool stands(const SurveyCell &cell) const { return !left_out_.contains(cell); }
    void put(const SurveyCell &cell, const std::string &text);
    std::string statement(const format::Key &key, const SurveyCell &cell) const;

    const CsvTable &table_;
    const Record &context_;
    const std::set<SurveyCell> &left_out_;
    std::string text_;
    std::map<std::size_t, SurveyCell> begins_; ///< by the byte where it begins
};

} // namespace roundlay
