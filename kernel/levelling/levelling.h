// Levelling: which log of a pile lies where and which way round, so that wall tops stay level.
//
// Logs of one wall lie on one another, so at each end of a wall the heights add up. After each round the top
// of a wall should be level and as high as the mean log says; what it is above (+) or below (-) that is its
// error at that end. Chosen is the arrangement with the least sum of squared errors over all rounds and ends.
// Common practice, no source: butts change ends from round to round and logs are picked so that walls stay
// level.
#pragma once

#include "kernel/layout/layout.h"
#include "kernel/levelling/pile.h"

#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace roundlay {

/// A top that heights add up to while logs are laid: of a wall's end, or of an end of a stack of islands.
struct RunningTop;

/// Where a log of the pile lies: right through the wall, or in one of the pieces that openings part a round
/// into, or in all of them one behind another.
struct LogPlace {
    Index<WallPlace> wall;
    int round = 1;
    double length = 0; ///< mm, blank: of all its pieces, with a saw cut between them
    double share = 1;  ///< of the log's height that counts: half of a half log's
    /// Which running tops its two ends add their heights to: those of the wall's ends, or of a stack of
    /// islands. None: an end beside an opening, which nothing lies on but what spans the opening.
    std::optional<Index<RunningTop>> left_top, right_top;
    int first_piece = 1, last_piece = 1, pieces = 1; ///< of so many in the round
    double less = 0; ///< mm: a half log is so much lower than its share, for the gap between the two halves
    bool operator==(const LogPlace &) const = default;
};

/// A log that is cut in two loses this. Common practice, no source.
inline constexpr double saw_cut = 10;

/// By round, then wall, then from the left. Where openings part a round, its pieces are cut from one log
/// where the pile has logs enough that are long enough, and else each from its own: of the ways that go, one
/// with the longest rounds parted first. Every way is tried before a sentence says that none goes, and which
/// lengths are missing.
std::variant<std::vector<LogPlace>, std::string> log_places(const Shell &shell, const Layout &layout,
                                                            const std::vector<PileLog> &pile);

/// "5 of 6000 mm or longer, 2 of 4300 mm or longer": what a pile of these lengths lacks for the ones needed,
/// with every log given to the longest place that it reaches, so that as few and as short ones as can be are
/// missing. Empty: nothing.
std::string missing_logs(std::vector<double> need, std::vector<double> have, UnitSystem units);

/// A log in a place.
struct Seat {
    Index<PileLog> log;
    LogEnd butt = LogEnd::left;
    bool operator==(const Seat &) const = default;
};

/// Of a wall's top after a log was laid, mm over (+) or under (-) a level top; 0 at an end that adds to no
/// top.
struct EndErrors {
    double left = 0, right = 0;
};

struct Arrangement {
    std::vector<Seat> seats;       ///< one for each place
    std::vector<EndErrors> errors; ///< one for each place
    double worst = 0;              ///< largest error, mm
    double squares = 0;            ///< sum of the errors' squares, mm2
};

struct Levelled {
    std::vector<LogPlace> places;
    double log_height = 0; ///< mean of the pile's ends as they will be cut, mm: what is level
    Arrangement before;    ///< logs as they come, butts changing ends from round to round
    Arrangement after;
    double least_squares =
        0;                  ///< no arrangement has a smaller sum than this, mm2 (a bound, not always reached)
    double least_worst = 0; ///< no arrangement has a smaller largest error, mm (a bound)
    bool proven = false;    ///< every other arrangement was ruled out: `after`, or `most_level` where that is
                            ///< stated, is the best there is in these places
    // What shun_slivers (slivers.h) adds:
    std::optional<Arrangement> most_level;      ///< the best one, where `after` gave way for fewer slivers
    int slivers = 0, slivers_of_most_level = 0; ///< places where a log beside an opening is left too thin
    bool parted_otherwise =
        false; ///< `most_level` cannot be laid: openings part its rounds into other pieces
};

/// A log is cut to its place from the butt on: its other end's height lies on the straight line from butt to
/// tip.
double tip_height_at(const PileLog &log, double length);
double tip_width_at(const PileLog &log, double length);

/// Works out an arrangement. Deterministic. A sentence, with lengths in `units`, where the pile is too small
/// or its logs too short.
std::variant<Levelled, std::string> level_logs(const std::vector<PileLog> &pile,
                                               const std::vector<LogPlace> &places,
                                               UnitSystem units = UnitSystem::metric);

/// The logs as a document states them, by the arrangement `after`: measured sizes as they are, those at a cut
/// end no finer than a rule is read in `units`, widths hewn down to the wall's thickness.
std::vector<OwnLog> own_logs(const Plan &plan, UnitSystem units, const std::vector<PileLog> &pile,
                             const Levelled &levelled);

/// The errors of any arrangement, for showing and checking.
Arrangement arranged(const std::vector<PileLog> &pile, const std::vector<LogPlace> &places,
                     std::vector<Seat> seats, double log_height);

} // namespace roundlay
