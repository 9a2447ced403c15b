#include "kernel/layout/plan/partition_advice.h"

#include "kernel/layout/plan/plan.h"
#include "kernel/layout/rounded.h"
#include "kernel/layout/text.h"

#include <algorithm>
#include <cmath>
#include <functional>
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
        const double from = edge(*found, -step), to = edge(*found, step);
        const double low = first_that_holds(rounded_down(shell_, from), rounded_up(shell_, from)),
                     high = first_that_holds(rounded_up(shell_, to), rounded_down(shell_, to));
        if (low > high || !at(low) || !at(high)) return {};
        return said("from %1 to %2 from the left of wall %3 it fits", exactly_in_mm(low), exactly_in_mm(high),
                    stated().from);
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

    /// An edge is known to a part of what is printed: what lies just past it may hold still.
    double first_that_holds(double past, double within) const { return at(past) ? past : within; }

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

void advise_on_partitions(const Shell &shell, Findings &findings) {
    const std::function<bool(const Shell &)> stands = [](const Shell &other) {
        return stand(lay_out_plan(other));
    };
    for (Finding &f : findings)
        for (std::size_t i = 0; i < shell.partitions.size(); ++i) {
            const bool too_near = f.code == "tee-too-near";
            const bool place =
                (f.code == "tee-off-wall" || too_near) && f.subject == subject("partition", i, "from_left");
            const bool end = f.subject == subject("partition", i, "to");
            if (!place && !end) continue;
            const std::function<bool(const Shell &)> apart = [&f](const Shell &other) {
                const auto plan = lay_out_plan(other);
                return stand(plan) && std::ranges::none_of(plan.findings, [&f](const Finding &left) {
                           return left.code == f.code && left.subject == f.subject;
                       });
            };
            const PartitionAdvice advice(shell, i, too_near ? apart : stands);
            auto told = place ? advice.of_place() : advice.of_walls();
            if (!told && !too_near) told = place ? advice.of_walls() : advice.of_place();
            if (told)
                f.advice = std::move(told);
            else if (too_near)
                f.advice =
                    said("no place along wall %1 does, as the walls are stated", shell.partitions[i].from);
        }
}

} // namespace roundlay
