#include "kernel/geometry/ring.h"
#include "tests/support/catch.h"

#include <algorithm>

using namespace roundlay;

TEST_CASE("a point is inside a ring or it is not, whichever way round the ring goes") {
    // an L, 4 x 4 less its upper right quarter
    std::vector<Vec2> ring{{0, 0}, {4, 0}, {4, 2}, {2, 2}, {2, 4}, {0, 4}};
    for (int way = 0; way < 2; ++way) {
        for (const Vec2 p : {Vec2{1, 1}, Vec2{3, 1}, Vec2{1, 3}, Vec2{1.999, 1.999}})
            CHECK(is_inside(ring, p));
        for (const Vec2 p :
             {Vec2{3, 3}, Vec2{-1, 1}, Vec2{5, 1}, Vec2{1, 5}, Vec2{1, -1}, Vec2{2.001, 2.001}})
            CHECK_FALSE(is_inside(ring, p));
        std::reverse(ring.begin(), ring.end());
    }
    CHECK_FALSE(is_inside({}, {0, 0}));
}

// The part of a grid's points that lie inside is the area, which the shoelace formula gives: 6 of a
// diamond's 8.
TEST_CASE("as much of the plane is inside as the ring encloses") {
    const std::vector<Vec2> ring{{2, 0}, {4, 2}, {2, 4}, {1, 3}, {1, 1}};
    constexpr int fine = 200;
    int in = 0;
    for (int i = 0; i < 4 * fine; ++i)
        for (int k = 0; k < 4 * fine; ++k)
            in += is_inside(ring, {(i + 0.37) / fine, (k + 0.41) / fine}) ? 1 : 0;
    CHECK(in / (1.0 * fine * fine) == Approx(7).epsilon(0.002)); // the diamond's 8 less the corner of 1
}
