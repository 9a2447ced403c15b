#include "modeler/command_line/command.h"
#include "modeler/command_line/format_schema.h"
#include "modeler/command_line/format_words.h"
#include "modeler/command_line/values.h"

#include <CLI/CLI.hpp>

namespace roundlay {

namespace {

struct FormatOptions {
    std::string table;
    bool schema = false;
};

/// `opening`, as it is called, or with the brackets of its header.
const format::Section &chosen(std::string typed) {
    std::erase_if(typed, [](char c) { return c == '[' || c == ']'; });
    std::vector<std::string> names;
    const auto all = format::all_sections();
    for (const format::Section *section : all)
        names.push_back(section->table->name);
    const std::string name = one_of("table", typed, names);
    return **std::find_if(all.begin(), all.end(),
                          [&](const auto *section) { return section->table->name == name; });
}

ExitCode run_format(const Console &console, const FormatOptions &options) {
    if (options.schema && !options.table.empty())
        throw UsageError("--schema is of the whole document; leave " + options.table + " out");
    if (options.schema) return console.print(format_schema());
    if (options.table.empty()) return console.print(console.json ? json_of_tables() : words_of_tables());
    const format::Section &section = chosen(options.table);
    return console.print(console.json ? json_of_table(section) : words_of_table(section));
}

} // namespace

CommandRun declare_format(CLI::App &app) {
    auto options = std::make_shared<FormatOptions>();
    app.add_option("TABLE", options->table, "such as opening; left out, the tables are listed");
    app.add_flag("--schema", options->schema,
                 "a JSON Schema of the document, for editors that complete and check TOML");
    return [options](const Console &console) { return run_format(console, *options); };
}

} // namespace roundlay
