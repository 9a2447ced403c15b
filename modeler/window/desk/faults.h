// Why a document cannot be built, and which walls, corners and openings that is about.
#pragma once

#include "modeler/window/desk/state.h"

#include <QString>
#include <set>

namespace roundlay::window {

/// One sentence that a person can act on, and where it stands in the text.
struct Reason {
    QString place; ///< "wall A, round 3"; empty where only the line is known
    QString words;
    int line = 0, column = 0; ///< 0 = nowhere in particular
    QString sentence() const; ///< all of it
};

/// What keeps the shell from standing, in the order of the text; empty where it stands.
std::vector<Reason> reasons_against(const State &state);

/// The first of them, and how many more there are; empty where the shell stands.
QString why_not(const State &state);

/// What errors are about, as a plan or an elevation can mark it.
struct Faults {
    std::set<std::string> walls, corners; ///< by name
    std::set<int> openings;               ///< indices into Shell::openings
    std::set<int> floors, steps;          ///< indices into Shell::floors and Shell::steps
};

Faults faults_of(const State &state);
/// The same of one finding, whatever its weight.
Faults about_of(const State &state, const Finding &finding);

} // namespace roundlay::window
