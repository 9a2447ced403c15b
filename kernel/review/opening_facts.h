// What the finished layout says of an opening: the logs over and under it, and the space its frame needs.
#pragma once

#include "kernel/layout/layout.h"

#include <string>
#include <vector>

namespace roundlay {

struct OpeningFacts {
    std::string name;
    std::optional<Index<Piece>> header, sill; ///< none: the opening stands on the foundation
    double runs_left = 0, runs_right = 0;     ///< how far the header log runs past the jambs, mm
    double settle_space = 0;                  ///< over the frame, mm; by a rule rounded up to what is printed
    Said settle_basis; ///< one sentence: whose word it is, or the rule with why and its source;
                       ///< what the longest rule gives
};

/// In the order of Shell::openings; empty where the layout has no pieces.
std::vector<OpeningFacts> opening_facts(const Shell &shell, const Layout &layout);

} // namespace roundlay
