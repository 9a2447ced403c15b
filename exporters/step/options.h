// How STEP files are to be written.
#pragma once

#include <cstdint>
#include <optional>

namespace roundlay {

enum class StepRoute {
    automatic, ///< own text for every solid whose border can be written down, else the library's
    library,   ///< the library's text for all solids: slower
};

enum class StepSchema {
    ap214, ///< AUTOMOTIVE_DESIGN, ISO 10303-214: what shops ask for
    ap242  ///< managed model based 3D engineering, ISO 10303-242 edition 2
};

enum class StepUnit { millimetre, inch };

enum class StepColours {
    wall, ///< each wall and floor in its own
    wood  ///< new wood, and old wood that is kept, patched or replaced
};

struct StepOptions {
    std::optional<std::int64_t> seconds; ///< time stamp, since 1970 UTC; else SOURCE_DATE_EPOCH, else now
    StepRoute route = StepRoute::automatic;
    StepSchema schema = StepSchema::ap214;
    StepUnit unit = StepUnit::millimetre;
    StepColours colours = StepColours::wall;
    bool linked = false;     ///< the shell refers to the files of its pieces and has no solids of its own
    bool with_stock = false; ///< in a piece's file a second product: the stick that it is cut from
};

} // namespace roundlay
