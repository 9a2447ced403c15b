// What a boolean leaves is held against the cuts: tools that are off are noticed, whatever the library says
// of itself.
#include "kernel/solid/boolean.h"
#include "kernel/solid/bored_wood.h"
#include "kernel/solid/direct.h"
#include "kernel/solid/held.h"
#include "kernel/solid/round_tools.h"
#include "tests/solid/hand_made.h"
#include "tests/support/catch.h"

#include <cmath>
#include <numbers>

using namespace roundlay;
using namespace roundlay::hand_made;

namespace {

constexpr double width = 200, height = 220, diameter = 32;

TopTools_ListOfShape tools_of(const std::vector<Bore> &bores) {
    TopTools_ListOfShape tools;
    for (const Bore &bore : bores)
        tools.Append(bore_tool(bore));
    return tools;
}

/// The wood cut by other bores than those of the body.
Solid cut_by(const Body &of, const std::vector<Bore> &bores) {
    return cut_and_held(written_down(boundary_of(of.hewn)), tools_of(bores), of);
}

Bore bore_at(double x, double y, double wide = diameter) {
    return through_bore(x, y, height, wide);
}

/// Bores clear of all, and bores that run into one another.
std::vector<std::vector<Bore>> sets_of_bores() {
    std::vector<Bore> clear, meeting;
    for (int i = 1; i <= 8; ++i) {
        clear.push_back(bore_at(600.0 * i, 100));
        meeting.push_back(bore_at(600.0 * i, 100));
    }
    meeting.push_back(bore_at(620, 100));
    return {clear, meeting};
}

} // namespace

TEST_CASE("A bore that is left out, too wide, or half in the air is noticed in a log of six metres") {
    for (const std::vector<Bore> &bores : sets_of_bores()) {
        const Body log = body(box(6000, width, height), bores, bores.size() == 8);
        INFO(bores.size() << " bores");
        CHECK_NOTHROW(cut_by(log, bores));
        std::vector<Bore> fewer = bores, wider = bores, aside = bores, more = bores;
        fewer.erase(fewer.begin() + 3);
        wider[3] = bore_at(2400, 100, 1.2 * diameter);
        aside[3] = bore_at(2400, 0);
        more.push_back(bore_at(1500, 100));
        for (const std::vector<Bore> &off : {fewer, wider, aside, more})
            CHECK_THROWS_WITH(cut_by(log, off), ContainsSubstring("mm3 of wood where"));
    }
}

TEST_CASE("A saddle cut too wide or not to its end is noticed") {
    Piece log;
    log.blank = {2000, 300, 300};
    log.far.shoulder = 2000;
    ScopeCut saddle;
    saddle.at = {1000, 0, 40};
    saddle.along = {0, 1, 0};
    saddle.radius = 150;
    saddle.cheeks = 120;
    log.cuts = {saddle};
    const Body body = body_of(log);
    const auto cut_with = [&](const ScopeCut &scope) {
        TopTools_ListOfShape tools;
        tools.Append(scope_tool(scope, log.blank));
        return cut_and_held(written_down(boundary_of(body.planed)), tools, body);
    };
    CHECK_NOTHROW(cut_with(saddle));
    ScopeCut wide = saddle, high = saddle;
    wide.cheeks = 125;
    high.at.z = 42;
    CHECK_THROWS_AS(cut_with(wide), std::runtime_error);
    CHECK_THROWS_AS(cut_with(high), std::runtime_error);
}

TEST_CASE("Wood within bores that meet or reach into air is that of closed forms") {
    const double disc = std::numbers::pi / 4 * diameter * diameter, r = diameter / 2;
    const double lens = 2 * (r * r * std::acos(10 / r) - 10 * std::sqrt(r * r - 100)); // axes 20 mm apart
    const Body two = body(box(3000, width, height), {bore_at(700, 100), bore_at(720, 100)}, false);
    CHECK(wood_within_bores(two) == Approx((2 * disc - lens) * height).epsilon(5e-3));
    const Body astride = body(stepped(3000, width, height, 800, 90), {bore_at(2200, 100)}, false);
    CHECK(wood_within_bores(astride) == Approx(disc / 2 * (height + height - 90)).epsilon(5e-3));
    const Body edge = body(box(3000, width, height), {bore_at(700, 0)}, false);
    CHECK(wood_within_bores(edge) == Approx(disc / 2 * height).epsilon(5e-3));
    CHECK(bores_taken_whole(two) == Approx(2 * disc * height).epsilon(1e-12));
}

TEST_CASE("A cut that leaves nothing is refused") {
    const Body log = body(box(600, width, height));
    TopTools_ListOfShape all;
    all.Append(written_down(boundary_of(box(600, width, height))));
    CHECK_THROWS_AS(cut_and_held(written_down(boundary_of(log.hewn)), all, log), std::runtime_error);
}
