// Zones of found wood by the pieces that they lie on: what elevation and model paint of them.
#pragma once

#include "exporters/registry/job.h"
#include "exporters/report/log_outline.h"

#include <vector>

namespace roundlay::window {

struct PlacedZone {
    Index<Piece> piece;
    ConditionZone zone;
    sheets::Along along; ///< what of the piece it takes, in the wall's x
};

struct PlacedZones {
    std::vector<PlacedZone> zones; ///< the worst last
    /// Which of record_marks(Colouring::condition) each piece has beside them: by zones whose place is not
    /// known, or by words.
    Indexed<std::size_t, Piece> whole;
};

/// Of every log of the record where it was found; of no replacement, and of no new wood in a log.
PlacedZones placed_zones(const ExportJob &job);

} // namespace roundlay::window
