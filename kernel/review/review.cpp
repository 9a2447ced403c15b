#include "kernel/review/review.h"

#include "kernel/geometry/tolerance.h"
#include "kernel/layout/corners/corners.h"
#include "kernel/layout/cuts/match.h"
#include "kernel/layout/openings/openings.h"
#include "kernel/layout/text.h"
#include "kernel/review/locks.h"
#include "kernel/review/opening_facts.h"
#include "kernel/review/review_parts.h"
#include "kernel/review/water.h"

#include <algorithm>
#include <cmath>

namespace roundlay {

namespace {

const std::string &tag(const Layout &layout, int piece) {
    return layout.pieces[static_cast<std::size_t>(piece)].tag;
}

/// A timber whose pocket is closed at the top is warned of where it is laid out: it is not lowered but slid.
bool slides_in(const Layout &layout, int piece) {
    if (layout.pieces[static_cast<std::size_t>(piece)].timber < 0) return false;
    return std::any_of(layout.findings.begin(), layout.findings.end(), [&](const Finding &f) {
        const auto *timber = first_of<about::Timber>(f.about);
        return f.code == "pocket-closed" && timber != nullptr && timber->tag == tag(layout, piece);
    });
}

/// The statement that a piece comes from: its wall, partition or floor.
std::string statement_of(const Shell &shell, const Layout &layout, int piece) {
    const Piece &p = layout.pieces[static_cast<std::size_t>(piece)];
    if (p.timber >= 0)
        return subject("floor",
                       static_cast<std::size_t>(layout.timbers[static_cast<std::size_t>(p.timber)].floor),
                       "name");
    const auto w = static_cast<std::size_t>(p.wall), outside = shell.walls.size();
    return w < outside ? subject("wall", w, "name") : subject("partition", w - outside, "name");
}

/// Layout should never let these through; a shop must not cut them if it does.
void check_wood(const Shell &shell, const Layout &layout, const std::vector<Body> &bodies,
                KnownMeetings *known, Findings &findings) {
    for (const Overlap &o : overlaps(layout, bodies, known))
        findings.push_back(
            {Weight::error,
             "pieces-overlap",
             {about::Pieces{tag(layout, o.a), tag(layout, o.b)}},
             said("these two pieces share as much wood as a cube of %1", in_mm(std::cbrt(o.volume))),
             {},
             statement_of(shell, layout, o.b)});
    for (const Blocked &b : blocked_on_the_way_down(layout, bodies, known))
        if (!slides_in(layout, b.piece))
            findings.push_back({Weight::error,
                                "piece-blocked",
                                {about::Piece{tag(layout, b.piece)}},
                                said("it cannot be lowered into place past %1", tag(layout, b.by)),
                                {},
                                statement_of(shell, layout, b.piece)});
    for (std::size_t m = 0; m < layout.models.size(); ++m) {
        const int first = layout.models[m].pieces.front();
        if (!(bodies[m].volume > 0) || !is_closed(bodies[m].hewn))
            findings.push_back({Weight::error,
                                "no-sound-wood",
                                {about::Piece{tag(layout, first)}},
                                said("its cuts leave no sound piece of wood"),
                                said("change what is cut from it"),
                                statement_of(shell, layout, first)});
    }
}

void check_bores(const Shell &shell, const Layout &layout, const std::vector<Body> &bodies,
                 Findings &findings) {
    const bool scoped = shell.notch.kind == NotchKind::saddle; // there bores open in round surfaces
    for (std::size_t m = 0; m < layout.models.size(); ++m) {
        if (scoped ? bodies[m].bores_apart : bodies[m].bores_clear) continue;
        const int first = layout.models[m].pieces.front();
        const bool stated =
            std::ranges::any_of(bodies[m].bores, [](const Bore &b) { return b.use.has_value(); });
        findings.push_back({Weight::warning,
                            "bores-meet",
                            {about::Piece{tag(layout, first)}},
                            said("a bore of this piece runs into a notch, an edge or another bore"),
                            {},
                            stated ? "bore" : "pegs"});
    }
}

/// A log that carries what lies on it over an opening with less of its wood than this part of the opening's
/// width is told of. Common practice, no source: it screens nothing.
constexpr double least_over_width = 1.0 / 20;

/// The wood of a log over an opening, between its jambs, at its least: under 0 where another opening over it
/// meets it there.
class WoodOver {
  public:
    WoodOver(const Layout &layout, const Piece &log, const Opening &o) : log_(log), high_(log.blank.height) {
        const Vec3 at = layout.walls[log.wall].frame.to_local(log.frame.origin);
        left_ = o.from_left.mm() - at.x, right_ = left_ + o.width.mm();
        top_ = (o.sill + o.height).mm() - at.z;
        for (const Cut &cut : log.cuts)
            match(
                cut, [&](const BoxCut &box) { take(box); }, [&](const FaceCut &face) { take(face); },
                [&](const RoundCut &round) { take(round); }, [&](const ScopeCut &scope) { take(scope); },
                [&](const PocketCut &pocket) { take(pocket); },
                passing<SeamCut>,   // at corners, which keep clear of openings
                passing<Bore>,      // upright: as much height is left beside it
                passing<CheekCut>); // of a joist's end
    }

    /// A housing is taken off right through the log, though it is let into one side only.
    double mm() const {
        double housed = 0;
        for (const auto &[bed, ceiling] : pockets_)
            housed = std::max(housed, std::min(ceiling, high_) - std::max(bed, low_));
        return high_ - low_ - housed;
    }

  private:
    void take(const BoxCut &cut) {
        if (cut.box.high.x <= left_ || cut.box.low.x >= right_) return;
        if (cut.box.low.z >= top_ - tolerance::weld) // an opening over this one, its sill at its lowest
            high_ = std::min(high_, cut.box.low.z - cut.fall * cut.fall_from);
        else if (cut.use != BoxUse::sill)
            low_ = std::max(low_, cut.box.high.z);
    }
    void take(const RoundCut &cut) { high_ = std::min(high_, std::max(cut.from.z, cut.to.z) + cut.radius); }
    /// As deep as it is in the middle of the log.
    void take(const ScopeCut &cut) {
        const double from = cut.use == ScopeUse::groove ? cut.x_from : cut.at.x - cut.half_width(),
                     to = cut.use == ScopeUse::groove ? cut.x_to : cut.at.x + cut.half_width();
        if (to > left_ && from < right_) low_ = std::max(low_, cut.at.z + cut.radius);
    }
    void take(const PocketCut &cut) {
        const double half = std::max(cut.half_at_face, cut.half_at_back);
        if (cut.x + half <= left_ || cut.x - half >= right_) return;
        pockets_.emplace_back(cut.bed.height_at(cut.x, (cut.y_face + cut.y_back) / 2), cut.z_top);
    }
    void take(const FaceCut &cut) {
        for (const double x : {left_, right_}) {
            if (cut.face == LogFace::top)
                high_ = std::min(high_, cut.plane.height_at(x, log_.blank.width / 2));
            if (cut.face == LogFace::under)
                low_ = std::max(low_, cut.plane.height_at(x, log_.blank.width / 2));
        }
    }

    const Piece &log_;
    double left_ = 0, right_ = 0, top_ = 0; ///< of the opening, in the log's own frame
    double low_ = 0, high_ = 0;
    std::vector<std::pair<double, double>> pockets_; ///< bed and ceiling of those over the opening
};

void check_thin_header(const Shell &shell, const Layout &layout, std::size_t opening,
                       const OpeningFacts &facts, Findings &findings) {
    const Opening &o = shell.openings[opening];
    const double width = o.width.mm();
    const double left = WoodOver(layout, layout.pieces[static_cast<std::size_t>(facts.header)], o).mm();
    if (left >= least_over_width * width - tolerance::weld) return;
    const std::string &log = tag(layout, facts.header);
    findings.push_back(
        {Weight::warning,
         "thin-header",
         opening_place(shell, opening),
         left >= tolerance::clear
             ? said("of the log over it, %1, %2 are left to carry over %3. What it carries is "
                    "not worked out here: local "
                    "code and a licensed professional decide",
                    log, in_mm(left), in_mm(width))
             : said("of the log over it, %1, nothing is left to carry over %2: an opening over "
                    "it cuts it through by %3. Local code and a licensed professional decide",
                    log, in_mm(width), in_mm(std::max(0.0, -left))),
         {},
         subject("opening", opening, "height")});
}

void check_headers(const Shell &shell, const Layout &layout, Findings &findings) {
    const auto facts = opening_facts(shell, layout);
    for (std::size_t i = 0; i < facts.size(); ++i) {
        const OpeningFacts &f = facts[i];
        const double runs = std::min(f.runs_left, f.runs_right);
        const double least = trim_of(shell, shell.openings[i]).header_bearing.mm();
        if (f.header >= 0) check_thin_header(shell, layout, i, f, findings);
        if (f.header < 0 || runs >= least - tolerance::weld) continue;
        findings.push_back({Weight::warning, "header-bears-short", opening_place(shell, i),
                            said("the log over it, %1, runs only %2 past its %3 jamb", tag(layout, f.header),
                                 in_mm(runs), f.runs_left < f.runs_right ? said("left") : said("right")),
                            said("%1 is asked for: move the opening by %2, or change a height", in_mm(least),
                                 in_mm(least - runs)),
                            subject("opening", i, "from_left")});
    }
}

/// A bow stands out of the wall's face, or closes and opens the gaps over and under the log.
void check_bows(const Shell &shell, const Layout &layout, Findings &findings) {
    for (std::size_t i = 0; i < shell.own_logs.size(); ++i) {
        const OwnLog &own = shell.own_logs[i];
        if (!own.bow || own.bow->mm() <= 0) continue;
        const double gap = shell.rounds.gap.mm(), bow = own.bow->mm();
        About place = round_place(own.wall, own.round);
        if (own.piece) place.push_back(about::Part{*own.piece});
        const bool there = std::any_of(layout.pieces.begin(), layout.pieces.end(), [&](const Piece &p) {
            return p.timber < 0 && p.round == own.round && p.number == own.piece.value_or(p.number) &&
                   layout.walls[p.wall].name == own.wall;
        });
        if (!there) continue;
        findings.push_back({bow > gap ? Weight::warning : Weight::note, "log-bowed", std::move(place),
                            bow > gap ? said("its middle stands %1 out of the line between its ends, and the "
                                             "gap is %2: laid crown up it touches "
                                             "the log over it by %3",
                                             in_mm(bow), in_mm(gap), in_mm(bow - gap))
                                      : said("its middle stands %1 out of the line between its ends, and the "
                                             "gap is %2: laid crown up it clears "
                                             "the log over it",
                                             in_mm(bow), in_mm(gap)),
                            said("a straight stick out of it, as it is drawn, is that much thinner"),
                            subject("log", i, "bow")});
    }
}

} // namespace

Findings review(const Shell &shell, const Layout &layout, const std::vector<Body> &bodies,
                KnownMeetings *known) {
    Findings findings;
    check_wood(shell, layout, bodies, known, findings);
    check_bores(shell, layout, bodies, findings);
    check_locks(shell, layout, findings);
    check_water(shell, layout, findings);
    check_headers(shell, layout, findings);
    check_bows(shell, layout, findings);
    review_wood(shell, findings);
    review_floors(shell, layout, bodies, findings);
    std::stable_sort(findings.begin(), findings.end(),
                     [](const Finding &a, const Finding &b) { return a.weight < b.weight; });
    return findings;
}

} // namespace roundlay
