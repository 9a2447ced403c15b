#include "exporters/machines/making.h"
#include "exporters/machines/room.h"

#include <algorithm>
#include <bit>
#include <cmath>

namespace roundlay::machines {

namespace {

using machining::AccessSide;
using machining::Operation;

constexpr double rounding = 1e-6;
/// As they follow one another when a log is rolled.
constexpr LogFace ring[] = {LogFace::top, LogFace::inside, LogFace::under, LogFace::outside};
constexpr unsigned laid_ways = 8; // four faces up, either end first

unsigned bit(LogFace side) {
    return 1U << static_cast<unsigned>(side);
}

/// The sides of the log that the machine works from, where it is rolled so often and turned end for end.
unsigned sides_reached(const Machine &machine, unsigned laid) {
    const unsigned rolled = laid % 4;
    const bool turned = laid >= 4;
    const auto side = [&](unsigned quarter) { return bit(ring[(rolled + quarter) % 4]); };
    unsigned sides = 0;
    for (const Way way : machine.works_from)
        switch (way) {
        case Way::above:
            sides |= side(0);
            break;
        case Way::below:
            sides |= side(2);
            break;
        case Way::front:
            sides |= side(turned ? 1 : 3);
            break;
        case Way::back:
            sides |= side(turned ? 3 : 1);
            break;
        case Way::ends:
            sides |= bit(LogFace::datum_end) | bit(LogFace::far_end);
            break;
        }
    return sides;
}

/// Rolled by a quarter or three, width and height change places.
bool goes_in(const Machine &machine, const Blank &size, unsigned laid) {
    const bool on_its_side = laid % 2 == 1;
    const double width = on_its_side ? size.height : size.width,
                 height = on_its_side ? size.width : size.height;
    return width <= machine.width + rounding && height <= machine.height + rounding;
}

std::vector<Said> against_log(const Machine &machine, const machining::OperationList &list,
                              std::optional<double> weight) {
    std::vector<Said> all;
    const Blank &size = list.stock.stock.size;
    if (size.length > machine.length + rounding)
        all.push_back(said("its stick is %1 long and the bed %2: a bed of %1 is needed",
                           in_mm(std::ceil(size.length)), in_mm(machine.length)));
    if (!goes_in(machine, size, 0) && !goes_in(machine, size, 1))
        all.push_back(said("its stick is %1 by %2 and the machine takes %3 by %4",
                           in_mm(std::ceil(size.width)), in_mm(std::ceil(size.height)), in_mm(machine.width),
                           in_mm(machine.height)));
    if (weight && *weight > machine.weight)
        all.push_back(said("its stick may weigh %1 kg and the machine bears %2 kg",
                           static_cast<long long>(std::ceil(*weight)),
                           static_cast<long long>(std::floor(machine.weight))));
    return all;
}

bool is_better(const OperationMaking &a, const OperationMaking &b) {
    if (a.verdict != b.verdict) return a.verdict < b.verdict;
    if (std::abs(a.left - b.left) > rounding) return a.left < b.left;
    return a.tilt < b.tilt - rounding;
}

class Judge {
  public:
    Judge(const Machine &machine, const machining::OperationList &list) : machine_(machine), list_(list) {
        for (unsigned laid = 0; laid < laid_ways; ++laid)
            reached_[laid] = goes_in(machine, list.stock.stock.size, laid) ? sides_reached(machine, laid) : 0;
    }

    PieceMaking judged() {
        PieceMaking making;
        for (const Operation &operation : list_.operations) {
            making.operations.push_back(best_of(operation));
            const OperationMaking &made = making.operations.back();
            making.verdict = std::max(making.verdict, made.verdict);
            making.left += made.left;
        }
        making.setups = fewest_setups();
        return making;
    }

  private:
    unsigned all_reached() const {
        unsigned all = 0;
        for (const unsigned sides : reached_)
            all |= sides;
        return all;
    }

    /// Also notes from which sides it is made as well as that.
    OperationMaking best_of(const Operation &operation) {
        if (machine_.may_not.contains(operation.kind))
            return refused(said("the machine may not make such a cut"));
        if (operation.access.empty()) return refused(said("no straight tool reaches it"));
        std::vector<OperationMaking> tries;
        for (const AccessSide &access : operation.access) {
            if (!(all_reached() & bit(access.side))) continue;
            if (machine_.saw) tries.push_back(sawn(machine_, operation, access));
            for (const Tool &tool : machine_.tools)
                tries.push_back(made_by(machine_, operation, access, tool));
        }
        if (tries.empty())
            return refused(said("it is reached from the %1, where the machine does not work",
                                phrase(words_for(operation.access.front().side))));
        const OperationMaking best = *std::ranges::min_element(tries, is_better);
        if (best.verdict == Verdict::not_made) return refused(told(tries));
        unsigned sides = 0;
        for (const OperationMaking &made : tries)
            if (made.verdict == best.verdict && made.left <= best.left + rounding) sides |= bit(*made.from);
        needed_.push_back(sides);
        return best;
    }

    static OperationMaking refused(Said why) {
        OperationMaking made;
        made.why = std::move(why);
        return made;
    }

    /// The last reason that is not the tool's shape: those with numbers are nearest to what would do.
    static Said told(const std::vector<OperationMaking> &tries) {
        const Said *best = &*tries.front().why;
        for (const OperationMaking &made : tries)
            if (best->amounts.empty() || made.why->amounts.size() > best->amounts.size()) best = &*made.why;
        return *best;
    }

    int fewest_setups() const {
        int fewest = 0;
        for (unsigned set = 0; set < 1U << laid_ways; ++set) {
            unsigned sides = 0;
            for (unsigned laid = 0; laid < laid_ways; ++laid)
                if (set >> laid & 1U) sides |= reached_[laid];
            const bool all = std::ranges::all_of(needed_, [&](unsigned any) { return (any & sides) != 0; });
            const int count = std::popcount(set);
            if (all && (fewest == 0 || count < fewest)) fewest = count;
            if (all && count == 0) return 0;
        }
        return fewest;
    }

    const Machine &machine_;
    const machining::OperationList &list_;
    unsigned reached_[laid_ways] = {};
    std::vector<unsigned> needed_; ///< of each operation that is made: the sides, any of which will do
};

} // namespace

PieceMaking making_of(const Machine &machine, const machining::OperationList &list,
                      std::optional<double> weight_kg) {
    PieceMaking making = Judge(machine, list).judged();
    making.against = against_log(machine, list, weight_kg);
    if (!making.against.empty()) making.verdict = Verdict::not_made;
    return making;
}

} // namespace roundlay::machines
