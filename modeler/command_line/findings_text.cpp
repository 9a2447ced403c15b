#include "modeler/command_line/findings.h"

namespace roundlay {

namespace {

void count(Weight weight, Counts &counts) {
    switch (weight) {
    case Weight::error:
        ++counts.errors;
        break;
    case Weight::warning:
        ++counts.warnings;
        break;
    case Weight::note:
        ++counts.notes;
        break;
    }
}

std::string many(int number, const std::string &one) {
    return std::to_string(number) + " " + one + (number == 1 ? "" : "s");
}

std::string many(std::size_t number, const std::string &one) {
    return many(static_cast<int>(number), one);
}

std::string shell_words(const ExportJob &job) {
    const Layout &layout = job.layout;
    LengthStyle style;
    style.system = job.shell.units;
    return many(layout.walls.size(), "wall") + ", " + many(layout.rounds, "round") + ", " +
           many(layout.pieces.size(), "piece") + " (" + std::to_string(layout.models.size()) +
           " distinct), " + many(layout.pegs.size(), "peg") + ", " +
           print_length(Length::mm(layout.height), style) + " high; ";
}

} // namespace

std::string_view word(Weight weight) {
    switch (weight) {
    case Weight::error:
        return "error";
    case Weight::warning:
        return "warning";
    case Weight::note:
        return "note";
    }
    return "";
}

Counts counts_of(const Input &input, const ExportJob *job) {
    Counts counts;
    for (const Problem &problem : input.read.problems)
        count(problem.weight, counts);
    if (job)
        for (const Finding &finding : job->findings)
            count(finding.weight, counts);
    return counts;
}

std::string finding_line(const Input &input, const Finding &finding) {
    std::string line = input.file;
    if (const auto place = input.read.places.locate(finding.subject); place && place->line > 0)
        line += ":" + std::to_string(place->line) + ":" + std::to_string(place->column);
    line += ": " + std::string(word(finding.weight)) + ": ";
    return line + (finding.place.empty() ? "" : finding.place + ": ") + finding.message;
}

std::string summary_line(const Input &input, const ExportJob *job) {
    const Counts counts = counts_of(input, job);
    const bool built = job && !job->layout.pieces.empty();
    return input.file + ": " + (built ? shell_words(*job) : "") + many(counts.errors, "error") + ", " +
           many(counts.warnings, "warning") + ", " + many(counts.notes, "note");
}

} // namespace roundlay
