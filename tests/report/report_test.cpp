// The report on a house that stands, on both papers and in both languages.
#include "exporters/lists/fabric_table.h"
#include "exporters/report/report.h"
#include "exporters/sheets/drawing/sheet.h"
#include "kernel/fabric/fabric.h"
#include "kernel/fabric/standing.h"
#include "tests/report/found_house.h"
#include "tests/support/sheet_words.h"

#include <algorithm>
#include <set>

using namespace roundlay;
using namespace roundlay::test;
using namespace roundlay::sheets;

namespace {

SheetOptions options_on(Paper paper, Language language) {
    SheetOptions options = full_options(paper);
    options.fields.language = language;
    return options;
}

std::vector<Sheet> report_of(const FoundHouse &house, const SheetOptions &options) {
    return composed(report_set({house.record, house.folder, {}, house.mends}),
                    {house.laid.shell, house.laid.layout, house.laid.bodies, options});
}

/// Of its pages: it may begin, or end, on one that another part stands on too.
bool shows(const Sheet &sheet, const std::string &part) {
    const std::string all = "; " + sheet.title + ";", whole = "; " + part + ";", one = "; " + part + ", ";
    return part.empty() || all.find(whole) != std::string::npos || all.find(one) != std::string::npos;
}

std::string words_in(const std::vector<Sheet> &sheets, const std::string &part) {
    return words_of(sheets, [&](const Sheet &sheet) { return shows(sheet, part); });
}

/// How much of the room under the heads is used, from the top down to the lowest thing.
double used_of(const Sheet &sheet) {
    double low = sheet.drawing.y1;
    for (const Item &item : sheet.items) {
        const Rect box = bounds(item);
        if (box.height() < 0.95 * sheet.drawing.height() && sheet.drawing.holds(box)) // not the frame
            low = std::min(low, box.y0);
    }
    return (sheet.drawing.y1 - low) / sheet.drawing.height();
}

std::size_t pictures_on(const std::vector<Sheet> &sheets) {
    std::size_t count = 0;
    for (const Sheet &sheet : sheets)
        count += static_cast<std::size_t>(std::ranges::count_if(
            sheet.items, [](const Item &item) { return std::holds_alternative<Picture>(item); }));
    return count;
}

const FoundHouse &house() {
    static const FoundHouse found = old_house_with_mends();
    return found;
}

} // namespace

TEST_CASE("Nothing on a report runs into anything, on A4 and Letter, in English and French") {
    for (const Paper paper : {Paper::a4, Paper::letter})
        for (const Language language : {Language::english, Language::french}) {
            INFO(name_of(paper) << ", " << tag_of(language));
            const auto sheets = report_of(house(), options_on(paper, language));
            CHECK(all_clashes(sheets) == "");
            for (const Sheet &sheet : sheets)
                CHECK(sheet.size == size_of(paper));
        }
}

TEST_CASE("Parts flow on: no page but the last is left nearly empty, and each part is named in a bookmark") {
    for (const Paper paper : {Paper::a4, Paper::letter})
        for (const Language language : {Language::english, Language::french}) {
            INFO(name_of(paper) << ", " << tag_of(language));
            const auto sheets = report_of(house(), options_on(paper, language));
            std::size_t begun = 0;
            for (std::size_t i = 0; i < sheets.size(); ++i) {
                INFO("page " << i + 1 << ": " << sheets[i].title);
                if (i + 1 < sheets.size()) CHECK(used_of(sheets[i]) >= 1.0 / 3);
                begun += static_cast<std::size_t>(std::ranges::count(sheets[i].title, ';'));
            }
            CHECK(begun >= 4);          // that begin on the page of another
            CHECK(sheets.size() <= 27); // as measured: 27 in French on Letter, the others less
        }
    const auto sheets = report_of(house(), options_on(Paper::a4, Language::english));
    for (const char *part :
         {"Summary", "Plan", "Wall A", "Wall D", "Corners", "Logs", "Sizes, wood and finish of logs",
          "Wood, pegs and later cuts", "Photographs", "How it was measured", "Cautions"})
        CHECK(std::ranges::any_of(sheets, [&](const Sheet &sheet) { return shows(sheet, part); }));
}

TEST_CASE(
    "A report names the state that it draws, and the one whose decisions it counts, on its first page") {
    FoundHouse found = house();
    const SheetOptions options = options_on(Paper::letter, Language::english);
    const auto first = [&](const std::string &counted_in) {
        ReportSource source{found.record, found.folder, {}, found.mends, counted_in};
        const auto sheets =
            composed(report_set(source), {found.laid.shell, found.laid.layout, found.laid.bodies, options});
        for (const Sheet &sheet : sheets)
            CHECK_THAT(words_of({sheet}), ContainsSubstring("(as found)")); // in the head of each page
        std::string words = words_of({sheets.front()});
        std::ranges::replace(words, '\n', ' ');
        return words;
    };
    CHECK_THAT(first(""), ContainsSubstring("the house in its state “as found”"));
    const std::string two = first("as it shall stand");
    CHECK_THAT(two,
               ContainsSubstring("the house in its state “as found”; old wood that stays and mends by its "
                                 "state “as it shall stand”"));
    found.laid.shell.state.clear();
    const auto nameless = report_of(found, options);
    CHECK_THAT(words_of({nameless.front()}), ContainsSubstring("a state without a name"));
}

TEST_CASE(
    "Places that nobody said from where they run are asked about, marked in the tables and drawn nowhere") {
    FoundHouse found = house();
    Record record = *found.record;
    const auto drawn_rot = [&](const FoundHouse &of) {
        std::size_t count = 0;
        for (const Sheet &sheet : report_of(of, options_on(Paper::letter, Language::english)))
            if (shows(sheet, "Wall A"))
                for (const Item &item : sheet.items)
                    if (const Text *text = std::get_if<Text>(&item)) count += text->words == "R" ? 1 : 0;
        return count;
    };
    const std::size_t before = drawn_rot(found);
    FoundLog &log = *std::ranges::find(record.logs, "A 1", &FoundLog::tag);
    log.zero.clear();
    found.record = std::make_shared<const Record>(record);
    const auto sheets = report_of(found, options_on(Paper::letter, Language::english));
    std::string summary = words_of({sheets.front(), sheets[1]});
    std::ranges::replace(summary, '\n', ' ');
    CHECK_THAT(summary, ContainsSubstring("not from which corner: they are drawn nowhere 1 A 1"));
    CHECK_THAT(words_in(sheets, "Wood, pegs and later cuts"), ContainsSubstring("\n2.3.0 ?\n"));
    CHECK(drawn_rot(found) + 1 == before);
}

TEST_CASE(
    "The first pages say how bare numbers count, and which openings are closed, with the logs that go") {
    const FoundHouse &found = house();
    ReportSource source{found.record, found.folder, {}, found.mends, "as it shall stand"};
    source.openings = {{"late window", "A", true, {"A-02-1", "A-02-2"}, {"A-02-7"}}};
    SheetOptions options = options_on(Paper::a4, Language::english);
    Shell metric = found.laid.shell;
    metric.units = UnitSystem::metric;
    const auto sheets = composed(report_set(source), {metric, found.laid.layout, found.laid.bodies, options});
    CHECK_THAT(words_of({sheets.front()}),
               ContainsSubstring("lengths without a unit") &&
                   ContainsSubstring("millimetres (mm); what stands in the record"));
    CHECK_THAT(words_in(sheets, "Summary"), ContainsSubstring("Openings that are closed or cut") &&
                                                ContainsSubstring("late window, wall A") &&
                                                ContainsSubstring("A-02-1, A-02-2") &&
                                                ContainsSubstring("A-02-7"));
    for (const Language language : {Language::english, Language::french}) {
        options.fields.language = language;
        CHECK(all_clashes(composed(report_set(source),
                                   {metric, found.laid.layout, found.laid.bodies, options})) == "");
    }
    source.openings.clear();
    CHECK_THAT(
        words_of(composed(report_set(source), {metric, found.laid.layout, found.laid.bodies, options})),
        !ContainsSubstring("late window, wall A"));
}

TEST_CASE("A place past the end of its log is not printed as if it were true, and its zone is not drawn") {
    FoundHouse found = house();
    Record record = *found.record;
    const auto log =
        std::ranges::find_if(record.logs, [](const FoundLog &each) { return !each.zero.empty(); });
    REQUIRE(log != record.logs.end());
    FoundPeg peg;
    peg.state = PegState::missing;
    peg.at.written = "99999 mm", peg.at.value = Length::mm(99999);
    log->pegs.push_back(peg);
    found.record = std::make_shared<const Record>(record);
    const auto words = words_of(report_of(found, options_on(Paper::a4, Language::english)));
    CHECK_THAT(words, ContainsSubstring("past the end"));
    CHECK_THAT(words_of(report_of(house(), options_on(Paper::a4, Language::english))),
               !ContainsSubstring("past the end"));
}

TEST_CASE("Every log of the record stands in the table, and on its wall with the letter of its decision") {
    const auto sheets = report_of(house(), options_on(Paper::letter, Language::english));
    const std::string logs = words_in(sheets, "Logs");
    for (const FoundLog &log : house().record->logs)
        CHECK_THAT(logs, ContainsSubstring(log.tag + "\n"));
    const std::string wall = words_in(sheets, "Wall A");
    CHECK_THAT(wall, ContainsSubstring("\nA 1 R\n")); // replaced, after a change of mind
    CHECK_THAT(wall, ContainsSubstring("\nA 2.1 K\n"));
    CHECK_THAT(wall, ContainsSubstring("\nA 4.2 M\n"));
    CHECK_THAT(wall, ContainsSubstring("\nA 14 ?\n"));
    CHECK_THAT(wall, ContainsSubstring("A 9 ≠")); // two measures of its height differ
    CHECK_THAT(words_in(sheets, "Wall B"), ContainsSubstring("\nB 11 L\n"));
    CHECK_THAT(words_in(sheets, "Wall D"), ContainsSubstring("\nD 9 T\n"));
    CHECK_THAT(words_in(sheets, "Corners"), ContainsSubstring("Corner NE"));
}

TEST_CASE("The sums of the report are those of the list, before and after the changes of mind") {
    const auto sheets = report_of(house(), options_on(Paper::letter, Language::english));
    const std::string summary = words_in(sheets, "Summary");
    const Voice voice({Language::english, house().laid.shell.units});
    const FabricFigures now = fabric_figures(*house().record, house().laid.layout, house().laid.bodies),
                        before = fabric_figures(*house().record, house().laid.layout, house().laid.bodies, 1);
    CHECK(now.most == 2);
    CHECK(now.gone == 1); // the top log of wall D
    CHECK(before.stays().logs > now.stays().logs);
    for (const auto &row : fabric_table(now, {before}, voice).rows)
        for (const Entry &entry : row)
            if (const auto *number = std::get_if<Number>(&entry);
                number && voice.system() == UnitSystem::metric)
                CHECK_THAT(summary, ContainsSubstring("\n" + number->digits + "\n"));
    CHECK_THAT(summary, ContainsSubstring("stayed by decision 1"));
    CHECK_THAT(summary, ContainsSubstring("\n" + std::to_string(now.stays().logs) + "\n"));
    CHECK_THAT(summary, ContainsSubstring("burnt into the upper face"));  // how new wood is marked
    CHECK_THAT(summary, ContainsSubstring("the underside of the sills")); // not seen
}

TEST_CASE("Zones are drawn on the logs where they lie, by hatch and letter") {
    const auto sheets = report_of(house(), options_on(Paper::letter, Language::english));
    std::size_t rotten = 0, circles = 0;
    for (const Sheet &sheet : sheets) {
        if (!shows(sheet, "Wall A")) continue;
        for (const Item &item : sheet.items) {
            if (const Text *text = std::get_if<Text>(&item)) rotten += text->words == "R" ? 1 : 0;
            circles += std::holds_alternative<Circle>(item) ? 1 : 0;
        }
    }
    CHECK(rotten >= 3);   // in both keys, and on log A 1
    CHECK(circles >= 20); // pegs, and the dots of soft wood
    CHECK_THAT(words_in(sheets, "Wood, pegs and later cuts"), ContainsSubstring("no hold for 4 in"));
}

TEST_CASE("New wood of mends is drawn in its log, and told from which end, how far and how deep") {
    const auto sheets = report_of(house(), options_on(Paper::a4, Language::english));
    REQUIRE(house().mends.size() == 2);
    std::string logs = words_in(sheets, "Logs");
    std::ranges::replace(logs, '\n', ' '); // cells of a table are wrapped
    for (const char *words :
         {"C-01-1-M1", "left end: new to 2' 2\", lap 1' 4\" on", "lengths chosen by R. Hale", "A-04-2-M1",
          "right end: from 3' 9\" to 6' 9\"", "half the log"})
        CHECK_THAT(logs, ContainsSubstring(words));
    for (const char *wall : {"Wall A", "Wall C"})
        CHECK_THAT(words_in(sheets, wall), ContainsSubstring("new wood that mends the log"));
    CHECK_THAT(words_in(sheets, "Wall C"), ContainsSubstring("\nM1\n")); // in wall A it has no room
    std::size_t told = 0; // of the four walls, beside two of them, and once with the corners
    const std::string all = words_of(sheets), sentence = "new wood that mends the log";
    for (std::size_t at = all.find(sentence); at != std::string::npos; at = all.find(sentence, at + 1))
        ++told;
    CHECK(told == 3);
}

TEST_CASE("Photographs are set in, and one that has moved is told in its place") {
    const auto sheets = report_of(house(), options_on(Paper::a4, Language::english));
    CHECK(pictures_on(sheets) == 4);
    CHECK_THAT(words_in(sheets, "Photographs"), !ContainsSubstring("Not shown"));
    FoundHouse moved = house();
    moved.folder = "/nowhere";
    const auto without = report_of(moved, options_on(Paper::a4, Language::english));
    CHECK(pictures_on(without) == 0);
    CHECK_THAT(words_in(without, "Photographs"), ContainsSubstring("Not shown: there is no such file"));
    CHECK_THAT(words_in(without, "Photographs"), ContainsSubstring("old-house/barn-1.png"));
    CHECK(all_clashes(without) == "");
}

TEST_CASE("Cautions stand with whoever says so, and nothing is called safe") {
    const auto sheets = report_of(house(), options_on(Paper::letter, Language::english));
    const std::string cautions = words_in(sheets, "Cautions");
    for (const char *who : {"OSHA, 29 CFR 1926.850(a)", "CDC, hantavirus", "Washington State", "EPA"})
        CHECK_THAT(cautions, ContainsSubstring(who));
    CHECK_THAT(cautions, ContainsSubstring("30 minutes"));
}

TEST_CASE("A report of any shell holds together, whatever its record says") {
    for (const std::string &name : all_demo_names) {
        INFO(name);
        const LaidShell shell = demo(name);
        Record record;
        for (const auto i : shell.layout.pieces.indices()) {
            const Piece &piece = shell.layout.pieces[i];
            if (piece.timber || i.number() % 3 == 0) continue; // some are not recorded
            FoundLog log;
            log.tag = piece.tag;
            log.place = {shell.layout.walls[piece.wall].name, piece.round, piece.number};
            log.zero = piece.datum.at;
            if (i.number() % 2 == 0)
                log.decisions = {{Decision(i.number() / 2 % 6), "R. Hale", "3 May", "so", {}}};
            const NotedLength from{"300 mm", Length::mm(300)}, to{"900 mm", Length::mm(900)};
            log.zones = {{Soundness(i.number() % 5), from, to, {FoundFace(i.number() % 4)}}};
            record.logs.push_back(log);
        }
        const FoundHouse found{shell, std::make_shared<const Record>(record), {}};
        CHECK(all_clashes(report_of(found, options_on(Paper::a4, Language::french))) == "");
    }
}

TEST_CASE("A state that was drawn before anybody measured tells nothing of old wood") {
    CHECK_FALSE(tells_of_old_wood(old_house("as drawn").laid.layout));
    CHECK(tells_of_old_wood(old_house("as found").laid.layout));
    CHECK(tells_of_old_wood(old_house("as it shall stand").laid.layout));
}
