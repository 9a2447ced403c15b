// Reads a cut sheet as a person at the bench would, and says what piece it describes.
#pragma once

#include "kernel/layout/layout.h"
#include "tests/sheets/support/paper_words.h"

#include <vector>

namespace roundlay::test {

/// The piece that the words of its sheets describe, as well as they say it: blank, seams, square cuts,
/// pockets, tails and bores of a log; its long faces may taper, and its ends and shoulders go at a slant. Where they do, no break of the
/// drawing may part the two sides of a cut. Throws std::runtime_error where the paper does
/// not say all.
Piece piece_on_paper(std::vector<PaperWord> words);

} // namespace roundlay::test
