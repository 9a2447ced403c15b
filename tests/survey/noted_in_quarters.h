// Two logs of a wall, noted in feet, inches and quarters, and rows that are read into them.
#pragma once

#include "tests/survey/recorded.h"

#include <algorithm>

namespace roundlay::test {

inline const std::string noted = R"(
[record]
denominator = 4

[[record.corner]]
name = "NE"
walls = ["A", "B"]

[[found]]
tag = "A 1.1"
wall = "A"
round = 1
length = "16.2.1"
end = [
  { corner = "NE", height = "0.11.2" },
  { corner = "NW", height = { note = "0.10.0", is = "proposed", by = "R. Hale; his son" } }
]

[[found]]
tag = "A 1.2"
wall = "A"
round = 2
)";

inline ReadResult house() {
    return recorded_house(noted);
}

inline SurveyRead rows(const std::string &csv) {
    return rows_into(house(), csv);
}

inline const FoundLog &log_of(const Record &record, const std::string &tag) {
    const auto log = std::ranges::find(record.logs, tag, &FoundLog::tag);
    REQUIRE(log != record.logs.end());
    return *log;
}

} // namespace roundlay::test
