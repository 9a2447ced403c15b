// The wood of one piece against closed forms.

#include "kernel/layout/pieces/models.h"
#include "kernel/layout/wood/interference.h"
#include "tests/support/catch.h"

#include <cmath>
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
    return {x, 100, z_from, z_to, d, Index<Peg>(0), true, z_from <= 0};
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
    p.cuts.emplace_back(
        SeamCut{End::far, Side::top, 2800, 3000, plane_over(150 - 2800.0 / 8, 0.125, -0.125), "AB", ""});
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

    const auto apart = [](const Bore &a, const Bore &b) {
        Piece p = blank(1000, 200, 230);
        p.cuts = {a, b};
        return body_of(p).bores_apart;
    };
    // Wood thinner than tolerance::clear, 0.5 mm, between two bores is none.
    CHECK_FALSE(apart(bore(300, 0, 230), bore(332.3, 0, 230)));
    CHECK(apart(bore(300, 0, 230), bore(332.7, 0, 230)));
    CHECK_FALSE(apart(bore(300, 0, 100), bore(300, 100.3, 230)));
    CHECK(apart(bore(300, 0, 100), bore(300, 100.7, 230)));

    Piece under_notch = blank(1000, 200, 230);
    under_notch.cuts = {BoxCut{BoxUse::sill, {{400, -10, 100}, {600, 210, 240}}, "w"}, bore(390, 0, 230)};
    CHECK_FALSE(body_of(under_notch).bores_clear);

    Piece out_of_notch = blank(1000, 200, 230); // says it starts at the top, but a notch took the wood there
    out_of_notch.cuts = {BoxCut{BoxUse::sill, {{400, -10, 100}, {600, 210, 240}}, "w"}, bore(500, 0, 230)};
    CHECK_FALSE(body_of(out_of_notch).bores_clear);
}

TEST_CASE("A bore keeps off a ridge of the top, and off a cut that ends under it") {
    // A top that falls 1:20 to both sides of x = 500. A bore 32 mm wide keeps 16.5 mm from what it does not
    // cut.
    const auto through_ridge = [](double x) {
        Piece p = blank(1000, 200, 230);
        p.cuts = {FaceCut{LogFace::top, plane_over(230 - 500.0 / 20, 1.0 / 20, 0)},
                  FaceCut{LogFace::top, plane_over(230 + 500.0 / 20, -1.0 / 20, 0)},
                  bore(x, 0, 230 - std::abs(x - 500) / 20)};
        return body_of(p).bores_clear;
    };
    CHECK(through_ridge(517));
    CHECK(through_ridge(483));
    CHECK_FALSE(through_ridge(516));
    CHECK_FALSE(through_ridge(490));
    const auto over_header = [](double wood) {
        Piece p = blank(1000, 200, 230);
        p.cuts = {BoxCut{BoxUse::header, {{400, -10, -10}, {600, 210, 115 - wood}}, "w"},
                  bore(500, 115, 230)};
        return body_of(p).bores_clear;
    };
    CHECK(over_header(17));
    CHECK_FALSE(over_header(16));
    CHECK_FALSE(over_header(10));
}

TEST_CASE("A bore's rim falls off a round log's crown by what the circle's chords give") {
    const double radius = 120;
    const RoundSurface log{{0, 0, radius}, {1, 0, 0}, radius, false};
    const double a = 16;
    const auto fall = [&](double aside, double z) {
        Bore b = bore(500, 0, 240, 2 * a);
        b.y = aside;
        return mean_fall(log, b, z);
    };
    // By hand, over the crown: R - sqrt(R^2 - y^2) = y^2 / 2R + y^4 / 8R^3 + y^6 / 16R^5 + ..., and over a
    // disc of radius a the means of y^2, y^4 and y^6 are a^2 / 4, a^4 / 8 and 5 a^6 / 64. The rest is under
    // 1e-7.
    const double hand = a * a / (8 * radius) + std::pow(a, 4) / (64 * std::pow(radius, 3)) +
                        5 * std::pow(a, 6) / (1024 * std::pow(radius, 5));
    CHECK(fall(0, 2 * radius) == Approx(hand).margin(1e-7));
    CHECK(fall(0, 2 * radius - 1) == 0); // its end lies elsewhere
    // Beside the crown, as many rings and rays of the disc as give six figures.
    const double aside = 20, crown = std::sqrt(radius * radius - aside * aside);
    double sum = 0;
    constexpr int rings = 400, rays = 400;
    for (int i = 0; i < rings; ++i)
        for (int k = 0; k < rays; ++k) {
            const double r = a * (i + 0.5) / rings, y = aside + r * std::cos(2 * std::numbers::pi * k / rays);
            sum += (crown - std::sqrt(radius * radius - y * y)) * 2 * r / a / rings / rays;
        }
    CHECK(fall(aside, radius + crown) == Approx(sum).epsilon(1e-4));
    CHECK(fall(-aside, radius + crown) == Approx(sum).epsilon(1e-4));
}

TEST_CASE("Wood in a piece's way down is counted once, though several of its cells lie under it") {
    // Two boxes by hand: 100 x 100 x 100 of wood straight over one that is cut into three cells, one on
    // another.
    Layout layout;
    for (int i = 0; i < 2; ++i) {
        Piece p;
        p.blank = {100, 100, i == 0 ? 100.0 : 90.0};
        p.frame = {{0, 0, i == 0 ? 100.0 : 0.0}, {1, 0, 0}, {0, 1, 0}, {0, 0, 1}};
        p.raise = i + 1; // the upper one was there first
        p.model = layout.models.next();
        layout.models.push_back({{layout.pieces.push_back(p)}});
    }
    Bodies bodies = bodies_of(layout);
    const SplitCell low = split(bodies[Index<Model>(1)].cells[0], {{0, 0, 1}, 30}),
                    high = split(low.outside, {{0, 0, 1}, 60});
    bodies[Index<Model>(1)].cells = {low.inside, high.inside, high.outside};
    const std::vector<Blocked> blocked = blocked_on_the_way_down(layout, bodies);
    REQUIRE(blocked.size() == 1);
    CHECK(blocked[0].piece == Index<Piece>(1));
    CHECK(blocked[0].volume == Approx(1e6));
}

TEST_CASE(
    "Pieces that differ in a notch running on past its corner, or in the kind of a cut, are no one model") {
    const auto models = [](const Cut &a, const Cut &b) {
        Indexed<Piece> pieces;
        for (const Cut *cut : {&a, &b}) {
            Piece p;
            p.blank = {1000, 200, 200};
            p.cuts = {*cut};
            pieces.push_back(p);
        }
        return group_models(pieces).size();
    };
    SeamCut ends;
    ends.x_from = 100;
    ends.x_to = 300;
    ends.seam = {{0, 0, 1}, 150};
    SeamCut on = ends;
    on.runs_on = true; // sheets dimension both of its shoulders
    CHECK(models(ends, ends) == 1);
    CHECK(models(ends, on) == 2);
}
