#include "kernel/layout/corners/seam_flow.h"
#include "tests/support/catch.h"

#include <rapidcheck.h>

#include <random>

using namespace roundlay;

namespace {

/// The seam on a log A of thickness ta, crossed by a log of thickness tb, at an outside corner.
std::vector<SeamEdge> outside_corner(double ta, double tb) {
    const double a = tb / 2, b = ta / 2;
    return {{{-a, -b}, {a, -b}, false},
            {{a, -b}, {a, b}, true},
            {{a, b}, {-a, b}, true},
            {{-a, b}, {-a, -b}, false}};
}

/// The closed form for an outside corner: top plane p along the log, q across it.
bool sheds(double p, double q, double ta, double tb) {
    return (p <= 0 && q < 0) || (p < 0 && q <= 0) || (q < 0 && p * ta <= -q * tb) ||
           (p < 0 && q * tb <= -p * ta);
}

} // namespace

TEST_CASE("Descent paths agree with the closed form on 10,000 random slope pairs") {
    std::mt19937 random(20260101);
    std::uniform_real_distribution<double> slope(-0.5, 0.5), thickness(100, 300);
    int shedding = 0;
    for (int i = 0; i < 10000; ++i) {
        double p = slope(random), q = slope(random);
        if (i % 10 == 0) p = 0;
        if (i % 10 == 1) q = 0;
        const double ta = thickness(random), tb = thickness(random);
        const Flow flow = flow_on(outside_corner(ta, tb), {p, q}).flow;
        INFO("p " << p << " q " << q << " ta " << ta << " tb " << tb);
        REQUIRE((flow == Flow::sheds) == sheds(p, q, ta, tb));
        shedding += flow == Flow::sheds;
    }
    CHECK(shedding > 1000);
    CHECK(shedding < 9000);
}

TEST_CASE("A level seam neither sheds nor leads in") {
    CHECK(flow_on(outside_corner(200, 200), {0, 0}).flow == Flow::level);
}

TEST_CASE("The edge water runs to is named") {
    CHECK(flow_on(outside_corner(200, 200), {0.1, 0}).edge == 3); // back along the log to its shoulder
    CHECK(flow_on(outside_corner(200, 200), {0, 0.1}).edge == 0); // across, to the log's inside face
}
