#include "kernel/review/review.h"

#include "kernel/geometry/tolerance.h"
#include "kernel/layout/corners/corners.h"
#include "kernel/layout/cuts/match.h"
#include "kernel/layout/lay_out.h"
#include "kernel/layout/mends/section_left.h"
#include "kernel/layout/openings/openings.h"
#include "kernel/layout/text.h"
#include "kernel/review/fresh_logs.h"
#include "kernel/review/headers.h"
#include "kernel/review/locks.h"
#include "kernel/review/review_parts.h"
#include "kernel/review/water.h"

#include <algorithm>
#include <cmath>
#include <iterator>

namespace roundlay {

namespace {

const std::string &tag(const Layout &layout, Index<Piece> piece) {
    return layout.pieces[piece].tag;
}

/// A timber whose pocket is closed at the top is warned of where it is laid out: it is not lowered but slid.
bool slides_in(const Layout &layout, Index<Piece> piece) {
    if (!layout.pieces[piece].timber) return false;
    return std::any_of(layout.findings.begin(), layout.findings.end(), [&](const Finding &f) {
        const auto *timber = first_of<about::Timber>(f.about);
        return f.code == "pocket-closed" && timber != nullptr && timber->tag == tag(layout, piece);
    });
}

/// The statement that a piece comes from: its wall, partition or floor.
std::string statement_of(const Shell &shell, const Layout &layout, Index<Piece> piece) {
    const Piece &p = layout.pieces[piece];
    if (p.timber) return subject("floor", layout.timbers[*p.timber].floor.at(), "name");
    const std::size_t w = p.wall.at(), outside = shell.walls.size();
    return w < outside ? subject("wall", w, "name") : subject("partition", w - outside, "name");
}

// Layout should never let these through; a shop must not cut them if it does.

void check_overlaps(const Shell &shell, const Layout &layout, const Bodies &bodies, KnownMeetings *known,
                    Findings &findings) {
    for (const Overlap &o : overlaps(layout, bodies, known))
        findings.push_back(
            {Weight::error,
             "pieces-overlap",
             {about::Pieces{tag(layout, o.a), tag(layout, o.b)}},
             said("these two pieces share as much wood as a cube of %1", in_mm(std::cbrt(o.volume))),
             {},
             statement_of(shell, layout, o.b)});
}

void check_way_down(const Shell &shell, const Layout &layout, const Bodies &bodies, KnownMeetings *known,
                    Findings &findings) {
    for (const Blocked &b : blocked_on_the_way_down(layout, bodies, known))
        if (!slides_in(layout, b.piece))
            findings.push_back({Weight::error,
                                "piece-blocked",
                                {about::Piece{tag(layout, b.piece)}},
                                said("it cannot be lowered into place past %1", tag(layout, b.by)),
                                {},
                                statement_of(shell, layout, b.piece)});
}

void check_sound(const Shell &shell, const Layout &layout, const Bodies &bodies, Findings &findings) {
    for (const auto m : layout.models.indices()) {
        const Index<Piece> first = layout.models[m].pieces.front();
        if (!(bodies[m].volume > 0) || !is_closed(bodies[m].hewn))
            findings.push_back({Weight::error,
                                "no-sound-wood",
                                {about::Piece{tag(layout, first)}},
                                said("its cuts leave no sound piece of wood"),
                                said("change what is cut from it"),
                                statement_of(shell, layout, first)});
    }
}

void check_bores(const Shell &shell, const Layout &layout, const Bodies &bodies, Findings &findings) {
    const bool scoped = shell.notch.kind == NotchKind::saddle; // there bores open in round surfaces
    for (const auto m : layout.models.indices()) {
        if (scoped ? bodies[m].bores_apart : bodies[m].bores_clear) continue;
        const Index<Piece> first = layout.models[m].pieces.front();
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

/// A log with that statement was laid out.
bool is_there(const Layout &layout, const OwnLog &own) {
    return std::any_of(layout.pieces.begin(), layout.pieces.end(), [&](const Piece &p) {
        return !p.timber && p.round == own.round && p.number == own.piece.value_or(p.number) &&
               layout.walls[p.wall].name == own.wall;
    });
}

Said bowed(double bow, double gap) {
    if (bow > gap)
        return said("its middle stands %1 out of the line between its ends, and the "
                    "gap is %2: laid crown up it touches "
                    "the log over it by %3",
                    in_mm(bow), in_mm(gap), in_mm(bow - gap));
    return said("its middle stands %1 out of the line between its ends, and the "
                "gap is %2: laid crown up it clears "
                "the log over it",
                in_mm(bow), in_mm(gap));
}

/// A bow stands out of the wall's face, or closes and opens the gaps over and under the log.
void check_bows(const Shell &shell, const Layout &layout, Findings &findings) {
    for (std::size_t i = 0; i < shell.own_logs.size(); ++i) {
        const OwnLog &own = shell.own_logs[i];
        if (!own.bow || own.bow->mm() <= 0 || !is_there(layout, own)) continue;
        const double gap = shell.rounds.gap.mm(), bow = own.bow->mm();
        About place = round_place(own.wall, own.round);
        if (own.piece) place.push_back(about::Part{*own.piece});
        findings.push_back({bow > gap ? Weight::warning : Weight::note, "log-bowed", std::move(place),
                            bowed(bow, gap),
                            said("a straight stick out of it, as it is drawn, is that much thinner"),
                            subject("log", i, "bow")});
    }
}

/// A shell whose logs are whole: how they lock, shed water and carry is asked of these, for a mend takes no
/// joint away.
struct Unmended {
    Shell shell;
    Layout layout;
    Bodies bodies;
};

Unmended without_mends(Shell shell) {
    shell.mends.clear();
    Layout layout = lay_out_to_try(shell);
    Bodies bodies = bodies_of(layout);
    return {std::move(shell), std::move(layout), std::move(bodies)};
}

void note_sections(const Layout &layout, Findings &findings) {
    for (const Piece &piece : layout.pieces) {
        if (piece.mends) continue; // of the old log alone
        const std::vector<SectionLeft> left = sections_left(piece);
        for (std::size_t i = 0; i < left.size(); ++i)
            findings.push_back(
                {Weight::note,
                 "mend-section",
                 {about::Piece{piece.tag}},
                 said_of(left[i]),
                 {},
                 subject("mend", piece.mended.at(std::min(i, piece.mended.size() - 1)), "kind")});
    }
}

void review_whole_logs(const Shell &shell, const Layout &layout, const Bodies &bodies, Findings &findings) {
    check_locks(shell, layout, findings);
    check_water(shell, layout, findings);
    std::ranges::move(review_headers(shell, layout, true), std::back_inserter(findings));
    check_bows(shell, layout, findings);
    review_fresh_logs(shell, layout, findings);
    review_wood(shell, findings);
    review_floors(shell, layout, bodies, findings);
}

} // namespace

Findings review(const Shell &shell, const Layout &layout, const Bodies &bodies, KnownMeetings *known) {
    Findings findings;
    check_overlaps(shell, layout, bodies, known, findings);
    check_way_down(shell, layout, bodies, known, findings);
    check_sound(shell, layout, bodies, findings);
    check_bores(shell, layout, bodies, findings);
    if (shell.mends.empty()) {
        review_whole_logs(shell, layout, bodies, findings);
    } else {
        note_sections(layout, findings);
        const Unmended whole = without_mends(shell);
        review_whole_logs(whole.shell, whole.layout, whole.bodies, findings);
    }
    std::stable_sort(findings.begin(), findings.end(),
                     [](const Finding &a, const Finding &b) { return a.weight < b.weight; });
    return findings;
}

} // namespace roundlay
