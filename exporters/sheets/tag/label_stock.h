// Sheets of labels as they are bought: how many, how large, and where they lie on the paper.
#pragma once

#include "exporters/sheets/drawing/paper.h"
#include "exporters/sheets/drawing/rect.h"
#include "kernel/measure/said.h"

#include <optional>

namespace roundlay::sheets {

/// Millimetres.
struct LabelStock {
    double width = 0, height = 0;
    int columns = 0, rows = 0;
    double left = 0, top = 0;            ///< margins of the sheet
    double gap_across = 0, gap_down = 0; ///< between labels
    bool operator==(const LabelStock &) const = default;
};

/// As a person states them: what is left out is 0, and without size and grid no stock is stated.
struct AcrossDown {
    double across = 0, down = 0;
};
struct StatedLabels {
    std::optional<AcrossDown> size; ///< mm
    std::optional<AcrossDown> grid; ///< how many
    AcrossDown margins, gaps;       ///< mm
};

/// Nothing where size or grid is not stated.
std::optional<LabelStock> stock_of(const StatedLabels &stated);

/// Two across and four down, edge to edge, inside margins of 10 mm.
LabelStock plain_labels(PaperSize size);

/// By itself, without margins.
inline LabelStock one_label(double width, double height) {
    return {width, height, 1, 1, 0, 0, 0, 0};
}

/// Where the label of that number lies, from 0, row by row.
Rect label_box(const LabelStock &stock, PaperSize size, int number);

/// No tag has room on less, with a code that can be read; what all of a shell's tags need is found by trying.
inline constexpr double least_label_width = 88, least_label_height = 36;
inline bool is_too_small(const LabelStock &stock) {
    return stock.width < least_label_width || stock.height < least_label_height;
}

/// Why no tags can be printed on these, in one sentence; nothing where they can.
std::optional<Said> label_fault(const LabelStock &stock, PaperSize size);

} // namespace roundlay::sheets
