// Pieces read back from their paper and compared.
#pragma once

#include "exporters/sheets/cut_sheet/cut_sheet.h"
#include "tests/sheets/support/checks.h"

#include <string>

namespace roundlay::test {

/// Half of the last digit that is printed.
double precision(UnitSystem units);

/// Half a digit on every face, a whole one on seams, and half of one on the diameters of the bores.
double printed_precision(const Body &body, double half_digit);

/// What differs between the piece and what its sheets say; empty where nothing does.
std::string read_back(const LaidShell &shell, const Model &model, const sheets::CutSheetOptions &options,
                      std::size_t &sheets);

} // namespace roundlay::test
