// What a record says is done already, piece by piece, and what may come next.
//
// Geometry alone: whether a wall stands while it is open, and with what it is lifted, is for whoever is
// there.
#pragma once

#include "kernel/progress/order.h"
#include "kernel/record/record.h"

#include <array>
#include <optional>
#include <string>
#include <vector>

namespace roundlay {

/// Who did it and when, in any words; both may be empty.
struct Tick {
    std::string by, on;
    std::size_t entry = 0; ///< in Record::done, the first that says so
};

/// Of each of Layout::pieces what was ticked. New wood in a mended log goes up, comes down and is pegged with
/// the log.
struct Ticked {
    Indexed<std::array<std::optional<Tick>, deeds>, Piece> ticks;
    /// Found logs that are recorded as missing from end to end: nothing of them is there to be taken down. In
    /// the order of Layout::pieces.
    std::vector<Index<Piece>> gone = {};

    bool is_gone(Index<Piece> piece) const;
    const std::optional<Tick> &tick(Index<Piece> piece, Deed what) const {
        return ticks[piece][static_cast<std::size_t>(what)];
    }
    bool is(Index<Piece> piece, Deed what) const { return tick(piece, what).has_value(); }
    bool any(Deed what) const;
};

/// `state`: what the shell calls itself (Shell::state); entries of another state do not count.
Ticked ticked_of(const Record &record, const Layout &layout, const std::string &state);

/// What people are working on: what must come before what, and what is done.
struct Site {
    RaisingOrder order;
    Ticked ticked;
};

Site site_of(const Record &record, const Shell &shell, const Layout &layout, const Bodies &bodies);

enum class May {
    done,    ///< it is ticked
    now,     ///< nothing is in its way, and nothing is lacking
    waits,   ///< others come first
    shut_in, ///< others are up that it cannot come down past any more; of taking down never
    gone     ///< of taking down: it is recorded as missing
};

struct Turn {
    May may = May::now;
    std::vector<Index<Piece>> waits_for; ///< of raising what lies under it, of taking down what lies over it
    std::vector<Index<Piece>> shut_in_by;
    /// Of raising: their pegs go in first, for it covers them. It may go up all the same.
    std::vector<Index<Piece>> pegs_first;
};

/// By Deed::up: what lies under it is up, and nothing that is up lies over it.
Turn turn_up(const Layout &layout, const Site &site, Index<Piece> piece);

/// By Deed::down: what lies over it is down.
Turn turn_down(const Layout &layout, const Site &site, Index<Piece> piece);

/// The one of these two. `deed`: Deed::up or Deed::down; here and below others throw std::logic_error.
Turn turn_of(const Layout &layout, const Site &site, Deed deed, Index<Piece> piece);

/// What people are at: taking down where something is down and nothing is up, else raising.
Deed deed_at_hand(const Ticked &ticked);

/// In the order of the raise, or back: those that may come now; of taking down none that is gone. New wood is
/// lifted with its log and not named.
std::vector<Index<Piece>> may_now(const Layout &layout, const Site &site, Deed deed);

/// What is lifted at once: a log with the new wood in it. Kilograms as worked out, not rounded.
struct Lift {
    bool known = true; ///< else both are too low
    double low_kg = 0, high_kg = 0;
    std::size_t pieces = 0;
};
/// `log`: no new wood.
Lift lift_of(const Shell &shell, const Layout &layout, const Bodies &bodies, Index<Piece> log);

/// What is still to be raised, or to be taken down; what is gone is in neither number of that. Kilograms as
/// worked out, not rounded.
struct Left {
    std::size_t done = 0, left = 0; ///< pieces
    bool weights_known = true;      ///< of all that is left: a sum in which one is missing is too low
    double low_kg = 0, high_kg = 0; ///< of all that is left
    /// Of the lifts that are left, new wood with its log; none where nothing is left or a weight is unknown.
    std::optional<Index<Piece>> heaviest;
    double heaviest_low_kg = 0, heaviest_high_kg = 0;
};

Left what_is_left(const Shell &shell, const Layout &layout, const Bodies &bodies, const Ticked &ticked,
                  Deed deed);

/// Pieces by what a person calls them: a tag, or the beginning of tags up to a dash ("A-03": that round of
/// wall A, "A": all of it). Of a deed that is done to a log with its new wood the log alone. Empty where
/// there is no such piece.
std::vector<Index<Piece>> pieces_called(const Layout &layout, const std::string &name, Deed deed);

/// What was ticked and cannot be, or names no piece: told at the statement that `path` names.
struct TickProblem {
    std::string path; ///< "done[3].pieces"
    Said what;
};

/// For people who see the house to look at: never a refusal. `order`: of that layout, one that stands.
/// `states`: names of the states of the house; empty where it has but one.
std::vector<TickProblem> tick_problems(const Record &record, const Shell &shell, const Layout &layout,
                                       const RaisingOrder &order, const std::vector<std::string> &states);

} // namespace roundlay
