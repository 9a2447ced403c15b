// A record as rows of a table, out to be filled in and back: for spreadsheets, and for people who type at a
// table in the evening what they noted at the wall.
#pragma once

#include "kernel/csv/csv_problem.h"
#include "kernel/layout/layout.h"
#include "kernel/record/record.h"

#include <map>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace roundlay {

struct SurveyStyle {
    bool in_french = false;   ///< names of columns, and the words of the format
    bool all_columns = false; ///< to be filled in; else those in which something stands
};

/// All that the record says of its logs, and of the walls, corners, diagonals, openings and level planes.
/// Every row has a cell for each column.
struct SurveyTable {
    std::vector<std::string> columns; ///< as they are called in its language
    std::vector<std::string> keys;    ///< the same in the words of the format
    bool in_french = false;
    std::vector<std::vector<std::string>> rows;
};
SurveyTable survey_table(const Record &record, const SurveyStyle &style);

/// As CSV (RFC 4180, UTF-8).
std::string survey_csv(const SurveyTable &table);

/// How many rows of one kind a record comes to.
struct SurveyCount {
    std::string name, french; ///< what stands in the column `row`
    std::size_t count = 0;
};
/// Of each kind, its logs first.
std::vector<SurveyCount> row_counts(const Record &record);

/// What was read of a table, and what was not. Nothing is dropped without a word: every cell or row that
/// could not be taken is a problem with its line and column, and the rest is kept.
struct SurveyRead {
    Record
        record; ///< what the survey says as a whole is as in `context`, but for what rows tell of the house
    std::vector<CsvProblem> problems; ///< what was not taken
    std::vector<CsvProblem> notices;  ///< what was, and should be looked at
    /// Of each log, wall, opening and others, by its tag: its first line; of what belongs to a log by its tag
    /// and what it is told of, as in conflicts and doubts ("end NE").
    std::map<std::pair<std::string, std::string>, int> lines;
    std::size_t rows = 0;            ///< under the header
    std::size_t not_taken = 0;       ///< rows or cells, by line
    std::vector<SurveyCount> counts; ///< of rows that were taken
};

/// Reads the rows for the shell and record that they belong to, which say what walls, sheets, planes and
/// units there are: CSV, or the first sheet of an XLSX file that has a column `tag`. Rows of a log that
/// neither has a row `log` nor is in the record are a problem; so are merged cells, formulas and dates, each
/// told with its sheet and cell.
SurveyRead read_survey(std::string_view bytes, const Shell &shell, const Record &context);

/// Two say different things of one log.
struct SurveyConflict {
    std::string tag;
    std::string of;  ///< "end NE", "peg 4.6.0"; empty: of the log itself
    std::string key; ///< "height"
    std::string stands, other;
};

struct Merged {
    Record record;
    std::vector<SurveyConflict> conflicts; ///< in each of them what stood there has stayed, unless replaced
    int logs = 0;                          ///< that are new
    int values = 0;                        ///< that are new in logs that were there
};

/// All that `from` says of logs, put into `into`: logs by their tag, ends by their corner, stations, pegs and
/// later cuts by their place, zones by where they begin and end; tests and readings that are not there yet.
/// What differs is a conflict; it is replaced only where that is asked for. Who said a number, and when, goes
/// with it, so that nobody's numbers become another's. Numbers that stand on another sheet than those of a
/// log that is there would be read otherwise beside them: they are a conflict, and stay out.
Merged merged(const Record &into, const Record &from, bool replace);

/// Does the record say anything of a log but where it lies?
bool is_measured(const FoundLog &log);

struct SurveyDoubt {
    std::string tag, of; ///< as of a conflict
    Said what;           ///< one sentence; to be asked, not refused
    std::string key;     ///< of its column; empty where several are spoken of
};

/// Lengths, heights and widths that are far off what the log of the plan has where the record says that the
/// log lies, and places along it that it does not reach to, as long as it was taped or as the plan has it: a
/// slip of the tape, another round, or a plan that is not this house yet. What the record tells of itself as
/// noted in another unit is not told again.
std::vector<SurveyDoubt> doubtful_sizes(const Record &record, const Layout &layout);

/// What the record calls a corner of the plan: its own name where it has one for the corner of those walls.
std::string corner_name(const Record &record, const Layout &layout, const std::string &at);

/// What the two ends of a log of the plan are called, the datum end first. Where both lie at openings of one
/// name they are told apart by the corner that each looks to: "light (DA)".
std::pair<std::string, std::string> end_names(const Record &record, const Layout &layout, const Piece &piece);

/// The record and, for each log of the walls as they are laid out that no found log says to be, one to be
/// measured: tag, place, and its two ends by their corners. Timbers of floors too, their ends by the logs and
/// timbers that they lie in.
Record with_logs_to_measure(const Record &record, const Layout &layout);

/// The record and, of what it does not have yet, every wall and corner of the plan, the diagonals through the
/// house, from outside corner to outside corner, and the openings, from the corner at the left end of their
/// wall: to be measured.
Record with_house_to_measure(const Record &record, const Shell &shell, const Layout &layout);

} // namespace roundlay
