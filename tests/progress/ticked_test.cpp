// What is ticked, what may come next, what is left, and ticks that cannot be.
#include "kernel/layout/lay_out.h"
#include "kernel/progress/ticked.h"
#include "kernel/stock/totals.h"
#include "tests/support/catch.h"
#include "tests/support/floored.h"
#include "tests/support/mended.h"
#include "tests/support/pieces.h"
#include "tests/support/said.h"
#include "tests/support/shells.h"

#include <algorithm>

using namespace roundlay;
using Catch::Matchers::StartsWith;

namespace {

struct House {
    Shell shell;
    Layout layout;
    Bodies bodies;
    Record record;

    explicit House(const Shell &stated) : shell(stated), layout(lay_out(stated)), bodies(bodies_of(layout)) {
        REQUIRE_FALSE(has_errors(layout.findings));
    }

    Site site() const { return site_of(record, shell, layout, bodies); }
    Index<Piece> at(const std::string &tag) const {
        return layout.pieces.index_of(std::ranges::find(layout.pieces, tag, &Piece::tag));
    }
    void tick(Deed what, const std::vector<std::string> &tags) {
        (void)roundlay::tick(record.done, {what, tags, {}, {}, {}, {}});
    }
    std::vector<std::string> problems(const std::vector<std::string> &states = {}) const {
        std::vector<std::string> all;
        for (const TickProblem &each : tick_problems(record, shell, layout, site().order, states))
            all.push_back(each.path + ": " + test::english(each.what));
        return all;
    }
    std::vector<std::string> tags(const std::vector<Index<Piece>> &pieces) const {
        std::vector<std::string> all;
        for (const Index<Piece> piece : pieces)
            all.push_back(layout.pieces[piece].tag);
        return all;
    }
};

using Tags = std::vector<std::string>;

/// One log with a new end.
Shell mended_shell() {
    Shell shell = test::plain_shell();
    shell.mends = {test::spliced_end()};
    return shell;
}

/// The first in the raise that rests on two others.
Index<Piece> first_on_two(const House &house) {
    const RaisingOrder order = house.site().order;
    std::optional<Index<Piece>> first;
    for (const Index<Piece> i : house.layout.pieces.indices())
        if (order[i].rests_on.size() > 1 &&
            (!first || house.layout.pieces[i].raise < house.layout.pieces[*first].raise))
            first = i;
    REQUIRE(first);
    return *first;
}

} // namespace

TEST_CASE("the first to go up are those that lie on nothing but the foundation") {
    const House house(test::plain_shell());
    for (const Index<Piece> piece : may_now(house.layout, house.site(), Deed::up)) {
        CHECK(house.layout.pieces[piece].round == 1);
        CHECK(house.site().order[piece].rests_on.empty());
    }
    CHECK(may_now(house.layout, house.site(), Deed::up).size() == 4); // sills and half logs between them
}

TEST_CASE("a log goes up when all that it rests on is up, and no sooner") {
    House house(test::plain_shell());
    const Index<Piece> log = first_on_two(house);
    const Tags under = house.tags(house.site().order[log].rests_on);
    const auto lies_over = house.tags(house.site().order[log].lies_over);
    for (const std::string &tag : lies_over)
        house.tick(Deed::up, {tag});
    for (std::size_t up = 0; up < under.size(); ++up) {
        const Turn turn = turn_up(house.layout, house.site(), log);
        CHECK(turn.may == May::waits);
        CHECK(house.tags(turn.waits_for) ==
              Tags(under.begin() + static_cast<std::ptrdiff_t>(up), under.end()));
        house.tick(Deed::up, {under[up]});
    }
    CHECK(turn_up(house.layout, house.site(), log).may == May::now);
    house.tick(Deed::up, {house.layout.pieces[log].tag});
    CHECK(turn_up(house.layout, house.site(), log).may == May::done);
}

TEST_CASE("a log that another lies over is shut in, and told with a reason on both sides") {
    House house(test::plain_shell());
    const Index<Piece> log = first_on_two(house);
    const Neighbours of = house.site().order[log];
    const std::string upper = house.layout.pieces[log].tag, lower = house.tags(of.rests_on).front();
    Tags up = house.tags(of.rests_on);
    for (const std::string &tag : house.tags(of.lies_over))
        up.push_back(tag);
    std::erase(up, lower);
    up.push_back(upper);
    house.tick(Deed::up, up);
    const Turn turn = turn_up(house.layout, house.site(), house.at(lower));
    CHECK(turn.may == May::shut_in);
    CHECK(house.tags(turn.shut_in_by) == Tags{upper});
    const Tags told = house.problems();
    CHECK(std::ranges::find(told, "done[0].pieces: " + upper +
                                      " is ticked as up, and what it rests on is not: " + lower +
                                      ". It would stand on air: look which of them is up") != told.end());
}

TEST_CASE("a joist shuts in what lies under it that it does not touch") {
    House house(test::floored());
    std::string joist;
    for (const Piece &piece : house.layout.pieces)
        if (piece.timber) joist = piece.tag;
    const Neighbours of = house.site().order[house.at(joist)];
    CHECK_FALSE(of.rests_on.empty()); // the logs with its pockets
    CHECK_FALSE(of.lies_over.empty());
    house.tick(Deed::up, {joist});
    const Tags told = house.problems();
    REQUIRE(told.size() == 2);
    CHECK_THAT(told[0], ContainsSubstring("It would stand on air"));
    CHECK_THAT(told[1], ContainsSubstring("lies over what is not") && ContainsSubstring(joist));
}

TEST_CASE("pegs are told before the log that covers them, and no peg before its log") {
    House house(test::plain_shell());
    REQUIRE_FALSE(house.layout.pegs.empty());
    Peg &peg = house.layout.pegs.front();
    const std::string pegged = house.layout.pieces[peg.upper].tag;
    Tags up;
    for (const Piece &piece : house.layout.pieces)
        if (piece.raise <= house.layout.pieces[peg.upper].raise) up.push_back(piece.tag);
    house.tick(Deed::up, up);
    CHECK(house.problems().empty()); // nobody notes pegs here
    bool told = false;
    for (const Index<Piece> piece : house.layout.pieces.indices()) {
        const Turn turn = turn_up(house.layout, house.site(), piece);
        if (turn.may == May::done) continue;
        const Tags first = house.tags(turn.pegs_first);
        told = told || std::ranges::find(first, pegged) != first.end();
    }
    CHECK(told);
    House early(test::plain_shell());
    early.tick(Deed::pegged, {pegged});
    CHECK(early.problems() == Tags{"done[0].pieces: " + pegged +
                                   " is ticked as pegged and not as up: a piece is pegged where it lies"});
}

TEST_CASE("once pegs are noted, a log over pegs that were not driven is told") {
    House house(test::plain_shell());
    Tags all;
    for (const Piece &piece : house.layout.pieces)
        all.push_back(piece.tag);
    house.tick(Deed::up, all);
    CHECK(house.problems().empty());
    house.tick(Deed::pegged, {house.layout.pieces[house.layout.pegs.front().upper].tag});
    const Tags told = house.problems();
    REQUIRE_FALSE(told.empty());
    CHECK_THAT(told.front(), ContainsSubstring("covers pegs that are not ticked as driven"));
}

TEST_CASE("taking down goes from the top, and a log from under another is told") {
    House house(test::plain_shell());
    for (const Index<Piece> piece : may_now(house.layout, house.site(), Deed::down))
        CHECK(house.site().order[piece].lies_under.empty());
    house.tick(Deed::down, {"A-01-1"});
    const Tags told = house.problems();
    REQUIRE(told.size() == 1);
    CHECK_THAT(told[0],
               StartsWith("done[0].pieces: A-01-1 is ticked as down, and what lies over it is not: "));
    CHECK(turn_down(house.layout, house.site(), house.at("A-01-1")).may == May::done);
}

TEST_CASE("what is left weighs what the pieces weigh that are not up, and new wood is lifted with its log") {
    House house(test::plain_shell());
    house.shell.wood.species = "white spruce";
    const Totals totals = totals_of(house.shell, house.layout, house.bodies);
    REQUIRE(totals.weights_known());
    const Left all = what_is_left(house.shell, house.layout, house.bodies, house.site().ticked, Deed::up);
    CHECK(all.left == house.layout.pieces.size());
    CHECK(all.low_kg == Approx(totals.low_kg));
    CHECK(all.high_kg == Approx(totals.high_kg));
    CHECK(all.heaviest == totals.heaviest);
    house.tick(Deed::up, {house.layout.pieces[*totals.heaviest].tag});
    const Left less = what_is_left(house.shell, house.layout, house.bodies, house.site().ticked, Deed::up);
    CHECK(less.done == 1);
    CHECK(less.high_kg == Approx(all.high_kg - all.heaviest_high_kg));
    CHECK(less.heaviest != all.heaviest);
}

TEST_CASE("of a wood that is not known nothing is said to weigh anything") {
    House house(test::plain_shell());
    house.shell.wood.species = "moonwood";
    const Left left = what_is_left(house.shell, house.layout, house.bodies, house.site().ticked, Deed::up);
    CHECK_FALSE(left.weights_known);
    CHECK_FALSE(left.heaviest);
}

TEST_CASE("new wood goes up with its log; its own tick without that of the log is a slip") {
    House house(mended_shell());
    const auto fresh = std::ranges::find_if(house.layout.pieces, [](const Piece &p) { return !!p.mends; });
    REQUIRE(fresh != house.layout.pieces.end());
    const std::string log = house.layout.pieces[*fresh->mends].tag;
    CHECK(house.tags(pieces_called(house.layout, fresh->tag, Deed::up)) == Tags{log});
    CHECK(house.tags(pieces_called(house.layout, fresh->tag, Deed::cut)) == Tags{fresh->tag});
    house.tick(Deed::up, {fresh->tag});
    CHECK_FALSE(house.site().ticked.is(house.at(fresh->tag), Deed::up));
    const Tags told = house.problems();
    REQUIRE(told.size() == 1);
    CHECK_THAT(told[0], ContainsSubstring("is new wood in " + log));
    House both(mended_shell());
    Tags up{log};
    for (const Piece &piece : both.layout.pieces)
        if (piece.raise < both.layout.pieces[both.at(log)].raise) up.push_back(piece.tag);
    both.tick(Deed::up, up);
    CHECK(both.site().ticked.is(both.at(fresh->tag), Deed::up));
    CHECK(both.problems().empty());
}

TEST_CASE("a tag that names no piece, or a state that is none, is told and keeps what it says") {
    House house(test::plain_shell());
    house.record.done = {{Deed::up, {"A-01-7"}, {}, "", "", ""},
                         {Deed::cut, {"A-01-1"}, "as dreamt", "", "", ""}};
    const Tags told = house.problems({"as found", "as it shall stand"});
    REQUIRE(told.size() == 2);
    CHECK_THAT(told[0], StartsWith("done[0].pieces: the shell has no piece A-01-7"));
    CHECK_THAT(told[1], StartsWith("done[1].state: the house has no state as dreamt"));
    CHECK_FALSE(house.site().ticked.any(Deed::cut));
}

TEST_CASE("ticks of another state of the house are not of this one") {
    House house(test::plain_shell());
    house.shell.state = "as found";
    house.record.done = {{Deed::down, {"A-04-1"}, "as found", "", "", ""},
                         {Deed::up, {"Z-09-1"}, "as it shall stand", "", "", ""}};
    CHECK(house.site().ticked.is(house.at("A-04-1"), Deed::down));
    for (const std::string &told : house.problems({"as found", "as it shall stand"}))
        CHECK_THAT(told, !ContainsSubstring("Z-09-1"));
}

TEST_CASE("pieces are called by their tag, by their round or by their wall") {
    const House house(test::plain_shell());
    CHECK(house.tags(pieces_called(house.layout, "A-02-1", Deed::up)) == Tags{"A-02-1"});
    CHECK(house.tags(pieces_called(house.layout, "A-02", Deed::up)) == Tags{"A-02-1"});
    CHECK(pieces_called(house.layout, "A", Deed::up).size() == 4);
    CHECK(pieces_called(house.layout, "A-0", Deed::up).empty());
    CHECK(pieces_called(house.layout, "", Deed::up).empty());
}

TEST_CASE("every entry takes as many pieces as the format allows, and the same words go on in one") {
    std::vector<Done> all;
    Tags many;
    for (std::size_t i = 0; i < pieces_of_one_entry + 1; ++i)
        many.push_back("P-" + std::to_string(i));
    CHECK(tick(all, {Deed::up, many, {}, "B", "2 May", ""}).empty());
    REQUIRE(all.size() == 2);
    CHECK(all[0].pieces.size() == pieces_of_one_entry);
    CHECK(tick(all, {Deed::up, {"Q-1", "P-3"}, {}, "B", "2 May", ""}) == Tags{"P-3"});
    CHECK(all.size() == 2);
    CHECK(tick(all, {Deed::up, {"Q-2"}, {}, "B", "3 May", ""}).empty());
    CHECK(all.size() == 3);
    CHECK(take_back(all, {Deed::up, {"Q-2", "R-1"}, {}, {}, {}, {}}) == Tags{"R-1"});
    CHECK(all.size() == 2);
    CHECK(take_back(all, {Deed::cut, {"P-3"}, {}, {}, {}, {}}) == Tags{"P-3"});
}

TEST_CASE("A log that is recorded as missing is not taken down, and nothing waits for it") {
    House house(test::plain_shell());
    const auto all = may_now(house.layout, house.site(), Deed::down);
    REQUIRE_FALSE(all.empty());
    const Index<Piece> first = all.front(); // it lies highest
    const Piece &piece = house.layout.pieces[first];
    FoundLog gone;
    gone.tag = "gone", gone.place = {house.layout.walls[piece.wall].name, piece.round, {}};
    gone.zones.push_back({});
    gone.zones.back().what = Soundness::missing;
    house.record.logs.push_back(gone);
    const Site site = house.site();
    CHECK(site.ticked.gone == std::vector{first});
    const auto now = may_now(house.layout, site, Deed::down);
    CHECK(std::ranges::find(now, first) == now.end());
    CHECK(turn_down(house.layout, site, first).may == May::gone);
    for (const Index<Piece> under : site.order[first].rests_on) {
        const Turn turn = turn_down(house.layout, site, under);
        CHECK(std::ranges::find(turn.waits_for, first) == turn.waits_for.end());
    }
    const Left left = what_is_left(house.shell, house.layout, house.bodies, site.ticked, Deed::down);
    CHECK(left.left == house.layout.pieces.size() - 1);
    CHECK(what_is_left(house.shell, house.layout, house.bodies, site.ticked, Deed::up).left ==
          house.layout.pieces.size());
    house.tick(Deed::down, {piece.tag});
    const auto told = house.problems();
    REQUIRE(told.size() == 1);
    CHECK_THAT(told[0], ContainsSubstring("is ticked as down, and it is recorded as missing"));
}

TEST_CASE("A log of which a part alone is missing is taken down, and so is new wood in the place of one") {
    House house(test::plain_shell());
    FoundLog log;
    log.tag = "a", log.place = {"A", 2, {}};
    log.zones.push_back({});
    log.zones.back().what = Soundness::missing, log.zones.back().to.value = Length::mm(300);
    log.zones.back().to.written = "300 mm";
    house.record.logs.push_back(log);
    CHECK(house.site().ticked.gone.empty());
    house.record.logs[0].zones[0].to = {};
    CHECK(house.tags(house.site().ticked.gone) == Tags{"A-02-1"});
    Shell replaced = test::plain_shell();
    OwnLog fresh;
    fresh.wall = "A", fresh.round = 2, fresh.fabric = Fabric::replacement;
    replaced.own_logs.push_back(fresh);
    House now(replaced);
    now.record = house.record;
    CHECK(now.site().ticked.gone.empty());
}
