// Changes of a shell that are offered, as functions from shell to shell.
#pragma once

#include "kernel/design/fitted.h"

#include <optional>
#include <string>

namespace roundlay {

/// The shell with one more partition, square to that wall, at the place nearest to its middle where the
/// layout takes it. Where it fits nowhere, what is against it in the middle.
Fitted with_fitting_partition(const Shell &shell, const std::string &from);

/// Whose notch is stated.
enum class NotchScope { corner, shell, log };

struct NotchPlace {
    std::string first, second; ///< walls of the corner, as CornerNotch
    std::string wall;          ///< of the log; empty where none is meant
    int round = 0;
};

/// The rule that holds there now.
NotchRule notch_at(const Shell &shell, const NotchPlace &place, NotchScope scope);
/// The shell with that rule. For the whole shell the corner lets go of what it stated itself.
Shell with_notch(const Shell &shell, const NotchPlace &place, NotchScope scope, const NotchRule &rule);

/// True where the layout has no error more than that of the shell before.
bool fits_as_well(const Shell &shell, const Shell &before);

/// With one more partition, square to that wall, exactly there, up to the wall across or `to`. Nothing where
/// the layout does not take it.
std::optional<Shell> with_partition_there(const Shell &shell, const std::string &from, Length from_left,
                                          const std::string &to = {});

Shell with_corner_notch(const Shell &shell, const std::string &first, const std::string &second,
                        const NotchRule &notch);

/// The shell with another kind of notch throughout. Saddles come with what round logs need, where it is not
/// stated already: no gap, ends that run past, sticks as thick as their pitch asks. Saddles never stand among
/// tails.
Shell with_kind(const Shell &shell, NotchKind kind);

/// A log of a wall's round, whole; or with `piece` one of those that openings part it into.
struct LogPlace {
    std::string wall;
    int round = 1;
    std::optional<int> piece;
    bool operator==(const LogPlace &) const = default;
};

/// What is stated of that log alone; only its place where nothing is.
OwnLog own_log(const Shell &shell, const LogPlace &log);
bool says_something_of(const Shell &shell, const LogPlace &log);
/// The shell with that stated of the log; a log of which nothing is left to say goes.
Shell with_own_log(const Shell &shell, const OwnLog &log);

} // namespace roundlay
