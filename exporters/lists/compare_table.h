// Two states of a house side by side, piece by piece.
#pragma once

#include "exporters/lists/table.h"
#include "exporters/words/voice.h"
#include "kernel/compare/compare.h"

#include <map>

namespace roundlay {

/// One row for each piece that differs. Cuts that only one of the two has are told in words.
Table compare_table(const std::vector<ComparedPiece> &pieces, const Layout &before, const Layout &after,
                    const Voice &voice);

std::map<PieceChange, int> change_counts(const std::vector<ComparedPiece> &pieces);

/// `new`, `re-cut`, `retold`: for files. Each kind has one.
const char *key_of(PieceChange what);

/// "38 unchanged, 3 new, 1 gone."
std::string change_words(const std::vector<ComparedPiece> &pieces, const Voice &voice);

} // namespace roundlay
