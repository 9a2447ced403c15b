// Kinds of line on a drawing, after ISO 128-2 (from memory), in the line group 0.5.
#pragma once

#include <span>

namespace roundlay::sheets {

enum class Line {
    visible,   ///< edges that are seen: wide
    hidden,    ///< edges behind wood: dashed
    dimension, ///< dimension and extension lines, leaders, tables: narrow
    centre,    ///< centre lines: long dash and dot
    blank,     ///< outline of the wood before it is cut: long dash and two dots
    cut_off,   ///< where a long log is broken
    frame,     ///< frame of the sheet and of its title block: widest
    strong     ///< emphasis within tables and symbols
};

struct LineStyle {
    double width = 0;               ///< millimetres
    std::span<const double> dashes; ///< dash, gap, dash, gap … in millimetres; empty = solid
    bool yields = false;            ///< is left out where it would run under a text
};

LineStyle style_of(Line line);
const char *name_of(Line line); ///< lower case, e.g. "visible": class in SVG, layer in DXF

inline constexpr Line all_lines[] = {Line::visible, Line::hidden,  Line::dimension, Line::centre,
                                     Line::blank,   Line::cut_off, Line::frame,     Line::strong};

} // namespace roundlay::sheets
