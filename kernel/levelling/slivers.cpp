#include "kernel/levelling/slivers.h"

#include "kernel/layout/advice/trial.h"
#include "kernel/layout/courses/courses.h"
#include "kernel/layout/courses/standing.h"
#include "kernel/layout/courses/steps.h"
#include "kernel/layout/lay_out.h"
#include "kernel/layout/openings/openings.h"
#include "kernel/layout/plan/plan.h"
#include "kernel/levelling/stacks.h"

#include <algorithm>
#include <limits>
#include <map>
#include <random>
#include <set>
#include <utility>

namespace roundlay {

namespace {

constexpr LogEnd both[] = {LogEnd::left, LogEnd::right};

LogEnd other(LogEnd end) {
    return end == LogEnd::left ? LogEnd::right : LogEnd::left;
}

/// The shell with its logs in these seats.
Shell with_logs(const Shell &shell, const Plan &plan, const std::vector<PileLog> &pile,
                const Levelled &levelled) {
    Shell next = shell;
    for (OwnLog &log : own_logs(plan, shell.units, pile, levelled))
        next.own_logs.push_back(std::move(log)); // of two that are stated of one log, the later counts
    return next;
}

constexpr int cannot_be_laid = std::numeric_limits<int>::max(); ///< instead of a count

/// What is wrong beside openings: rounds that an opening parts into other pieces than the logs were chosen
/// for, which cannot be laid so at all, then wood that is left and splits off; and in which walls.
struct Faults {
    int parted_otherwise = 0, count = 0;
    std::set<Index<WallPlace>> walls;
    bool none() const { return parted_otherwise == 0 && count == 0; }
    bool fewer_than(const Faults &o) const {
        return std::pair(parted_otherwise, count) < std::pair(o.parted_otherwise, o.count);
    }
};

/// How often openings part a round, by wall and round.
using Parted = std::map<std::pair<Index<WallPlace>, int>, std::ptrdiff_t>;

/// Of those rounds whose pieces each come from a log of their own: elsewhere one log is stated of the whole
/// round, however it is parted.
Parted parted(const Shell &shell, const Plan &plan, const Foundation &foundation, const Courses &courses,
              const std::vector<LogPlace> &places) {
    Parted all;
    for (const LogPlace &place : places) {
        if (place.first_piece == 1 && place.last_piece == place.pieces) continue;
        for (const Course &course : courses.logs[place.wall])
            if (course.round == place.round)
                all[{place.wall, place.round}] = std::ranges::count_if(
                    cuts_of(shell, plan, foundation, place.wall, course), &OpeningCut::severs);
    }
    return all;
}

class Search {
  public:
    Search(const Shell &shell, const std::vector<PileLog> &pile, const Levelled &levelled)
        : shell_(shell), pile_(pile), trial_(levelled), stacks_(pile, levelled.places, levelled.log_height),
          limit_(std::max(levelled.after.worst, taken_up_by_plate)),
          plan_(static_cast<Plan &&>(lay_out_plan(shell))), seats_(levelled.after.seats) {
        const auto courses = lay_out_courses(shell_, plan_);
        const auto steps = lay_out_steps(shell_, plan_, courses);
        if (stand(steps)) parted_as_stated_ = parted(shell_, plan_, steps, courses, trial_.places);
        slivers_ = slivers_of(seats_);
    }

    void run() {
        std::mt19937 random(1); // any fixed start: the same pile gives the same arrangement
        while (!slivers_.none() && tries_ < most_tries && (step() || disturbed(random))) {
        }
    }

    const Faults &slivers() const { return slivers_; }
    const std::vector<Seat> &seats() const { return seats_; }

    Shell shell_with(const std::vector<Seat> &seats) {
        trial_.after.seats = seats;
        return with_logs(shell_, plan_, pile_, trial_);
    }

  private:
    static constexpr int most_tries = 6000; // laid out as far as courses: some seconds for a large house
    static constexpr int disturbances = 1500;

    struct Neighbour {
        std::vector<Seat> seats;
        double squares = 0;
    };

    Faults slivers_of(const std::vector<Seat> &seats) {
        ++tries_;
        const Shell next = shell_with(seats);
        const auto courses = lay_out_courses(next, plan_);
        if (!stand(courses)) return {cannot_be_laid, 0, {}};
        const auto steps = lay_out_steps(next, plan_, courses);
        if (!stand(steps)) return {cannot_be_laid, 0, {}};
        Faults found;
        for (const auto &[round, times] : parted(next, plan_, steps, courses, trial_.places))
            if (times != parted_as_stated_[round]) {
                ++found.parted_otherwise;
                found.walls.insert(round.first);
            }
        const auto thin = warn_of_slivers(next, plan_, steps, courses);
        for (const Sliver &sliver : thin.slivers) {
            const auto *wall = first_of<about::Wall>(thin.findings[sliver.finding].about);
            if (wall != nullptr) found.walls.insert(*wall_named(plan_, wall->name));
            ++found.count;
        }
        return found;
    }

    /// Takes the arrangement if it leaves fewer slivers.
    bool take(const std::vector<Seat> &seats) {
        Faults found = slivers_of(seats);
        if (!found.fewer_than(slivers_)) return false;
        seats_ = seats, slivers_ = std::move(found);
        return true;
    }

    /// The most level of those that one log turned or two exchanged lead to.
    bool step() {
        std::vector<Neighbour> near = neighbours();
        std::ranges::stable_sort(near, {}, &Neighbour::squares);
        return std::ranges::any_of(near,
                                   [&](const Neighbour &n) { return tries_ < most_tries && take(n.seats); });
    }

    std::vector<Neighbour> neighbours() const {
        std::vector<Neighbour> all;
        std::vector<bool> used(pile_.size());
        for (const Seat &seat : seats_)
            used[seat.log.at()] = true;
        for (std::size_t a = 0; a < seats_.size(); ++a) {
            if (!slivers_.walls.contains(trial_.places[a].wall)) continue;
            add(all, {{a, {seats_[a].log, other(seats_[a].butt)}}});
            for (std::size_t b = 0; b < seats_.size(); ++b)
                if (b > a || !slivers_.walls.contains(trial_.places[b].wall)) add_swaps(all, a, b);
            for (const auto log : stacks_.logs())
                for (const LogEnd butt : both)
                    if (!used[log.at()]) add(all, {{a, {log, butt}}});
        }
        return all;
    }

    using Change = std::vector<std::pair<std::size_t, Seat>>;

    void add_swaps(std::vector<Neighbour> &all, std::size_t a, std::size_t b) const {
        for (const LogEnd butt_a : both)
            for (const LogEnd butt_b : both)
                add(all, {{a, {seats_[b].log, butt_a}}, {b, {seats_[a].log, butt_b}}});
    }

    /// If its logs are long enough and the walls level enough.
    void add(std::vector<Neighbour> &all, const Change &change) const {
        Neighbour next{seats_, 0};
        for (const auto &[place, seat] : change) {
            if (!stacks_.fits(seat.log, place)) return;
            next.seats[place] = seat;
        }
        const LevelErrors errors = stacks_.errors(next.seats);
        next.squares = errors.squares;
        if (errors.worst <= limit_) all.push_back(std::move(next));
    }

    /// Two changes at once, any.
    bool disturbed(std::mt19937 &random) {
        const auto any = [&](std::size_t count) { return static_cast<std::size_t>(random() % count); };
        for (int i = 0; i < disturbances && tries_ < most_tries; ++i) {
            std::vector<Seat> next = seats_;
            for (int k = 0; k < 2; ++k) {
                const std::size_t a = any(next.size()), b = any(next.size());
                std::swap(next[a].log, next[b].log);
                next[a].butt = both[any(2)], next[b].butt = both[any(2)];
            }
            if (all_fit(next) && stacks_.errors(next).worst <= limit_ && take(next)) return true;
        }
        return false;
    }

    bool all_fit(const std::vector<Seat> &seats) const {
        for (std::size_t i = 0; i < seats.size(); ++i)
            if (!stacks_.fits(seats[i].log, i)) return false;
        return true;
    }

    const Shell &shell_;
    const std::vector<PileLog> &pile_;
    Levelled trial_;
    Stacks stacks_; ///< of the caller's places, which trial_ has too
    double limit_;
    Plan plan_; ///< walls without their logs
    std::vector<Seat> seats_;
    Parted parted_as_stated_; ///< what the places were made for
    Faults slivers_;
    int tries_ = 0;
};

bool is_better(const Shell &shell, const Shell &before) {
    const Layout now = lay_out(shell), was = lay_out(before);
    return !has_errors(now.findings) &&
           (has_errors(was.findings) || warnings_in(now.findings) < warnings_in(was.findings));
}

} // namespace

void shun_slivers(const Shell &shell, const std::vector<PileLog> &pile, Levelled &levelled) {
    Search search(shell, pile, levelled);
    const Faults before = search.slivers();
    if (before.none() || before.parted_otherwise == cannot_be_laid) return;
    levelled.slivers = levelled.slivers_of_most_level = before.count;
    search.run();
    if (!search.slivers().fewer_than(before)) return;
    if (!is_better(search.shell_with(search.seats()), search.shell_with(levelled.after.seats))) return;
    levelled.slivers = search.slivers().count;
    levelled.parted_otherwise = before.parted_otherwise > 0;
    levelled.most_level =
        std::exchange(levelled.after, arranged(pile, levelled.places, search.seats(), levelled.log_height));
}

} // namespace roundlay
