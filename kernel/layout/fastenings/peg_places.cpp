// Where the pegs of one joint stand along it.

#include "kernel/geometry/tolerance.h"
#include "kernel/layout/fastenings/pegs.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <optional>

namespace roundlay {

std::vector<Span> without(const std::vector<Span> &spans, double from, double to) {
    std::vector<Span> rest;
    for (const Span &s : spans) {
        if (to <= s.from || from >= s.to) {
            rest.push_back(s);
            continue;
        }
        if (from >= s.from) rest.push_back({s.from, from});
        if (to <= s.to) rest.push_back({to, s.to});
    }
    return rest;
}

std::vector<Span> common(const std::vector<Span> &a, const std::vector<Span> &b) {
    std::vector<Span> both;
    for (const Span &s : a)
        for (const Span &t : b)
            if (const Span c{std::max(s.from, t.from), std::min(s.to, t.to)}; c.from <= c.to)
                both.push_back(c);
    return both;
}

namespace {

constexpr double far_away = std::numeric_limits<double>::max();

std::optional<double> nearest(const std::vector<Span> &spans, double x) {
    std::optional<double> best;
    for (const Span &s : spans) {
        const double here = std::clamp(x, s.from, s.to);
        if (!best || std::abs(here - x) < std::abs(*best - x)) best = here;
    }
    return best;
}

/// The furthest place from `from` to `to`.
std::optional<double> last_up_to(const std::vector<Span> &spans, double from, double to) {
    std::optional<double> best;
    for (const Span &s : spans)
        if (s.from <= to && s.to >= from) best = std::max(best.value_or(-far_away), std::min(s.to, to));
    return best;
}

std::optional<double> first_from(const std::vector<Span> &spans, double from) {
    std::optional<double> best;
    for (const Span &s : spans)
        if (s.to >= from) best = std::min(best.value_or(far_away), std::max(s.from, from));
    return best;
}

/// How many bays the reach falls into at least: by the spacing, and so that there are enough places.
int least_bays(const Joint &joint, const PegRule &rule) {
    const double widest = std::max(rule.spacing.mm() - rule.between.mm() / 2, rule.between.mm());
    const int corners = int(joint.locked_left) + int(joint.locked_right);
    const double most = joint.reach.length() / rule.between.mm() + 1; // more never fit
    const double bays = std::ceil(joint.reach.length() / widest - tolerance::weld);
    return std::max({1, static_cast<int>(std::min(bays, most)), joint.fewest + corners - 1});
}

/// Where the pegs would stand if nothing were in their way: evenly over the reach, a locked corner counting
/// as a place of its own; those of every second joint beside those of the next by `between`, so that none
/// stands over another.
std::vector<double> wished(const Joint &joint, const PegRule &rule, int bays) {
    const double shift = rule.between.mm();
    std::vector<double> places;
    for (int i = joint.locked_left ? 1 : 0; i <= bays - (joint.locked_right ? 1 : 0); ++i) {
        const double x = joint.reach.from + joint.reach.length() * i / bays;
        if (i == 0)
            places.push_back(joint.shifted ? x + shift : x);
        else if (i == bays)
            places.push_back(joint.shifted ? x - shift : x);
        else
            places.push_back(joint.shifted ? x + shift / 2 : x - shift / 2);
    }
    return places;
}

std::vector<double> take_nearest(std::vector<Span> free, const std::vector<double> &wishes, double between) {
    std::vector<double> places;
    for (const double wish : wishes) {
        const std::optional<double> x = nearest(free, wish);
        if (!x) continue;
        places.push_back(*x);
        free = without(free, *x - between, *x + between);
    }
    std::sort(places.begin(), places.end());
    return places;
}

/// From the left, each as far on as the spacing lets it: no other way needs fewer.
std::vector<double> stride(const Joint &joint, const std::vector<Span> &free, double spacing,
                           double between) {
    std::vector<double> places;
    double at = joint.locked_left ? joint.reach.from : -far_away;
    const double end = joint.reach.to;
    while (at < end - spacing || (!joint.locked_right && at < end)) {
        const double least = at == -far_away ? at : at + between;
        std::optional<double> next =
            at == -far_away ? first_from(free, least) : last_up_to(free, least, at + spacing);
        if (!next) next = first_from(free, least);
        if (!next) break;
        places.push_back(*next);
        at = *next;
    }
    return places;
}

/// As many as fit from the left: no other way fits more.
std::vector<double> pack(const std::vector<Span> &free, double between) {
    std::vector<double> places;
    double from = -far_away;
    for (const Span &s : free)
        for (double x = std::max(s.from, from); x <= s.to; x += between) {
            places.push_back(x);
            from = x + between;
        }
    return places;
}

/// The best ways of those that are tried: first enough pegs, then none too far apart, then the first one
/// tried.
class Best {
  public:
    Best(const Joint &joint, const PegRule &rule)
        : joint_(joint), most_(rule.spacing.mm() + tolerance::weld) {}

    void offer(std::vector<double> places) {
        const std::size_t enough =
            std::min(places.size(), static_cast<std::size_t>(std::max(joint_.fewest, 0)));
        const double gap = std::max(widest_apart(joint_, places), most_);
        if (tried_ && (enough < enough_ || (enough == enough_ && gap >= gap_))) return;
        tried_ = true;
        enough_ = enough;
        gap_ = gap;
        places_ = std::move(places);
    }
    bool holds() const { return tried_ && static_cast<int>(enough_) >= joint_.fewest && gap_ <= most_; }
    std::vector<double> take() { return std::move(places_); }

  private:
    const Joint &joint_;
    double most_;
    bool tried_ = false;
    std::size_t enough_ = 0;
    double gap_ = 0;
    std::vector<double> places_;
};

} // namespace

double widest_apart(const Joint &joint, const std::vector<double> &pegs) {
    std::vector<double> all = pegs;
    if (joint.locked_left) all.push_back(joint.reach.from);
    if (joint.locked_right) all.push_back(joint.reach.to);
    std::sort(all.begin(), all.end());
    double widest = all.size() < 2 ? joint.reach.length() : 0;
    for (std::size_t i = 1; i < all.size(); ++i)
        widest = std::max(widest, all[i] - all[i - 1]);
    return widest;
}

std::vector<double> place_pegs(const Joint &joint, const PegRule &rule, const std::vector<double> &taken) {
    const double between = rule.between.mm();
    std::vector<Span> free = joint.allowed;
    for (const double x : taken)
        free = without(free, x - between, x + between);
    Best best(joint, rule);
    // Twice that far from one another they leave room for those of the next joint; closer only where it must
    // be.
    for (const double own : {2 * between, between}) {
        const int bays = least_bays(joint, rule);
        for (int more = 0; more < 3 && !best.holds(); ++more)
            best.offer(take_nearest(free, wished(joint, rule, bays + more), own));
        if (!best.holds()) best.offer(stride(joint, free, rule.spacing.mm(), own));
    }
    if (!best.holds()) {
        std::vector<double> packed = pack(free, between);
        packed.resize(std::min(packed.size(), static_cast<std::size_t>(std::max(joint.fewest, 0))));
        best.offer(packed);
    }
    return best.take();
}

} // namespace roundlay
