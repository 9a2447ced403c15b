// From paper back to wood: the words of the PDF and where they stand, and nothing else, are read as a person
// at the bench would, and the piece is cut again from the numbers read.

#include "exporters/sheets/cut_sheet/cut_sheet.h"
#include "kernel/document/document.h"
#include "kernel/layout/pieces/stock.h"
#include "kernel/shell/shapes.h"
#include "tests/sheets/support/checks.h"
#include "tests/sheets/support/read_back.h"
#include "tests/support/catch.h"
#include "tests/support/findings.h"
#include "tests/support/shells.h"

#include <algorithm>

using namespace roundlay;
using namespace roundlay::sheets;
using namespace roundlay::test;

namespace {

struct Outcome {
    std::string wrong;
    std::size_t pieces = 0, sheets = 0;
};

Outcome all_read_back(const LaidShell &laid, std::optional<Paper> paper) {
    Outcome all;
    CutSheetOptions options;
    options.paper = paper;
    for (const Model &model : laid.layout.models) {
        std::string wrong;
        try {
            wrong = read_back(laid, model, options, all.sheets);
        } catch (const std::exception &cause) {
            wrong = std::string(" ") + cause.what();
        }
        ++all.pieces;
        if (!wrong.empty()) all.wrong += laid.layout.pieces[model.pieces[0]].tag + ":" + wrong + "\n";
    }
    return all;
}

Shell small_house(Length overhang) {
    Shell shell = hewn_shell("Larch Hollow",
                             l_plan(Length::mm(6437), Length::mm(5831), Length::mm(2800), Length::mm(3100)),
                             Length::mm(187), 8, Length::mm(243.5), Length::mm(18));
    shell.notch.overhang = overhang;
    shell.openings = {window("A", 1800, 700, 830, 800), window("A", 3700, 700, 830, 800)};
    for (Opening &opening : shell.openings)
        opening.name = "window";
    shell.floors = {tailed_joists("G", "A", "E", 1715, {Length::mm(96), Length::mm(173)}, 71, 1.0 / 7)};
    return shell;
}

/// A T of 36 ft by 24 ft with a partition, a door beside it and two windows with short logs between them.
Shell farm_house() {
    Shell shell = begun_in(UnitSystem::imperial);
    shell.name = "Alder Bank";
    give_walls(
        shell,
        t_plan(Length::feet(36), Length::feet(24), Length::feet(12), Length::feet(12), Length::feet(8)),
        Length::inches(7), 9, Length::inches(9.25), Length::inches(1));
    shell.partitions = {partition("P", "A", Length::feet(16), "E")};
    const auto in = [](double inches) { return Length::inches(inches); };
    shell.openings = {hole("A", in(48), in(2), in(36), in(63)), hole("B", in(60), in(27), in(32), in(38)),
                      hole("B", in(112), in(27), in(32), in(38))};
    return shell;
}

Shell tapered_bay() {
    Shell shell = small_house(Length::mm(20));
    shell.walls = test::bay_plan(Length::mm(9000), Length::mm(6000), Length::mm(3000), Length::mm(1800),
                                 Length::mm(2000), 45);
    shell.floors.clear();
    shell.openings.clear();
    shell.notch.slope = Slope::rise_per_run(1.0 / 10);
    shell.logs.butt_height = Length::mm(236);
    shell.logs.tip_height = Length::mm(213);
    shell.logs.tip_width = Length::mm(161);
    return shell;
}

} // namespace

TEST_CASE("the numbers on paper, read back from the PDF, cut the same piece again") {
    for (const double overhang : {0.0, 90.0})
        for (const auto paper : {std::optional<Paper>(), std::optional(Paper::a4)}) {
            const Outcome read = all_read_back(test::laid(small_house(Length::mm(overhang))), paper);
            CHECK(read.wrong == "");
            CHECK(read.pieces >= 20);
            if (paper) CHECK(read.sheets > read.pieces); // some need more than one
        }
}

TEST_CASE("feet and inches on paper cut the same piece again, over several sheets too") {
    for (const auto paper : {std::optional<Paper>(), std::optional(Paper::letter)}) {
        const Outcome read = all_read_back(test::laid(farm_house()), paper);
        CHECK(read.wrong == "");
        CHECK(read.pieces >= 30);
        CHECK(read.sheets > read.pieces);
    }
}

TEST_CASE("logs that taper are cut the same again from their paper") {
    Shell shell = small_house(Length::mm(0));
    shell.floors.clear();
    shell.openings.clear();
    shell.logs.butt_height = Length::mm(236);
    shell.logs.tip_height = Length::mm(213);
    shell.logs.tip_width = Length::mm(171);
    const Outcome read = all_read_back(test::laid(shell), std::nullopt);
    CHECK(read.wrong == "");
    CHECK(read.pieces >= 10);
}

TEST_CASE("logs of walls that are not square are cut the same again from their paper") {
    Shell shell = small_house(Length::mm(0));
    shell.walls = test::bay_plan(Length::mm(9000), Length::mm(6000), Length::mm(3000), Length::mm(1800),
                                 Length::mm(2000), 45);
    shell.floors.clear();
    shell.openings.clear();
    const Outcome read = all_read_back(test::laid(shell), Paper::a1);
    CHECK(read.wrong == "");
    CHECK(read.pieces >= 10);
}

TEST_CASE("the paper of every demo cuts the same pieces again") {
    for (const std::string &name : test::all_demo_names) {
        const LaidShell laid = test::demo(name);
        const Outcome read = all_read_back(laid, std::nullopt);
        INFO(name);
        CHECK(read.wrong == "");
        CHECK(read.pieces == laid.layout.models.size());
    }
}

TEST_CASE("logs that lie at a slant are cut the same again from their paper, which says what stick they come "
          "from") {
    Shell shell = test::plain_shell();
    shell.notch.slope = Slope::rise_per_run(0);
    shell.logs.butt_height = Length::mm(225);
    shell.logs.tip_height = Length::mm(200);
    shell.logs.butt = LogEnd::left;
    shell.rounds.count = 3; // higher up, tails run past the logs' bodies, which is warned of
    const test::LaidShell laid = test::laid(shell);
    const Outcome read = all_read_back(laid, std::nullopt);
    CHECK(read.wrong == "");
    CHECK(read.pieces > 5);
    // By hand: the log of the third round lies on two that each are 25 mm lower at the right end over 5 m.
    const auto top = std::ranges::find(laid.layout.pieces, "A-03-1", &Piece::tag);
    REQUIRE(top != laid.layout.pieces.end());
    const Stock stock = stock_of(*top);
    CHECK(top->blank.height == Approx(225 + 2 * 25).margin(2));
    CHECK(stock.size.height == Approx(225).margin(1));
    CHECK(stock.size.length ==
          Approx(5000 + 225 * 0.01).margin(1)); // its upright ends over the slant of the nearer face
}

TEST_CASE("logs that taper are cut the same again at corners that are not square") {
    const Outcome read = all_read_back(test::laid(tapered_bay()), std::nullopt);
    CHECK(read.wrong == "");
    CHECK(read.pieces >= 20);
}

TEST_CASE("round logs scoped over one another are cut the same again from their paper") {
    Shell shell = test::round_shell();
    shell.notch.scribe = Length::mm(3);
    shell.openings = {test::window("A", 1800, 420, 900, 500)};
    for (const UnitSystem units : {UnitSystem::metric, UnitSystem::imperial}) {
        shell.units = units;
        const Outcome read = all_read_back(
            test::laid(shell), units == UnitSystem::metric ? std::nullopt : std::optional(Paper::letter));
        CHECK(read.wrong == "");
        CHECK(read.pieces >= 8);
    }
}

TEST_CASE("mended logs and the new wood in them are cut the same again from their paper") {
    Shell shell = small_house(Length::mm(90));
    Mend sole;
    sole.wall = "A", sole.round = 1, sole.kind = MendKind::face, sole.face = LogSide::under;
    sole.from = Length::mm(400), sole.to = Length::mm(1700), sole.depth = Length::mm(52);
    Mend face = sole;
    face.wall = "B", face.round = 3, face.face = LogSide::inside, face.depth = Length::mm(47);
    Mend patch = face;
    patch.round = 5, patch.kind = MendKind::let_in, patch.face = LogSide::outside;
    patch.low = Length::mm(61), patch.high = Length::mm(133);
    Mend top = patch;
    top.round = 4, top.face = LogSide::top, top.low = Length::mm(118), top.high = Length::mm(163);
    top.from = Length::mm(1450), top.to = Length::mm(1600);
    Mend end = sole;
    end.wall = "C", end.round = 4, end.kind = MendKind::splice, end.face = LogSide::top;
    end.from.reset(), end.depth.reset(), end.to = Length::mm(811), end.lap = Length::mm(523);
    end.end = LogEnd::right;
    shell.mends = {sole, face, patch, top, end};
    for (const bool tapers : {false, true}) {
        if (tapers) {
            shell.floors.clear(), shell.openings.clear();
            shell.logs.butt_height = Length::mm(236), shell.logs.tip_height = Length::mm(213);
            shell.logs.tip_width = Length::mm(171);
        }
        const LaidShell laid = test::laid(shell);
        for (const Finding &f : laid.layout.findings)
            if (f.weight == Weight::error) FAIL_CHECK(f.subject + " " + test::message(f));
        const Outcome read = all_read_back(laid, std::nullopt);
        CHECK(read.wrong == "");
        CHECK(read.pieces >= 20);
    }
}
