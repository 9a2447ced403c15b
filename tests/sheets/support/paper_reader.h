// Reads a cut sheet as a person at the bench would, and says what piece it describes.
#pragma once

#include "kernel/layout/layout.h"
#include "tests/sheets/support/paper_words.h"

#include <vector>

namespace roundlay::test {

/// The piece that the words of its sheets describe, as well as they say it: blank, tapers, wane, slanting
/// ends, seams, saddles and grooves, square cuts, tails, pockets and bores, each in the order of the sheet.
/// Throws std::runtime_error where the paper does not say all.
Piece piece_on_paper(const std::vector<PaperWord> &words);

} // namespace roundlay::test
