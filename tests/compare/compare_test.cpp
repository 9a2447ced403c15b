#include "exporters/lists/compare_table.h"
#include "kernel/compare/compare.h"
#include "kernel/document/document.h"
#include "kernel/layout/lay_out.h"
#include "kernel/layout/pieces/wood_difference.h"
#include "tests/support/catch.h"
#include "tests/support/shells.h"
#include "tests/support/temporary_folder.h"

#include <rapidcheck.h>

#include <algorithm>
#include <filesystem>
#include <map>
#include <set>

using namespace roundlay;

namespace {

const Piece *piece(const Layout &layout, const std::optional<Index<Piece>> &index) {
    return index ? &layout.pieces[*index] : nullptr;
}

/// By the tag in the second layout; of what is gone in the first.
std::map<std::string, ComparedPiece> by_tag(const Layout &a, const Layout &b) {
    std::map<std::string, ComparedPiece> all;
    for (const ComparedPiece &each : compared(a, b)) {
        const Piece *is = piece(b, each.after), *was = piece(a, each.before);
        all.emplace(is ? is->tag : "gone " + was->tag, each);
    }
    return all;
}

int count(const std::vector<ComparedPiece> &all, PieceChange what) {
    return static_cast<int>(std::ranges::count(all, what, &ComparedPiece::what));
}

} // namespace

TEST_CASE("A shell against itself is unchanged, piece by piece") {
    REQUIRE(rc::check("any shell", [] {
        const Layout layout = lay_out(test::any_family_shell());
        const auto all = compared(layout, layout);
        RC_ASSERT(all.size() == layout.pieces.size());
        RC_ASSERT(count(all, PieceChange::unchanged) == static_cast<int>(all.size()));
    }));
}

TEST_CASE("Every piece of both shells stands in a comparison once, whatever the two are") {
    REQUIRE(rc::check("any two shells", [] {
        const Layout a = lay_out(test::any_fitted_shell()), b = lay_out(test::any_fitted_shell());
        std::multiset<std::string> before, after, was, is;
        for (const Piece &p : a.pieces)
            was.insert(p.tag);
        for (const Piece &p : b.pieces)
            is.insert(p.tag);
        for (const ComparedPiece &each : compared(a, b)) {
            RC_ASSERT(each.before.has_value() == (each.what != PieceChange::added));
            RC_ASSERT(each.after.has_value() == (each.what != PieceChange::gone));
            if (each.before) before.insert(a.pieces[*each.before].tag);
            if (each.after) after.insert(b.pieces[*each.after].tag);
        }
        RC_ASSERT(before == was);
        RC_ASSERT(after == is);
        // The other way round what is new is gone, and what is longer is shorter.
        const auto there = compared(a, b), back = compared(b, a);
        RC_ASSERT(count(there, PieceChange::added) == count(back, PieceChange::gone));
        RC_ASSERT(count(there, PieceChange::longer) == count(back, PieceChange::shorter));
        RC_ASSERT(count(there, PieceChange::recut) == count(back, PieceChange::recut));
    }));
}

TEST_CASE("A wall that is longer has longer logs, by as much as the wall; those of the walls beside it are "
          "unchanged") {
    Shell shell = test::plain_shell();
    const Layout before = lay_out(shell);
    shell.walls[0].length = shell.walls[0].length + Length::mm(600);
    shell.walls[2].length = shell.walls[0].length;
    const auto all = by_tag(before, lay_out(shell));
    for (const auto &[tag, each] : all) {
        INFO(tag);
        const bool long_wall = tag.starts_with("A") || tag.starts_with("C");
        CHECK(each.what == (long_wall ? PieceChange::longer : PieceChange::unchanged));
        CHECK(each.longer == Approx(long_wall ? 600 : 0));
        CHECK_FALSE(each.section);
    }
    CHECK(by_tag(lay_out(shell), before).at("A-02-1").longer == Approx(-600));
}

TEST_CASE("A window that is cut leaves a shorter log and a new one where the long one lay") {
    Shell shell = test::plain_shell();
    const Layout before = lay_out(shell);
    shell.openings.push_back(test::window("A", 1500, 230, 800, 460));
    const Layout after = lay_out(shell);
    const auto all = by_tag(before, after);
    CHECK(all.at("A-02-1").what == PieceChange::shorter);
    CHECK(all.at("A-02-1").longer == Approx(1500 - before.pieces[*all.at("A-02-1").before].blank.length));
    const ComparedPiece &right = all.at("A-02-2");
    CHECK(right.what == PieceChange::added);
    REQUIRE(right.where.size() == 1);
    CHECK(before.pieces[right.where[0]].tag == "A-02-1");
    CHECK(all.at("B-02-1").what == PieceChange::unchanged);
    // Closed again: the right piece is gone, and the long log lies there.
    const auto back = by_tag(after, before);
    CHECK(back.at("A-02-1").what == PieceChange::longer);
    const ComparedPiece &gone = back.at("gone A-02-2");
    REQUIRE(gone.where.size() == 1);
    CHECK(before.pieces[gone.where[0]].tag == "A-02-1");
}

TEST_CASE("A wider gap lifts logs that are the same wood, and other notches cut them anew") {
    Shell shell = test::plain_shell();
    const Layout before = lay_out(shell);
    Shell other = shell;
    other.notch.slope = Slope::rise_per_run(1.0 / 6);
    int recut = 0;
    for (const auto &[tag, each] : by_tag(before, lay_out(other)))
        recut += each.what == PieceChange::recut;
    CHECK(recut > 10);
    other = shell;
    other.own_logs.push_back({});
    other.own_logs.back().wall = "A", other.own_logs.back().round = 2,
    other.own_logs.back().note = "blue chalk";
    for (const auto &[tag, each] : by_tag(before, lay_out(other)))
        CHECK(each.what == (tag == "A-02-1" ? PieceChange::retold : PieceChange::unchanged));
}

TEST_CASE("A wall that is called otherwise has the same logs in another place") {
    Shell shell = test::plain_shell();
    const Layout before = lay_out(shell);
    shell.walls[1].name = "E";
    const Layout after = lay_out(shell);
    const auto all = compared(before, after);
    CHECK(count(all, PieceChange::gone) == 0);
    CHECK(count(all, PieceChange::added) == 0);
    for (const ComparedPiece &each : all)
        if (each.what == PieceChange::moved) {
            CHECK(before.pieces[*each.before].tag.starts_with("B"));
            CHECK(after.pieces[*each.after].tag.starts_with("E"));
        }
    CHECK(count(all, PieceChange::moved) >= 4);
}

TEST_CASE("The states of an old house, told by what the document says of them") {
    const auto file = std::filesystem::path(ROUNDLAY_ROOT) / "tests/document/documents/old-house.roundlay";
    const auto laid = [&](const char *state) {
        const ReadResult read = read_document_file(file, state);
        REQUIRE(read.shell);
        const Layout layout = lay_out(*read.shell);
        REQUIRE_FALSE(layout.pieces.empty());
        return layout;
    };
    const Layout found = laid("as found"), built = laid("as first built"), stands = laid("as it shall stand");
    const auto first = by_tag(found, built);
    CHECK(first.at("C-01-1").what == PieceChange::longer);
    CHECK(first.at("C-01-1").longer == Approx(2 * mm_per_foot));
    CHECK(first.at("gone C-04-2").what == PieceChange::gone); // the window is closed
    CHECK(first.at("B-03-1").what == PieceChange::unchanged);
    const auto second = by_tag(built, stands);
    CHECK(second.at("C-04-2").what == PieceChange::added);
}

TEST_CASE("How far a log differs is told by its two ends, and where only its cuts do by the most of these") {
    const Shell plain = test::plain_shell(); // logs of 200 mm x 210 mm
    const Layout before = lay_out(plain);
    const auto log = [](const Layout &layout, const char *tag) -> const Piece & {
        return *std::ranges::find(layout.pieces, tag, &Piece::tag);
    };
    Shell taller = plain;
    OwnLog own;
    own.wall = "A", own.round = 3, own.sizes.butt = LogEnd::left;
    own.sizes.butt_height = Length::mm(240), own.sizes.tip_height = Length::mm(230);
    own.sizes.butt_width = Length::mm(190), own.sizes.tip_width = Length::mm(200);
    taller.own_logs = {own};
    const Layout after = lay_out(taller);
    REQUIRE(after.pieces.size() > 0);
    const WoodDifference differs = wood_difference(log(before, "A-03-1"), log(after, "A-03-1"));
    CHECK(differs.height_datum == Approx(30).margin(1e-6));
    CHECK(differs.height_far == Approx(20).margin(1e-6));
    CHECK(differs.width_datum == Approx(-10).margin(1e-6));
    CHECK(differs.width_far == Approx(0).margin(1e-6));
    CHECK(differs.length == Approx(0).margin(1e-6));
    CHECK(differs.most() >= 30);
    const WoodDifference same = wood_difference(log(before, "A-02-1"), log(before, "A-02-1"));
    CHECK(same.most() == 0);
    REQUIRE(same.cuts);

    // In the list each row that is cut anew says what differs.
    const Voice voice({Language::english, UnitSystem::metric});
    const Table table = compare_table(compared(before, after), before, after, voice);
    const auto column = std::ranges::find(table.columns, "differs", &Column::key) - table.columns.begin();
    bool told = false;
    for (const auto &row : table.rows) {
        const auto &cell = std::get<std::vector<std::string>>(row[static_cast<std::size_t>(column)]);
        const std::string what = std::get<std::string>(row[0]);
        const auto &goes = std::get<std::vector<std::string>>(row[row.size() - 3]);
        const auto &comes = std::get<std::vector<std::string>>(row[row.size() - 2]);
        INFO(std::get<std::string>(row[1]));
        if (what == "re-cut") CHECK_FALSE((cell.empty() && goes.empty() && comes.empty()));
        if (std::get<std::string>(row[1]) == "A-03-1") {
            REQUIRE_FALSE(cell.empty());
            CHECK(cell[0] == "heights at its left and right end: +30 mm and +20 mm");
            told = true;
        }
    }
    CHECK(told);
}
