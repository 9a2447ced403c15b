// Schedules: what stands in them against the shell, and all of it on every paper.
#include "exporters/sheets/drawing/number.h"
#include "exporters/sheets/schedule/list_paper.h"
#include "exporters/sheets/schedule/schedules.h"
#include "kernel/review/floor_screen.h"
#include "kernel/review/opening_facts.h"
#include "tests/sheets/support/checks.h"
#include "tests/support/catch.h"
#include "tests/support/parts.h"
#include "tests/support/shells.h"

#include <rapidcheck.h>

#include <cmath>
#include <set>
#include <sstream>

using namespace roundlay;
using namespace roundlay::sheets;
using namespace roundlay::test;

namespace {

Draft draft_of(const LaidShell &shell, const SheetOptions &options) {
    return {shell.shell, shell.layout, shell.bodies, options};
}

/// The cell under that heading. Throws where there is none.
std::string cell(const Schedule &schedule, std::size_t row, const std::string &heading) {
    for (std::size_t c = 0; c < schedule.table.columns.size(); ++c)
        if (schedule.table.columns[c].heading == heading) return schedule.table.rows.at(row).at(c);
    throw std::out_of_range(heading);
}

std::string all_notes(const Schedule &schedule) {
    std::string all;
    for (const std::string &note : schedule.notes)
        all += note + "\n";
    return all;
}

std::multiset<std::string> parts_of(const std::string &text) {
    std::istringstream words(text);
    std::multiset<std::string> all;
    for (std::string word; words >> word;)
        all.insert(word);
    return all;
}

using Make = Schedule (*)(const Draft &);
constexpr Make all_makes[] = {opening_schedule, peg_schedule,    bore_schedule,
                              order_schedule,   timber_schedule, screen_schedule};

/// What of any schedule's cells and notes is not written on the sheets as often as it should be.
std::string missing(const Draft &draft, const std::vector<Sheet> &sheets) {
    std::multiset<std::string> there;
    for (const Sheet &sheet : sheets)
        for (const Item &item : sheet.items)
            if (const Text *text = std::get_if<Text>(&item); text && text->role == Role::cell)
                there.merge(parts_of(text->words));
    std::string lost;
    for (const Make make : all_makes) {
        const Schedule made = make(draft);
        if (made.table.rows.empty()) continue;
        std::multiset<std::string> wanted;
        for (const auto &row : made.table.rows)
            for (const std::string &text : row)
                wanted.merge(parts_of(text));
        wanted.merge(parts_of(all_notes(made)));
        for (const std::string &word : std::set<std::string>(wanted.begin(), wanted.end()))
            if (there.count(word) < wanted.count(word)) lost += word + " ";
    }
    return lost;
}

} // namespace

TEST_CASE("the schedule of openings says rough size, settle space by its rule, frame, header and sill") {
    Shell plain = plain_shell(); // rounds of 230 mm
    plain.rounds.count = 10;
    plain.openings = {window("A", 2000, 690, 900, 900)};
    plain.openings[0].name = "lamp";
    const LaidShell shell = laid(plain);
    REQUIRE_FALSE(shell.layout.pieces.empty());
    const SheetOptions options = full_options();
    const Schedule made = opening_schedule(draft_of(shell, options));
    REQUIRE(made.table.rows.size() == 1);
    CHECK(cell(made, 0, "from left") == "2000");
    CHECK(cell(made, 0, "sill") == "690");
    CHECK(cell(made, 0, "width") == "900");
    CHECK(cell(made, 0, "height") == "900");
    const double space = std::ceil(900 * 13.0 / 300); // the code's least, up to a whole millimetre
    CHECK(cell(made, 0, "settle space") == number_text(space));
    CHECK(cell(made, 0, "left for the frame") == number_text(900 - space));
    const auto facts = opening_facts(shell.shell, shell.layout);
    CHECK(cell(made, 0, "header") == shell.layout.pieces.at(facts.at(0).header.value()).tag);
    CHECK(cell(made, 0, "past left") == number_text(std::round(facts[0].runs_left)));
    CHECK_THAT(all_notes(made), ContainsSubstring("13 mm for each 300 mm") &&
                                    ContainsSubstring("a licensed professional decide"));
}

TEST_CASE("rules that differ are told with the openings that go by each, one rule alone once") {
    Shell plain = plain_shell();
    plain.rounds.count = 10;
    plain.openings = {window("A", 1000, 690, 800, 900), window("A", 3200, 690, 800, 900)};
    plain.openings[0].name = "lamp", plain.openings[1].name = "hearth";
    const SheetOptions options = full_options();
    const LaidShell same = laid(plain);
    CHECK_THAT(all_notes(opening_schedule(draft_of(same, options))), !ContainsSubstring("hearth"));
    plain.openings[1].trim.settle_space = Length::mm(60);
    const LaidShell other = laid(plain);
    REQUIRE_FALSE(other.layout.pieces.empty());
    const Schedule made = opening_schedule(draft_of(other, options));
    CHECK(cell(made, 1, "settle space") == "60");
    CHECK_THAT(all_notes(made), ContainsSubstring("hearth: ") && ContainsSubstring("lamp: "));
}

TEST_CASE("a rod's length in wood is that of the logs that it goes through") {
    Shell plain = plain_shell();
    plain.pegs.wanted = false;
    StatedBore rod;
    rod.use = BoreUse::rod, rod.wall = "A", rod.diameter = Length::mm(20);
    rod.from_left = Length::mm(1500);
    plain.bores = {rod};
    const LaidShell shell = laid(plain);
    REQUIRE_FALSE(shell.layout.pieces.empty());
    const SheetOptions options = full_options();
    const Schedule made = bore_schedule(draft_of(shell, options));
    REQUIRE(made.table.rows.size() == 1);
    double wood = 0;
    for (const Piece &piece : shell.layout.pieces)
        if (piece.wall == Index<WallPlace>(0)) wood += piece.blank.height;
    CHECK(cell(made, 0, "Length in wood") == number_text(std::round(wood)));
    CHECK(cell(made, 0, "Bore") == "20");
    CHECK_THAT(all_notes(made), ContainsSubstring("longer"));
    CHECK(peg_schedule(draft_of(shell, options)).table.rows.empty());
}

TEST_CASE("pegs and sticks are all in their schedules, each stick long enough") {
    for (const std::string name : {"one-room", "ell-house", "round-cabin"}) {
        INFO(name);
        const LaidShell shell = demo(name);
        const SheetOptions options = full_options();
        const Draft draft = draft_of(shell, options);
        std::size_t pegs = 0, sticks = 0;
        const Schedule of_pegs = peg_schedule(draft), order = order_schedule(draft);
        for (std::size_t i = 0; i < of_pegs.table.rows.size(); ++i)
            pegs += std::stoul(cell(of_pegs, i, "qty"));
        std::set<std::string> tags;
        for (std::size_t i = 0; i < order.table.rows.size(); ++i) {
            sticks += std::stoul(cell(order, i, "qty"));
            std::istringstream for_them(cell(order, i, "for"));
            for (std::string tag; for_them >> tag;)
                tags.insert(tag.back() == ',' ? tag.substr(0, tag.size() - 1) : tag);
        }
        CHECK(pegs == shell.layout.pegs.size());
        CHECK(sticks == shell.layout.pieces.size());
        CHECK(tags.size() == sticks);
        CHECK_THAT(all_notes(order), ContainsSubstring("no lift plan"));
    }
}

TEST_CASE("the screen of a floor stands there as it was worked out, with basis and caution") {
    const LaidShell shell = demo("ell-house"); // in feet and inches
    const SheetOptions options = full_options();
    const Schedule made = screen_schedule(draft_of(shell, options));
    const FloorScreen screen = screen_floors(shell.shell, shell.layout);
    REQUIRE(made.table.rows.size() == screen.timbers.size());
    constexpr double psi = 0.00689475729; // MPa
    for (std::size_t i = 0; i < made.table.rows.size(); ++i) {
        const TimberScreen &timber = screen.timbers[i];
        CHECK(cell(made, i, "tag") == shell.layout.pieces[shell.layout.timbers[timber.timber].piece].tag);
        CHECK(cell(made, i, "span/") == number_text(std::round(timber.span / timber.deflection)));
        CHECK(cell(made, i, "bending psi") == number_text(std::round(timber.bending / psi)));
    }
    CHECK_THAT(all_notes(made),
               ContainsSubstring("never an approval") && ContainsSubstring("none published for such logs"));
    LaidShell unloaded = shell;
    for (Floor &floor : unloaded.shell.floors)
        floor.live_load.reset();
    unloaded = laid(unloaded.shell);
    CHECK(screen_schedule(draft_of(unloaded, options)).table.rows.empty());
    const Schedule timbers = timber_schedule(draft_of(unloaded, options));
    CHECK_THAT(all_notes(timbers), ContainsSubstring("not screened"));
}

TEST_CASE("all of every schedule stands on every paper, and nothing runs into anything") {
    for (const std::string &name : all_demo_names)
        for (const Paper paper : {Paper::a4, Paper::a3, Paper::letter, Paper::tabloid})
            for (const UnitSystem units : {UnitSystem::metric, UnitSystem::imperial}) {
                LaidShell shell = demo(name);
                shell.shell.units = units;
                const SheetOptions options = full_options(paper);
                const Draft draft = draft_of(shell, options);
                const auto sheets = composed(schedule_subject(), draft);
                INFO(name << " on " << name_of(paper));
                CHECK(missing(draft, sheets) == "");
                CHECK(all_clashes(sheets) == "");
            }
}

TEST_CASE("all of every schedule of any shell stands on its paper") {
    constexpr Paper papers[] = {Paper::a4, Paper::a3, Paper::letter, Paper::tabloid};
    CHECK(counterexample(shells_to_draw(20), [&] {
              LaidShell shell = laid(any_of_all_shells());
              RC_PRE(!shell.layout.pieces.empty());
              shell.shell.units = *rc::gen::arbitrary<bool>() ? UnitSystem::metric : UnitSystem::imperial;
              const SheetOptions options = full_options(papers[*rc::gen::inRange(0, 4)]);
              const Draft draft = draft_of(shell, options);
              const auto sheets = composed(schedule_subject(), draft);
              const std::string wrong = missing(draft, sheets) + all_clashes(sheets);
              if (!wrong.empty()) RC_FAIL(wrong);
          }) == "");
}
