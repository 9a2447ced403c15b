// Reads the tables of a bench set as a person at the bench would, and says what pieces they describe.
#pragma once

#include "exporters/sheets/drawing/table.h"
#include "kernel/layout/layout.h"

#include <string>

namespace roundlay::test {

/// The tables of one family and of all joints.
struct BenchTables {
    sheets::Table work, pieces, joints;
};

/// The piece of that row: its rows of work with its own numbers for their letters, tails and notches by their
/// name. Seams come first, by place and side. Throws std::runtime_error where the tables do not say all.
Piece piece_on_bench(const BenchTables &tables, std::size_t row);

/// The same piece with its seams in that order.
Piece with_seams_first(Piece piece);

} // namespace roundlay::test
