#include "kernel/document/problem.h"

#include "kernel/shell/weight_words.h"

#include <algorithm>

namespace roundlay {

std::string to_text(const Problem &problem) {
    std::string text = problem.file;
    if (problem.place.line > 0)
        text += ":" + std::to_string(problem.place.line) + ":" + std::to_string(problem.place.column);
    if (!text.empty()) text += ": ";
    text += std::string(name_of(problem.weight)) + ": " + problem.message;
    return problem.expected.empty() ? text : text + "; expected " + problem.expected;
}

bool has_errors(const Problems &problems) {
    return std::any_of(problems.begin(), problems.end(),
                       [](const Problem &p) { return p.weight == Weight::error; });
}

} // namespace roundlay
