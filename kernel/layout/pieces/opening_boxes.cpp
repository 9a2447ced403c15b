#include "kernel/layout/pieces/opening_boxes.h"

#include "kernel/geometry/tolerance.h"
#include "kernel/layout/no_wood.h"
#include "kernel/layout/rounded.h"

#include <algorithm>
#include <cmath>

namespace roundlay {

namespace {

/// Wood between the grooves of an island, at least. Common practice, no source.
constexpr double least_between_grooves = 40;

} // namespace

/// The underside over a step of the foundation, cut level.
void OpeningBoxes::add_step(Piece &p, PieceSpan &s, const StepPlace &step) const {
    const Span over{std::max(step.from, s.span.from), std::min(step.to, s.span.to)};
    const auto inside = [&](double x, double end) { return std::abs(x - end) > tolerance::weld; };
    BoxCut cut;
    cut.use = BoxUse::step;
    cut.opening = step.name;
    cut.box = {
        {inside(over.from, s.span.from) ? over.from - s.origin : -past_blank, -past_blank, -past_blank},
        {inside(over.to, s.span.to) ? over.to - s.origin : p.blank.length + past_blank,
         p.blank.width + past_blank, step.rise - p.frame.origin.z}};
    p.cuts.emplace_back(cut);
    s.taken_below.push_back(over);
}

void OpeningBoxes::add_opening(Piece &p, PieceSpan &s, const OpeningCut &c) const {
    BoxCut cut;
    cut.use = c.use;
    cut.opening = name_of(shell_, c.opening);
    const double foot = p.frame.origin.z;
    const double low = c.use == BoxUse::header ? -past_blank : c.low - foot;
    const double high = c.use == BoxUse::sill ? p.blank.height + past_blank : c.high - foot;
    cut.box = {{c.span.from - s.origin, -past_blank, low},
               {c.span.to - s.origin, p.blank.width + past_blank, high}};
    if (c.use == BoxUse::sill) {
        cut.fall = c.fall;
        cut.fall_from = place_.thickness - (place_.thickness - p.blank.width) / 2;
    }
    p.cuts.emplace_back(cut);
    const double depth = c.low < c.high ? trim(c.opening).spline_depth.mm() : 0;
    if (depth > 0) {
        add_groove(p, {c.span.from - s.origin - depth, c.span.from - s.origin}, low, high, c.opening);
        add_groove(p, {c.span.to - s.origin, c.span.to - s.origin + depth}, low, high, c.opening);
    }
    const Span taken{c.span.from - depth, c.span.to + depth};
    if (c.use != BoxUse::sill) s.taken_below.push_back(taken);
    if (c.use != BoxUse::header) s.taken_above.push_back(taken);
}

Trim OpeningBoxes::trim(std::size_t opening) const {
    return trim_of(shell_, shell_.openings[opening]);
}

/// The groove for a spline, in the middle of the wall.
void OpeningBoxes::add_groove(Piece &p, const Span &along, double low, double high,
                              std::size_t opening) const {
    const double half = trim(opening).spline_width.mm() / 2, middle = p.blank.width / 2;
    BoxCut groove;
    groove.use = BoxUse::groove;
    groove.opening = name_of(shell_, opening);
    groove.box = {{along.from, middle - half, low}, {along.to, middle + half, high}};
    p.cuts.emplace_back(groove);
}

void OpeningBoxes::add_jamb_grooves(Piece &p, const OpeningCut *left, const OpeningCut *right) const {
    const double all = p.blank.height + past_blank;
    double both = 0;
    for (const OpeningCut *at : {left, right}) {
        if (!at) continue;
        const double depth = trim(at->opening).spline_depth.mm();
        if (depth <= 0) continue;
        const Span along =
            at == left ? Span{-past_blank, depth} : Span{p.blank.length - depth, p.blank.length + past_blank};
        add_groove(p, along, -past_blank, all, at->opening);
        both += depth;
    }
    if (p.island && both > 0 && p.blank.length < both + least_between_grooves) refuse_grooves(p, both);
}

void OpeningBoxes::refuse_grooves(const Piece &p, double both) const {
    const Weight weight = p.blank.length < both + no_wood ? Weight::error : Weight::warning;
    findings_.push_back({weight, "trim-does-not-fit",
                         narrowed(round_place(place_.name, p.round), about::Piece{p.tag}),
                         said("the island is %1 long", in_mm(p.blank.length)),
                         said("two grooves %1 deep leave too little of it; %2 at most", in_mm(both / 2),
                              no_more(shell_, (p.blank.length - least_between_grooves) / 2)),
                         "trim.spline_depth"});
}

} // namespace roundlay
