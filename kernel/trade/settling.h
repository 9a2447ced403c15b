// How far walls of horizontal logs come down as they dry, by the rules that are quoted.
#pragma once

#include "kernel/shell/shell.h"
#include "kernel/trade/origin.h"

#include <span>
#include <string>

namespace roundlay {

/// The space to leave above an opening, as a part of the height of wood beside it.
struct SettlingRule {
    SettlingRuleName id{};
    double part = 0;         ///< e.g. 13/300
    std::string_view quoted; ///< the rule's own wording, which need not say quite the same
    std::string_view scope;  ///< what it was written for
    Origin origin;

    std::string_view name() const { return name_of(id); }
};

std::span<const SettlingRule> settling_rules();
const SettlingRule &settling_rule(SettlingRuleName id);
const SettlingRule &longest_settling_rule();

/// Wood at this moisture or less, in percent, counts as seasoned: "dry" of lumber standards (PS 20, from
/// memory).
inline constexpr double seasoned_moisture = 19;

/// Which rule an opening goes by, and why, or whose word it is. Print both with the result.
struct SettlingChoice {
    const SettlingRule *rule = nullptr;
    std::string_view why;
};

/// The rule that a person stated for all openings, else that of the kind of wall.
SettlingChoice choose_settling(const Shell &shell);
/// The rule that a person stated for this opening, as the frame may stand in other wood than the others; else
/// that of all.
SettlingChoice choose_settling(const Shell &shell, const Opening &opening);
/// Scribed round logs: the rule written for them, unless their wood is stated to be seasoned. Every other
/// wall: a code's least, which none should go under for being dry.
SettlingChoice settling_by_wall(const Shell &shell);
/// What a space stated over a frame is held against: the rule of the kind of wall, or the one that is stated
/// where that asks for more.
const SettlingRule &settling_asked_for(const Shell &shell, const Opening &opening);

/// Printed wherever a settling space is shown.
inline constexpr std::string_view settling_caution =
    "Settling spaces follow the rule named, which may not be your local one; local code and a licensed "
    "professional decide.";

/// `height` is that of the wood beside the opening, not of the wall. 0 or more.
Length settling_space(Length height, const SettlingRule &rule);
/// The same, rounded up to what is printed: a whole millimetre, or the smallest part of an inch.
Length shown_settling_space(Length height, const SettlingRule &rule, UnitSystem units);

} // namespace roundlay
