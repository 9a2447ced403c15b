// Where a published value comes from and how far it can be trusted.
#pragma once

#include "kernel/measure/said.h"

#include <string_view>

namespace roundlay {

/// How a value came to us. Anything but `seen` should be checked against the printed table before someone
/// relies on it.
enum class Mark {
    seen,        ///< read in the source, or on a page that prints it
    second_hand, ///< read in a transcription of the source
    memory,      ///< not read anywhere at the time of writing
    derived,     ///< worked out from a cited formula
};

/// `seen`, `second-hand`, `from memory`, `derived`.
std::string_view words(Mark mark);

struct Origin {
    Mark mark = Mark::memory;
    std::string_view source;
    std::string_view conflict; ///< what another source says; empty = none known
};

/// "Wood Handbook, table 5-3a (second-hand), though older editions give 34 %". A source is called what it is
/// called in its own language.
Said said_of(const Origin &origin);

} // namespace roundlay
