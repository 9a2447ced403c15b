#include "exporters/sheets/cut_sheet/isometric.h"

#include "exporters/sheets/cut_sheet/wood.h"
#include "exporters/sheets/drawing/text.h"

namespace roundlay::sheets {
namespace {

constexpr double near = 6; ///< paper kept on either side of what matters, along the log
constexpr double caption = 2.5;
constexpr double caption_room = 5;

std::vector<double> points_of(const Features &features) {
    std::vector<double> points;
    for (const Station &s : stations_of(features))
        points.push_back(s.x);
    for (const PegHole &peg : features.pegs)
        points.push_back(peg.bore->x);
    return points;
}

/// Paper width of the drawing beside what the log's length takes.
double width_across(const Blank &blank, const Projection &projection, double scale) {
    return std::abs(projection.across.y) * blank.width * scale;
}

} // namespace

std::optional<Block> isometric(const Features &features, const Body &body, const Scale &scale, double width,
                               std::size_t most_breaks) {
    const Blank &blank = features.piece->blank;
    const Projection projection = projection_of(View::isometric);
    const double room = (width - width_across(blank, projection, scale.ratio)) / projection.across.x;
    if (room <= 0) return std::nullopt;
    const auto ruler = ruler_for(0, blank.length, points_of(features), scale.ratio, room, near, most_breaks);
    if (!ruler || ruler->shown().size() != most_breaks + 1) return std::nullopt;

    Block block;
    const Scene scene = broken_scene(body, *ruler);
    for (const Stretch &s : tidied(edges_seen(scene, projection))) {
        if (s.seen == Seen::hidden) continue;
        block.items.emplace_back(Path{{scale.ratio * s.from, scale.ratio * s.to},
                                      false,
                                      s.cut_off ? Line::cut_off : Line::visible,
                                      ""});
    }
    const Rect drawn = bounds(block.items);
    Text text;
    text.words = std::string("Isometric, ") + scale.words;
    text.at = {drawn.x1, drawn.y0};
    text.across = Across::right;
    text.height = caption;
    text.bold = true;
    text.role = Role::caption;
    // the lower right corner is free: the log rises from the lower left to the upper right
    const bool beside =
        box_of(text).x0 > drawn.x0 + width_across(blank, projection, scale.ratio) * 2 + caption;
    if (!beside) text.at = {drawn.x0, drawn.y0 - caption_room}, text.across = Across::left;
    block.items.emplace_back(text);
    block.room = bounds(block.items);
    return block;
}

} // namespace roundlay::sheets
