// What a stage hands on: a value, and what it has to say of it.
#pragma once

#include "kernel/shell/finding.h"

namespace roundlay {

/// The value can be handed on as it is. Where one of its findings is an error it holds what could be worked
/// out all the same.
template <typename Value> struct Found : Value { Findings findings; };

/// Whether no stage has found an error.
template <typename... Stages> bool stand(const Stages &...stages) {
    return (!has_errors(stages.findings) && ...);
}

} // namespace roundlay
