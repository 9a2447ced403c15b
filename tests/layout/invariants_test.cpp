// The invariants that hold for every shell, on random ones.

#include "kernel/layout/lay_out.h"
#include "kernel/layout/layout.h"
#include "kernel/layout/wood/interference.h"
#include "tests/layout/sound.h"
#include "tests/support/catch.h"
#include "tests/support/findings.h"
#include "tests/support/shells.h"
#include "tests/support/thrown_away.h"

#include <rapidcheck.h>

#include <algorithm>
#include <numbers>
#include <set>

using namespace roundlay;
using test::has;
using test::words;

namespace {

bool tapered(const Shell &shell) {
    return shell.logs.butt_height.has_value();
}

double thickness_of(const Shell &shell, std::size_t wall) {
    return shell.walls[wall].thickness.value_or(shell.thickness).mm();
}

/// Wall volume less openings, gaps and bores, worked out from what was stated and the rules of the corner:
/// not from any piece. Log bodies between shoulders, corner columns filled by tails from the foundation to
/// the top.
double stated_volume(const Shell &shell, const Layout &layout) {
    const double pitch = shell.rounds.pitch->mm(), gap = shell.rounds.gap.mm(), log = pitch - gap;
    const int count = *shell.rounds.count;
    const bool level = shell.rounds.top == TopRule::level;
    double sum = 0;
    for (const auto w : layout.walls.indices()) {
        const WallPlace &wall = layout.walls[w];
        const auto &start = layout.corners[wall.start_corner];
        const auto &end = layout.corners[wall.end_corner];
        const double t_start = thickness_of(shell, start.ends.at());
        const double t_end = thickness_of(shell, end.starts.at());
        const double between = wall.length - (start.reentrant ? 0 : t_start) - (end.reentrant ? 0 : t_end);
        // Lows and highs of the wall's logs.
        std::vector<std::pair<double, double>> logs;
        if (wall.starts_full)
            for (int k = 0; k < count; ++k)
                logs.push_back({k * pitch, k * pitch + log});
        else {
            logs.push_back({0, pitch / 2 - gap});
            for (int k = 0; k < (level ? count - 1 : count); ++k)
                logs.push_back({pitch / 2 + k * pitch, pitch / 2 + k * pitch + log});
            if (level) logs.push_back({(count - 0.5) * pitch, count * pitch - gap});
        }
        for (std::size_t k = 0; k < logs.size(); ++k) {
            const double h = logs[k].second - logs[k].first;
            sum += wall.thickness * h * between;
            for (const Opening &o : shell.openings) {
                if (o.wall != wall.name) continue;
                const double low = std::max(logs[k].first, o.sill.mm());
                const double high = std::min(logs[k].second, (o.sill + o.height).mm());
                if (high > low) sum -= wall.thickness * o.width.mm() * (high - low);
            }
        }
    }
    for (const CornerPlace &c : layout.corners) {
        const double ta = thickness_of(shell, c.ends.at());
        const double tb = thickness_of(shell, c.starts.at());
        sum += ta * tb * (level ? count * pitch - gap : (count + 0.5) * pitch - gap);
    }
    // Overhanging ends keep the full section; a half log that butts has none. Counted from the pieces' ends.
    for (const Piece &p : layout.pieces)
        for (const PieceEnd *e : {&p.datum, &p.far})
            if (e->kind == EndKind::corner) {
                const auto corner = std::find_if(layout.corners.begin(), layout.corners.end(),
                                                 [&](const CornerPlace &c) { return c.name == e->at; });
                const std::size_t other = (corner->ends == p.wall ? corner->starts : corner->ends).at();
                const double end_run = e == &p.datum ? e->shoulder : p.blank.length - e->shoulder;
                sum += p.blank.width * p.blank.height * (end_run - thickness_of(shell, other));
            }
    for (const Peg &peg : layout.pegs)
        sum -= std::numbers::pi / 4 * peg.diameter * peg.diameter *
               (layout.pieces[peg.upper].blank.height +
                shell.pegs.depth_below * layout.pieces[peg.lower].blank.height);
    return sum;
}

} // namespace

namespace {

/// Lays out shells from `draw`; the number that were laid comes back through `laid`.
bool hold_for(Shell (*draw)(), int &laid, test::ThrownAway &thrown) {
    return rc::check([&] {
        const Shell shell = draw();
        const Layout layout = lay_out(shell);
        thrown.discard_refused(layout.findings);
        const Bodies bodies = bodies_of(layout);

        const auto shared = overlaps(layout, bodies);
        RC_ASSERT(shared.empty());
        const auto blocked = blocked_on_the_way_down(layout, bodies);
        RC_ASSERT(blocked.empty());

        const double sum = test::sound_volume(layout, bodies);
        if (!has(layout.findings, "seam-outside-wood") && !tapered(shell)) {
            const double stated = stated_volume(shell, layout);
            if (std::abs(sum / stated - 1) > 1e-9)
                RC_FAIL("pieces " + std::to_string(sum) + " stated " + std::to_string(stated));
        }
        ++laid;
    });
}

} // namespace

TEST_CASE("Random shells are laid out without overlap, can be raised, and keep their wood") {
    int laid = 0;
    test::ThrownAway none({}); // such shells can all be cut
    CHECK(hold_for(test::any_shell, laid, none));
    CHECK(laid >= 100);
}

TEST_CASE("So are shells of logs that taper") {
    int laid = 0;
    test::ThrownAway drifted({"tail-too-thin"}); // logs that drift apart
    CHECK(hold_for(test::any_tapered_shell, laid, drifted));
    CHECK(laid >= 100);
    INFO(drifted.words());
    CHECK(drifted.share() < 0.3);
}

TEST_CASE("A piece lowered by a millimetre is found to overlap") { // the check itself can fail
    const Layout good = lay_out(test::plain_shell());
    REQUIRE_FALSE(has_errors(good.findings));
    Layout bad = good;
    bad.pieces[Index<Piece>(5)].frame.origin.z -= 1;
    CHECK(overlaps(good, bodies_of(good)).empty());
    CHECK_FALSE(overlaps(bad, bodies_of(bad)).empty());
}

TEST_CASE("Raised the other way round, pieces are in one another's way") {
    Layout layout = lay_out(test::plain_shell());
    for (Piece &p : layout.pieces)
        p.raise = -p.raise;
    CHECK_FALSE(blocked_on_the_way_down(layout, bodies_of(layout)).empty());
}

TEST_CASE("Tags are unique and equal shells give equal layouts") {
    const Layout a = lay_out(test::plain_shell()), b = lay_out(test::plain_shell());
    std::set<std::string> tags;
    for (const Piece &p : a.pieces)
        tags.insert(p.tag);
    CHECK(tags.size() == a.pieces.size());
    REQUIRE(a.pieces.size() == b.pieces.size());
    for (const auto i : a.pieces.indices())
        CHECK(a.pieces[i].tag == b.pieces[i].tag);
}

TEST_CASE("An opening that ends within a log's taper leaves no wood that runs out to nothing") {
    Shell shell = test::plain_shell();
    shell.logs.butt_height = Length::mm(216);
    shell.logs.tip_height = Length::mm(204); // 210 mm in the middle, 12 mm over 5 m
    Opening o;
    o.wall = "A";
    o.from_left = Length::mm(1500);
    o.width = Length::mm(2000);
    o.sill = Length::mm(0);
    o.height = Length::mm(210); // the top of the first log is at 212 over one jamb and at 208 over the other
    shell.openings = {o};
    const Layout layout = lay_out(shell);
    INFO(words(layout.findings));
    REQUIRE_FALSE(has_errors(layout.findings));
    int first = 0;
    for (const Piece &p : layout.pieces)
        first += p.wall == Index<WallPlace>(0) && p.round == 1;
    CHECK(first == 2);
    CHECK(overlaps(layout, bodies_of(layout)).empty());
}
