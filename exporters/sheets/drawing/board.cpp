#include "exporters/sheets/drawing/board.h"

#include "exporters/sheets/drawing/clash.h"
#include "exporters/sheets/drawing/text.h"

#include <algorithm>

namespace roundlay::sheets {
namespace {

constexpr double air_around_text = 0.35; ///< where a line yields to it
constexpr double least_rest = 0.6;       ///< a shorter rest of a line would look like a speck

bool yields(const Item &item) {
    const Path *path = std::get_if<Path>(&item);
    return path != nullptr && style_of(path->line).yields;
}

bool any_crosses(const std::vector<Rect> &boxes, Vec2 from, Vec2 to) {
    return std::any_of(boxes.begin(), boxes.end(), [&](const Rect &box) { return crosses(box, from, to); });
}

/// Adds what is left of the path, as one path for each stretch that hangs together.
void add_rest(std::vector<Item> &items, Path &&path, const std::vector<Rect> &boxes) {
    bool clear = true;
    each_stroke(path, [&](Vec2 from, Vec2 to) { clear = clear && !any_crosses(boxes, from, to); });
    if (clear) return void(items.emplace_back(std::move(path)));
    bool whole = true; // a box may take less of it than is seen
    std::vector<Path> stretches;
    for (const auto &[from, to] : strokes_of(path)) {
        const auto parts = outside(from, to, boxes, least_rest);
        whole = whole && parts.size() == 1 && parts[0] == std::pair(from, to);
        for (const auto &[a, b] : parts) {
            if (!stretches.empty() && stretches.back().points.back() == a)
                stretches.back().points.push_back(b);
            else
                stretches.push_back({{a, b}, false, path.line, path.layer, path.leader});
        }
    }
    if (whole) return void(items.emplace_back(std::move(path)));
    for (Path &stretch : stretches)
        items.emplace_back(std::move(stretch));
}

} // namespace

std::vector<std::pair<Vec2, Vec2>> outside(Vec2 from, Vec2 to, const std::vector<Rect> &boxes,
                                           double shortest) {
    std::vector<std::pair<Vec2, Vec2>> parts{{from, to}};
    for (const Rect &box : boxes) {
        const auto meets = [&](const auto &part) { return crosses(box, part.first, part.second); };
        if (std::none_of(parts.begin(), parts.end(), meets)) continue;
        std::vector<std::pair<Vec2, Vec2>> rest;
        for (const auto &[a, b] : parts) {
            if (!crosses(box, a, b)) {
                rest.emplace_back(a, b);
                continue;
            }
            const auto [enters, leaves] = span_within(box, a, b);
            const Vec2 d = b - a;
            if (enters * length(d) >= shortest) rest.emplace_back(a, a + enters * d);
            if ((1 - leaves) * length(d) >= shortest) rest.emplace_back(a + leaves * d, b);
        }
        parts = std::move(rest);
    }
    return parts;
}

void Board::add(Item item) {
    if (const Text *text = std::get_if<Text>(&item)) texts_.push_back(box_of(*text));
    if (std::holds_alternative<Fill>(item) || std::holds_alternative<Picture>(item))
        kept_out_.push_back(bounds(item));
    const bool yielding = yields(item);
    if (const Path *path = std::get_if<Path>(&item))
        each_stroke(*path, [&](Vec2 from, Vec2 to) {
            strokes_.push_back({from, to, yielding, path->leader});
        });
    else
        for (const auto &[from, to] : strokes_of(item))
            strokes_.push_back({from, to, yielding, false});
    items_.push_back(std::move(item));
}

bool Board::is_free(const Rect &box, bool strict) const {
    const auto in_way = [&](const Rect &other) { return box.overlaps(other); };
    if (std::any_of(texts_.begin(), texts_.end(), in_way)) return false;
    if (std::any_of(kept_out_.begin(), kept_out_.end(), in_way)) return false;
    return std::none_of(strokes_.begin(), strokes_.end(), [&](const Stroke &stroke) {
        return (strict || !stroke.yields) && crosses(box, stroke.from, stroke.to);
    });
}

bool Board::is_clear(const Path &leader) const {
    const auto strokes = strokes_of(leader);
    return std::none_of(strokes_.begin(), strokes_.end(), [&](const Stroke &other) {
        return other.leader && std::any_of(strokes.begin(), strokes.end(), [&](const auto &s) {
                   return run_through(s.first, s.second, other.from, other.to);
               });
    });
}

bool Board::put(Text text, const std::vector<Vec2> &places, double air) {
    for (const bool strict : {true, false})
        for (const Vec2 place : places) {
            text.at = place;
            if (!is_free(box_of(text).grown(air), strict)) continue;
            add(text);
            return true;
        }
    return false;
}

std::vector<Item> Board::finished() && {
    std::vector<Rect> boxes;
    for (const Rect &text : texts_)
        boxes.push_back(text.grown(air_around_text));
    std::vector<Item> items;
    items.reserve(items_.size());
    for (Item &item : items_) {
        if (yields(item))
            add_rest(items, std::move(std::get<Path>(item)), boxes);
        else
            items.push_back(std::move(item));
    }
    return items;
}

} // namespace roundlay::sheets
