// Which part of a log a mend takes, in the frame of the log as it lies without mends.
#pragma once

#include "kernel/geometry/cell.h"
#include "kernel/layout/piece.h"

#include <optional>
#include <vector>

namespace roundlay {

/// What a mend takes of its log: a stretch of one face down to a bed; of a splice that is its lap, and with
/// it goes all of the log beyond that at its end.
struct MendRegion {
    LogFace face = LogFace::outside;
    double from = 0, to = 0;    ///< along the log
    double low = 0, high = 0;   ///< across the face, as MendCut; past the blank where it takes the whole face
    Plane bed;                  ///< outward of the wood that stays, toward the face
    std::optional<End> new_end; ///< of a splice: which end is new

    /// Where the new end of a splice is whole: up to here, or from here on.
    double shoulder() const { return *new_end == End::datum ? from : to; }
};

/// How far a mend reaches along a log of that length: from its datum end.
struct MendStretch {
    double from = 0, to = 0;
};

/// The log's thickness that a depth is taken of, least along that stretch: height for the top and under face.
double least_thickness(const Piece &log, LogFace face, const MendStretch &along);

/// What distances across a face count from there: heights from the log's under face, else its outside face.
double lowest_edge(const Piece &log, LogFace face, double x);

/// `depth`: from the face as hewn; none: half of the log. `low` and `high` as MendRegion.
MendRegion region_in(const Piece &log, LogFace face, const MendStretch &along, std::optional<double> depth,
                     double low, double high);

/// As convex cells of the log's blank, one or two.
std::vector<Cell> cells_of(const MendRegion &region, const Blank &blank);

/// How much of a bore's length lies in the region: `taken`, unless its edge would run through the bore's
/// side.
struct BoreInRegion {
    bool split = false;
    double from = 0, to = 0; ///< heights of the bore's own; from >= to where none does
};
BoreInRegion bore_in(const MendRegion &region, const Bore &bore, const Blank &blank);

LogFace log_face(LogSide side);
LogFace opposite(LogFace face);
bool is_side(LogFace face); ///< else top or under

} // namespace roundlay
