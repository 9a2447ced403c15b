#include "modeler/command_line/command.h"
#include "modeler/command_line/own_logs.h"
#include "modeler/command_line/pile_input.h"

#include <CLI/CLI.hpp>

namespace roundlay {

namespace {

struct RecordOptions {
    std::string file, record, to = "-";
    bool force = false;
};

ExitCode run_record(const Console &console, const RecordOptions &options) {
    const Input input = read_input(options.file);
    for (const Problem &problem : input.read.problems)
        std::fputs((to_text(problem) + "\n").c_str(), stderr);
    if (!input.read.shell) return ExitCode::unreadable;
    const auto record = record_from(console, options.record);
    if (!record) return ExitCode::unreadable;
    return save_with_logs(console, input, *input.read.shell, *record, options.to, options.force);
}

} // namespace

CommandRun declare_record(CLI::App &app) {
    auto o = std::make_shared<RecordOptions>();
    app.add_option("FILE", o->file, "the document; - reads from the standard input")->required();
    app.add_option(
           "--logs", o->record,
           "the logs as measured: CSV with the columns wall, round, left_height, right_height (seen from "
           "outside) and, where measured, mark, left_width, right_width, butt; lengths with their unit")
        ->required()
        ->type_name("CSV");
    app.add_option("--to", o->to, "the document to write; - writes to the standard output")
        ->type_name("DOCUMENT")
        ->capture_default_str();
    app.add_flag("--force", o->force, "replace a document that is there");
    return [o](const Console &console) { return run_record(console, *o); };
}

} // namespace roundlay
