// Runs the tests of one program. Random shells are the same ones at each run, so that a change is judged by
// itself; ROUNDLAY_DRAW=new, as tests/thorough has it, draws others each time. A seed in RC_PARAMS goes
// first.
#include <cstdlib>
#include <string>

#if __has_include(<catch2/catch_session.hpp>)
#include <catch2/catch_session.hpp>
#else
#define CATCH_CONFIG_RUNNER
#include <catch2/catch.hpp>
#endif

namespace {

void draw_the_same_shells() {
    const char *draw = std::getenv("ROUNDLAY_DRAW"), *stated = std::getenv("RC_PARAMS");
    const std::string params = stated ? stated : "";
    if ((draw && std::string(draw) == "new") || params.find("seed=") != std::string::npos) return;
    setenv("RC_PARAMS", (params + " seed=20261129").c_str(), 1);
}

} // namespace

int main(int argc, char **argv) {
    draw_the_same_shells();
    return Catch::Session().run(argc, argv);
}
