#include "kernel/layout/corners.h"

#include "kernel/geometry/tolerance.h"
#include "kernel/layout/text.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace roundlay {

namespace {

/// One log in the order going up a corner.
struct Layer {
    bool of_ending = true; ///< of the wall that ends at this corner, else of the one that starts
    int course = 0;        ///< index in its wall's courses
    double centre = 0;
};

class Corner {
  public:
    Corner(const Shell &shell, Layout &layout, const std::vector<std::vector<Course>> &courses, int index,
           std::vector<WallNotches> &notches)
        : shell_(shell), layout_(layout), place_(layout.corners[static_cast<std::size_t>(index)]),
          ending_(courses[static_cast<std::size_t>(place_.ends)]),
          starting_(courses[static_cast<std::size_t>(place_.starts)]),
          ending_notches_(notches[static_cast<std::size_t>(place_.ends)].far),
          starting_notches_(notches[static_cast<std::size_t>(place_.starts)].datum),
          rule_(notch_at(shell, layout, index)), slopes_(tail_top(rule_)) {
        out_ending_ = layout.walls[static_cast<std::size_t>(place_.ends)].frame.x;
        out_starting_ = -layout.walls[static_cast<std::size_t>(place_.starts)].frame.x;
        const Vec3 centre{place_.centre.x, place_.centre.y, 0};
        x_ending_ = layout.walls[static_cast<std::size_t>(place_.ends)].frame.to_local(centre).x;
        x_starting_ = layout.walls[static_cast<std::size_t>(place_.starts)].frame.to_local(centre).x;
        half_ending_ = layout.walls[static_cast<std::size_t>(place_.ends)].thickness / 2;
        half_starting_ = layout.walls[static_cast<std::size_t>(place_.starts)].thickness / 2;
    }

    /// False on an error.
    bool work_out() {
        ending_notches_.resize(ending_.size());
        starting_notches_.resize(starting_.size());
        stack();
        if (!alternates()) return false;
        for (std::size_t k = 0; k + 1 < layers_.size(); ++k)
            part(layers_[k], layers_[k + 1]);
        drop_thin_half_logs();
        bool good = true;
        for (const Layer &layer : layers_)
            good = check_tail(layer) && good;
        return good;
    }

  private:
    const Course &course(const Layer &l) const {
        return (l.of_ending ? ending_ : starting_)[static_cast<std::size_t>(l.course)];
    }
    EndNotch &notch(const Layer &l) {
        return (l.of_ending ? ending_notches_ : starting_notches_)[static_cast<std::size_t>(l.course)];
    }
    /// The log's section at this corner: where the centre lines cross.
    Section section(const Layer &l) const { return course(l).at(l.of_ending ? x_ending_ : x_starting_); }
    const std::string &wall_name(const Layer &l) const {
        return layout_.walls[static_cast<std::size_t>(l.of_ending ? place_.ends : place_.starts)].name;
    }

    void stack() {
        for (std::size_t i = 0; i < ending_.size(); ++i)
            layers_.push_back({true, static_cast<int>(i), ending_[i].at(x_ending_).centre});
        for (std::size_t i = 0; i < starting_.size(); ++i)
            layers_.push_back({false, static_cast<int>(i), starting_[i].at(x_starting_).centre});
        std::stable_sort(layers_.begin(), layers_.end(),
                         [](const Layer &a, const Layer &b) { return a.centre < b.centre; });
    }

    bool alternates() {
        for (std::size_t k = 0; k + 1 < layers_.size(); ++k) {
            if (layers_[k].of_ending != layers_[k + 1].of_ending) continue;
            const Layer &two = layers_[k + 1];
            refuse("tails-do-not-alternate", two,
                   "going up corner " + place_.name + ", two logs of wall " + wall_name(two) +
                       " follow one another at round " + std::to_string(course(two).round) +
                       "; the pitches of the two walls drift apart by half a round, make them equal");
            return false;
        }
        return true;
    }

    /// The seam between two logs: the lower one's top plane, midway between their centres.
    void part(const Layer &lower, const Layer &upper) {
        const Vec3 along = lower.of_ending ? out_ending_ : out_starting_;
        const Vec3 across = lower.of_ending ? out_starting_ : out_ending_;
        const Vec3 gradient = slopes_.along * along + slopes_.across * across;
        const double z = (lower.centre + upper.centre) / 2;
        const double z_at_world_origin = z - gradient.x * place_.centre.x - gradient.y * place_.centre.y;
        const Plane seam = plane_over(z_at_world_origin, gradient.x, gradient.y);
        notch(lower).top = seam;
        notch(lower).above = course(upper).round;
        notch(upper).under = seam.flipped();
        notch(upper).below = course(lower).round;
        const bool locked = lock(slopes_, slopes_) > tolerance::weld;
        notch(lower).locked = notch(upper).locked = locked;
    }

    std::array<Vec2, 4> prism_corners() const {
        const Vec3 a = half_starting_ * out_ending_, b = half_ending_ * out_starting_;
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
        double least = std::numeric_limits<double>::max();
        for (const Vec2 p : prism_corners())
            least = std::min(least, tail_high(l, p) - tail_low(l, p));
        return least;
    }

    /// A half log whose tail would be too thin stands between the walls instead: the seam goes, and the
    /// crossing log keeps its full height there.
    void drop_thin_half_logs() {
        for (std::size_t k = 0; k < layers_.size(); ++k) {
            const Layer &l = layers_[k];
            if (course(l).kind == LogKind::full || thinnest(l) >= rule_.least_tail.mm()) continue;
            notch(l) = {};
            notch(l).butts = true;
            if (k > 0) {
                notch(layers_[k - 1]).top.reset();
                notch(layers_[k - 1]).above = -1;
            }
            if (k + 1 < layers_.size()) {
                notch(layers_[k + 1]).under.reset();
                notch(layers_[k + 1]).below = -1;
            }
        }
    }

    bool check_tail(const Layer &l) {
        if (notch(l).butts) return true;
        const double least = thinnest(l);
        if (least < rule_.least_tail.mm() - tolerance::weld) {
            const double short_by = rule_.least_tail.mm() - least;
            refuse("tail-too-thin", l,
                   "the tail is " + say(shell_, std::max(least, 0.0)) +
                       " thick at its thinnest, under the least of " + say(shell_, rule_.least_tail.mm()) +
                       "; a pitch of " + say(shell_, layout_.pitch + 2 * short_by) +
                       " or a flatter slope would fit");
            return false;
        }
        check_wood(l);
        return true;
    }

    /// Is the log's body high enough for the whole tail?
    void check_wood(const Layer &l) {
        double missing = 0;
        for (const Vec2 p : prism_corners())
            missing = std::max({missing, tail_high(l, p) - section(l).high, section(l).low - tail_low(l, p)});
        if (missing <= tolerance::weld) return;
        layout_.findings.push_back(
            {Weight::warning, "seam-outside-wood",
             "corner " + place_.name + ", " + round_place(wall_name(l), course(l).round),
             "the seam runs " + say(shell_, missing) +
                 " outside the log's body, so that much of the tail is not there; a smaller gap, a flatter "
                 "slope or "
                 "a higher log would fill it",
             "rounds.gap"});
    }

    void refuse(const std::string &code, const Layer &l, const std::string &message) {
        layout_.findings.push_back(
            {Weight::error, code, "corner " + place_.name + ", " + round_place(wall_name(l), course(l).round),
             message, "rounds.pitch"});
    }

    const Shell &shell_;
    Layout &layout_;
    const CornerPlace &place_;
    const std::vector<Course> &ending_, &starting_;
    std::vector<EndNotch> &ending_notches_, &starting_notches_;
    NotchRule rule_;
    TailTop slopes_;
    Vec3 out_ending_, out_starting_;
    double half_ending_ = 0, half_starting_ = 0;
    double x_ending_ = 0, x_starting_ = 0; ///< of the corner's centre in each wall
    std::vector<Layer> layers_;
};

bool check_length(const Shell &shell, Layout &layout, int wall) {
    const WallPlace &w = layout.walls[static_cast<std::size_t>(wall)];
    const double left = reach_at(layout, wall, End::datum, 0).shoulder;
    const double right = reach_at(layout, wall, End::far, 0).shoulder;
    if (right - left > tolerance::clear) return true;
    layout.findings.push_back({Weight::error, "wall-too-short", wall_place(w.name),
                               "wall " + w.name + " is " + say(shell, w.length) +
                                   " long, shorter than its two tails; it must be longer than " +
                                   say(shell, w.length - (right - left)),
                               subject("wall", static_cast<std::size_t>(wall), "length")});
    return false;
}

} // namespace

std::vector<WallNotches> lay_out_corners(const Shell &shell, Layout &layout,
                                         const std::vector<std::vector<Course>> &courses) {
    std::vector<WallNotches> notches(layout.walls.size());
    bool good = true;
    for (int w = 0; w < static_cast<int>(layout.walls.size()); ++w)
        good = check_length(shell, layout, w) && good;
    for (int c = 0; good && c < static_cast<int>(layout.corners.size()); ++c)
        good = Corner(shell, layout, courses, c, notches).work_out() && good;
    return good ? notches : std::vector<WallNotches>{};
}

} // namespace roundlay
