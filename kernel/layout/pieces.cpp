#include "kernel/layout/pieces.h"

#include "kernel/geometry/tolerance.h"

#include <algorithm>
#include <cmath>
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
          datum_reach_(full_reach_at(shell, layout, wall, End::datum)),
          far_reach_(full_reach_at(shell, layout, wall, End::far)) {}

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

    /// The blank of a stretch of the log, in the wall's frame: what encloses it.
    Box3 box_of(const Span &span) const {
        const double half = std::max(course_.width(span.from), course_.width(span.to)) / 2;
        const double middle = place_.thickness / 2;
        return {{span.from, middle - half, std::min(course_.low(span.from), course_.low(span.to))},
                {span.to, middle + half, std::max(course_.high(span.from), course_.high(span.to))}};
    }

    /// The hewn faces that run at a slant to the blank, each from the two sections of the log.
    void add_faces(Piece &p, const Box3 &box) const {
        const double run = box.high.x - box.low.x;
        const auto rise = [&](auto at) { return (at(box.high.x) - at(box.low.x)) / run; };
        const auto low = [&](double x) { return course_.low(x); };
        const auto high = [&](double x) { return course_.high(x); };
        const auto half = [&](double x) { return course_.width(x) / 2; };
        const auto add = [&](LogFace face, Plane plane) { p.cuts.emplace_back(FaceCut{face, plane}); };
        const double middle = p.blank.width / 2;
        if (const double r = rise(high); r != 0)
            add(LogFace::top, plane_over(high(box.low.x) - box.low.z, r, 0));
        if (const double r = rise(low); r != 0)
            add(LogFace::under, plane_over(low(box.low.x) - box.low.z, r, 0).flipped());
        if (const double r = rise(half); r != 0) {
            const double k = 1 / std::sqrt(1 + r * r);
            add(LogFace::outside, {{-k * r, -k, 0}, k * (half(box.low.x) - middle)});
            add(LogFace::inside, {{-k * r, k, 0}, k * (half(box.low.x) + middle)});
        }
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
        const Box3 box = box_of(span);
        p.frame.origin = place_.frame.to_world(box.low);
        const Vec3 size = box.high - box.low;
        p.blank = {size.x, size.y, size.z};
        p.butt_at_datum = course_.butt_at_datum;
        p.datum = end_of(left, End::datum, span);
        p.far = end_of(right, End::far, span);
        if (course_.tapers()) add_faces(p, box);
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
        s.course = &course_;
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
        const double foot = p.frame.origin.z;
        const double low = c.use == BoxUse::header ? -past : c.low - foot;
        const double high = c.use == BoxUse::sill ? p.blank.height + past : c.high - foot;
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
