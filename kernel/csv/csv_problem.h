// What is told of a CSV file.
#pragma once

#include <string>

namespace roundlay {

struct CsvProblem {
    int line = 0; ///< from 1
    std::string message;
};

} // namespace roundlay
