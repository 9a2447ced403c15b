#include "kernel/review/opening_facts.h"

#include "kernel/layout/openings/openings.h"
#include "kernel/layout/piece_places.h"
#include "kernel/layout/pieces/hewn_faces.h"
#include "kernel/layout/text.h"
#include "kernel/trade/settling.h"

#include <algorithm>

namespace roundlay {

namespace {

constexpr double at_the_edge = 1e-3; ///< mm: a log that begins here begins at the opening's edge

/// A piece seen from its wall: where it lies along it, and in height what it has of wood all along a stretch
/// of it.
struct Lying {
    double from = 0, to = 0, low = 0, high = 0;
};

Lying lying(const Layout &layout, const Piece &piece, double left, double right) {
    const Vec3 o = layout.walls[piece.wall].frame.to_local(piece.frame.origin);
    const HewnFaces faces = hewn_faces(piece);
    return {o.x, o.x + piece.blank.length,
            o.z + std::max(faces.lowest(left - o.x), faces.lowest(right - o.x)),
            o.z + std::min(faces.highest(left - o.x), faces.highest(right - o.x))};
}

/// A log with a new end runs as far as that does.
Lying with_new_ends(const Layout &layout, Index<Piece> log, Lying l) {
    for (const Index<Piece> comes : new_wood_in(layout.pieces, log)) {
        const AlongWall part = along_wall(layout.walls, layout.pieces[comes]);
        l.from = std::min(l.from, part.from), l.to = std::max(l.to, part.to);
    }
    return l;
}

/// The nearest log of the opening's wall that spans it whole, over its top or under its sill.
std::optional<Index<Piece>> spanning(const Layout &layout, const Opening &o, bool over) {
    const double left = o.from_left.mm(), right = (o.from_left + o.width).mm(),
                 top = (o.sill + o.height).mm();
    std::optional<Index<Piece>> best;
    for (const auto i : layout.pieces.indices()) {
        const Piece &p = layout.pieces[i];
        if (!is_log(p) || layout.walls[p.wall].name != o.wall) continue;
        const Lying l = with_new_ends(layout, i, lying(layout, p, left, right));
        if (l.from > left - at_the_edge || l.to < right + at_the_edge) continue;
        if (over ? l.high <= top + at_the_edge : l.low >= o.sill.mm() - at_the_edge) continue;
        const auto nearer = [&](const Lying &than) { return over ? l.high < than.high : l.low > than.low; };
        if (!best || nearer(lying(layout, layout.pieces[*best], left, right))) best = i;
    }
    return best;
}

/// What that rule would leave over such a frame.
LengthAmount by(const Shell &shell, const SettlingRule &rule, Length height) {
    return in_mm(shown_settling_space(height, rule, shell.units).mm());
}

/// Whose word the space is, and what the rule that is asked for would leave.
Said stated_basis(const Shell &shell, const Opening &o) {
    const SettlingRule &rule = settling_asked_for(shell, o);
    const Said name = phrase(rule.name());
    return o.trim.settle_space
               ? said("as stated for this opening; by %1 it would be %2", name, by(shell, rule, o.height))
               : said("as stated for all openings; by %1 it would be %2", name, by(shell, rule, o.height));
}

/// Which rule and why; where another rule asks for more, what that would leave.
Said rule_basis(const Shell &shell, const Opening &o) {
    const SettlingChoice choice = choose_settling(shell, o);
    const SettlingRule &rule = *choice.rule, &longest = longest_settling_rule();
    Said text = said("%1 (%2; %3, %4), %5", phrase(rule.quoted), phrase(rule.scope),
                     phrase(rule.origin.source), phrase(words(rule.origin.mark)), phrase(choice.why));
    if (rule.id == longest.id) return text;
    return said("%1; by %2 it would be %3", text, phrase(longest.name()), by(shell, longest, o.height));
}

double settle_space_of(const Shell &shell, const Opening &o) {
    if (const auto stated = trim_of(shell, o).settle_space) return stated->mm();
    return shown_settling_space(o.height, *choose_settling(shell, o).rule, shell.units).mm();
}

} // namespace

std::vector<OpeningFacts> opening_facts(const Shell &shell, const Layout &layout) {
    std::vector<OpeningFacts> all;
    if (layout.pieces.empty()) return all;
    for (std::size_t i = 0; i < shell.openings.size(); ++i) {
        const Opening &o = shell.openings[i];
        OpeningFacts facts;
        facts.name = name_of(shell, i);
        facts.header = spanning(layout, o, true);
        facts.sill = spanning(layout, o, false);
        if (facts.header) {
            const double left = o.from_left.mm(), right = left + o.width.mm();
            const Lying l = with_new_ends(layout, *facts.header,
                                          lying(layout, layout.pieces[*facts.header], left, right));
            facts.runs_left = left - l.from;
            facts.runs_right = l.to - right;
        }
        facts.settle_space = settle_space_of(shell, o);
        facts.settle_basis = trim_of(shell, o).settle_space ? stated_basis(shell, o) : rule_basis(shell, o);
        all.push_back(std::move(facts));
    }
    return all;
}

} // namespace roundlay
