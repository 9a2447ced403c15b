// What a check found, as lines for people and as JSON for machines.
#pragma once

#include "exporters/words/speech.h"
#include "modeler/command_line/load.h"

#include <functional>
#include <string>
#include <vector>

namespace roundlay {

/// How many of each weight, problems of reading and findings together.
struct Counts {
    int errors = 0, warnings = 0, notes = 0;
};
Counts counts_of(const Input &input, const ExportJob *job);

struct FindingLine {
    Weight weight = Weight::error;
    std::string text;
};

/// `cabin.roundlay:12:9: error: wall C, round 7: the opening is ...` for each of these findings of the job,
/// errors first; the place in the text is left out where a finding belongs to no statement. Where one
/// statement gives many of one kind, lines for the first few and one for the others together. Nothing is left
/// out of the counts or of `findings_json`.
std::vector<FindingLine> finding_lines(const Input &input, const ExportJob &job, const Findings &findings);

/// The same for findings of a shell that is in no file: `start` begins a finding's line.
std::vector<FindingLine> grouped_lines(const Findings &findings, const Speech &speech,
                                       const std::function<std::string(const Finding &)> &start);

/// One line: what the shell is, and how many findings there are. `job` = nullptr: it could not be read.
std::string summary_line(const Input &input, const ExportJob *job, Language language);

std::string findings_json(const Input &input, const ExportJob *job);

/// The same of a document that was made: `text` is the document itself.
std::string written_json(const Input &made, const ExportJob &job);

} // namespace roundlay
