// How much room a text takes on paper, by the real font's metrics.
#pragma once

#include "exporters/sheets/drawing/sheet.h"

#include <string_view>
#include <vector>

namespace roundlay::sheets {

/// Smallest lettering on any sheet (ISO 3098, from memory), millimetres of capital height.
inline constexpr double least_lettering = 2.5;

/// A text that starts on its baseline at `at`.
Text lettered(std::string words, Vec2 at, double height, bool bold, Role role);

/// Width by advances, millimetres.
double text_width(std::string_view words, double height, bool bold = false);

/// Size of the em for a capital height, millimetres.
double em_of(double height, bool bold);

/// Where the text starts on its baseline, whatever its anchor.
Vec2 start_of(const Text &text);

/// The upright rectangle on paper around the text: its advances wide, and as tall as its capitals or
/// whatever ink of it rises higher or hangs lower. Exact for turns by quarters, else a cover.
Rect box_of(const Text &text);

/// The words in lines no wider than `width`, broken at spaces, and within a word only where it alone is
/// wider. At least one line.
std::vector<std::string> wrapped(std::string_view words, double width, double height, bool bold = false);

} // namespace roundlay::sheets
