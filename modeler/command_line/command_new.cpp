#include "kernel/document/document.h"
#include "modeler/command_line/command.h"
#include "modeler/command_line/findings.h"
#include "modeler/command_line/new_shell.h"
#include "modeler/command_line/save.h"

#include <CLI/CLI.hpp>
#include <nlohmann/json.hpp>

#include <cstdio>

namespace roundlay {

namespace {

struct NewWords {
    NewShellWords shell;
    std::string file = "-";
    bool force = false;
};

ExitCode run_new(const Console &console, const NewWords &words) {
    const ExportJob job = make_job(new_shell(words.shell));
    for (const Finding &finding : job.findings)
        if (finding.weight == Weight::error)
            console.error((finding.place.empty() ? "" : finding.place + ": ") + finding.message);
    if (has_errors(job.findings)) return ExitCode::findings;
    const ExitCode saved = save(console, words.file, write_document(job.shell), words.force);
    if (saved == ExitCode::fine && words.file != "-") {
        console.hint(summary_line({words.file, {}, {}}, &job));
        console.hint("next: roundlay export " + words.file + " --to out");
    }
    return saved;
}

void declare_sizes(CLI::App &app, NewShellWords &w) {
    app.add_option("--width", w.width, "over the outside faces, west to east; of a cross: its middle")
        ->type_name("LENGTH");
    app.add_option("--depth", w.depth, "over the outside faces, south to north; of a cross: its middle")
        ->type_name("LENGTH");
    app.add_option("--wing", w.wing, "L: what stays of the north side")->type_name("LENGTH");
    app.add_option("--leg", w.leg, "L: what stays of the east side")->type_name("LENGTH");
    app.add_option("--from-left", w.from_left, "inset, T, U: where the part begins")->type_name("LENGTH");
    app.add_option("--part-width", w.part_width, "inset, T, U: of the recess, the wing or the court")
        ->type_name("LENGTH");
    app.add_option("--part-depth", w.part_depth, "inset, T, U: of the recess, the wing or the court")
        ->type_name("LENGTH");
    app.add_option("--arm", w.arm, "cross: how far each arm stands out")->type_name("LENGTH");
}

void declare_logs(CLI::App &app, NewShellWords &w) {
    app.add_option("--thickness", w.thickness, "of the walls")->type_name("LENGTH");
    app.add_option("--rounds", w.rounds, "how many; two of --rounds, --height and --pitch are enough")
        ->type_name("N");
    app.add_option("--height", w.height, "foundation to the top of the last round")->type_name("LENGTH");
    app.add_option("--pitch", w.pitch, "height of one round, gap included")->type_name("LENGTH");
    app.add_option("--gap", w.gap, "between the logs of one wall")->type_name("LENGTH");
    app.add_option("--notch", w.notch, "full (dovetail), half (dovetail) or square (lap)")->type_name("KIND");
    app.add_option("--slope", w.slope, "of the dovetail: 1:8, 7 deg, 1 in in 8 in")->type_name("SLOPE");
    app.add_option("--species", w.species, "wood, for the weights")->type_name("NAME");
}

} // namespace

CommandRun declare_new(CLI::App &app) {
    auto words = std::make_shared<NewWords>();
    app.add_option("FILE", words->file, "the document to write; - writes to the standard output")
        ->capture_default_str();
    app.add_option("--shape", words->shell.shape, "rectangle, L, inset, T, U or cross")
        ->type_name("SHAPE")
        ->capture_default_str();
    app.add_option("--name", words->shell.name, "of the shell")->type_name("NAME");
    app.add_option("--units", words->shell.units, "metric or imperial; else by how the sizes are typed")
        ->type_name("SYSTEM");
    declare_sizes(app, words->shell);
    declare_logs(app, words->shell);
    app.add_flag("--force", words->force, "replace a file that is there");
    return [words](const Console &console) { return run_new(console, *words); };
}

} // namespace roundlay
