// What the record says of the wood of each piece: for who takes it down, lifts, packs or cuts it.
#pragma once

#include "kernel/layout/layout.h"
#include "kernel/measure/said.h"
#include "kernel/record/record.h"

#include <vector>

namespace roundlay {

/// Pegs that were looked for, by what became of them.
struct PegCount {
    int found = 0, missing = 0, broken = 0, sawn = 0;
    int all() const { return found + missing + broken + sawn; }
};

struct AsFound {
    /// One phrase each, what can hurt first: wood that is missing, rotten, soft or checked, pegs that do not
    /// hold, later cuts, bow and wind, then what was noted and decided. Places are from the end that the last
    /// phrase names. Empty where nothing is recorded but sizes.
    std::vector<Said> phrases;
    PegCount pegs;
};

/// Of every piece of the layout, from all found logs that lie in its place; nothing of one that is stated to
/// be a replacement, whose wood is new. Sound zones are not told: they say nothing of what was not looked at.
/// Numbers that could not be read are told as they were noted.
Indexed<AsFound, Piece> as_found(const Record &record, const Layout &layout);

} // namespace roundlay
