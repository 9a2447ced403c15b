#include "kernel/stock/taking_down.h"

#include "kernel/layout/wood/rise.h"

#include <algorithm>
#include <map>

namespace roundlay {

namespace {

/// No tail holds either of its ends.
bool stands_between_openings(const Piece &piece) {
    return !piece.timber && piece.datum.kind == EndKind::jamb && piece.far.kind == EndKind::jamb;
}

class TakingDown {
  public:
    explicit TakingDown(const Layout &layout) : layout_(layout) {
        for (const Index<Piece> piece : layout.pieces.indices())
            by_tag_[layout.pieces[piece].tag] = piece;
    }

    DownStep step(const UpStep &raised, double rise) const;

  private:
    std::vector<Index<Piece>> left_loose(const Piece &lifted) const;

    const Layout &layout_;
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

DownStep TakingDown::step(const UpStep &raised, double rise) const {
    return {raised.piece, raised.pegs, rise, left_loose(layout_.pieces[raised.piece])};
}

} // namespace

std::vector<UpStep> raising(const Layout &layout) {
    Indexed<UpStep, Piece> steps;
    for (const Index<Piece> piece : layout.pieces.indices())
        steps.push_back({piece, {}});
    for (const Index<Peg> peg : layout.pegs.indices())
        steps[layout.pegs[peg].upper].pegs.push_back(peg);
    std::vector<UpStep> order(steps.begin(), steps.end());
    std::ranges::stable_sort(order, {}, [&](const UpStep &step) { return layout.pieces[step.piece].raise; });
    return order;
}

std::vector<DownStep> taking_down(const Layout &layout, const Bodies &bodies) {
    const Indexed<double, Piece> rises = rises_to_clear(layout, bodies);
    const TakingDown down(layout);
    const std::vector<UpStep> up = raising(layout);
    std::vector<DownStep> steps;
    for (auto raised = up.rbegin(); raised != up.rend(); ++raised)
        steps.push_back(down.step(*raised, rises[raised->piece]));
    return steps;
}

} // namespace roundlay
