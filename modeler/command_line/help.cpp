#include "modeler/command_line/help.h"

#include "modeler/command_line/command.h"

namespace roundlay {

namespace {

constexpr std::size_t option_columns = 26;

constexpr std::string_view begin_with = "  roundlay new cabin.roundlay --width 24ft --depth 18ft\n"
                                        "  roundlay check cabin.roundlay\n"
                                        "  roundlay export cabin.roundlay --to out\n";

std::string_view examples_for(const std::string &name) {
    for (const Command &command : all_commands())
        if (command.name == name) return command.examples;
    return begin_with;
}

} // namespace

ExamplesFirst::ExamplesFirst() {
    column_width(option_columns);
}

std::string ExamplesFirst::make_description(const CLI::App *app) const {
    return app->get_description() + ".\n\nExamples:\n" + std::string(examples_for(app->get_name())) + "\n";
}

/// What must be typed, in the order in which people type it.
std::string ExamplesFirst::make_usage(const CLI::App *app, std::string) const {
    if (!app->get_parent()) return "Usage: roundlay COMMAND ... [OPTIONS]\n";
    std::string usage = "Usage: roundlay " + app->get_name();
    for (const CLI::Option *option : app->get_options()) {
        if (option->get_positional())
            usage +=
                option->get_required() ? " " + option->get_name(true) : " [" + option->get_name(true) + "]";
        else if (option->get_required())
            usage += " " + option->get_name() + " " + option->get_type_name();
    }
    return usage + " [OPTIONS]\n";
}

std::string ExamplesFirst::make_option_opts(const CLI::Option *option) const {
    if (option->get_positional() || option->get_type_size() == 0) return "";
    return " " + option->get_type_name();
}

std::string ExamplesFirst::make_option_desc(const CLI::Option *option) const {
    const std::string otherwise = option->get_default_str();
    return option->get_description() + (otherwise.empty() ? "" : " (else " + otherwise + ")");
}

std::string closing_words() {
    std::string text = "Exit codes:\n";
    for (const ExitMeaning &exit : exit_meanings) {
        const std::string code = std::to_string(static_cast<int>(exit.code));
        text += "  " + code + std::string(6 - code.size(), ' ') + std::string(exit.meaning) + "\n";
    }
    return text + "\nEnvironment: NO_COLOR turns colours off; SOURCE_DATE_EPOCH sets the time in outputs; "
                  "LANGUAGE, LC_ALL, LC_MESSAGES and LANG say which language is spoken.\n"
                  "Help for one command: roundlay export --help";
}

} // namespace roundlay
