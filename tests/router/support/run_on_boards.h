// A job's programs let run by the simulator of these tests.
#pragma once

#include "exporters/router/router.h"
#include "exporters/words/voice.h"
#include "tests/router/support/simulator.h"

namespace roundlay::test {

/// All that must be stated, on a board of 1,800 by 1,000 by 12 and with a tool of 6.
RouterOptions all_stated();

router_test::Setting setting_of(const RouterOptions &stated);

/// What is to stay on that board: the shapes as they were given, put where the list says.
std::vector<router_test::Wanted> wanted_on(const RouterJob &job, std::size_t board,
                                           const std::vector<RouterShape> &shapes);
std::vector<router_test::KnownCorner> corners_on(const RouterJob &job, std::size_t board);

/// Of all boards, by the programs' text alone.
std::vector<std::string> faults_of_job(const RouterJob &job, const std::vector<RouterShape> &shapes);

} // namespace roundlay::test
