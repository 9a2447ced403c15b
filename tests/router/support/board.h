// The board as a raster of how deep it is cut: what is hit by rapid moves, what hangs together.
#pragma once

#include "tests/router/support/simulator.h"

namespace router_test {

std::vector<std::string> board_faults(const std::vector<Bit> &bits, const Setting &setting,
                                      const std::vector<Wanted> &wanted);

} // namespace router_test
