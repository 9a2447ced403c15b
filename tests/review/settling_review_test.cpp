// What is said of settling and of the wood: worked cases. The rules' own figures are in
// tests/trade/settling_test.cpp.
#include "kernel/layout/lay_out.h"
#include "kernel/layout/openings/openings.h"
#include "kernel/review/opening_facts.h"
#include "kernel/review/review.h"
#include "tests/support/catch.h"
#include "tests/support/findings.h"
#include "tests/support/said.h"
#include "tests/support/shells.h"

#include <algorithm>

using namespace roundlay;

namespace {

/// Walls high enough for a door of 2 m, one of them with it.
Shell with_door(Shell shell) {
    shell.pegs.wanted = false;
    shell.rounds.count = 12;
    Opening door = test::window("A", 1500, 0, 900, 2000);
    door.kind = OpeningKind::door;
    shell.openings = {door};
    return shell;
}

OpeningFacts facts_of(const Shell &shell) {
    const Layout layout = lay_out(shell);
    REQUIRE_FALSE(has_errors(layout.findings));
    return opening_facts(shell, layout).front();
}

const Finding *found(const Findings &findings, const std::string &code) {
    const auto at =
        std::find_if(findings.begin(), findings.end(), [&](const Finding &f) { return f.code == code; });
    return at == findings.end() ? nullptr : &*at;
}

Findings reviewed(const Shell &shell) {
    const Layout layout = lay_out(shell);
    REQUIRE_FALSE(has_errors(layout.findings));
    return review(shell, layout, bodies_of(layout));
}

} // namespace

TEST_CASE(
    "A door of 2 m settles by 86.67 mm in hewn walls and by 120 in scribed round ones, with the reason") {
    // Ontario Building Code 9.37, seen; log building standards of 2000, second-hand.
    const OpeningFacts hewn = facts_of(with_door(test::plain_shell()));
    CHECK(hewn.settle_space == Approx(87)); // 86.67, never rounded down
    CHECK_THAT(test::english(hewn.settle_basis), ContainsSubstring("Ontario Building Code") &&
                                                     ContainsSubstring("seen") &&
                                                     ContainsSubstring("not round ones scribed") &&
                                                     ContainsSubstring("by 6 percent it would be 120 mm"));
    Shell round = with_door(test::round_shell());
    CHECK(facts_of(round).settle_space == Approx(120));
    CHECK_THAT(test::english(facts_of(round).settle_basis),
               ContainsSubstring("not stated to be seasoned") && ContainsSubstring("second-hand"));
    round.wood.moisture = 15;
    CHECK(facts_of(round).settle_space == Approx(87));
    CHECK_THAT(test::english(facts_of(round).settle_basis),
               ContainsSubstring("by 6 percent it would be 120 mm"));
}

TEST_CASE("A shorter rule or a shorter space than the wall's own is never taken without a word") {
    Shell shell = with_door(test::round_shell());
    CHECK_FALSE(found(reviewed(shell), "settling-rule-short"));
    shell.trim.settling = SettlingRuleName::per_chinked_log;
    CHECK(facts_of(shell).settle_space == Approx(24)); // 2000 x 3/256 = 23.4
    shell.units = UnitSystem::imperial;
    CHECK(facts_of(shell).settle_space / 25.4 == Approx(15.0 / 16)); // 0.923 in
    shell.units = UnitSystem::metric;
    const Findings by_rule = reviewed(shell);
    REQUIRE(found(by_rule, "settling-rule-short"));
    CHECK(found(by_rule, "settling-rule-short")->subject == "trim.settling");
    CHECK_THAT(test::message(*found(by_rule, "settling-rule-short")),
               ContainsSubstring("leaves 24 mm over the frame in an opening 2000 mm high") &&
                   ContainsSubstring("6 percent asks for 120 mm"));
    shell.openings.push_back(test::window("C", 1500, 920, 900, 460)); // less high, it is not the one told of
    CHECK_THAT(test::message(*found(reviewed(shell), "settling-rule-short")), ContainsSubstring("24 mm"));
    shell.openings.pop_back();
    shell.trim.settling.reset();
    shell.openings[0].trim.settle_space = Length::mm(119);
    const Findings by_space = reviewed(shell);
    REQUIRE(found(by_space, "settle-space-short"));
    CHECK(found(by_space, "settle-space-short")->subject == "opening[0].settle_space");
    CHECK_THAT(test::message(*found(by_space, "settle-space-short")),
               ContainsSubstring("120 mm of 6 percent"));
    shell.openings[0].trim.settle_space = Length::mm(120);
    CHECK_FALSE(found(reviewed(shell), "settle-space-short"));
}

TEST_CASE("An opening may settle by a rule of its own, which goes before a space stated for all") {
    // 6 % of 2 m is 120 mm, 3/16 in for each 16 in of it 23.4: the rules' own figures are in
    // tests/trade/settling_test.cpp.
    Shell shell = with_door(test::round_shell());
    Opening beside = shell.openings[0];
    beside.wall = "C";
    shell.openings.push_back(beside);
    const auto facts = [&](std::size_t i) {
        const Layout layout = lay_out(shell);
        REQUIRE_FALSE(has_errors(layout.findings));
        return opening_facts(shell, layout).at(i);
    };
    CHECK(facts(0).settle_space == Approx(120));
    shell.openings[0].trim.settling = SettlingRuleName::per_chinked_log;
    CHECK(facts(0).settle_space == Approx(24));
    CHECK_THAT(test::english(facts(0).settle_basis),
               ContainsSubstring("as the document says of this opening") &&
                   ContainsSubstring("by 6 percent it would be 120 mm"));
    CHECK(facts(1).settle_space == Approx(120)); // the other one is as before
    const Findings shorter = reviewed(shell);
    REQUIRE(found(shorter, "settling-rule-short"));
    CHECK(found(shorter, "settling-rule-short")->subject == "opening[0].settling");
    CHECK(found(shorter, "settling-rule-short")->about == opening_place(shell, 0));

    shell.trim.settle_space = Length::mm(150);
    CHECK(facts(0).settle_space == Approx(24));
    CHECK(facts(1).settle_space == Approx(150));
    CHECK(test::english(facts(1).settle_basis) ==
          "as stated for all openings; by 6 percent it would be 120 mm");
    shell.openings[0].trim.settle_space = Length::mm(130);
    CHECK(facts(0).settle_space == Approx(130));
    CHECK(test::english(facts(0).settle_basis) ==
          "as stated for this opening; by 6 percent it would be 120 mm");
    CHECK_FALSE(found(reviewed(shell), "settling-rule-short")); // the rule is nobody's now
}

TEST_CASE("A space stated over a frame is held against the rule stated for it where that asks for more") {
    Shell shell = with_door(test::plain_shell()); // 87 mm by the rule of hewn walls
    shell.openings[0].trim.settle_space = Length::mm(100);
    CHECK_FALSE(found(reviewed(shell), "settle-space-short"));
    for (const bool own : {true, false}) {
        Shell stated = shell;
        (own ? stated.openings[0].trim.settling : stated.trim.settling) = SettlingRuleName::six_percent;
        const Findings findings = reviewed(stated);
        REQUIRE(found(findings, "settle-space-short"));
        CHECK_THAT(test::message(*found(findings, "settle-space-short")),
                   ContainsSubstring("120 mm of 6 percent"));
    }
}

TEST_CASE("A settle space that leaves nothing for the frame is an error with what is asked for") {
    Shell shell = with_door(test::plain_shell());
    shell.trim.settle_space = Length::mm(2000);
    const Findings findings = reviewed(shell);
    REQUIRE(found(findings, "no-room-for-frame"));
    CHECK(found(findings, "no-room-for-frame")->weight == Weight::error);
    CHECK(found(findings, "no-room-for-frame")->subject == "trim.settle_space");
    shell.trim.settle_space = Length::mm(1999);
    const Findings little = reviewed(shell);
    CHECK_FALSE(found(little, "no-room-for-frame"));
    REQUIRE(found(little, "little-room-for-frame"));
    CHECK(found(little, "little-room-for-frame")->weight == Weight::warning);
    CHECK_THAT(test::message(*found(little, "little-room-for-frame")),
               ContainsSubstring("1999 mm, leaves a frame of 1 mm in a height of 2000 mm") &&
                   ContainsSubstring("asks for 87 mm"));
    shell.trim.settle_space = Length::mm(1000);
    CHECK_FALSE(found(reviewed(shell), "little-room-for-frame"));
}

TEST_CASE("A wood that is not known or not stated is told") {
    Shell shell = test::plain_shell();
    shell.wood.species = "easten hemlock";
    const Findings unknown = reviewed(shell);
    REQUIRE(found(unknown, "species-unknown"));
    CHECK(found(unknown, "species-unknown")->weight == Weight::warning);
    CHECK_THAT(test::message(*found(unknown, "species-unknown")),
               ContainsSubstring("did you mean \"eastern hemlock\"?"));
    shell.wood.species.clear();
    const Findings none = reviewed(shell);
    REQUIRE(found(none, "species-not-stated"));
    CHECK(found(none, "species-not-stated")->weight == Weight::note);
    CHECK_THAT(test::message(*found(none, "species-not-stated")), ContainsSubstring("eastern hemlock"));
}
