#include "exporters/files/terminal_progress.h"
#include "tests/support/catch.h"
#include "tests/support/temporary_folder.h"

#include <fcntl.h>
#include <pty.h>
#include <unistd.h>

#include <cstdlib>

using namespace roundlay;
using namespace roundlay::test;

namespace {

std::string drawn_on_terminal(const char *term) {
    int terminal = -1, program = -1;
    REQUIRE(::openpty(&terminal, &program, nullptr, nullptr, nullptr) == 0);
    ::setenv("TERM", term, 1);
    {
        TerminalProgress progress(program, [] { return false; });
        progress.at("pieces", 1, 2);
        progress.at("sheets", 2, 2);
    }
    ::close(program);
    std::string text; // comes in parts, as the system passes it on
    char part[4096];
    for (ssize_t n; (n = ::read(terminal, part, sizeof part)) > 0;)
        text.append(part, static_cast<std::size_t>(n));
    ::close(terminal);
    return text;
}

} // namespace

TEST_CASE("progress draws on a terminal, without escape codes, and wipes its line") {
    const std::string text = drawn_on_terminal("xterm");
    CHECK(text.find("1/2  pieces") != std::string::npos);
    CHECK(text.find("2/2  sheets") != std::string::npos);
    CHECK(text.find('\x1b') == std::string::npos);
    CHECK(text.find('\n') == std::string::npos);
    CHECK(text.substr(text.size() - 2) == " \r");
}

TEST_CASE("progress is quiet on a dumb terminal and in a file") {
    CHECK(drawn_on_terminal("dumb").empty());
    const TemporaryFolder home;
    const int file = ::open((home / "log").c_str(), O_WRONLY | O_CREAT, 0600);
    TerminalProgress(file, [] { return false; }).at("pieces", 1, 2);
    ::close(file);
    CHECK(text_of(home / "log").empty());
}

TEST_CASE("the progress line fits the terminal") {
    CHECK(TerminalProgress::line("cut sheets", 12, 24, 80) == "[############------------] 12/24  cut sheets");
    CHECK(TerminalProgress::line("cut sheets", 30, 24, 80).starts_with("[########################] 30/24"));
    CHECK(TerminalProgress::line("reading", 0, 0, 80) == "reading");
    CHECK(TerminalProgress::line("cut sheets", 12, 24, 20).size() == 19);
}

TEST_CASE("cancelling is asked of the caller") {
    bool stop = false;
    TerminalProgress progress(-1, [&] { return stop; });
    CHECK_FALSE(progress.cancelled());
    stop = true;
    CHECK(progress.cancelled());
    CHECK_FALSE(Progress::none().cancelled());
}
