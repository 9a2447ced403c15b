// Any order that the program calls free raises the whole shell, and its reverse takes it down: against the
// wood itself, by checks that know nothing of the order.
#include "kernel/layout/lay_out.h"
#include "kernel/layout/wood/interference.h"
#include "kernel/progress/ticked.h"
#include "tests/support/any_mends.h"
#include "tests/support/catch.h"
#include "tests/support/findings.h"
#include "tests/support/shells.h"

#include <rapidcheck.h>

#include <algorithm>
#include <cstdio>
#include <cstdlib>

using namespace roundlay;

namespace {

struct Raised {
    Layout layout;
    Bodies bodies;
    Site site;

    explicit Raised(Layout laid) : layout(std::move(laid)), bodies(bodies_of(layout)) {
        site = {raising_order(layout, bodies), ticked_of({}, layout, "")};
    }

    void tick(Index<Piece> log, Deed deed) {
        for (const Index<Piece> i : layout.pieces.indices())
            if (log_with(layout.pieces, i) == log)
                site.ticked.ticks[i][static_cast<std::size_t>(deed)] = Tick{};
    }
};

/// Any kind of shell; half of them with mends where they stand.
std::optional<Layout> any_layout(test::MendsDrawn &told) {
    constexpr Shell (*kinds[])() = {test::any_family_shell,  test::any_fitted_shell,
                                    test::any_stepped_shell, test::any_waned_shell,
                                    test::any_saddle_shell,  test::any_stepped_saddle_shell,
                                    test::any_tapered_shell};
    const Shell shell = kinds[*rc::gen::inRange<std::size_t>(0, std::size(kinds))]();
    Layout layout = lay_out(shell);
    if (has_errors(layout.findings) || layout.pieces.empty()) return {};
    if (*rc::gen::inRange(0, 2) == 0) return layout;
    Layout mended = lay_out(test::with_any_mends(shell, layout, 3, told));
    return has_errors(mended.findings) ? layout : mended;
}

/// Ticks one after the other of those that may come, any of them, and says in which order.
std::vector<Index<Piece>> any_order(Raised &shell, Deed deed) {
    std::vector<Index<Piece>> order;
    while (true) {
        const auto now = may_now(shell.layout, shell.site, deed);
        if (now.empty()) return order;
        order.push_back(*rc::gen::elementOf(now));
        shell.tick(order.back(), deed);
    }
}

/// The same pieces, raised in that order.
Layout raised_so(const Layout &layout, const std::vector<Index<Piece>> &order) {
    Layout other = layout;
    int raise = 0;
    for (const Index<Piece> log : order)
        for (const Index<Piece> i : layout.pieces.indices())
            if (log_with(layout.pieces, i) == log) other.pieces[i].raise = ++raise;
    return other;
}

/// What the log meets of what was raised before it, moved up by so much, in mm3.
double met(const Layout &layout, const Bodies &bodies, Index<Piece> log, double up) {
    Layout there = layout;
    Indexed<Piece> standing;
    const int raise = layout.pieces[log].raise;
    std::size_t at = 0;
    for (const Index<Piece> i : layout.pieces.indices()) {
        if (layout.pieces[i].raise > raise || (layout.pieces[i].mends == log)) continue;
        if (i == log) at = standing.size();
        standing.push_back(layout.pieces[i]);
    }
    standing[Index<Piece>(at)].frame.origin.z += up;
    there.pieces = std::move(standing);
    double sum = 0;
    for (const Overlap &overlap : overlaps(there, bodies))
        if (overlap.a.at() == at || overlap.b.at() == at) sum += overlap.volume;
    return sum;
}

std::size_t logs_of(const Layout &layout) {
    return static_cast<std::size_t>(
        std::ranges::count_if(layout.pieces, [](const Piece &piece) { return !piece.mends; }));
}

/// A pair that the order keeps, the other way round.
void check_needed(const Raised &shell, const std::vector<Index<Piece>> &order) {
    const Index<Piece> upper = *rc::gen::elementOf(order);
    const Neighbours &of = shell.site.order[upper];
    std::vector<Index<Piece>> under = of.rests_on;
    under.insert(under.end(), of.lies_over.begin(), of.lies_over.end());
    if (under.empty()) return;
    const Index<Piece> lower = *rc::gen::elementOf(under);
    std::vector<Index<Piece>> wrong{upper};
    std::ranges::copy_if(order, std::back_inserter(wrong), [&](Index<Piece> i) { return i != upper; });
    const auto blocked = blocked_on_the_way_down(raised_so(shell.layout, wrong), shell.bodies);
    RC_ASSERT(std::ranges::any_of(blocked, [&](const Blocked &each) {
        return log_with(shell.layout.pieces, each.piece) == lower &&
               log_with(shell.layout.pieces, each.by) == upper;
    }));
}

struct Counted {
    int drawn = 0, stood = 0, mended = 0;
    std::size_t lifts = 0, choices = 0;
};

} // namespace

TEST_CASE("whatever may go up now, in any order, raises the whole shell and meets nothing on its way") {
    Counted counted;
    test::MendsDrawn told;
    CHECK(rc::check([&] {
        ++counted.drawn;
        auto layout = any_layout(told);
        if (!layout) return; // counted and named elsewhere
        Raised shell(*std::move(layout));
        if (!blocked_on_the_way_down(shell.layout, shell.bodies).empty()) return; // review refuses it
        ++counted.stood;
        counted.mended += std::ranges::any_of(shell.layout.pieces, [](const Piece &p) { return !!p.mends; });
        const auto order = any_order(shell, Deed::up);
        RC_ASSERT(order.size() == logs_of(shell.layout));
        counted.lifts += order.size();
        const Layout raised = raised_so(shell.layout, order);
        RC_ASSERT(blocked_on_the_way_down(raised, shell.bodies).empty());
        for (int i = 0; i < 2; ++i)
            for (const double up : {0.0, 3.0, 60.0, 400.0})
                RC_ASSERT(met(raised, shell.bodies, *rc::gen::elementOf(order), up) == 0);
        check_needed(shell, order);
    }));
    CHECK(counted.stood > 0);
    if (std::getenv("ROUNDLAY_TELL"))
        std::printf("%d shells drawn, %d stood, %d of them mended; %zu lifts\n", counted.drawn, counted.stood,
                    counted.mended, counted.lifts);
}

TEST_CASE("whatever may come down now, in any order, takes the whole shell down and meets nothing") {
    test::MendsDrawn told;
    CHECK(rc::check([&] {
        auto layout = any_layout(told);
        if (!layout) return;
        Raised shell(*std::move(layout));
        if (!blocked_on_the_way_down(shell.layout, shell.bodies).empty()) return;
        auto order = any_order(shell, Deed::down);
        RC_ASSERT(order.size() == logs_of(shell.layout));
        std::ranges::reverse(order); // the way back raises it
        RC_ASSERT(blocked_on_the_way_down(raised_so(shell.layout, order), shell.bodies).empty());
    }));
}

TEST_CASE("the order of the raise itself is free at each step") {
    CHECK(rc::check([] {
        test::MendsDrawn told;
        auto layout = any_layout(told);
        if (!layout) return;
        Raised shell(*std::move(layout));
        if (!blocked_on_the_way_down(shell.layout, shell.bodies).empty()) return;
        std::vector<Index<Piece>> order;
        for (const Index<Piece> i : shell.layout.pieces.indices())
            if (!shell.layout.pieces[i].mends) order.push_back(i);
        std::ranges::sort(order, {}, [&](Index<Piece> i) { return shell.layout.pieces[i].raise; });
        for (const Index<Piece> log : order) {
            RC_ASSERT(turn_up(shell.layout, shell.site, log).may == May::now);
            shell.tick(log, Deed::up);
            RC_ASSERT(turn_up(shell.layout, shell.site, log).may == May::done);
        }
    }));
}
