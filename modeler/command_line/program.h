// The program from its words to its exit code.
#pragma once

namespace roundlay {

/// Never throws. Prints to stdout and stderr.
int run_program(int argc, const char *const *argv);

} // namespace roundlay
