#include "exporters/sheets/cut_sheet/cut_sheet.h"
#include "exporters/sheets/cut_sheet/features.h"
#include "exporters/sheets/cut_sheet/warnings.h"
#include "exporters/sheets/drawing/clash.h"
#include "exporters/sheets/drawing/words.h"
#include "exporters/sheets/pdf/pdf.h"
#include "exporters/sheets/set/scales.h"
#include "exporters/sheets/svg/svg.h"
#include "kernel/document/document.h"
#include "kernel/layout/fastenings/bore_marks.h"
#include "kernel/layout/lay_out.h"
#include "kernel/shell/shapes.h"
#include "tests/sheets/support/checks.h"
#include "tests/sheets/support/cut_sheets.h"
#include "tests/sheets/support/log.h"
#include "tests/sheets/support/run.h"
#include "tests/sheets/support/sets.h"
#include "tests/support/catch.h"
#include "tests/support/shells.h"

#include <rapidcheck.h>

#include <algorithm>
#include <set>

using namespace roundlay;
using namespace roundlay::sheets;
using namespace roundlay::test;

namespace {

/// All words in a row, as they follow one another.
std::string prose_of(const std::vector<Sheet> &sheets) {
    std::string all;
    for (const Sheet &sheet : sheets)
        for (const Item &item : sheet.items)
            if (const Text *text = std::get_if<Text>(&item)) all += text->words + " ";
    return all;
}

/// Cells of the table whose title starts so, counted by its first column's start.
int rows_starting(const std::vector<Sheet> &sheets, const std::string &start) {
    int count = 0;
    for (const Sheet &sheet : sheets)
        for (const Item &item : sheet.items)
            if (const Text *text = std::get_if<Text>(&item))
                if (text->role == Role::cell && text->words.size() > start.size() &&
                    text->words.starts_with(start) &&
                    text->words.find_first_not_of("0123456789", start.size()) == std::string::npos)
                    ++count;
    return count;
}

/// Numbers of cuts and names of pegs on the views, each counted once.
std::size_t marks_on(const std::vector<Sheet> &sheets) {
    std::set<std::string> marks;
    std::size_t count = 0;
    for (const Sheet &sheet : sheets)
        for (const Item &item : sheet.items)
            if (const Text *text = std::get_if<Text>(&item); text && text->role == Role::mark) {
                ++count;
                marks.insert(text->words);
            }
    return count == marks.size() ? count : 0;
}

/// All but the tapering of faces, the rounding of arrises and the cheeks of a joist's tail, which go along a
/// face and are told in words; bores are counted apart.
std::size_t cuts_with_a_mark(const Piece &piece) {
    return static_cast<std::size_t>(std::count_if(piece.cuts.begin(), piece.cuts.end(), [](const Cut &cut) {
        return std::holds_alternative<SeamCut>(cut) || std::holds_alternative<BoxCut>(cut) ||
               std::holds_alternative<PocketCut>(cut) || std::holds_alternative<ScopeCut>(cut);
    }));
}

const std::optional<BoreUse> every_use[] = {std::nullopt, BoreUse::bolt, BoreUse::rod, BoreUse::wire,
                                            BoreUse::hole};

int bores_for(const Piece &piece, std::optional<BoreUse> use) {
    return static_cast<int>(std::count_if(piece.cuts.begin(), piece.cuts.end(), [&](const Cut &cut) {
        const Bore *bore = std::get_if<Bore>(&cut);
        return bore && bore->use == use;
    }));
}

/// Of the tables that the piece's sheets must have.
std::vector<std::string> titles_of(const Piece &piece) {
    const Features f = features_of(piece);
    std::vector<std::string> titles{"Piece", "Tag", "Notes"};
    if (!piece.cuts.empty()) titles.emplace_back("Cuts, in cutting order");
    if (!f.pegs.empty()) titles.emplace_back("Bores");
    if (!f.pockets.empty()) titles.emplace_back("Pockets");
    if (!slanting_places(f).empty()) titles.emplace_back("Not square across");
    return titles;
}

std::string problems(const Shell &shell, const CutSheetOptions &options, std::size_t most_models) {
    const Layout layout = lay_out(shell);
    const Words words(shell.units, options.denominator);
    std::string text;
    for (const auto m : Indices<Model>(std::min(layout.models.size(), most_models))) {
        const Piece &piece = layout.pieces[layout.models[m].pieces.front()];
        const auto sheets = cut_sheet(shell, layout, layout.models[m], body_of(piece), options);
        if (sheets.empty()) text += piece.tag + ": no sheet\n";
        text += all_clashes(sheets);
        for (const std::string &title : titles_of(piece))
            if (!says(sheets, title)) text += piece.tag + " has no table \"" + title + "\"\n";
        if (says(sheets, "Cannot be drawn")) text += piece.tag + " could not be drawn\n";
        const std::string dims = compared(dimensions_on(sheets, words), dimensions_of(piece, words));
        if (!dims.empty()) text += piece.tag + " dimensions:\n" + dims + write_document(shell);
        const int pegs = static_cast<int>(features_of(piece).pegs.size());
        if (marks_on(sheets) != cuts_with_a_mark(piece) + static_cast<std::size_t>(pegs))
            text += piece.tag + ": marks are not those of the cuts\n";
        for (const auto use : every_use)
            if (rows_starting(sheets, letter_of(use)) != bores_for(piece, use))
                text +=
                    piece.tag + ": bores of " + name_of(use) + " in the table are not those of the piece\n";
    }
    return text;
}

Shell house(UnitSystem units) {
    Shell shell;
    shell.name = "Larch Hollow";
    shell.units = units;
    const bool metric = units == UnitSystem::metric;
    const auto size = [&](double mm, double feet) { return metric ? Length::mm(mm) : Length::feet(feet); };
    shell.walls = l_plan(size(9600, 32), size(7800, 26), size(3900, 13), size(4800, 16));
    shell.thickness = size(200, 8.0 / 12);
    shell.rounds.count = 9;
    shell.rounds.pitch = size(230, 9.25 / 12);
    shell.rounds.gap = size(20, 0.75 / 12);
    Opening opening;
    opening.wall = "A";
    opening.name = "front door";
    opening.kind = OpeningKind::door;
    opening.from_left = Length::mm(2000);
    opening.sill = Length::mm(100);
    opening.width = Length::mm(950);
    opening.height = Length::mm(1800);
    shell.openings = {opening};
    opening.kind = OpeningKind::window;
    opening.name = "kitchen window";
    opening.from_left = Length::mm(4800);
    opening.sill = Length::mm(900);
    opening.height = Length::mm(1000);
    shell.openings.push_back(opening);
    return shell;
}

} // namespace

TEST_CASE("no sheet of a whole house has a clash, and every cut is dimensioned once") {
    const auto run = [](UnitSystem units, std::optional<Paper> paper, Angle angle) {
        CutSheetOptions options = options_for(paper);
        options.angle = angle;
        return problems(house(units), options, 1000);
    };
    CHECK(run(UnitSystem::metric, std::nullopt, Angle::third) == "");
    CHECK(run(UnitSystem::imperial, std::nullopt, Angle::third) == "");
    CHECK(run(UnitSystem::metric, Paper::a4, Angle::first) == "");
    CHECK(run(UnitSystem::imperial, Paper::letter, Angle::third) == "");
}

TEST_CASE("no sheet of a house of round logs has a clash, and every cut is dimensioned once") {
    Shell shell = test::round_shell();
    shell.notch.scribe = Length::mm(3);
    shell.openings = {test::window("A", 1800, 420, 900, 500)};
    for (const UnitSystem units : {UnitSystem::metric, UnitSystem::imperial})
        for (const Paper paper : {Paper::a4, Paper::a3, Paper::tabloid}) {
            shell.units = units;
            CHECK(problems(shell, options_for(paper), 1000) == "");
        }
}

TEST_CASE("numbers are measured from what is there when they are marked") {
    Shell shell = test::plain_shell();
    const auto sheets_for = [&](const Shell &s) { // of the second log: the first lies flat on the foundation
        const Layout layout = lay_out(s);
        const auto log = std::find_if(layout.pieces.begin(), layout.pieces.end(),
                                      [](const Piece &p) { return p.tag == "A-02-1"; });
        REQUIRE(log != layout.pieces.end());
        return cut_sheet(s, layout, layout.models[log->model], body_of(*log), options_for());
    };
    const std::string from_line =
        "heights over (+) or under (-) the level line LL, across from the outside face";
    CHECK_THAT(prose_of(sheets_for(shell)), Catch::Contains(from_line + ". "));
    shell.logs.tip_height = Length::mm(190);
    shell.logs.tip_width = Length::mm(170);
    const auto tapered = sheets_for(shell);
    CHECK_THAT(prose_of(tapered), Catch::Contains(from_line + " as hewn. Hew the tapers first"));
    // 210 at the butt; at the tip its top stays level and 20 come off below. Half of 210 in tens is 110.
    auto numbers = dimensions_on(tapered, Words(UnitSystem::metric));
    CHECK(numbers["+100"] == 2);
    CHECK(numbers["-110"] == 1);
    CHECK(numbers["-90"] == 1);
}

TEST_CASE("a round log is measured from its heart, which no cut takes away") {
    const test::LaidShell shell = test::laid(test::round_shell());
    REQUIRE_FALSE(shell.layout.pieces.empty());
    int said = 0, flat = 0;
    for (const Model &model : shell.layout.models) {
        const Piece &piece = shell.layout.pieces[model.pieces.front()];
        const auto sheets =
            cut_sheet(shell.shell, shell.layout, model, shell.bodies[piece.model], test::full_options());
        std::string words;
        for (const Sheet &sheet : sheets)
            for (const Item &item : sheet.items)
                if (const Text *text = std::get_if<Text>(&item)) words += text->words + " ";
        const HewnFaces faces = hewn_faces(piece);
        INFO(piece.tag);
        const bool heart = words.find("through the heart at both ends") != std::string::npos;
        const double axis = faces.round->from.z, low = faces.lowest(0), high = faces.highest(0);
        CHECK(heart == (std::min(axis - low, high - axis) > (high - low) / 4)); // not of a half log
        const bool over_stick = words.find("over the lowest line of the stick") != std::string::npos;
        CHECK(over_stick == (faces.under_footing() == Footing::touched));
        ++(over_stick ? said : flat);
    }
    CHECK(said > 0);
    CHECK(flat > 0); // sills lie on a flat
}

TEST_CASE("what the check warns of stands on the sheet of the piece, without its advice") {
    Shell shell = test::plain_shell();
    shell.name = "Larch Hollow";
    const Layout layout = lay_out(shell);
    const auto &pieces = layout.pieces;
    const Findings findings{
        {Weight::warning,
         "a",
         {about::Wall{"A"}, about::Round{1}, about::Piece{pieces.front().tag}},
         said("the log is odd"),
         said("another would fit"),
         ""},
        {Weight::note, "b", {about::Piece{pieces.front().tag}}, said("worth knowing"), {}, ""}};
    CutSheetOptions options = options_for();
    options.warnings = warnings_by_model(findings, shell, layout);
    for (const Model &model : layout.models) {
        const bool first =
            std::find(model.pieces.begin(), model.pieces.end(), Index<Piece>(0)) != model.pieces.end();
        const Piece &piece = pieces[model.pieces[0]];
        const auto sheets = cut_sheet(shell, layout, model, body_of(piece), options);
        CHECK(says(sheets, "the log is odd") == first);
        CHECK_FALSE(says(sheets, "another would fit"));
        CHECK_FALSE(says(sheets, "worth knowing"));
        CHECK(all_clashes(sheets) == "");
    }
}

TEST_CASE("no sheet of any shell has a clash, and every cut is dimensioned once") {
    CHECK(test::counterexample(test::shells_to_draw(25), [] {
              Shell shell = test::any_of_all_shells();
              shell.units = *rc::gen::element(UnitSystem::metric, UnitSystem::imperial);
              CutSheetOptions options = options_for(
                  *rc::gen::element(Paper::a4, Paper::a3, Paper::letter, Paper::tabloid, Paper::a2));
              options.angle = *rc::gen::element(Angle::third, Angle::first);
              const std::string found = problems(shell, options, 6);
              if (!found.empty()) RC_FAIL(found);
          }) == "");
}

TEST_CASE("only scales of the list are drawn to") {
    std::set<std::string> listed;
    for (const UnitSystem units : {UnitSystem::metric, UnitSystem::imperial})
        for (const Scale &scale : scales(units))
            listed.insert(scale.words);
    CHECK(scales(UnitSystem::imperial)[3].ratio == Approx(1.0 / 12));
    for (const UnitSystem units : {UnitSystem::metric, UnitSystem::imperial})
        for (const Paper paper : {Paper::a4, Paper::a3, Paper::tabloid})
            for (const Sheet &sheet : sheets_of(test::sample_log(), options_for(paper), units))
                for (const Item &item : sheet.items)
                    if (const Text *text = std::get_if<Text>(&item))
                        if (text->words.starts_with("Isometric, "))
                            CHECK(listed.contains(text->words.substr(11)));
}

TEST_CASE("the cut sheets of a house are a clean, small, repeatable PDF") {
    const test::LaidShell shell = test::laid(house(UnitSystem::metric));
    Book book;
    book.title = "Cut sheets of Larch Hollow";
    book.created = 1700000000;
    book.sheets = test::cut_sheets(shell.shell, shell.layout, shell.bodies, options_for());
    const std::string pdf = write_pdf(book);
    CHECK(pdf == write_pdf(book));
    CHECK(run_on(pdf, "qpdf --check %").code == 0);
    CHECK(static_cast<double>(pdf.size()) / static_cast<double>(book.sheets.size()) <
          15 * 1024); // fonts included
    const auto text = run_on(pdf, "pdftotext -layout % -");
    for (const char *word : {"A-02-1", "Outside", "Finished volume", "front door", "Cuts, in cutting order"})
        CHECK(text.out.find(word) != std::string::npos);
    CHECK(run_on(write_svg(book.sheets[0]), "xmllint --noout %", ".svg").code == 0);
}
