// Ends, sides and faces of a log.
#pragma once

namespace roundlay {

enum class End { datum, far }; ///< datum = left seen from outside (x = 0), far = the other
enum class Side { top, under };

/// The four long faces of a log, and its two ends.
enum class LogFace { top, under, outside, inside, datum_end, far_end };

} // namespace roundlay
