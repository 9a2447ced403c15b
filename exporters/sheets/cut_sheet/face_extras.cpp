#include "exporters/sheets/cut_sheet/face_board.h"
#include "exporters/sheets/drawing/dimension.h"
#include "exporters/sheets/drawing/text.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace roundlay::sheets {
namespace {

constexpr double end_grain = 0.86;     ///< grey of the end's own face
constexpr double square_on = 0.999999; ///< cosine: a face turned straight toward the viewer
constexpr double balance_radius = 1.8;
constexpr double caption = 3.5, small = 2.5;

void put_text(FaceBoard &face, const std::string &words, Vec2 at, double height, Across across, bool bold) {
    Text text;
    text.words = words;
    text.at = at;
    text.height = height;
    text.across = across;
    text.bold = bold;
    text.role = Role::caption;
    face.board.add(text);
}

std::string caption_of(const FaceBoard &face, View view) {
    if (!face.features().piece->timber || (view != View::outside && view != View::inside))
        return name_of(view, *face.wanted.words);
    return view == View::outside ? face.wanted.words->say("Right") : face.wanted.words->say("Left");
}

/// Along the outer side of an end view, which is its inside face.
void add_inside_mark(FaceBoard &face, Vec2 foot) {
    Text text;
    text.words = face.wanted.words->word(side_word(*face.features().piece, true));
    text.at = foot;
    text.height = small;
    text.across = Across::middle;
    text.turn = 90;
    text.role = Role::caption;
    face.board.add(text);
}

struct EndView {
    View view;
    Projection projection;
    Rect outline;
    double left = 0; ///< of the blank in the projection, millimetres of wood
    double scale = 0;

    Vec2 paper(Vec2 flat) const {
        return {outline.x0 + (flat.x - left) * scale, outline.y0 + flat.y * scale};
    }
};

EndView end_view(const FaceBoard &face, View view, double x0) {
    EndView end{view, projection_of(view), {}, 0, face.wanted.scale};
    const Blank &blank = face.blank();
    end.left = std::min(0.0, dot({0, blank.width, 0}, end.projection.across));
    const double y0 = face.row(View::outside).outline.y0;
    end.outline = {x0, y0, x0 + blank.width * end.scale, y0 + blank.height * end.scale};
    return end;
}

/// The face that the saw leaves at the very end, greyed like end grain.
void add_end_grain(FaceBoard &face, const EndView &end) {
    const Polyhedron &solid = face.wanted.piece->body->hewn;
    const double x = end.view == View::datum_end ? 0 : face.blank().length;
    for (const Face &side : solid.faces) {
        if (dot(side.plane.normal, end.projection.toward) < square_on) continue;
        Fill fill{{}, end_grain};
        bool at_end = true;
        for (const auto &loop : side.loops) {
            fill.rings.emplace_back();
            for (const int i : loop) {
                const Vec3 p = solid.vertices[static_cast<std::size_t>(i)];
                at_end = at_end && std::abs(p.x - x) < same_station;
                fill.rings.back().push_back(end.paper(end.projection.flat(p)));
            }
        }
        if (at_end) face.board.add(fill);
    }
}

constexpr double least_away = 1.8; ///< of the names over and under an end view

/// Of a low log the word along the side of an end view is longer than the side: the names over and under it
/// stand clear of it.
double away_from_end(const FaceBoard &face) {
    const std::string word = face.wanted.words->word(side_word(*face.features().piece, true));
    return std::max(least_away,
                    (text_width(word, small) - face.blank().height * face.wanted.scale) / 2 + 1.2);
}

void add_end(FaceBoard &face, const EndView &end) {
    add_end_grain(face, end);
    const Rect &o = end.outline;
    const auto &seen = face.wanted.piece->ends.at(end.view == View::datum_end ? 0 : 1);
    for (const Stretch &s : seen)
        face.board.add(Path{{end.paper(s.from), end.paper(s.to)},
                            false,
                            s.seen == Seen::visible ? Line::visible : Line::hidden,
                            ""});
    const bool datum = end.view == View::datum_end;
    const bool butt = face.features().piece->butt_at_datum == datum;
    const Words &words = *face.wanted.words;
    const double away = away_from_end(face);
    put_text(face, name_of(end.view, words), {o.centre().x, o.y1 + away}, small, Across::middle, true);
    if (face.wanted.renamed == nullptr) // else it differs from piece to piece
        put_text(face, butt ? words.say("butt") : words.say("tip"), {o.centre().x, o.y0 - away - small},
                 small, Across::middle, false);
    add_inside_mark(face, {datum ? o.x0 - 1 : o.x1 + 1 + small, o.centre().y});
}

void add_arrow(FaceBoard &face, Vec2 from, Vec2 to) {
    const Vec2 d = to - from;
    face.board.add(Path{{from, to}, false, Line::strong, ""});
    face.board.add(arrowhead(to, (1 / length(d)) * d));
}

/// Beside the top and the under face: where the outside is.
void add_outside_mark(FaceBoard &face, const FaceRow &row) {
    const bool at_foot = row.view == View::top;
    const bool widths = face.shows_far && log_width(face.features(), End::far);
    const double x = face.right() + 3 + (widths ? room_for_end_levels(face.wanted, End::far) : 0);
    const double edge = at_foot ? row.outline.y0 : row.outline.y1;
    const double way = at_foot ? -1 : 1, start = edge - way * std::min(6.0, row.outline.height() * 0.6);
    add_arrow(face, {x, start}, {x, edge});
    put_text(face, face.wanted.words->word(side_word(*face.features().piece, false)),
             {x + 1.6, (start + edge) / 2 - small / 2}, small, Across::left, false);
}

std::vector<Item> balance_symbol(Vec2 c) {
    constexpr int steps = 8;
    std::vector<Item> items;
    for (const int quarter : {0, 2}) {
        Fill fill{{{c}}, 0};
        for (int i = 0; i <= steps; ++i) {
            const double a = (quarter + static_cast<double>(i) / steps) * std::numbers::pi / 2;
            fill.rings[0].push_back(c + balance_radius * Vec2{std::cos(a), std::sin(a)});
        }
        items.emplace_back(fill);
    }
    items.emplace_back(Circle{c, balance_radius, Line::strong, ""});
    return items;
}

std::string part_words(const ViewsWanted &wanted) {
    return wanted.words->say("part %1 of %2", wanted.part, wanted.parts);
}

} // namespace

void add_end_views(FaceBoard &face) {
    const double width = face.blank().width * face.wanted.scale;
    const bool third = face.wanted.angle == Angle::third;
    const double left_room = room_for_end_levels(face.wanted, End::datum) + beside_end_view;
    const double right_room = room_for_end_levels(face.wanted, End::far) + beside_end_view;
    // centred in a column that is at least as wide as the words over it
    const double column = std::max(width, face.end_caption);
    const double at_left = face.left - left_room - (column + width) / 2;
    const double at_right = face.right() + right_room + (column - width) / 2;
    if (face.shows_datum) add_end(face, end_view(face, third ? View::datum_end : View::far_end, at_left));
    if (face.shows_far) add_end(face, end_view(face, third ? View::far_end : View::datum_end, at_right));
}

void add_captions(FaceBoard &face) {
    const double x = face.board_left;
    for (const FaceRow &row : face.rows) {
        const bool outside = row.view == View::outside;
        const double y = row.outline.y1 - caption + (outside ? 9 + away_from_end(face) - least_away : 0);
        put_text(face, caption_of(face, row.view), {x, y}, caption, Across::left, true);
        if (row.rolled_over() && row.outline.height() > 8)
            put_text(face, face.wanted.words->say("(rolled over)"), {x, y - 4.8}, small, Across::left, false);
        if (row.view == View::top || row.view == View::under) add_outside_mark(face, row);
        if (&row == &face.rows.front() && face.wanted.parts > 1)
            put_text(face, part_words(face.wanted), {x, y - 4.8}, small, Across::left, false);
    }
}

/// A circle with two opposite quarters filled, on the first face where nothing else is in its place. The
/// table states the number in any case.
void add_balance_point(FaceBoard &face) {
    const Vec3 g = face.wanted.piece->body->centroid;
    if (!face.ruler.shows(g.x)) return;
    for (const View view : {View::outside, View::inside, View::top, View::under}) {
        const Vec2 c{face.x(g.x), face.row(view).y(g)};
        const Rect box = Rect{c.x, c.y, c.x, c.y}.grown(balance_radius + 0.3);
        if (!face.board.is_free(box, false)) continue;
        for (Item &item : balance_symbol(c))
            face.board.add(std::move(item));
        return;
    }
}

void add_up_arrows(FaceBoard &face) {
    const std::string up = face.wanted.words->say("up");
    for (const View view : {View::outside, View::inside}) {
        const FaceRow &row = face.row(view);
        const double tall = std::min(8.0, row.outline.height() * 0.6), y = row.outline.centre().y;
        const double way = row.rolled_over() ? -1 : 1;
        const double width = 2 + text_width(up, small);
        for (double x = face.left + 0.3 * face.ruler.width(); x < face.right() - width; x += 5) {
            if (!face.board.is_free({x - 1.5, y - tall / 2 - 0.5, x + width + 0.5, y + tall / 2 + 0.5}, true))
                continue;
            add_arrow(face, {x, y - way * tall / 2}, {x, y + way * tall / 2});
            put_text(face, up, {x + 1.5, y - small / 2}, small, Across::left, false);
            break;
        }
    }
}

} // namespace roundlay::sheets
