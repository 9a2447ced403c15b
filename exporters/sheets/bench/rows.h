// What is to be done to one piece, row by row, with its tails told by letter: what pieces that are alike
// share.
#pragma once

#include "exporters/sheets/cut_sheet/features.h"
#include "exporters/sheets/drawing/words.h"
#include "exporters/sheets/pattern/joints.h"

#include <string>
#include <vector>

namespace roundlay::sheets {

struct BenchRow {
    std::string mark;  ///< number of the cut or a letter, as on its cut sheet
    std::string words; ///< with its numbers as they are printed
};

/// One bore, as it is printed.
struct BenchBore {
    std::string at;     ///< from the datum end
    std::string depth;  ///< "115 deep"; empty where it goes through
    std::string across; ///< "in the middle", "84 from the outside"
};

/// Bores of one kind in one piece.
struct BenchBores {
    std::string kind; ///< "peg 32 through from top"
    std::vector<BenchBore> bores;
};

struct BenchPiece {
    std::vector<BenchRow> rows;    ///< blank, lines, then the cuts in cutting order
    std::vector<BenchBores> bores; ///< of each kind
    std::string openings;          ///< what is cut in it for
    std::string holds;             ///< "K1 L-J04, K2 L-J05": what comes into each of its pockets
    bool is_cut = false;           ///< something is, beside bores
};

/// `names` of its joints. Every cut of the piece is in the rows, in a joint that they name, or among the
/// bores.
BenchPiece bench_piece(const Features &features, const JointNames &names, const Words &words);

} // namespace roundlay::sheets
