// Help that begins with examples.
#pragma once

#include <CLI/CLI.hpp>

#include <string>

namespace roundlay {

/// Lays out what the command line library knows in the program's own order: what it is, examples, usage,
/// options.
class ExamplesFirst : public CLI::Formatter {
  public:
    ExamplesFirst();
    std::string make_description(const CLI::App *app) const override;
    std::string make_usage(const CLI::App *app, std::string name) const override;
    std::string make_option_opts(const CLI::Option *option) const override;
    std::string make_option_desc(const CLI::Option *option) const override;
};

/// Behind the list of commands: exit codes and environment.
std::string closing_words();

} // namespace roundlay
