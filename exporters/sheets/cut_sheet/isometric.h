// The picture of the finished piece.
#pragma once

#include "exporters/sheets/cut_sheet/features.h"
#include "exporters/sheets/cut_sheet/hidden_lines.h"
#include "exporters/sheets/drawing/block.h"
#include "exporters/sheets/set/scales.h"
#include "kernel/layout/wood/body.h"

#include <optional>

namespace roundlay::sheets {

/// What is seen of the whole log, at any scale: worked out when it is first drawn without breaks.
using SeenWhole = std::optional<std::vector<Stretch>>;

/// Isometric, without its hidden lines, shortened by `most_breaks` breaks at most until it is no wider than
/// `width`. Nothing where that cannot be done at this scale, or can be done with fewer breaks.
std::optional<Block> isometric(const Features &features, const Body &body, const Scale &scale,
                               const Words &words, double width, std::size_t most_breaks, SeenWhole &whole);

} // namespace roundlay::sheets
