#include "kernel/boundary/boundary.h"
#include "kernel/solid/solid.h"
#include "tests/solid/hand_made.h"
#include "tests/support/catch.h"

using namespace roundlay;
using namespace roundlay::hand_made;

namespace {

struct Case {
    const char *name;
    Body body;
};

std::vector<Case> clear_cases() {
    const Polyhedron pocket = pocketed(3000, 200, 220, {{1000, 150, 60}, {1150, 200, 160}});
    return {{"a plain box", body(box(3000, 200, 220))},
            {"a through bore", body(box(3000, 200, 220), {through_bore(700, 100, 220, 32)})},
            {"a blind bore from the top", body(box(3000, 200, 220), {bore_from_top(700, 100, 220, 110, 32)})},
            {"a blind bore from under", body(box(3000, 200, 220), {bore_from_under(700, 100, 110, 32)})},
            {"two tails", body(two_tails(4000, 200, 220, 200, 0.125))},
            {"two tails and eight bores", usual_log()},
            {"a pocket", body(pocket)},
            {"a pocket and a bore beside it", body(pocket, {through_bore(700, 100, 220, 32)})},
            {"a step", body(stepped(3000, 200, 220, 800, 90))},
            {"a step bored from its own level",
             body(stepped(3000, 200, 220, 800, 90),
                  {through_bore(2600, 100, 130, 32), through_bore(700, 100, 220, 32)})}};
}

} // namespace

TEST_CASE("Bodies whose bores keep clear are written down directly and are right") {
    for (const Case &each : clear_cases()) {
        INFO(each.name);
        const BuiltSolid built = build(each.body);
        CHECK(built.method == Method::direct);
        CHECK(is_valid(built.solid));
        CHECK(is_free_of_self_interference(built.solid));
        CHECK(count_solids(built.solid) == 1);
        CHECK(volume(built.solid) == Approx(each.body.volume).epsilon(1e-12));
    }
}

TEST_CASE("The direct way and one boolean give the same volume") {
    for (Case each : clear_cases()) {
        INFO(each.name);
        if (each.body.bores.empty()) continue;
        const double direct = volume(build(each.body).solid);
        each.body.bores_clear = false;
        const BuiltSolid other = build(each.body);
        CHECK(other.method == Method::boolean);
        CHECK(is_valid(other.solid));
        CHECK(volume(other.solid) == Approx(direct).epsilon(1e-9));
    }
}
