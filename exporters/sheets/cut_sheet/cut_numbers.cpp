#include "exporters/sheets/cut_sheet/face_board.h"
#include "exporters/sheets/drawing/dimension.h"
#include "kernel/layout/cuts/asked.h"

#include <algorithm>

namespace roundlay::sheets {
namespace {

constexpr double lettering = 2.5;
constexpr double dot_radius = 0.5;
constexpr double mark_in = 20; ///< mm from the edge of the log: where the number of a mend points to
constexpr double shifts[] = {0, 3, -3, 6, -6, 9, -9, 12, -12, 16, -16};

struct Numbered {
    int number;
    bool over;   ///< over the outside face, else under it
    Vec2 target; ///< on paper: inside the wood that is taken out
};

double radius_for(int number) {
    return number < 10 ? 2.3 : 3.1;
}

int count_of(const Features &f) {
    return static_cast<int>(std::ranges::count_if(f.piece->cuts, is_numbered));
}

bool put(FaceBoard &face, const Rect &outline, const Numbered &n) {
    const double r = radius_for(n.number);
    const double y = n.over ? outline.y1 + r + 0.8 : outline.y0 - r - 0.8;
    for (const double shift : shifts) {
        const Vec2 centre{n.target.x + shift, y};
        if (!face.board.is_free(Rect{centre.x, centre.y, centre.x, centre.y}.grown(r + 0.3), true)) continue;
        const Vec2 d = n.target - centre;
        const Path leader{{centre + (r / length(d)) * d, n.target}, false, Line::dimension, "", true};
        if (!face.board.is_clear(leader)) continue;
        Text text;
        text.at = centre;
        text.words = std::to_string(n.number);
        text.height = lettering;
        text.across = Across::middle;
        text.upright = Upright::middle;
        text.role = Role::mark;
        face.board.add(text);
        face.board.add(Circle{centre, r, Line::dimension, ""});
        face.board.add(leader);
        face.board.add(dot(n.target, dot_radius));
        return true;
    }
    return false;
}

/// The middle of the cut, or of the longest stretch of it that is drawn; nothing where its middle is on
/// another part of the log, which then carries the number.
std::optional<double> middle_shown(const FaceBoard &face, double from, double to) {
    const double middle = (from + to) / 2;
    if (middle < face.wanted.from || middle > face.wanted.to) return std::nullopt;
    if (face.ruler.shows(middle)) return middle;
    std::optional<double> best;
    double longest = 0;
    for (const Shown &s : face.ruler.shown()) {
        const double a = std::max(s.from, from), b = std::min(s.to, to);
        if (b - a <= longest) continue;
        longest = b - a;
        best = (a + b) / 2;
    }
    return best;
}

} // namespace

double room_for_cut_numbers(const Features &features) {
    return count_of(features) == 0 ? 0 : 2 * radius_for(count_of(features)) + 1.6;
}

bool add_cut_numbers(FaceBoard &face) {
    const FaceRow &row = face.row(View::outside);
    const double height = face.blank().height;
    std::vector<Numbered> all;
    const auto add = [&](int number, bool over, double from, double to, double level) {
        if (const auto x = middle_shown(face, from, to))
            all.push_back({number, over, {face.x(*x), row.level(level)}});
    };
    const auto &[notches, boxes, scopes, pegs, pockets, tails, mends] = face.features().parts();
    static_cast<void>(pegs), static_cast<void>(pockets), static_cast<void>(tails); // have names of their own
    for (const Notch &n : notches) {
        const bool over = n.cut->side == Side::top;
        const double seam = (n.outside_from + n.outside_to) / 2;
        add(n.number, over, n.from.outside, n.to.outside, over ? (seam + height) / 2 : seam / 2);
    }
    for (const BoxPart &b : boxes)
        add(b.number, b.opens_top || !b.opens_under, b.x_from, b.x_to, (b.z_from + b.z_to) / 2);
    for (const Scope &s : scopes)
        add(s.number, false, s.x_from, s.x_to, s.top / 2);
    for (const MendPart &m : mends)
        add(m.number, m.opens_top, m.x_from, m.x_to, m.opens_top ? height - mark_in : mark_in);
    return std::all_of(all.begin(), all.end(), [&](const Numbered &n) { return put(face, row.outline, n); });
}

} // namespace roundlay::sheets
