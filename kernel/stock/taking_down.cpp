#include "kernel/stock/taking_down.h"

#include "kernel/layout/wood/rise.h"

#include <algorithm>
#include <functional>
#include <map>

namespace roundlay {

namespace {

std::vector<Index<Piece>> last_raised_first(const Layout &layout) {
    std::vector<Index<Piece>> order;
    for (const Index<Piece> piece : layout.pieces.indices())
        order.push_back(piece);
    std::ranges::sort(order, std::greater<>(), [&](Index<Piece> i) { return layout.pieces[i].raise; });
    return order;
}

/// No tail holds either of its ends.
bool stands_between_openings(const Piece &piece) {
    return !piece.timber && piece.datum.kind == EndKind::jamb && piece.far.kind == EndKind::jamb;
}

class TakingDown {
  public:
    TakingDown(const Layout &layout, const Indexed<PieceStock, Piece> &stock)
        : layout_(layout), stock_(stock) {
        for (const Index<Piece> piece : layout.pieces.indices())
            by_tag_[layout.pieces[piece].tag] = piece;
    }

    DownStep step(Index<Piece> piece, double rise);

  private:
    std::vector<Index<Piece>> left_loose(const Piece &lifted) const;

    const Layout &layout_;
    const Indexed<PieceStock, Piece> &stock_;
    std::map<std::string, Index<Piece>> by_tag_;
};

std::vector<Index<Piece>> TakingDown::left_loose(const Piece &lifted) const {
    std::vector<Index<Piece>> loose;
    for (const std::string &tag : lifted.below) {
        const auto found = by_tag_.find(tag);
        if (found == by_tag_.end() || !stands_between_openings(layout_.pieces[found->second])) continue;
        const auto &above = layout_.pieces[found->second].above;
        const bool bare = std::ranges::all_of(above, [&](const std::string &other) {
            const auto over = by_tag_.find(other);
            return over == by_tag_.end() || layout_.pieces[over->second].raise >= lifted.raise;
        });
        if (bare) loose.push_back(found->second);
    }
    return loose;
}

DownStep TakingDown::step(Index<Piece> piece, double rise) {
    const Piece &lifted = layout_.pieces[piece];
    DownStep step{piece, {}, rise, left_loose(lifted), 0, 0};
    for (const Index<Peg> peg : layout_.pegs.indices())
        if (layout_.pegs[peg].upper == piece) step.pegs.push_back(peg);
    bool known = true;
    for (const Index<Piece> other : layout_.pieces.indices()) {
        if (layout_.pieces[other].raise >= lifted.raise) continue;
        const WeightEstimate &weight = stock_[other].lifted.piece;
        known = known && weight.known;
        step.standing_low_kg += weight.low_kg;
        step.standing_high_kg += weight.high_kg;
    }
    if (!known) step.standing_low_kg = step.standing_high_kg = 0;
    return step;
}

} // namespace

std::vector<DownStep> taking_down(const Layout &layout, const Indexed<PieceStock, Piece> &stock,
                                  const Bodies &bodies) {
    const Indexed<double, Piece> rises = rises_to_clear(layout, bodies);
    TakingDown down(layout, stock);
    std::vector<DownStep> steps;
    for (const Index<Piece> piece : last_raised_first(layout))
        steps.push_back(down.step(piece, rises[piece]));
    return steps;
}

} // namespace roundlay
