#include "kernel/layout/advice/floor_advice.h"

#include "kernel/layout/floors/room.h"
#include "kernel/layout/text.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace roundlay {

namespace {

/// Each trial lays the whole shell out. After what the ends ask for, steps up and down from where the floor
/// lies.
constexpr std::size_t most_asked = 8;
constexpr double step = 15, furthest = 120;
/// Of a floor that lies over the walls: down from their tops, past a log and the gap under it.
constexpr double furthest_down = 360;

class FloorAdvisor {
  public:
    FloorAdvisor(const Shell &shell, Layout &layout, std::size_t floor, const LayOut &try_out)
        : shell_(shell), layout_(layout), floor_(floor), try_out_(try_out),
          subject_(subject("floor", floor, "level")) {
        for (const Finding &f : layout.findings)
            if (f.subject == subject_ && f.weight == Weight::error) ++own_errors_;
    }

    void advise(const std::vector<FloorMove> &moves) {
        std::vector<double> asked;
        for (const FloorMove &m : moves)
            if (m.floor == floor_) asked.push_back(m.by);
        if (asked.empty()) return;
        const auto whole = first_of(candidates(asked), false);
        const auto part = !whole && own_errors_ > 0 ? first_of(candidates(asked), true) : std::nullopt;
        for (const FloorMove &m : moves) {
            if (m.floor != floor_) continue;
            Finding &finding = layout_.findings[m.finding];
            if (whole)
                finding.advice = advice(*whole);
            else if (!part && !finding.advice)
                finding.advice = said("no small change of the floor's level mends it: a list of the seams "
                                      "tells how high the logs lie");
            else if (part && finding.weight == Weight::error)
                finding.advice = advice(*part);
        }
    }

  private:
    std::vector<Length> candidates(std::vector<double> asked) const {
        const auto nearer = [](double a, double b) { return std::abs(a) < std::abs(b); };
        std::ranges::stable_sort(asked, nearer);
        asked.erase(
            std::unique(asked.begin(), asked.end(), [](double a, double b) { return std::abs(a - b) < 0.5; }),
            asked.end());
        asked.resize(std::min(asked.size(), most_asked));
        std::vector<Length> all;
        const auto add = [&](Length by) {
            if (by != Length() && std::ranges::find(all, by) == all.end()) all.push_back(by);
        };
        for (const double by : asked)
            for (const Length length : round_lengths(shell_, by))
                add(length);
        const double down = asked.front() < -furthest ? asked.front() : 0; // from over the wall's top
        for (double by = step; by <= (down < 0 ? furthest_down : furthest); by += step)
            for (const double way : {by, -by})
                if (down == 0 || way < 0) add(round_lengths(shell_, down + way).front());
        return all;
    }

    /// `errors_only`: warnings of its level may stay.
    std::optional<Length> first_of(const std::vector<Length> &all, bool errors_only) {
        for (const Length by : all)
            if (helps(by, errors_only)) return by;
        return {};
    }

    /// Each change is tried once, though two questions are asked of it.
    const Findings &findings_with(Length by) {
        const auto known = tried_.find(by);
        if (known != tried_.end()) return known->second;
        Shell next = shell_;
        next.floors[floor_].level = level() + by;
        return tried_[by] = try_out_(next).findings;
    }

    bool helps(Length by, bool errors_only) {
        const Findings &after = findings_with(by), &before = layout_.findings;
        if (errors_in(after) > errors_in(before) - own_errors_) return false;
        if (own_errors_ == 0 && warnings_in(after) >= warnings_in(before)) return false;
        return std::ranges::none_of(after, [&](const Finding &f) {
            return f.subject == subject_ && (!errors_only || f.weight == Weight::error);
        });
    }

    Length level() const { return shell_.floors[floor_].level; }
    /// Nobody moves a floor that lies in its house: either it lies elsewhere than was stated, or it stays.
    bool lies_in_an_old_house() const {
        const auto is_old = [](std::optional<Fabric> fabric) {
            return fabric == Fabric::kept || fabric == Fabric::patched;
        };
        return is_old(shell_.floors[floor_].fabric) ||
               std::ranges::any_of(shell_.own_logs, [&](const OwnLog &log) {
                   return !log.mark.empty() || is_old(log.fabric);
               });
    }
    Said advice(Length by) const {
        if (lies_in_an_old_house())
            return by > Length() ? said("measure where it lies: a level %1 higher would fit", just(by))
                                 : said("measure where it lies: a level %1 lower would fit", just(by));
        if (by < Length::mm(-furthest))
            return said("lower the floor by %1, to a level of %2", just(by), in_mm((level() + by).mm()));
        return by > Length() ? said("raise the floor by %1", just(by))
                             : said("lower the floor by %1", just(by));
    }

    const Shell &shell_;
    Layout &layout_;
    std::size_t floor_;
    const LayOut &try_out_;
    std::string subject_;
    std::ptrdiff_t own_errors_ = 0;
    std::map<Length, Findings> tried_;
};

class WallAdvisor {
  public:
    WallAdvisor(const Shell &shell, const Layout &layout, std::size_t floor, const LayOut &try_out)
        : shell_(shell), layout_(layout), floor_(floor), try_out_(try_out) {}

    Said advice() const {
        const std::vector<Pair> pairs = facing();
        for (std::size_t i = 0; i < std::min(pairs.size(), most_asked); ++i)
            if (fits(pairs[i])) return said("from wall %1 to wall %2 it fits", pairs[i].from, pairs[i].to);
        if (pairs.empty()) return said("no two walls of this shell face each other");
        return said("walls %1 and %2 do, though between them the floor does not fit as it is stated",
                    pairs.front().from, pairs.front().to);
    }

  private:
    struct Pair {
        std::string from, to;
    };

    /// Those with one of its own walls first.
    std::vector<Pair> facing() const {
        std::vector<Pair> all;
        const Floor &floor = shell_.floors[floor_];
        for (const auto from : layout_.walls.indices())
            for (const auto to : layout_.walls.indices())
                if (room_between(layout_, from, to))
                    all.push_back({layout_.walls[from].name, layout_.walls[to].name});
        std::ranges::stable_sort(all, {}, [&](const Pair &p) {
            return p.from == floor.from ? 0 : p.to == floor.to ? 1 : 2;
        });
        return all;
    }

    bool fits(const Pair &pair) const {
        Shell next = shell_;
        next.floors[floor_].from = pair.from, next.floors[floor_].to = pair.to;
        const Findings after = try_out_(next).findings;
        const std::string own = subject("floor", floor_, "");
        return errors_in(after) < errors_in(layout_.findings) &&
               std::ranges::none_of(after, [&](const Finding &f) {
                   return f.weight == Weight::error && f.subject.starts_with(own);
               });
    }

    const Shell &shell_;
    const Layout &layout_;
    std::size_t floor_;
    const LayOut &try_out_;
};

/// Only where no room lies between its walls does that finding come of a floor's "to".
bool walls_apart(const Shell &shell, const Layout &layout, std::size_t floor) {
    const auto from = wall_named(layout, shell.floors[floor].from),
               to = wall_named(layout, shell.floors[floor].to);
    return from && to && !room_between(layout, *from, *to);
}

} // namespace

void advise_on_walls_of_floors(const Shell &shell, Layout &layout, const LayOut &try_out) {
    for (std::size_t f = 0; f < shell.floors.size(); ++f)
        for (Finding &finding : layout.findings)
            if (finding.subject == subject("floor", f, "to") && walls_apart(shell, layout, f))
                finding.advice = WallAdvisor(shell, layout, f, try_out).advice();
}

void advise_on_floors(const Shell &shell, Layout &layout, const std::vector<FloorMove> &moves,
                      const LayOut &try_out) {
    if (moves.empty()) return;
    for (std::size_t f = 0; f < shell.floors.size(); ++f)
        FloorAdvisor(shell, layout, f, try_out).advise(moves);
}

} // namespace roundlay
