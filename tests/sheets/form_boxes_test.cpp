// What field forms ask for: each number that is measured at a house has its box, its letter and its place.

#include "exporters/sheets/drawing/block.h"
#include "exporters/sheets/form/corner_rows.h"
#include "exporters/sheets/form/proposed.h"
#include "tests/sheets/support/form_pages.h"
#include "tests/support/catch.h"
#include "tests/support/shells.h"

#include <set>

using namespace roundlay;
using namespace roundlay::sheets;
using namespace roundlay::test;

TEST_CASE("Notches of logs that run past the corner are measured, and asked for where walls end flush",
          "[form]") {
    Shell shell = plain_shell();
    shell.notch.overhang = Length::mm(50);
    const LaidShell over = laid(shell);
    const auto corner = form_of(forms_of(over, {}, options_on(Paper::a4, Language::english)), "Corner AB");
    CHECK(prints(corner, "50"));
    shell.notch.overhang = Length();
    const LaidShell flush = laid(shell);
    REQUIRE(over.layout.pieces.size() == flush.layout.pieces.size());
    int tails = 0;
    for (const auto i : over.layout.pieces.indices())
        for (const End end : {End::datum, End::far}) {
            const Piece &piece = over.layout.pieces[i];
            const ProposedEnd with = proposed_end(over.layout, piece, end),
                              without = proposed_end(flush.layout, flush.layout.pieces[i], end);
            INFO(piece.tag);
            REQUIRE(with.tail.has_value() == without.tail.has_value());
            if (!with.tail) continue; // a half log too thin for one
            ++tails;
            CHECK(std::abs(with.tail->shoulder_outside.tall() - without.tail->shoulder_outside.tall()) <
                  1e-6);
            CHECK(std::abs(with.tail->end_inside.tall() - without.tail->end_inside.tall()) < 1e-6);
            CHECK(std::abs(*with.overhang - 50) < 1e-6);
            CHECK_FALSE(without.overhang);
        }
    CHECK(tails >= 24);
}

TEST_CASE("At a corner each log stands behind those that it lies on", "[form]") {
    for (const std::string &name : all_demo_names) {
        const LaidShell shell = demo(name);
        const FormLogs logs = form_logs({}, shell.layout);
        for (const auto corner : shell.layout.corners.indices()) {
            std::vector<std::string> before;
            for (const CornerRow &row : corner_rows(shell.layout, logs, corner)) {
                for (const Cut &cut : shell.layout.pieces[row.piece].cuts)
                    if (const auto *seam = std::get_if<SeamCut>(&cut);
                        seam && seam->side == Side::under && !seam->other.empty() &&
                        seam->corner == shell.layout.corners[corner].name) {
                        INFO(name << ": " << row.tag << " lies on " << seam->other);
                        CHECK(std::ranges::count(before, seam->other) == 1);
                    }
                before.push_back(row.tag);
            }
        }
    }
}

namespace {

/// Letters in the corners of boxes.
std::set<std::string> letters_in_boxes(const std::vector<Sheet> &sheets) {
    std::set<std::string> letters;
    for (const Sheet &sheet : sheets)
        for (const Item &item : sheet.items) {
            const Path *box = std::get_if<Path>(&item);
            if (!box || !box->layer.starts_with("box ")) continue;
            for (const Item &other : sheet.items)
                if (const Text *text = std::get_if<Text>(&other);
                    text && text->role == Role::mark && bounds(item).holds(bounds(other)))
                    letters.insert(text->words);
        }
    return letters;
}

/// A metric house with half logs at its foot, a door whose head lies in a seam and a window with a long name.
Shell house_to_measure() {
    Shell shell = plain_shell();
    shell.openings = {window("A", 900, 0, 800, 680), window("A", 3000, 460, 700, 230)};
    shell.openings[0].name = "door", shell.openings[0].kind = OpeningKind::door;
    shell.openings[1].name = "front window";
    return shell;
}

} // namespace

TEST_CASE("No letter means one thing on a wall's form and another on a corner's", "[form]") {
    const auto all = forms_of(demo("one-room"), {}, options_on(Paper::a4, Language::english));
    const auto wall = letters_in_boxes(form_of(all, "Wall A")),
               corner = letters_in_boxes(form_of(all, "Corner AB"));
    CHECK(wall.size() > 7);
    CHECK(corner.size() > 7);
    for (const std::string &letter : wall)
        CHECK_FALSE(corner.contains(letter));
    // what is explained has a box
    CHECK_FALSE(corner.contains("y"));
    for (const Sheet &sheet : form_of(all, "Corner AB"))
        CHECK(texts_of(sheet).find("Where a log runs on") == std::string::npos);
}

TEST_CASE("The form of a wall asks where each of its openings stands, and how large it is", "[form]") {
    const LaidShell shell = laid(house_to_measure());
    Record record;
    record.openings.resize(1);
    RecordedOpening &door = record.openings[0];
    door.name = "door", door.wall = "A", door.zero = "AB";
    door.near_at_sill.written = "3304", door.sill.written = "-612", door.plane = "L7";
    const auto wall = form_of(forms_of(shell, record, options_on(Paper::a4, Language::english)), "Wall A");
    const auto letters = letters_in_boxes(wall);
    for (const char *letter : {"1", "2", "3", "4", "5", "6", "7", "8"})
        CHECK(letters.contains(letter));
    // As noted; then what the plan has from that corner, and of the window from the left one.
    for (const char *words :
         {"door", "front window", "3304", "-612", "L7", "AB", "3300", "4100", "3000", "3700"}) {
        INFO(words);
        CHECK(prints(wall, words));
    }
    const auto plain = forms_of(laid(plain_shell()), {}, options_on(Paper::a4, Language::english));
    CHECK_FALSE(letters_in_boxes(form_of(plain, "Wall A")).contains("1"));
}

TEST_CASE("The form of the house asks for each wall, both diagonals, level planes and north", "[form]") {
    Record record;
    record.walls.emplace_back();
    record.walls.back().wall = "B";
    record.walls.back().length.written = "4012";
    record.diagonals = {{"DA", "BC", ReadFrom::outside, {"6391", {}, Certainty::measured, "", ""}, ""}};
    const auto house =
        form_of(forms_of(laid(plain_shell()), record, options_on(Paper::a4, Language::english)), "The house");
    REQUIRE(house.size() == 1);
    for (const char *words : {"Wall A", "Wall B", "Wall C", "Wall D", "4012", "6391", "DA to BC", "AB to CD",
                              "5000", "6403", "draw an arrow to the north", "over the first"}) {
        INFO(words);
        CHECK(prints(house, words)); // 5 m by 4 m: 6403 from corner to corner
    }
}

TEST_CASE(
    "A card asks for levels, the seam, bow, wind, species, moisture and later cuts, and shows what is known",
    "[form]") {
    Record record;
    record.logs.resize(1);
    FoundLog &log = record.logs[0];
    log.tag = "A-02-1", log.place = {"A", 2, 1};
    log.ends.resize(2);
    log.ends[0].corner = "DA", log.ends[1].corner = "door";
    const auto noted = [](const char *written) {
        return NotedLength{written, {}, Certainty::measured, "", ""};
    };
    log.ends[0].level = noted("-1213");
    log.bow = noted("27"), log.wind = noted("-14"), log.species = "elm";
    log.stations.resize(1);
    log.stations[0].gap_below = noted("33");
    log.moistures.push_back({18.5, noted("1100"), {}, noted("21"), {}, "", "", ""});
    log.later_cuts = {{"kerf", noted("777"), ""}};
    log.pegs = {{PegState::missing, noted("1843"), {}, {}, ""}, {PegState::sawn, noted("2001"), {}, {}, ""}};
    const auto wall = form_of(
        forms_of(laid(house_to_measure()), record, options_on(Paper::a4, Language::english)), "Wall A");
    for (const char *words : {"level at DA", "-1213", "gap under it", "33", "bow", "27", "wind", "-14",
                              "species", "elm", "18.5 %, 21, 1100", "kerf, 777", "1843 m; 2001 s"}) {
        INFO(words);
        CHECK(prints(wall, words));
    }
}

TEST_CASE("A jamb is measured at the log over its head, also where a seam lies between, and under its sill",
          "[form]") {
    const LaidShell shell = laid(house_to_measure()); // logs at 0, 230, 460 and 690, 210 high
    const auto jambs_at = [&](const std::string &tag) {
        const auto piece = std::ranges::find(shell.layout.pieces, tag, &Piece::tag);
        REQUIRE(piece != shell.layout.pieces.end());
        std::vector<std::size_t> openings;
        for (const JambPlace &jamb : jamb_places(shell.shell, shell.layout, *piece))
            openings.push_back(jamb.opening);
        return openings;
    };
    CHECK(jambs_at("A-04-1") == std::vector<std::size_t>{0, 0, 1, 1}); // heads at 680 and 690
    CHECK(jambs_at("A-02-2") == std::vector<std::size_t>{1, 1});       // ends at 440, the sill is at 460
    CHECK(jambs_at("A-01-2").empty());
}

TEST_CASE("Names of ends are told whole, and half logs have theirs on sketches of corners", "[form]") {
    const LaidShell shell = laid(house_to_measure());
    for (const Language language : {Language::english, Language::french}) {
        const auto all = forms_of(shell, {}, options_on(Paper::letter, language));
        for (const Sheet &sheet : all) {
            INFO(sheet.title);
            for (const Item &item : sheet.items)
                if (const Text *text = std::get_if<Text>(&item)) {
                    INFO(text->words);
                    CHECK_FALSE(text->words.ends_with("…"));
                }
        }
    }
    const auto all = forms_of(shell, {}, options_on(Paper::letter, Language::english));
    const FormLogs logs = form_logs({}, shell.layout);
    for (const auto corner : shell.layout.corners.indices()) {
        const auto first = form_of(all, "Corner " + shell.layout.corners[corner].name).front();
        for (const CornerRow &row : corner_rows(shell.layout, logs, corner)) {
            INFO(row.tag);
            CHECK(prints({first}, row.tag));
        }
    }
}
