#include "kernel/document/document.h"
#include "kernel/review/water.h"
#include "modeler/command_line/command.h"
#include "modeler/command_line/findings.h"
#include "modeler/command_line/new_shell.h"
#include "modeler/command_line/sample_comments.h"
#include "modeler/command_line/save.h"
#include "modeler/command_line/values.h"

#include <CLI/CLI.hpp>

#include <cstdio>
#include <sstream>

namespace roundlay {

namespace {

struct NewWords {
    NewShellWords shell;
    std::string file = "-";
    bool force = false;
};

/// Without warnings that the program knows a way round.
ExportJob job_of(const NewShellWords &words) {
    ExportJob job = make_job(new_shell(words));
    if (has_errors(job.findings)) return job;
    Shell dry = job.shell;
    dry.corners = dry_corners(job.shell, job.layout);
    return dry.corners.empty() ? job : make_job(std::move(dry));
}

std::string line_of(const std::string &text, int number) {
    std::istringstream lines(text);
    std::string line;
    for (int i = 0; i < number && std::getline(lines, line); ++i) {
    }
    return line.substr(0, line.find(" #"));
}

/// Nothing is written that cannot be read: what the reader would refuse is what was typed.
void require_readable(const Input &made) {
    for (const Problem &problem : made.read.problems)
        throw UsageError("this cannot stand in a document: " + line_of(made.bytes, problem.place.line) +
                         ": " + problem.message +
                         (problem.expected.empty() ? "" : "; expected " + problem.expected));
    if (write_document(*made.read.shell) != made.bytes)
        throw std::logic_error("what was written reads back as another shell");
}

/// What is left of a side is written to a hair of a millimetre, and then is what was written.
ExportJob as_written(ExportJob job, const Shell &written) {
    return job.shell == written ? std::move(job) : make_job(written);
}

/// Nothing was written: findings name no lines of it.
ExitCode cannot_be_built(const Console &console, const ExportJob &job) {
    const Input unwritten{"roundlay new", {}, {}};
    for (const FindingLine &line : finding_lines(unwritten, job, job.findings))
        if (line.weight == Weight::error) std::fputs((line.text + "\n").c_str(), stderr);
    if (console.json) (void)console.print(findings_json(unwritten, &job));
    return ExitCode::findings;
}

ExitCode run_new(const Console &console, const NewWords &words) {
    ExportJob worked_out = job_of(words.shell);
    Input made{words.file, write_document(worked_out.shell), {}};
    made.read = read_document(made.bytes, words.file);
    require_readable(made);
    const ExportJob job = as_written(std::move(worked_out), *made.read.shell);
    if (has_errors(job.findings)) return cannot_be_built(console, job);
    made.bytes += sample_comments(job.shell); // comments: it reads as before
    if (console.json && words.file == "-") return console.print(written_json(made, job));
    const ExitCode saved = save(console, words.file, made.bytes, words.force);
    if (saved != ExitCode::fine || words.file == "-") return saved;
    console.hint(summary_line(made, &job, console.language));
    console.hint("next: roundlay export " + words.file + " --to out");
    return console.json ? console.print(written_json(made, job)) : saved;
}

void declare_sizes(CLI::App &app, NewShellWords &w) {
    app.add_option("--width", w.width, "over the outside faces, west to east; of a cross: its middle")
        ->type_name("LENGTH");
    app.add_option("--depth", w.depth, "over the outside faces, south to north; of a cross: its middle")
        ->type_name("LENGTH");
    app.add_option("--wing", w.wing,
                   "L: what stays of the north side; the rest of it is the north-east corner left out")
        ->type_name("LENGTH");
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
    app.add_option("--notch", w.notch,
                   "full (dovetail), half (dovetail), square (lap), or saddle for round logs")
        ->type_name("KIND");
    app.add_option("--overhang", w.overhang, "of the log ends, past the crossing wall; 0 is flush")
        ->type_name("LENGTH");
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
