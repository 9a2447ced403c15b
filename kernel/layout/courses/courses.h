// Rounds: how many, how high, and where every log of every wall lies in height.
#pragma once

#include "kernel/layout/found.h"
#include "kernel/layout/heights.h"
#include "kernel/layout/piece.h"
#include "kernel/layout/walls.h"

namespace roundlay {

/// A log's section.
struct Section {
    double low = 0, high = 0; ///< under and top face, from the foundation
    double centre = 0; ///< of the whole log; of a half log: where the sawn-off half would have its centre
    double width = 0;
};

/// One log of a wall right through, before openings cut it: straight from end to end.
struct Course {
    int round = 1;
    LogKind kind = LogKind::full;
    double x_datum = 0, x_far = 0; ///< wall x of its two ends, overhangs included
    Section datum, far;
    bool butt_at_datum = true;
    double radius = 0; ///< of the round stick that it is made of; 0 = no wane
    double lip = 0,
           crown =
               0; ///< of logs scoped over one another: how far the wood reaches below `low` and over `high`
    bool scoped = false;
    double scribe = 0;
    double hollow =
        0; ///< of scoped logs: how far over `low` the groove reaches; below that there are only its two lips

    double along(double x) const { return (x - x_datum) / (x_far - x_datum); }
    double low(double x) const { return datum.low + along(x) * (far.low - datum.low); }
    double high(double x) const { return datum.high + along(x) * (far.high - datum.high); }
    double width(double x) const { return datum.width + along(x) * (far.width - datum.width); }
    Section at(double x) const {
        return {low(x), high(x), datum.centre + along(x) * (far.centre - datum.centre), width(x)};
    }
    bool tapers() const { return datum.low != far.low || datum.high != far.high || datum.width != far.width; }
};

/// Of a wall's courses, or of what is known of each of them: the one of that round.
template <typename OfCourse> const OfCourse &in_round(const std::vector<OfCourse> &courses, int round) {
    return courses[static_cast<std::size_t>(round - 1)];
}

/// How high the shell and its walls are, and every log.
struct Courses : Heights {
    Indexed<std::vector<Course>, WallPlace> logs; ///< of each wall, from the sill up
};

/// On an error there are no logs, nor heights of walls. Without walls only the shell's own height is worked
/// out.
Found<Courses> lay_out_courses(const Shell &shell, const Plan &plan);

/// How high a log is where nothing is stated of it. A log on the foundation takes up what its wall's height
/// differs from the shell's; a half log is what is left up to the next seam.
double nominal_log_height(const Shell &shell, const Heights &heights, Index<WallPlace> wall, LogKind kind,
                          bool sill);

/// Of a log sawn in two, where a half of the wall's own logs is `nominal_half` high: what the whole one has
/// more, each half has the half of.
double half_of_log(double nominal_half, double nominal_log, double log);

} // namespace roundlay
