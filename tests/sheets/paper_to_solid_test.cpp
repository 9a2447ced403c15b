// From paper back to wood: the words of the PDF and where they stand, and nothing else, are read as a person
// at the bench would, and the piece is cut again from the numbers read.

#include "exporters/sheets/cut_sheet/cut_sheet.h"
#include "exporters/sheets/cut_sheet/features.h"
#include "exporters/sheets/pdf/pdf.h"
#include "kernel/document/document.h"
#include "kernel/layout/pieces/stock.h"
#include "kernel/shell/shapes.h"
#include "tests/sheets/support/checks.h"
#include "tests/sheets/support/log.h"
#include "tests/sheets/support/paper_compare.h"
#include "tests/sheets/support/paper_reader.h"
#include "tests/support/catch.h"
#include "tests/support/shells.h"

#include <rapidcheck.h>

#include <algorithm>
#include <map>
#include <numbers>

using namespace roundlay;
using namespace roundlay::sheets;
using roundlay::test::LaidShell;

namespace {

/// Half of the last digit that is printed.
double precision(UnitSystem units) {
    return units == UnitSystem::metric ? 0.5 : 25.4 / 16 / 2;
}

/// Half a digit on every face, a whole one on seams, and half of one on the diameters of the bores.
double printed_precision(const Body &body, double half_digit) {
    double area_of_all = 0;
    for (const Face &face : body.hewn.faces)
        area_of_all += area(body.hewn, face);
    double bores = 0;
    for (const Bore &b : body.bores)
        bores += std::numbers::pi * (b.diameter / 2 * (b.z_to - b.z_from) + b.diameter * b.diameter / 4);
    return (area_of_all + bores) * half_digit;
}

/// What differs between the piece and what its sheets say; empty where nothing does.
std::string read_back(const LaidShell &shell, const Model &model, const CutSheetOptions &options,
                      std::size_t &sheets) {
    const Piece &piece = shell.layout.pieces[model.pieces[0]];
    const Body body = body_of(piece);
    const double half_digit = precision(shell.shell.units);
    Book book;
    book.created = 0;
    book.sheets = cut_sheet(shell.shell, shell.layout, model, body, options);
    sheets += book.sheets.size();
    const Piece read = test::piece_on_paper(test::words_of_pdf(write_pdf(book)));
    const Body again = body_of(read);
    std::string wrong = test::differences(piece, read, half_digit);
    if (std::abs(again.volume - body.volume) > printed_precision(body, half_digit)) wrong += " volume";
    return wrong;
}

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
    Shell shell;
    shell.name = "Larch Hollow";
    shell.walls = l_plan(Length::mm(6437), Length::mm(5831), Length::mm(2800), Length::mm(3100));
    shell.thickness = Length::mm(187);
    shell.rounds.count = 8;
    shell.rounds.pitch = Length::mm(243.5);
    shell.rounds.gap = Length::mm(18);
    shell.notch.overhang = overhang;
    Opening opening;
    opening.wall = "A";
    opening.name = "window";
    opening.from_left = Length::mm(1800);
    opening.sill = Length::mm(700);
    opening.height = Length::mm(800);
    opening.width = Length::mm(830);
    shell.openings = {opening};
    opening.from_left = Length::mm(3700);
    shell.openings.push_back(opening);
    Floor floor;
    floor.name = "G";
    floor.from = "A";
    floor.to = "E";
    floor.level = Length::mm(1715);
    floor.joist = {Length::mm(96), Length::mm(173)};
    floor.bearing = Length::mm(71);
    floor.pocket = PocketKind::tailed;
    floor.tail = Slope::rise_per_run(1.0 / 7);
    shell.floors = {floor};
    return shell;
}

/// A T of 36 ft by 24 ft with a partition, a door beside it and two windows with short logs between them.
Shell farm_house() {
    Shell shell = begun_in(UnitSystem::imperial);
    shell.name = "Alder Bank";
    shell.walls =
        t_plan(Length::feet(36), Length::feet(24), Length::feet(12), Length::feet(12), Length::feet(8));
    shell.thickness = Length::inches(7);
    shell.rounds.count = 9;
    shell.rounds.pitch = Length::inches(9.25);
    shell.rounds.gap = Length::inches(1);
    Partition partition;
    partition.name = "P";
    partition.from = "A";
    partition.from_left = Length::feet(16);
    partition.to = "E";
    shell.partitions = {partition};
    const auto opening = [](const char *wall, double from, double sill, double width, double height) {
        Opening o;
        o.wall = wall;
        o.from_left = Length::inches(from);
        o.sill = Length::inches(sill);
        o.width = Length::inches(width);
        o.height = Length::inches(height);
        return o;
    };
    shell.openings = {opening("A", 48, 2, 36, 63), opening("B", 60, 27, 32, 38),
                      opening("B", 112, 27, 32, 38)};
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

/// What random shells were read, and why some were not.
struct Tally {
    std::size_t shells = 0, pieces = 0;
    std::map<std::string, std::size_t> unread;

    std::size_t unread_pieces() const {
        std::size_t sum = 0;
        for (const auto &[why, count] : unread)
            sum += why.starts_with("shell: ") ? 0 : count;
        return sum;
    }
    std::string told() const {
        std::string text = std::to_string(shells) + " shells, " + std::to_string(pieces) + " pieces";
        for (const auto &[why, count] : unread)
            text += "\n" + std::to_string(count) + " " + why;
        return text;
    }
};

CutSheetOptions any_options() {
    CutSheetOptions options;
    options.paper = *rc::gen::element(Paper::a4, Paper::a3, Paper::letter, Paper::tabloid, Paper::a2);
    options.angle = *rc::gen::element(Angle::third, Angle::first);
    return options;
}

/// Holds some pieces against their sheets. Inside a property.
void read_some(const LaidShell &shell, const CutSheetOptions &options, Tally &tally) {
    ++tally.shells;
    if (shell.layout.models.empty()) {
        ++tally.unread["shell: cannot be built"];
        return;
    }
    for (int i = 0; i < 3; ++i) {
        const Index<Model> one(*rc::gen::inRange<std::size_t>(0, shell.layout.models.size()));
        const Model &model = shell.layout.models[one];
        const std::string &tag = shell.layout.pieces[model.pieces[0]].tag;
        std::string wrong;
        std::size_t sheets = 0;
        ++tally.pieces;
        try {
            wrong = read_back(shell, model, options, sheets);
        } catch (const std::runtime_error &cause) {
            ++tally.unread[cause.what()];
            continue;
        }
        if (!wrong.empty()) RC_FAIL(tag + ":" + wrong + "\n" + write_document(shell.shell));
    }
}

TEST_CASE("the paper of any shell cuts the same pieces again") {
    Tally tally;
    CHECK(test::counterexample(test::shells_to_draw(20), [&] {
              Shell shell = test::any_of_all_shells();
              shell.units = *rc::gen::element(UnitSystem::metric, UnitSystem::imperial);
              read_some(test::laid(shell), any_options(), tally);
          }) == "");
    INFO(tally.told());
    CHECK(tally.unread["shell: cannot be built"] * 4 <= 3 * tally.shells);
    // Where lines lead from numbers, words alone cannot place them: one piece in fifty, and two more, as a
    // run draws some fifty.
    CHECK(tally.unread_pieces() * 50 <= tally.pieces + 100);
}

/// The piece whose sheet is another's.
std::string read_as(const Piece &drawn, const Piece &held_against) {
    const Layout layout = test::layout_of(drawn);
    Book book;
    book.sheets = cut_sheet({}, layout, layout.models.front(), body_of(drawn), {});
    return test::differences(held_against, test::piece_on_paper(test::words_of_pdf(write_pdf(book))), 0.5);
}

TEST_CASE("reading back notices a wrong number on paper") {
    const Piece log = test::sample_log();
    CHECK(read_as(log, log) == "");
    const auto changed = [&](auto change) {
        Piece other = log;
        change(other);
        return read_as(other, log);
    };
    const auto seam = [](Piece &p) -> SeamCut & { return std::get<SeamCut>(p.cuts[0]); };
    const auto box = [](Piece &p) -> Box3 & { return std::get<BoxCut>(p.cuts[4]).box; };
    const auto bore = [](Piece &p) -> Bore & { return std::get<Bore>(p.cuts.back()); };
    CHECK(changed([&](Piece &p) { p.cuts.pop_back(); }) != "");
    CHECK(changed([&](Piece &p) { seam(p).x_to += 2; }) != "");
    CHECK(changed([&](Piece &p) { seam(p).seam.offset += 2; }) != "");
    CHECK(changed([&](Piece &p) { box(p).low.z += 2; }) != "");
    CHECK(changed([&](Piece &p) { box(p).high.x += 2; }) != "");
    CHECK(changed([&](Piece &p) { bore(p).x += 2; }) != "");
    CHECK(changed([&](Piece &p) { bore(p).y += 2; }) != "");
    CHECK(changed([&](Piece &p) { bore(p).diameter += 2; }) != "");
    CHECK(changed([&](Piece &p) { bore(p).z_from += 2; }) != "");
    CHECK(changed([&](Piece &p) { bore(p).through = true; }) != "");
}

TEST_CASE("reading back notices a pocket that is not where its sheet says, or not as large") {
    Piece log = test::sample_log();
    PocketCut cut;
    cut.x = 1100;
    cut.y_face = 200;
    cut.y_back = 130;
    cut.half_at_face = 40;
    cut.half_at_back = 50;
    cut.bed = plane_over(90, 0, 0);
    cut.z_top = 230;
    cut.holds = "G-J01";
    log.cuts.emplace_back(cut);
    CHECK(read_as(log, log) == "");
    const auto changed = [&](auto change) {
        Piece other = log;
        change(std::get<PocketCut>(other.cuts.back()));
        return read_as(other, log);
    };
    CHECK(changed([](PocketCut &c) { c.x += 2; }) != "");
    CHECK(changed([](PocketCut &c) { c.y_back -= 2; }) != "");
    CHECK(changed([](PocketCut &c) { c.half_at_face += 1; }) != "");
    CHECK(changed([](PocketCut &c) { c.half_at_back += 1; }) != "");
    CHECK(changed([](PocketCut &c) { c.bed.offset += 3; }) != "");
    CHECK(changed([](PocketCut &c) { c.holds = "G-J02"; }) != "");
}
