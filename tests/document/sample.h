// A small document that reads without a problem, one statement a line.
#pragma once

#include <cstddef>
#include <string>

namespace roundlay::test {

inline const std::string sample = R"(roundlay = 1
[shell]
thickness = "8 in"
[[wall]]
name = "A"
toward = "east"
length = "16 ft"
[[wall]]
name = "B"
toward = "north"
length = "12 ft"
[[wall]]
name = "C"
toward = "west"
length = "16 ft"
[[wall]]
name = "D"
toward = "south"
length = "12 ft"
[rounds]
count = 5
pitch = "9 in"
[notch]
kind = "full dovetail"
[[corner]]
between = ["A", "B"]
[[opening]]
wall = "A"
from_left = "3 ft"
sill = 0
width = "30 in"
height = "3 ft"
[pegs]
wanted = true
[wood]
species = "eastern hemlock"
)";

/// The sample with one of its lines (from 1) written otherwise.
inline std::string sample_with(int line, const std::string &text) {
    std::size_t begin = 0;
    for (int i = 1; i < line; ++i)
        begin = sample.find('\n', begin) + 1;
    std::string changed = sample;
    return changed.replace(begin, sample.find('\n', begin) - begin, text);
}

} // namespace roundlay::test
