// Documents with one thing wrong in them, as rows of a table.
#pragma once

#include "kernel/document/document.h"
#include "tests/document/sample.h"
#include "tests/support/catch.h"

#include <string>
#include <vector>

namespace roundlay::test {

/// One line of the sample written otherwise, and the one problem that follows.
struct ProblemRow {
    int line;
    const char *text;
    int at_line, at_column;
    const char *message;
};

inline void check_row(const ProblemRow &row, Weight weight) {
    INFO("line " << row.line << ": " << row.text);
    const ReadResult result = read_document(sample_with(row.line, row.text), "x.roundlay");
    CHECK(result.shell.has_value() == (weight == Weight::warning));
    REQUIRE_FALSE(result.problems.empty());
    const Problem &problem = result.problems.front();
    CHECK(problem.message == row.message);
    CHECK(problem.weight == weight);
    CHECK(problem.place.line == row.at_line);
    CHECK(problem.place.column == row.at_column);
    CHECK(problem.file == "x.roundlay");
    CHECK(result.problems.size() == 1);
    if (weight == Weight::error) CHECK_FALSE(problem.expected.empty());
}

inline void check_errors(const std::vector<ProblemRow> &rows) {
    for (const ProblemRow &row : rows)
        check_row(row, Weight::error);
}

inline void check_warnings(const std::vector<ProblemRow> &rows) {
    for (const ProblemRow &row : rows)
        check_row(row, Weight::warning);
}

} // namespace roundlay::test
