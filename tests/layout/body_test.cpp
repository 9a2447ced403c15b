// The wood of one piece against closed forms.

#include "kernel/layout/body.h"

#include "tests/support/catch.h"

#include <numbers>

using namespace roundlay;

namespace {

Piece blank(double length, double width, double height) {
    Piece p;
    p.blank = {length, width, height};
    p.far.shoulder = length;
    return p;
}

Bore bore(double x, double z_from, double z_to, double d = 32) {
    return {x, 100, z_from, z_to, d, 0, true, z_from <= 0};
}

} // namespace

TEST_CASE("An uncut blank is a box") {
    const Body body = body_of(blank(5000, 200, 230));
    CHECK(body.volume == Approx(5000.0 * 200 * 230).epsilon(1e-14));
    CHECK(body.hewn.faces.size() == 6);
    CHECK(body.centroid.x == Approx(2500));
}

TEST_CASE("A sloped tail is a prism of its mean thickness") {
    Piece p = blank(3000, 200, 230);
    p.far.shoulder = 2800;
    // top: 150 high at (2800, 0), rising 1:8 along and falling 1:8 across
    p.cuts.emplace_back(SeamCut{End::far, Side::top, 2800, 3000, plane_over(150 - 2800.0 / 8, 0.125, -0.125), "AB", ""});
    const Body body = body_of(p);
    const double mean = 150 + 100.0 / 8 - 100.0 / 8;
    CHECK(body.volume == Approx(2800.0 * 200 * 230 + 200 * 200 * mean).epsilon(1e-13));
    CHECK(body.hewn.faces.size() == 8); // six of the box, shoulder, tail top
    CHECK(is_closed(body.hewn));
}

TEST_CASE("Bores take a cylinder each, through and blind") {
    Piece p = blank(1000, 200, 230);
    p.cuts = {bore(300, 0, 230), bore(500, 115, 230)};
    const Body body = body_of(p);
    CHECK(body.bores_clear);
    const double hole = std::numbers::pi / 4 * 32 * 32;
    CHECK(body.volume == Approx(1000.0 * 200 * 230 - hole * (230 + 115)).epsilon(1e-14));
}

TEST_CASE("A bore too near an edge, another bore or a notch is not clear") {
    Piece near_end = blank(1000, 200, 230);
    near_end.cuts = {bore(16.2, 0, 230)};
    CHECK_FALSE(body_of(near_end).bores_clear);

    Piece near_bore = blank(1000, 200, 230);
    near_bore.cuts = {bore(300, 0, 230), bore(320, 115, 230)};
    CHECK_FALSE(body_of(near_bore).bores_clear);

    Piece under_notch = blank(1000, 200, 230);
    under_notch.cuts = {BoxCut{BoxUse::sill, {{400, -10, 100}, {600, 210, 240}}, "w"}, bore(390, 0, 230)};
    CHECK_FALSE(body_of(under_notch).bores_clear);

    Piece out_of_notch = blank(1000, 200, 230); // says it starts at the top, but a notch took the wood there
    out_of_notch.cuts = {BoxCut{BoxUse::sill, {{400, -10, 100}, {600, 210, 240}}, "w"}, bore(500, 0, 230)};
    CHECK_FALSE(body_of(out_of_notch).bores_clear);
}
