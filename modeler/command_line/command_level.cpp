#include "exporters/lists/level_table.h"
#include "modeler/command_line/command.h"
#include "modeler/command_line/own_logs.h"
#include "modeler/command_line/pile_input.h"

#include <CLI/CLI.hpp>

namespace roundlay {

namespace {

struct LevelOptions {
    std::string file, pile, to;
    bool csv = false, force = false;
};

ExitCode show(const Console &console, const LevelOptions &options, const ExportJob &job,
              const std::vector<PileLog> &pile, const Levelled &levelled) {
    const Table table = level_table(job.layout, job.shell.units, pile, levelled);
    if (console.json) return console.print(to_json(table));
    if (options.csv) return console.print(to_csv(table));
    return console.print(to_text(table) + "\n" + level_words(levelled, job.shell.units));
}

ExitCode run_level(const Console &console, const LevelOptions &options) {
    auto loaded = load(console, options.file);
    if (const auto *code = std::get_if<ExitCode>(&loaded)) return *code;
    const Loaded &it = std::get<Loaded>(loaded);
    const auto pile = pile_from(console, options.pile);
    if (!pile) return ExitCode::unreadable;
    const auto result = level_logs(*pile, log_places(it.job.layout));
    if (const auto *why = std::get_if<std::string>(&result)) {
        console.error(options.pile + ": " + *why);
        return ExitCode::findings;
    }
    const Levelled &levelled = std::get<Levelled>(result);
    if (options.to.empty()) return show(console, options, it.job, *pile, levelled);
    if (options.to != "-") {
        const ExitCode shown = show(console, options, it.job, *pile, levelled);
        if (shown != ExitCode::fine) return shown;
    }
    return save_with_logs(console, it.input, it.job.shell,
                          own_logs(it.job.layout, it.job.shell.units, *pile, levelled), options.to,
                          options.force);
}

} // namespace

CommandRun declare_level(CLI::App &app) {
    auto o = std::make_shared<LevelOptions>();
    app.add_option("FILE", o->file, "the document; - reads from the standard input")->required();
    app.add_option("--pile", o->pile,
                   "the measured logs: CSV with the columns mark, length, butt_height, tip_height and, where "
                   "measured, butt_width, tip_width; lengths with their unit")
        ->required()
        ->type_name("CSV");
    app.add_option("--to", o->to, "also write the document with these logs stated; - prints it alone")
        ->type_name("DOCUMENT");
    app.add_flag("--csv", o->csv, "the table as CSV (RFC 4180)");
    app.add_flag("--force", o->force, "replace a document that is there");
    return [o](const Console &console) { return run_level(console, *o); };
}

} // namespace roundlay
