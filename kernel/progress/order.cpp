#include "kernel/progress/order.h"

#include "kernel/layout/piece_places.h"
#include "kernel/layout/wood/placed.h"

#include <algorithm>
#include <limits>

namespace roundlay {

namespace {

using Pieces = std::vector<Index<Piece>>;

/// The square round a peg, and all that is over its upper end. A square: nothing that is told to be free is
/// not.
std::vector<Plane> space_over(const Peg &peg) {
    const double r = peg.diameter / 2;
    return {{{1, 0, 0}, peg.top.x + r},
            {{-1, 0, 0}, r - peg.top.x},
            {{0, 1, 0}, peg.top.y + r},
            {{0, -1, 0}, r - peg.top.y},
            {{0, 0, -1}, -peg.top.z}};
}

Box3 box_over(const Peg &peg) {
    const double r = peg.diameter / 2;
    return {{peg.top.x - r, peg.top.y - r, peg.top.z},
            {peg.top.x + r, peg.top.y + r, std::numeric_limits<double>::max()}};
}

bool covers(const PlacedPiece &wood, const Peg &peg) {
    const Box3 box = box_over(peg);
    if (!boxes_meet(wood.box, box)) return false;
    for (std::size_t i = 0; i < wood.cells.size(); ++i) {
        if (!boxes_meet(wood.boxes[i], box)) continue;
        Cell common = wood.cells[i];
        for (const Plane &plane : space_over(peg))
            common = clipped(common, plane);
        if (!common.empty()) return true;
    }
    return false;
}

class Ordering {
  public:
    Ordering(const Layout &layout, const Bodies &bodies) : layout_(layout), bodies_(bodies) {
        order_ = RaisingOrder(layout.pieces.size());
    }

    RaisingOrder order(const std::vector<LiesOver> &pairs) {
        for (const LiesOver &pair : pairs)
            note(lead(pair.upper), lead(pair.lower), pair.touches);
        for (Neighbours &each : order_)
            tidy(each);
        note_pegs();
        for (const Index<Piece> piece : layout_.pieces.indices())
            if (layout_.pieces[piece].mends) order_[piece] = order_[lead(piece)];
        return std::move(order_);
    }

  private:
    Index<Piece> lead(Index<Piece> piece) const { return log_with(layout_.pieces, piece); }

    void note(Index<Piece> upper, Index<Piece> lower, bool touches) {
        Neighbours &of = order_[upper];
        (touches ? of.rests_on : of.lies_over).push_back(lower);
        order_[lower].lies_under.push_back(upper);
    }

    static void sort(Pieces &pieces) {
        std::ranges::sort(pieces);
        pieces.erase(std::unique(pieces.begin(), pieces.end()), pieces.end());
    }

    /// Of several pieces of a log one may rest where another only lies over.
    static void tidy(Neighbours &of) {
        sort(of.rests_on), sort(of.lies_over), sort(of.lies_under);
        std::erase_if(of.lies_over,
                      [&](Index<Piece> each) { return std::ranges::binary_search(of.rests_on, each); });
    }

    void note_pegs() {
        for (const Peg &peg : layout_.pegs) {
            const Index<Piece> pegged = lead(peg.upper);
            for (const Index<Piece> over : order_[pegged].lies_under)
                if (covered_by(over, peg)) order_[over].covers.push_back(pegged);
        }
        for (Neighbours &each : order_)
            sort(each.covers);
    }

    /// By the log or by new wood in it.
    bool covered_by(Index<Piece> log, const Peg &peg) const {
        const auto lies = [&](Index<Piece> i) {
            const Piece &piece = layout_.pieces[i];
            return covers(placed(bodies_[piece.model], piece.frame), peg);
        };
        return lies(log) || std::ranges::any_of(new_wood_in(layout_.pieces, log), lies);
    }

    const Layout &layout_;
    const Bodies &bodies_;
    RaisingOrder order_;
};

} // namespace

RaisingOrder raising_order(const Layout &layout, const Bodies &bodies, KnownMeetings *known) {
    return Ordering(layout, bodies).order(lying_over(layout, bodies, known));
}

} // namespace roundlay
