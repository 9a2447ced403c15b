// Pieces that are alike but for their numbers: a family, which one drawing and one table tell.
#pragma once

#include "exporters/sheets/bench/lettered.h"
#include "exporters/sheets/bench/rows.h"
#include "exporters/sheets/set/draft.h"

#include <map>
#include <string>
#include <vector>

namespace roundlay::sheets {

struct Family {
    std::string name; ///< "F1"
    std::vector<Index<Piece>> pieces;
    std::vector<BenchRow> rows; ///< with letters where the numbers differ
    Letters letters;            ///< columns by piece, in the order of `pieces`
    bool is_cut = false;        ///< else its pieces are blanks with bores
    /// Of bores that any piece has: their kind, and by piece their places, empty where it has none.
    std::vector<std::pair<std::string, std::vector<std::string>>> bores;
    std::vector<std::string> openings; ///< by piece
    std::vector<std::string> holds;    ///< likewise: what comes into its pockets
    /// Of the piece that is drawn: the letters of its printed numbers, where one stands for it.
    std::size_t drawn = 0;
    std::map<std::string, std::string> renamed;
};

struct Families {
    std::vector<Family> all; ///< in the order of their first pieces
    std::vector<Joint> joints;
};

/// Whether the piece has to have a cut sheet of its own: of old logs that says what is in them already, of
/// new wood how it is fitted.
bool stands_by_itself(const Piece &piece);

/// All other pieces of the draft's shell, each in one family, and the joints that they have.
Families families_of(const Draft &draft, const Words &words, const OnlyPieces &only = {});

} // namespace roundlay::sheets
