#include "kernel/review/review.h"

#include "kernel/geometry/tolerance.h"
#include "kernel/layout/corners.h"
#include "kernel/layout/notch.h"
#include "kernel/layout/text.h"
#include "kernel/review/opening_facts.h"
#include "kernel/review/review_parts.h"
#include "kernel/review/water.h"

#include <algorithm>

namespace roundlay {

namespace {

const std::string &tag(const Layout &layout, int piece) { return layout.pieces[static_cast<std::size_t>(piece)].tag; }

std::string volume_text(double mm3) { return std::to_string(static_cast<long long>(mm3 + 0.5)) + " mm3"; }

/// A timber whose pocket is closed at the top is warned of where it is laid out: it is not lowered but slid.
bool slides_in(const Layout &layout, int piece) {
    if (layout.pieces[static_cast<std::size_t>(piece)].timber < 0) return false;
    return std::any_of(layout.findings.begin(), layout.findings.end(), [&](const Finding &f) {
        return f.code == "pocket-closed" && f.place.ends_with(" " + tag(layout, piece));
    });
}

/// Layout should never let these through; a shop must not cut them if it does.
void check_wood(const Layout &layout, bool scoped, const std::vector<Body> &bodies, Findings &findings) {
    for (const Overlap &o : overlaps(layout, bodies))
        findings.push_back({Weight::error, "pieces-overlap", tag(layout, o.a) + " and " + tag(layout, o.b),
                            "these two pieces share " + volume_text(o.volume) + " of wood", ""});
    for (const Blocked &b : blocked_on_the_way_down(layout, bodies))
        if (!slides_in(layout, b.piece)) findings.push_back({Weight::error, "piece-blocked", tag(layout, b.piece),
                            "it cannot be lowered into place past " + tag(layout, b.by), ""});
    for (const Model &model : layout.models) {
        const Body &body = bodies[static_cast<std::size_t>(&model - layout.models.data())];
        if (!body.bores_clear && !scoped) // there bores open in round surfaces
            findings.push_back({Weight::warning, "bores-meet", tag(layout, model.pieces.front()),
                                "a bore of this piece runs into a notch, an edge or another bore", "pegs"});
    }
}

void check_lock(const Shell &shell, const Layout &layout, int corner, Findings &findings) {
    if (layout.corners[static_cast<std::size_t>(corner)].kind == CornerKind::crossing) return; // both logs run on
    const NotchRule rule = notch_at(shell, layout, corner);
    if (rule.kind == NotchKind::saddle) return; // every log hooks over the one that it crosses
    const TailTop top = tail_top(rule);
    if (lock(top, top) > tolerance::weld) return;
    const std::string &name = layout.corners[static_cast<std::size_t>(corner)].name;
    findings.push_back({shell.pegs.wanted ? Weight::note : Weight::warning, "corner-not-locked", "corner " + name,
                        shell.pegs.wanted ? "its tails do not lock; only the pegs hold the logs from pulling out"
                                          : "its tails do not lock and there are no pegs: the logs can pull out",
                        "notch.kind"});
}

void check_headers(const Shell &shell, const Layout &layout, Findings &findings) {
    const auto facts = opening_facts(shell, layout);
    for (std::size_t i = 0; i < facts.size(); ++i) {
        const OpeningFacts &f = facts[i];
        const double runs = std::min(f.runs_left, f.runs_right);
        const double least = trim_of(shell, shell.openings[i]).header_bearing.mm();
        if (f.header < 0 || runs >= least - tolerance::weld) continue;
        findings.push_back({Weight::warning, "header-bears-short", wall_place(shell.openings[i].wall) + ", " + f.name,
                            "the log over it, " + tag(layout, f.header) + ", runs only " + say(shell, runs) + " past its " +
                                (f.runs_left < f.runs_right ? "left" : "right") + " jamb; " + say(shell, least) +
                                " is asked for: move the opening by " + say(shell, least - runs) + ", or change a height",
                            subject("opening", i, "from_left")});
    }
}

/// A bow stands out of the wall's face, or closes and opens the gaps over and under the log.
void check_bows(const Shell &shell, const Layout &layout, Findings &findings) {
    for (std::size_t i = 0; i < shell.own_logs.size(); ++i) {
        const OwnLog &own = shell.own_logs[i];
        if (!own.bow || own.bow->mm() <= 0) continue;
        const double gap = shell.rounds.gap.mm(), bow = own.bow->mm();
        const std::string place =
            round_place(own.wall, own.round) + (own.piece ? ", piece " + std::to_string(*own.piece) : "");
        const bool there = std::any_of(layout.pieces.begin(), layout.pieces.end(), [&](const Piece &p) {
            return p.timber < 0 && p.round == own.round && p.number == own.piece.value_or(p.number) && layout.walls[static_cast<std::size_t>(p.wall)].name == own.wall;
        });
        if (!there) continue;
        findings.push_back({bow > gap ? Weight::warning : Weight::note, "log-bowed", place,
                            "its middle stands " + say(shell, bow) + " out of the line between its ends, and the gap is " +
                                say(shell, gap) + ": laid crown up it " +
                                (bow > gap ? "touches the log over it by " + say(shell, bow - gap) : std::string("clears the log over it")) +
                                "; a straight stick out of it, as it is drawn, is that much thinner",
                            subject("log", i, "bow")});
    }
}

} // namespace

Findings review(const Shell &shell, const Layout &layout, const std::vector<Body> &bodies) {
    Findings findings;
    check_wood(layout, shell.notch.kind == NotchKind::saddle, bodies, findings);
    for (int c = 0; c < static_cast<int>(layout.corners.size()); ++c)
        check_lock(shell, layout, c, findings);
    check_water(shell, layout, findings);
    check_headers(shell, layout, findings);
    check_bows(shell, layout, findings);
    review_wood(shell, findings);
    review_floors(shell, layout, findings);
    std::stable_sort(findings.begin(), findings.end(),
                     [](const Finding &a, const Finding &b) { return a.weight < b.weight; });
    return findings;
}

} // namespace roundlay
