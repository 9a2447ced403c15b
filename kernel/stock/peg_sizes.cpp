#include "kernel/stock/peg_sizes.h"

#include "kernel/stock/same_size.h"

#include <algorithm>
#include <cmath>
#include <tuple>

namespace roundlay {

Length peg_step(UnitSystem units) {
    return units == UnitSystem::metric ? Length::mm(10) : Length::inches(0.5);
}

std::vector<PegRow> pegs_by_size(const Shell &shell, const Layout &layout) {
    const double step = peg_step(shell.units).mm();
    std::map<std::tuple<long long, long long>, PegRow> rows;
    for (const Peg &peg : layout.pegs) {
        const double length = std::ceil((peg.length - same_size) / step) * step;
        PegRow &row = rows[{-rank(peg.diameter), -rank(length)}];
        row.diameter = peg.diameter;
        row.length = length;
        row.shallowest = row.names.empty() ? peg.length : std::min(row.shallowest, peg.length);
        row.deepest = std::max(row.deepest, peg.length);
        row.names.push_back(peg.name);
    }
    return values_of(std::move(rows));
}

} // namespace roundlay
