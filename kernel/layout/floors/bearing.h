// How far a timber's end truly lies in the log that carries it.
#pragma once

#include "kernel/layout/layout.h"

#include <vector>

namespace roundlay {

/// Of one end of a timber. A log that tapers or has wane does not reach the wall's face everywhere.
struct Bearing {
    double gap = 0;    ///< from the wall's face to where the log's wood begins under the timber
    double length = 0; ///< of wood under the timber, behind that
};

Bearing bearing_of(const Layout &layout, const Timber &timber, End end);

/// Clear spans, from wood to wood: the outer ones are longer than between the walls' faces by the gaps.
std::vector<double> clear_spans(const Layout &layout, const Timber &timber);

} // namespace roundlay
