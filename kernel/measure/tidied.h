// Lengths that were added, taken off or dragged, as a person would state them.
#pragma once

#include "kernel/measure/measure.h"

namespace roundlay {

/// The 64th of an inch or the thousandth of a millimetre that a length is to 1e-6 mm, else the length itself:
/// sums and differences leave last digits (36 ft less 24 ft is to be written "12 ft").
Length tidied(Length length);

} // namespace roundlay
