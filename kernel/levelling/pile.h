// A pile of measured logs, and a record of logs that lie in a house: read from CSV as people keep it.
//
// RFC 4180 with a header line, and what spreadsheets make of it: see kernel/csv/csv_table.h. Lengths with
// their unit ("9 1/4 in", "235 mm"), or the unit in the header.
#pragma once

#include "kernel/csv/csv_problem.h"
#include "kernel/shell/shell.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace roundlay {

/// A log in the yard, measured at both ends of what is straight in it.
struct PileLog {
    std::string mark;                                   ///< what is written on it; unique
    double length = 0, butt_height = 0, tip_height = 0; ///< mm
    std::optional<double> butt_width, tip_width;        ///< mm
};

/// A log in a house, measured at its two ends seen from outside, or only one of the logs that an opening
/// parts.
struct RecordedLog {
    std::string wall;
    int round = 1;
    std::optional<int> piece; ///< counted from the left; none: the whole round
    std::string mark, note;
    std::optional<double> left_height, right_height, left_width, right_width, diameter, bow; ///< mm
    std::optional<LogEnd> butt; ///< not said: the end with the larger section
    std::optional<Finish> finish;
    std::optional<Fabric> fabric;
    int line = 0; ///< of the CSV
};

template <typename T> struct CsvRead {
    std::vector<T> rows;  ///< empty where there is a problem
    std::vector<T> sound; ///< then those in which none was found, for what else is to be said of them
    std::vector<CsvProblem> problems;
    std::vector<CsvProblem> notices; ///< what was left out or taken in a way that should be known
};

/// Columns: mark, length, butt_height, tip_height and, where measured, butt_width, tip_width. A butt that is
/// thinner than the tip is taken as measured. At most 2,000 logs.
CsvRead<PileLog> read_pile(std::string_view csv);

/// Columns: wall, round and, where known, piece, mark, left_height, right_height, left_width, right_width,
/// diameter, butt (left or right), bow, finish, fabric, notes. Of heights and widths both ends or none.
/// Whether walls, rounds and pieces exist is for the shell to say: see recorded. At most 2,000 logs.
CsvRead<RecordedLog> read_record(std::string_view csv);

} // namespace roundlay
