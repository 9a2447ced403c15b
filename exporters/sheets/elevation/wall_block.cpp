#include "exporters/sheets/elevation/wall_block.h"

#include "exporters/sheets/cut_sheet/features.h"
#include "exporters/sheets/drawing/beside.h"
#include "exporters/sheets/drawing/board.h"
#include "exporters/sheets/drawing/dimension.h"
#include "exporters/sheets/drawing/text.h"
#include "exporters/sheets/elevation/section.h"
#include "exporters/sheets/elevation/sides.h"
#include "exporters/sheets/elevation/wall_bores.h"
#include "exporters/sheets/elevation/wall_openings.h"
#include "kernel/layout/plan/wall_side.h"

#include <algorithm>
#include <cmath>

namespace roundlay::sheets {
namespace {

constexpr double end_grain = 0.86, sawn = 0.7; ///< greys
constexpr double number_height = 2.5;
constexpr double line_distance = 4; ///< of dimension lines from the wall
constexpr double same_height = 0.5; ///< mm of wood: heights nearer than this are one mark

class Drawer {
  public:
    explicit Drawer(const WallWanted &wanted)
        : w_(wanted), wall_(wanted.layout->walls.at(wanted.wall)),
          mirrored_(wanted.side == WallSide::inside), along_{mirrored_ ? wall_.length * wanted.scale->ratio
                                                                       : 0,
                                                             mirrored_ ? -wanted.scale->ratio
                                                                       : wanted.scale->ratio},
          bores_(*wanted.shell, *wanted.layout, wanted.wall, along_, *wanted.words),
          openings_(*wanted.shell, wall_.name, along_, *wanted.words) {}

    WallBlock draw() {
        add_wood();
        add_pegs();
        bores_.add_lines(board_);
        add_heights();
        add_lengths();
        bores_.add_marks(board_, without_tag_);
        std::vector<std::string> without_size = openings_.add_names(board_, number_height);
        add_tags();
        add_section_marks();
        add_caption();
        return {
            {bounds(board_.items()), std::move(board_).finished()}, without_tag_, std::move(without_size)};
    }

  private:
    double k() const { return w_.scale->ratio; }
    /// Paper x of a place along the wall, measured from its left outside corner.
    double x(double along) const { return along_(along); }
    Vec2 paper(Vec2 flat) const { return {(mirrored_ ? flat.x + wall_.length : flat.x) * k(), flat.y * k()}; }
    double right() const { return wall_.length * k(); }

    std::vector<const Piece *> pieces() const {
        std::vector<const Piece *> all;
        for (const Piece &piece : w_.layout->pieces)
            if (is_log_of(piece, w_.wall)) all.push_back(&piece);
        return all;
    }

    void add_wood() {
        for (const GreyFace &grey : w_.seen->greys) {
            Fill fill{{}, grey.sawn_through ? sawn : end_grain};
            for (const auto &ring : grey.rings) {
                fill.rings.emplace_back();
                for (const Vec2 p : ring)
                    fill.rings.back().push_back(paper(p));
            }
            board_.add(fill);
            if (!grey.sawn_through) continue;
            for (const Stretch &s : cut_through_mark(grey))
                board_.add(Path{{paper(s.from), paper(s.to)}, false, Line::dimension, ""});
        }
        for (const Stretch &s : w_.seen->edges)
            board_.add(Path{{paper(s.from), paper(s.to)}, false, Line::visible, ""});
        add_foundation();
    }

    /// Its top, a little past the wall on both sides, up and down over its steps.
    void add_foundation() {
        const double left = left_edge() - 3, end = right_edge() + 3;
        std::vector<double> turns{left, end};
        for (const StepPlace *step : steps())
            for (const double at : {x(step->from), x(step->to)})
                if (at > left && at < end) turns.push_back(at);
        std::sort(turns.begin(), turns.end());
        std::vector<Vec2> line;
        for (std::size_t i = 1; i < turns.size(); ++i) {
            const double top = foundation_at((turns[i - 1] + turns[i]) / 2);
            line.insert(line.end(), {{turns[i - 1], top}, {turns[i], top}});
            add_ground(turns[i - 1], turns[i], top);
        }
        board_.add(Path{std::move(line), false, Line::strong, ""});
    }

    /// Short strokes that slant under it, so that it does not read as one more log's edge.
    void add_ground(double from, double to, double top) {
        constexpr double apart = 3, run = 1.6;
        for (double at = from + run; at <= to; at += apart)
            board_.add(Path{{{at, top - 0.4}, {at - run, top - 0.4 - run}}, false, Line::dimension, ""});
    }

    std::vector<const StepPlace *> steps() const {
        std::vector<const StepPlace *> all;
        for (const StepPlace &step : w_.layout->steps)
            if (step.wall == w_.wall) all.push_back(&step);
        return all;
    }

    /// Its top on paper.
    double foundation_at(double at) const {
        for (const StepPlace *step : steps())
            if ((at > x(step->from)) != (at > x(step->to))) return step->rise * k();
        return 0;
    }

    double left_edge() const {
        double edge = 0;
        for (const Stretch &s : w_.seen->edges)
            edge = std::min({edge, paper(s.from).x, paper(s.to).x});
        return edge;
    }
    double right_edge() const {
        double edge = right();
        for (const Stretch &s : w_.seen->edges)
            edge = std::max({edge, paper(s.from).x, paper(s.to).x});
        return edge;
    }

    void add_pegs() {
        for (const Peg &peg : w_.layout->pegs) {
            if (w_.layout->pieces.at(peg.upper).wall != w_.wall) continue;
            const Vec3 top = wall_.frame.to_local(peg.top);
            const Vec2 a{x(top.x), top.z * k()}, b{x(top.x), (top.z - peg.length) * k()};
            board_.add(Path{{a, b}, false, Line::centre, ""});
        }
    }

    static void add_mark(std::vector<double> &heights, double z) {
        for (const double known : heights)
            if (std::abs(known - z) < same_height) return;
        heights.push_back(z);
    }

    void add_column(std::vector<double> heights, Toward side) {
        std::sort(heights.begin(), heights.end());
        std::vector<Mark> marks;
        for (const double z : heights)
            marks.push_back({z * k(), w_.words->length(z), z == 0});
        RunningLine line;
        line.side = side;
        line.edge = side == Toward::left ? left_edge() : right_edge();
        line.distance = line_distance;
        line.lettering = number_height;
        add_running_dimensions(board_, marks, line);
    }

    /// New wood that is no new end: its top says nothing of the log's.
    static bool is_in_log(const Piece &piece) {
        return piece.mends && piece.datum.kind != EndKind::lap && piece.far.kind != EndKind::lap;
    }
    double right_end(const Piece &piece) const {
        return wall_.frame.to_local(piece.frame.origin).x + piece.blank.length;
    }

    /// The piece of the round that ends at the left of the drawing.
    const Piece *end_piece(int round) const {
        const Piece *end = nullptr;
        for (const Piece *piece : pieces()) {
            if (piece->round != round || is_in_log(*piece)) continue;
            if (end == nullptr ||
                (mirrored_ ? right_end(*piece) > right_end(*end) : right_end(*piece) < right_end(*end)))
                end = piece;
        }
        return end;
    }

    /// Where its top ends at the left of the drawing: logs taper.
    double top_at_left(const Piece &piece) const {
        const double at = mirrored_ ? piece.blank.length : 0;
        return wall_.frame.to_local(piece.frame.origin).z + features_of(piece).top.at(at);
    }

    /// Left: the tops of the logs. Right: sills and heads of the openings, steps of the foundation.
    void add_heights() {
        std::vector<double> tops{0}, holes{0};
        for (const Piece *piece : pieces())
            if (piece == end_piece(piece->round)) add_mark(tops, top_at_left(*piece));
        for (const Opening *opening : openings_.all()) {
            add_mark(holes, opening->sill.mm());
            add_mark(holes, (opening->sill + opening->height).mm());
        }
        for (const StepPlace *step : steps())
            add_mark(holes, step->rise);
        add_column(tops, Toward::left);
        if (holes.size() > 1) add_column(holes, Toward::right);
    }

    /// Jambs, steps of the foundation and the wall's length, from its left outside corner.
    void add_lengths() {
        std::vector<double> places{0, wall_.length};
        for (const Opening *opening : openings_.all()) {
            add_mark(places, opening->from_left.mm());
            add_mark(places, (opening->from_left + opening->width).mm());
        }
        for (const StepPlace *step : steps())
            for (const double end : {step->from, step->to})
                if (end > 0 && end < wall_.length) add_mark(places, end);
        std::vector<Mark> marks;
        for (const double p : places)
            marks.push_back({x(p), w_.words->length(p), p == 0});
        if (w_.bores_along) bores_.add_places(marks, *w_.words, same_height * k());
        std::sort(marks.begin(), marks.end(), [](const Mark &a, const Mark &b) { return a.at < b.at; });
        RunningLine line;
        line.side = Toward::down;
        line.distance = line_distance + 1;
        line.lettering = number_height;
        line.backward = mirrored_;
        add_running_dimensions(board_, marks, line);
    }

    Rect face_of(const Piece &piece) const {
        const Vec3 origin = wall_.frame.to_local(piece.frame.origin);
        const double a = x(origin.x), b = x(origin.x + piece.blank.length), z = origin.z * k();
        return {std::min(a, b), z, std::max(a, b), z + piece.blank.height * k()};
    }

    void add_tags() {
        std::vector<const Piece *> all = pieces();
        // the short ones have the least choice
        std::stable_sort(all.begin(), all.end(),
                         [](const Piece *a, const Piece *b) { return a->blank.length < b->blank.length; });
        for (const Piece *piece : all)
            if (!put_in(*piece) && !put_in_opening(*piece)) without_tag_.push_back(piece->tag);
    }

    Text tag_text(const Piece &piece) const {
        Text text;
        text.words = piece.tag;
        text.height = w_.lettering;
        text.across = Across::middle;
        text.upright = Upright::middle;
        text.role = Role::mark;
        return text;
    }

    bool put_in(const Piece &piece) {
        const Rect face = face_of(piece);
        if (face.height() < w_.lettering + 0.8) return false;
        std::vector<Vec2> places;
        const double half = text_width(piece.tag, w_.lettering) / 2 + 0.5, tall = w_.lettering / 2 + 0.4;
        for (const double y : {face.centre().y, face.y0 + tall, face.y1 - tall})
            for (const double part : {0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8, 0.45, 0.55, 0.35, 0.65}) {
                const double at = face.x0 + part * face.width();
                if (at - half < face.x0 || at + half > face.x1) continue;
                // a log that an opening starts or ends in has no wood there
                if (!openings_.meet({at - half, y - tall, at + half, y + tall})) places.push_back({at, y});
            }
        return board_.put(tag_text(piece), places, 0.3);
    }

    /// In the opening next to a short piece.
    bool put_in_opening(const Piece &piece) {
        const auto begin = put_beside(board_, face_of(piece), tag_text(piece), [&](const Rect &box) {
            return openings_.hold(box) && !openings_.is_by_a_size(box);
        });
        if (begin) board_.add(dot(*begin, 0.4));
        return begin.has_value();
    }

    /// Where the sections are cut, with an arrow the way they look: toward the wall's left end.
    void add_section_marks() {
        const double top = bounds(board_.items()).y1 + 1.5;
        for (const SectionPlace &place : section_places(*w_.shell, *w_.layout, w_.wall))
            add_section_mark(place, top);
    }

    /// As tall as it takes to clear the marks beside it.
    void add_section_mark(const SectionPlace &place, double top) {
        constexpr double least = 7, arrow = 5, step = 2.9;
        const double at = x(place.x), way = mirrored_ ? 1 : -1;
        Text text;
        text.words = place.name;
        text.height = number_height;
        text.across = mirrored_ ? Across::right : Across::left;
        text.at = {at - way * 1.2, top + 1.5};
        text.role = Role::mark;
        while (!board_.is_free(box_of(text), true))
            text.at.y += step;
        board_.add(text);
        const double tall = std::max(least, text.at.y - top + step);
        board_.add(Path{{{at, top}, {at, top + tall}}, false, Line::strong, ""});
        board_.add(Path{{{at, top + tall}, {at + way * arrow, top + tall}}, false, Line::dimension, ""});
        board_.add(arrowhead({at + way * arrow, top + tall}, {way, 0}));
    }

    void add_caption() {
        const Rect drawn = bounds(board_.items());
        Text text;
        text.words = wall_seen(*w_.layout, w_.wall, !mirrored_, said_scale(w_.scale, *w_.words), *w_.words);
        text.at = {drawn.x0, drawn.y1 + 3};
        text.height = 3.5;
        text.bold = true;
        text.role = Role::caption;
        board_.add(text);
    }

    const WallWanted &w_;
    const WallPlace &wall_;
    bool mirrored_;
    AlongPaper along_;
    WallBores bores_;
    WallOpenings openings_;
    Board board_;
    std::vector<std::string> without_tag_;
};

} // namespace

WallBlock wall_block(const WallWanted &wanted) {
    return Drawer(wanted).draw();
}

} // namespace roundlay::sheets
