#include "exporters/sheets/cut_sheet/features.h"
#include "exporters/sheets/drawing/text.h"
#include "exporters/sheets/elevation/sides.h"
#include "exporters/sheets/form/key_figure.h"
#include "exporters/sheets/form/key_marks.h"
#include "exporters/sheets/form/proposed.h"
#include "kernel/layout/plan/wall_side.h"

#include <algorithm>

namespace roundlay::sheets {
namespace {

constexpr double log_tall = 24;    ///< on paper
constexpr double shown_past = 0.9; ///< wood past the shoulder, in heights of the log
constexpr double widest = 62;      ///< of one view on paper
constexpr double gap_drawn = 2.2;  ///< on paper: a gap is hardly seen at that scale

class EndKey {
  public:
    EndKey(const Draft &draft, const Piece &piece, End end, const Words &words)
        : draft_(draft), piece_(piece), end_(end), words_(words), f_(features_of(piece)),
          proposed_(proposed_end(draft.layout, piece, end)) {
        const double shoulder =
            end == End::datum ? piece.datum.shoulder : f_.blank.length - piece.far.shoulder;
        shown_ = std::min(f_.blank.length, std::max(0.0, shoulder) + shown_past * f_.blank.height);
        k_ = std::min(log_tall / f_.blank.height, widest / shown_);
    }

    Block draw() {
        add_face(WallSide::outside, 0);
        add_face(WallSide::inside,
                 std::max(k_ * shown_ + 12, text_width(caption(true), least_lettering, true)) + 4);
        return figure_block(std::move(board_));
    }

  private:
    /// The part of the log that is shown, its left end at `left` on paper.
    FigureView view(WallSide side, double left) const {
        const double from = end_ == End::datum ? 0 : f_.blank.length - shown_;
        const double lowest = side == WallSide::outside ? from : -(from + shown_);
        return {projection_of(side), k_, {left - k_ * lowest, 0}};
    }

    void add_face(WallSide side, double left) {
        const bool outside = side == WallSide::outside;
        const FigureView v = view(side, left);
        const double from = end_ == End::datum ? 0 : f_.blank.length - shown_;
        v.add_wood(board_, stretch_of_wood(draft_.bodies[piece_.model], from, from + shown_));
        if (proposed_.tail) {
            const ProposedTail &t = *proposed_.tail;
            add_height(v, outside ? t.shoulder_outside : t.shoulder_inside, outside ? "n" : "q");
            add_height(v, outside ? t.end_outside : t.end_inside, outside ? "p" : "r");
        }
        if (outside) {
            add_gap(v);
            add_overhang(v);
        }
        add_caption(outside, left);
    }

    /// Beside the wood: at the shoulder on its uncut side, at the end outside of it.
    void add_height(const FigureView &v, const TailPlace &place, const std::string &letter) {
        add_measure(board_, v.on({place.x, 0, place.low}), v.on({place.x, 0, place.high}), letter);
    }

    void add_gap(const FigureView &v) {
        if (!proposed_.tail) return add_gap_of_saddle(v);
        const ProposedTail &t = *proposed_.tail;
        const Vec2 a = v.on({t.shoulder_outside.x, 0, t.shoulder_outside.low}),
                   b = v.on({t.end_outside.x, 0, t.end_outside.low}), down{0, -gap_drawn};
        add_stroke(board_, a + down, b + down, Line::hidden);
        const Vec2 middle = 0.5 * (a + b);
        add_measure(board_, middle + down, middle, "t");
    }

    /// Over the log below, which is not drawn: a stroke stands for its highest line.
    void add_gap_of_saddle(const FigureView &v) {
        for (const Scope &scope : f_.scopes) {
            if (scope.cut->use != ScopeUse::saddle || scope.cut->end != end_ || scope.cut->runs_on) continue;
            const Vec2 top = v.on({scope.middle.outside, 0, scope.top}), down{0, -gap_drawn};
            add_stroke(board_, top + down - Vec2{4, 0}, top + down + Vec2{4, 0}, Line::hidden);
            return add_measure(board_, top + down, top, "t");
        }
    }

    void add_overhang(const FigureView &v) {
        if (!proposed_.overhang) return;
        const double tip = end_ == End::datum ? f_.datum_end.outside : f_.far_end.outside;
        const double face = tip + (end_ == End::datum ? 1 : -1) * *proposed_.overhang;
        const double low = bounds(board_.items()).y0 - 4, top = v.on({face, 0, f_.blank.height}).y + 3;
        const double a = v.on({face, 0, 0}).x, b = v.on({tip, 0, 0}).x;
        add_stroke(board_, {a, low - 1}, {a, top}, Line::centre);
        add_stroke(board_, {b, low - 1}, {b, low + 3});
        add_measure(board_, {a, low}, {b, low}, "s");
    }

    std::string caption(bool outside) const {
        const std::string face = outside ? words_.say("outside face") : words_.say("inside face");
        if (!is_partition(draft_.layout, piece_.wall)) return face;
        return face + ", " + seen_from(draft_.layout, piece_.wall, outside, words_);
    }

    void add_caption(bool outside, double left) {
        board_.add(lettered(caption(outside), {left, log_tall + 6}, least_lettering, true, Role::caption));
    }

    const Draft &draft_;
    const Piece &piece_;
    End end_;
    const Words &words_;
    Features f_;
    ProposedEnd proposed_;
    double shown_ = 0, k_ = 1;
    Board board_;
};

/// An arris that leans out to one side, beside a plumb line.
void add_leaning(Board &board, double x, double way, const std::string &letter, bool with_height) {
    constexpr double tall = 26, out = 5;
    add_stroke(board, {x, 0}, {x, tall}, Line::hidden);
    add_stroke(board, {x, 0}, {x + way * out, tall}, Line::visible);
    add_stroke(board, {x, 0}, {x - way * 14, 0}, Line::visible);
    add_measure(board, {x, tall + 1.5}, {x + way * out, tall + 1.5}, letter);
    if (with_height) add_measure(board, {x - way * 5, 0}, {x - way * 5, tall}, "x");
}

/// Out of the wall is plus, into it minus.
void add_sign(Board &board, double x, double way, const std::string &sign) {
    Text text = lettered(sign, {}, 3.5, true, Role::mark);
    text.across = Across::middle;
    text.upright = Upright::middle;
    std::vector<Vec2> places;
    for (const double off : {8.0, 11.0, 14.0})
        for (const double up : {21.0, 12.0, 16.0, 6.0})
            places.push_back({x + way * off, up});
    board.put(text, places, 0.3);
}

} // namespace

Block key_of_end(const Draft &draft, Index<Piece> piece, End end, const Words &words) {
    return EndKey(draft, draft.layout.pieces[piece], end, words).draw();
}

Block key_of_arris(const Words &words, const std::string &first, const std::string &second) {
    Board board;
    constexpr double apart = 46, plane = 8, mark = 17;
    add_leaning(board, 0, -1, "v", true);
    add_leaning(board, apart, 1, "w", true);
    // the level plane, and the mark on the arris that is read from it
    add_stroke(board, {-16, plane}, {-1.9, plane}, Line::centre);
    add_stroke(board, {-16, mark}, {-3.6, mark});
    add_measure(board, {-12, plane}, {-12, mark}, "u");
    board.add(lettered(words.say("face of wall %1", first), {-16, 34}, least_lettering, true, Role::caption));
    board.add(lettered(words.say("face of wall %1", second), {apart - 14, 34}, least_lettering, true,
                       Role::caption));
    for (const auto &[x, out] : {std::pair(0.0, -1.0), std::pair(apart, 1.0)}) {
        add_sign(board, x, out, "+");
        add_sign(board, x, -out, "−");
    }
    return figure_block(std::move(board));
}

} // namespace roundlay::sheets
