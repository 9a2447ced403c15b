#include "exporters/sheets/cut_sheet/features.h"
#include "exporters/sheets/cut_sheet/tables.h"
#include "kernel/layout/lay_out.h"
#include "kernel/shell/shapes.h"
#include "tests/support/catch.h"
#include "tests/support/shells.h"

#include <algorithm>
#include <cmath>
#include <string>

using namespace roundlay;
using namespace roundlay::sheets;

namespace {

Length mm(double v) {
    return Length::mm(v);
}

/// The log under a wide window, 300 wide at its butt and 180 at its tip over 6 m.
Piece narrowing_log_under_a_sill() {
    Shell shell = test::plain_shell();
    shell.walls = rectangle_plan(mm(6000), mm(5000));
    shell.thickness = mm(300);
    shell.rounds.count = 8, shell.rounds.pitch = mm(300), shell.rounds.gap = mm(30);
    shell.notch.kind = NotchKind::square_lap;
    shell.logs.butt_width = mm(300), shell.logs.tip_width = mm(180);
    shell.openings = {test::window("A", 1000, 800, 4000, 1000)};
    shell.trim.sill_slope = Slope::rise_per_run(0.2);
    const Layout layout = lay_out(shell);
    const auto piece = std::ranges::find_if(layout.pieces, [](const Piece &p) { return p.tag == "A-03-1"; });
    REQUIRE(piece != layout.pieces.end());
    return *piece;
}

} // namespace

TEST_CASE("a sill in a log that narrows is measured where its jambs stand") {
    // By hand: the wall's inside face is 300 in, there the floor lies at 800 - 600 = 200. The log is 280 wide
    // at 1000, from 10 to 290 in the wall, and 200 wide at 5000, from 50 to 250. It falls 1 in 5.
    const Piece log = narrowing_log_under_a_sill();
    const Features f = features_of(log);
    const auto sill =
        std::ranges::find_if(f.boxes, [](const BoxPart &b) { return b.cut->use == BoxUse::sill; });
    REQUIRE(sill != f.boxes.end());
    CHECK(sill->floor_from.outside == Approx(200 - 290 * 0.2));
    CHECK(sill->floor_from.inside == Approx(200 - 10 * 0.2));
    CHECK(sill->floor_to.outside == Approx(200 - 250 * 0.2));
    CHECK(sill->floor_to.inside == Approx(200 - 50 * 0.2));

    // from the level line, at 140: half of 270 is 135, in tens 140
    std::string cut, rise;
    for (const Table &table : steps_tables(f, {}, Words(UnitSystem::metric)))
        for (const auto &row : table.rows)
            if (row[1].find("Sill cut") == 0) cut = row[1], rise = row[5];
    CHECK_THAT(cut, Catch::Contains("+2 outside and +58 inside at 1000, +10 outside and +50 inside at 5000"));
    CHECK(rise == "56 in 280 to 40 in 200");

    std::string told;
    for (const Level &l : levels_of(f))
        if (std::abs(l.x - 1000) < 1e-6 || std::abs(l.x - 5000) < 1e-6)
            told += (l.on_outside ? "out " : "in ") + std::to_string(std::lround(l.x)) + " " +
                    std::to_string(std::lround(l.z)) + "; ";
    CHECK(told == "out 1000 142; in 1000 198; out 5000 150; in 5000 190; ");
}

TEST_CASE("a notch that a log runs on past says up to which end its seam rises") {
    Shell shell = test::plain_shell();
    shell.partitions = {test::partition("P", "A", mm(2000), "C")};
    const Layout layout = lay_out(shell);
    int told = 0;
    for (const Piece &p : layout.pieces)
        for (const Table &table : steps_tables(features_of(p), {}, Words(UnitSystem::metric)))
            for (const auto &row : table.rows) {
                if (row[1].find("notch at ") == std::string::npos) continue;
                const bool slopes = row[2].starts_with("up ") || row[2].starts_with("down ");
                CHECK(slopes == row[2].ends_with(" to the far end"));
                told += slopes;
            }
    CHECK(told > 0);
}
