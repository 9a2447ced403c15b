#include "kernel/layout/plan/partition_advice.h"

#include "kernel/layout/rounded.h"
#include "kernel/layout/text.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace roundlay {

namespace {

class PartitionAdvice {
  public:
    PartitionAdvice(const Shell &shell, std::size_t partition,
                    const std::function<bool(const Shell &)> &holds)
        : shell_(shell), partition_(partition), holds_(holds), length_(length_of_first()) {}

    /// Along the wall that it starts in, nearest to where it is stated.
    std::optional<Said> of_place() const {
        constexpr int samples = 96;
        const double wanted = stated().from_left.mm();
        std::optional<double> found;
        for (int i = 0; i <= samples; ++i) {
            const double x = length_ * i / samples;
            if ((!found || std::abs(x - wanted) < std::abs(*found - wanted)) && at(x)) found = x;
        }
        if (!found) return {};
        const double step = length_ / samples;
        const double low = rounded_up(shell_, edge(*found, -step)),
                     high = rounded_down(shell_, edge(*found, step));
        if (low > high || !at(low) || !at(high)) return {};
        return said("from %1 to %2 from the left of wall %3 it fits", in_mm(low), in_mm(high), stated().from);
    }

    /// From where it starts.
    std::optional<Said> of_walls() const {
        std::string reached;
        const auto add = [&](const std::string &wall) {
            if (wall == stated().from || wall == stated().name || wall == stated().to || !ending_in(wall))
                return;
            reached += (reached.empty() ? "" : ", ") + wall;
        };
        for (const Wall &wall : shell_.walls)
            add(wall.name);
        for (const Partition &wall : shell_.partitions)
            add(wall.name);
        if (reached.empty()) return {};
        return said("from where it starts it can end in: %1", reached);
    }

  private:
    const Partition &stated() const { return shell_.partitions[partition_]; }

    /// Of a partition it is known only when it is laid out: then it is no longer than all the walls together.
    double length_of_first() const {
        double all = 0;
        for (const Wall &wall : shell_.walls) {
            if (wall.name == stated().from) return wall.length.mm();
            all += wall.length.mm();
        }
        return all / 2;
    }

    bool at(double from_left) const {
        Shell moved = shell_;
        moved.partitions[partition_].from_left = Length::mm(from_left);
        return holds_(moved);
    }

    bool ending_in(const std::string &wall) const {
        Shell other = shell_;
        other.partitions[partition_].to = wall;
        return holds_(other);
    }

    /// How far it can go from a place where it holds: step by step, then halving the last one.
    double edge(double from, double step) const {
        double good = from, next = from + step;
        while (next >= 0 && next <= length_ && at(next))
            good = next, next += step;
        double bad = std::clamp(next, 0.0, length_);
        while (std::abs(bad - good) > finest_printed(shell_) / 4) {
            const double middle = (good + bad) / 2;
            (at(middle) ? good : bad) = middle;
        }
        return good;
    }

    const Shell &shell_;
    std::size_t partition_;
    const std::function<bool(const Shell &)> &holds_;
    double length_;
};

} // namespace

void advise_on_partitions(const Shell &shell, Findings &findings,
                          const std::function<bool(const Shell &)> &holds) {
    for (Finding &f : findings)
        for (std::size_t i = 0; i < shell.partitions.size(); ++i) {
            const bool place = f.code == "tee-off-wall" && f.subject == subject("partition", i, "from_left");
            const bool end = f.subject == subject("partition", i, "to");
            if (!place && !end) continue;
            const PartitionAdvice advice(shell, i, holds);
            auto told = place ? advice.of_place() : advice.of_walls();
            if (!told) told = place ? advice.of_walls() : advice.of_place();
            if (told) f.advice = std::move(told);
        }
}

} // namespace roundlay
