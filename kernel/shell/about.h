// What a finding is about: a short list of things, by value, each a little narrower than the one before it.
#pragma once

#include "kernel/measure/said.h"
#include "kernel/shell/kinds.h"

#include <string>
#include <variant>
#include <vector>

namespace roundlay {

namespace about {

/// A wall or a partition, by its name.
struct Wall {
    std::string name;
    bool operator==(const Wall &) const = default;
};
struct Walls {
    std::string one, other;
    bool operator==(const Walls &) const = default;
};
/// Of the wall before it; counted from 1.
struct Round {
    int number = 1;
    bool operator==(const Round &) const = default;
};
/// A piece of the round before it, counted from 1, from the left.
struct Part {
    int number = 1;
    bool operator==(const Part &) const = default;
};
struct Corner {
    std::string name; ///< "AB"
    bool operator==(const Corner &) const = default;
};
struct Piece {
    std::string tag; ///< "C-07-2"
    bool operator==(const Piece &) const = default;
};
struct Pieces {
    std::string one, other; ///< tags
    bool operator==(const Pieces &) const = default;
};
/// Of the wall before it.
struct Opening {
    OpeningKind kind{};
    int number = 1;   ///< among those of its kind in its wall, in the order stated
    std::string name; ///< as stated; empty where it has none
    bool operator==(const Opening &) const = default;
};
struct Floor {
    std::string name;
    bool operator==(const Floor &) const = default;
};
/// Of the floor before it.
struct Timber {
    TimberUse use{};
    std::string tag; ///< "G-J03"
    bool operator==(const Timber &) const = default;
};
/// Of the foundation under the wall before it.
struct Step {
    int number = 1; ///< in the order stated
    bool operator==(const Step &) const = default;
};
/// In the wall or the round before it.
struct Bore {
    BoreUse use{};
    int number = 1;   ///< in the order stated
    std::string name; ///< as stated; empty where it has none
    bool operator==(const Bore &) const = default;
};
/// All of a kind, or the shell as a whole.
enum class All { plan, rounds, pegs, logs, openings, floors, bores, wood, top_of_walls };

} // namespace about

using Thing = std::variant<about::Wall, about::Walls, about::Round, about::Part, about::Corner, about::Piece,
                           about::Pieces, about::Opening, about::Floor, about::Timber, about::Step,
                           about::Bore, about::All>;
using About = std::vector<Thing>;

/// The first thing of that kind; nullptr where there is none.
template <typename Kind> const Kind *first_of(const About &about) {
    for (const Thing &thing : about)
        if (const Kind *found = std::get_if<Kind>(&thing)) return found;
    return nullptr;
}

/// Whether that corner and nothing else is spoken of.
inline bool is_corner(const About &about, const std::string &name) {
    const auto *corner = about.size() == 1 ? std::get_if<about::Corner>(&about.front()) : nullptr;
    return corner != nullptr && corner->name == name;
}

/// What it is called, to be said on its own or within something else: "door 2", or its name where it has one.
Said said_of(const Thing &thing);

inline About narrowed(About about, Thing thing) {
    about.push_back(std::move(thing));
    return about;
}

inline About wall_place(const std::string &wall) {
    return {about::Wall{wall}};
}
inline About round_place(const std::string &wall, int round) {
    return {about::Wall{wall}, about::Round{round}};
}
inline About corner_place(const std::string &corner) {
    return {about::Corner{corner}};
}
/// A log's end at a corner.
inline About corner_place(const std::string &corner, const std::string &wall, int round) {
    return {about::Corner{corner}, about::Wall{wall}, about::Round{round}};
}

} // namespace roundlay
