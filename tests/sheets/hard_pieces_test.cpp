// Cut sheets of pieces made by hand: all that belongs on one, and what no scale fits.
#include "exporters/sheets/drawing/words.h"
#include "kernel/document/document.h"
#include "kernel/layout/fastenings/bore_marks.h"
#include "tests/sheets/support/checks.h"
#include "tests/sheets/support/cut_sheets.h"
#include "tests/sheets/support/log.h"
#include "tests/sheets/support/run.h"
#include "tests/support/catch.h"

#include <map>

using namespace roundlay;
using namespace roundlay::sheets;
using namespace roundlay::test;

TEST_CASE("a log made by hand is drawn with all that belongs on a cut sheet") {
    const auto sheets = sheets_of(test::sample_log(), options_for());
    REQUIRE(sheets.size() == 1);
    for (const char *words : {"Top",
                              "Outside",
                              "Under",
                              "Inside",
                              "Datum end",
                              "Far end",
                              "Isometric, ",
                              "butt",
                              "tip",
                              "up",
                              "Sill cut for east window",
                              "up 1:8",
                              "down 1:8",
                              "25 in 200",
                              "Cut sheet",
                              "A-05-1",
                              "D-06-1",
                              "B-05-1",
                              "A-04-1",
                              "A-06-1",
                              "Balance point",
                              "kg"})
        if (!says(sheets, words)) FAIL_CHECK(words);
    CHECK(sheets[0].size == size_of(Paper::a3));
}

TEST_CASE("numbers are those of the piece, not of the drawing") {
    // worked out by hand from the sample: blank 5000 x 200 x 230, tail 1:8 over 200 mm; its level line at
    // 120, half of 230 in tens
    const auto found = dimensions_on(sheets_of(test::sample_log(), options_for()), Words(UnitSystem::metric));
    const std::map<std::string, int> wanted{{"200", 2},  {"2000", 1}, {"2900", 1}, {"4800", 1},
                                            {"5000", 1}, {"+110", 1}, {"-120", 1}, {"+30", 1}, // and the sill
                                            {"+20", 2},  {"+45", 4},  {"+70", 2},  // tops: 140, 165, 190
                                            {"-30", 2},  {"-55", 4},  {"-80", 2}}; // undersides: 90, 65, 40
    CHECK(compared(found, wanted) == "");
}

TEST_CASE("hard pieces still come out right") {
    Piece log = test::sample_log();
    SECTION("far too long for any listed scale") {
        log.blank.length = 60000;
        for (Cut &cut : log.cuts)
            if (SeamCut *seam = std::get_if<SeamCut>(&cut); seam && seam->end == End::far) {
                seam->seam.offset += seam->seam.normal.x * 55000;
                seam->x_from += 55000;
                seam->x_to += 55000;
            }
    }
    SECTION("a tag of 40 letters and names of neighbours as long") {
        log.tag = "North-Wing-of-the-Old-Barn-Wall-A-005-01";
        log.above = {log.tag + "x", log.tag + "y"};
        std::get<SeamCut>(log.cuts[0]).other = log.tag + "z";
        std::get<BoxCut>(log.cuts[4]).opening =
            "the long low window over the workbench by the east gable of the barn";
    }
    SECTION("sixty pegs") {
        log.cuts.resize(4);
        for (int i = 0; i < 60; ++i)
            log.cuts.emplace_back(peg(260 + 75.0 * i, false));
    }
    SECTION("tiny") {
        log.cuts.clear();
        log.blank = {60, 40, 30};
    }
    SECTION("no cuts at all") {
        log.cuts.clear();
    }
    SECTION("names in other scripts") {
        std::get<BoxCut>(log.cuts[4]).opening =
            "\xE5\x8C\x97\xE7\xAA\x93 \xD0\xBE\xD0\xBA\xD0\xBD\xD0\xBE fen\xC3\xAAtre";
    }
    for (const UnitSystem units : {UnitSystem::metric, UnitSystem::imperial})
        for (const Paper paper : {Paper::a3, Paper::a4, Paper::letter}) {
            const auto sheets = sheets_of(log, options_for(paper), units);
            INFO(name_of(paper));
            REQUIRE_FALSE(sheets.empty());
            CHECK(all_clashes(sheets) == "");
            CHECK_FALSE(says(sheets, "Cannot be drawn"));
            CHECK(compared(dimensions_on(sheets, Words(units)), dimensions_of(log, Words(units))) == "");
        }
}

TEST_CASE("letters that the font lacks are stated on the sheet") {
    Piece log = test::sample_log();
    std::get<BoxCut>(log.cuts[4]).opening = "\xE5\x8C\x97";
    CHECK(says(sheets_of(log, options_for()), "U+5317"));
    CHECK_FALSE(says(sheets_of(test::sample_log(), options_for()), "U+"));
}

TEST_CASE("a piece that cannot be drawn legibly says so and gives its numbers in a table") {
    Piece log = test::sample_log();
    log.blank.height = 8; // as no log is: under the least height at any scale that would fit its length
    log.blank.length = 400000;
    log.cuts.clear();
    const auto sheets = sheets_of(log, options_for(Paper::a4));
    REQUIRE_FALSE(sheets.empty());
    CHECK(says(sheets, "Cannot be drawn legibly"));
    CHECK(all_clashes(sheets) == "");
}
