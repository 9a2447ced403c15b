// How far walls of horizontal logs come down as they dry, by the rules that are quoted.
#pragma once

#include "kernel/measure/measure.h"
#include "kernel/trade/origin.h"

#include <span>

namespace roundlay {

/// The space to leave above an opening, as a part of the height of wood beside it.
struct SettlingRule {
    std::string_view name;
    double part = 0;         ///< e.g. 13/300
    std::string_view quoted; ///< the rule's own wording, which need not say quite the same
    std::string_view scope;  ///< what it was written for
    Origin origin;
};

/// Which rule fits is the person's choice: print it with the result.
std::span<const SettlingRule> settling_rules();

/// Printed wherever a settling space is shown.
inline constexpr std::string_view settling_caution =
    "Settling spaces follow the rule named, which may not be your local one; local code and a licensed "
    "professional decide.";

/// `height` is that of the wood beside the opening, not of the wall. 0 or more.
Length settling_space(Length height, const SettlingRule &rule);

} // namespace roundlay
