// The kinds of value that stand behind the keys of a document.
#pragma once

#include "kernel/document/length_bounds.h"
#include "kernel/measure/measure.h"
#include "kernel/record/noted_length.h"

#include <string>
#include <utility>
#include <variant>
#include <vector>

namespace roundlay::format {

using TwoNames = std::pair<std::string, std::string>;
using ManyTexts = std::vector<std::string>;

/// What a statement says. A word of an enumeration is its text.
using Value = std::variant<bool, int, double, Length, Slope, std::string, TwoNames, ManyTexts, NotedLength>;

struct YesNo {};
struct Count {
    int low, high;
};
/// Over `low` (or from it, where `low_is_in`), up to `high`.
struct Number {
    double low;
    bool low_is_in;
    double high;
    const char *words;
};
/// Spread over a floor, in kPa: over 0 and up to `most`. A number, or text with its unit.
struct Load {
    double most;
    const char *words;
};
struct Size {
    LengthBounds bounds;
};
struct Incline {
    bool may_fall;
};
/// Degrees counter-clockwise from east, written as compass words.
struct Direction {};
struct Text {};
/// Stands on tags, so that it is short and no other wall, partition or floor has it.
struct TagName {
    const char *of; ///< "wall", "floor"
};
/// Of a wall or partition; one that is stated before it, unless `later` ones count too, which the section
/// looks up then.
struct WallName {
    bool later = false;
};
struct WallPair {};
struct OneOf {
    std::vector<std::string> words;
};
/// Any number of the words.
struct SomeOf {
    std::vector<std::string> words;
};
/// A list of texts.
struct Texts {};
/// A length as it was noted in the field. What it says comes from its sheet, after all is read.
struct Noted {};

/// Each thing that goes by kind is one function for each of them: a forgotten one does not compile.
using Kind = std::variant<YesNo, Count, Number, Load, Size, Incline, Direction, Text, TagName, WallName,
                          WallPair, OneOf, SomeOf, Texts, Noted>;

/// `"a length over 0 and up to 2 m"`: for the reference.
std::string takes(const Kind &kind);

/// The value as it stands in a document. Equal values have equal texts.
std::string text_of(const Kind &kind, const Value &value, UnitSystem units);

} // namespace roundlay::format
