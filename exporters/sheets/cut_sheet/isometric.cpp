#include "exporters/sheets/cut_sheet/isometric.h"

#include "exporters/sheets/cut_sheet/wood.h"
#include "exporters/sheets/drawing/board.h"
#include "exporters/sheets/drawing/text.h"

namespace roundlay::sheets {
namespace {

constexpr double near = 6; ///< paper kept on either side of what matters, along the log
constexpr double caption = 2.5;
constexpr double caption_room = 5;

/// Paper width of the drawing beside what the log's length takes.
double width_across(const Blank &blank, const Projection &projection, double scale) {
    return std::abs(projection.across.y) * blank.width * scale;
}

/// In the lower right corner, which is mostly free: the log rises from the lower left to the upper right.
void add_caption(Board &board, const std::string &words) {
    const Rect drawn = bounds(board.items());
    Text text;
    text.words = words;
    text.at = {drawn.x1, drawn.y0};
    text.across = Across::right;
    text.height = caption;
    text.bold = true;
    text.role = Role::caption;
    const Rect box = box_of(text);
    if (box.x0 < drawn.x0 || !board.is_free(box.grown(1), true)) {
        text.at = {drawn.x0, drawn.y0 - caption_room};
        text.across = Across::left;
    }
    board.add(text);
}

/// Visible stretches, millimetres of wood.
std::vector<Stretch> seen(const Body &body, const Ruler &ruler, const Projection &projection) {
    std::vector<Stretch> all = tidied(edges_seen(broken_scene(body, ruler), projection));
    std::erase_if(all, [](const Stretch &s) { return s.seen == Seen::hidden; });
    return all;
}

} // namespace

std::optional<Block> isometric(const Features &features, const Body &body, const Scale &scale,
                               const Words &words, double width, std::size_t most_breaks, SeenWhole &whole) {
    const Blank &blank = features.piece->blank;
    const Projection projection = projection_of(View::isometric);
    const double room = (width - width_across(blank, projection, scale.ratio)) / projection.across.x;
    if (room <= 0) return std::nullopt;
    std::vector<Place> places;
    for (const WorkedPlace &place : places_of(features))
        places.push_back({place.x, near + place.half * scale.ratio});
    const auto ruler = ruler_for({0, near}, {blank.length, near}, places, scale.ratio, room, most_breaks);
    if (!ruler || ruler->shown().size() != most_breaks + 1) return std::nullopt;

    Board board;
    const std::vector<Stretch> broken =
        most_breaks > 0 ? seen(body, *ruler, projection) : std::vector<Stretch>{};
    if (most_breaks == 0 && !whole) whole = seen(body, *ruler, projection);
    for (const Stretch &s : most_breaks > 0 ? broken : *whole) {
        board.add(Path{{scale.ratio * s.from, scale.ratio * s.to},
                       false,
                       s.cut_off ? Line::cut_off : Line::visible,
                       ""});
    }
    add_caption(board, words.say("Isometric, %1", said_scale(&scale, words)));
    return Block{bounds(board.items()), board.items()};
}

} // namespace roundlay::sheets
