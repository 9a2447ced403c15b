#include "exporters/sheets/cut_sheet/face_rows.h"

#include "exporters/sheets/cut_sheet/wood.h"

#include <algorithm>
#include <array>

namespace roundlay::sheets {
namespace {

constexpr double beyond = 2;   ///< of a break line over the outline
constexpr double zigzag = 1.2; ///< half of its width

/// The outline of the blank as stretches that anything drawn takes the place of.
std::vector<Stretch> less_drawn(const std::vector<Stretch> &blank, const std::vector<Stretch> &drawn) {
    std::vector<Stretch> all = blank;
    for (Stretch &s : all)
        s.seen = Seen::hidden; // the least of the three kinds
    std::vector<Stretch> solid = drawn;
    for (Stretch &s : solid)
        s.seen = Seen::visible;
    all.insert(all.end(), solid.begin(), solid.end());
    std::vector<Stretch> rest;
    for (const Stretch &s : tidied(all))
        if (s.seen == Seen::hidden) rest.push_back(s);
    return rest;
}

std::vector<Stretch> outline_stretches(double length, double low, double high) {
    const std::array<Vec2, 4> c{{{0, low}, {length, low}, {length, high}, {0, high}}};
    std::vector<Stretch> all;
    for (std::size_t i = 0; i < 4; ++i)
        all.push_back({c[i], c[(i + 1) % 4], Seen::visible, false});
    return all;
}

/// The part of the stretch within [from, to] of x, if any is left.
std::optional<Stretch> within(Stretch s, const Shown &shown) {
    if (s.from.x > s.to.x) std::swap(s.from, s.to);
    if (s.to.x < shown.from - same_station || s.from.x > shown.to + same_station) return std::nullopt;
    const Vec2 from = s.from, d = s.to - s.from;
    if (d.x < same_station) return s; // upright, and there is no cutting it short
    if (from.x < shown.from) s.from = from + ((shown.from - from.x) / d.x) * d;
    if (s.to.x > shown.to) s.to = from + ((shown.to - from.x) / d.x) * d;
    if (s.to.x - s.from.x < same_station) return std::nullopt;
    return s;
}

void add_paths(std::vector<Path> &paths, const std::vector<Stretch> &stretches, const FaceRow &row,
               const Ruler &ruler, Line visible, Line hidden) {
    const auto &shown = ruler.shown();
    for (std::size_t i = 0; i < shown.size(); ++i)
        for (const Stretch &s : stretches) {
            const auto part = within(s, shown[i]);
            if (!part) continue;
            const auto paper = [&](Vec2 p) {
                return Vec2{row.outline.x0 + ruler.start_of(i) + (p.x - shown[i].from) * row.scale,
                            row.outline.y0 + (p.y - row.low) * row.scale};
            };
            const Line line = s.seen == Seen::visible ? visible : hidden;
            paths.push_back({{paper(part->from), paper(part->to)}, false, line, ""});
        }
}

Path break_line(double x, const Rect &outline) {
    const double y0 = outline.y0 - beyond, y1 = outline.y1 + beyond, middle = (y0 + y1) / 2;
    return {{{x, y0},
             {x, middle - zigzag},
             {x + zigzag, middle - zigzag / 2},
             {x - zigzag, middle + zigzag / 2},
             {x, middle + zigzag},
             {x, y1}},
            false,
            Line::cut_off,
            ""};
}

} // namespace

FaceRow row_for(View view, const Blank &blank, double scale) {
    FaceRow row;
    row.view = view;
    row.projection = projection_of(view);
    row.scale = scale;
    const double far = dot({0, blank.width, blank.height}, row.projection.up);
    const double side = view == View::top || view == View::under ? blank.width : blank.height;
    row.low = std::min(0.0, far);
    row.high = row.low + side;
    return row;
}

std::vector<View> order_of_faces(Angle angle) {
    if (angle == Angle::third) return {View::top, View::outside, View::under, View::inside};
    return {View::under, View::outside, View::top, View::inside};
}

FaceLines face_lines(View view, const Body &body, const Blank &blank) {
    const FaceRow row = row_for(view, blank, 1);
    FaceLines lines;
    lines.edges = tidied(edges_seen(whole_scene(body, view), row.projection));
    lines.blank = less_drawn(outline_stretches(blank.length, row.low, row.high), lines.edges);
    return lines;
}

std::vector<Path> edges_of(const FaceRow &row, const FaceLines &lines, const Ruler &ruler) {
    std::vector<Path> paths;
    add_paths(paths, lines.edges, row, ruler, Line::visible, Line::hidden);
    add_paths(paths, lines.blank, row, ruler, Line::blank, Line::blank);
    return paths;
}

std::vector<Path> break_lines(const FaceRow &row, const Ruler &ruler, bool comes_from, bool goes_on) {
    std::vector<Path> paths;
    if (comes_from) paths.push_back(break_line(row.outline.x0, row.outline));
    if (goes_on) paths.push_back(break_line(row.outline.x1, row.outline));
    const auto &shown = ruler.shown();
    for (std::size_t i = 0; i + 1 < shown.size(); ++i) {
        const double left = row.outline.x0 + ruler.start_of(i) + (shown[i].to - shown[i].from) * row.scale;
        paths.push_back(break_line(left, row.outline));
        paths.push_back(break_line(row.outline.x0 + ruler.start_of(i + 1), row.outline));
    }
    return paths;
}

} // namespace roundlay::sheets
