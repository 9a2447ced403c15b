#include "modeler/command_line/program.h"

#include "exporters/registry/version.h"
#include "kernel/measure/nearest_name.h"
#include "modeler/command_line/command.h"
#include "modeler/command_line/help.h"
#include "modeler/command_line/language.h"
#include "modeler/command_line/values.h"

#include <algorithm>
#include <csignal>
#include <optional>

namespace roundlay {

namespace {

struct Program {
    CLI::App app{
        "Holds a shell of hewn-log walls as one solid model and makes STEP, cut sheets and cut lists",
        "roundlay"};
    Console console;
    bool no_color = false;
    std::string language;
    std::vector<std::pair<CLI::App *, CommandRun>> commands;
};

void declare(Program &program) {
    CLI::App &app = program.app;
    app.formatter(std::make_shared<ExamplesFirst>());
    app.set_help_flag("-h,--help", "this help, or that of a command");
    app.set_version_flag("--version", "roundlay " + std::string(program_version), "the version");
    app.add_flag("--json", program.console.json, "data for machines on the standard output, failures too");
    app.add_flag("-q,--quiet", program.console.quiet, "errors only: no warnings, notes, sums or progress");
    app.add_flag("-v,--verbose", program.console.verbose,
                 "say on the standard error what is being done, how long it took and what was written");
    app.add_flag("--no-color", program.no_color, "no colours");
    app.add_option("--language", program.language,
                   "en or fr: of sheets, lists and findings, instead of the environment's own")
        ->type_name("LANGUAGE");
    app.require_subcommand(0, 1);
    app.allow_extras();
    app.footer(closing_words());
    for (const Command &command : all_commands()) {
        CLI::App *sub = app.add_subcommand(std::string(command.name), std::string(command.summary));
        sub->fallthrough();
        sub->group("Commands");
        sub->formatter(std::make_shared<ExamplesFirst>());
        program.commands.emplace_back(sub, command.declare(*sub));
    }
}

std::vector<std::string> option_names(const CLI::App &app) {
    std::vector<std::string> names;
    for (const CLI::Option *option : app.get_options())
        for (const std::string &name : option->get_lnames())
            names.push_back("--" + name);
    return names;
}

/// What nobody asked for: an unknown option, an unknown command, one word too many.
void refuse_extras(const Program &program, const CLI::App *command) {
    const std::vector<std::string> extras = program.app.remaining(true);
    if (extras.empty()) return;
    const std::string &word = extras.front();
    if (word.starts_with("-")) {
        std::vector<std::string> known = option_names(program.app);
        if (command)
            for (std::string &name : option_names(*command))
                known.push_back(std::move(name));
        const std::string typed = word.substr(0, word.find('='));
        const auto nearest = nearest_name(typed, known);
        throw UsageError("there is no option " + typed + (nearest ? "; did you mean " + *nearest + "?" : ""));
    }
    if (command)
        throw UsageError("\"" + word + "\" is one word too many for \"" + command->get_name() + "\"");
    std::vector<std::string> names;
    for (const Command &known : all_commands())
        names.emplace_back(known.name);
    (void)one_of("command", word, names);
}

const std::pair<CLI::App *, CommandRun> *chosen(const Program &program) {
    for (const auto &command : program.commands)
        if (command.first->parsed()) return &command;
    return nullptr;
}

ExitCode run_command(Program &program) {
    const auto *command = chosen(program);
    program.console.start(program.no_color);
    refuse_extras(program, command ? command->first : nullptr);
    program.console.language = language_value(program.language);
    if (!command) {
        std::fputs(program.app.help().c_str(), stderr);
        return ExitCode::usage;
    }
    return command->second(program.console);
}

bool is_typed(int argc, const char *const *argv, std::string_view word) {
    return std::find(argv, argv + argc, word) != argv + argc;
}

/// Behind a lone -- stand files, whatever they are called: the library would read dashes in them as options.
std::vector<std::string> plain_words(int argc, const char *const *argv) {
    std::vector<std::string> words;
    bool files = false;
    for (int i = 1; i < argc; ++i) {
        const std::string word = argv[i];
        if (!files && word == "--")
            files = true;
        else
            words.push_back(files && word.size() > 1 && word[0] == '-' ? "./" + word : word);
    }
    std::reverse(words.begin(), words.end()); // as the library takes them
    return words;
}

ExitCode misused(const Program &program, const std::string &message) {
    program.console.error(message);
    const auto *command = chosen(program);
    const std::string help =
        command ? "roundlay " + command->first->get_name() + " --help" : "roundlay --help";
    program.console.hint("see " + help);
    return ExitCode::usage;
}

ExitCode guarded(Program &program, int argc, const char *const *argv) {
    try {
        program.app.parse(plain_words(argc, argv));
        return run_command(program);
    } catch (const CLI::CallForHelp &) {
        const auto *command = chosen(program);
        return program.console.print((command ? command->first->help() : program.app.help()));
    } catch (const CLI::CallForVersion &version) {
        return program.console.print(std::string(version.what()) + "\n");
    } catch (const CLI::ParseError &error) {
        program.console.json =
            is_typed(argc, argv, "--json"); // flags are not read yet where something is amiss
        program.console.start(program.no_color);
        return misused(program, error.what());
    } catch (const UsageError &error) {
        return misused(program, error.what());
    } catch (const std::exception &error) {
        program.console.error(std::string("this is a fault of the program, please report it: ") +
                              error.what());
        return ExitCode::failed;
    }
}

} // namespace

int run_program(int argc, const char *const *argv) {
    std::signal(SIGPIPE, SIG_IGN); // a reader that went away is told by the write, see Console::print
    Program program;
    declare(program);
    const ExitCode code = guarded(program, argc, argv);
    program.console.print_failure(code);
    return static_cast<int>(code);
}

} // namespace roundlay
