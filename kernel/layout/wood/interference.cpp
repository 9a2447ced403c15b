#include "kernel/layout/wood/interference.h"

#include "kernel/geometry/tolerance.h"
#include "kernel/layout/wood/placed.h"

#include <algorithm>
#include <limits>
#include <string>
#include <unordered_map>

namespace roundlay {

using PlacedPtr = std::shared_ptr<const PlacedPiece>;

/// By the bytes of which wood lies where.
struct KnownMeetings::Memory {
    std::unordered_map<std::string, PlacedPtr> placed;
    std::unordered_map<std::string, double> shared, over;
    std::unordered_map<std::string, std::pair<bool, bool>> lying; ///< over it, and on it
};

KnownMeetings::KnownMeetings() : memory_(std::make_unique<Memory>()) {}
KnownMeetings::~KnownMeetings() = default;

namespace {

/// What was remembered under a key, else worked out; kept for the next time where it is asked for this time.
template <typename Value> class Recalled {
  public:
    using Values = std::unordered_map<std::string, Value>;
    explicit Recalled(Values *memory) : memory_(memory) {}
    ~Recalled() {
        if (memory_) memory_->swap(now_);
    }
    Recalled(const Recalled &) = delete;
    Recalled &operator=(const Recalled &) = delete;

    template <typename Work> Value operator()(const std::string &key, Work work) {
        if (!memory_) return work();
        if (const auto found = now_.find(key); found != now_.end()) return found->second;
        const auto before = memory_->find(key);
        return now_.emplace(key, before == memory_->end() ? work() : before->second).first->second;
    }

  private:
    Values *memory_;
    Values now_;
};

/// The pieces of a layout in their places.
struct Standing {
    Indexed<PlacedPtr, Piece> all;
    Indexed<std::string, Piece> keys; ///< which wood lies where; empty where nothing is remembered

    const PlacedPiece &at(Index<Piece> i) const { return *all[i]; }
    std::string pair(Index<Piece> a, Index<Piece> b) const { return keys[a] + keys[b]; }
};

std::string place_key(std::uint64_t wood, const Frame &frame) {
    static_assert(sizeof(Frame) == 12 * sizeof(double));
    std::string key(reinterpret_cast<const char *>(&wood), sizeof wood);
    return key.append(reinterpret_cast<const char *>(&frame), sizeof frame);
}

Standing standing(const Layout &layout, const Bodies &bodies, KnownMeetings *known) {
    Standing s;
    Recalled<PlacedPtr> recalled(known ? &known->memory().placed : nullptr);
    for (const Piece &piece : layout.pieces) {
        s.keys.push_back(known ? place_key(known->wood.at(piece.model), piece.frame) : std::string());
        s.all.push_back(recalled(s.keys.back(), [&] {
            return std::make_shared<PlacedPiece>(placed(bodies[piece.model], piece.frame));
        }));
    }
    return s;
}

double shared(const PlacedPiece &a, const PlacedPiece &b) {
    double sum = 0;
    for (std::size_t i = 0; i < a.cells.size(); ++i)
        for (std::size_t j = 0; j < b.cells.size(); ++j)
            if (boxes_meet(a.boxes[i], b.boxes[j])) sum += common_volume(a.cells[i], b.cells[j]);
    return sum;
}

/// Pairs whose boxes meet, swept along x.
template <typename Visit> void each_near_pair(const Standing &pieces, Visit visit) {
    std::vector<Index<Piece>> order;
    for (const auto i : pieces.all.indices())
        order.push_back(i);
    const auto box = [&](Index<Piece> i) -> const Box3 & { return pieces.at(i).box; };
    std::sort(order.begin(), order.end(),
              [&](Index<Piece> i, Index<Piece> j) { return box(i).low.x < box(j).low.x; });
    for (std::size_t i = 0; i < order.size(); ++i)
        for (std::size_t j = i + 1; j < order.size() && box(order[j]).low.x < box(order[i]).high.x; ++j)
            if (boxes_meet(box(order[i]), box(order[j])))
                visit(std::min(order[i], order[j]), std::max(order[i], order[j]));
}

/// Wood that is taken away piece by piece, with the boxes of its cells.
struct Wood {
    std::vector<Cell> cells;
    std::vector<Box3> boxes;

    void take_out(const std::vector<Plane> &region) {
        cells = without(std::move(cells), region);
        boxes.clear();
        for (const Cell &cell : cells)
            boxes.push_back(bounds(cell));
    }
};

/// The wood straight over a cell, as planes.
std::vector<Plane> space_over(const Cell &cell) {
    std::vector<Plane> above = upright_hull(cell);
    for (const CellFace &face : cell.faces)
        if (face.plane.normal.z < -tolerance::weld) above.push_back(face.plane);
    return above;
}

/// Cuts the wood straight over a cell, within its column, out of `wood` and says how much that was.
double taken_over(const Cell &cell, const Box3 &column, Wood &wood) {
    std::vector<Plane> above;
    double sum = 0;
    for (std::size_t i = 0; i < wood.cells.size(); ++i) {
        if (!boxes_meet(wood.boxes[i], column)) continue;
        if (above.empty()) above = space_over(cell);
        const Cell &piece = wood.cells[i];
        if (std::any_of(above.begin(), above.end(),
                        [&](const Plane &plane) { return lies_beyond(piece, plane); }))
            continue;
        Cell common = piece;
        for (const Plane &plane : above)
            common = clipped(common, plane);
        sum += volume(common);
    }
    if (sum > 0) wood.take_out(above);
    return sum;
}

/// The same without taking anything away: enough to tell whether there is any.
bool any_over(const Cell &cell, const Box3 &column, const PlacedPiece &upper) {
    std::vector<Plane> above;
    for (std::size_t i = 0; i < upper.cells.size(); ++i) {
        if (!boxes_meet(upper.boxes[i], column)) continue;
        if (above.empty()) above = space_over(cell);
        Cell common = upper.cells[i];
        for (const Plane &plane : above)
            common = clipped(common, plane);
        if (volume(common) >= tolerance::overlap) return true;
    }
    return false;
}

/// Wood of `earlier` that lies straight over `later`'s cells, each of it once though it lie over several.
double over(const PlacedPiece &earlier, const PlacedPiece &later) {
    double sum = 0;
    Wood wood;
    for (std::size_t j = 0; j < later.cells.size(); ++j) {
        Box3 column = later.boxes[j];
        column.high.z = std::numeric_limits<double>::max();
        const bool any = std::any_of(earlier.boxes.begin(), earlier.boxes.end(),
                                     [&](const Box3 &b) { return boxes_meet(b, column); });
        if (!any) continue;
        if (wood.cells.empty()) wood = {earlier.cells, earlier.boxes};
        sum += taken_over(later.cells[j], column, wood);
        if (wood.cells.empty()) break;
    }
    return sum;
}

/// The quick way first; slivers that only come to something together are summed up.
bool lies_over(const PlacedPiece &upper, const PlacedPiece &lower) {
    for (std::size_t j = 0; j < lower.cells.size(); ++j) {
        Box3 column = lower.boxes[j];
        column.high.z = std::numeric_limits<double>::max();
        if (boxes_meet(upper.box, column) && any_over(lower.cells[j], column, upper)) return true;
    }
    return over(upper, lower) >= tolerance::overlap;
}

/// That wood a millimetre lower.
PlacedPiece lowered(const Body &body, Frame frame) {
    constexpr double touching = 1;
    frame.origin.z -= touching;
    return placed(body, frame);
}

} // namespace

Bodies bodies_of(const Layout &layout) {
    Bodies bodies;
    bodies.reserve(layout.models.size());
    for (const Model &model : layout.models)
        bodies.push_back(body_of(layout.pieces[model.pieces.front()]));
    return bodies;
}

std::vector<Overlap> overlaps(const Layout &layout, const Bodies &bodies, KnownMeetings *known) {
    const Standing pieces = standing(layout, bodies, known);
    Recalled<double> recalled(known ? &known->memory().shared : nullptr);
    std::vector<Overlap> found;
    each_near_pair(pieces, [&](Index<Piece> a, Index<Piece> b) {
        const double v = recalled(pieces.pair(a, b), [&] { return shared(pieces.at(a), pieces.at(b)); });
        if (v >= tolerance::overlap) found.push_back({a, b, v});
    });
    std::sort(found.begin(), found.end(),
              [](const Overlap &p, const Overlap &q) { return std::pair(p.a, p.b) < std::pair(q.a, q.b); });
    return found;
}

std::vector<Blocked> blocked_on_the_way_down(const Layout &layout, const Bodies &bodies,
                                             KnownMeetings *known) {
    const Standing pieces = standing(layout, bodies, known);
    Recalled<double> recalled(known ? &known->memory().over : nullptr);
    std::vector<Blocked> found;
    const auto raise = [&](Index<Piece> i) { return layout.pieces[i].raise; };
    for (const auto i : layout.pieces.indices())
        for (const auto j : layout.pieces.indices()) {
            if (raise(i) >= raise(j)) continue;                                     // i is raised before j
            if (log_with(layout.pieces, i) == log_with(layout.pieces, j)) continue; // they rise as one
            Box3 column = pieces.at(j).box;
            column.high.z = std::numeric_limits<double>::max();
            if (!boxes_meet(pieces.at(i).box, column)) continue;
            const double v = recalled(pieces.pair(i, j), [&] { return over(pieces.at(i), pieces.at(j)); });
            if (v >= tolerance::overlap) found.push_back({j, i, v});
        }
    return found;
}

std::vector<LiesOver> lying_over(const Layout &layout, const Bodies &bodies, KnownMeetings *known) {
    const Standing pieces = standing(layout, bodies, known);
    Recalled<std::pair<bool, bool>> recalled(known ? &known->memory().lying : nullptr);
    std::vector<LiesOver> found;
    for (const auto lower : layout.pieces.indices()) {
        Box3 column = pieces.at(lower).box;
        column.high.z = std::numeric_limits<double>::max();
        for (const auto upper : layout.pieces.indices()) {
            if (log_with(layout.pieces, upper) == log_with(layout.pieces, lower)) continue;
            if (!boxes_meet(pieces.at(upper).box, column)) continue;
            const auto [lies, touches] = recalled(pieces.pair(upper, lower), [&] {
                if (!lies_over(pieces.at(upper), pieces.at(lower))) return std::pair(false, false);
                const Piece &piece = layout.pieces[upper];
                const PlacedPiece sunk = lowered(bodies[piece.model], piece.frame);
                return std::pair(true, shared(sunk, pieces.at(lower)) >= tolerance::overlap);
            });
            if (lies) found.push_back({upper, lower, touches});
        }
    }
    return found;
}

} // namespace roundlay
