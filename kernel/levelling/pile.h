// A pile of measured logs, and a record of logs that lie in a house: read from CSV as people keep it.
//
// RFC 4180 with a header line; commas, semicolons or tabs between the values; lengths with their unit
// ("9 1/4 in", "235 mm"). Columns stand in any order; a column that is not known is a problem.
#pragma once

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

struct CsvProblem {
    int line = 0; ///< from 1
    std::string message;
};

template <typename T> struct CsvRead {
    std::vector<T> rows; ///< empty where there is a problem
    std::vector<CsvProblem> problems;
};

/// Columns: mark, length, butt_height, tip_height and, where measured, butt_width, tip_width. A butt that is
/// thinner than the tip is taken as measured. At most 2,000 logs.
CsvRead<PileLog> read_pile(std::string_view csv);

/// Columns: wall, round, left_height, right_height (seen from outside) and, where measured, mark, left_width,
/// right_width, butt (left or right). Without a butt the end with the larger section is taken for it.
/// Whether the walls and rounds exist is for the shell to say. At most 2,000 logs.
CsvRead<OwnLog> read_record(std::string_view csv);

} // namespace roundlay
