#include "kernel/shell/weight_words.h"
#include "modeler/command_line/command.h"
#include "modeler/command_line/decisions.h"
#include "modeler/command_line/findings.h"

#include <CLI/CLI.hpp>

namespace roundlay {

namespace {

Paint paint_of(Weight weight) {
    switch (weight) {
    case Weight::error:
        return Paint::red;
    case Weight::warning:
        return Paint::yellow;
    case Weight::note:
        return Paint::blue;
    }
    return Paint::bold;
}

/// Colours the weight's word in a line that holds it between two colons.
std::string coloured(const Console &console, const std::string &line, Weight weight) {
    const std::string marked = ": " + std::string(name_of(weight)) + ": ";
    const std::size_t at = line.find(marked);
    if (at == std::string::npos) return line;
    return line.substr(0, at + 2) + console.painted(name_of(weight), paint_of(weight)) +
           line.substr(at + marked.size() - 2);
}

bool is_said(const Console &console, Weight weight) {
    return !console.quiet || weight == Weight::error;
}

std::string check_text(const Console &console, const Input &input, const ExportJob *job) {
    std::string text;
    for (const Problem &problem : input.read.problems)
        if (is_said(console, problem.weight))
            text += coloured(console, to_text(problem), problem.weight) + "\n";
    if (job)
        for (const FindingLine &line : finding_lines(input, *job, job->findings))
            if (is_said(console, line.weight)) text += coloured(console, line.text, line.weight) + "\n";
    return console.quiet ? text : text + summary_line(input, job, console.language) + "\n";
}

/// Of a document that is asked for as it stands every state must be there to be read.
bool lacks_a_state(const Console &console, const Input &input) {
    bool lacks = false;
    for (const HouseState &state : input.read.states) {
        if (state.readable) continue;
        console.error(input.file + ": the state \"" + state.name + "\" cannot be read; its problems say why");
        lacks = true;
    }
    return lacks;
}

ExitCode check(const Console &console, const DocumentWords &document) {
    Input input = read_input(document);
    std::optional<ExportJob> job;
    if (input.read.shell) job = told_job(console, input, *input.read.shell);
    if (job) job->found = found_house(input, false);
    if (job) add_decision_problems(input, *job), add_tick_problems(input, *job);
    const ExportJob *made = job ? &*job : nullptr;
    const ExitCode printed =
        console.print(console.json ? findings_json(input, made) : check_text(console, input, made));
    if (!made || lacks_a_state(console, input)) return ExitCode::unreadable;
    return has_errors(made->findings) ? ExitCode::findings : printed;
}

} // namespace

CommandRun declare_check(CLI::App &app) {
    auto document = std::make_shared<DocumentWords>();
    add_document(app, *document);
    return [document](const Console &console) { return check(console, *document); };
}

} // namespace roundlay
