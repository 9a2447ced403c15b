#include "kernel/layout/advice/opening_advice.h"
#include "kernel/layout/lay_out.h"
#include "tests/support/catch.h"
#include "tests/support/findings.h"
#include "tests/support/shells.h"

#include <rapidcheck.h>

#include <algorithm>
#include <regex>

using namespace roundlay;

namespace {

Length mm(double v) {
    return Length::mm(v);
}

/// In wall A, 300 over the foundation, 400 high.
Opening window(double from_left, double width) {
    return test::window("A", from_left, 300, width, 400);
}

std::vector<double> places_told(const Finding &f) {
    std::vector<double> all;
    const std::string text = test::message(f);
    const std::regex place("at ([0-9.]+) mm");
    for (std::sregex_iterator i(text.begin(), text.end(), place), end; i != end; ++i)
        all.push_back(std::stod((*i)[1]));
    return all;
}

const Finding *refusal(const Layout &layout) {
    const auto of_place = [](const Finding &f) {
        return f.code == "opening-cuts-corner" || f.code == "opening-cuts-tee" ||
               f.code == "openings-too-close";
    };
    const auto f = std::ranges::find_if(layout.findings, of_place);
    return f == layout.findings.end() ? nullptr : &*f;
}

Shell moved(Shell shell, std::size_t opening, double to) {
    shell.openings[opening].from_left = mm(to);
    return shell;
}

} // namespace

TEST_CASE("A place told for an opening leaves its pegs theirs") {
    // Nearest to the tails of a wall 200 wide are 200 + 100 mm: there is wood, and no room for two pegs.
    Shell shell = test::plain_shell();
    shell.openings = {window(100, 800)};
    const Layout refused = lay_out(shell);
    REQUIRE(refusal(refused));
    const auto places = places_told(*refusal(refused));
    REQUIRE(places.size() == 1);
    CHECK(places[0] > 300);
    CHECK(warnings_in(lay_out(moved(shell, 0, 300)).findings) > 0);
    CHECK(warnings_in(lay_out(moved(shell, 0, places[0])).findings) == 0);
}

TEST_CASE("No place is told for an opening where the wall has none") {
    // A wall of 5000 between tails of 200: a window of 4350 leaves 125 on either side where it stands in the
    // middle, and 250 in all; 3000 beside 1500 leave no island.
    Shell shell = test::plain_shell();
    shell.openings = {window(400, 3000), window(2000, 1500)};
    const Layout refused = lay_out(shell);
    REQUIRE(refusal(refused));
    CHECK(places_told(*refusal(refused)).empty());
    CHECK_THAT(test::words(refused.findings), Catch::Contains("no place as wide"));
}

TEST_CASE("Wherever a place is told for an opening, the shell can be built with it there") {
    int told = 0;
    CHECK(rc::check([&] {
        Shell shell = test::any_family_shell();
        if (shell.openings.empty()) RC_DISCARD("no opening");
        const std::size_t i = *rc::gen::inRange<std::size_t>(0, shell.openings.size());
        shell = moved(shell, i, *rc::gen::inRange(0, 14000));
        const Layout refused = lay_out(shell);
        const Finding *f = refusal(refused);
        if (!f) return;
        const std::size_t whose =
            static_cast<std::size_t>(std::stoi(f->subject.substr(f->subject.find('[') + 1)));
        for (const double x : places_told(*f)) {
            const Layout there = lay_out(moved(shell, whose, x));
            RC_ASSERT(errors_in(there.findings) < errors_in(refused.findings));
            RC_ASSERT(errors_in(refused.findings) > 1 || !there.pieces.empty());
            ++told;
        }
    }));
    CHECK(told > 0);
}

namespace {

/// What is laid out to advise on a shell that is refused.
std::vector<Shell> tried_for(const Shell &shell) {
    std::vector<Shell> all;
    Layout layout = lay_out(shell);
    advise_on_openings(shell, layout, [&](const Shell &other) {
        all.push_back(other);
        return lay_out(other);
    });
    return all;
}

} // namespace

TEST_CASE("No place of an opening is tried twice") {
    Shell shell = test::plain_shell();
    shell.openings = {window(100, 800)}; // printed and exactly these places are one
    const std::vector<Shell> tried = tried_for(shell);
    CHECK(tried.size() > 2);
    for (std::size_t i = 0; i < tried.size(); ++i)
        CHECK(std::find(tried.begin() + static_cast<std::ptrdiff_t>(i) + 1, tried.end(), tried[i]) ==
              tried.end());
}

TEST_CASE("Of openings that are each too near a corner every one is told its place") {
    Shell shell = test::plain_shell();
    shell.openings = {window(100, 800), window(4200, 700)};
    for (const Finding &f : lay_out(shell).findings) {
        const auto whose = static_cast<std::size_t>(std::stoi(f.subject.substr(f.subject.find('[') + 1)));
        const auto places = places_told(f);
        REQUIRE(places.size() == 1);
        shell.openings[whose].from_left = mm(places[0]);
    }
    CHECK(warnings_in(lay_out(shell).findings) == 0);
}

TEST_CASE("The width told for an opening that is too wide is one with which it fits") {
    // Beside another one, and beside a partition: the corners alone would leave more.
    Shell shell = test::plain_shell();
    for (const bool beside_partition : {false, true}) {
        shell.openings = {window(400, 4800)};
        shell.partitions.clear();
        if (beside_partition) {
            shell.partitions = {test::partition("P", "A", mm(2000), "C")};
        } else {
            shell.openings.push_back(window(1000, 700));
        }
        const Layout refused = lay_out(shell);
        REQUIRE(test::has(refused.findings, "opening-too-wide"));
        const std::string text = test::words(refused.findings);
        INFO(text);
        std::smatch told;
        REQUIRE(std::regex_search(
            text, told, std::regex("a width of ([0-9.]+) mm at most fits(, at ([0-9.]+) mm| there)")));
        Shell mended = shell;
        mended.openings[0].width = mm(std::stod(told[1]));
        if (told[3].matched) mended.openings[0].from_left = mm(std::stod(told[3]));
        CHECK_FALSE(has_errors(lay_out(mended).findings));
        CHECK(mended.openings[0].width > mm(2000));
    }
}
