#include "exporters/sheets/pattern/shapes.h"

#include <algorithm>
#include <cmath>

namespace roundlay::sheets {
namespace {

using Stroke = std::pair<Vec2, Vec2>;

Vec2 mirrored(Vec2 p) {
    return {-p.x, p.y};
}

/// Outline and marks as strokes, from the lower left corner of the outline.
std::vector<Stroke> strokes_of_face(const PatternFace &face, bool mirror) {
    std::vector<Stroke> all;
    const auto put = [&](Vec2 p) { return mirror ? mirrored(p) : p; };
    for (std::size_t i = 0; i < face.outline.size(); ++i)
        all.emplace_back(put(face.outline[i]), put(face.outline[(i + 1) % face.outline.size()]));
    Vec2 low = all.front().first;
    for (const auto &[a, b] : all)
        low = {std::min({low.x, a.x, b.x}), std::min({low.y, a.y, b.y})};
    for (const Path &mark : face.marks)
        all.emplace_back(put(mark.points.front()), put(mark.points.back()));
    for (auto &[a, b] : all)
        a = a - low, b = b - low;
    return all;
}

bool is_near(Vec2 a, Vec2 b) {
    return length(a - b) < alike_by;
}

bool same_stroke(const Stroke &a, const Stroke &b) {
    return (is_near(a.first, b.first) && is_near(a.second, b.second)) ||
           (is_near(a.first, b.second) && is_near(a.second, b.first));
}

/// Each stroke of one is one of the other.
bool same_shape(const std::vector<Stroke> &a, const std::vector<Stroke> &b) {
    const auto holds = [](const std::vector<Stroke> &all, const Stroke &s) {
        return std::ranges::any_of(all, [&](const Stroke &o) { return same_stroke(o, s); });
    };
    return a.size() == b.size() && std::ranges::all_of(a, [&](const Stroke &s) { return holds(b, s); }) &&
           std::ranges::all_of(b, [&](const Stroke &s) { return holds(a, s); });
}

void add_tags(Pattern &pattern, const std::vector<std::string> &tags) {
    for (const std::string &tag : tags)
        if (std::ranges::find(pattern.tags, tag) == pattern.tags.end()) pattern.tags.push_back(tag);
}

/// Whether some shape serves this face too; notes it there.
bool is_served(std::vector<PrintedShape> &shapes, const Pattern &pattern, const PatternFace &face) {
    for (PrintedShape &shape : shapes) {
        if (shape.pattern.stands != pattern.stands) continue;
        const auto known = strokes_of_face(shape.face, false);
        const bool as_it_is = same_shape(known, strokes_of_face(face, false));
        if (!as_it_is && !same_shape(known, strokes_of_face(face, true))) continue;
        (as_it_is ? shape.as_it_is : shape.turned_over).push_back(face.name);
        add_tags(shape.pattern, pattern.tags);
        return true;
    }
    return false;
}

} // namespace

std::vector<PrintedShape> printed_shapes(const std::vector<Pattern> &patterns) {
    std::vector<PrintedShape> shapes;
    for (const Pattern &pattern : patterns)
        for (const PatternFace &face : pattern.faces)
            if (!is_served(shapes, pattern, face)) shapes.push_back({face, pattern, {}, {}});
    return shapes;
}

} // namespace roundlay::sheets
