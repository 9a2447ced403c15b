// What stands for a decision, a kind of wood or a change on drawings: a hatch, a letter, and their words.
#pragma once

#include "exporters/report/hatch.h"
#include "exporters/sheets/drawing/block.h"
#include "exporters/sheets/drawing/words.h"
#include "kernel/compare/compare.h"
#include "kernel/record/found_log.h"

#include <optional>
#include <string>
#include <vector>

namespace roundlay::sheets {

struct MarkOf {
    Hatch hatch = Hatch::none;
    std::string letter, meaning;
};

/// Nothing: nobody has decided.
MarkOf mark_of(std::optional<Decision> decision, const Words &words);
/// Of a log that the plan has and nobody recorded: nobody could decide about it.
MarkOf mark_of_unrecorded(const Words &words);
MarkOf mark_of(Soundness wood, const Words &words);
MarkOf mark_of(PieceChange change, const Words &words);
MarkOf mark_of_peg(PegState state, const Words &words);

std::vector<MarkOf> decision_marks(const Words &words);
std::vector<MarkOf> wood_marks(const Words &words);
std::vector<MarkOf> change_marks(const Words &words);

/// Boxes with hatch and letter, each with its meaning, in rows no wider than that.
Block key_of(const std::vector<MarkOf> &marks, double width);

/// A peg by what became of it: found a disc, missing a ring, broken a cross, sawn a ring with a bar.
std::vector<Item> peg_symbol(PegState state, Vec2 at);
/// Where something was cut later: two strokes that meet at the place.
std::vector<Item> later_cut_symbol(Vec2 at);

/// The symbols with their meanings.
Block key_of_symbols(const Words &words, double width);

} // namespace roundlay::sheets
