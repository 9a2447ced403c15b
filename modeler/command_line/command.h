// The commands of the program, one entry each.
#pragma once

#include "modeler/command_line/console.h"

#include <functional>
#include <span>
#include <string_view>

namespace CLI {
class App;
}

namespace roundlay {

/// What runs once the words are understood. May throw UsageError.
using CommandRun = std::function<ExitCode(const Console &)>;

struct Command {
    std::string_view name;
    std::string_view summary;
    std::string_view examples;            ///< lines to be typed, each with what it does
    CommandRun (*declare)(CLI::App &app); ///< states the options, gives what runs
};

std::span<const Command> all_commands();

CommandRun declare_new(CLI::App &app);
CommandRun declare_check(CLI::App &app);
CommandRun declare_list(CLI::App &app);
CommandRun declare_compare(CLI::App &app);
CommandRun declare_export(CLI::App &app);
CommandRun declare_makeable(CLI::App &app);
CommandRun declare_picture(CLI::App &app);
CommandRun declare_level(CLI::App &app);
CommandRun declare_record(CLI::App &app);
CommandRun declare_tick(CLI::App &app);
CommandRun declare_survey(CLI::App &app);
CommandRun declare_format(CLI::App &app);

} // namespace roundlay
