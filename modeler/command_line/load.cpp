#include "modeler/command_line/load.h"

#include "exporters/files/safe_file.h"
#include "exporters/files/sha256.h"
#include "kernel/document/limits.h"
#include "kernel/layout/lay_out.h"
#include "kernel/layout/wood/interference.h"
#include "kernel/measured/measured_shell.h"
#include "modeler/command_line/decisions.h"
#include "modeler/command_line/findings.h"

#include <CLI/CLI.hpp>

#include <algorithm>
#include <chrono>
#include <cstdio>

namespace roundlay {

namespace {

Input unreadable(std::string file, Problem problem) {
    Input input{std::move(file), {}, {}};
    input.read.problems.push_back(std::move(problem));
    return input;
}

Input read_standard_input(const std::string &state) {
    const std::string file = "<stdin>";
    auto bytes = read_file("/dev/stdin", limits::bytes);
    if (const auto *error = std::get_if<FileError>(&bytes))
        return unreadable(file, {Weight::error, file, {}, error->message, {}});
    Input input{file, std::get<std::string>(std::move(bytes)), {}};
    input.read = read_document(input.bytes, file, state);
    return input;
}

} // namespace

void tell_problems(const Console &console, const Input &input) {
    for (const Problem &problem : input.read.problems)
        if (!console.quiet || problem.weight == Weight::error)
            std::fputs((to_text(problem) + "\n").c_str(), stderr);
}

ExitCode failed(const Console &console, const Input &input, const ExportJob *job, ExitCode code) {
    if (!console.quiet)
        std::fputs((summary_line(input, job, console.language) +
                    Voice({console.language, UnitSystem::metric}).say("; nothing was made") + "\n")
                       .c_str(),
                   stderr);
    if (console.json) (void)console.print(findings_json(input, job));
    return code;
}

namespace {

FoundHouse laid_out(const Shell &shell, bool bodies) {
    FoundHouse house{lay_out(shell), {}, shell};
    if (bodies) house.bodies = bodies_of(house.layout);
    return house;
}

} // namespace

std::shared_ptr<const FoundHouse> found_house(const Input &input, bool bodies) {
    const ReadResult &read = input.read;
    if (read.record.logs.empty() || read.states.empty()) return nullptr;
    const auto measured = std::ranges::find(read.states, true, &HouseState::measured);
    const bool is_stated = measured == read.states.end();
    if (read.measured_on ? *read.measured_on == *read.shell
                         : is_stated && read.shell->state == read.states.front().name)
        return nullptr;
    std::optional<Shell> shell = read.measured_on;
    if (!shell) shell = read_document(input.bytes, input.file, is_stated ? "" : measured->name).shell;
    if (!shell) return nullptr; // what is wrong with it is told: the record is held against this state
    return std::make_shared<const FoundHouse>(
        laid_out(is_stated ? *shell : house_as_found({*shell, read.levelled_on, read.record}).shell, bodies));
}

namespace {

/// The house as it was measured, where that is the state asked for or what it stands on.
MeasuredShell as_asked(const Input &input, Shell shell) {
    const auto &below = input.read.measured_on;
    if (!below) {
        MeasuredShell stated;
        stated.shell = std::move(shell);
        return stated;
    }
    MeasuredShell measured = house_as_asked({*below, input.read.levelled_on, input.read.record}, shell);
    measured.findings.push_back(
        {Weight::note,
         "as-measured",
         {about::All::logs},
         said("%1 numbers of the record are in the model, %2 more are proposed by the rules of the plan",
              measured.taken, measured.proposed.size()),
         {},
         ""});
    return measured;
}

} // namespace

ExportJob told_job(const Console &console, const Input &input, Shell shell) {
    console.detail("read " + input.file + ": " + std::to_string(input.bytes.size()) + " bytes");
    const auto start = std::chrono::steady_clock::now();
    const Shell stated = shell;
    MeasuredShell asked = as_asked(input, std::move(shell));
    ExportJob job = make_job(std::move(asked.shell));
    job.findings.insert(job.findings.end(), asked.findings.begin(), asked.findings.end());
    if (input.read.measured_on) point_at_record(job.findings, input.read.record, stated);
    job.options.language = console.language;
    const auto took = std::chrono::steady_clock::now() - start;
    console.detail("laid out, cut and reviewed " + std::to_string(job.layout.pieces.size()) + " pieces in " +
                   std::to_string(std::chrono::duration_cast<std::chrono::milliseconds>(took).count()) +
                   " ms");
    return job;
}

void add_file(CLI::App &app, DocumentWords &words) {
    app.add_option("FILE", words.file, "the document; - reads from the standard input")->required();
}

void add_document(CLI::App &app, DocumentWords &words) {
    add_file(app, words);
    app.add_option("--state", words.state,
                   "which state of the house, by its name; left out, the document's own shell")
        ->type_name("NAME");
}

Input read_input(const DocumentWords &words) {
    const std::string &path = words.file;
    if (path == "-") return read_standard_input(words.state);
    auto text = read_document_text(path);
    if (auto *problem = std::get_if<Problem>(&text)) return unreadable(path, std::move(*problem));
    Input input{path, std::get<std::string>(std::move(text)), {}};
    input.read = read_document(input.bytes, path, words.state);
    return input;
}

namespace {

void tell_decisions(const Console &console, Input &input, const ExportJob &job) {
    const std::size_t before = input.read.problems.size();
    add_decision_problems(input, job);
    add_tick_problems(input, job);
    for (std::size_t i = before; !console.quiet && i < input.read.problems.size(); ++i)
        std::fputs((to_text(input.read.problems[i]) + "\n").c_str(), stderr);
}

} // namespace

std::variant<Loaded, ExitCode> load(const Console &console, const DocumentWords &words,
                                    std::optional<UnitSystem> units, bool (*enough)(const Shell &shell)) {
    const std::string &path = words.file;
    Input input = read_input(words);
    tell_problems(console, input);
    if (!input.read.shell) return failed(console, input, nullptr, ExitCode::unreadable);
    Shell shell = *input.read.shell;
    if (units) shell.units = *units;
    ExportJob job = told_job(console, input, std::move(shell));
    job.found = found_house(input, true);
    tell_decisions(console, input, job);
    Loaded loaded{std::move(input), std::move(job)};
    if (path != "-") loaded.job.folder = std::filesystem::path(path).parent_path();
    loaded.job.document = path == "-" ? "" : std::filesystem::path(path).filename().string();
    loaded.job.record = std::make_shared<const Record>(loaded.input.read.record);
    loaded.job.document_sha256 = sha256_hex(loaded.input.bytes);
    for (const FindingLine &line : finding_lines(loaded.input, loaded.job, loaded.job.findings))
        if (line.weight == Weight::error || (line.weight == Weight::warning && !console.quiet))
            std::fputs((line.text + "\n").c_str(), stderr);
    if (has_errors(loaded.job.findings) && !(enough && enough(loaded.job.shell)))
        return failed(console, loaded.input, &loaded.job, ExitCode::findings);
    return loaded;
}

} // namespace roundlay
