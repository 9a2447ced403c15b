#include "kernel/trade/settling.h"
#include "tests/support/catch.h"

#include <set>

using namespace roundlay;

namespace {

const SettlingRule &rule(std::string_view name) {
    for (const SettlingRule &r : settling_rules())
        if (r.name() == name) return r;
    throw std::runtime_error("no such rule");
}

} // namespace

TEST_CASE("settling spaces match the rules as quoted") {
    // Ontario Building Code section 9.37, seen: 13 mm per 300 mm, 4.33 %.
    CHECK(settling_space(Length::mm(300), rule("13 mm in 300 mm")).mm() == Approx(13));
    CHECK(rule("13 mm in 300 mm").part == Approx(0.0433).margin(0.00005));
    // Standards for scribed green logs, second-hand: 6 %, 60 mm per m. CONFLICT: also quoted as 3/4 in per
    // ft, which is 6.25 %; 9 ft then settle 6.48 or 6.75 in.
    CHECK(settling_space(Length::metres(1), rule("6 percent")).mm() == Approx(60));
    CHECK(settling_space(Length::feet(9), rule("6 percent")).inches() == Approx(6.48));
    CHECK_THAT(std::string(rule("6 percent").origin.conflict), ContainsSubstring("6.25 %"));
    // Trade article, second-hand, low authority: 3/16 in per log of 12 in and 4 in of chink, about 1 in for
    // six.
    CHECK(settling_space(Length::inches(16), rule("3/16 in per log")).inches() == Approx(3.0 / 16));
    CHECK(settling_space(Length::inches(6 * 16), rule("3/16 in per log")).inches() == Approx(1).margin(0.13));
}

TEST_CASE("a door of 2 m gets 86.67 mm by the code's rule and 120 by that of scribed round logs") {
    // Derived from the two rules above: 2000 x 13 / 300 and 2000 x 0.06.
    CHECK(settling_space(Length::metres(2), rule("13 mm in 300 mm")).mm() == Approx(86.67).margin(0.005));
    CHECK(settling_space(Length::metres(2), rule("6 percent")).mm() == Approx(120));
    // Museovirasto's repair card on moving log houses, seen: about 4 cm per metre of fresh log wall.
    CHECK(settling_space(Length::metres(2), rule("4 percent")).mm() == Approx(80));
}

TEST_CASE("the rule is chosen by the kind of wall, the seasoning and the person's word, and says why") {
    Shell shell;
    CHECK(choose_settling(shell).rule->name() == "13 mm in 300 mm");
    shell.wood.moisture = 12; // a code's least stays for dry hewn logs
    CHECK(choose_settling(shell).rule->name() == "13 mm in 300 mm");
    shell.wood.moisture.reset();
    shell.notch.kind = NotchKind::saddle;
    CHECK(choose_settling(shell).rule->name() == "6 percent");
    CHECK_THAT(std::string(choose_settling(shell).why), ContainsSubstring("not stated to be seasoned"));
    shell.wood.moisture = 19.5;
    CHECK(choose_settling(shell).rule->name() == "6 percent");
    shell.wood.moisture = 19;
    CHECK(choose_settling(shell).rule->name() == "13 mm in 300 mm");
    CHECK_THAT(std::string(choose_settling(shell).why), ContainsSubstring("19 % of moisture or less"));
    shell.trim.settling = SettlingRuleName::four_percent;
    CHECK(choose_settling(shell).rule->name() == "4 percent");
    CHECK(choose_settling(shell).why == "as the document says of all openings");
    Opening own;
    own.trim.settling = SettlingRuleName::per_chinked_log;
    CHECK(choose_settling(shell, own).rule->name() == "3/16 in per log");
    CHECK(choose_settling(shell, own).why == "as the document says of this opening");
    CHECK(choose_settling(shell, Opening()).rule->name() == "4 percent");
    CHECK(longest_settling_rule().name() == "6 percent");
}

TEST_CASE("every settling rule says its wording, scope and source, and names are unique") {
    std::set<std::string_view> names;
    for (const SettlingRule &r : settling_rules()) {
        CHECK(names.insert(r.name()).second);
        CHECK_FALSE(r.quoted.empty());
        CHECK_FALSE(r.scope.empty());
        CHECK_FALSE(r.origin.source.empty());
        CHECK(settling_space(Length(), r).mm() == 0);
        CHECK(settling_space(Length::mm(-100), r).mm() == 0);
    }
}
