#include "exporters/sheets/tag/label_stock.h"

namespace roundlay::sheets {

LabelStock plain_labels(PaperSize size) {
    constexpr double margin = 10;
    constexpr int columns = 2, rows = 4;
    return {(size.width - 2 * margin) / columns,
            (size.height - 2 * margin) / rows,
            columns,
            rows,
            margin,
            margin,
            0,
            0};
}

std::optional<LabelStock> stock_of(const StatedLabels &stated) {
    if (!stated.size || !stated.grid) return {};
    return LabelStock{stated.size->across,
                      stated.size->down,
                      static_cast<int>(stated.grid->across),
                      static_cast<int>(stated.grid->down),
                      stated.margins.across,
                      stated.margins.down,
                      stated.gaps.across,
                      stated.gaps.down};
}

Rect label_box(const LabelStock &stock, PaperSize size, int number) {
    const int column = number % stock.columns, row = number / stock.columns;
    const double x = stock.left + column * (stock.width + stock.gap_across);
    const double top = size.height - stock.top - row * (stock.height + stock.gap_down);
    return {x, top - stock.height, x + stock.width, top};
}

std::optional<Said> label_fault(const LabelStock &stock, PaperSize size) {
    constexpr double rounding = 0.05; // mm: stock is stated to tenths
    if (stock.columns < 1 || stock.rows < 1)
        return said("a sheet of labels has at least one across and one down");
    if (stock.left < 0 || stock.top < 0 || stock.gap_across < 0 || stock.gap_down < 0)
        return said("margins and gaps of labels are not less than 0");
    if (is_too_small(stock))
        return said("labels of %1 by %2 have no room for a tag", in_mm(stock.width), in_mm(stock.height));
    const Rect last = label_box(stock, size, stock.columns * stock.rows - 1);
    if (last.x1 > size.width + rounding || last.y0 < -rounding)
        return said("the labels take %1 by %2, the paper has %3 by %4", in_mm(last.x1),
                    in_mm(size.height - last.y0), in_mm(size.width), in_mm(size.height));
    return {};
}

} // namespace roundlay::sheets
