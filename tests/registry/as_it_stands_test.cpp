// Who draws the house as it stands has the holes of its pegs, wherever they are bored.

#include "exporters/registry/as_it_stands.h"
#include "tests/support/catch.h"
#include "tests/support/shells.h"

using namespace roundlay;

TEST_CASE("The house as it stands has the holes of pegs that are bored in place") {
    Shell shell = test::plain_shell();
    const ExportJob bench = make_job(shell);
    shell.pegs.bored = PegBoring::in_place;
    const ExportJob job = make_job(shell), standing = as_it_stands(job);
    REQUIRE(standing.bodies.size() == bench.bodies.size());
    for (const auto model : bench.bodies.indices())
        CHECK(standing.bodies[model].volume == bench.bodies[model].volume);
    CHECK(job.bodies.size() < bench.bodies.size());
    CHECK(standing.composed != job.composed);
    CHECK(as_it_stands(bench).composed == bench.composed);
}
