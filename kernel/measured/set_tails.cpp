#include "kernel/layout/corners/corners.h"
#include "kernel/layout/courses/round_logs.h"
#include "kernel/layout/courses/steps.h"
#include "kernel/measured/rebuild.h"
#include "kernel/measured/tail_plane.h"

#include <algorithm>

namespace roundlay {

namespace {

/// A seam over the middle of a corner, and what it rises by per unit of the two walls' outward ways there.
struct Seam {
    double middle = 0;
    std::array<double, 2> rise{}; ///< by arm
};

/// A log of one of the two walls, in the order going up.
struct Tail {
    std::size_t arm = 0;
    int round = 1;
    double low = 0, centre = 0;
};

class CornerTails {
  public:
    CornerTails(Rebuild &at, Index<CornerPlace> index, const Corners &ruled)
        : at_(at), index_(index), corner_(at.plan.corners[index]), ruled_(ruled) {}

    void set() {
        stack();
        if (tails_.empty()) return;
        below_.middle = tails_.front().low;
        fills_ = room_under(tails_.front());
        for (std::size_t i = 0; i + 1 < tails_.size(); ++i)
            if (has_none(tails_[i]) || has_none(tails_[i + 1])) {
                below_ = {tails_[i + 1].low, {}}; // no seam parts them: the log lies as high as its body
                fills_ = 0;
            } else
                set_tail(tails_[i], tails_[i + 1]);
    }

  private:
    Index<WallPlace> wall(std::size_t arm) const { return arm == 0 ? corner_.ends : corner_.starts; }
    const WallMeeting &meeting(std::size_t arm) const {
        return *std::ranges::find(at_.plan.walls[wall(arm)].meetings, index_, &WallMeeting::corner);
    }
    /// Which end of a wall's logs lies here; nothing where they run on.
    std::optional<LogEnd> end(std::size_t arm) const {
        if (!meeting(arm).ends) return {};
        return at_.plan.walls[wall(arm)].end_corner == index_ ? LogEnd::right : LogEnd::left;
    }
    Vec3 out(std::size_t arm) const { return (arm == 0 ? 1.0 : -1.0) * at_.plan.walls[wall(arm)].frame.x; }
    double run(std::size_t arm) const { return (meeting(arm).high - meeting(arm).low) / 2; }

    void stack() {
        for (const std::size_t arm : {std::size_t{0}, std::size_t{1}})
            for (const Course &course : at_.courses.logs[wall(arm)]) {
                const Section s = course.at(meeting(arm).x);
                tails_.push_back({arm, course.round, s.low, s.centre});
            }
        std::ranges::stable_sort(tails_, {}, &Tail::centre);
    }

    /// A half log that stands between the walls, too thin for a tail by the rule, and none was measured.
    bool has_none(const Tail &tail) const {
        if (ruled_.notches.empty() || is_measured(tail)) return false;
        const auto &meetings = at_.plan.walls[wall(tail.arm)].meetings;
        const auto m = std::ranges::find(meetings, index_, &WallMeeting::corner) - meetings.begin();
        return in_round(ruled_.notches[wall(tail.arm)][std::size_t(m)], tail.round).butts;
    }

    bool is_measured(const Tail &tail) const {
        const auto at_end = end(tail.arm);
        return at_end &&
               tail_plane(in_round(at_.numbers[wall(tail.arm)], tail.round).end(*at_end).tail, 1, 1);
    }

    /// Room that was measured under a log's tail.
    double room_under(const Tail &tail) const {
        const auto at_end = end(tail.arm);
        return at_end ? in_round(at_.numbers[wall(tail.arm)], tail.round).end(*at_end).gap.value_or(0) : 0;
    }
    bool is_new(const Tail &tail) const { return at_.is_new(wall(tail.arm), tail.round); }

    /// From the seam below and what was measured over it, else by the rule of the notch. The room between two
    /// old logs stays open; new wood is cut to fill it, be it over the room or under it.
    void set_tail(const Tail &lower, const Tail &upper) {
        const double room = room_under(upper);
        place_top(lower, upper, is_new(lower) && !is_new(upper) ? room : 0);
        fills_ = is_new(upper) ? room : 0;
        if (room > 0 && !is_new(lower) && !is_new(upper)) leave_open(upper, room);
    }

    void leave_open(const Tail &over, double room) {
        own_tail(over, *end(over.arm)).gap = Length::mm(room);
        below_.middle += room;
        ++at_.made.taken;
    }

    /// Where the lower of two tails ends.
    void place_top(const Tail &lower, const Tail &upper, double over) {
        const auto at_end = end(lower.arm);
        if (at_end && set_measured(lower, *at_end, over)) return;
        if (at_end) at_.propose(wall(lower.arm), lower.round, *at_end, ProposedNumber::tail);
        const TailTop top =
            tail_top(notch_at(at_.made.shell, at_.plan, index_, wall(lower.arm), lower.round));
        below_.middle = (lower.centre + upper.centre) / 2;
        below_.rise[lower.arm] = top.along, below_.rise[1 - lower.arm] = top.across;
    }

    /// [0] and [1] at the shoulder, [2] and [3] at the end; [1] and [3] where the crossing wall runs out to.
    std::array<std::optional<double>, 4> heights(const Tail &tail, const EndNumbers &numbers) const {
        const Vec3 outside = -1.0 * at_.plan.walls[wall(tail.arm)].frame.y;
        const bool crossing_runs_outside = dot(out(1 - tail.arm), outside) > 0;
        auto h = numbers.tail; // shoulder outside, shoulder inside, end outside, end inside
        if (crossing_runs_outside) std::swap(h[0], h[1]), std::swap(h[2], h[3]);
        return h;
    }

    /// `over`: room over its top as it was measured that its wood fills.
    bool set_measured(const Tail &tail, LogEnd at_end, double over) {
        const EndNumbers &numbers = in_round(at_.numbers[wall(tail.arm)], tail.round).end(at_end);
        const auto count = std::ranges::count_if(numbers.tail, [](const auto &h) { return h.has_value(); });
        const auto plane = tail_plane(heights(tail, numbers), run(tail.arm), run(1 - tail.arm));
        if (!plane) {
            if (count > 0) tell_few(tail, count);
            return false;
        }
        if (plane->off > told_from) tell_uneven(tail, plane->off);
        below_.rise[tail.arm] += plane->along;
        below_.rise[1 - tail.arm] += plane->across;
        const double height = fills_ + plane->middle + over;
        below_.middle += height;
        state(tail, at_end, height);
        at_.made.taken += static_cast<std::size_t>(count);
        return true;
    }

    /// What is stated of that tail alone; made where nothing is yet.
    OwnTail &own_tail(const Tail &tail, LogEnd at_end) {
        auto &all = at_.own(wall(tail.arm), tail.round).tails;
        const auto own = std::ranges::find(all, at_end, &OwnTail::end);
        if (own != all.end()) return *own;
        OwnTail made;
        made.end = at_end;
        return all.emplace_back(made);
    }

    void state(const Tail &tail, LogEnd at_end, double height) {
        OwnTail &own = own_tail(tail, at_end);
        own.along = Slope::rise_per_run(below_.rise[tail.arm]);
        own.across = Slope::rise_per_run(below_.rise[1 - tail.arm]);
        own.height = Length::mm(height);
    }

    About place(const Tail &tail) const {
        return corner_place(corner_.name, at_.plan.walls[wall(tail.arm)].name, tail.round);
    }
    void tell_few(const Tail &tail, std::ptrdiff_t count) {
        at_.tell("tail-measured-in-part", place(tail),
                 said("the tail was measured at %1 of its four places: it is cut by the rule", count),
                 said("three of them make a plane"));
    }
    void tell_uneven(const Tail &tail, double off) {
        at_.tell(
            "tail-not-plane", place(tail),
            said("its four heights lie in no plane: the nearest one is %1 off each of them", in_mm(off)));
    }

    Rebuild &at_;
    Index<CornerPlace> index_;
    const CornerPlace &corner_;
    const Corners &ruled_; ///< by the rules alone
    std::vector<Tail> tails_;
    Seam below_;       ///< the next tail's underside
    double fills_ = 0; ///< room under that tail, as it was measured, that its wood fills
};

/// Where a step takes logs away at the foot of a corner, tails are not counted from the foundation up.
bool on_step(const Rebuild &at, const Foundation &foundation, Index<CornerPlace> index) {
    const auto stands = [&](Index<WallPlace> wall) {
        const auto &all = at.plan.walls[wall].meetings;
        const auto m = std::ranges::find(all, index, &WallMeeting::corner);
        return step_at(at.plan, foundation, wall, std::size_t(m - all.begin())) != nullptr;
    };
    return stands(at.plan.corners[index].ends) || stands(at.plan.corners[index].starts);
}

} // namespace

void set_tails(Rebuild &at) {
    if (is_scoped(at.made.shell)) return;
    const auto foundation = lay_out_steps(at.made.shell, at.plan, at.courses);
    const auto ruled = lay_out_corners(at.made.shell, at.plan, foundation, at.courses);
    for (const auto c : at.plan.corners.indices())
        if (on_step(at, foundation, c))
            at.tell("tails-on-step", corner_place(at.plan.corners[c].name),
                    said("it stands on a step of the foundation: its tails are cut by the rule"));
        else
            CornerTails(at, c, ruled).set();
}

} // namespace roundlay
