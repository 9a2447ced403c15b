// Which pieces a finding is about.
#include "kernel/layout/lay_out.h"
#include "kernel/layout/openings/openings.h"
#include "kernel/layout/pieces/finding_pieces.h"
#include "tests/support/catch.h"
#include "tests/support/shells.h"

#include <set>

using namespace roundlay;
using test::window;

TEST_CASE("A finding is of the pieces that it names, not of those whose tags are part of what it names") {
    Shell shell = test::plain_shell();
    shell.walls[1].name = "BA"; // its logs are BA-01-1 and so on, wall A's A-01-1
    const Layout layout = lay_out(shell);
    const auto named = [&](const About &about) {
        std::string tags;
        for (const Index<Piece> i : pieces_of({Weight::warning, "x", about, {}, {}, ""}, shell, layout))
            tags += layout.pieces[i].tag + " ";
        return tags;
    };
    CHECK(named({about::Piece{"BA-02-1"}}) == "BA-02-1 ");
    CHECK(named({about::Piece{"A-02-1"}}) == "A-02-1 ");
    CHECK(named({about::Pieces{"A-02-1", "BA-03-1"}}) == "A-02-1 BA-03-1 ");
    CHECK(named(round_place("BA", 2)) == "BA-02-1 ");
    CHECK(named({about::Wall{"A"}, about::Opening{OpeningKind::door, 1, "BA-02-1"}})
              .starts_with("A-01-1 A-02-1 "));
}

TEST_CASE(
    "A finding about pegs is of the two logs that they should hold, whatever opening left them no place") {
    Shell shell = test::plain_shell();
    shell.openings = {window("A", 300, 300, 800, 400)}; // 100 mm from the tails: no place for two pegs
    const Layout layout = lay_out(shell);
    int told = 0;
    for (const Finding &f : layout.findings) {
        if (f.code != "pegs-do-not-fit" || f.weight != Weight::warning) continue;
        ++told;
        std::set<std::string> named, found;
        for (const Amount &amount : f.what.amounts)
            if (const auto *name = std::get_if<std::string>(&amount.value())) named.insert(*name);
        for (const Index<Piece> i : pieces_of(f, shell, layout))
            found.insert(layout.pieces[i].tag);
        CHECK(found.size() == 2);
        CHECK(found == named);
    }
    CHECK(told > 1);
}

TEST_CASE("A finding about an opening is of the logs that it cuts, also where it has no name or another's") {
    Shell shell = test::plain_shell();
    shell.openings = {window("A", 600, 460, 700, 230), window("A", 2600, 460, 700, 230),
                      window("C", 600, 460, 700, 230)};
    const auto cut_by = [&](std::size_t opening) {
        const Layout layout = lay_out(shell);
        const Finding finding{Weight::warning,
                              "x",
                              opening_place(shell, opening),
                              {},
                              {},
                              "opening[" + std::to_string(opening) + "].height"};
        std::string tags;
        for (const Index<Piece> i : pieces_of(finding, shell, layout))
            tags += layout.pieces[i].tag + " ";
        return tags;
    };
    // Rounds of 230 mm: the third is parted by each window, left and right of it.
    CHECK(cut_by(0) == "A-03-1 A-03-2 ");
    CHECK(cut_by(1) == "A-03-2 A-03-3 ");
    CHECK(cut_by(2) == "C-03-1 C-03-2 ");
    for (Opening &o : shell.openings)
        o.name = "lake window";
    CHECK(cut_by(0) == "A-03-1 A-03-2 ");
    CHECK(cut_by(1) == "A-03-2 A-03-3 ");
    CHECK(cut_by(2) == "C-03-1 C-03-2 ");
}
