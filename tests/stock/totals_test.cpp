// Sums over pieces: each against a sum that is written out here.
#include "kernel/layout/lay_out.h"
#include "kernel/layout/pieces/hewn_faces.h"
#include "kernel/layout/pieces/stock.h"
#include "kernel/layout/wood/interference.h"
#include "kernel/stock/order.h"
#include "kernel/stock/peg_sizes.h"
#include "kernel/stock/totals.h"
#include "kernel/trade/log_volume.h"
#include "tests/stock/support/demos.h"
#include "tests/support/catch.h"
#include "tests/support/shells.h"

#include <algorithm>
#include <set>

using namespace roundlay;
using roundlay::test::demo;

namespace {

std::vector<Shell> shells() {
    return {demo("one-room"), demo("ell-house"), demo("round-cabin"), test::round_shell()};
}

double amount_of(const Totals &all, std::string_view what) {
    const auto found = std::ranges::find(all.figures, what, [](const Figure &f) { return f.what.text; });
    return found == all.figures.end() ? 0 : found->amount; // a sum of nothing has no row
}

} // namespace

TEST_CASE("Totals are the sums over all pieces, not over the distinct ones") {
    for (const Shell &shell : shells()) {
        INFO(shell.name);
        const Layout layout = lay_out(shell);
        REQUIRE_FALSE(layout.pieces.empty());
        const Bodies bodies = bodies_of(layout);
        const Totals all = totals_of(shell, layout, bodies);
        double finished = 0;
        for (const auto m : layout.models.indices())
            finished += static_cast<double>(layout.models[m].pieces.size()) * bodies[m].volume;
        CHECK(all.finished == Approx(finished).epsilon(1e-12));
        double length = 0, squared = 0, round = 0, islands = 0;
        for (const auto i : layout.pieces.indices()) {
            const Blank blank = stock_of(layout.pieces[i]).size;
            length += blank.length;
            if (const RoundCut *of = hewn_faces(layout.pieces[i]).round)
                round += tapered_log_volume(2 * of->radius, blank.length);
            else
                squared += blank.length * blank.width * blank.height;
            islands += layout.pieces[i].island ? 1 : 0;
        }
        CHECK(amount_of(all, "length of all blanks") == Approx(length).epsilon(1e-12));
        CHECK(amount_of(all, "volume of all squared blanks") == Approx(squared).epsilon(1e-12));
        CHECK(amount_of(all, "volume of all round logs, growing to the butt") ==
              Approx(round).epsilon(1e-12));
        CHECK(amount_of(all, "islands") == islands);
        CHECK(amount_of(all, "volume of all finished pieces") == all.finished);
        CHECK(squared + round > all.finished); // wood is only taken off
        CHECK(all.pieces == layout.pieces.size());
        CHECK(all.models == layout.models.size());
        // A weight is its density times the volume: so is their sum.
        const WeightEstimate weight = weigh(finished, shell.wood);
        CHECK(all.weights_known());
        CHECK(all.low_kg == Approx(weight.low_kg).epsilon(1e-12));
        CHECK(all.high_kg == Approx(weight.high_kg).epsilon(1e-12));
        const auto stock = stock_of_pieces(shell, layout, volumes_of(bodies));
        REQUIRE(all.heaviest);
        REQUIRE(all.longest);
        for (const PieceStock &piece : stock) {
            CHECK(piece.lifted.piece.high_kg <= stock[*all.heaviest].lifted.piece.high_kg);
            CHECK(piece.blank.length <= stock[*all.longest].blank.length);
        }
    }
}

TEST_CASE("Of a wood that is not known there is no weight of all") {
    Shell shell = demo("one-room");
    shell.wood.species = "driftwood";
    const Layout layout = lay_out(shell);
    const Totals all = totals_of(shell, layout, bodies_of(layout));
    CHECK_FALSE(all.weights_known());
    CHECK(all.high_kg == 0);
    CHECK(all.finished > 0);
}

TEST_CASE("A sum of weights in which one is missing is not known: it would be too low") {
    const Shell shell = demo("one-room");
    const Layout layout = lay_out(shell);
    auto stock = stock_of_pieces(shell, layout, volumes_of(bodies_of(layout)));
    CHECK(totals_of(layout, stock).weights_known());
    stock.back().lifted = {};
    CHECK_FALSE(totals_of(layout, stock).weights_known());
}

TEST_CASE("A volume for each distinct piece is asked for, or nothing is summed") {
    const Shell shell = demo("one-room");
    const Layout layout = lay_out(shell);
    CHECK_THROWS_AS(stock_of_pieces(shell, layout, {1.0}), std::logic_error);
}

TEST_CASE("Every piece is ordered once, out of a stick that holds it, and every peg is made once") {
    for (const Shell &shell : shells()) {
        INFO(shell.name);
        const Layout layout = lay_out(shell);
        const auto stock = stock_of_pieces(shell, layout, volumes_of(bodies_of(layout)));
        std::multiset<std::string> ordered, tags;
        for (const OrderRow &row : sticks_to_order(shell, layout))
            for (const std::string &tag : row.tags) {
                ordered.insert(tag);
                const auto at = layout.pieces.index_of(std::ranges::find(layout.pieces, tag, &Piece::tag));
                const Blank &blank = stock[at].blank;
                CHECK(row.length >= blank.length - 1e-3);
                CHECK(row.length < blank.length + order_step(shell.units).mm());
                CHECK(row.width >= blank.width - 1e-3);
                CHECK(row.height >= blank.height - 1e-3);
            }
        for (const Piece &piece : layout.pieces)
            tags.insert(piece.tag);
        CHECK(ordered == tags);
        std::size_t pegs = 0;
        for (const PegRow &row : pegs_by_size(shell, layout)) {
            pegs += row.names.size();
            CHECK(row.length >= row.deepest - 1e-3);
            CHECK(row.shallowest <= row.deepest);
        }
        CHECK(pegs == layout.pegs.size());
        CHECK(pegs == totals_of(layout, stock).pegs);
    }
}

namespace {

Shell with_own_logs(std::vector<OwnLog> logs) {
    Shell shell = test::plain_shell();
    shell.own_logs = std::move(logs);
    return shell;
}

OwnLog log_of(int round, std::string species, std::optional<Fabric> fabric = {}) {
    OwnLog log;
    log.wall = "A", log.round = round, log.species = std::move(species), log.fabric = fabric;
    return log;
}

const Piece &in_wall(const Layout &layout, const std::string &tag) {
    const auto piece = std::ranges::find(layout.pieces, tag, &Piece::tag);
    REQUIRE(piece != layout.pieces.end());
    return *piece;
}

} // namespace

TEST_CASE("A log of a species of its own weighs as that wood, and each wood says what it rests on") {
    const Shell shell = with_own_logs({log_of(2, "white oak")});
    const Layout layout = lay_out(shell);
    const Bodies bodies = bodies_of(layout);
    const auto stock = stock_of_pieces(shell, layout, volumes_of(bodies));
    const Piece &oak = in_wall(layout, "A-02-1");
    CHECK(oak.species == "white oak");
    for (const auto i : layout.pieces.indices()) {
        Wood wood;
        if (layout.pieces[i].tag == oak.tag) wood.species = "white oak";
        CHECK(stock[i].lifted.piece.high_kg == weigh(stock[i].volume, wood).high_kg);
    }
    // Wood Handbook: white oak 0.60 green at 64 to 78 %, eastern hemlock 0.38 at 97 to 119 %.
    const double volume = bodies[oak.model].volume;
    CHECK(weigh(volume, {"white oak", {}}).high_kg > 1.2 * weigh(volume, {"eastern hemlock", {}}).high_kg);
    CHECK(weight_bases(shell, layout.pieces).size() == 2);
    CHECK(totals_of(layout, stock).weights_known());
}

TEST_CASE("New wood in an old house is weighed green, whatever moisture the old wood has") {
    Shell shell = with_own_logs({log_of(2, "", Fabric::kept), log_of(3, "", Fabric::replacement)});
    shell.wood.moisture = 17;
    const Layout layout = lay_out(shell);
    const auto stock = stock_of_pieces(shell, layout, volumes_of(bodies_of(layout)));
    const Wood dry = shell.wood, green{shell.wood.species, {}};
    for (const auto i : layout.pieces.indices()) {
        const bool comes = layout.pieces[i].fabric == Fabric::replacement;
        const double volume = stock[i].volume;
        CHECK(stock[i].lifted.piece.high_kg == weigh(volume, comes ? green : dry).high_kg);
    }
    CHECK(weigh(1e9, green).high_kg >
          1.5 * weigh(1e9, dry).high_kg); // Wood Handbook Table 4-1, 119 against 17 %
    CHECK(weight_bases(shell, layout.pieces).size() == 2);
    bool ordered = false;
    for (const OrderRow &row : sticks_to_order(shell, layout))
        ordered = ordered || (row.green && row.tags == std::vector<std::string>{"A-03-1"});
    CHECK(ordered);
}

TEST_CASE("What is not known of one log's wood is told, and no sum pretends to hold it") {
    const Shell shell = with_own_logs({log_of(2, "oak"), log_of(3, "oak")});
    const Layout layout = lay_out(shell);
    const Totals all = totals_of(shell, layout, bodies_of(layout));
    REQUIRE(all.not_weighed.size() == 2);
    CHECK(layout.pieces[all.not_weighed.front()].tag == "A-02-1");
    CHECK_FALSE(all.weights_known());
    CHECK_FALSE(all.heaviest);
    CHECK(all.high_kg > 0); // of the others
    CHECK(not_weighed_words(all, layout).text.find("no values are known") != std::string::npos);
}

TEST_CASE("Only new wood is ordered, of each species by itself") {
    const Shell plain = test::plain_shell(),
                shell = with_own_logs({log_of(1, "", Fabric::kept), log_of(3, "white oak"),
                                       log_of(2, "", Fabric::replacement), log_of(4, "", Fabric::patched)});
    const Layout before = lay_out(plain), layout = lay_out(shell);
    std::set<std::string> ordered, woods;
    for (const OrderRow &row : sticks_to_order(shell, layout)) {
        ordered.insert(row.tags.begin(), row.tags.end());
        woods.insert(row.species);
        CHECK((row.species == "white oak") == (row.tags == std::vector<std::string>{"A-03-1"}));
    }
    CHECK(woods == std::set<std::string>{"eastern hemlock", "white oak"});
    CHECK(ordered.size() == layout.pieces.size() - 2);
    CHECK_FALSE(ordered.contains("A-01-1"));
    CHECK_FALSE(ordered.contains("A-04-1"));
    double length = 0;
    for (const Piece &piece : layout.pieces)
        if (piece.tag != "A-01-1" && piece.tag != "A-04-1") length += stock_of(piece).size.length;
    CHECK(amount_of(totals_of(shell, layout, bodies_of(layout)), "length of all blanks") ==
          Approx(length).epsilon(1e-12));
}

TEST_CASE("A floor's timbers may be old, and of another wood") {
    Shell shell = test::floored();
    shell.floors.front().species = "white oak";
    shell.floors.front().fabric = Fabric::kept;
    const Layout layout = lay_out(shell);
    REQUIRE_FALSE(layout.timbers.empty());
    for (const Piece &piece : layout.pieces) {
        CHECK(piece.species == (piece.timber ? "white oak" : ""));
        CHECK(is_old_wood(piece) == piece.timber.has_value());
    }
    for (const OrderRow &row : sticks_to_order(shell, layout))
        CHECK(row.species == "eastern hemlock");
}
