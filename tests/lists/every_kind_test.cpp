// The lists of every kind of shell, against the wood itself.
#include "exporters/lists/bore_table.h"
#include "exporters/lists/cut_list.h"
#include "exporters/lists/shell_tables.h"
#include "exporters/lists/tables.h"
#include "kernel/layout/lay_out.h"
#include "kernel/layout/pieces/stock.h"
#include "kernel/layout/wood/interference.h"
#include "kernel/review/opening_facts.h"
#include "tests/support/any_kind.h"
#include "tests/support/catch.h"
#include "tests/support/shells.h"
#include "tests/support/thrown_away.h"

#include <rapidcheck.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

using namespace roundlay;

namespace {

struct Listed {
    Shell shell;
    Layout layout;
    Bodies bodies;
    CutList list;
};

Listed listed(const Shell &shell) {
    Listed all{shell, lay_out(shell), {}, {}};
    all.bodies = bodies_of(all.layout);
    Indexed<double, Model> volumes;
    for (const Body &body : all.bodies)
        volumes.push_back(body.volume);
    all.list = collect_cut_list(shell, all.layout, volumes);
    return all;
}

bool holds(const Cell &cell, Vec3 p, double room) {
    return std::all_of(cell.faces.begin(), cell.faces.end(),
                       [&](const CellFace &f) { return f.plane.distance(p) <= room; });
}

/// Is there wood of the piece at that place of the world?
bool has_wood(const Listed &all, const Piece &piece, Vec3 world) {
    const Vec3 p = piece.frame.to_local(world);
    const auto &cells = all.bodies[piece.model].cells;
    return std::any_of(cells.begin(), cells.end(), [&](const Cell &c) { return holds(c, p, 1e-6); });
}

/// Tags that the list gives a piece as notched to it.
std::set<std::string> neighbours(const PieceRow &row) {
    std::set<std::string> all(row.at_left.begin(), row.at_left.end());
    all.insert(row.at_right.begin(), row.at_right.end());
    return all;
}

/// Every problem of the list, one a line.
std::string wrong_neighbours(const Listed &all) {
    std::map<std::string, std::set<std::string>> known;
    for (const PieceRow &row : all.list.pieces)
        known[row.tag] = neighbours(row);
    std::string wrong;
    for (const auto &[tag, others] : known)
        for (const std::string &other : others)
            if (!known[other].contains(tag)) wrong += other + " does not name " + tag + "\n";
    return wrong;
}

/// The blank is a stick from which the piece can be cut, and no longer than it must be.
std::string wrong_sizes(const Listed &all) {
    std::string wrong;
    for (std::size_t i = 0; i < all.list.pieces.size(); ++i) {
        const Piece &piece = all.layout.pieces[Index<Piece>(i)];
        const Blank &blank = all.list.pieces[i].stick.blank;
        const Frame lies = stock_of(piece).frame;
        Vec3 low{1e9, 1e9, 1e9}, high{-1e9, -1e9, -1e9};
        for (const Vec3 &v : all.bodies[piece.model].hewn.vertices) {
            const Vec3 p = lies.to_local(v);
            low = {std::min(low.x, p.x), std::min(low.y, p.y), std::min(low.z, p.z)};
            high = {std::max(high.x, p.x), std::max(high.y, p.y), std::max(high.z, p.z)};
        }
        const bool within = low.x > -1e-6 && low.y > -1e-6 && low.z > -1e-6 && high.x < blank.length + 1e-6 &&
                            high.y < blank.width + 1e-6 && high.z < blank.height + 1e-6;
        const bool slants =
            stock_of(piece).lean != 0 ||
            std::any_of(piece.cuts.begin(), piece.cuts.end(), [](const Cut &cut) {
                const FaceCut *face = std::get_if<FaceCut>(&cut);
                return face && (face->face == LogFace::datum_end || face->face == LogFace::far_end);
            });
        const bool as_long = low.x < 1e-6 && high.x > blank.length - 1e-6;
        if (!within || (!as_long && !slants))
            wrong += piece.tag + " is not cut from the blank that is listed\n";
    }
    return wrong;
}

std::string counted_bores(const Listed &all) {
    std::string wrong;
    for (std::size_t i = 0; i < all.list.pieces.size(); ++i) {
        const auto &cuts = all.layout.pieces[Index<Piece>(i)].cuts;
        const auto bores = std::count_if(cuts.begin(), cuts.end(),
                                         [](const Cut &c) { return std::holds_alternative<Bore>(c); });
        long said = 0;
        for (const std::string &words : all.list.pieces[i].stick.cuts)
            if (words.find(" bore") != std::string::npos || words.find(" as found") != std::string::npos)
                said += std::stol(words);
        if (said != bores) wrong += all.list.pieces[i].tag + "\n";
    }
    return wrong;
}

/// A peg is as long as the holes that it is driven through, and what it runs through is wood of both logs'
/// middles.
std::string wrong_pegs(const Listed &all) {
    std::string wrong;
    for (const auto i : all.layout.pegs.indices()) {
        const Peg &peg = all.layout.pegs[i];
        double low = 1e300, high = -1e300;
        for (const Index<Piece> index : {peg.upper, peg.lower}) {
            const Piece &piece = all.layout.pieces[index];
            for (const Cut &cut : piece.cuts)
                if (const Bore *bore = std::get_if<Bore>(&cut); bore && bore->peg == i) {
                    low = std::min(low, piece.frame.origin.z + bore->z_from);
                    high = std::max(high, piece.frame.origin.z + bore->z_to);
                }
        }
        if (std::abs(high - low - peg.length) > 1e-6 || std::abs(high - peg.top.z) > 1e-6)
            wrong += peg.name + "\n";
    }
    return wrong;
}

/// The header has wood over the opening and as far past it as the list says, and none further.
std::string wrong_headers(const Listed &all) {
    constexpr double up =
        0.4; // of its height over the opening: over the groove of a round log, under a peg's crown
    std::string wrong;
    const auto facts = opening_facts(all.shell, all.layout);
    for (std::size_t i = 0; i < facts.size(); ++i) {
        if (!facts[i].header) continue;
        const Opening &o = all.shell.openings[i];
        const Piece &header = all.layout.pieces[*facts[i].header];
        const WallPlace &wall = all.layout.walls[header.wall];
        const double left = o.from_left.mm(), right = left + o.width.mm(),
                     top = header.frame.origin.z + header.blank.height,
                     low = std::max((o.sill + o.height).mm(), header.frame.origin.z),
                     z = low + up * (top - low);
        const auto wood = [&](double x) {
            return has_wood(all, header, wall.frame.to_world({x, wall.thickness / 2, z}));
        };
        if (!wood(left) || !wood(right)) wrong += o.name + " of " + o.wall + ": no wood over it\n";
    }
    return wrong;
}

std::string problems(const Listed &all) {
    return wrong_neighbours(all) + wrong_sizes(all) + counted_bores(all) + wrong_pegs(all);
}

Partition partition() {
    Partition p = test::partition("P", "A", Length::mm(2500), "C");
    return p;
}

} // namespace

// Which logs cross is the plan's and the rounds' word, not the joint's.
TEST_CASE("round logs name the same neighbours as squared logs of the same rounds") {
    Shell round = test::round_shell();
    round.partitions = {partition()};
    Shell squared = round;
    squared.notch = {};
    squared.notch.kind = NotchKind::square_lap;
    squared.notch.overhang = round.notch.overhang;
    const Listed a = listed(round), b = listed(squared);
    REQUIRE(a.list.pieces.size() == b.list.pieces.size());
    REQUIRE(a.list.pieces.size() > 20);
    // The last half logs of round walls end against the others instead of lying over them.
    const auto crosses = [&](const std::string &tag) { return !tag.ends_with("-06-1"); };
    const auto that_cross = [&](std::vector<std::string> tags) {
        std::erase_if(tags, [&](const std::string &tag) { return !crosses(tag); });
        return tags;
    };
    int named = 0;
    for (std::size_t i = 0; i < a.list.pieces.size(); ++i) {
        if (!crosses(a.list.pieces[i].tag)) continue;
        INFO(a.list.pieces[i].tag);
        CHECK(a.list.pieces[i].at_left == that_cross(b.list.pieces[i].at_left));
        CHECK(a.list.pieces[i].at_right == that_cross(b.list.pieces[i].at_right));
        named += static_cast<int>(a.list.pieces[i].at_left.size());
    }
    CHECK(named > 30);
    CHECK(wrong_neighbours(a) == "");
}

TEST_CASE("the lists of every kind of shell are those of its wood") {
    test::ThrownAway thrown(test::refusals());
    int laid = 0;
    CHECK(rc::check([&] {
        const Listed all = listed(test::any_kind_of_shell());
        thrown.discard_refused(all.layout.findings);
        ++laid;
        const std::string wrong = problems(all);
        if (!wrong.empty()) RC_FAIL(wrong);
    }));
    CHECK(laid >= 50);
    INFO(thrown.words());
    CHECK_FALSE(thrown.too_many());
}

TEST_CASE("over every opening of the list its header has wood, of squared and of round logs") {
    int laid = 0;
    CHECK(rc::check([&] {
        Shell shell = *rc::gen::element(0, 1) == 0 ? test::any_saddle_shell() : test::any_shell();
        if (shell.openings.size() > 2) shell.openings.resize(2); // more of them are laid then
        const Listed all = listed(shell);
        if (all.layout.pieces.empty() || shell.openings.empty()) return;
        ++laid;
        const std::string wrong = wrong_headers(all);
        if (!wrong.empty()) RC_FAIL(wrong);
    }));
    CHECK(laid >= 20);
}

// By hand: the rod stands 1000 mm from A's left corner, which is the origin of the world, in the middle of a
// wall of 240; A's round logs run 240 past the corner and lie in one another's grooves, 30 mm deep.
TEST_CASE("stated bores are listed log by log, of squared and of round logs") {
    for (Shell shell : {test::round_shell(), test::plain_shell()}) {
        StatedBore rod;
        rod.use = BoreUse::rod;
        rod.name = "hold-down";
        rod.wall = "A";
        rod.from_left = Length::mm(1000);
        rod.diameter = Length::mm(22);
        shell.bores = {rod};
        const Layout layout = lay_out(shell);
        REQUIRE_FALSE(layout.pieces.empty());
        const Table table = bore_table(shell, layout);
        REQUIRE(table.rows.size() == static_cast<std::size_t>(*shell.rounds.count));
        const auto column = [&](const std::string &key) {
            return static_cast<std::size_t>(std::find_if(table.columns.begin(), table.columns.end(),
                                                         [&](const Column &c) { return c.key == key; }) -
                                            table.columns.begin());
        };
        const auto number_in = [&](std::size_t row, const std::string &key) {
            return std::stod(std::get<Number>(table.rows[row].at(column(key))).digits);
        };
        double top = 0;
        for (std::size_t i = 0; i < table.rows.size(); ++i) {
            CHECK(std::get<std::string>(table.rows[i].at(column("bore"))) == "rod 1");
            CHECK(std::get<std::string>(table.rows[i].at(column("for"))) == "rod");
            CHECK(std::get<std::string>(table.rows[i].at(column("on_foundation"))) == (i == 0 ? "yes" : ""));
            CHECK(number_in(i, "east_mm") == 1000);
            CHECK(number_in(i, "north_mm") == shell.thickness.mm() / 2);
            CHECK(number_in(i, "from_log_left_end_mm") == 1000 + shell.notch.overhang.mm());
            CHECK(number_in(i, "foot_mm") >= top - 30.1); // round logs lie in one another's grooves
            top = number_in(i, "foot_mm") + number_in(i, "length_mm");
        }
        CHECK(number_in(0, "foot_mm") == 0);
    }
}
