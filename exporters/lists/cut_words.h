// What is cut from a blank, said in words.
#pragma once

#include "exporters/words/voice.h"
#include "kernel/layout/layout.h"

#include <string>
#include <vector>

namespace roundlay {

/// One entry for each slanting face, then for each end, each opening cut and the bores, from the datum end
/// on. Names of corners and openings are left out: equal pieces have equal words.
std::vector<std::string> cut_words(const Piece &piece, const Voice &voice);

/// Where an end is: `corner AB`, `jamb of front door`, `against the wall at corner AB`.
std::string place_of(const PieceEnd &end, const Voice &voice);

/// Of new wood in a mended log: `new end of a log`, `piece let into a log`.
std::string new_wood_words(const Piece &piece, const Voice &voice);

/// `sill log`, `half log`, `island`, ... ; `rounds` = of the shell.
std::string kind_of(const Layout &layout, const Piece &piece, const Voice &voice);

} // namespace roundlay
