// Advice is tried before it is given: the shell is laid out with it, in the figures that are printed.
#pragma once

#include "kernel/layout/layout.h"
#include "kernel/layout/rounded.h"

#include <cmath>
#include <functional>
#include <vector>

namespace roundlay {

/// A shell laid out, whose findings say what a change brings with it.
using LayOut = std::function<Layout(const Shell &)>;

/// The size of a round length, to be told in words that mean just that.
inline LengthAmount just(Length by) {
    return exactly_in_mm(std::abs(by.mm()));
}

std::ptrdiff_t errors_in(const Findings &findings);
/// Errors and warnings.
std::ptrdiff_t warnings_in(const Findings &findings);

} // namespace roundlay
