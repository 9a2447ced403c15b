// Ctrl-C and its like, caught for as long as there is something to put in order first.
#pragma once

#include <array>
#include <csignal>

namespace roundlay {

/// While one lives, the first SIGINT, SIGTERM or SIGHUP only raises a flag; the second ends the program as
/// usual. One at a time.
class CatchInterrupts {
  public:
    CatchInterrupts();
    ~CatchInterrupts();
    CatchInterrupts(const CatchInterrupts &) = delete;
    CatchInterrupts &operator=(const CatchInterrupts &) = delete;

    static bool raised();

  private:
    static constexpr std::array<int, 3> signals = {SIGINT, SIGTERM, SIGHUP};
    std::array<struct sigaction, 3> before_{};
};

} // namespace roundlay
