#include "exporters/words/words.h"
#include "kernel/layout/courses/standing.h"
#include "modeler/command_line/findings.h"

#include <algorithm>
#include <map>

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
    return many(layout.walls.size(), "wall") + ", " + round_words(layout) + ", " +
           many(layout.pieces.size(), "piece") + " (" + std::to_string(layout.models.size()) +
           " distinct), " + many(layout.pegs.size(), "peg") + ", " + height_words(layout, job.shell.units) +
           "; ";
}

constexpr std::size_t most_alike = 3;
constexpr std::size_t most_places = 6;

std::string line_start(const Input &input, const Finding &finding) {
    std::string line = input.file;
    if (const auto place = input.read.places.locate(finding.subject); place && place->line > 0)
        line += ":" + std::to_string(place->line) + ":" + std::to_string(place->column);
    return line + ": " + std::string(word(finding.weight)) + ": ";
}

/// "9 more like it: wall B, round 8; wall B, round 10; ... (--json lists all)".
std::string more_alike(const std::vector<const Finding *> &group, const Speech &speech) {
    std::string text = std::to_string(group.size() - most_alike) + " more like it: ";
    const std::size_t end = std::min(group.size(), most_alike + most_places);
    for (std::size_t i = most_alike; i < end; ++i)
        text += (i > most_alike ? "; " : "") + words_of(group[i]->about, speech);
    return text + (end < group.size() ? "; ... (--json lists all)" : "");
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

std::vector<FindingLine> finding_lines(const Input &input, const ExportJob &job, const Findings &findings) {
    return grouped_lines(findings, in_english(job.shell.units),
                         [&](const Finding &f) { return line_start(input, f); });
}

std::vector<FindingLine> grouped_lines(const Findings &findings, const Speech &speech,
                                       const std::function<std::string(const Finding &)> &start) {
    struct Alike {
        std::vector<const Finding *> all;
        std::size_t said = 0;
    };
    std::map<std::pair<std::string, std::string>, Alike> alike;
    for (const Finding &f : findings)
        alike[{f.code, f.subject}].all.push_back(&f);
    std::vector<FindingLine> lines;
    Findings heaviest_first = findings;
    std::stable_sort(heaviest_first.begin(), heaviest_first.end(),
                     [](const Finding &a, const Finding &b) { return a.weight < b.weight; });
    for (const Finding &f : heaviest_first) {
        auto &[all, said] = alike[{f.code, f.subject}];
        const std::size_t before = said++;
        if (before < most_alike || all.size() <= most_alike + 1) // "and 1 more" saves no line
            lines.push_back({f.weight, start(f) + sentence_of(f, speech)});
        else if (before == most_alike)
            lines.push_back({f.weight, start(f) + "and " + more_alike(all, speech)});
    }
    return lines;
}

std::string summary_line(const Input &input, const ExportJob *job) {
    const Counts counts = counts_of(input, job);
    const bool built = job && !job->layout.pieces.empty();
    return input.file + ": " + (built ? shell_words(*job) : "") + many(counts.errors, "error") + ", " +
           many(counts.warnings, "warning") + ", " + many(counts.notes, "note");
}

} // namespace roundlay
