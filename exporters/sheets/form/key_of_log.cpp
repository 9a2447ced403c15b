#include "exporters/sheets/cut_sheet/features.h"
#include "exporters/sheets/form/key_figure.h"
#include "exporters/sheets/form/key_marks.h"

#include <algorithm>

namespace roundlay::sheets {
namespace {

constexpr double log_tall = 13;    ///< on paper
constexpr double left_out = 12;    ///< between the two ends that are shown
constexpr double shown_past = 1.7; ///< wood that is shown past each shoulder, in heights of the log
constexpr double first_line = 6, next_line = 7; ///< of dimensions under the log

class LogKey {
  public:
    LogKey(const Draft &draft, const Piece &piece, WallSide side)
        : piece_(piece), body_(draft.bodies[piece.model]), f_(features_of(piece)),
          mirrored_(side == WallSide::inside),
          front_(projection_of(side)), above_{front_.across, {0, mirrored_ ? -1.0 : 1.0, 0}, {0, 0, 1}},
          k_(log_tall / f_.blank.height), shown_{shown_at(End::datum), shown_at(End::far)} {}

    Block draw() {
        for (const End end : {End::datum, End::far})
            add_end(end);
        add_place();
        add_jamb();
        add_lengths();
        return figure_block(std::move(board_));
    }

  private:
    double shoulder(End end) const {
        return std::clamp(end == End::datum ? piece_.datum.shoulder : piece_.far.shoulder, 0.0,
                          f_.blank.length);
    }
    /// How much of the log is shown from that end on.
    double shown_at(End end) const {
        const double from_end = end == End::datum ? shoulder(end) : f_.blank.length - shoulder(end);
        return std::min(0.45 * f_.blank.length, from_end + shown_past * f_.blank.height);
    }
    /// Each end keeps its scale; the far one is drawn nearer by what is left out between them.
    FigureView view(const Projection &p, End end, double y) const {
        const double whole = k_ * (shown_[0] + shown_[1]) + left_out;
        const double by = end == End::far ? whole - k_ * f_.blank.length : 0;
        return {p, k_, {mirrored_ ? whole - by : by, y}};
    }
    FigureView front(End end) const { return view(front_, end, 0); }
    FigureView above(End end) const {
        constexpr double between = 17;
        const double y = log_tall + between + (mirrored_ ? k_ * f_.blank.width : 0);
        return view(above_, end, y);
    }

    void add_end(End end) {
        const bool datum = end == End::datum;
        const Polyhedron wood = datum ? stretch_of_wood(body_, 0, shown_[0])
                                      : stretch_of_wood(body_, f_.blank.length - shown_[1], f_.blank.length);
        front(end).add_wood(board_, wood);
        above(end).add_wood(board_, wood);
        const double x = shoulder(end) + (datum ? 1 : -1) * 0.3 * f_.blank.height;
        add_measure(board_, front(end).on({x, 0, f_.lowest(x)}), front(end).on({x, 0, f_.highest(x)}), "a");
        add_measure(board_, above(end).on({x, f_.outermost(x), 0}), above(end).on({x, f_.innermost(x), 0}),
                    "b");
    }

    void add_lengths() {
        const double low = bounds(board_.items()).y0; // a step may have taken of it, a jamb stands under it
        double down = low - first_line;
        if (shoulder(End::datum) > 1 || shoulder(End::far) < f_.blank.length - 1) {
            add_length(shoulder(End::datum), shoulder(End::far), down, "d");
            down -= next_line;
        }
        add_length(0, f_.blank.length, down, "c");
    }

    void add_length(double from, double to, double y, const std::string &letter) {
        const Vec2 a = front(End::datum).on({from, 0, 0}), b = front(End::far).on({to, 0, 0});
        for (const Vec2 p : {a, b})
            add_stroke(board_, {p.x, -1}, {p.x, y - 1});
        add_measure(board_, {a.x, y}, {b.x, y}, letter);
    }

    /// A place along the log, from its end.
    void add_place() {
        const double x = shown_[0] - 0.25 * f_.blank.height, up = 5;
        const Vec2 zero = front(End::datum).on({0, 0, f_.blank.height}),
                   place = front(End::datum).on({x, 0, f_.blank.height});
        for (const Vec2 p : {zero, place})
            add_stroke(board_, p + Vec2{0, 1}, p + Vec2{0, up + 1});
        board_.add(Circle{zero + Vec2{0, up}, 1.2, Line::dimension, ""});
        add_stroke(board_, place, place - Vec2{0, 0.7 * log_tall}, Line::centre);
        add_measure(board_, zero + Vec2{0, up}, place + Vec2{0, up}, "e");
    }

    /// Where a jamb meets it from below.
    void add_jamb() {
        const double x = f_.blank.length - shown_[1] + 0.35 * f_.blank.height;
        const Vec2 foot = front(End::far).on({x, 0, f_.lowest(x)});
        add_stroke(board_, foot - Vec2{0, 4}, foot, Line::visible);
        add_measure(board_, foot, front(End::far).on({x, 0, f_.highest(x)}), "f");
    }

    const Piece &piece_;
    const Body &body_;
    Features f_;
    bool mirrored_;
    Projection front_, above_;
    double k_;
    double shown_[2];
    Board board_;
};

} // namespace

Block key_of_log(const Draft &draft, Index<Piece> piece, WallSide side) {
    return LogKey(draft, draft.layout.pieces[piece], side).draw();
}

} // namespace roundlay::sheets
