#include "modeler/window/desk/problem_words.h"

#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/finding_words.h"
#include "modeler/window/desk/kernel_words.h"

#include <algorithm>

namespace roundlay::window {

const Problem *first_error_of(const Problems &problems) {
    const auto at = std::ranges::find(problems, Weight::error, &Problem::weight);
    return at == problems.end() ? nullptr : &*at;
}

QString problem_text(const Problem &problem) {
    QString words = problem.said ? in_words(*problem.said, problem.units) : kernel_words(problem.message);
    if (!problem.expected.empty()) words += Desk::tr("; expected %1").arg(kernel_words(problem.expected));
    return words;
}

} // namespace roundlay::window
