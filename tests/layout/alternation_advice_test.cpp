// What is advised where stated heights of logs let two walls drift apart by half a round.
#include "kernel/layout/lay_out.h"
#include "kernel/layout/layout.h"
#include "tests/support/catch.h"
#include "tests/support/findings.h"
#include "tests/support/shells.h"

using namespace roundlay;

TEST_CASE("The log that makes two walls drift apart is named with its height where that is furthest off") {
    // Logs are 210 mm high. The second of wall A is 450 at the butt and 430 at the tip: 240 and 220 too much.
    for (const LogEnd butt : {LogEnd::left, LogEnd::right}) {
        Shell shell = test::plain_shell();
        OwnLog own;
        own.wall = "A", own.round = 2;
        own.sizes.butt_height = Length::mm(450), own.sizes.tip_height = Length::mm(430);
        own.sizes.butt = butt;
        shell.own_logs = {own};
        int told = 0;
        for (const Finding &f : lay_out(shell).findings) {
            if (f.code != "tails-do-not-alternate") continue;
            ++told;
            CHECK_THAT(test::sentence(f),
                       ContainsSubstring("the log of wall A, round 2, is stated 450 mm high: "
                                         "at 210 mm they alternate"));
        }
        CHECK(told > 0);
    }
}
