// From paper back to wood: the words of the PDF and where they stand, and nothing else, are read as a person
// at the bench would, and the piece is cut again from the numbers read.

#include "exporters/sheets/cut_sheet/cut_sheet.h"
#include "exporters/sheets/cut_sheet/features.h"
#include "exporters/sheets/pdf/pdf.h"
#include "kernel/shell/shapes.h"
#include "tests/sheets/support/checks.h"
#include "tests/sheets/support/log.h"
#include "tests/sheets/support/paper_reader.h"
#include "tests/support/catch.h"
#include "tests/support/shells.h"

#include <algorithm>
#include <numbers>

using namespace roundlay;
using namespace roundlay::sheets;
using roundlay::test::LaidShell;

namespace {

/// Half of the last digit that is printed.
double precision(UnitSystem units) {
    return units == UnitSystem::metric ? 0.5 : 25.4 / 16 / 2;
}

bool near_levels(const std::vector<Level> &a, const std::vector<Level> &b, double half_digit) {
    constexpr double hair = 0.01;
    if (a.size() != b.size()) return false;
    return std::all_of(a.begin(), a.end(), [&](const Level &l) {
        return std::any_of(b.begin(), b.end(), [&](const Level &o) {
            return o.on_outside == l.on_outside && o.side == l.side &&
                   std::abs(o.x - l.x) <= half_digit + hair && std::abs(o.z - l.z) <= 2 * half_digit + hair;
        });
    });
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
std::string read_back(const LaidShell &shell, const Model &model, std::optional<Paper> paper,
                      std::size_t &sheets) {
    const Piece &piece = shell.layout.pieces[static_cast<std::size_t>(model.pieces[0])];
    const Body body = body_of(piece);
    const double half_digit = precision(shell.shell.units);
    CutSheetOptions options;
    options.paper = paper;
    Book book;
    book.created = 0;
    book.sheets = cut_sheet(shell.shell, shell.layout, model, body, options);
    sheets += book.sheets.size();
    const Piece read = test::piece_on_paper(test::words_of_pdf(write_pdf(book)));
    const Body again = body_of(read);
    std::string wrong;
    if (read.cuts.size() != piece.cuts.size()) wrong += " count of cuts";
    if (!near_levels(levels_of(features_of(piece)), levels_of(features_of(read)), half_digit))
        wrong += " heights";
    if (std::abs(again.volume - body.volume) > printed_precision(body, half_digit)) wrong += " volume";
    if (length(again.centroid - body.centroid) > 4 * half_digit) wrong += " balance point";
    return wrong;
}

struct Outcome {
    std::string wrong;
    std::size_t pieces = 0, sheets = 0;
};

Outcome all_read_back(const LaidShell &laid, std::optional<Paper> paper) {
    Outcome all;
    for (const Model &model : laid.layout.models) {
        std::string wrong;
        try {
            wrong = read_back(laid, model, paper, all.sheets);
        } catch (const std::exception &cause) {
            wrong = std::string(" ") + cause.what();
        }
        ++all.pieces;
        if (!wrong.empty())
            all.wrong +=
                laid.layout.pieces[static_cast<std::size_t>(model.pieces[0])].tag + ":" + wrong + "\n";
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
    for (const std::string &name : test::demo_names) {
        const LaidShell laid = test::demo(name);
        const Outcome read = all_read_back(laid, std::nullopt);
        INFO(name);
        CHECK(read.wrong == "");
        CHECK(read.pieces == laid.layout.models.size());
    }
}

TEST_CASE("reading back notices a wrong number on paper") {
    const Piece log = test::sample_log();
    Piece other = log;
    std::get<BoxCut>(other.cuts[4]).box.low.z += 4;
    const Layout layout = test::layout_of(log);
    Book book;
    book.sheets = cut_sheet({}, layout, layout.models[0], body_of(log), {});
    const Piece read = test::piece_on_paper(test::words_of_pdf(write_pdf(book)));
    CHECK(near_levels(levels_of(features_of(log)), levels_of(features_of(read)), 0.5));
    CHECK_FALSE(near_levels(levels_of(features_of(other)), levels_of(features_of(read)), 0.5));
}
