// Kinds of things that both what is stated and what is told of it speak of.
#pragma once

namespace roundlay {

enum class OpeningKind { door, window };

enum class BoreUse {
    bolt, ///< a through bolt
    rod,  ///< a hold-down rod
    wire, ///< a way for wiring
    hole  ///< found in old wood
};

enum class TimberUse {
    joist,   ///< from wall to wall
    trimmed, ///< a joist cut short by a floor opening
    trimmer, ///< across the end of a floor opening; carries trimmed joists
    beam     ///< carries joists between the walls
};

} // namespace roundlay
