// Templates on paper: each shape once, whichever joints it serves, from either side of the sheet.
#pragma once

#include "exporters/sheets/pattern/patterns.h"

#include <vector>

namespace roundlay::sheets {

/// A face of a template as it is printed, and what else it is laid on.
struct PrintedShape {
    PatternFace face;                               ///< of the first that has it
    Pattern pattern;                                ///< likewise, with the tags of all
    std::vector<std::string> as_it_is, turned_over; ///< names of the other faces that it serves
};

/// The faces of all patterns, in their order: those that are the same shape with the same lines, or its
/// mirror picture, to `alike_by`, as one.
std::vector<PrintedShape> printed_shapes(const std::vector<Pattern> &patterns);

} // namespace roundlay::sheets
