#include "tests/command_line/program.h"
#include "tests/support/catch.h"
#include "tests/support/temporary_folder.h"

using namespace roundlay;
using namespace roundlay::test;

namespace {

bool escapes(const Ran &ran) {
    return ran.out.find('\x1b') != std::string::npos || ran.err.find('\x1b') != std::string::npos;
}

Ran check_wrong(RunOptions options, Words more = {}) {
    options.input = wrong_document();
    Words words = {"check", "-"};
    words.insert(words.end(), more.begin(), more.end());
    return run(words, options);
}

RunOptions terminal(std::map<std::string, std::string> environment) {
    environment.emplace("TERM", "xterm");
    environment.emplace("NO_COLOR", ""); // set but empty counts as not set (no-color.org)
    return {.environment = std::move(environment), .out_is_terminal = true, .err_is_terminal = true};
}

} // namespace

TEST_CASE("colours only on a terminal, and never where they are not wanted") {
    CHECK(escapes(check_wrong(terminal({}))));
    CHECK_FALSE(escapes(check_wrong(terminal({{"NO_COLOR", "1"}}))));
    CHECK_FALSE(escapes(check_wrong(terminal({{"TERM", "dumb"}}))));
    CHECK_FALSE(escapes(check_wrong(terminal({}), {"--no-color"})));
    CHECK_FALSE(escapes(check_wrong({.environment = {{"TERM", "xterm"}, {"NO_COLOR", ""}}})));
    const Ran misused = run({"exprot"}, terminal({}));
    CHECK(misused.err.find('\x1b') != std::string::npos);
    CHECK_FALSE(escapes(run({"exprot"}, terminal({{"NO_COLOR", "1"}}))));
}

TEST_CASE("an export shows its progress on a terminal and says what to look at") {
    const TemporaryFolder home;
    put(home / "hut.roundlay", small_document());
    RunOptions seen = terminal({});
    seen.folder = home.path().string();
    const Ran ran = run({"export", "hut.roundlay", "--to", "out", "--only", "list,step"}, seen);
    CHECK(ran.code == 0);
    CHECK_THAT(ran.err,
               ContainsSubstring("cut lists") && ContainsSubstring("STEP") && ContainsSubstring("wrote "));
    CHECK_FALSE(escapes(ran));
    const Ran quiet = run({"export", "hut.roundlay", "--to", "out", "--only", "list,step", "--quiet"}, seen);
    CHECK(quiet.code == 0);
    CHECK(quiet.err.empty());
}

TEST_CASE("a terminal is spared the bytes of a picture") {
    RunOptions seen = terminal({});
    seen.input = small_document();
    const Ran ran = run({"picture", "-", "--to", "-"}, seen);
    CHECK(ran.code == 2);
    CHECK(ran.out.empty());
}
