#include "kernel/stock/order.h"

#include "kernel/layout/pieces/stock.h"
#include "kernel/layout/rounded.h"
#include "kernel/stock/lifted.h"
#include "kernel/stock/same_size.h"

#include <cmath>
#include <tuple>

namespace roundlay {

namespace {

/// Nobody orders by less than a rule is read to. Logs that taper or slant differ by a hair from one to the
/// other: what is one sort on paper is one row, and never less than any of them.
Blank ordered_stock(const Shell &shell, const Stock &stock) {
    const double step = order_step(shell.units).mm();
    Blank size = stock.size;
    size.width = rounded_up(shell, size.width);
    size.height = rounded_up(shell, size.height);
    size.length = std::ceil((size.length - same_size) / step) * step;
    return size;
}

} // namespace

Length order_step(UnitSystem units) {
    return units == UnitSystem::metric ? Length::mm(100) : Length::inches(6);
}

std::vector<OrderRow> sticks_to_order(const Shell &shell, const Layout &layout) {
    std::map<std::tuple<long long, long long, long long, long long, std::string, bool>, OrderRow> rows;
    for (const Piece &piece : layout.pieces) {
        if (is_old_wood(piece)) continue;
        const Blank stock = ordered_stock(shell, stock_of(piece));
        const double round = small_end(piece, stock);
        const Wood wood = weighed_wood(shell, piece);
        const std::string species = species_of(wood);
        OrderRow &row = rows[{-rank(stock.height), -rank(stock.width), -rank(stock.length), rank(round),
                              species, !wood.moisture}];
        row.species = species;
        row.width = stock.width;
        row.height = stock.height;
        row.length = stock.length;
        row.least_round = round;
        const Lifted l = lifted_of_length(shell, piece, stock);
        row.green = !wood.moisture;
        row.blank_low_kg = l.blank.low_kg;
        row.blank_high_kg = l.blank.high_kg;
        row.log_low_kg = l.log.low_kg;
        row.log_high_kg = l.log.high_kg;
        row.tags.push_back(piece.tag);
    }
    return values_of(std::move(rows));
}

} // namespace roundlay
