// A small house with a record, and rows that are read into it.
#pragma once

#include "kernel/document/document.h"
#include "kernel/survey/survey.h"
#include "tests/document/sample.h"
#include "tests/support/catch.h"

#include <string>

namespace roundlay::test {

/// `record`: its tables, as a document has them.
inline ReadResult recorded_house(const std::string &record) {
    ReadResult read = read_document(sample + record, "house");
    REQUIRE(read.shell);
    return read;
}

inline SurveyRead rows_into(const ReadResult &house, const std::string &csv) {
    return read_survey(csv, *house.shell, house.record);
}

} // namespace roundlay::test
