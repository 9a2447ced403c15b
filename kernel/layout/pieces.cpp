#include "kernel/layout/pieces.h"

#include "kernel/geometry/tolerance.h"

#include <cstdio>

namespace roundlay {

namespace {

/// How far an open box cut reaches past the blank, so that no skin of wood is left by rounding.
constexpr double past = 10;

std::string tag_of(const std::string &wall, int round, int number) {
    char text[32];
    std::snprintf(text, sizeof text, "-%02d-%d", round, number);
    return wall + text;
}

/// Builds the pieces of one course of one wall.
class CourseCutter {
  public:
    CourseCutter(const Shell &shell, Layout &layout, const std::vector<std::vector<Course>> &courses, int wall,
                 const Course &course, const EndNotch &datum, const EndNotch &far)
        : shell_(shell), layout_(layout), courses_(courses), wall_(wall), place_(layout.walls[static_cast<std::size_t>(wall)]),
          course_(course), datum_(datum), far_(far),
          datum_reach_(reach_at(layout, wall, End::datum,
                                notch_at(shell, layout, place_.start_corner).overhang.mm())),
          far_reach_(
              reach_at(layout, wall, End::far, notch_at(shell, layout, place_.end_corner).overhang.mm())) {}

    CourseSpans cut() {
        const std::vector<OpeningCut> cuts = cuts_of(shell_, layout_, wall_, course_);
        CourseSpans spans;
        double from = datum_.butts ? datum_reach_.shoulder : datum_reach_.tip;
        const OpeningCut *left = nullptr;
        for (const OpeningCut &c : cuts) {
            if (!c.severs) continue;
            spans.push_back(piece({from, c.span.from}, left, &c, cuts));
            from = c.span.to;
            left = &c;
        }
        spans.push_back(piece({from, far_.butts ? far_reach_.shoulder : far_reach_.tip}, left, nullptr, cuts));
        return spans;
    }

  private:
    const CornerPlace &corner(End end) const {
        return layout_.corners[static_cast<std::size_t>(end == End::datum ? place_.start_corner
                                                                          : place_.end_corner)];
    }

    PieceSpan piece(Span span, const OpeningCut *left, const OpeningCut *right,
                    const std::vector<OpeningCut> &cuts) {
        Piece p;
        p.wall = wall_;
        p.round = course_.round;
        p.number = ++number_;
        p.tag = tag_of(place_.name, p.round, p.number);
        p.log = course_.kind;
        p.island = left && right;
        p.frame = place_.frame;
        p.frame.origin = place_.frame.to_world({span.from, 0, course_.low});
        p.blank = {span.length(), place_.thickness, course_.high - course_.low};
        p.butt_at_datum = course_.round % 2 == 1;
        p.datum = end_of(left, End::datum, span);
        p.far = end_of(right, End::far, span);
        PieceSpan s = span_of(span, left, right);
        if (!left && !datum_.butts) add_seams(p, End::datum, datum_, datum_reach_, span);
        if (!right && !far_.butts) add_seams(p, End::far, far_, far_reach_, span);
        for (const OpeningCut &c : cuts)
            if (!c.severs && c.span.from < span.to && c.span.to > span.from) add_box(p, s, c, span);
        s.piece = static_cast<int>(layout_.pieces.size());
        layout_.pieces.push_back(std::move(p));
        return s;
    }

    PieceEnd end_of(const OpeningCut *opening, End end, const Span &span) const {
        const double own_end = end == End::datum ? 0 : span.length();
        if (opening) return {EndKind::jamb, name_of(shell_, opening->opening), own_end};
        const EndNotch &notch = end == End::datum ? datum_ : far_;
        const CornerReach &reach = end == End::datum ? datum_reach_ : far_reach_;
        return {notch.butts ? EndKind::butt : EndKind::corner, corner(end).name, reach.shoulder - span.from};
    }

    PieceSpan span_of(Span span, const OpeningCut *left, const OpeningCut *right) const {
        PieceSpan s;
        s.span = span;
        s.low = course_.low;
        s.high = course_.high;
        s.shoulders = {left ? span.from : datum_reach_.shoulder, right ? span.to : far_reach_.shoulder};
        s.corner_left = !left && !datum_.butts;
        s.corner_right = !right && !far_.butts;
        s.locked_left = s.corner_left && datum_.locked;
        s.locked_right = s.corner_right && far_.locked;
        return s;
    }

    void add_seams(Piece &p, End end, const EndNotch &notch, const CornerReach &reach, const Span &span) const {
        const CornerPlace &c = corner(end);
        const int other = end == End::datum ? c.ends : c.starts;
        const auto tag = [&](int round) { return tag_at_corner(other, end == End::far, round); };
        SeamCut cut{end, Side::under, reach.prism_low - span.from, reach.prism_high - span.from, {}, c.name, {}};
        if (notch.under) {
            cut.seam = to_local(*notch.under, p.frame);
            cut.other = tag(notch.below);
            p.cuts.emplace_back(cut);
        }
        if (notch.top) {
            cut.side = Side::top;
            cut.seam = to_local(*notch.top, p.frame);
            cut.other = tag(notch.above);
            p.cuts.emplace_back(cut);
        }
    }

    /// The piece of the crossing wall that reaches this corner: its first where that wall starts here, else
    /// its last.
    std::string tag_at_corner(int wall, bool starts_here, int round) const {
        const Course &course = courses_[static_cast<std::size_t>(wall)][static_cast<std::size_t>(round - 1)];
        int last = 1;
        for (const OpeningCut &c : cuts_of(shell_, layout_, wall, course)) last += c.severs;
        return tag_of(layout_.walls[static_cast<std::size_t>(wall)].name, round, starts_here ? 1 : last);
    }

    void add_box(Piece &p, PieceSpan &s, const OpeningCut &c, const Span &span) const {
        BoxCut cut;
        cut.use = c.use;
        cut.opening = name_of(shell_, c.opening);
        const double low = c.use == BoxUse::header ? -past : c.low - course_.low;
        const double high = c.use == BoxUse::sill ? p.blank.height + past : c.high - course_.low;
        cut.box = {{c.span.from - span.from, -past, low}, {c.span.to - span.from, p.blank.width + past, high}};
        p.cuts.emplace_back(cut);
        if (c.use != BoxUse::sill) s.taken_below.push_back(c.span);
        if (c.use != BoxUse::header) s.taken_above.push_back(c.span);
    }

    const Shell &shell_;
    Layout &layout_;
    const std::vector<std::vector<Course>> &courses_;
    int wall_;
    const WallPlace &place_;
    const Course &course_;
    const EndNotch &datum_, &far_;
    CornerReach datum_reach_, far_reach_;
    int number_ = 0;
};

} // namespace

std::vector<std::vector<CourseSpans>> lay_out_pieces(const Shell &shell, Layout &layout,
                                                     const std::vector<std::vector<Course>> &courses,
                                                     const std::vector<WallNotches> &notches) {
    std::vector<std::vector<CourseSpans>> all(courses.size());
    for (std::size_t w = 0; w < courses.size(); ++w)
        for (std::size_t k = 0; k < courses[w].size(); ++k)
            all[w].push_back(CourseCutter(shell, layout, courses, static_cast<int>(w), courses[w][k],
                                          notches[w].datum[k], notches[w].far[k])
                                 .cut());
    return all;
}

} // namespace roundlay
