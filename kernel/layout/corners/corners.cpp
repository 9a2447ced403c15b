#include "kernel/layout/corners/corners.h"

#include "kernel/geometry/tolerance.h"
#include "kernel/layout/corners/own_notches.h"
#include "kernel/layout/courses/round_logs.h"
#include "kernel/layout/courses/steps.h"
#include "kernel/layout/no_wood.h"
#include "kernel/layout/rounded.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace roundlay {

namespace {

/// mm: less is not read off a rule that has sixteenths of an inch.
constexpr double read_off_a_rule = 25.4 / 32;

/// One log in the order going up a corner.
struct Layer {
    std::size_t arm = 0;    ///< 0: of the wall that ends at this corner, 1: of the one that starts
    std::size_t course = 0; ///< index in its wall's courses
    double centre = 0;
};

/// One of the two walls at the corner.
struct Arm {
    Index<WallPlace> wall;
    std::size_t meeting = 0; ///< index in the wall's meetings
    Vec3 out;                ///< outward along its logs
    double run = 0;          ///< half of what the prism takes of its length
    const std::vector<Course> *courses = nullptr;
    std::vector<EndNotch> *notches = nullptr;
};

class Corner {
  public:
    Corner(const Shell &shell, const Plan &plan, const Foundation &foundation, const Courses &courses,
           Index<CornerPlace> index, Found<Corners> &made)
        : shell_(shell), plan_(plan), foundation_(foundation), courses_(courses), made_(made), index_(index),
          place_(plan.corners[index]), rule_(notch_at(shell, plan, index)) {
        arms_[0] = arm(place_.ends, 1);
        arms_[1] = arm(place_.starts, -1);
    }

    /// False on an error.
    bool work_out() {
        for (const Arm &arm : arms_)
            arm.notches->resize(arm.courses->size());
        stack();
        if (!alternates()) return false;
        for (std::size_t k = 0; k + 1 < layers_.size(); ++k)
            part(layers_[k], layers_[k + 1]);
        note_locks();
        drop_thin_half_logs();
        bool good = true;
        for (const Layer &layer : layers_)
            good = check_tail(layer) && good;
        return good;
    }

  private:
    Arm arm(Index<WallPlace> own, double toward) const {
        const WallPlace &w = plan_.walls[own];
        Arm a;
        a.wall = own;
        while (w.meetings[a.meeting].corner != index_)
            ++a.meeting;
        const WallMeeting &m = w.meetings[a.meeting];
        a.out = toward * w.frame.x;
        a.run = (m.high - m.low) / 2;
        a.courses = &courses_.logs[own];
        a.notches = &made_.notches[own][a.meeting];
        return a;
    }

    const WallMeeting &meeting(const Layer &l) const {
        const Arm &a = arms_[l.arm];
        return plan_.walls[a.wall].meetings[a.meeting];
    }
    const Course &course(const Layer &l) const { return (*arms_[l.arm].courses)[l.course]; }
    EndNotch &notch(const Layer &l) { return (*arms_[l.arm].notches)[l.course]; }
    /// The log's section at this corner: where the centre lines cross.
    /// Over a step of the foundation what is left of it.
    Section section(const Layer &l) const {
        Section s = course(l).at(meeting(l).x);
        s.low = std::max(s.low, floor_);
        return s;
    }
    /// Is it less than the whole log that stands here?
    bool is_part(const Layer &l) const {
        return course(l).kind != LogKind::full || course(l).low(meeting(l).x) < floor_ - tolerance::thinnest;
    }
    const std::string &wall_name(const Layer &l) const { return plan_.walls[arms_[l.arm].wall].name; }
    NotchRule rule(const Layer &l) const {
        return notch_at(shell_, plan_, index_, arms_[l.arm].wall, course(l).round);
    }

    void stack() {
        const StepPlace *steps[] = {step_at(plan_, foundation_, arms_[0].wall, arms_[0].meeting),
                                    step_at(plan_, foundation_, arms_[1].wall, arms_[1].meeting)};
        if (steps[0]) floor_ = steps[0]->rise;
        for (std::size_t arm = 0; arm < arms_.size(); ++arm)
            for (std::size_t i = 0; i < arms_[arm].courses->size(); ++i) {
                if (steps[arm] && leaves_out(*steps[arm], (*arms_[arm].courses)[i])) continue;
                Layer l{arm, i, 0};
                l.centre = section(l).centre;
                layers_.push_back(l);
            }
        std::stable_sort(layers_.begin(), layers_.end(),
                         [](const Layer &a, const Layer &b) { return a.centre < b.centre; });
    }

    bool alternates() {
        for (std::size_t k = 0; k + 1 < layers_.size(); ++k) {
            if (layers_[k].arm != layers_[k + 1].arm) continue;
            const Layer &two = layers_[k + 1];
            say_of(Weight::error, "tails-do-not-alternate", two,
                   said("going up corner %1, two logs of wall %2 follow one another at round %3", place_.name,
                        wall_name(two), course(two).round),
                   {});
            return false;
        }
        return true;
    }

    /// The seam between two logs: the lower one's top plane, as high as its tail is stated to be, else midway
    /// between their centres. The upper one's underside lies in it, or over it where a gap is stated there.
    void part(const Layer &lower, const Layer &upper) {
        notch(lower).above = course(upper).round;
        notch(upper).below = course(lower).round;
        if (course(upper).scoped) {
            notch(upper).saddle = true;
            return;
        }
        const auto own = own_height(lower);
        const double z = own ? tail_low(lower, place_.centre) + *own : (lower.centre + upper.centre) / 2;
        notch(lower).top = seam_at(lower, z);
        const WallPlace &over = plan_.walls[arms_[upper.arm].wall];
        const double gap = own_tail_gap(shell_, over, index_, course(upper).round);
        notch(upper).under = seam_at(lower, z + gap).flipped();
    }

    /// As the lower log's tail slopes, over the point where the walls' middles cross.
    Plane seam_at(const Layer &lower, double z) const {
        return seam_plane(tail_top(rule(lower)), {place_.centre.x, place_.centre.y, z}, arms_[lower.arm].out,
                          arms_[1 - lower.arm].out);
    }

    std::optional<double> own_height(const Layer &l) const {
        return own_tail_height(shell_, plan_.walls[arms_[l.arm].wall], index_, course(l).round);
    }

    /// Tails of stated height lie on one another: where the lowest one lies otherwise, so do those over it.
    void part_again(std::size_t from) {
        for (std::size_t k = from; k + 1 < layers_.size() && own_height(layers_[k]); ++k)
            part(layers_[k], layers_[k + 1]);
    }

    /// A tail holds when it thickens outward between its own top and that of the log below.
    void note_locks() {
        for (std::size_t k = 0; k < layers_.size(); ++k) {
            const TailTop own = tail_top(rule(layers_[k]));
            const TailTop below = k > 0 ? tail_top(rule(layers_[k - 1])) : own;
            const bool holds = course(layers_[k]).scoped || lock(own, below) > tolerance::weld;
            notch(layers_[k]).locked = layers_.size() > 1 && holds;
        }
    }

    std::array<Vec2, 4> prism_corners() const {
        const Vec3 a = arms_[0].run * arms_[0].out, b = arms_[1].run * arms_[1].out;
        std::array<Vec2, 4> all;
        for (std::size_t i = 0; i < 4; ++i) {
            const double sa = (i & 1U) ? 1 : -1, sb = (i & 2U) ? 1 : -1;
            all[i] = {place_.centre.x + sa * a.x + sb * b.x, place_.centre.y + sa * a.y + sb * b.y};
        }
        return all;
    }

    double tail_low(const Layer &l, Vec2 p) {
        const EndNotch &n = notch(l);
        return n.under ? n.under->height_at(p.x, p.y) : section(l).low;
    }
    double tail_high(const Layer &l, Vec2 p) {
        const EndNotch &n = notch(l);
        return n.top ? n.top->height_at(p.x, p.y) : section(l).high;
    }

    double thinnest(const Layer &l) {
        if (course(l).scoped) return over_saddle(l);
        double least = std::numeric_limits<double>::max();
        for (const Vec2 p : prism_corners())
            least = std::min(least, tail_high(l, p) - tail_low(l, p));
        return least;
    }

    /// What a saddle leaves of the log over the one that it crosses.
    double over_saddle(const Layer &l) {
        const double top = section(l).high + course(l).crown;
        const auto at = static_cast<std::size_t>(&l - layers_.data());
        if (at == 0 || !notch(l).saddle) return top - section(l).low;
        const Layer &below = layers_[at - 1];
        return top - (section(below).high + course(below).crown + course(l).scribe);
    }

    /// A half log whose tail would be too thin stands between the walls instead: the seam goes, and the
    /// crossing log keeps its full height there.
    void drop_thin_half_logs() {
        for (std::size_t k = 0; k < layers_.size(); ++k) {
            const Layer &l = layers_[k];
            if (!is_part(l) || thinnest(l) >= rule_.least_tail.mm()) continue;
            runs_on(l) ? note_parted(l, thinnest(l)) : note_without_tail(l, thinnest(l));
            notch(l) = {};
            notch(l).butts = true;
            if (k > 0) {
                notch(layers_[k - 1]).top.reset();
                notch(layers_[k - 1]).above.reset();
            }
            if (k + 1 < layers_.size()) {
                notch(layers_[k + 1]).under.reset();
                notch(layers_[k + 1]).saddle = false;
                notch(layers_[k + 1]).below.reset();
                part_again(k + 1);
            }
        }
    }

    /// Does its wall go on past the crossing one?
    bool runs_on(const Layer &l) const {
        const Arm &a = arms_[l.arm];
        const auto &meetings = plan_.walls[a.wall].meetings;
        return a.meeting > 0 && a.meeting + 1 < meetings.size();
    }

    void note_parted(const Layer &l, double thick) {
        const Arm &other = arms_[1 - l.arm];
        say_of(Weight::note, "half-log-parted", l,
               said("what would be left of the half log in the notch is %1 thick, under the least of %2: it "
                    "stands in two pieces, one to either side of wall %3",
                    in_mm(std::max(thick, 0.0)), in_mm(rule_.least_tail.mm()), plan_.walls[other.wall].name),
               {});
    }

    /// Not of one that the crossing logs leave nothing of: it could have none.
    void note_without_tail(const Layer &l, double thick) {
        if (thick < no_wood) return;
        say_of(Weight::note, "half-log-without-tail", l,
               said("what would be left of the half log in its tail is %1 thick, under the least of %2: it "
                    "stands between the walls, without a tail",
                    in_mm(std::max(thick, 0.0)), in_mm(rule_.least_tail.mm())),
               {}, "notch.least_tail");
    }

    Said saddle_advice(const LengthAmount &pitch) const {
        if (pitch.mm <= thinnest_stick(courses_)) return said("a pitch of %1 would fit", pitch);
        return said("a thicker log there, or a thinner one under it, leaves more; no pitch does that its "
                    "thinnest logs reach");
    }

    bool check_tail(const Layer &l) {
        if (notch(l).butts) return true;
        const double least = thinnest(l);
        if (least < rule_.least_tail.mm() - tolerance::weld) {
            const Weight weight = least < no_wood - tolerance::weld ? Weight::error : Weight::warning;
            // Crossing logs lie half a pitch apart; a round log that ends level at the top lies a whole one
            // over its own below.
            const bool ends_level = course(l).scoped && course(l).crown <= 0;
            const double short_by = (rule_.least_tail.mm() - least) * (ends_level ? 0.5 : 1);
            const LengthAmount is = in_mm(std::max(least, 0.0)), wanted = in_mm(rule_.least_tail.mm());
            const LengthAmount pitch = no_less(shell_, courses_.pitch + 2 * short_by);
            if (course(l).scoped)
                say_of(
                    weight, "tail-too-thin", l,
                    said(
                        "the saddle leaves %1 of the log over the one that it crosses, under the least of %2",
                        is, wanted),
                    saddle_advice(pitch));
            else
                say_of(weight, "tail-too-thin", l,
                       said("the tail is %1 thick at its thinnest, under the least of %2", is, wanted),
                       tail_advice(short_by));
            if (weight == Weight::error) return false;
        }
        if (!course(l).scoped) check_wood(l);
        return true;
    }

    /// Where logs' own heights are stated they count, and the pitch does not; nor is a pitch that no log has.
    Said tail_advice(double short_by) const {
        const bool own = std::ranges::any_of(
            shell_.own_logs, [](const OwnLog &log) { return log.sizes.butt_height || log.sizes.tip_height; });
        if (shell_.logs.butt_height || shell_.logs.tip_height || own)
            return said("logs that are %1 higher, or a flatter slope, would fit",
                        no_less(shell_, 2 * short_by));
        constexpr double highest_log = 2000;
        if (courses_.pitch + 2 * short_by > highest_log) return said("a flatter slope would fit");
        return said("a pitch of %1 or a flatter slope would fit",
                    no_less(shell_, courses_.pitch + 2 * short_by));
    }

    /// Is the log's body high enough for the whole tail?
    void check_wood(const Layer &l) {
        double missing = 0;
        for (const Vec2 p : prism_corners())
            missing = std::max({missing, tail_high(l, p) - section(l).high, section(l).low - tail_low(l, p)});
        if (missing < read_off_a_rule) return;
        say_of(Weight::warning, "seam-outside-wood", l,
               said("the seam runs %1 outside the log's body, so that much of the tail is not there",
                    in_mm(missing)),
               said("a smaller gap, a flatter slope or a higher log would fill it"), "rounds.gap");
    }

    void say_of(Weight weight, const std::string &code, const Layer &l, Said what, std::optional<Said> advice,
                const std::string &from = "rounds.pitch") {
        made_.findings.push_back({weight, code, corner_place(place_.name, wall_name(l), course(l).round),
                                  std::move(what), std::move(advice), from});
    }

    const Shell &shell_;
    const Plan &plan_;
    const Foundation &foundation_;
    const Courses &courses_;
    Found<Corners> &made_;
    Index<CornerPlace> index_;
    const CornerPlace &place_;
    NotchRule rule_;
    double floor_ = 0; ///< of the foundation, over its lowest
    std::array<Arm, 2> arms_;
    std::vector<Layer> layers_;
};

} // namespace

Found<Corners> lay_out_corners(const Shell &shell, const Plan &plan, const Foundation &foundation,
                               const Courses &courses) {
    Found<Corners> corners;
    corners.notches.resize(plan.walls.size());
    for (const auto w : plan.walls.indices())
        corners.notches[w].resize(plan.walls[w].meetings.size());
    for (const auto c : plan.corners.indices())
        if (!Corner(shell, plan, foundation, courses, c, corners).work_out()) {
            corners.notches.clear();
            break;
        }
    return corners;
}

} // namespace roundlay
