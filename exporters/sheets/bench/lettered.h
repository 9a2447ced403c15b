// Rows of words in which the numbers that differ from piece to piece are letters (tabular dimensions).
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace roundlay::sheets {

/// A text taken apart: what stands before each number, the numbers, and what stands behind the last. A number
/// is a length as it is printed, with its sign, or the name of a joint ("T3"), not within a word or a tag.
struct Numbered {
    std::vector<std::string> between; ///< one more than numbers
    std::vector<std::string> numbers;
};
Numbered taken_apart(std::string_view words, bool inches);

/// For each place in the rows of pieces that are alike but for their numbers: the number that all share, or a
/// letter. Places that have the same numbers in all pieces have the same letter.
struct Letters {
    std::vector<std::string> in_place;             ///< what stands there: number or letter
    std::vector<std::string> letters;              ///< in their order
    std::vector<std::vector<std::string>> columns; ///< by letter, then by piece
};

/// `numbers` by piece; all have as many.
Letters lettered(const std::vector<std::vector<std::string>> &numbers);

/// "A", "B" … without I and O, then "AA".
std::string letter_called(std::size_t number);

} // namespace roundlay::sheets
