// What is said as a value, in the English that problems of a document are told in.
#pragma once

#include "kernel/measure/measure.h"
#include "kernel/measure/said.h"

#include <string>

namespace roundlay {

std::string english_of(const Said &said, const LengthStyle &style);

/// Names in it as a message shows them: quoted, cut where they are long.
Said with_quoted_names(const Said &said);

} // namespace roundlay
