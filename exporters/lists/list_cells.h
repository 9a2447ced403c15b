// Cells that several tables of a cut list have.
#pragma once

#include "exporters/lists/cut_list.h"
#include "exporters/lists/table.h"

#include <string>
#include <vector>

namespace roundlay {

inline constexpr double mm3_per_m3 = 1e9;
inline constexpr double mm3_per_ft3 = mm_per_foot * mm_per_foot * mm_per_foot;
inline constexpr double mm_per_m = 1000;
inline constexpr int mm_decimals = 3, volume_decimals = 4;
inline constexpr int summed_decimals = 6;  ///< of volumes in files, m3: sums of hundreds of rows agree
inline constexpr double thousandth = 1e-3; ///< mm, what mm_decimals print

/// Speaks of that shell in its own units.
Voice voice_of(const Shell &shell, const Layout &layout, Language language);

/// A length in the list's units.
std::string said(const CutList &list, double mm);

/// In steps that never make it less: what is less than the least is too small.
double up_to(double mm, double step);

/// A length rounded up to what is printed: what is less than the least is too small.
std::string said_up(const CutList &list, double mm);

/// Rounded down and up, in the unit that it comes in; empty where the list knows no weights.
Entry low_weight(const CutList &list, double in_unit);
Entry high_weight(const CutList &list, double in_unit);

/// What the columns of one weight are called in either unit; empty = not shown on a terminal.
struct WeightTitles {
    std::string low_kg, high_kg, low_lb, high_lb;
};

/// In kilograms, then in pounds: the units that the shell does not use stay off the terminal.
std::vector<Column> weight_columns(const CutList &list, const std::string &weight,
                                   const WeightTitles &titles);

void append(std::vector<Column> &columns, std::vector<Column> more);
void append(std::vector<Entry> &row, std::vector<Entry> more);

/// Shown where not all wood is of one species.
Column species_column(const CutList &list);

/// In kilograms, then in pounds. A round stick has no squared blank that could weigh anything.
void add_weights(const CutList &list, double low_kg, double high_kg, std::vector<Entry> &row);

} // namespace roundlay
