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

std::string shell_words(const Input &input, const Layout &layout) {
    LengthStyle style;
    style.system = input.read.shell->units;
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

Counts counts_of(const Problems &problems, const Findings &findings) {
    Counts counts;
    for (const Problem &problem : problems)
        count(problem.weight, counts);
    for (const Finding &finding : findings)
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

std::string summary_line(const Input &input, const Layout *layout, const Counts &counts) {
    const bool built = layout && !layout->pieces.empty();
    return input.file + ": " + (built ? shell_words(input, *layout) : "") + many(counts.errors, "error") +
           ", " + many(counts.warnings, "warning") + ", " + many(counts.notes, "note");
}

} // namespace roundlay
