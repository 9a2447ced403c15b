#include "kernel/levelling/recorded.h"
#include "modeler/command_line/command.h"
#include "modeler/command_line/own_logs.h"
#include "modeler/command_line/pile_input.h"

#include <CLI/CLI.hpp>

namespace roundlay {

namespace {

struct RecordOptions {
    DocumentWords document;
    std::string record, to = "-";
    bool force = false;
};

ExitCode run_record(const Console &console, const RecordOptions &options) {
    const Input input = read_input(options.document);
    tell_problems(console, input);
    if (!input.read.shell) return failed(console, input, nullptr, ExitCode::unreadable);
    const Shell &shell = *input.read.shell;
    const auto record = record_from(console, options.record);
    if (!record) return ExitCode::unreadable;
    const bool sound = record->problems.empty();
    const Recorded logs = recorded(shell, sound ? record->rows : record->sound);
    tell_errors(console, options.record, logs.problems); // beside those of the file, for one round of mending
    if (!sound) return ExitCode::unreadable;
    if (!logs.problems.empty()) return ExitCode::findings;
    const auto stated = state_logs(console, input, shell, logs.logs, options.to);
    if (const auto *code = std::get_if<ExitCode>(&stated)) return *code;
    const StatedLogs &made = std::get<StatedLogs>(stated);
    const ExitCode saved =
        save_with_logs(console, made, options.to, options.force, {options.record, &logs.logs, logs.lines});
    if (saved == ExitCode::fine || saved == ExitCode::findings)
        tell_warnings(console, options.record, off_the_line(made.job.shell, made.job.layout, record->rows));
    return saved;
}

} // namespace

CommandRun declare_record(CLI::App &app) {
    auto o = std::make_shared<RecordOptions>();
    add_file(app, o->document);
    app.add_option(
           "--logs", o->record,
           "the logs as measured: CSV with the columns wall, round and, where known, piece (of logs "
           "that an opening parts, "
           "from the left), mark, left_height, right_height (seen from outside), left_width, "
           "right_width, diameter, butt, "
           "bow, finish, fabric, notes; lengths with their unit, or the unit in the header. In French: "
           "mur, rang, piece, marque, hauteur gauche, hauteur droite, largeur gauche, largeur "
           "droite, diametre, gros bout, cintrage, facon, etat, notes. Butt: left, right (gauche, droite); "
           "finish: hewn, sawn, peeled (equarri, scie, ecorce); fabric: new, kept, patched, replacement "
           "(neuf, conserve, repare or rapiece, remplacement); accents and endings as they come. A value "
           "that has the separator in it stands in quotes")
        ->required()
        ->type_name("CSV");
    app.add_option("--to", o->to, "the document to write; - writes to the standard output")
        ->type_name("DOCUMENT")
        ->capture_default_str();
    app.add_flag("--force", o->force, "replace a document that is there");
    return [o](const Console &console) { return run_record(console, *o); };
}

} // namespace roundlay
