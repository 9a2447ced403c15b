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

/// Which end of a log, seen from outside.
enum class LogEnd { left, right };

/// One of the four long faces of a log.
enum class LogSide { outside, inside, top, under };

/// What the faces of a log are left as.
enum class Finish { hewn, sawn, peeled };

enum class MendKind {
    let_in, ///< a piece let into a part of one face
    face,   ///< a new face over a length: the whole of one face renewed, from below a half-sole
    splice  ///< a new end, lapped with what stays
};

} // namespace roundlay
