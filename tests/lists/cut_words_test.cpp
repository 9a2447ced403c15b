#include "exporters/lists/cut_words.h"
#include "tests/support/catch.h"

using namespace roundlay;

namespace {

using Words = std::vector<std::string>;

SeamCut seam(End end, Side side, double from, double to) {
    SeamCut cut;
    cut.end = end;
    cut.side = side;
    cut.x_from = from;
    cut.x_to = to;
    return cut;
}

Bore bore(double x, double z_from, double z_to, bool through) {
    Bore b;
    b.x = x, b.z_from = z_from, b.z_to = z_to, b.diameter = 32, b.through = through;
    return b;
}

Piece plain() {
    Piece piece;
    piece.blank = {4000, 200, 220};
    piece.datum = {EndKind::corner, "AB", 200};
    piece.far = {EndKind::jamb, "door", 4000};
    return piece;
}

} // namespace

TEST_CASE("a tail, a jamb, a sill and bores are said in words") {
    Piece piece = plain();
    piece.cuts = {seam(End::datum, Side::top, -1, 200),
                  seam(End::datum, Side::under, -1, 200),
                  BoxCut{BoxUse::sill, {{1200, -10, 130}, {2100, 210, 230}}, "window"},
                  bore(3500, 0, 220, true),
                  bore(600, 0, 220, true),
                  bore(1000, 105, 220, false)};
    CHECK(cut_words(piece, {}) ==
          Words{"left end: tail cut on top and underside, shoulder 200 mm from the end",
                "sill cut 90 mm deep from the top from 1200 mm to 2100 mm",
                "2 peg bores 32 mm right through at 600 mm, 3500 mm",
                "1 peg bore 32 mm 115 mm deep from the top at 1000 mm", "right end: square at a jamb"});
}

TEST_CASE("bores of each use are counted by themselves, and a plural is one") {
    Piece piece = plain();
    for (const auto use : {BoreUse::bolt, BoreUse::rod, BoreUse::wire, BoreUse::hole})
        for (const double x : {700.0, 900.0}) {
            if (use == BoreUse::rod && x > 800) continue;
            piece.cuts.emplace_back(bore(x, 0, 220, true));
            std::get<Bore>(piece.cuts.back()).use = use;
        }
    CHECK(cut_words(piece, {}) ==
          Words{"left end: square", "2 bolt bores 32 mm right through at 700 mm, 900 mm",
                "1 rod bore 32 mm right through at 700 mm",
                "2 wiring bores 32 mm right through at 700 mm, 900 mm",
                "2 holes as found 32 mm right through at 700 mm, 900 mm", "right end: square at a jamb"});
}

TEST_CASE("an overhanging end is a housed notch, a thin half log stands square against the wall") {
    Piece piece = plain();
    piece.far = {EndKind::butt, "BC", 4000};
    piece.cuts = {seam(End::datum, Side::under, 100, 300), seam(End::datum, Side::under, 100, 300)};
    CHECK(cut_words(piece, {}) == Words{"left end: housed notch on the underside from 100 mm to 300 mm",
                                        "right end: square against the crossing wall"});
}

TEST_CASE("a notch on top and underside is said over both, whichever reaches further to either side") {
    for (const bool top_wider : {true, false}) {
        Piece piece = plain();
        piece.cuts = {seam(End::datum, Side::top, top_wider ? 100 : 120, top_wider ? 300 : 280),
                      seam(End::datum, Side::under, top_wider ? 120 : 100, top_wider ? 280 : 300)};
        CHECK(cut_words(piece, {}).front() ==
              "left end: housed notch on top and underside from 100 mm to 300 mm");
    }
}

TEST_CASE("a sill that falls outward is measured at the inside face") {
    Piece piece = plain(); // 200 mm wide, 220 mm high
    BoxCut sill{BoxUse::sill, {{1200, -10, 130}, {2100, 210, 230}}, "window"};
    sill.fall = 0.1;
    for (const double from : {0.0, 200.0, 150.0}) {
        // Its floor is at 130 where it falls from, and higher at the inside face by a tenth of the way.
        sill.fall_from = from;
        const int deep = from == 0 ? 70 : from == 200 ? 90 : 85;
        piece.cuts = {sill};
        CHECK(cut_words(piece, {}).at(1) ==
              "sill cut " + std::to_string(deep) +
                  " mm deep from the top from 1200 mm to 2100 mm, falling 20 mm outward");
    }
}

TEST_CASE("header cuts and openings within one log are said from their own side") {
    Piece piece = plain();
    piece.cuts = {BoxCut{BoxUse::header, {{-50, -10, -10}, {900, 210, 60}}, "door"},
                  BoxCut{BoxUse::through, {{1000, -10, 50}, {1500, 210, 150}}, "vent"},
                  seam(End::far, Side::top, 3800, 4001)};
    const Words words = cut_words(piece, {});
    CHECK(words == Words{"left end: square", "header cut 60 mm up from the underside from 0 mm to 900 mm",
                         "opening cut 50 mm up to 150 mm over the underside from 1000 mm to 1500 mm",
                         "right end: tail cut on top, shoulder 200 mm from the end"});
}

TEST_CASE("the slanting faces of a tapered log are said first, by what is hewn away at either end") {
    Piece piece = plain();
    // Top 220 mm high at the left end and 180 mm at the right; outside face 0 and 20 mm in; 4 m apart.
    piece.cuts = {FaceCut{LogFace::top, plane_over(220, -0.01, 0)},
                  FaceCut{LogFace::outside, Plane{unit({0.005, -1, 0}), 0}}};
    const Words words = cut_words(piece, {});
    REQUIRE(words.size() == 4);
    CHECK(words[0] == "top hewn back 0 mm at the left end, 40 mm at the right end");
    CHECK(words[1] == "outside face hewn back 0 mm at the left end, 20 mm at the right end");
    piece.cuts = {FaceCut{LogFace::under, plane_over(15, -15.0 / 4000, 0).flipped()},
                  FaceCut{LogFace::inside, Plane{unit({0.0025, 1, 0}), 200 * unit({0.0025, 1, 0}).y}}};
    CHECK(cut_words(piece, {})[0] == "underside hewn back 15 mm at the left end, 0 mm at the right end");
    CHECK(cut_words(piece, {})[1] == "inside face hewn back 0 mm at the left end, 10 mm at the right end");
    // Of a log that lies at a slant, off the slanting stick that is ordered for it: both faces rise 40 mm in
    // 4 m.
    piece.cuts = {FaceCut{LogFace::top, plane_over(160, 0.01, 0)},
                  FaceCut{LogFace::under, plane_over(0, 0.01, 0).flipped()}};
    CHECK(cut_words(piece, {}) ==
          Words{"left end: square", "right end: square at a jamb"}); // nothing to tell
}

TEST_CASE("words follow the shell's units") {
    Piece piece = plain();
    piece.cuts = {seam(End::datum, Side::top, 0, 8 * 25.4)};
    const Voice feet({Language::english, UnitSystem::imperial});
    CHECK(cut_words(piece, feet).front() == "left end: tail cut on top, shoulder 8\" from the end");
}

TEST_CASE("ends and kinds have the trade's names") {
    CHECK(place_of({EndKind::corner, "AB", 0}, Voice()) == "corner AB");
    CHECK(place_of({EndKind::jamb, "front door", 0}, Voice()) == "jamb of front door");
    CHECK(place_of({EndKind::jamb, "", 0}, Voice()) == "jamb");
    CHECK(place_of({EndKind::butt, "AB", 0}, Voice()) == "against the wall at corner AB");
    Piece piece = plain();
    Layout layout;
    layout.rounds = 5;
    CHECK(kind_of(layout, piece, Voice()) == "sill log");
    piece.round = 5;
    CHECK(kind_of(layout, piece, Voice()) == "plate log");
    piece.round = 3;
    CHECK(kind_of(layout, piece, Voice()) == "log");
    piece.log = LogKind::half_start;
    CHECK(kind_of(layout, piece, Voice()) == "half log");
    piece.island = true;
    CHECK(kind_of(layout, piece, Voice()) == "island");
}

TEST_CASE("a notch of a wall that the log runs past is no end, and moves no shoulder") {
    Piece piece = plain(); // 4 m, left end at corner AB, right end at a jamb
    piece.cuts = {seam(End::datum, Side::top, -1, 200), seam(End::far, Side::top, 2900, 3100),
                  seam(End::far, Side::under, 2900, 3100), seam(End::datum, Side::top, 1000, 1200)};
    for (std::size_t i = 1; i < 4; ++i) {
        std::get<SeamCut>(piece.cuts[i]).runs_on = true;
        std::get<SeamCut>(piece.cuts[i]).corner = i < 3 ? "AQ" : "AP";
    }
    CHECK(cut_words(piece, {}) ==
          Words{"left end: tail cut on top, shoulder 200 mm from the end",
                "housed notch on top from 1000 mm to 1200 mm at corner AP",
                "housed notch on top and underside from 2900 mm to 3100 mm at corner AQ",
                "right end: square at a jamb"});
    piece.far = {EndKind::corner, "BC", 4000};
    piece.cuts.emplace_back(seam(End::far, Side::top, 3800, 4001));
    CHECK(cut_words(piece, {}).back() == "right end: tail cut on top, shoulder 200 mm from the end");
}

TEST_CASE("pockets are said from the left, each with its height from the side that it opens to") {
    Piece piece = plain(); // 200 mm wide, 220 mm high
    const auto pocket = [](double x, double bed, double top) {
        PocketCut cut;
        cut.x = x, cut.y_face = 200, cut.y_back = 125, cut.half_at_face = cut.half_at_back = 50;
        cut.bed = plane_over(bed, 0, 0), cut.z_top = top;
        return cut;
    };
    piece.cuts = {pocket(3000, 190, 400), pocket(600, -50, 150), pocket(1200, -50, 300),
                  pocket(1800, 40, 180)};
    CHECK(cut_words(piece, {}) == Words{"left end: square",
                                        "pocket 100 mm wide, 75 mm into the inside face, 150 mm up from the "
                                        "underside, middle 600 mm from the left end",
                                        "pocket 100 mm wide, 75 mm into the inside face, through the log's "
                                        "height, middle 1200 mm from the left end",
                                        "pocket 100 mm wide, 75 mm into the inside face, 40 mm up to 180 mm "
                                        "over the underside, middle 1800 mm from the "
                                        "left end",
                                        "pocket 100 mm wide, 75 mm into the inside face, 30 mm deep from the "
                                        "top, middle 3000 mm from the left end",
                                        "right end: square at a jamb"});
}
