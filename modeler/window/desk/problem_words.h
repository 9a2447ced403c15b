// Problems of a document in the language of the window.
#pragma once

#include "kernel/document/problem.h"

#include <QString>

namespace roundlay::window {

/// What is wrong and what would be right, without the place.
QString problem_text(const Problem &problem);

/// Null where none is one.
const Problem *first_error_of(const Problems &problems);

} // namespace roundlay::window
