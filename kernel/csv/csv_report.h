// What is wrong with a CSV file, each kind of it said once.
#pragma once

#include "kernel/csv/csv_problem.h"

#include <string>
#include <vector>

namespace roundlay {

class CsvReport {
  public:
    /// What is wrong in one line. Of one `kind` only the first is told in full, the other lines by their
    /// numbers.
    void problem(int line, const std::string &kind, const std::string &message);
    /// What was done without asking, and should be known.
    void notice(int line, const std::string &message) { notices_.push_back({line, message}); }

    std::size_t count() const; ///< of problems, by line
    bool good() const { return kinds_.empty(); }
    std::vector<CsvProblem> problems() const;
    const std::vector<CsvProblem> &notices() const { return notices_; }

  private:
    struct Kind {
        std::string name, message;
        std::vector<int> lines;
    };
    std::vector<Kind> kinds_; ///< in the order of their first lines
    std::vector<CsvProblem> notices_;
};

} // namespace roundlay
