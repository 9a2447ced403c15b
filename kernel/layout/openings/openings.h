// Openings: do they fit, and what do they take from each course.
#pragma once

#include "kernel/layout/corners/corners.h"

namespace roundlay {

/// A stretch along a wall, in the wall's own x.
struct Span {
    double from = 0, to = 0;
    double length() const { return to - from; }
};

/// What one opening takes from one course.
struct OpeningCut {
    std::size_t opening = 0; ///< index into Shell::openings
    Span span;
    bool severs = false;       ///< the whole height of the log: it falls into two pieces
    BoxUse use = BoxUse::sill; ///< otherwise
    double low = 0, high = 0;  ///< wood taken, height from the foundation
    double fall = 0;           ///< of a sill: it falls outward by this, from `low` at the inside face
};

struct Openings {
    std::vector<bool> refused; ///< by opening
};

/// Checks every opening against its wall, the corners and one another. Where no heights are known nothing is
/// said of them.
Found<Openings> check_openings(const Shell &shell, const Plan &plan, const Heights &heights);

/// The stretches of a wall, from left to right, in which the left jamb of an opening that is as wide may
/// stand: with wood enough to the tails, to partitions and to the other openings. Empty where there is none.
std::vector<Span> places_beside(const Shell &shell, const Plan &plan, std::size_t opening);

/// The opening cuts of one course, from left to right.
std::vector<OpeningCut> cuts_of(const Shell &shell, const Plan &plan, const Foundation &foundation,
                                Index<WallPlace> wall, const Course &course);

/// Checks what is cut for frames. Where no heights are known nothing is said of them.
Findings check_trim(const Shell &shell, const Plan &plan, const Heights &heights);

/// Notes windows whose stated slope of the sill meets no wood: the sill lies in the gap over a log.
Findings note_level_sills(const Shell &shell, const Plan &plan, const Foundation &foundation,
                          const Courses &courses);

/// Less wood than this over or under an opening splits off when it is cut. Common practice, no source.
inline constexpr double least_left_over = 50;

struct Sliver {
    std::size_t finding = 0; ///< index into the findings of whoever tells of it
    double left = 0; ///< wood over or under the opening; under 0 where a sloping sill runs out below the log
};

struct Slivers {
    std::vector<Sliver> slivers;
};

/// Wood left over or under an opening thinner than `least_left_over` is warned of. What would mend it: see
/// advice/sliver_advice.h.
Found<Slivers> warn_of_slivers(const Shell &shell, const Plan &plan, const Foundation &foundation,
                               const Courses &courses);

/// What people call an opening: its name, else "window 2 in wall A".
std::string name_of(const Shell &shell, std::size_t opening);

/// The same where its wall is told beside it: its name, else "window 2".
std::string name_in_wall(const Shell &shell, std::size_t opening);

/// What a finding about it is about: wall A, window 2.
About opening_place(const Shell &shell, std::size_t opening);
about::Opening opening_of(const Shell &shell, std::size_t opening);

} // namespace roundlay
