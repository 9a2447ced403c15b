// The numbers of a record, counted and named: which were measured, which were put in, which speak against one
// another.
#pragma once

#include "exporters/sheets/drawing/words.h"
#include "kernel/record/record.h"

#include <string>
#include <vector>

namespace roundlay::sheets {

struct NumberCounts {
    int measured = 0, proposed = 0, contradicted = 0;
    int open = 0; ///< of all: whose note has no value yet
};
NumberCounts counts_of(const Record &record);
NumberCounts counts_of(const FoundLog &log);

/// A number that is not simply measured.
struct DoubtfulNumber {
    const FoundLog *log = nullptr;
    std::string what; ///< "height, end NE"
    NotedLength number;
};
std::vector<DoubtfulNumber> doubtful_numbers(const Record &record, const Words &words);

/// Has somebody noted a height or a width of it anywhere?
bool has_a_size(const FoundLog &log);

} // namespace roundlay::sheets
