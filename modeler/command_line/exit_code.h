// What the program's exit code says. The help and the tests read this table.
#pragma once

#include <array>
#include <string_view>

namespace roundlay {

enum class ExitCode : int {
    fine = 0,
    findings = 1,
    usage = 2,
    unreadable = 3,
    unwritable = 4,
    no_picture = 5,
    failed = 6,
    interrupted = 130, ///< 128 + SIGINT, as shells have it
};

struct ExitMeaning {
    ExitCode code;
    std::string_view meaning;
};

inline constexpr std::array<ExitMeaning, 8> exit_meanings = {{
    {ExitCode::fine, "done"},
    {ExitCode::findings, "the shell cannot be built as stated (a finding is an error), or not of these logs, "
                         "or something that was asked for is not made of it (all else is written)"},
    {ExitCode::usage, "the command was not understood"},
    {ExitCode::unreadable, "the document, or a CSV file, cannot be read"},
    {ExitCode::unwritable,
     "an output cannot be written, or a file of your own or another document's stands in its place"},
    {ExitCode::no_picture, "this machine can make no picture (all else is written)"},
    {ExitCode::failed, "a library could not do its part; nothing was written"},
    {ExitCode::interrupted, "stopped by Ctrl-C; nothing was written"},
}};

} // namespace roundlay
