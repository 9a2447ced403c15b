// What is known of each kind of notch: the one place that a new kind of the tail family is described in.
#pragma once

#include "kernel/shell/shell.h"

#include <array>
#include <optional>

namespace roundlay {

/// How the tops of the tails of a kind are given.
enum class NotchSlopes {
    from_slope, ///< by the rule's one slope, taken by both factors below
    level,      ///< tails, but no slope
    stated,     ///< along and across, each as stated
    none        ///< no tails: round logs, scoped over one another
};

struct KindOfNotch {
    NotchKind kind = NotchKind::full_dovetail;
    const char *name = ""; ///< in documents and for people
    const char *does = ""; ///< one phrase, in the reference of the format
    NotchSlopes slopes = NotchSlopes::level;
    /// Of the tail's top, as parts of the rule's slope: outward along its own log, and along the crossing
    /// one.
    int along = 0, across = 0;
};

/// In the order of NotchKind, which is that in which they are offered.
inline constexpr std::array all_kinds_of_notch{
    KindOfNotch{NotchKind::full_dovetail, "full dovetail", "locks both ways", NotchSlopes::from_slope, 1, -1},
    KindOfNotch{NotchKind::half_dovetail, "half dovetail", "locks and sheds", NotchSlopes::from_slope, 0, -1},
    KindOfNotch{NotchKind::square_lap, "square lap", "level; held by pegs only", NotchSlopes::level},
    KindOfNotch{NotchKind::stated, "stated", "", NotchSlopes::stated},
    KindOfNotch{NotchKind::saddle, "saddle",
                "for round logs: every log is scoped over those it lies on, along its length and where it "
                "crosses them",
                NotchSlopes::none},
};

constexpr const KindOfNotch &kind_of(NotchKind kind) {
    return all_kinds_of_notch[static_cast<std::size_t>(kind)];
}

constexpr bool takes_slope(NotchKind kind) {
    return kind_of(kind).slopes == NotchSlopes::from_slope;
}

/// "full dovetail": in documents and for people.
constexpr const char *name_of(NotchKind kind) {
    return kind_of(kind).name;
}

/// The kind that a person may mean by a kind's name or the first word of it ("half"); none that asks for
/// slopes.
std::optional<NotchKind> notch_called(const std::string &word);
/// All words that notch_called knows.
std::vector<std::string> words_for_notches();

} // namespace roundlay
