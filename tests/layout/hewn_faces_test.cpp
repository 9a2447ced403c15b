// What there is to measure from on a log as it is hewn.
#include "kernel/layout/pieces/hewn_faces.h"
#include "tests/support/catch.h"
#include "tests/support/floored.h"
#include "tests/support/shells.h"

#include <cmath>

using namespace roundlay;

TEST_CASE("A round stick thinner than its wall is measured from the planes that touch it") {
    Piece piece;
    piece.blank = {4000, 240, 230};
    piece.cuts = {RoundCut{{0, 120, 115}, {4000, 120, 115}, 100}};
    const HewnFaces faces = hewn_faces(piece);
    CHECK(faces.outermost(1000) == Approx(120 - 100));
    CHECK(faces.innermost(1000) == Approx(120 + 100));
    CHECK(faces.lowest(1000) == Approx(115 - 100));
    CHECK(faces.highest(1000) == Approx(115 + 100));
}

TEST_CASE("A notch whose slanting end is the log's own is open there, at either end") {
    // A log 200 wide whose ends run at 45 degrees: 100 before its middle line on one face and 100 past it on
    // the other.
    Piece piece;
    piece.blank = {1200, 200, 230};
    const double k = std::sqrt(0.5);
    piece.cuts = {FaceCut{LogFace::datum_end, {{-k, k, 0}, 0}},       // x = y
                  FaceCut{LogFace::far_end, {{k, -k, 0}, k * 1000}}}; // x = 1000 + y
    const HewnFaces faces = hewn_faces(piece);
    SeamCut cut;
    cut.skew = 1;
    cut.x_from = 800, cut.x_to = 1100; // on the middle line
    cut.end = End::far, cut.open = true;
    const CutStretch at_far = stretch_of(faces, cut);
    CHECK(at_far.at_far);
    CHECK_FALSE(at_far.at_datum);
    CHECK(at_far.from.outside == Approx(700));
    CHECK(at_far.from.inside == Approx(900));
    CHECK(at_far.to.outside == Approx(1000));
    CHECK(at_far.to.inside == Approx(1200));
    cut.x_from = 100, cut.x_to = 400;
    cut.end = End::datum;
    const CutStretch at_datum = stretch_of(faces, cut);
    CHECK(at_datum.at_datum);
    CHECK_FALSE(at_datum.at_far);
    cut.x_from = 110, cut.x_to = 1090; // 10 of wood are left at either end
    cut.open = false;
    const CutStretch inside = stretch_of(faces, cut);
    CHECK_FALSE(inside.at_datum);
    CHECK_FALSE(inside.at_far);
}

TEST_CASE("an overhang shorter than what the taper takes off a side stays on a log that ends at a slant") {
    Shell shell = test::plain_shell();
    shell.walls = test::bay_plan(Length::mm(9000), Length::mm(6000), Length::mm(3000), Length::mm(1800),
                                 Length::mm(2000), 45);
    shell.logs.tip_width = shell.thickness - Length::mm(40); // 20 off either side at the tip
    shell.notch.overhang = Length::mm(6);
    const Layout layout = test::laid(shell);
    int ends = 0;
    for (const Piece &piece : layout.pieces)
        for (const Cut &cut : piece.cuts)
            if (const SeamCut *seam = std::get_if<SeamCut>(&cut); seam != nullptr && seam->skew != 0) {
                const CutStretch stretch = stretch_of(hewn_faces(piece), *seam);
                CHECK_FALSE((stretch.at_datum || stretch.at_far)); // 6 mm stand past the notch
                ++ends;
            }
    CHECK(ends > 10);
}
