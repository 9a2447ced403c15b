// The neutral drawing: what is on a sheet of paper, whoever writes or shows it.
//
// Millimetres on paper, origin at the sheet's lower left corner, x to the right, y upward. Writers (PDF,
// SVG, DXF) and the window's preview all draw this one value; none of them places anything.
#pragma once

#include "exporters/sheets/drawing/line.h"
#include "exporters/sheets/drawing/paper.h"
#include "exporters/sheets/drawing/rect.h"

#include <cstdint>
#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace roundlay::sheets {

/// Straight strokes through at least two points.
struct Path {
    std::vector<Vec2> points;
    bool closed = false;
    Line line = Line::visible;
    std::string layer;   ///< for machines: operation and depth; empty = the line's name
    bool leader = false; ///< leads from a text to what it is about
    bool operator==(const Path &) const = default;
};

struct Circle {
    Vec2 centre;
    double radius = 0;
    Line line = Line::visible;
    std::string layer;
    bool operator==(const Circle &) const = default;
};

/// Counter-clockwise from `from` to `to`, degrees from the x axis.
struct Arc {
    Vec2 centre;
    double radius = 0;
    double from = 0, to = 0;
    Line line = Line::visible;
    bool operator==(const Arc &) const = default;
};

/// An area filled with an even grey, by the even-odd rule. No outline.
struct Fill {
    std::vector<std::vector<Vec2>> rings;
    double grey = 0.85; ///< 0 black … 1 white
    bool operator==(const Fill &) const = default;
};

enum class Across { left, middle, right };    ///< where on the text's width its position lies
enum class Upright { baseline, middle, top }; ///< middle and top are those of a capital letter

/// What a text is, so that a reader or a test can tell.
enum class Role {
    note,
    dimension,
    mark, ///< tag or number of a thing that is drawn
    caption,
    cell,
    title,
    page ///< number of the page in its book, in the margin outside the frame
};

/// Lettering after ISO 3098 (from memory): `height` is that of a capital letter.
struct Text {
    Vec2 at;
    double height = 2.5;
    std::string words; ///< UTF-8, one line
    Across across = Across::left;
    Upright upright = Upright::baseline;
    double turn = 0; ///< degrees counter-clockwise
    bool bold = false;
    Role role = Role::note;
    std::string layer; ///< for machines; empty = "text"
    bool operator==(const Text &) const = default;
};

/// A picture in PNG form, stretched into its box.
struct Picture {
    Rect box;
    std::string png;
    std::string described; ///< what it shows, in words
    bool operator==(const Picture &) const = default;
};

/// An area that leads to another sheet when it is clicked.
struct Link {
    Rect box;
    std::string to; ///< Sheet::anchor
    bool operator==(const Link &) const = default;
};

using Item = std::variant<Path, Circle, Arc, Fill, Text, Picture, Link>;

struct Sheet {
    PaperSize size;
    std::string title;                  ///< for the bookmark and file names
    std::string subject;                ///< what it shares with the other sheets of one thing; empty = title
    std::string anchor;                 ///< unique in its book; links lead here
    std::string chapter;                ///< bookmark under which its own stands; empty = top level
    Rect drawing = Rect::nothing();     ///< inside of the frame
    Rect title_block = Rect::nothing(); ///< empty() where there is none
    std::vector<Item> items;
    bool operator==(const Sheet &) const = default;
};

/// All sheets, in order.
struct Book {
    std::string title;
    std::string author;
    std::string subject;
    std::string language = "en";         ///< BCP 47
    std::optional<std::int64_t> created; ///< seconds since 1970 UTC; not stated = book_time()
    std::vector<Sheet> sheets;
};

/// SOURCE_DATE_EPOCH where it is set to a whole number, else the clock.
std::int64_t book_time();

} // namespace roundlay::sheets
