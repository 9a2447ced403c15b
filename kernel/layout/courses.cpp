#include "kernel/layout/courses.h"

#include "kernel/geometry/tolerance.h"
#include "kernel/layout/text.h"

#include <algorithm>
#include <cmath>

namespace roundlay {

namespace {

constexpr int most_rounds = 200;

struct Resolved {
    int count = 0;
    double pitch = 0;
};

void refuse(Layout &layout, std::string code, std::string message, std::string subject) {
    layout.findings.push_back({Weight::error, std::move(code), "rounds", std::move(message), std::move(subject)});
}

/// A stated height is kept and the pitch gives way: the count is the nearest whole number of rounds.
Resolved from_height_and_pitch(const Shell &shell, Layout &layout) {
    const double height = shell.rounds.height->mm(), pitch = shell.rounds.pitch->mm();
    const int count = std::max(1, static_cast<int>(std::lround(std::min(height / pitch, 1.0 * most_rounds + 1))));
    const double fitted = height / count;
    if (std::abs(fitted - pitch) > tolerance::weld)
        layout.findings.push_back({Weight::note, "pitch-fitted", "rounds",
                                   std::to_string(count) + " rounds reach " + say(shell, height) +
                                       " at a pitch of " + say(shell, fitted) + ", not the stated " +
                                       say(shell, pitch),
                                   "rounds.pitch"});
    return {count, fitted};
}

Resolved resolve(const Shell &shell, Layout &layout) {
    const Rounds &r = shell.rounds;
    if (r.count && r.pitch) {
        const double reached = *r.count * r.pitch->mm();
        if (r.height && std::abs(r.height->mm() - reached) > 0.5)
            refuse(layout, "rounds-disagree",
                   std::to_string(*r.count) + " rounds at " + say(shell, r.pitch->mm()) + " reach " +
                       say(shell, reached) + ", not the stated height of " + say(shell, r.height->mm()) +
                       "; state two of count, pitch and height",
                   "rounds.height");
        return {*r.count, r.pitch->mm()};
    }
    if (r.count && r.height) return {*r.count, r.height->mm() / *r.count};
    if (r.height && r.pitch) return from_height_and_pitch(shell, layout);
    refuse(layout, "rounds-missing", "state two of count, pitch and height; the third is worked out", "rounds");
    return {};
}

bool check_numbers(const Shell &shell, const Resolved &r, Layout &layout) {
    if (has_errors(layout.findings)) return false;
    if (r.count < 1 || r.count > most_rounds)
        refuse(layout, "rounds-out-of-range",
               "the shell has " + std::to_string(r.count) + " rounds; between 1 and " +
                   std::to_string(most_rounds) + " can be laid",
               "rounds.count");
    if (!(r.pitch > shell.rounds.gap.mm()))
        refuse(layout, "gap-eats-log",
               "a gap of " + say(shell, shell.rounds.gap.mm()) + " leaves no log in a pitch of " +
                   say(shell, r.pitch),
               "rounds.gap");
    return !has_errors(layout.findings);
}

/// Right-angled corners two-colour the walls: every second one starts with a full log.
void choose_starts(const Shell &shell, Layout &layout) {
    std::size_t first = 0;
    for (std::size_t i = 0; i < layout.walls.size(); ++i)
        if (shell.walls[i].name == shell.rounds.full_first) first = i;
    for (std::size_t i = 0; i < layout.walls.size(); ++i) layout.walls[i].starts_full = (i % 2) == (first % 2);
}

bool size_wall(const Shell &shell, std::size_t i, WallPlace &wall, Layout &layout) {
    wall.pitch = shell.walls[i].pitch.value_or(Length::mm(layout.pitch)).mm();
    wall.log_height = shell.walls[i].log_height.value_or(Length::mm(wall.pitch) - shell.rounds.gap).mm();
    if (wall.log_height > 0 && wall.log_height <= wall.pitch + tolerance::weld) return true;
    layout.findings.push_back({Weight::error, "log-over-pitch", wall_place(wall.name),
                               "logs " + say(shell, wall.log_height) + " high do not fit in a pitch of " +
                                   say(shell, wall.pitch) + "; a log is at most as high as the pitch",
                               subject("wall", i, shell.walls[i].log_height ? "log_height" : "pitch")});
    return false;
}

class Stack {
  public:
    Stack(const Shell &shell, const Layout &layout, const WallPlace &wall)
        : top_rule_(shell.rounds.top), wall_(wall), count_(layout.rounds),
          base_((layout.pitch - shell.rounds.gap.mm()) / 2), gap_(shell.rounds.gap.mm()) {}

    std::vector<Course> courses() {
        const double half_round = wall_.pitch / 2;
        if (!wall_.starts_full) add(LogKind::half_start, base_ - half_round);
        const bool closes = !wall_.starts_full && top_rule_ == TopRule::level;
        const int full = closes ? count_ - 1 : count_;
        const double first = wall_.starts_full ? base_ : base_ + half_round;
        for (int k = 0; k < full; ++k) add(LogKind::full, first + k * wall_.pitch);
        if (closes) add(LogKind::half_finish, first + full * wall_.pitch);
        // Sill logs stand on the foundation and plate logs end at the top whatever the wall's own height is.
        all_.front().low = 0;
        if (top_rule_ == TopRule::level) all_.back().high = count_ * wall_.pitch - gap_;
        return std::move(all_);
    }

  private:
    void add(LogKind kind, double centre) {
        const double half = wall_.log_height / 2;
        all_.push_back({static_cast<int>(all_.size()) + 1, kind, centre - half, centre + half, centre});
    }

    TopRule top_rule_;
    const WallPlace &wall_;
    int count_;
    double base_, gap_;
    std::vector<Course> all_;
};

bool check_courses(const Shell &shell, std::size_t i, const std::vector<Course> &courses, Layout &layout) {
    for (const Course &c : courses)
        if (c.high - c.low <= 1) {
            layout.findings.push_back({Weight::error, "no-wood-left",
                                       round_place(layout.walls[i].name, c.round),
                                       "the log of this round would be " + say(shell, c.high - c.low) +
                                           " high; a higher pitch or a smaller gap leaves wood",
                                       "rounds.pitch"});
            return false;
        }
    return true;
}

} // namespace

std::vector<std::vector<Course>> lay_out_courses(const Shell &shell, Layout &layout) {
    const Resolved r = resolve(shell, layout);
    if (!check_numbers(shell, r, layout)) return {};
    layout.rounds = r.count;
    layout.pitch = r.pitch;
    layout.height = r.count * r.pitch;
    choose_starts(shell, layout);
    std::vector<std::vector<Course>> all;
    for (std::size_t i = 0; i < layout.walls.size(); ++i) {
        WallPlace &wall = layout.walls[i];
        if (!size_wall(shell, i, wall, layout)) return {};
        all.push_back(Stack(shell, layout, wall).courses());
        wall.top = all.back().back().high;
        if (!check_courses(shell, i, all.back(), layout)) return {};
    }
    return all;
}

} // namespace roundlay
