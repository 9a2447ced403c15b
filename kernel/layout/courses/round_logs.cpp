#include "kernel/layout/courses/round_logs.h"

#include "kernel/geometry/tolerance.h"
#include "kernel/layout/no_wood.h"
#include "kernel/layout/plan/reach.h"
#include "kernel/layout/rounded.h"
#include "kernel/layout/text.h"

#include <algorithm>
#include <cmath>
#include <functional>

namespace roundlay {

namespace {

/// A hewn top or underside narrower than this does not carry a log well. Common practice, no source.
constexpr double least_flat = 50;

/// Past a saddle the end of a round log would split off if it were shorter. Common practice, no source.
constexpr double least_past_saddle = 50;

class RoundLogs {
  public:
    RoundLogs(const Shell &shell, const Plan &plan, const Courses &courses)
        : shell_(shell), plan_(plan), courses_(courses) {}

    Findings found() {
        check();
        return std::move(findings_);
    }

  private:
    bool check() {
        if (!one_kind()) return false;
        if (!is_scoped(shell_))
            return each_course(
                [&](Index<WallPlace> w, const Course &c) { return has_flats(plan_.walls[w], c); });
        return alone() && even() && ends_past_saddles() &&
               each_course([&](Index<WallPlace> w, const Course &c) { return reaches_down(w, c); });
    }

    bool refuse(const std::string &code, About place, Said what, Said advice, const std::string &from) {
        return say_of(Weight::error, code, std::move(place), std::move(what), std::move(advice), from);
    }

    /// True where it can be cut all the same.
    bool say_of(Weight weight, const std::string &code, About place, Said what, std::optional<Said> advice,
                const std::string &from) {
        findings_.push_back({weight, code, std::move(place), std::move(what), std::move(advice), from});
        return weight != Weight::error;
    }

    bool each_course(const std::function<bool(Index<WallPlace>, const Course &)> &check) {
        for (const auto w : courses_.logs.indices())
            for (const Course &c : courses_.logs[w])
                if (c.radius > 0 && !check(w, c)) return false;
        return true;
    }

    bool one_kind() {
        const bool scoped = is_scoped(shell_);
        const auto differs = [&](NotchKind kind) { return (kind == NotchKind::saddle) != scoped; };
        const Said what =
            said("saddles and tails do not go together: logs scoped over one another are so all round");
        const Said advice = said("state one kind for the whole shell");
        for (std::size_t i = 0; i < shell_.corners.size(); ++i)
            if (differs(shell_.corners[i].notch.kind))
                return refuse("saddles-mixed",
                              corner_place(shell_.corners[i].first + shell_.corners[i].second), what, advice,
                              subject("corner", i, "kind"));
        for (std::size_t i = 0; i < shell_.own_logs.size(); ++i)
            if (shell_.own_logs[i].notch.kind && differs(*shell_.own_logs[i].notch.kind))
                return refuse("saddles-mixed", round_place(shell_.own_logs[i].wall, shell_.own_logs[i].round),
                              what, advice, subject("log", i, "kind"));
        return true;
    }

    /// Pockets of floors ask where a hewn face lies; bores only where the wall's middle is.
    bool alone() {
        if (!shell_.floors.empty())
            return refuse("round-logs-uneven", {about::All::floors},
                          said("floors are let into hewn logs only, not into logs scoped over one another"),
                          said("leave them out"), "floor");
        for (std::size_t i = 0; i < shell_.bores.size(); ++i)
            if (shell_.bores[i].from_outside)
                return refuse("round-logs-uneven", {about::All::bores},
                              said("a bore in logs scoped over one another stands in the middle of its wall"),
                              said("leave out from_outside"), subject("bore", i, "from_outside"));
        return true;
    }

    bool is_even(const LogSizes &s) const {
        return !s.butt_height && !s.tip_height && !s.butt_width && !s.tip_width;
    }

    bool even() {
        const auto uneven = [&](About place, Said advice, const std::string &from) {
            return refuse(
                "round-logs-uneven", std::move(place),
                said("logs scoped over one another are even cylinders whose spacing is the pitch alone"),
                std::move(advice), from);
        };
        if (shell_.rounds.gap.mm() > 0)
            return uneven({about::All::rounds},
                          said("leave out the gap, or state it as scribe in the table [notch]"),
                          "rounds.gap");
        if (!is_even(shell_.logs))
            return uneven({about::All::logs}, said("state their diameter in place of heights and widths"),
                          "logs");
        for (std::size_t i = 0; i < shell_.own_logs.size(); ++i)
            if (!is_even(shell_.own_logs[i].sizes))
                return uneven(round_place(shell_.own_logs[i].wall, shell_.own_logs[i].round),
                              said("state its diameter in place of heights and widths"),
                              subject("log", i, "butt_height"));
        for (std::size_t i = 0; i < shell_.own_logs.size(); ++i)
            if (const OwnLog &own = shell_.own_logs[i];
                own.gap_left || own.gap_right || own.scribe || !own.tails.empty())
                return uneven(round_place(own.wall, own.round),
                              said("leave out the gaps under it, its tails and its scribe"),
                              subject("log", i, "gap_left"));
        for (const auto w : plan_.walls.indices())
            if (std::abs(courses_.heights[w].log_height - courses_.heights[w].pitch) > tolerance::weld)
                return uneven(wall_place(plan_.walls[w].name), said("leave out log_height"), "wall");
        return true;
    }

    bool ends_past_saddles() {
        for (const auto w : courses_.logs.indices())
            for (const Course &c : courses_.logs[w])
                for (const End end : {End::datum, End::far}) {
                    const WallPlace &wall = plan_.walls[w];
                    const WallMeeting &m = wall.meetings[meeting_at(wall, end)];
                    const double past = end == End::datum ? m.low - c.x_datum : c.x_far - m.high;
                    const double wood = past - std::abs(m.skew) * wall.thickness / 2;
                    if (wood >= least_past_saddle - tolerance::weld) continue;
                    const Weight weight = wood < no_wood ? Weight::error : Weight::warning;
                    const bool cuts =
                        say_of(weight, "saddle-at-end",
                               corner_place(plan_.corners[m.corner].name, wall.name, c.round),
                               said("a saddle needs wood past it: an overhang of %1 at least, better of the "
                                    "log's own diameter",
                                    no_less(shell_, least_past_saddle)),
                               {}, "notch.overhang");
                    if (!cuts) return false;
                }
        return true;
    }

    /// Where its diameter is stated: at the log itself, or for all.
    std::string stated_at(const WallPlace &wall, const Course &c) const {
        for (std::size_t i = 0; i < shell_.own_logs.size(); ++i) {
            const OwnLog &own = shell_.own_logs[i];
            if (own.wall == wall.name && own.round == c.round && own.sizes.diameter)
                return subject("log", i, "diameter");
        }
        return "logs.diameter";
    }

    /// Logs may be thinner than their wall, which is as thick as its thickest; not so thin that they float.
    bool reaches_down(Index<WallPlace> w, const Course &c) {
        const WallPlace &wall = plan_.walls[w];
        const double pitch = courses_.heights[w].pitch;
        if (2 * c.radius >= pitch - tolerance::weld) return true;
        return refuse("stick-too-thin", round_place(wall.name, c.round),
                      said("a log %1 thick does not reach the log below it at a pitch of %2",
                           in_mm(2 * c.radius), in_mm(pitch)),
                      said("a diameter of at least that, or a lower pitch would fit"), stated_at(wall, c));
    }

    /// Top and underside are hewn flat, wide enough to carry and to be bored.
    bool has_flats(const WallPlace &wall, const Course &c) {
        const double bored = shell_.pegs.wanted ? shell_.pegs.diameter.mm() + 4 * tolerance::clear : 0.0;
        const double wanted = std::max(least_flat, bored);
        for (const Section *s : {&c.datum, &c.far}) {
            const double off = std::max(s->high - s->centre, s->centre - s->low);
            const double flat = 2 * std::sqrt(std::max(0.0, c.radius * c.radius - off * off));
            if (flat >= wanted) continue;
            const Weight weight = flat < std::max(no_wood, bored) ? Weight::error : Weight::warning;
            const LengthAmount thick = in_mm(2 * c.radius), high = in_mm(s->high - s->low);
            return say_of(weight, "stick-too-thin", round_place(wall.name, c.round),
                          flat > 0 ? said("a stick %1 thick leaves a flat of only %2 on a log %3 high", thick,
                                          in_mm(flat), high)
                                   : said("a stick %1 thick leaves no flat on a log %2 high", thick, high),
                          said("%1 are needed, which a stick of %2 has", in_mm(wanted),
                               no_less(shell_, 2 * std::hypot(off, wanted / 2))),
                          stated_at(wall, c));
        }
        return true;
    }

    const Shell &shell_;
    const Plan &plan_;
    const Courses &courses_;
    Findings findings_;
};

} // namespace

bool is_scoped(const Shell &shell) {
    return shell.notch.kind == NotchKind::saddle;
}

void give_round(Course &course, const LogSizes &sizes, const Shell &shell, double thickness) {
    course.scoped = is_scoped(shell);
    if (sizes.diameter)
        course.radius = sizes.diameter->mm() / 2;
    else if (course.scoped)
        course.radius = thickness / 2;
    if (!course.scoped) return;
    course.scribe = shell.notch.scribe.mm();
    course.datum.width = course.far.width = std::min(thickness, 2 * course.radius);
    const bool sill = course.round == 1;
    course.lip = sill ? 0 : course.radius - (course.datum.centre - course.datum.low);
    course.crown = course.radius - (course.datum.high - course.datum.centre);
}

Findings check_round_logs(const Shell &shell, const Plan &plan, const Courses &courses) {
    return RoundLogs(shell, plan, courses).found();
}

std::optional<RoundCut> wane_of(const WallPlace &place, const Course &course, const Piece &piece) {
    if (course.radius <= 0) return {};
    const Vec3 foot = place.frame.to_local(piece.frame.origin);
    const auto axis = [&](double x) {
        return Vec3{x, piece.blank.width / 2, course.at(foot.x + x).centre - foot.z};
    };
    const RoundCut cut{axis(0), axis(piece.blank.length), course.radius};
    double furthest = 0;
    for (const Vec3 &at : {cut.from, cut.to}) {
        const double x = foot.x + at.x;
        const double over = course.high(x) + course.crown - foot.z - at.z;
        const double under = at.z - std::max(0.0, course.low(x) - course.lip - foot.z);
        furthest = std::max(furthest, std::hypot(course.width(x) / 2, std::max(over, under)));
    }
    if (furthest <= course.radius + tolerance::thinnest) return {};
    return cut;
}

double thinnest_stick(const Courses &courses) {
    double least = HUGE_VAL;
    for (const auto &logs : courses.logs)
        for (const Course &c : logs)
            least = std::min(least, 2 * c.radius);
    return least;
}

} // namespace roundlay
