#include "exporters/sheets/cut_sheet/face_board.h"
#include "exporters/sheets/drawing/text.h"
#include "exporters/sheets/shell_view/bore_symbols.h"
#include "kernel/layout/fastenings/bore_marks.h"

namespace roundlay::sheets {
namespace {

constexpr double cross_beyond = 1.2; ///< of centre lines over the circle
constexpr double least_drawn = 1.2;  ///< a bore narrower than this on paper is its centre line only
constexpr double lettering = 2.5;

void add_line(FaceBoard &face, Vec2 from, Vec2 to, Line line) {
    face.board.add(Path{{from, to}, false, line, ""});
}

void add_circle(FaceBoard &face, const FaceRow &row, const Bore &bore) {
    const Vec2 c{face.x(bore.x), row.y({bore.x, bore.y, 0})};
    const double r = bore.diameter / 2 * row.scale, reach = r + cross_beyond;
    face.board.add(Circle{c, r, Line::visible, ""});
    add_line(face, {c.x - reach, c.y}, {c.x + reach, c.y}, Line::centre);
    add_line(face, {c.x, c.y - reach}, {c.x, c.y + reach}, Line::centre);
}

/// Beside the circle; further out where that is taken.
std::vector<Vec2> places_around(Vec2 c, double r, double width) {
    std::vector<Vec2> places;
    for (const double away : {0.9, 2.0, 3.5, 5.0})
        for (const double up : {1.0, -1.0, 0.0}) {
            const double dy = up * (r * 0.4 + away + lettering / 2),
                         dx = r + (up == 0 ? cross_beyond : 0) + away * 0.8;
            places.push_back({c.x + dx + width / 2, c.y + dy});
            places.push_back({c.x - dx - width / 2, c.y + dy});
            if (up != 0) places.push_back({c.x, c.y + up * (r + cross_beyond + away + lettering / 2)});
        }
    return places;
}

bool put_name(FaceBoard &face, const std::string &words, Vec2 c, double r) {
    return face.board.put(mark_text(words), places_around(c, r, text_width(words, lettering)));
}

bool add_name(FaceBoard &face, const FaceRow &row, const PegHole &peg) {
    const Vec2 c{face.x(peg.bore->x), row.y({peg.bore->x, peg.bore->y, 0})};
    return put_name(face, letter_of(peg.bore->use) + std::to_string(peg.number), c,
                    peg.bore->diameter / 2 * row.scale);
}

void add_from_the_side(FaceBoard &face, const FaceRow &row, const Bore &bore) {
    const double x = face.x(bore.x), r = bore.diameter / 2 * row.scale;
    const double a = row.level(bore.z_from), b = row.level(bore.z_to), up = b > a ? 1 : -1;
    add_line(face, {x, a - up * cross_beyond}, {x, b + up * cross_beyond}, Line::centre);
    if (2 * r < least_drawn) return;
    add_line(face, {x - r, a}, {x - r, b}, Line::hidden);
    add_line(face, {x + r, a}, {x + r, b}, Line::hidden);
}

} // namespace

bool add_pegs(FaceBoard &face) {
    std::vector<const PegHole *> shown;
    for (const PegHole &peg : face.features().pegs)
        if (face.ruler.shows(peg.bore->x)) shown.push_back(&peg);
    for (const PegHole *peg : shown) {
        for (const View view : {View::outside, View::inside})
            add_from_the_side(face, face.row(view), *peg->bore);
        if (peg->bore->from_top || peg->bore->through) add_circle(face, face.row(View::top), *peg->bore);
        if (!peg->bore->from_top || peg->bore->through) add_circle(face, face.row(View::under), *peg->bore);
    }
    for (const PegHole *peg : shown)
        if (!add_name(face, face.row(peg->bore->from_top ? View::top : View::under), *peg)) return false;
    return true;
}

/// A pocket that is closed at its top shows in the side that it is let into.
bool add_pockets(FaceBoard &face) {
    for (const Pocket &pocket : face.features().pockets) {
        const PocketCut &cut = *pocket.cut;
        if (!face.ruler.shows(cut.x)) continue;
        const bool under = pocket.bed_at_face < same_level && !pocket.open_top;
        const View view = pocket.open_top ? View::top
                          : under         ? View::under
                          : pocket.inside ? View::inside
                                          : View::outside;
        const FaceRow &row = face.row(view);
        const double y = (cut.y_face + cut.y_back) / 2, z = (pocket.bed_at_back + cut.z_top) / 2;
        const bool side = view == View::inside || view == View::outside;
        const Vec2 c{face.x(cut.x), side ? row.level(z) : row.y({cut.x, y, 0})};
        if (!put_name(face, "K" + std::to_string(pocket.number), c, cut.half_at_back * row.scale))
            return false;
    }
    return true;
}

} // namespace roundlay::sheets
