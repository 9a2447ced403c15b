#include "exporters/machining/setups.h"

#include "exporters/machining/access.h"
#include "exporters/machining/raw_stock.h"

#include <algorithm>
#include <bit>
#include <cmath>

namespace roundlay::machining {

namespace {

/// In the order in which they are worked: from the top first, so that the log then lies on it.
constexpr LogFace ups[] = {LogFace::top, LogFace::under, LogFace::outside, LogFace::inside};

LogFace opposite(LogFace side) {
    switch (side) {
    case LogFace::top:
        return LogFace::under;
    case LogFace::under:
        return LogFace::top;
    case LogFace::outside:
        return LogFace::inside;
    case LogFace::inside:
        return LogFace::outside;
    case LogFace::datum_end:
        return LogFace::far_end;
    case LogFace::far_end:
        break;
    }
    return LogFace::datum_end;
}

bool is_end(LogFace side) {
    return side == LogFace::datum_end || side == LogFace::far_end;
}

/// Bit i: ups[i]. 0 where an end will do, whichever way the log lies.
unsigned ups_that_reach(const Operation &operation) {
    unsigned reach = 0;
    for (unsigned i = 0; i < std::size(ups); ++i)
        for (const AccessSide &access : operation.access)
            if (access.side == ups[i]) reach |= 1U << i;
    return reach;
}

/// The least set of ways up from which everything is reached; of equals the one that needs the least tilt,
/// then the one with the earlier ways.
unsigned fewest(const std::vector<Operation> &operations) {
    const auto tilt = [&](unsigned set) {
        double sum = 0;
        for (const Operation &operation : operations)
            for (const AccessSide &access : operation.access) {
                const auto at = std::ranges::find(ups, access.side) - std::begin(ups);
                if (at >= std::ssize(ups) || !(set >> at & 1U)) continue;
                sum += access.tilt;
                break;
            }
        return sum;
    };
    unsigned best = 0;
    for (unsigned set = 1; set < 1U << std::size(ups); ++set) {
        const bool reaches_all = std::ranges::all_of(operations, [&](const Operation &operation) {
            const unsigned reach = ups_that_reach(operation);
            return reach == 0 || (reach & set) != 0;
        });
        if (!reaches_all) continue;
        const auto fewer = [&] {
            if (std::popcount(set) != std::popcount(best)) return std::popcount(set) < std::popcount(best);
            return tilt(set) < tilt(best) - 1e-6;
        };
        if (best == 0 || fewer()) best = set;
    }
    return best;
}

int rank_of(OperationKind kind) {
    switch (kind) {
    case OperationKind::plane:
        return 0;
    case OperationKind::slot:
    case OperationKind::pocket:
        return 1;
    case OperationKind::groove:
    case OperationKind::saddle:
        return 2;
    case OperationKind::bore:
        break;
    }
    return 3;
}

void assign(Operation &operation, const std::vector<Setup> &setups) {
    for (const AccessSide &access : operation.access) {
        if (is_end(access.side)) {
            operation.setup = 1, operation.from = access.side;
            return;
        }
        for (std::size_t i = 0; i < setups.size(); ++i)
            if (setups[i].up == access.side) {
                operation.setup = static_cast<int>(i) + 1, operation.from = access.side;
                return;
            }
    }
}

void put_in_order(std::vector<Operation> &operations) {
    std::ranges::stable_sort(operations, [](const Operation &a, const Operation &b) {
        const auto late = [](const Operation &each) { return each.setup == 0; };
        if (late(a) != late(b)) return late(b);
        if (a.setup != b.setup) return a.setup < b.setup;
        if (rank_of(a.kind) != rank_of(b.kind)) return rank_of(a.kind) < rank_of(b.kind);
        return a.kind != OperationKind::plane && a.box.low.x < b.box.low.x;
    });
}

double along(Vec3 p, Vec3 way) {
    return dot(p, way);
}

/// Does it take wood of the half that the clamps hold, or come out where the log lies?
bool takes_held_wood(const Operation &operation, const Setup &setup, double middle) {
    const Vec3 way = outward(setup.up);
    return std::min(along(operation.box.low, way), along(operation.box.high, way)) < middle;
}

std::vector<Stretch> joined(std::vector<Stretch> all) {
    std::ranges::sort(all, {}, &Stretch::from);
    std::vector<Stretch> result;
    for (const Stretch &each : all)
        if (!result.empty() && each.from <= result.back().to)
            result.back().to = std::max(result.back().to, each.to);
        else
            result.push_back(each);
    return result;
}

/// A plane cut over the length of the log.
bool is_whole_face(const Operation &operation, double length) {
    return operation.kind == OperationKind::plane && operation.box.high.x - operation.box.low.x > length / 2;
}

/// Is the face that it leaves one of that side? No taper slopes by more.
bool hews(const Operation &operation, LogFace side) {
    constexpr double same_side = 0.9; // of the cosine
    return operation.kind == OperationKind::plane && !operation.sides.empty() &&
           dot(-operation.sides.front().plane.normal, outward(side)) > same_side;
}

/// What is cut in the held half in this set-up or was before; a face that was hewn over its whole length is
/// held as well as another.
std::vector<Stretch> to_keep_clear(const std::vector<Operation> &operations, const Setup &setup, int number,
                                   double middle, double from, double to) {
    std::vector<Stretch> all;
    for (const Operation &operation : operations) {
        if (operation.setup == 0 || operation.setup > number) continue;
        const bool whole = is_whole_face(operation, to - from);
        if (whole && operation.setup < number) continue;
        if (whole && hews(operation, setup.up)) continue; // off the upper side alone, if not quite square
        if (!takes_held_wood(operation, setup, middle)) continue;
        all.push_back({std::max(from, operation.box.low.x - clear_of_cuts),
                       std::min(to, operation.box.high.x + clear_of_cuts)});
    }
    return joined(std::move(all));
}

std::vector<Stretch> left_between(const std::vector<Stretch> &taken, double from, double to) {
    std::vector<Stretch> left;
    double at = from;
    for (const Stretch &each : taken) {
        if (each.from - at >= least_clamped) left.push_back({at, each.from});
        at = std::max(at, each.to);
    }
    if (to - at >= least_clamped) left.push_back({at, to});
    return left;
}

/// Out of the wood, on the face that the log lies on: as an earlier set-up has left it, else the stock's.
Vec3 out_of_bed(const std::vector<Operation> &operations, const Setup &setup, int number,
                const Stock &stock) {
    Vec3 out = stock.frame.direction_to_world(outward(setup.down));
    for (const Operation &operation : operations)
        if (operation.setup != 0 && operation.setup < number && hews(operation, setup.down))
            out = -operation.sides.front().plane.normal; // it points into the wood that stays
    return out;
}

/// How wide a face of the squared stick is flat at least, from the middle of a round to one of its edges:
/// from there on the round falls away.
double flat_beside_middle(const RawStock &raw, const Plane &plane) {
    double least = HUGE_VAL;
    const double length = raw.stock.size.length;
    for (const RoundStick &round : raw.rounds)
        for (const double x : {0.0, length}) {
            const double off = plane.distance(round.at + (x - round.at.x) / round.along.x * round.along);
            least = std::min(least, std::sqrt(std::max(0.0, round.radius * round.radius - off * off)));
        }
    return least;
}

/// Is that side of the log a flat face when it is laid for that set-up?
bool is_flat(const std::vector<Operation> &operations, LogFace side, int number, const RawStock &raw) {
    for (const StockFace &face : raw.faces)
        if (face.side == side && flat_beside_middle(raw, face.plane) >= least_flat) return true;
    return std::ranges::any_of(operations, [&](const Operation &operation) {
        return operation.setup != 0 && operation.setup < number && hews(operation, side) &&
               is_whole_face(operation, raw.stock.size.length) &&
               flat_beside_middle(raw, operation.sides.front().plane) >= least_flat;
    });
}

/// The two long sides of the log that stand upright as it lies.
bool has_upright_faces(const std::vector<Operation> &operations, const Setup &setup, int number,
                       const RawStock &raw) {
    return std::ranges::all_of(ups, [&](LogFace side) {
        return side == setup.up || side == setup.down || is_flat(operations, side, number, raw);
    });
}

/// Under the far end, so that x lies level: what that face falls back toward it.
double packing_of(Vec3 out, LogFace down, double length) {
    return out.x / dot(out, outward(down)) * length;
}

void find_clamping(Setup &setup, int number, const std::vector<Operation> &operations, const RawStock &raw) {
    const Stock &stock = raw.stock;
    const Vec3 way = outward(setup.up);
    const Frame &frame = stock.frame;
    const Vec3 other = frame.to_world({stock.size.length, stock.size.width, stock.size.height});
    const double middle = (along(frame.origin, way) + along(other, way)) / 2;
    const double from = std::min(frame.origin.x, frame.to_world({0, 0, stock.size.height}).x);
    const double to = std::max(other.x, frame.to_world({stock.size.length, 0, 0}).x);
    setup.keep_clear = to_keep_clear(operations, setup, number, middle, from, to);
    setup.lies_on_flat = is_flat(operations, setup.down, number, raw);
    setup.hold = Hold::round;
    if (has_upright_faces(operations, setup, number, raw)) {
        setup.clamp = left_between(setup.keep_clear, from, to);
        setup.hold = setup.clamp.empty() ? Hold::nowhere : Hold::faces;
    }
    setup.packing = packing_of(out_of_bed(operations, setup, number, stock), setup.down, to - from);
}

} // namespace

std::vector<Setup> lay_for(std::vector<Operation> &operations, const RawStock &raw) {
    std::vector<Setup> setups;
    const unsigned chosen = fewest(operations);
    for (unsigned i = 0; i < std::size(ups); ++i)
        if (!operations.empty() && (chosen >> i & 1U))
            setups.push_back({.down = opposite(ups[i]), .up = ups[i], .clamp = {}, .keep_clear = {}});
    for (Operation &operation : operations) {
        assign(operation, setups);
        if (operation.from) operation.inside_radius = inside_radius(operation, *operation.from);
    }
    put_in_order(operations);
    int number = 0;
    for (Setup &setup : setups)
        find_clamping(setup, ++number, operations, raw);
    return setups;
}

} // namespace roundlay::machining
