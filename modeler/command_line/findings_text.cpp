#include "exporters/words/catalogue.h"
#include "exporters/words/voice.h"
#include "kernel/layout/courses/standing.h"
#include "kernel/shell/weight_words.h"
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

std::string count_words(const Voice &voice, const Counts &counts) {
    const auto [errors, warnings, notes] = counts;
    return (errors == 1 ? voice.say("%1 error", errors) : voice.say("%1 errors", errors)) + ", " +
           (warnings == 1 ? voice.say("%1 warning", warnings) : voice.say("%1 warnings", warnings)) + ", " +
           (notes == 1 ? voice.say("%1 note", notes) : voice.say("%1 notes", notes));
}

std::string shell_words(const ExportJob &job, const Voice &voice) {
    const Layout &layout = job.layout;
    const std::size_t walls = layout.walls.size(), pieces = layout.pieces.size(), pegs = layout.pegs.size();
    return (walls == 1 ? voice.say("%1 wall", walls) : voice.say("%1 walls", walls)) + ", " +
           voice.words(round_words(layout)) + ", " +
           (pieces == 1 ? voice.say("%1 piece (%2 distinct)", pieces, layout.models.size())
                        : voice.say("%1 pieces (%2 distinct)", pieces, layout.models.size())) +
           ", " + (pegs == 1 ? voice.say("%1 peg", pegs) : voice.say("%1 pegs", pegs)) + ", " +
           voice.words(height_words(layout, job.shell.units)) + std::string(semicolon_of(voice.language()));
}

constexpr std::size_t most_alike = 3;
constexpr std::size_t most_places = 6;

std::string line_start(const Input &input, const Finding &finding) {
    std::string line = input.file;
    if (const auto place = input.read.places.locate(finding.subject); place && place->line > 0)
        line += ":" + std::to_string(place->line) + ":" + std::to_string(place->column);
    return line + ": " + std::string(name_of(finding.weight)) + ": ";
}

/// "and 9 more like it: wall B, round 8; wall B, round 10; ... (check --json lists all)".
std::string more_alike(const std::vector<const Finding *> &group, const Voice &voice) {
    std::string places;
    const std::string between(semicolon_of(voice.language()));
    const std::size_t end = std::min(group.size(), most_alike + most_places);
    for (std::size_t i = most_alike; i < end; ++i)
        places += (i > most_alike ? between : "") + words_of(group[i]->about, voice.speech());
    if (end < group.size()) places += between + voice.say("... (--json lists all)");
    return voice.say("and %1 more like it: %2", group.size() - most_alike, places);
}

} // namespace

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
    return grouped_lines(findings, voice_of(job).speech(),
                         [&](const Finding &f) { return line_start(input, f); });
}

std::vector<FindingLine> grouped_lines(const Findings &findings, const Speech &speech,
                                       const std::function<std::string(const Finding &)> &start) {
    const Voice voice(speech);
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
            lines.push_back({f.weight, start(f) + more_alike(all, voice)});
    }
    return lines;
}

std::string summary_line(const Input &input, const ExportJob *job, Language language) {
    const Voice voice({language, job ? job->shell.units : UnitSystem::metric});
    const bool built = job && !job->layout.pieces.empty();
    const std::string state =
        job && !job->shell.state.empty() ? std::string(" (") + job->shell.state + ")" : "";
    return input.file + state + ": " + (built ? shell_words(*job, voice) : "") +
           count_words(voice, counts_of(input, job));
}

} // namespace roundlay
