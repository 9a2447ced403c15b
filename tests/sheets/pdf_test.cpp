#include "exporters/sheets/drawing/text.h"
#include "exporters/sheets/pdf/pdf.h"
#include "tests/sheets/support/run.h"
#include "tests/support/catch.h"

#include <algorithm>

using namespace roundlay;
using namespace roundlay::sheets;
using roundlay::test::run_on;

namespace {

const char *const hard_words =
    "fillet sniffle office fjord 8 2/3\" \xC2\xBD \xC3\xA4 \xC3\x98 \xC2\xB0 \xE2\x80\x93 \xD0\x96";

Sheet sheet_with(const std::string &words, Paper paper, const std::string &title) {
    Sheet sheet;
    sheet.size = size_of(paper);
    sheet.title = title;
    sheet.anchor = title;
    Text text;
    text.at = {30, 100};
    text.words = words;
    sheet.items.emplace_back(text);
    text.at = {30, 120};
    text.bold = true;
    text.turn = 90;
    text.words = "turned";
    sheet.items.emplace_back(text);
    sheet.items.emplace_back(Path{{{20, 20}, {120, 20}}, false, Line::visible, ""});
    sheet.items.emplace_back(Circle{{60, 60}, 10, Line::centre, ""});
    sheet.items.emplace_back(Arc{{60, 60}, 15, 0, 90, Line::hidden});
    sheet.items.emplace_back(Fill{{{{10, 10}, {20, 10}, {20, 15}}}, 0.8});
    return sheet;
}

Book small_book() {
    Book book;
    book.title = "Larch Hollow, cut sheets";
    book.created = 1700000000;
    book.sheets.push_back(sheet_with(hard_words, Paper::a3, "A-01-1"));
    book.sheets.push_back(sheet_with("second", Paper::letter, "A-02-1"));
    book.sheets[1].chapter = "Wall A";
    book.sheets[0].items.emplace_back(Link{{20, 20, 60, 40}, "A-02-1"});
    return book;
}

bool has(const std::string &all, const std::string &part) {
    return all.find(part) != std::string::npos;
}

} // namespace

TEST_CASE("an independent checker finds the PDF clean", "[pdf]") {
    const auto ran = run_on(write_pdf(small_book()), "qpdf --check %");
    INFO(ran.out);
    CHECK(ran.code == 0);
    CHECK(has(ran.out, "No syntax or stream encoding errors found"));
}

TEST_CASE("all words are found in the PDF, ligatures or not", "[pdf]") {
    const auto ran = run_on(write_pdf(small_book()), "pdftotext -layout % -");
    INFO(ran.out);
    for (const char *word : {"fillet", "sniffle", "office", "fjord", "2/3\"", "\xC2\xBD", "\xC3\xA4",
                             "\xC3\x98", "\xC2\xB0", "\xE2\x80\x93", "\xD0\x96", "turned", "second"})
        CHECK(has(ran.out, word));
}

TEST_CASE("a letter that the font lacks is still found by its own code", "[pdf]") {
    Book book = small_book();
    book.sheets = {sheet_with("log \xE4\xB8\xAD end", Paper::a4, "x")};
    CHECK(has(run_on(write_pdf(book), "pdftotext % -").out, "\xE4\xB8\xAD"));
}

TEST_CASE("fonts are embedded, subset and have their Unicode", "[pdf]") {
    const auto ran = run_on(write_pdf(small_book()), "pdffonts %");
    INFO(ran.out);
    CHECK(has(ran.out, "DejaVuSans "));
    CHECK(has(ran.out, "DejaVuSans-Bold"));
    std::size_t fonts = 0;
    for (std::size_t at = 0; (at = ran.out.find("+DejaVuSans", at)) != std::string::npos; ++at)
        ++fonts;
    std::size_t whole = 0; // embedded, subset, with Unicode
    for (std::size_t at = 0; (at = ran.out.find("yes yes yes", at)) != std::string::npos; ++at)
        ++whole;
    CHECK(fonts >= 2);
    CHECK(whole == fonts);
}

TEST_CASE("page sizes, title and bookmarks are as stated", "[pdf]") {
    const std::string pdf = write_pdf(small_book());
    const auto info = run_on(pdf, "pdfinfo -l 2 %");
    INFO(info.out);
    CHECK(has(info.out, "Larch Hollow, cut sheets"));
    CHECK(has(info.out, "1190.55 x 841.89 pts (A3)")); // ISO 216, second-hand, in points of 1/72 in
    CHECK(has(info.out, "612 x 792 pts (letter)"));
    const auto outline = run_on(pdf, "qpdf --json --json-key=outlines %");
    CHECK(has(outline.out, "Wall A"));
    CHECK(has(outline.out, "A-02-1"));
    const auto objects = run_on(pdf, "qpdf --qdf --object-streams=disable % -");
    CHECK(has(objects.out, "/Lang (en)"));
    CHECK(has(objects.out, "/DisplayDocTitle true"));
    CHECK(has(objects.out, "/Subtype /Link"));
}

TEST_CASE("the same book gives the same bytes", "[pdf]") {
    CHECK(write_pdf(small_book()) == write_pdf(small_book()));
}

TEST_CASE("lines are as long on the printed page as they are stated", "[pdf]") {
    const auto image = test::page_image(write_pdf(small_book()), 1, 254); // ten pixels for a millimetre
    CHECK(image.width == 4200);
    int first = image.width, last = 0;
    for (int x = 0; x < 2000; ++x)
        if (image.dark(x, 2970 - 200)) {
            first = std::min(first, x);
            last = x;
        }
    // from 20 mm to 120 mm, and a quarter of a millimetre of round end each way
    CHECK(first == Approx(197).margin(2));
    CHECK(last == Approx(1202).margin(2));
}

TEST_CASE("a book without sheets is still a PDF", "[pdf]") {
    CHECK(run_on(write_pdf(Book{}), "qpdf --check %").code == 0);
}
