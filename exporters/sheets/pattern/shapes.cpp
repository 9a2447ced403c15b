#include "exporters/sheets/pattern/shapes.h"

#include <algorithm>
#include <utility>

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
    for (const Circle &hole : face.holes) // told by its middle and how wide it is
        all.emplace_back(put(hole.centre), put(hole.centre) + Vec2{0, hole.radius});
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

/// Shapes as they come, each with its strokes, which every later face is held against.
class Shapes {
  public:
    void add(const Pattern &pattern, const PatternFace &face) {
        const auto strokes = strokes_of_face(face, false), turned = strokes_of_face(face, true);
        for (std::size_t i = 0; i < shapes_.size(); ++i) {
            PrintedShape &shape = shapes_[i];
            if (shape.pattern.stands != pattern.stands) continue;
            const bool as_it_is = same_shape(strokes_[i], strokes);
            if (!as_it_is && !same_shape(strokes_[i], turned)) continue;
            (as_it_is ? shape.as_it_is : shape.turned_over).push_back(face.name);
            return add_tags(shape.pattern, pattern.tags);
        }
        shapes_.push_back({face, pattern, {}, {}});
        strokes_.push_back(strokes);
    }

    std::vector<PrintedShape> taken() && { return std::move(shapes_); }

  private:
    std::vector<PrintedShape> shapes_;
    std::vector<std::vector<Stroke>> strokes_; ///< of each
};

} // namespace

std::vector<PrintedShape> printed_shapes(const std::vector<Pattern> &patterns) {
    Shapes shapes;
    for (const Pattern &pattern : patterns)
        for (const PatternFace &face : pattern.faces)
            shapes.add(pattern, face);
    return std::move(shapes).taken();
}

} // namespace roundlay::sheets
