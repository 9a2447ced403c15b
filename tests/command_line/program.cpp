#include "tests/command_line/program.h"

#include "kernel/document/document.h"
#include "kernel/shell/shapes.h"
#include "tests/support/catch.h"
#include "tests/support/parts.h"

#include <fcntl.h>
#include <linux/capability.h>
#include <poll.h>
#include <pty.h>
#include <sys/prctl.h>
#include <sys/wait.h>

#include <array>
#include <chrono>
#include <csignal>
#include <filesystem>
#include <thread>

namespace roundlay::test {

namespace {

struct Channel {
    Descriptor ours, theirs;
};

Channel pipe_or_terminal(bool terminal) {
    std::array<int, 2> ends = {-1, -1};
    const bool made =
        terminal ? ::openpty(&ends[0], &ends[1], nullptr, nullptr, nullptr) == 0 : ::pipe(ends.data()) == 0;
    REQUIRE(made);
    return {Descriptor(ends[0]), Descriptor(ends[1])};
}

[[noreturn]] void become_program(const Words &words, const RunOptions &options, int in, int out, int err) {
    ::dup2(in, 0), ::dup2(out, 1), ::dup2(err, 2);
    constexpr int first_other = 3, last_other = 64;
    for (int i = first_other; i < last_other; ++i)
        ::close(i);
    if (!options.folder.empty() && ::chdir(options.folder.c_str()) != 0) ::_exit(125);
    if (options.bound_by_rights) ::prctl(PR_CAPBSET_DROP, CAP_DAC_OVERRIDE);
    for (const auto &[name, value] : {std::pair("LC_ALL", "C.UTF-8"), std::pair("LANGUAGE", "")})
        ::setenv(name, value, 1); // English, whoever runs the tests
    for (const auto &[name, value] : options.environment)
        ::setenv(name.c_str(), value.c_str(), 1);
    std::vector<char *> arguments;
    std::string program = ROUNDLAY_PROGRAM;
    std::vector<std::string> copies = words;
    arguments.push_back(program.data());
    for (std::string &word : copies)
        arguments.push_back(word.data());
    arguments.push_back(nullptr);
    ::execv(program.c_str(), arguments.data());
    ::_exit(126);
}

/// Reads both streams to their ends; a terminal ends with an error instead.
void collect(Descriptor &out, Descriptor &err, Ran &ran) {
    std::array<pollfd, 2> streams = {{{out.number(), POLLIN, 0}, {err.number(), POLLIN, 0}}};
    const std::array<std::string *, 2> texts = {&ran.out, &ran.err};
    while (streams[0].fd >= 0 || streams[1].fd >= 0) {
        ::poll(streams.data(), streams.size(), -1);
        for (std::size_t i = 0; i < streams.size(); ++i) {
            if (streams[i].fd < 0 || streams[i].revents == 0) continue;
            std::array<char, 65536> part;
            const ssize_t n = ::read(streams[i].fd, part.data(), part.size());
            if (n > 0) texts[i]->append(part.data(), static_cast<std::size_t>(n));
            if (n <= 0) streams[i].fd = -1;
        }
    }
}

bool hidden_entry_in(const std::string &folder) {
    std::error_code ignored;
    for (const auto &entry : std::filesystem::directory_iterator(folder, ignored))
        if (entry.path().filename().string().starts_with(".roundlay-")) return true;
    return false;
}

void interrupt_when_staging(pid_t child, const std::string &folder) {
    using namespace std::chrono_literals;
    for (int i = 0; i < 10'000; ++i) {
        if (hidden_entry_in(folder)) {
            ::kill(child, SIGINT);
            return;
        }
        std::this_thread::sleep_for(1ms);
    }
}

} // namespace

Ran run(const Words &words, const RunOptions &options) {
    Channel in = pipe_or_terminal(false), out = pipe_or_terminal(options.out_is_terminal),
            err = pipe_or_terminal(options.err_is_terminal);
    if (!options.out_file.empty()) out.theirs = Descriptor(::open(options.out_file.c_str(), O_WRONLY));
    const pid_t child = ::fork();
    if (child == 0)
        become_program(words, options, in.ours.number(), out.theirs.number(), err.theirs.number());
    in.ours.close(), out.theirs.close(), err.theirs.close();
    std::signal(SIGPIPE, SIG_IGN);
    std::thread feeder([&] {
        write_all(in.theirs, options.input);
        in.theirs.close();
    });
    std::thread interrupter([&] {
        if (!options.interrupt_when_there.empty())
            interrupt_when_staging(child, options.interrupt_when_there);
    });
    Ran ran;
    if (options.close_out_at_once) {
        out.ours.close();
        out.ours = Descriptor(::open("/dev/null", O_RDONLY));
    }
    collect(out.ours, err.ours, ran);
    feeder.join();
    interrupter.join();
    int status = 0;
    ::waitpid(child, &status, 0);
    ran.code = WIFEXITED(status) ? WEXITSTATUS(status) : 128 + WTERMSIG(status);
    return ran;
}

namespace {

Shell small_shell() {
    Shell shell = hewn_shell("Bench hut", rectangle_plan(Length::metres(5), Length::metres(4)),
                             Length::mm(180), 4, Length::mm(250), Length::mm(25));
    shell.openings.push_back({"window", OpeningKind::window, "A", Length::mm(1800), Length::mm(300),
                              Length::mm(1000), Length::mm(425)});
    Floor floor;
    floor.name = "G";
    floor.from = "D";
    floor.to = "B";
    floor.level = Length::mm(400);
    shell.floors.push_back(floor);
    return shell;
}

} // namespace

std::string small_document() {
    return write_document(small_shell());
}

std::string wrong_document() {
    Shell shell = small_shell();
    shell.openings.front().width = Length::metres(9);
    return write_document(shell);
}

} // namespace roundlay::test
