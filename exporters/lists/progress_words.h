// What is done and what is left, in words for lists.
#pragma once

#include "exporters/lists/cut_list.h"
#include "exporters/lists/table.h"
#include "kernel/progress/ticked.h"

namespace roundlay {

/// "yes", or who did it and when; empty where it is not ticked.
std::string tick_words(const std::optional<Tick> &tick, const Voice &voice);

/// "now", "waits", ...; `deed`: Deed::up or Deed::down.
std::string may_words(May may, Deed deed, const Voice &voice);

/// Columns `turn`, `waits_for`, `shut_in_by` and `pegs_first`, and the cells of a piece.
std::vector<Column> turn_columns(const CutList &list, Deed deed);
std::vector<Entry> turn_cells(const CutList &list, const Layout &layout, const Site &site, Deed deed,
                              Index<Piece> piece);

/// What the order of the work does not say.
std::string order_caution(const Voice &voice);

/// Which logs are recorded as missing and left out of taking down; empty where none is.
std::string gone_words(const Voice &voice, const Layout &layout, const Ticked &ticked, Deed deed);

/// How many are up or down, what is left and weighs, the heaviest lift of it, what may come now, and what is
/// missing: sentences.
std::vector<std::string> progress_words(const Voice &voice, const Shell &shell, const Layout &layout,
                                        const Bodies &bodies, const Site &site, Deed deed);

} // namespace roundlay
