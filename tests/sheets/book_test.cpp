// Every sheet of every demo and of random shells, as one book.

#include "exporters/sheets/cut_sheet/cut_sheet.h"
#include "exporters/sheets/drawing/text.h"
#include "exporters/sheets/pdf/pdf.h"
#include "exporters/sheets/svg/svg.h"
#include "kernel/document/document.h"
#include "tests/sheets/support/checks.h"
#include "tests/sheets/support/run.h"
#include "tests/sheets/support/sets.h"
#include "tests/support/catch.h"
#include "tests/support/shells.h"
#include "tests/support/thrown_away.h"

#include <rapidcheck.h>

#include <algorithm>
#include <map>
#include <regex>

using namespace roundlay;
using namespace roundlay::sheets;
using namespace roundlay::test;

namespace {

int count_of(const std::string &text, const std::string &part) {
    int count = 0;
    for (std::size_t at = text.find(part); at != std::string::npos; at = text.find(part, at + 1))
        ++count;
    return count;
}

/// What the links of the index say and lead to, by the page number printed on their line.
std::string wrong_links(const Book &book) {
    std::map<std::string, std::size_t> pages;
    std::string wrong;
    for (std::size_t i = 0; i < book.sheets.size(); ++i)
        if (!pages.emplace(book.sheets[i].anchor, i + 1).second)
            wrong += "two sheets have the anchor " + book.sheets[i].anchor + "\n";
    for (const Sheet &sheet : book.sheets)
        for (const Item &item : sheet.items) {
            const Link *link = std::get_if<Link>(&item);
            if (link == nullptr) continue;
            std::string number;
            for (const Item &other : sheet.items)
                if (const Text *text = std::get_if<Text>(&other))
                    if (text->across == Across::right && link->box.holds(box_of(*text))) number = text->words;
            if (!pages.contains(link->to) || std::to_string(pages[link->to]) != number)
                wrong += link->to + " is said to be on page " + number + "\n";
        }
    return wrong;
}

} // namespace

TEST_CASE("no sheet of any demo has a clash, on any paper") {
    for (const std::string &name : all_demo_names) {
        const LaidShell shell = demo(name);
        INFO(name);
        const Book book = whole_book(shell, full_options());
        CHECK(all_clashes(book.sheets) == "");
        CHECK(wrong_links(book) == "");
        CHECK(all_clashes(shell_drawings(shell.shell, shell.layout, shell.bodies, full_options(Paper::a4))) ==
              "");
    }
}

TEST_CASE("no sheet in the book of any shell has a clash") {
    test::ThrownAway thrown(test::refusals());
    const int count = shells_to_draw(6);
    int drawn = 0;
    std::size_t sheets = 0;
    CHECK(counterexample(count, [&] {
              Shell any = any_of_all_shells();
              any.units = *rc::gen::element(UnitSystem::metric, UnitSystem::imperial);
              const auto paper =
                  *rc::gen::element(Paper::a4, Paper::a3, Paper::letter, Paper::tabloid, Paper::a2);
              const LaidShell shell = laid(any);
              thrown.discard_refused(shell.layout.findings); // of the whole family some cannot be built
              const Book book = whole_book(shell, full_options(paper), 8);
              ++drawn;
              sheets += book.sheets.size();
              const std::string found = all_clashes(book.sheets) + wrong_links(book);
              if (!found.empty()) RC_FAIL(found + write_document(any));
          }) == "");
    if (count > 50) WARN(drawn << " shells, " << sheets << " sheets");
    CHECK(drawn >= count);
    INFO(thrown.words());
    CHECK_FALSE(thrown.too_many());
}

TEST_CASE("a tag that is led into an opening does not read as a part of its size") {
    Shell shell = plain_shell();
    for (const double from : {900.0, 2050.0, 3200.0})
        shell.openings.push_back(window("A", from, 300, 950, 500));
    std::string found;
    for (const auto units : {UnitSystem::metric, UnitSystem::imperial})
        for (const Paper paper : {Paper::letter, Paper::tabloid, Paper::a2}) {
            shell.units = units;
            const LaidShell made = laid(shell);
            REQUIRE_FALSE(made.layout.pieces.empty());
            found += all_clashes(wall_elevations(made.shell, made.layout, made.bodies, full_options(paper)));
        }
    CHECK(found == "");
}

TEST_CASE("the drawings name every log: its wall's elevation, its round's plan, its tag") {
    const LaidShell shell = demo("ell-house");
    const Book book = whole_book(shell, full_options(), 0);
    const auto walls = words_on(book.sheets, "Walls"), rounds = words_on(book.sheets, "Rounds"),
               tags = words_on(book.sheets, "Tags"), floors = words_on(book.sheets, "Floors");
    std::string listed; // logs too small for their tag in an elevation are listed beside it
    for (const std::string &words : walls)
        listed += words + ",";
    for (const Piece &piece : shell.layout.pieces) {
        INFO(piece.tag);
        if (piece.timber) {
            CHECK(floors.contains(piece.tag));
            CHECK(tags.contains(piece.tag));
            continue;
        }
        CHECK(listed.find(piece.tag) != std::string::npos);
        CHECK((rounds.contains("\u2190 " + piece.tag) || rounds.contains(piece.tag + " \u2192")));
        CHECK(tags.contains(piece.tag));
    }
}

TEST_CASE("the book of a house is sound in the eyes of independent readers") {
    const LaidShell shell = demo("one-room");
    const Book book = whole_book(shell, full_options());
    const std::string pdf = write_pdf(book);
    CHECK(run_on(pdf, "qpdf --check %").code == 0);
    const Ran text = run_on(pdf, "pdftotext -layout % -");
    REQUIRE(text.code == 0);
    for (const Piece &piece : shell.layout.pieces)
        CHECK(text.out.find(piece.tag) != std::string::npos);
    const int pages = static_cast<int>(book.sheets.size());
    CHECK(text.out.find("1 / " + std::to_string(pages)) != std::string::npos);
    CHECK(count_of(text.out, " / " + std::to_string(pages)) >= pages);
    const Ran fonts = run_on(pdf, "pdffonts %");
    CHECK(count_of(fonts.out, "yes yes yes") == count_of(fonts.out, "DejaVu")); // embedded, subset, Unicode
    CHECK(count_of(fonts.out, "DejaVu") >= 2);
    const Ran info = run_on(pdf, "pdfinfo %");
    CHECK(info.out.find("Title:           " + shell.shell.name) != std::string::npos);
    CHECK(info.out.find("Pages:           " + std::to_string(pages)) != std::string::npos);
    const Ran objects =
        run_on(pdf, "qpdf --qdf --object-streams=disable % - | grep -a -c -E '/Lang|/Outlines'");
    CHECK(std::stoi(objects.out) >= 2);
}

TEST_CASE("every sheet is well-formed as SVG too") {
    for (const Sheet &sheet : whole_book(demo("one-room"), full_options(), 3).sheets) {
        const Ran ran = run_on(write_svg(sheet), "xmllint --noout %", ".svg");
        INFO(sheet.title + ran.out);
        REQUIRE(ran.code == 0);
    }
}

// Nothing can be told by colour alone where there is no colour: every pixel is grey.
TEST_CASE("without its picture a book has no colour at all") {
    const std::string pdf = write_pdf(whole_book(demo("one-room"), full_options(), 3));
    const Ran ran = run_on(pdf, "pdftoppm -r 30 % | tail -c +1 | python3 -c \""
                                "import sys,re\n"
                                "d=sys.stdin.buffer.read(); at=0; pages=0; bad=0\n"
                                "while at<len(d):\n"
                                "    m=re.match(rb'P6\\s+(\\d+) (\\d+)\\s+255\\s',d[at:at+40])\n"
                                "    n=3*int(m[1])*int(m[2]); p=d[at+m.end():at+m.end()+n]\n"
                                "    bad+=sum(a!=b or b!=c for a,b,c in zip(p[0::3],p[1::3],p[2::3]))\n"
                                "    at+=m.end()+n; pages+=1\n"
                                "print(pages,bad)\"");
    INFO(ran.out);
    std::smatch found;
    REQUIRE(std::regex_search(ran.out, found, std::regex(R"((\d+) (\d+))")));
    CHECK(std::stoi(found[1]) > 20);
    CHECK(found[2] == "0");
}

TEST_CASE("the cut sheets of a house of 160 pieces are small: 15 kB a sheet at the median") {
    const LaidShell shell = demo("ell-house");
    std::vector<std::size_t> sizes;
    for (const auto m : shell.layout.models.indices()) {
        if (m.at() % 5 != 0) continue;
        const auto sheets =
            cut_sheet(shell.shell, shell.layout, shell.layout.models[m], shell.bodies[m], full_options());
        Book once, twice;
        once.created = twice.created = 0;
        once.sheets = {sheets[0]};
        twice.sheets = {sheets[0], sheets[0]};
        sizes.push_back(write_pdf(twice).size() - write_pdf(once).size()); // fonts are in a book but once
    }
    std::sort(sizes.begin(), sizes.end());
    CHECK(sizes[sizes.size() / 2] < 15 * 1024);
    Book all;
    all.created = 0;
    all.sheets = cut_sheets(shell.shell, shell.layout, shell.bodies, full_options());
    CHECK(write_pdf(all).size() / all.sheets.size() < 15 * 1024);
}
