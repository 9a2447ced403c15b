#include "kernel/compare/compare.h"

#include "kernel/compare/nearly_alike.h"
#include "kernel/layout/pieces/piece_shape.h"
#include "kernel/layout/pieces/stock.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace roundlay {

namespace {

constexpr double hair = 1e-3; // mm, under what is printed
constexpr double saw = 1;     // mm: a log is sawn to length no nearer than that

/// Where a piece lies in its wall; of a timber in its floor.
struct Stretch {
    Vec3 from; ///< its datum end in the frame of the wall
    double length = 0;
};

const Frame &frame_of(const Layout &layout, const Piece &piece) {
    return part_frame(layout, part_of(layout, piece));
}

Stretch stretch_of(const Layout &layout, const Piece &piece) {
    return {frame_of(layout, piece).to_local(piece.frame.origin), piece.blank.length};
}

bool overlap(const Stretch &a, const Stretch &b) {
    return std::min(a.from.x + a.length, b.from.x + b.length) - std::max(a.from.x, b.from.x) > hair;
}

class Comparing {
  public:
    Comparing(const Layout &before, const Layout &after) : before_(before), after_(after) {
        for (const Index<Piece> i : before.pieces.indices())
            by_tag_.emplace(before.pieces[i].tag, i);
    }

    std::vector<ComparedPiece> all() {
        match_tags();
        match_moved();
        for (ComparedPiece &piece : pieces_)
            look_where(piece);
        for (const auto &[tag, i] : by_tag_)
            gone_.push_back(i);
        std::ranges::sort(gone_, {}, [](Index<Piece> i) { return i.number(); });
        for (const Index<Piece> i : gone_) {
            ComparedPiece gone{.what = PieceChange::gone, .before = i};
            look_where(gone);
            pieces_.push_back(std::move(gone));
        }
        return std::move(pieces_);
    }

  private:
    const Piece &was(Index<Piece> i) const { return before_.pieces[i]; }
    const Piece &is(Index<Piece> i) const { return after_.pieces[i]; }

    void match_tags() {
        for (const Index<Piece> i : after_.pieces.indices()) {
            ComparedPiece piece{.what = PieceChange::added, .after = i};
            if (const auto same = by_tag_.find(is(i).tag); same != by_tag_.end()) {
                piece.before = same->second;
                by_tag_.erase(same);
                tell(piece);
            }
            pieces_.push_back(std::move(piece));
        }
    }

    /// What has found no partner by its place, and is of the same wood as one that has none either.
    void match_moved() {
        for (ComparedPiece &piece : pieces_) {
            if (piece.what != PieceChange::added) continue;
            const PieceShape wood = shape_of_wood(is(*piece.after));
            const auto same = std::ranges::find_if(by_tag_, [&](const auto &left) {
                return nearly_alike(shape_of_wood(was(left.second)), wood);
            });
            if (same == by_tag_.end()) continue;
            piece.before = same->second;
            piece.what = PieceChange::moved;
            by_tag_.erase(same);
            place(piece);
        }
    }

    void place(ComparedPiece &piece) const {
        const Piece &a = was(*piece.before), &b = is(*piece.after);
        if (part_letter(before_, part_of(before_, a)) != part_letter(after_, part_of(after_, b))) return;
        const Vec3 moved = stretch_of(after_, b).from - stretch_of(before_, a).from;
        piece.along = moved.x, piece.up = moved.z;
    }

    void tell(ComparedPiece &piece) const {
        const Piece &a = was(*piece.before), &b = is(*piece.after);
        place(piece);
        const Blank old = stock_of(a).size, now = stock_of(b).size;
        piece.longer = std::abs(now.length - old.length) >= saw ? now.length - old.length : 0;
        piece.new_wood = is_old_wood(a) && !is_old_wood(b);
        piece.section = std::abs(now.height - old.height) > hair || std::abs(now.width - old.width) > hair;
        if (nearly_alike(shape_of_wood(a), shape_of_wood(b)))
            piece.what =
                std::abs(piece.along) > hair || std::abs(piece.up) > hair ? PieceChange::moved
                : a.finish != b.finish || a.fabric != b.fabric || a.mark != b.mark || a.note != b.note
                    ? PieceChange::retold
                    : PieceChange::unchanged;
        else
            piece.what = piece.longer > 0   ? PieceChange::longer
                         : piece.longer < 0 ? PieceChange::shorter
                                            : PieceChange::recut;
    }

    void look_where(ComparedPiece &piece) const {
        if (piece.what != PieceChange::added && piece.what != PieceChange::gone) return;
        const bool added = piece.what == PieceChange::added;
        const Layout &own = added ? after_ : before_, &other = added ? before_ : after_;
        const Piece &p = own.pieces[added ? *piece.after : *piece.before];
        if (p.timber) return;
        const Stretch here = stretch_of(own, p);
        for (const Index<Piece> i : other.pieces.indices()) {
            const Piece &o = other.pieces[i];
            if (!o.timber && o.round == p.round && other.walls[o.wall].name == own.walls[p.wall].name &&
                overlap(stretch_of(other, o), here))
                piece.where.push_back(i);
        }
    }

    const Layout &before_, &after_;
    std::map<std::string, Index<Piece>> by_tag_; ///< of the first layout, without a partner yet
    std::vector<ComparedPiece> pieces_;
    std::vector<Index<Piece>> gone_;
};

} // namespace

std::vector<ComparedPiece> compared(const Layout &before, const Layout &after) {
    return Comparing(before, after).all();
}

} // namespace roundlay
