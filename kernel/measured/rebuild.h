// What the steps from a record to a shell share: the shell as far as it has come, and where its logs lie.
#pragma once

#include "kernel/layout/courses/courses.h"
#include "kernel/layout/plan/reach.h"
#include "kernel/measured/house_numbers.h"
#include "kernel/measured/line.h"
#include "kernel/measured/measured_shell.h"
#include "kernel/measured/settled.h"

namespace roundlay {

struct Rebuild {
    const Record &record;
    MeasuredShell &made;
    Found<Plan> plan;
    Found<Courses> courses;
    HouseNumbers numbers;
    const Settled *level; ///< that the house is put level by; null: it stands as it was measured

    /// After a step that moves walls or logs. False where they no longer stand.
    bool lay_out_anew();

    const Course &course(Index<WallPlace> wall, int round) const {
        return in_round(courses.logs[wall], round);
    }
    /// Where the log's body stops at that end, in the middle of the wall.
    double shoulder(Index<WallPlace> wall, int round, LogEnd end) const;
    /// How much higher than its lowest corner the house was found to lie there; 0 where it is not put level.
    double slant(Index<WallPlace> wall, double x) const;
    /// By how much what lies there comes down over the foundation where it is put level.
    double sunk(Index<WallPlace> wall, double x) const;
    /// What is stated of that log alone; made where nothing is yet.
    OwnLog &own(Index<WallPlace> wall, int round);
    /// The same of one of the logs that openings part the round into.
    OwnLog &own_piece(Index<WallPlace> wall, int round, std::optional<int> piece);
    /// Is the whole log stated to be new wood?
    bool is_new(Index<WallPlace> wall, int round) const;

    void unpropose(Index<WallPlace> wall, int round, LogEnd end, ProposedNumber what);
    void propose(Index<WallPlace> wall, int round, LogEnd end, ProposedNumber what);
    void tell(const char *code, About place, Said what, std::optional<Said> advice = {});

  private:
    void lower_levels();
};

/// Stated to be cut new, in place of what was found.
inline bool is_new_wood(const OwnLog &log) {
    return log.fabric == Fabric::newly_cut || log.fabric == Fabric::replacement;
}

inline constexpr LogEnd both_ends[] = {LogEnd::left, LogEnd::right};

/// How long the walls round the outside are, and how far off square, by their lengths and diagonals.
void set_walls(Rebuild &at);
/// How far ends run past, and walls as thick as their widest log. The walls move by it.
void set_plan(Rebuild &at);
/// Leaves out floors between walls that were measured further off one another than floors are laid out for.
void set_floors(Rebuild &at);
/// Heights and widths of each log at its two ends, its butt, bow and finish; of round logs their diameter.
void set_sizes(Rebuild &at);
/// At its butt and its tip, of heights between its shoulders.
void state_heights(Rebuild &at, Index<WallPlace> wall, int round, const Line &height);
/// Where the house is put level: carries along what was stated over the foundation as it was found.
void set_level(Rebuild &at);
/// The gaps under each log: where it lies in height.
void set_seams(Rebuild &at);
/// By levels, over the plane that all are told from: the lowest underside of a log of the first round, which
/// is where the foundation lies. Nothing where none of them was levelled. Once sizes are set.
std::optional<double> lowest_level(const Rebuild &at);
/// Where openings stand, and how large they are.
void set_openings(Rebuild &at);
/// The tails of each log, going up each corner.
void set_tails(Rebuild &at);
/// What was measured of logs and is not what the model is made of, but of it: lengths, heights beside
/// openings. Tells what differs, and what has no place in the model.
void hold_against(Rebuild &at);

} // namespace roundlay
