// Openings that are put where a hand points.
#pragma once

#include "kernel/shell/finding.h"
#include "kernel/shell/shell.h"

#include <optional>
#include <string>

namespace roundlay {

/// Width, height and sill to begin with, in round figures of the shell's units.
Opening usual_opening(OpeningKind kind, const std::string &wall, UnitSystem units);

/// Where an opening is wanted: its middle.
struct WantedPlace {
    double along = 0;         ///< from the wall's left, mm
    std::optional<double> up; ///< over the foundation; as its kind usually stands where nothing is said
    std::string called = {};  ///< its name in front of a number, in the person's language; empty: in English
};

struct PlacedOpening {
    Shell shell; ///< with the opening as its last one
    bool where_wanted = false;
    Findings remaining; ///< what a check has to say of it there that it had not to say before
};

/// The shell with one more opening, there if the layout takes it there, else at the place nearest along the
/// wall, else at the nearest height that has one; not where it is wanted, then a little further on where that
/// keeps a check from warning. Sill and height go to seams that are near. Nothing where it fits nowhere.
std::optional<PlacedOpening> with_opening(const Shell &shell, Opening opening, const WantedPlace &wanted);

struct NewOpening {
    std::optional<PlacedOpening> placed;
    bool as_usual = true;       ///< as wide and as high
    std::optional<Finding> why; ///< what is against the smallest, where none is placed
};

/// The same with one of the usual size; lower where the wall is too low for it, narrower where the wall is
/// too short.
NewOpening with_new_opening(const Shell &shell, OpeningKind kind, const std::string &wall,
                            const WantedPlace &wanted);

} // namespace roundlay
