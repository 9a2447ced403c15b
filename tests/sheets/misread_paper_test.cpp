// Reading back notices what is wrong on paper.
#include "exporters/sheets/cut_sheet/cut_sheet.h"
#include "exporters/sheets/pdf/pdf.h"
#include "kernel/document/document.h"
#include "tests/sheets/support/checks.h"
#include "tests/sheets/support/log.h"
#include "tests/sheets/support/paper_compare.h"
#include "tests/sheets/support/paper_reader.h"
#include "tests/sheets/support/read_back.h"
#include "tests/support/catch.h"

using namespace roundlay;
using namespace roundlay::sheets;
using namespace roundlay::test;

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
