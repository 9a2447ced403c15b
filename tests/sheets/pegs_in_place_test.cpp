// Pegs that are bored in place: the walls' elevations have their places, the cut sheets do not.
#include "exporters/sheets/cut_sheet/cut_sheet.h"
#include "exporters/sheets/elevation/elevation.h"
#include "exporters/sheets/elevation/peg_table.h"
#include "tests/sheets/support/checks.h"
#include "tests/sheets/support/paper_words.h"
#include "tests/sheets/support/sets.h"
#include "tests/support/catch.h"
#include "tests/support/sheet_words.h"
#include "tests/support/shells.h"

#include <rapidcheck.h>

#include <cmath>
#include <regex>
#include <sstream>

using namespace roundlay;
using namespace roundlay::sheets;
using namespace roundlay::test;

namespace {

LaidShell in_place(Shell shell) {
    shell.pegs.bored = PegBoring::in_place;
    shell.pegs.draw = {};
    return laid(shell);
}

struct Told {
    int round = 0;
    double along = 0, depth = 0;
};

double millimetres(const std::string &text) {
    PaperWord word;
    word.text = text;
    return word.mm();
}

/// "305, 1480" with their depth beside them, or "305 (310 deep), 1480 (312 deep)".
std::vector<Told> told_in(const Table &table) {
    static const std::regex form("(.*) \\((.*) deep\\)");
    std::vector<Told> all;
    for (const auto &row : table.rows) {
        std::istringstream places(row[1]);
        for (std::string place; std::getline(places >> std::ws, place, ',');) {
            std::smatch m;
            const bool own = std::regex_match(place, m, form);
            all.push_back({std::stoi(row[0]), millimetres(own ? m[1].str() : place),
                           millimetres(own ? m[2].str() : row[2])});
        }
    }
    return all;
}

/// A peg is told where the kernel has it, within the last printed digit.
bool is_told(const std::vector<Told> &told, const LaidShell &shell, const Peg &peg) {
    const Piece &upper = shell.layout.pieces[peg.upper];
    const double x = shell.layout.walls[upper.wall].frame.to_local(peg.top).x;
    const double digit = shell.shell.units == UnitSystem::metric ? 0.5 : 25.4 / 32;
    return std::ranges::any_of(told, [&](const Told &t) {
        return t.round == upper.round && std::abs(t.along - x) <= digit + 1e-9 &&
               std::abs(t.depth - peg.length) <= digit + 1e-9;
    });
}

std::string untold(const LaidShell &shell) {
    const Words words(shell.shell.units);
    std::size_t count = 0;
    for (const auto wall : shell.layout.walls.indices()) {
        const auto told = told_in(pegs_in_place(shell.shell, shell.layout, wall, words));
        count += told.size();
        for (const Peg &peg : shell.layout.pegs)
            if (shell.layout.pieces[peg.upper].wall == wall && !is_told(told, shell, peg)) return peg.name;
    }
    return count == shell.layout.pegs.size() ? "" : "not as many as there are";
}

bool hold(const std::vector<Sheet> &sheets, const std::string &words) {
    return words_of(sheets).find(words) != std::string::npos;
}

} // namespace

TEST_CASE("elevations tell each peg that is bored in place, and cut sheets none") {
    for (const std::string &name : all_demo_names) {
        const LaidShell bench = demo(name), shell = in_place(bench.shell);
        if (shell.layout.pegs.empty()) continue;
        INFO(name);
        CHECK(untold(shell) == "");
        const auto walls = wall_elevations(shell.shell, shell.layout, shell.bodies, full_options(Paper::a3));
        CHECK(hold(walls, "bored in place"));
        CHECK(all_clashes(walls) == "");
        CHECK_FALSE(hold(wall_elevations(bench.shell, bench.layout, bench.bodies, full_options(Paper::a3)),
                         "bored in place"));
        const auto notes =
            composed({common_notes_subject()}, {shell.shell, shell.layout, shell.bodies, full_options()});
        CHECK(hold(notes, "bored in place"));
        CHECK_FALSE(hold(cut_sheets(shell.shell, shell.layout, shell.bodies, full_options()), "(peg)"));
    }
}

TEST_CASE("elevations of any shell tell its pegs that are bored in place") {
    CHECK(counterexample(shells_to_draw(40), [] {
              Shell drawn = any_of_all_shells();
              drawn.units = *rc::gen::element(UnitSystem::metric, UnitSystem::imperial);
              const LaidShell shell = in_place(drawn);
              RC_PRE(!shell.layout.pieces.empty());
              if (const std::string peg = untold(shell); !peg.empty()) RC_FAIL(peg);
          }) == "");
}
