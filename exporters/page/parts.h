// The three loads of the page, as its scripts read them. Private to this room.
#pragma once

#include "exporters/page/page.h"

#include <string>

namespace roundlay {

/// Little-endian, one mesh after the other: least corner and size (6 floats, mm), the numbers of corners,
/// triangles, ends of edges and edges (4 x u32), then per corner 3 x u16 of the size, per corner a normal
/// (3 x i8), per triangle 3 x u32, per end 3 x u16, per edge 2 x u32.
std::string packed_meshes(const Yard &yard);

/// JSON: styles of lines, words, and each sheet as paths, areas and texts in tenths of a millimetre, y down.
std::string packed_sheets(const Yard &yard);

/// JSON: everything else. No `<` in it, so that it can stand in a page.
std::string packed_words(const Yard &yard);

/// What is carried inside the program.
struct PageParts {
    std::string_view style, script;
};
PageParts page_parts();

} // namespace roundlay
