// What of a house is done already, piece by piece: taken down, cut, looked over, raised, pegged.
//
// Pieces are named by their tags, so that edits of the shell change nothing here. A tag that names no piece
// any more stays as it was written.
#pragma once

#include <string>
#include <vector>

namespace roundlay {

/// What can be ticked off of a piece, in the order in which it comes.
enum class Deed {
    down,    ///< taken down
    cut,     ///< all of its joints
    checked, ///< held against its sheet
    up,      ///< raised, and in its place
    pegged   ///< all pegs driven that go through it into what lies under it
};

inline constexpr Deed all_deeds[] = {Deed::down, Deed::cut, Deed::checked, Deed::up, Deed::pegged};
inline constexpr std::size_t deeds = std::size(all_deeds);

/// The same deed, done to any number of pieces.
struct Done {
    Deed what = Deed::up;
    std::vector<std::string> pieces; ///< their tags
    std::string state;               ///< of the house that they are pieces of; empty: whichever is seen
    std::string by, on;              ///< who, and when in any words
    std::string note;
    bool operator==(const Done &) const = default;
};

/// What one entry names at most.
inline constexpr std::size_t pieces_of_one_entry = 100;

/// Adds a deed: to the last entry where that says the same of others and has room, else as a new one. Pieces
/// that are ticked already, for the same state or for whichever is seen, are left out; they are given back.
std::vector<std::string> tick(std::vector<Done> &all, const Done &done);

/// The reverse: takes these pieces out of what was ticked for that state, or for whichever is seen. Entries
/// that are left without pieces go. Given back are those that were not ticked.
std::vector<std::string> take_back(std::vector<Done> &all, const Done &done);

} // namespace roundlay
