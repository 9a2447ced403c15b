// Which pieces of a shell a person wants files of, where that is not all of them.
#pragma once

#include "kernel/compare/cuts_to_make.h"

#include <string>
#include <string_view>
#include <vector>

namespace roundlay {

enum class PieceSort {
    new_wood, ///< does not come out of the house that was found
    mended,   ///< a log that is mended, and the new wood in it
    to_cut    ///< something is to be cut in it, or nobody can say what it has already: new wood too
};

/// As stated; a piece is wanted where any of it holds. Nothing stated is every piece.
struct PieceChoice {
    std::vector<PieceSort> sorts;
    /// Tags ("C-07-2"), how tags begin ("C", "C-07": a wall or floor, a round, a log with its new wood), or
    /// what is written on a log ("C 7.2").
    std::vector<std::string> names;

    bool is_all() const { return sorts.empty() && names.empty(); }
    bool operator==(const PieceChoice &) const = default;
};

/// "new", "mended" and "cut" are sorts, all else is a name.
PieceChoice piece_choice(const std::vector<std::string> &words);

/// What a sort is called where it is chosen: "new", "mended", "cut".
std::string_view word_of(PieceSort sort);

struct ChosenPieces {
    std::vector<Index<Piece>> pieces; ///< in the order of Layout::pieces
    std::vector<Index<Model>> models; ///< that they are of, in the order of Layout::models
    std::vector<std::string> unknown; ///< names that no piece has, as stated
};

/// `found`: the house as it was found, which tells what old logs have already; of a new house `now` itself.
ChosenPieces chosen_pieces(const PieceChoice &choice, const Layout &found, const Layout &now);

} // namespace roundlay
