// Joists and the beams under them, in figures worked out by hand.

#include "kernel/shell/shapes.h"
#include "tests/support/findings.h"
#include "tests/support/floored.h"
#include "tests/support/pieces.h"

#include <regex>

using namespace roundlay;
using roundlay::test::piece;
using test::floored;
using test::laid;
using test::places;
using test::timbers;

namespace {

/// Joists 120 mm wide at the butt and 80 at the tip, 180 and 160 high, 3760 long, lying 80 mm in walls A and
/// C.
Shell tapered() {
    Shell shell = floored();
    shell.floors[0].joist.width = Length::mm(120);
    shell.floors[0].tip_width = Length::mm(80);
    shell.floors[0].tip_height = Length::mm(160);
    return shell;
}

Beam beam(double from_wall, double size) {
    return {Length::mm(from_wall), {Length::mm(size), Length::mm(size)}};
}

std::vector<BoxCut> seats(const Piece &p) {
    std::vector<BoxCut> all;
    for (const Cut &cut : p.cuts)
        if (const auto *box = std::get_if<BoxCut>(&cut); box && box->use == BoxUse::seat) all.push_back(*box);
    return all;
}

} // namespace

TEST_CASE("The last joist keeps 25 mm from the room's side, and none is laid nearer") {
    // The room is 4600 mm wide: a joist 100 mm wide keeps that with its middle at 4525.
    Shell shell = floored();
    shell.floors[0].spacing = Length::mm(1000);
    shell.floors[0].first = Length::mm(525);
    CHECK(places(laid(shell)) == std::vector<double>{525, 1525, 2525, 3525, 4525});
    shell.floors[0].first = Length::mm(526);
    CHECK(places(laid(shell)) == std::vector<double>{526, 1526, 2526, 3526});
}

TEST_CASE("No joist is laid that would stand in a partition with a part of its width") {
    // The partition takes from 1700 to 1900 mm of the room's width.
    Shell shell = floored();
    shell.partitions = {test::partition("P", "A", Length::mm(2000), "C")};
    const auto from = [&](double first) {
        shell.floors[0].first = Length::mm(first);
        return places(laid(shell));
    };
    CHECK(from(749) == std::vector<double>{749, 1349, 2549, 3149, 3749, 4349}); // 1949: 1 mm too near
    CHECK(from(750) == std::vector<double>{750, 1350, 1950, 2550, 3150, 3750, 4350});
    CHECK(from(450) == std::vector<double>{450, 1050, 1650, 2250, 2850, 3450, 4050});
    CHECK(from(451) == std::vector<double>{451, 1051, 2251, 2851, 3451, 4051}); // 1651
}

TEST_CASE("A beam's top lies under tapered joists where they are least high over it") {
    Shell shell = tapered();
    const auto top = [&](double from_wall) {
        shell.floors[0].beams = {beam(from_wall, 150)};
        const Layout layout = laid(shell);
        const Piece &p = piece(layout, "G-B01");
        return p.frame.origin.z + p.blank.height;
    };
    // Butts lie toward the longer span. Over the beam's far edge, 75 mm past its middle and 80 of bearing on:
    CHECK(top(2200) == Approx(560 - (180 - 20 * (80 + 2200 + 75.0) / 3760)));
    // The other way about over its near edge.
    CHECK(top(1400) == Approx(560 - (160 + 20 * (80 + 1400 - 75.0) / 3760)));
}

TEST_CASE("A tapered joist has a seat for each beam that it runs over, and names it") {
    Shell shell = tapered();
    shell.floors[0].beams = {beam(1200, 150), beam(2300, 150)};
    const Layout layout = laid(shell);
    for (const Timber &t : timbers(layout, TimberUse::joist)) {
        const std::vector<BoxCut> cut = seats(layout.pieces[t.piece]);
        REQUIRE(cut.size() == 2);
        CHECK(cut[0].opening == "G-B01");
        CHECK(cut[0].box.low.x == Approx(80 + 1200 - 75));
        CHECK(cut[1].opening == "G-B02");
        CHECK(cut[1].box.high.x == Approx(80 + 2300 + 75));
    }
}

TEST_CASE("The side faces of a tapered joist are planes with unit normals, even about its middle") {
    const Layout layout = laid(tapered());
    int seen = 0;
    for (const Timber &t : timbers(layout, TimberUse::joist)) {
        const Piece &p = layout.pieces[t.piece];
        for (const Cut &cut : p.cuts) {
            const auto *face = std::get_if<FaceCut>(&cut);
            if (!face || face->face == LogFace::under) continue;
            const Vec3 n = face->plane.normal;
            CHECK(length(n) == Approx(1).margin(1e-12));
            // half of 120 mm at the butt and of 80 at the tip, to each side of the middle at 60
            const double at_tip = (face->plane.offset - n.x * (p.butt_at_datum ? 3760 : 0)) / n.y;
            CHECK(std::abs(at_tip - 60) == Approx(40));
            ++seen;
        }
    }
    CHECK(seen == 14);
}

TEST_CASE("A trimmed joist past an opening lies on the beam that is under it, not on the first") {
    Shell shell = floored();
    shell.floors[0].beams = {beam(1000, 200), beam(2800, 200)};
    shell.floors[0].openings = {
        {"stair", Length::mm(1500), Length::mm(1500), Length::mm(1400), Length::mm(600)}};
    const Layout layout = laid(shell);
    int before = 0, behind = 0;
    for (const Timber &t : timbers(layout, TimberUse::trimmed)) {
        REQUIRE(t.rests.size() == 1);
        const bool past = t.from.y > 0; // from the trimmer's side at 2200
        (past ? behind : before)++;
        const Timber &under = layout.timbers[t.rests[0].beam];
        CHECK(under.use == TimberUse::beam);
        CHECK(under.from.y == Approx(past ? 2800 : 1000));
        CHECK(t.rests[0].at == Approx(past ? 600 : 1000));
        CHECK(layout.pieces[t.piece].below.back() == (past ? "G-B02" : "G-B01"));
    }
    CHECK(before == 2);
    CHECK(behind == 2);
}

TEST_CASE("A beam whose end no wall carries is told the nearest places where it fits") {
    // Joists from A to E of an L: up to wall C beams reach wall B, beyond it wall D. The room's depth begins
    // at A's inside face; C's notches take 2000 to 2200 of wall B and of D, 1800 to 2000 in the room.
    Shell shell = floored();
    shell.walls = l_plan(Length::metres(8), Length::metres(6), Length::metres(4), Length::metres(3));
    shell.floors[0].to = "E";
    const auto findings_at = [&](double y) {
        shell.floors[0].beams = {beam(y, 150)};
        return lay_out(shell).findings;
    };
    int told = 0;
    for (double y = 100; y < 5500; y += 90) {
        const Findings refused = findings_at(y);
        const auto found = std::ranges::find_if(refused, [](const Finding &f) {
            return test::message(f).find("no wall square to the beam") != std::string::npos;
        });
        if (found == refused.end()) continue;
        const std::string text = test::message(*found);
        CAPTURE(y, text);
        const std::regex place("at ([0-9]+) mm");
        for (std::sregex_iterator i(text.begin(), text.end(), place), end; i != end; ++i, ++told) {
            const double at = std::stod((*i)[1]);
            INFO(test::words(findings_at(at)));
            CHECK_FALSE(has_errors(findings_at(at)));
            CHECK(std::abs(at - y) > 1);
        }
        CHECK(std::sregex_iterator(text.begin(), text.end(), place) != std::sregex_iterator());
    }
    CHECK(told > 0);
}
