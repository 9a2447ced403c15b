#include "modeler/command_line/own_logs.h"

#include "kernel/document/edit_logs.h"
#include "modeler/command_line/findings.h"
#include "modeler/command_line/save.h"

#include <cstdio>

namespace roundlay {

namespace {

void tell(const Console &console, const Input &input, const ExportJob &job) {
    for (const FindingLine &line : finding_lines(input, job.findings))
        if (line.weight == Weight::error || (line.weight == Weight::warning && !console.quiet))
            std::fputs((line.text + "\n").c_str(), stderr);
    console.hint(summary_line(input, &job));
}

} // namespace

ExitCode save_with_logs(const Console &console, const Input &input, const Shell &shell,
                        const std::vector<OwnLog> &logs, const std::string &to, bool replace) {
    auto edited = with_logs(Document(input.bytes, input.file), logs, shell.units);
    if (const auto *problem = std::get_if<Problem>(&edited)) {
        console.error(to_text(*problem));
        return ExitCode::unreadable;
    }
    const std::string &text = std::get<Document>(edited).text();
    const Input made{to == "-" ? input.file : to, text, read_document(text, to)};
    for (const Problem &problem : made.read.problems)
        std::fputs((to_text(problem) + "\n").c_str(), stderr);
    if (!made.read.shell) return ExitCode::unreadable;
    const ExitCode saved = save(console, to, text, replace);
    if (saved != ExitCode::fine) return saved;
    const ExportJob job = make_job(*made.read.shell);
    tell(console, made, job);
    return has_errors(job.findings) ? ExitCode::findings : saved;
}

} // namespace roundlay
