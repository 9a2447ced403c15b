// Round logs in themselves: cylinders, flats, grooves, saddles, to sums written out here.
#include "kernel/layout/lay_out.h"
#include "kernel/layout/layout.h"
#include "kernel/layout/wood/interference.h"
#include "tests/support/catch.h"
#include "tests/support/findings.h"
#include "tests/support/saddle.h"
#include "tests/support/shells.h"
#include "tests/support/thrown_away.h"

#include <algorithm>
#include <numbers>

using namespace roundlay;

namespace {

constexpr double pi = std::numbers::pi;

Piece blank(double length, double width, double height) {
    Piece p;
    p.blank = {length, width, height};
    p.far.shoulder = length;
    return p;
}

/// Between an arc and its chord at a distance from the centre.
double segment(double r, double distance) {
    return distance >= r
               ? 0
               : r * r * std::acos(distance / r) - distance * std::sqrt(r * r - distance * distance);
}

/// Simpson's rule.
template <typename F> double integral(F f, double a, double b, int n = 2000) {
    double sum = f(a) + f(b);
    for (int i = 1; i < n; ++i)
        sum += f(a + (b - a) * i / n) * (i % 2 ? 4 : 2);
    return sum * (b - a) / n / 3;
}

} // namespace

TEST_CASE("A whole round log is a cylinder") {
    Piece p = blank(4000, 300, 300);
    p.cuts = {RoundCut{{0, 150, 150}, {4000, 150, 150}, 150}};
    const Body body = body_of(p);
    CHECK(is_closed(body.hewn));
    CHECK(body.volume == Approx(pi * 150 * 150 * 4000).epsilon(1e-9));
    CHECK(volume(body.hewn) < body.volume); // the flats are inside
    CHECK(body.centroid.x == Approx(2000));
    CHECK(body.centroid.z == Approx(150).margin(1e-6));
}

TEST_CASE("Flats take a segment each off a round log") {
    Piece p = blank(4000, 220, 180);
    p.cuts = {RoundCut{{0, 110, 90}, {4000, 110, 90}, 125}};
    const double area = pi * 125 * 125 - 2 * segment(125, 110) - 2 * segment(125, 90);
    CHECK(body_of(p).volume ==
          Approx(area * 4000).epsilon(1e-4)); // a flat that ends between two facets' corners
}

TEST_CASE("A long groove takes the lens that two round logs would share") {
    Piece p = blank(4000, 300, 300);
    ScopeCut groove;
    groove.use = ScopeUse::groove;
    groove.at = {0, 150, 150 - 270.0};
    groove.along = {1, 0, 0};
    groove.radius = 150;
    groove.x_from = -10;
    groove.x_to = 4010;
    p.cuts = {RoundCut{{0, 150, 150}, {4000, 150, 150}, 150}, groove};
    const double area = pi * 150 * 150 - 2 * segment(150, 135);
    const Body body = body_of(p);
    CHECK(is_closed(body.hewn));
    CHECK(body.volume == Approx(area * 4000).epsilon(1e-5));
}

TEST_CASE("A saddle takes what lies below the crossing log's surface") {
    Piece p = blank(2000, 300, 300);
    ScopeCut saddle;
    saddle.at = {1000, 0, 150 - 135.0};
    saddle.along = {0, 1, 0};
    saddle.radius = 150;
    p.cuts = {RoundCut{{0, 150, 150}, {2000, 150, 150}, 150}, saddle};
    // Over each point of the plan: from the log's own underside up to the crossing log, never above its own
    // top.
    const double taken = integral(
        [](double x) {
            const double top = -135 + std::sqrt(std::max(0.0, 150.0 * 150 - x * x));
            return integral(
                [&](double y) {
                    const double half = std::sqrt(std::max(0.0, 150.0 * 150 - y * y));
                    return std::clamp(top, -half, half) + half;
                },
                -150, 150, 1000);
        },
        -150, 150, 1000);
    const Body body = body_of(p);
    CHECK(is_closed(body.hewn));
    CHECK(pi * 150 * 150 * 2000 - body.volume == Approx(taken).epsilon(2e-3));
    CHECK(body.volume == Approx(pi * 150 * 150 * 2000 - taken).epsilon(1e-4));
}

TEST_CASE("A saddle over a log that is hewn flat has upright cheeks against its flats") {
    Shell shell = test::round_shell(); // walls 240 thick
    shell.logs.diameter = Length::mm(300);
    shell.notch.scribe = Length::mm(3);
    const Layout layout = lay_out(shell);
    INFO(test::words(layout.findings));
    int saddles = 0;
    for (const Piece &piece : layout.pieces)
        for (const Cut &cut : piece.cuts)
            if (const auto *scope = std::get_if<ScopeCut>(&cut); scope && scope->use == ScopeUse::saddle) {
                CHECK(scope->cheeks == Approx(120 + 3)); // half the wall, and the scribe
                CHECK(scope->radius == Approx(150 + 3));
                ++saddles;
            }
    CHECK(saddles > 20);
    const auto bodies = bodies_of(layout);
    CHECK(overlaps(layout, bodies).empty());
    CHECK(blocked_on_the_way_down(layout, bodies).empty());
    shell.logs.diameter = Length::mm(240);
    for (const Piece &piece : lay_out(shell).pieces)
        for (const Cut &cut : piece.cuts)
            if (const auto *scope = std::get_if<ScopeCut>(&cut)) CHECK(scope->cheeks == 0);
}

TEST_CASE("A saddle with cheeks takes the crossing log's surface between them and no more") {
    Piece p = blank(2000, 300, 300);
    p.cuts = {test::saddle_over_middle()};
    for (const double half : {149.0, 120.0, 75.0, 20.0}) {
        std::get<ScopeCut>(p.cuts[0]).cheeks = half;
        const Body body = body_of(p);
        CHECK(is_closed(body.hewn));
        CHECK(2000 * 300 * 300 - body.volume == Approx(test::saddle_section(half) * 300).epsilon(1e-3));
    }
}
