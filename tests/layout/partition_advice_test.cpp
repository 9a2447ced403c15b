// Partitions that meet no wall as they are stated, and what they are told.
#include "kernel/layout/lay_out.h"
#include "tests/support/catch.h"
#include "tests/support/findings.h"
#include "tests/support/shells.h"

#include <regex>

using namespace roundlay;

namespace {

Shell with_partition(double at, const std::string &from, const std::string &to) {
    Shell shell = test::plain_shell();
    shell.partitions = {test::partition("P", from, Length::mm(at), to)};
    return shell;
}

const Finding &only_error(const Layout &layout) {
    REQUIRE(layout.findings.size() == 1);
    return layout.findings[0];
}

} // namespace

TEST_CASE("A partition past a wall's end is told itself, and from where to where it fits") {
    for (const UnitSystem units : {UnitSystem::metric, UnitSystem::imperial}) {
        Shell shell = with_partition(5200, "A", "C");
        shell.units = units;
        const Layout refused = lay_out(shell);
        const Finding &f = only_error(refused);
        CHECK(f.code == "tee-off-wall");
        CHECK(f.subject == "partition[0].from_left");
        CHECK(test::place(f) == "wall P");
        REQUIRE(f.advice);
        REQUIRE(f.advice->text == "from %1 to %2 from the left of wall %3 it fits");
        for (const std::size_t end : {0U, 1U}) {
            const double told = std::get<LengthAmount>(f.advice->amounts[end].value()).mm;
            const std::string printed = print_length(Length::mm(told), {.system = units});
            shell.partitions[0].from_left = std::get<Length>(parse_length(printed));
            CHECK_FALSE(has_errors(lay_out(shell).findings));
            shell.partitions[0].from_left = Length::mm(told + (end ? 3 : -3)); // and no further
            CHECK(has_errors(lay_out(shell).findings));
        }
    }
}

TEST_CASE("A partition that cannot reach its wall is told the walls that it reaches") {
    // From A, square to it, only C lies ahead; B and D run beside it.
    Shell shell = with_partition(2000, "A", "B");
    const Layout refused = lay_out(shell);
    const Finding &f = only_error(refused);
    CHECK(f.subject == "partition[0].to");
    CHECK_THAT(test::message(f), ContainsSubstring("; from where it starts it can end in: C"));
    CHECK(test::message(f).find("degrees") == std::string::npos);
    shell.partitions[0].to = "C";
    CHECK_FALSE(has_errors(lay_out(shell).findings));
}

TEST_CASE("A partition too near a corner or another one is told from where to where it is not") {
    for (const double at : {150.0, 230.0, 4750.0}) {
        Shell shell = with_partition(at, "A", "C");
        const Layout refused = lay_out(shell);
        const auto f = std::ranges::find_if(
            refused.findings, [](const Finding &found) { return found.code == "tee-too-near"; });
        REQUIRE(f != refused.findings.end());
        CAPTURE(test::sentence(*f));
        REQUIRE(f->advice);
        REQUIRE(f->advice->text == "from %1 to %2 from the left of wall %3 it fits");
        for (const std::size_t end : {0U, 1U}) {
            shell.partitions[0].from_left =
                Length::mm(std::get<LengthAmount>(f->advice->amounts[end].value()).mm);
            CHECK_FALSE(test::has(lay_out(shell).findings, "tee-too-near"));
        }
    }
}
