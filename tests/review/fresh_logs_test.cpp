// A fresh log in an old dry wall sinks alone.
#include "kernel/layout/lay_out.h"
#include "kernel/review/fresh_logs.h"
#include "tests/support/catch.h"
#include "tests/support/shells.h"

#include <variant>

using namespace roundlay;

namespace {

OwnLog log_of(int round, Fabric fabric) {
    OwnLog log;
    log.wall = "A", log.round = round, log.fabric = fabric;
    return log;
}

/// Wall A of logs 12 in high without gaps: old ones, and two fresh ones in the second and third round.
Shell patched_wall() {
    Shell shell = test::plain_shell();
    shell.rounds.pitch = Length::inches(12), shell.rounds.gap = Length();
    shell.own_logs = {log_of(1, Fabric::kept), log_of(2, Fabric::replacement), log_of(3, Fabric::replacement),
                      log_of(4, Fabric::kept)};
    return shell;
}

Findings told(const Shell &shell) {
    const Layout layout = lay_out(shell);
    REQUIRE_FALSE(layout.pieces.empty());
    Findings findings;
    review_fresh_logs(shell, layout, findings);
    return findings;
}

double inches(const Finding &finding, std::size_t amount) {
    return std::get<LengthAmount>(finding.what.amounts.at(amount).value()).mm / 25.4;
}

} // namespace

TEST_CASE("Each fresh log in an old wall is told with how far it sinks, what lies over it and the sum") {
    const Findings findings = told(patched_wall());
    REQUIRE(findings.size() == 2);
    for (const Finding &f : findings) {
        CHECK(f.code == "fresh-log-sinks");
        CHECK(f.weight == Weight::warning);
        CHECK(inches(f, 0) == Approx(12).epsilon(1e-9));
        CHECK(inches(f, 1) == Approx(0.48).epsilon(1e-9)); // check-values.csv: SET-DIFF, by SET-FI 4 cm/m
    }
    CHECK(inches(findings[0], 2) == Approx(24).epsilon(1e-9)); // two logs lie over the second round
    CHECK(inches(findings[1], 2) == Approx(12).epsilon(1e-9));
    CHECK(inches(findings[0], 3) == Approx(0.48).epsilon(1e-9));
    CHECK(inches(findings[1], 3) == Approx(0.96).epsilon(1e-9)); // 2 x 0.48
}

TEST_CASE("Where all wood is new, or stated to be seasoned, no log sinks alone") {
    Shell dry = patched_wall();
    dry.wood.moisture = 15;
    const Findings findings = told(dry);
    REQUIRE(findings.size() == 1); // but what it is weighed as
    CHECK(findings[0].code == "new-wood-weighed-green");
    CHECK(findings[0].weight == Weight::note);
    Shell fresh = patched_wall();
    for (OwnLog &log : fresh.own_logs)
        log.fabric = Fabric::replacement;
    CHECK(told(fresh).empty());
}
