#include "modeler/command_line/own_logs.h"

#include "exporters/words/words.h"
#include "kernel/document/edit_logs.h"
#include "kernel/shell/weight_words.h"
#include "modeler/command_line/findings.h"
#include "modeler/command_line/save.h"

#include <algorithm>
#include <charconv>
#include <cstdio>

namespace roundlay {

namespace {

/// "log[3].bow": 3.
std::optional<std::size_t> log_index(const std::string &subject) {
    constexpr std::string_view list = "log[";
    std::size_t index = 0;
    if (!subject.starts_with(list)) return {};
    const auto read = std::from_chars(subject.data() + list.size(), subject.data() + subject.size(), index);
    return read.ec == std::errc() ? std::optional(index) : std::nullopt;
}

/// The line in its source of the log that the finding is about.
std::optional<int> source_line(const LogSource &source, const Shell &shell, const Finding &finding) {
    const auto index = log_index(finding.subject);
    if (!source.logs || !index || *index >= shell.own_logs.size()) return {};
    const OwnLog &own = shell.own_logs[*index];
    for (std::size_t i = 0; i < source.logs->size(); ++i) {
        const OwnLog &log = (*source.logs)[i];
        if (log.wall == own.wall && log.round == own.round && log.piece == own.piece) return source.lines[i];
    }
    return {};
}

bool is_told(const Console &console, Weight weight) {
    return weight == Weight::error || (weight == Weight::warning && !console.quiet);
}

void tell_line(const Console &console, Weight weight, const std::string &text) {
    if (weight == Weight::error) return console.error_line(text);
    if (is_told(console, weight)) std::fputs((text + "\n").c_str(), stderr);
}

void tell_at(const Console &console, const std::string &file, int line, const Finding &f,
             const Speech &speech) {
    const std::string message = sentence_of(f, speech);
    if (f.weight == Weight::error) return console.error_at(file, line, message);
    tell_line(console, f.weight,
              file + ":" + std::to_string(line) + ": " + std::string(name_of(f.weight)) + ": " + message);
}

void tell(const Console &console, const StatedLogs &stated, const LogSource &source) {
    Findings others;
    for (const Finding &f : stated.job.findings) {
        const auto line = source_line(source, stated.job.shell, f);
        if (!line)
            others.push_back(f);
        else
            tell_at(console, source.file, *line, f, {console.language, stated.job.shell.units});
    }
    for (const FindingLine &line : finding_lines(stated.made, stated.job, others))
        tell_line(console, line.weight, line.text);
    console.hint(summary_line(stated.made, &stated.job, console.language));
}

} // namespace

std::variant<StatedLogs, ExitCode> state_logs(const Console &console, const Input &input, const Shell &shell,
                                              const std::vector<OwnLog> &logs, const std::string &to) {
    auto edited = with_logs(Document(input.bytes, input.file), logs, shell.units);
    if (const auto *problem = std::get_if<Problem>(&edited)) {
        console.error(to_text(*problem));
        return ExitCode::unreadable;
    }
    const std::string file = to == "-" || to.empty() ? input.file : to,
                      text = std::get<Document>(edited).text();
    StatedLogs stated{{file, text, read_document(text, file)}, {}};
    for (const Problem &problem : stated.made.read.problems)
        tell_line(console, problem.weight, to_text(problem));
    if (!stated.made.read.shell) return ExitCode::unreadable;
    stated.job = make_job(*stated.made.read.shell);
    return stated;
}

ExitCode save_with_logs(const Console &console, const StatedLogs &stated, const std::string &to, bool replace,
                        const LogSource &source) {
    const ExitCode saved = save(console, to, stated.made.bytes, replace);
    if (saved != ExitCode::fine) return saved;
    tell(console, stated, source);
    return has_errors(stated.job.findings) ? ExitCode::findings : saved;
}

} // namespace roundlay
