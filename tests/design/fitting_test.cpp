// What is put somewhere fits there, as small as these ask, or is refused with the reason.
#include "kernel/design/floor_edits.h"
#include "kernel/design/new_shell.h"
#include "kernel/design/opening_edits.h"
#include "kernel/design/shell_edits.h"
#include "kernel/design/step_edits.h"
#include "kernel/layout/advice/trial.h"
#include "kernel/layout/lay_out.h"
#include "kernel/layout/wood/interference.h"
#include "kernel/review/headers.h"
#include "tests/support/catch.h"
#include "tests/support/findings.h"

#include <algorithm>
#include <cmath>

using namespace roundlay;

namespace {

constexpr UnitSystem both_systems[] = {UnitSystem::metric, UnitSystem::imperial};

Shell usual(Shape shape, UnitSystem units, NotchKind kind = NotchKind::full_dovetail) {
    return *shell_of(usual_shell(shape, units, kind));
}

Shell low_shell(UnitSystem units, int rounds, double wall) {
    Shell shell = usual(Shape::rectangle, units);
    shell.rounds.count = rounds;
    shell.rounds.pitch = Length::mm(240);
    shell.walls[0].length = shell.walls[2].length = Length::mm(wall);
    return shell;
}

/// Of the usual shape, and under a log of the wall.
void check_opening(const Shell &with, OpeningKind kind) {
    const Layout layout = lay_out(with);
    CHECK(!has_errors(layout.findings));
    const Opening &o = with.openings.back();
    CHECK((o.sill + o.height).mm() < layout.heights.front().top);
    CHECK(o.width.mm() >= 400);
    CHECK(o.height.mm() >= 140);
    CHECK((kind == OpeningKind::door) == (o.sill == Length()));
}

std::ptrdiff_t warned_of(const Shell &shell) {
    const Layout layout = lay_out(shell);
    return warnings_in(layout.findings) + warnings_in(review_headers(shell, layout, false));
}

/// Whether layout takes the last opening there, as it is otherwise, and a check has no more to say.
bool stands_at(Shell shell, double from_left, double sill) {
    const std::ptrdiff_t warned = warned_of(shell);
    shell.openings.back().from_left = Length::mm(from_left);
    shell.openings.back().sill = Length::mm(sill);
    return !has_errors(lay_out(shell).findings) && warned_of(shell) <= warned;
}

/// Nothing nearer would do.
void check_nearest(const PlacedOpening &placed, double along, double wanted_up) {
    const Opening &o = placed.shell.openings.back();
    const double middle = (o.from_left + o.width / 2).mm(), up = (o.sill + o.height / 2).mm();
    const double away = std::abs(middle - along);
    CHECK(placed.where_wanted == (away <= 10 && std::abs(up - wanted_up) <= 140));
    if (placed.where_wanted || away <= 200) return;
    for (double x = along - away + 110; x < along + away - 110; x += 50)
        CHECK(!stands_at(placed.shell, x - o.width.mm() / 2, o.sill.mm()));
}

Shell on_a_step() {
    Shell shell = usual(Shape::rectangle, UnitSystem::metric);
    shell.steps.push_back({"A", Length::mm(500), Length::mm(2000), Length::mm(500)});
    return shell;
}

} // namespace

TEST_CASE("a new opening is as low and narrow as its wall asks, of hewn logs and of round ones") {
    for (const UnitSystem units : both_systems)
        for (const int rounds : {3, 5, 7, 12})
            for (const double wall : {1500.0, 6000.0}) {
                INFO(rounds << " rounds, wall of " << wall << " mm");
                const Shell hewn = low_shell(units, rounds, wall);
                for (const Shell &low : {hewn, with_kind(hewn, NotchKind::saddle)}) {
                    REQUIRE(!has_errors(lay_out(low).findings));
                    for (const OpeningKind kind : {OpeningKind::window, OpeningKind::door}) {
                        const auto next = with_new_opening(low, kind, "A", {wall / 2, {}});
                        REQUIRE(next.placed);
                        check_opening(next.placed->shell, kind);
                    }
                }
            }
}

TEST_CASE("a new opening brings no warning") {
    for (const UnitSystem units : both_systems)
        for (const OpeningKind kind : {OpeningKind::window, OpeningKind::door}) {
            const auto next =
                with_opening(usual(Shape::rectangle, units), usual_opening(kind, "A", units), {4000, {}});
            REQUIRE(next);
            CHECK(next->where_wanted);
            CHECK(warnings_in(lay_out(next->shell).findings) == 0);
        }
}

TEST_CASE("a new opening stands where it is wanted or nearest, hewn and round, square and on a step") {
    for (const Shell &shell : {usual(Shape::rectangle, UnitSystem::imperial), on_a_step(),
                               usual(Shape::tee, UnitSystem::metric, NotchKind::saddle)}) {
        REQUIRE(!has_errors(lay_out(shell).findings));
        const Opening window = usual_opening(OpeningKind::window, "A", shell.units);
        Shell now = shell;
        for (const double along : {1200.0, 2600.0, 4000.0, 2500.0}) { // the last between two that stand
            const auto next = with_opening(now, window, {along, 1500});
            REQUIRE(next);
            check_nearest(*next, along, 1500);
            CHECK(!has_errors(lay_out(next->shell).findings));
            now = next->shell;
        }
        const auto high = with_opening(shell, window, {3500, 9000}); // over the top: as far down as it must
        REQUIRE(high);
        CHECK(!high->where_wanted);
        CHECK(high->shell.openings.back().sill > Length::mm(700));
        const auto door =
            with_opening(shell, usual_opening(OpeningKind::door, "A", shell.units), {1000, 1800});
        REQUIRE(door); // at the foot of the wall, or on its step
        CHECK(door->shell.openings.back().sill == (shell.steps.empty() ? Length() : Length::mm(500)));
    }
}

TEST_CASE("a new opening that cannot stand where it is wanted goes where a check finds nothing, or says what "
          "it finds") {
    // Beside a window a second one leaves an island that pegs find no place in: 100 mm are enough to stand.
    Shell shell = usual(Shape::rectangle, UnitSystem::metric);
    const auto first = with_new_opening(shell, OpeningKind::window, "A", {4000, {}});
    REQUIRE(first.placed);
    REQUIRE(first.placed->where_wanted);
    REQUIRE(warned_of(first.placed->shell) == 0);
    for (const double along : {150.0, 3600.0, 4300.0, 9400.0}) { // in a corner, and where the first stands
        INFO(along);
        const auto second = with_new_opening(first.placed->shell, OpeningKind::window, "A", {along, {}});
        REQUIRE(second.placed);
        CHECK_FALSE(second.placed->where_wanted);
        CHECK(warned_of(second.placed->shell) == 0);
        CHECK(second.placed->remaining.empty());
        const Opening &o = second.placed->shell.openings.back();
        CHECK(std::abs((o.from_left + o.width / 2).mm() - along) < 2200); // and not at the wall's other end
    }
    // Where the hand points it stands, if it can; what a check has to say of it then is told.
    const Opening &stands = first.placed->shell.openings.back();
    const double beside = (stands.from_left + stands.width).mm() + 150 + 450;
    const auto near = with_new_opening(first.placed->shell, OpeningKind::window, "A", {beside, {}});
    REQUIRE(near.placed);
    CHECK(near.placed->where_wanted);
    CHECK(warned_of(near.placed->shell) > 0);
    CHECK_FALSE(near.placed->remaining.empty());
}

TEST_CASE("a new opening is called as its asker calls such, by the next free number") {
    Shell shell = usual(Shape::rectangle, UnitSystem::metric);
    for (const char *name : {"porte 1", "porte 2"}) {
        const auto next = with_new_opening(shell, OpeningKind::door, "A", {4000, {}, "porte"});
        REQUIRE(next.placed);
        shell = next.placed->shell;
        CHECK(shell.openings.back().name == name);
    }
    CHECK(with_new_opening(shell, OpeningKind::door, "A", {4000, {}}).placed->shell.openings.back().name ==
          "door 1");
}

TEST_CASE("a beam is put beside a stair that lies in the middle of its floor") {
    Shell shell = usual(Shape::rectangle, UnitSystem::metric);
    const Fitted floored = with_fitting_floor(shell);
    REQUIRE(floored);
    const Layout layout = lay_out(*floored.shell);
    const double middle = layout.floors.front().depth / 2;
    const auto stair = with_floor(*floored.shell, 0, [&](Floor &floor) {
        floor.openings = {
            {"stair", Length::mm(1000), Length::mm(middle - 500), Length::mm(900), Length::metres(1)}};
    });
    REQUIRE(stair);
    REQUIRE_FALSE(has_errors(lay_out(*stair).findings));
    const Fitted beamed = with_fitting_beam(*stair, 0);
    REQUIRE(beamed);
    CHECK_FALSE(has_errors(lay_out(*beamed.shell).findings));
    const double at = beamed.shell->floors[0].beams.at(0).from_wall.mm();
    CHECK(std::abs(at - middle) > 500);
    CHECK(std::abs(at - middle) < 1000);
}

TEST_CASE("a partition ends in the one that is pointed at, and does not run through it") {
    Shell shell = usual(Shape::rectangle, UnitSystem::metric);
    const auto first = with_partition_there(shell, "A", Length::mm(4000));
    REQUIRE(first);
    const std::string name = first->partitions[0].name;
    const auto second = with_partition_there(*first, "D", Length::mm(3000), name);
    REQUIRE(second);
    CHECK(second->partitions[1].to == name);
    CHECK_FALSE(has_errors(lay_out(*second).findings));
    CHECK(with_partition_there(*first, "D", Length::mm(3000))->partitions[1].to == "B");
}

TEST_CASE("an opening wider than its wall fits nowhere, nor one in no wall") {
    const Shell shell = usual(Shape::rectangle, UnitSystem::imperial);
    Opening wide = usual_opening(OpeningKind::window, "A", UnitSystem::metric);
    wide.width = Length::metres(40);
    CHECK(!with_opening(shell, wide, {3000, {}}));
    CHECK(!with_opening(shell, usual_opening(OpeningKind::door, "Z", UnitSystem::metric), {3000, {}}));
}

TEST_CASE("an opening that fits nowhere says what is against the smallest") {
    Shell one = usual(Shape::rectangle, UnitSystem::metric);
    one.rounds.count = 1;
    const NewOpening none = with_new_opening(one, OpeningKind::door, "A", {4800, {}});
    CHECK(!none.placed);
    REQUIRE(none.why);
    CHECK(none.why->weight == Weight::error);
    CHECK_THAT(test::sentence(*none.why), ContainsSubstring("wall A"));
}

/// The smallest hatch has 600 mm, or 24 in, each way.
TEST_CASE("a stair in a narrow room is as small as it asks") {
    for (const UnitSystem units : both_systems)
        for (const double depth : {1500.0, 1800.0, 2130.0, 3000.0}) {
            Shell narrow = usual(Shape::rectangle, units);
            narrow.walls[1].length = narrow.walls[3].length = Length::mm(depth);
            const Fitted floor = with_fitting_floor(narrow);
            REQUIRE(floor);
            const Fitted next = with_fitting_floor_opening(*floor.shell, 0);
            INFO(depth << " mm: " << (next.why ? test::sentence(*next.why) : "no reason"));
            REQUIRE(next);
            CHECK(!has_errors(lay_out(*next.shell).findings));
        }
}

TEST_CASE("a second floor lies where there is room or is refused") {
    for (const UnitSystem units : both_systems)
        for (const NotchKind kind : {NotchKind::full_dovetail, NotchKind::square_lap})
            for (const Shape shape : {Shape::rectangle, Shape::ell}) {
                const Fitted one = with_fitting_floor(usual(shape, units, kind));
                REQUIRE(one);
                const Fitted made = with_fitting_floor(*one.shell);
                REQUIRE(made);
                const auto &two = made.shell;
                const Layout layout = lay_out(*two);
                CHECK(!has_errors(layout.findings));
                CHECK(layout.floors.size() == 2);
                CHECK(overlaps(layout, bodies_of(layout)).empty());
                const double apart = std::abs((two->floors[0].level - two->floors[1].level).mm());
                // An L has room for it in its other part; a rectangle over or under the first.
                CHECK((shape == Shape::ell || apart >= least_between_floors(units)));
            }
    const Fitted round = with_fitting_floor(usual(Shape::rectangle, UnitSystem::imperial, NotchKind::saddle));
    CHECK(!round); // in round logs none is let in, and that is the reason told
    REQUIRE(round.why);
    CHECK(round.why->code != "floor-no-height");
    Shell low = usual(Shape::rectangle, UnitSystem::imperial);
    low.rounds.count = 6;
    const Fitted second = with_fitting_floor(*with_fitting_floor(low).shell);
    REQUIRE(second.why);
    CHECK(second.why->code == "floor-no-height");
    CHECK_THAT(test::sentence(*second.why, UnitSystem::imperial),
               ContainsSubstring("6' 8\" between their tops"));
}

/// Wanted where the door stands: it goes as far aside as it must.
TEST_CASE("a step beside a door brings no warning") {
    for (const UnitSystem units : both_systems) {
        const Shell bare = usual(Shape::rectangle, units);
        const double middle = bare.walls[0].length.mm() / 2;
        const Shell house = with_new_opening(bare, OpeningKind::door, "A", {middle, {}}).placed->shell;
        const Fitted next = with_new_step(house, "A", middle);
        REQUIRE(next);
        CHECK(warnings_in(lay_out(*next.shell).findings) == warnings_in(lay_out(house).findings));
        CHECK(next.shell->steps[0].width > Length::metres(1));
    }
}

TEST_CASE("a partition comes nearest to the middle of its wall, or says what is against it") {
    for (const UnitSystem units : both_systems) {
        const Shell bare = usual(Shape::ell, units);
        const Fitted next = with_fitting_partition(bare, "A");
        REQUIRE(next);
        REQUIRE(next.shell->partitions.size() == 1);
        CHECK(fits_as_well(*next.shell, bare));
        Shell narrow = usual(Shape::rectangle, units);
        narrow.walls[0].length = narrow.walls[2].length = Length::mm(500);
        CHECK(!with_fitting_partition(narrow, "A"));
        CHECK(!with_fitting_partition(bare, "Z"));
    }
}
