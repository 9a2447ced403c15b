#include "exporters/sheets/drawing/pages.h"

#include <algorithm>

namespace roundlay::sheets {
namespace {

constexpr double air = 4; ///< between blocks, millimetres
constexpr double rounding = 1e-6;

} // namespace

/// Calls stop(corner) for each upper left corner where a block could start, beside or under what is there,
/// the highest first and of those the leftmost, until it says true.
template <typename Try> void Page::at_corners(Try &&stop) const {
    std::vector<double> xs{area_.x0}, ys{area_.y1};
    for (const Rect &t : taken_) {
        xs.push_back(t.x1 + air);
        ys.push_back(t.y0 - air);
    }
    std::sort(xs.begin(), xs.end());
    std::sort(ys.rbegin(), ys.rend());
    for (const double y : ys)
        for (const double x : xs)
            if (stop(Vec2{x, y})) return;
}

void Page::put_at(Put what, const Rect &room, Vec2 lower_left) {
    what.by = lower_left - Vec2{room.x0, room.y0};
    take(room.moved(what.by));
    put_.push_back(std::move(what));
}

void Page::add(std::vector<Item> items) {
    Put put;
    put.block = std::make_shared<const Block>(Block{{}, std::move(items)});
    put.moves = false;
    put_.push_back(std::move(put));
}

std::vector<Item> Page::items() const {
    std::vector<Item> all;
    for (const Put &put : put_) {
        const Block rows = put.block ? Block{} : put.table->drawn(put.first, put.last);
        for (const Item &item : put.block ? put.block->items : rows.items)
            all.push_back(put.moves ? moved(item, put.by) : item);
    }
    return all;
}

double Page::height_below(Vec2 corner, double width) const {
    if (corner.x < area_.x0 - rounding || corner.x + width > area_.x1 + rounding || corner.y > area_.y1)
        return 0;
    double low = area_.y0;
    for (const Rect &t : taken_) {
        const bool beside = t.x1 + air <= corner.x + rounding || corner.x + width + air <= t.x0 + rounding;
        if (beside || t.y0 - air >= corner.y - rounding) continue;
        low = std::max(low, t.y1 + air);
    }
    return corner.y - low;
}

double Page::tallest() const {
    return height_below({area_.x0, area_.y1}, area_.width());
}

std::optional<Vec2> Page::place_for(double width, double height) const {
    std::optional<Vec2> place;
    at_corners([&](Vec2 corner) {
        if (height_below(corner, width) >= height - rounding) place = Vec2{corner.x, corner.y - height};
        return place.has_value();
    });
    return place;
}

bool Page::put(SharedBlock block) {
    const Rect room = block->room;
    const auto place = place_for(room.width(), room.height());
    if (place) put_at({std::move(block), nullptr}, room, *place);
    return place.has_value();
}

bool Page::put_low(SharedBlock block) {
    const Rect room = block->room;
    const double w = room.width(), h = room.height();
    std::vector<double> xs{area_.x1 - w}, ys{area_.y0};
    for (const Rect &t : taken_) {
        xs.push_back(t.x0 - air - w);
        ys.push_back(t.y1 + air);
    }
    std::sort(xs.rbegin(), xs.rend());
    std::sort(ys.begin(), ys.end());
    for (const double y : ys)
        for (const double x : xs) {
            if (x < area_.x0 - rounding || height_below({x, y + h}, w) < h - rounding) continue;
            put_at({std::move(block), nullptr}, room, {x, y});
            return true;
        }
    return false;
}

std::size_t Page::put_rows(const SharedTable &table, std::size_t first, std::size_t fewest) {
    const std::size_t left = table->rows() - first;
    const double width = table->room(first, first).width();
    std::size_t best = 0;
    Vec2 where;
    at_corners([&](Vec2 corner) {
        const std::size_t fit = table->rows_that_fit(first, height_below(corner, width));
        if (fit <= best) return false;
        best = fit;
        where = corner;
        return best == left;
    });
    if (best == 0 || best < fewest) return 0;
    const Rect room = table->room(first, first + best);
    put_at({nullptr, table, first, first + best}, room, {where.x, where.y - room.height()});
    return best;
}

} // namespace roundlay::sheets
