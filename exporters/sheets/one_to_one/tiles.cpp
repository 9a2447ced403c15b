#include "exporters/sheets/drawing/clash.h"
#include "exporters/sheets/one_to_one/full_size.h"

#include <algorithm>
#include <cmath>

namespace roundlay::sheets {
namespace {

constexpr double tick = tile_tick;

Line line_of(const Item &item) {
    if (const Path *path = std::get_if<Path>(&item)) return path->line;
    if (const Circle *circle = std::get_if<Circle>(&item)) return circle->line;
    return std::get<Arc>(item).line;
}

std::vector<Item> cut_strokes(const Item &item, const Rect &window) {
    std::vector<Item> parts;
    for (const auto &[from, to] : strokes_of(item)) {
        const auto [enters, leaves] = span_within(window, from, to);
        if (enters >= leaves) continue;
        const Vec2 d = to - from;
        parts.emplace_back(Path{{from + enters * d, from + leaves * d}, false, line_of(item), ""});
    }
    return parts;
}

bool draws(const std::vector<Item> &items) {
    return std::any_of(items.begin(), items.end(),
                       [](const Item &item) { return !std::holds_alternative<Text>(item); });
}

int count_for(double length, double room) {
    return std::max(1, static_cast<int>(std::ceil((length - tile_overlap) / (room - tile_overlap))));
}

/// Ticks where the next sheet begins, at the ends of the overlap.
void add_ticks(std::vector<Item> &items, const Rect &area, int row, int rows, int column, int columns) {
    const auto line = [&](Vec2 a, Vec2 b) { items.emplace_back(Path{{a, b}, false, Line::strong, ""}); };
    std::vector<double> xs, ys;
    if (column > 0) xs.push_back(area.x0 + tile_overlap);
    if (column + 1 < columns) xs.push_back(area.x1 - tile_overlap);
    if (row > 0) ys.push_back(area.y1 - tile_overlap);
    if (row + 1 < rows) ys.push_back(area.y0 + tile_overlap);
    for (const double x : xs) {
        line({x, area.y0}, {x, area.y0 + tick});
        line({x, area.y1 - tick}, {x, area.y1});
    }
    for (const double y : ys) {
        line({area.x0, y}, {area.x0 + tick, y});
        line({area.x1 - tick, y}, {area.x1, y});
    }
}

std::string label_for(const Words &words, int row, int rows, int column, int columns) {
    if (rows * columns == 1) return "";
    return words.say("row %1 of %2, column %3 of %4", row + 1, rows, column + 1, columns);
}

} // namespace

std::vector<Item> clipped(const Item &item, const Rect &window) {
    if (window.holds(bounds(item))) return {item};
    const bool strokes = std::holds_alternative<Path>(item) || std::holds_alternative<Circle>(item) ||
                         std::holds_alternative<Arc>(item);
    return strokes ? cut_strokes(item, window) : std::vector<Item>{};
}

int count_of_tiles(const Block &block, PaperSize size) {
    const Rect area = full_size_area(size);
    return count_for(block.room.width(), area.width()) * count_for(block.room.height(), area.height());
}

std::vector<Rect> tile_windows(const Rect &all, PaperSize size) {
    const Rect area = full_size_area(size);
    const int columns = count_for(all.width(), area.width()), rows = count_for(all.height(), area.height());
    std::vector<Rect> windows;
    for (int row = 0; row < rows; ++row)
        for (int column = 0; column < columns; ++column) {
            const double x = all.x0 + column * (area.width() - tile_overlap);
            const double top = all.y1 - row * (area.height() - tile_overlap);
            windows.push_back({x, top - area.height(), x + area.width(), top});
        }
    return windows;
}

std::vector<Sheet> tiled(const Block &block, PaperSize size, const FullSizeWords &words) {
    const Rect area = full_size_area(size);
    const Rect &all = block.room;
    const int columns = count_for(all.width(), area.width()), rows = count_for(all.height(), area.height());
    const std::vector<Rect> windows = tile_windows(all, size);
    std::vector<Sheet> sheets;
    for (int row = 0; row < rows; ++row)
        for (int column = 0; column < columns; ++column) {
            const Rect &window = windows[static_cast<std::size_t>(row * columns + column)];
            std::vector<Item> shown;
            for (const Item &item : block.items)
                for (Item &part : clipped(item, window))
                    shown.push_back(std::move(part));
            if (!draws(shown)) continue;
            Sheet sheet = full_size_sheet(size, words, label_for(words.words, row, rows, column, columns));
            sheet.anchor = words.anchor + ":" + std::to_string(sheets.size() + 1);
            const Vec2 by = Vec2{area.x0, area.y1} - Vec2{window.x0, window.y1};
            for (const Item &item : shown)
                sheet.items.push_back(moved(item, by));
            add_ticks(sheet.items, area, row, rows, column, columns);
            sheets.push_back(std::move(sheet));
        }
    return sheets;
}

} // namespace roundlay::sheets
