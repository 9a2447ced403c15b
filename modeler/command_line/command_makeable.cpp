#include "exporters/files/safe_file.h"
#include "exporters/lists/state_column.h"
#include "exporters/machines/making_table.h"
#include "modeler/command_line/command.h"
#include "modeler/command_line/load.h"
#include "modeler/command_line/values.h"

#include <CLI/CLI.hpp>

#include <algorithm>
#include <cmath>

namespace roundlay {

namespace {

struct MakeableOptions {
    DocumentWords document;
    std::string machine;
    bool operations = false, csv = false;
};

std::optional<machines::Machine> machine_from(const Console &console, const std::string &path) {
    constexpr std::size_t largest = std::size_t{1} << 20;
    const auto bytes = read_file(path, largest);
    if (const auto *error = std::get_if<FileError>(&bytes)) {
        console.error(error->message);
        return {};
    }
    const machines::ReadMachine read = machines::read_machine(std::get<std::string>(bytes), path);
    for (const Problem &problem : read.problems)
        console.error_at(path, problem.place.line,
                         problem.said ? words_of(*problem.said, {console.language, problem.units})
                                      : problem.message);
    return read.machine;
}

/// Where no log at all goes in, one sentence says more than a table of refusals.
bool is_too_short(const Console &console, const MakeableOptions &options, const machines::Machine &machine,
                  const std::vector<machines::ModelMaking> &makings, const Voice &voice) {
    const auto length = [](const machines::ModelMaking &model) { return model.list.stock.stock.size.length; };
    if (makings.empty()) return false;
    const auto [shortest, longest] = std::ranges::minmax_element(makings, {}, length);
    if (length(*shortest) <= machine.length) return false;
    console.error_at(options.machine, machine.length_line,
                     voice.say("the bed is %1 long, shorter than every log: the shortest stick is %2 and the "
                               "longest %3 long; a bed of %3 takes them all",
                               in_mm(machine.length), in_mm(std::ceil(length(*shortest))),
                               in_mm(std::ceil(length(*longest)))));
    return true;
}

std::string summary(const std::vector<machines::ModelMaking> &makings, const std::string &machine,
                    const Voice &voice) {
    std::size_t counts[3] = {};
    for (const machines::ModelMaking &model : makings)
        ++counts[static_cast<std::size_t>(model.making.verdict)];
    return voice.say("%1: of %2 distinct pieces %3 makeable, %4 with hand finishing, %5 not", machine,
                     makings.size(), counts[0], counts[1], counts[2]) +
           "\n";
}

ExitCode run_makeable(const Console &console, const MakeableOptions &options) {
    if (console.json && options.csv) throw UsageError("choose either --json or --csv");
    const auto machine = machine_from(console, options.machine);
    if (!machine) return ExitCode::unreadable;
    auto loaded = load(console, options.document);
    if (const auto *code = std::get_if<ExitCode>(&loaded)) return *code;
    ExportJob &job = std::get<Loaded>(loaded).job;
    job.options.language = console.language;
    const Voice voice = voice_of(job);
    const auto makings = machines::makings_of(*machine, job.shell, job.layout);
    if (is_too_short(console, options, *machine, makings, voice)) return ExitCode::findings;
    const Table table = with_state(
        options.operations ? machines::operation_makings(makings, voice)
                           : machines::making_table(
                                 makings, machines::changes_that_help(*machine, job.shell, makings), voice),
        job.shell);
    const std::string caution = machines::making_caution(makings, voice);
    if (console.json || options.csv) {
        console.warn(caution);
        return console.print(console.json ? to_json(table) : to_csv(table));
    }
    return console.print(to_text(table, console.language) + "\n" + summary(makings, machine->name, voice) +
                         caution + "\n");
}

} // namespace

CommandRun declare_makeable(CLI::App &app) {
    auto options = std::make_shared<MakeableOptions>();
    add_document(app, options->document);
    app.add_option(
           "--machine", options->machine,
           "what the machine can do: TOML with name, works_from (above, below, front, back, ends: of the log "
           "as it lies), tilt_degrees, may_not (plane, slot, pocket, bore, groove, saddle), [bed] with "
           "length, width, height and weight_kg, [saw] with depth and tilt_degrees, and for each tool a "
           "[[tool]] with name, shape (flat, ball, drill, chain), diameter, length (of its cutting edges) "
           "and "
           "reach (from its holder to its end); of a chain thickness too. Lengths with their unit in quotes, "
           "such as \"90 mm\". models-demo has two to begin with")
        ->required()
        ->type_name("FILE");
    app.add_flag("--operations", options->operations,
                 "each operation with its tool, and each corner that a chisel has to clear");
    app.add_flag("--csv", options->csv, "as CSV (RFC 4180), with all columns");
    return [options](const Console &console) { return run_makeable(console, *options); };
}

} // namespace roundlay
