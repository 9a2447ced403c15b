// Lengths of advice are those of a rule in the shell's own units: whole millimetres, or sixteenths of an
// inch.
#include "kernel/layout/advice/trial.h"
#include "kernel/layout/lay_out.h"
#include "tests/support/catch.h"
#include "tests/support/findings.h"
#include "tests/support/floored.h"
#include "tests/support/shells.h"

#include <rapidcheck.h>

#include <cmath>

using namespace roundlay;

namespace {

bool stands_on_a_rule(double mm, UnitSystem units) {
    const double parts = units == UnitSystem::imperial ? mm / 25.4 * 16 : mm;
    return std::abs(parts - std::round(parts)) < 1e-6;
}

/// Those that a person is to set out, as many as there are.
std::vector<double> lengths_to_set_out(const Said &said) {
    std::vector<double> all;
    for (const Amount &amount : said.amounts) {
        if (const auto *length = std::get_if<LengthAmount>(&amount.value()); length && length->exact)
            all.push_back(length->mm);
        if (const auto *phrase = std::get_if<std::vector<Said>>(&amount.value()))
            for (const double mm : lengths_to_set_out(phrase->front()))
                all.push_back(mm);
    }
    return all;
}

/// Logs that taper, each by its own: their seams lie at no round height.
Shell tapered(UnitSystem units) {
    Shell shell = test::plain_shell();
    shell.units = units;
    shell.logs.butt_height = Length::mm(213), shell.logs.tip_height = Length::mm(194);
    return shell;
}

} // namespace

TEST_CASE("A length is rounded to what a rule shows, the nearest first, then the one further off") {
    Shell shell = test::floored();
    CHECK(round_lengths(shell, 10.4) == std::vector{Length::mm(10), Length::mm(11)});
    CHECK(round_lengths(shell, -10.6) == std::vector{Length::mm(-11), Length::mm(-10)});
    CHECK(round_lengths(shell, 12) == std::vector{Length::mm(12)});
    shell.units = UnitSystem::imperial;
    CHECK(round_lengths(shell, 24.6) == std::vector{Length::inches(15.0 / 16), Length::inches(1)});
}

TEST_CASE("Advice on thin wood over an opening is a round length with which the warning goes") {
    for (const UnitSystem units : {UnitSystem::metric, UnitSystem::imperial})
        for (const double top : {630.0, 640.0, 425.5, 650.0}) {
            Shell shell = tapered(units);
            shell.openings = {test::window("A", 1500, 100, 700, top - 100)};
            for (const Finding &f : lay_out(shell).findings) {
                if (f.code != "thin-wood-at-opening" || !f.advice || f.advice->amounts.empty()) continue;
                CAPTURE(test::sentence(f, units));
                const auto told = lengths_to_set_out(*f.advice);
                REQUIRE(told.size() == 1);
                CHECK(stands_on_a_rule(told[0], units));
                CHECK((test::message(f, units).find("mm") == std::string::npos) ==
                      (units == UnitSystem::imperial));
            }
        }
}

TEST_CASE("Thin wood at an opening is advised on while something else of the shell is refused") {
    Shell shell = test::plain_shell(); // logs from 230 to 440
    shell.openings = {test::window("A", 1500, 235, 700, 205)};
    const auto advised = [&shell] {
        const Findings findings = lay_out(shell).findings;
        const auto found = std::ranges::find(findings, "thin-wood-at-opening", &Finding::code);
        REQUIRE(found != findings.end());
        return test::message(*found);
    };
    const std::string alone = advised();
    CHECK_THAT(alone, ContainsSubstring("; lower its sill by 5 mm"));
    Floor floor;
    floor.name = "G", floor.from = "A", floor.to = "B"; // these two do not face each other
    floor.level = Length::mm(560);
    floor.joist = {Length::mm(100), Length::mm(180)};
    floor.spacing = Length::mm(600), floor.bearing = Length::mm(80);
    shell.floors = {floor};
    REQUIRE(has_errors(lay_out(shell).findings));
    CHECK(advised() == alone);
}

TEST_CASE("Whatever is advised of any shell, it is in lengths that its own units show") {
    int told = 0;
    CHECK(rc::check([&] {
        Shell shell = *rc::gen::element(0, 1) == 0 ? test::any_fitted_shell() : test::any_tapered_shell();
        shell.units = *rc::gen::element(UnitSystem::metric, UnitSystem::imperial);
        for (const Finding &f : lay_out(shell).findings) {
            if (!f.advice) continue;
            for (const double mm : lengths_to_set_out(*f.advice)) {
                RC_LOG() << test::sentence(f, shell.units);
                RC_ASSERT(stands_on_a_rule(mm, shell.units));
                ++told;
            }
        }
    }));
    CHECK(told > 0);
}
