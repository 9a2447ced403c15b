#include "exporters/sheets/drawing/clash.h"
#include "exporters/sheets/drawing/font.h"
#include "exporters/sheets/drawing/number.h"
#include "exporters/sheets/drawing/text.h"
#include "tests/sheets/support/checks.h"
#include "tests/support/catch.h"
#include "tests/support/shells.h"

#include <algorithm>
#include <cmath>

using namespace roundlay;
using namespace roundlay::sheets;

namespace {

Sheet empty_sheet() {
    Sheet sheet;
    sheet.size = size_of(Paper::a4);
    sheet.drawing = {20, 10, 200, 287};
    sheet.title_block = {20, 10, 200, 50};
    return sheet;
}

Text words(const std::string &text, Vec2 at) {
    Text t;
    t.words = text;
    t.at = at;
    return t;
}

} // namespace

TEST_CASE("paper sizes are those of ISO 216 and ANSI Y14.1") {
    // ISO 216, second-hand; ANSI/ASME Y14.1 sizes A and B, 8.5 and 11 x 17 in, from memory.
    CHECK(size_of(Paper::a4) == PaperSize{210, 297});
    CHECK(size_of(Paper::a3) == PaperSize{420, 297});
    CHECK(size_of(Paper::letter).width == Approx(215.9));
    CHECK(size_of(Paper::tabloid).width == Approx(431.8));
    CHECK(paper_named("tabloid") == Paper::tabloid);
    CHECK(paper_named("A3") == Paper::a3);
    CHECK_FALSE(paper_named("A33"));
}

TEST_CASE("line widths are of the series of ISO 128-2") {
    for (const Line line : all_lines) { // from memory: 0.25, 0.35, 0.5, 0.7
        const double w = style_of(line).width;
        CHECK((w == 0.25 || w == 0.35 || w == 0.5 || w == 0.7));
    }
}

TEST_CASE("the carried font measures as its makers state") {
    // DejaVu Sans 2.37, units per em 2048: advance of 'H' 1540, of a digit 1303; capital height 1493.
    CHECK(glyph_of(Font::regular, U'H').advance == Approx(1540.0 / 2048));
    CHECK(glyph_of(Font::regular, U'7').advance == Approx(1303.0 / 2048));
    CHECK(capital_height(Font::regular) == Approx(1493.0 / 2048));
    CHECK(text_width("77", 1493.0 / 2048) == Approx(2 * 1303.0 / 2048));
}

TEST_CASE("a letter that the font lacks is replaced and said") {
    CHECK(glyph_of(Font::regular, U'\u4E2D').stands_in);
    CHECK(glyph_of(Font::regular, U'\u05D0').stands_in); // Hebrew must run from right to left
    CHECK_FALSE(glyph_of(Font::regular, U'\u0416').stands_in);
    CHECK(letters_missing("a\xE4\xB8\xAD"
                          "b\xE4\xB8\xAD") == std::vector<char32_t>{U'\u4E2D'});
}

TEST_CASE("broken UTF-8 never reaches a writer") {
    const auto all = letters_of("a\xFF\xC3(\xE2\x82\n\xED\xA0\x80\xF0\x9F\x98\x80");
    std::u32string codes;
    for (const Letter &letter : all)
        codes += letter.code;
    CHECK(codes == U"a\uFFFD\uFFFD(\uFFFD\uFFFD \uFFFD\uFFFD\uFFFD\U0001F600");
}

TEST_CASE("text boxes follow anchor and turn") {
    Text t = words("HHH", {100, 100});
    t.height = 5;
    const double w = text_width("HHH", 5);
    CHECK(box_of(t) == Rect{100, 100, 100 + w, 105});
    t.across = Across::right;
    t.upright = Upright::middle;
    CHECK(box_of(t).x1 == Approx(100));
    CHECK(box_of(t).y0 == Approx(97.5));
    t.turn = 90;
    CHECK(box_of(t).y1 == Approx(100));
    CHECK(box_of(t).x0 == Approx(97.5));
    CHECK(box_of(t).x1 == Approx(102.5));
}

TEST_CASE("text hanging under its line is part of its box") {
    CHECK(box_of(words("gap", {0, 0})).y0 < -0.5);
    CHECK(box_of(words("HEM", {0, 0})).y0 == 0);
}

TEST_CASE("a length in feet and inches is not broken over two lines") {
    const std::string words = "tail 2' 11 3/16\" long and 5 3/16\" wide, 2 of them";
    for (double width = 20; width < 60; ++width) {
        std::string all;
        for (const std::string &line : wrapped(words, width, 2.5))
            all += line + "|";
        INFO(all);
        CHECK(all.find("2' 11 3/16\"") != std::string::npos);
        CHECK(all.find("5 3/16\"") != std::string::npos);
    }
}

TEST_CASE("a mark that stands apart from its word, as in French, begins no line") {
    const std::string words = "bois ancien remplacé : 1 ; dans « son état » à 29 %, est-ce là ?";
    for (double width = 20; width < 80; ++width)
        for (const std::string &line : wrapped(words, width, 2.5)) {
            INFO(width << ": " << line);
            CHECK(std::string(":;%?").find(line.front()) == std::string::npos);
            CHECK_FALSE(line.starts_with("»"));
            CHECK_FALSE(line.ends_with("«"));
        }
}

TEST_CASE("wrapping keeps all words and no line is wider than asked") {
    const std::string text =
        "one two three four five six seven eight Donaudampfschifffahrtsgesellschaft nine";
    const auto lines = wrapped(text, 30, 2.5);
    std::string together;
    for (const auto &line : lines) {
        CHECK(text_width(line, 2.5) <= 30);
        together += line;
    }
    std::string letters = text, seen = together;
    std::erase(letters, ' ');
    std::erase(seen, ' ');
    CHECK(seen == letters);
}

TEST_CASE("numbers are written without exponent, trailing zeros or minus zero") {
    CHECK(number_text(12.0) == "12");
    CHECK(number_text(0.125) == "0.125");
    CHECK(number_text(-0.0001) == "0");
    CHECK(number_text(1e20, 1) == "100000000000000000000");
    CHECK_THROWS(number_text(std::nan("")));
}

TEST_CASE("every kind of clash is found") {
    Sheet sheet = empty_sheet();
    CHECK(clashes(sheet).empty());
    const auto only = [&](Item a, Item b) {
        Sheet s = sheet;
        s.items = {std::move(a), std::move(b)};
        return clashes(s);
    };
    const Item here = words("HHHH", {60, 100});
    const auto over = only(here, words("HHHH", {62, 101}));
    REQUIRE(over.size() == 1);
    CHECK(over[0].kind == Clash::Kind::text_over_text);
    CHECK(only(here, words("HHHH", {60, 103})).empty());

    const auto line = only(here, Path{{{50, 101}, {90, 101}}, false, Line::hidden, ""});
    REQUIRE(line.size() == 1);
    CHECK(line[0].kind == Clash::Kind::text_over_line);
    CHECK(only(here, Path{{{50, 100}, {90, 100}}, false, Line::hidden, ""}).empty()); // along its foot
    CHECK(only(here, Circle{{65, 101}, 1, Line::visible, ""}).size() >= 1);

    CHECK(only(here, words("H", {19, 100}))[0].kind == Clash::Kind::text_off_frame);
    CHECK(only(here, words("H", {60, 49}))[0].kind == Clash::Kind::text_on_block);
    CHECK(only(here, Path{{{5, 5}, {-1, 5}}, false, Line::hidden, ""})[0].kind ==
          Clash::Kind::line_off_sheet);
    const auto leader = [](Vec2 a, Vec2 b) { return Path{{a, b}, false, Line::dimension, "", true}; };
    REQUIRE(only(leader({100, 100}, {120, 120}), leader({100, 120}, {120, 100})).size() == 1);
    CHECK(only(leader({100, 100}, {120, 120}), leader({100, 120}, {120, 100}))[0].kind ==
          Clash::Kind::leader_through_leader);
    CHECK(only(leader({100, 100}, {120, 120}), leader({120, 120}, {120, 100})).empty()); // from one place
    CHECK(only(leader({100, 100}, {120, 120}), Path{{{100, 120}, {120, 100}}, false, Line::dimension, ""})
              .empty());
    Text mark = words("HHHH", {60, 130}), note = words("HHHH", {60 + text_width("HHHH", 2.5) + 2, 130});
    mark.role = Role::mark, note.role = Role::note;
    REQUIRE(only(mark, note).size() == 1);
    CHECK(only(mark, note)[0].kind == Clash::Kind::mark_beside_note);
    note.at.x += 2;
    CHECK(only(mark, note).empty());

    Text small = words("H", {60, 120});
    small.height = 2.4;
    CHECK(only(here, small)[0].kind == Clash::Kind::too_small);
}

TEST_CASE("A joist plan names its walls at the room, however far a beam runs on out of it") {
    // An L: from F to D the room is 3 m wide; a beam across it runs 6 m, from E to A.
    Shell shell = test::plain_shell();
    shell.walls.clear();
    const double legs[][2] = {{0, 9000}, {90, 3000}, {180, 4000}, {90, 3000}, {180, 5000}, {270, 6000}};
    for (const auto &[heading, length] : legs)
        shell.walls.push_back(
            {std::string(1, static_cast<char>('A' + shell.walls.size())), heading, Length::mm(length)});
    Floor floor;
    floor.name = "G", floor.from = "F", floor.to = "D";
    floor.level = Length::mm(640);
    floor.joist = {Length::mm(100), Length::mm(180)};
    floor.spacing = Length::mm(600), floor.bearing = Length::mm(80);
    floor.beams = {{Length::mm(2500), {Length::mm(150), Length::mm(150)}}};
    shell.floors = {floor};
    const test::LaidShell made = test::laid(shell);
    REQUIRE_FALSE(made.layout.pieces.empty());
    const Book book = test::whole_book(made, test::full_options(Paper::a3), 0);
    int named = 0;
    for (const Sheet &sheet : book.sheets) {
        std::vector<double> joists, names;
        for (const Item &item : sheet.items)
            if (const Text *text = std::get_if<Text>(&item)) {
                const double middle = box_of(*text).centre().x;
                if (text->words.starts_with("G-J") && text->role == Role::mark) joists.push_back(middle);
                if (text->words == "Wall F" || text->words == "Wall D") names.push_back(middle);
            }
        if (joists.empty() || names.size() != 2) continue;
        ++named;
        const auto [first, last] = std::ranges::minmax(joists);
        for (const double name : names)
            CHECK(std::abs(name - (first + last) / 2) < 12);
    }
    CHECK(named == 1);
}
