#include "exporters/sheets/cut_sheet/features.h"
#include "exporters/sheets/cut_sheet/parts.h"
#include "exporters/sheets/cut_sheet/ruler.h"
#include "exporters/sheets/cut_sheet/tables.h"
#include "kernel/layout/lay_out.h"
#include "tests/sheets/support/checks.h"
#include "tests/sheets/support/log.h"
#include "tests/support/catch.h"
#include "tests/support/shells.h"

#include <rapidcheck.h>

#include <algorithm>

using namespace roundlay;
using namespace roundlay::sheets;

namespace {

bool has_level(const std::vector<Level> &all, bool outside, double x, double z) {
    return std::any_of(all.begin(), all.end(), [&](const Level &l) {
        return l.on_outside == outside && std::abs(l.x - x) < 1e-6 && std::abs(l.z - z) < 1e-6;
    });
}

} // namespace

TEST_CASE("the levels of a compound dovetail are those of its stated planes") {
    const Piece log = test::sample_log();
    const Features f = features_of(log);
    REQUIRE(f.notches.size() == 4);
    CHECK(f.notches[0].along == Approx(1.0 / 8));   // rises toward its end
    CHECK(f.notches[0].across == Approx(-1.0 / 8)); // falls to the outside
    CHECK(f.notches[0].tail);
    const auto levels = levels_of(f);
    // top of the datum tail: 165 at the shoulder outside, 25 more over 200 mm to the end and to the inside
    CHECK(has_level(levels, true, 200, 140));
    CHECK(has_level(levels, true, 0, 165));
    CHECK(has_level(levels, false, 200, 165));
    CHECK(has_level(levels, false, 0, 190));
    // the sill cut, once
    CHECK(has_level(levels, true, 2000, 150));
    CHECK_FALSE(has_level(levels, false, 2000, 150));
    CHECK(levels.size() == 17);
}

TEST_CASE("heights of seams are told where the wood of a slanting, tapered log has its corners") {
    // the solid is the same, to the last digit, as that which the STEP file holds (tests/solid)
    std::size_t found = 0;
    CHECK(test::counterexample(test::shells_to_draw(20), [&] {
              const auto mm = [](int low, int high) { return Length::mm(*rc::gen::inRange(low, high)); };
              Shell shell = test::plain_shell();
              shell.walls = test::bay_plan(Length::mm(9000), Length::mm(6000), mm(1800, 2500), mm(1500, 2000),
                                           mm(1500, 1800), *rc::gen::element(30, 45, 60));
              shell.notch.slope = Slope::rise_per_run(*rc::gen::inRange(5, 12) / 100.0);
              shell.notch.overhang = mm(0, 60);
              shell.logs.butt_height = mm(206, 215);
              shell.logs.tip_height = mm(180, 205);
              shell.logs.tip_width = mm(150, 199);
              const Layout layout = lay_out(shell);
              for (const Piece &piece : layout.pieces) {
                  const Body body = body_of(piece);
                  const Features f = features_of(piece);
                  for (const Level &l : levels_of(f)) {
                      const double y = l.on_outside ? f.outside.at(l.x) : f.inside.at(l.x);
                      const auto there = [&](const Vec3 &v) { return length(v - Vec3{l.x, y, l.z}) < 1e-3; };
                      const auto &all = body.hewn.vertices;
                      if (std::none_of(all.begin(), all.end(), there))
                          RC_FAIL(piece.tag + " has no corner at " + std::to_string(l.x) + " " +
                                  std::to_string(l.z));
                      ++found;
                  }
              }
          }) == "");
    CHECK(found > 1000);
}

TEST_CASE("stations are the inner ends of the cuts, each once") {
    const Piece log = test::sample_log();
    std::vector<double> xs;
    for (const Station &s : stations_of(features_of(log)))
        xs.push_back(s.x);
    CHECK(xs == std::vector<double>{200, 2000, 2900, 4800});
}

TEST_CASE("pegs are numbered from the datum end whatever their order in the cuts") {
    Piece log = test::sample_log();
    std::reverse(log.cuts.begin(), log.cuts.end());
    const auto pegs = features_of(log).pegs;
    REQUIRE(pegs.size() == 4);
    CHECK(pegs[0].bore->x == 700);
    CHECK(pegs[3].bore->x == 4300);
    CHECK(pegs[3].number == 4);
}

TEST_CASE("a ruler leaves out only wood in which nothing happens") {
    const Place from{0, 10}, to{5000, 10};
    const std::vector<Place> places{{200, 10}, {2000, 10}, {2900, 10}, {4800, 10}};
    const auto ruler = ruler_for(from, to, places, 0.1, 300, 4);
    REQUIRE(ruler);
    CHECK(ruler->width() == Approx(300));
    for (const double x : {0.0, 200.0, 2000.0, 2900.0, 4800.0, 5000.0}) {
        CHECK(ruler->shows(x));
        CHECK(ruler->shows(std::max(0.0, x - 99)));
        CHECK(ruler->shows(std::min(5000.0, x + 99)));
    }
    CHECK(ruler->at(200) == Approx(20));
    CHECK(ruler->at(5000) == Approx(300));
    CHECK(ruler->at(5000) - ruler->at(4800) == Approx(20));
    CHECK_FALSE(ruler_for(from, to, places, 0.1, 60, 4));
    CHECK_FALSE(ruler_for(from, to, places, 0.1, 200, 1));
    CHECK(ruler_for(from, to, {}, 0.05, 250, 0)->shown().size() == 1);
}

TEST_CASE("a log is divided away from its cuts") {
    const auto parts = divided(Division::evenly, 5000, 2, {{2450, 10}, {2510, 10}},
                               0.12); // 12 mm of paper are 100 mm of wood
    REQUIRE(parts.size() == 2);
    CHECK(parts[0].from == 0);
    CHECK(parts[1].to == 5000);
    CHECK(parts[0].to == parts[1].from);
    CHECK(std::abs(parts[0].to - 2450) >= 100);
    CHECK(std::abs(parts[0].to - 2510) >= 100);
    CHECK(parts[0].to == Approx(2500).margin(200));
}

TEST_CASE("a log is divided where half of what happens along it is on either side") {
    std::vector<Place> places{{5900, 20}};
    for (int i = 1; i <= 8; ++i)
        places.push_back({400.0 * i, 20}); // crowded toward the datum end, 16 mm of paper apart
    const auto parts = divided(Division::by_need, 6000, 2, places, 0.1);
    // 24 mm of paper to the first place, 7 times 40, 44 to the last and 10 more: half of 358 is reached at
    // 1950 mm, and 1880 is the nearest that keeps 12 mm of paper from 2000
    CHECK(parts[0].to == Approx(1880).margin(10));
}

TEST_CASE(
    "a round stick that is thicker than its wall says which faces are hewn, and how far from its middle") {
    const auto flats_of = [](const Shell &shell) {
        const Layout layout = lay_out(shell);
        std::vector<std::string> all;
        for (const Piece &piece : layout.pieces)
            for (const Table &table : steps_tables(features_of(piece), {}, Words(UnitSystem::metric)))
                for (const auto &row : table.rows)
                    if (row[1].starts_with("Hew flat")) all.push_back(row[1]);
        CHECK(layout.pieces.size() > 8);
        return all;
    };
    Shell shell = test::round_shell(); // walls 240 thick
    shell.logs.diameter = Length::mm(300);
    const auto flats = flats_of(shell);
    CHECK(std::ranges::count(flats, "Hew flat, from the stick's middle: outside 120, inside 120") > 8);
    for (const std::string &flat : flats) // lowest and topmost logs are hewn level too
        CHECK(flat.starts_with("Hew flat, from the stick's middle: outside 120, inside 120"));
    shell.logs.diameter = Length::mm(240);
    for (const std::string &flat : flats_of(shell))
        CHECK_FALSE(flat.find("side") != std::string::npos);
    Shell waned = test::plain_shell(); // 200 by 210, out of a stick that is 260 round: all four sides
    waned.logs.diameter = Length::mm(260);
    const auto all = flats_of(waned);
    // half logs lie high or low in their stick
    CHECK(std::ranges::count(
              all, "Hew flat, from the stick's middle: outside 100, inside 100, top 105, under 105") > 8);
    for (const std::string &flat : all)
        CHECK(flat.starts_with("Hew flat, from the stick's middle: outside 100, inside 100, top "));
}
