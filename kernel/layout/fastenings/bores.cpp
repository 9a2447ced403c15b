#include "kernel/layout/fastenings/bores.h"

#include "kernel/geometry/tolerance.h"
#include "kernel/layout/courses/steps.h"
#include "kernel/layout/fastenings/bore_room.h"
#include "kernel/layout/fastenings/no_log_there.h"
#include "kernel/layout/text.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <utility>
#include <vector>

namespace roundlay {

namespace {

class StatedBores {
  public:
    StatedBores(const Shell &shell, const Plan &plan, const Foundation &foundation, const Pieces &logs,
                const AllSpans &spans)
        : shell_(shell), plan_(plan), foundation_(foundation), logs_(logs), spans_(spans) {}

    Found<Bores> laid_out() {
        for (std::size_t i = 0; i < shell_.bores.size(); ++i)
            if (const WallPlace *wall = wall_of(i); wall && !spans_.empty()) bore(i, *wall);
        return std::move(made_);
    }

  private:
    /// A round of 0: its wall as a whole.
    About place(std::size_t i, int round) const {
        const StatedBore &b = shell_.bores[i];
        return narrowed(round > 0 ? round_place(b.wall, round) : wall_place(b.wall),
                        about::Bore{b.use, static_cast<int>(i) + 1, b.name});
    }

    bool refuse(std::size_t i, int round, const std::string &key, Said what,
                std::optional<Said> advice = {}) {
        made_.findings.push_back({Weight::error, "bore-misses-log", place(i, round), std::move(what),
                                  std::move(advice), subject("bore", i, key)});
        return false;
    }

    const std::vector<CourseSpans> &courses_of(const StatedBore &b) const {
        return spans_[*wall_named(plan_, b.wall)]; // wall_of has found it
    }

    /// Its wall, where that is thick enough to be bored so.
    const WallPlace *wall_of(std::size_t i) {
        const StatedBore &b = shell_.bores[i];
        const auto index = wall_named(plan_, b.wall);
        if (!index) {
            refuse(i, 0, "wall", said("there is no wall %1 in this shell", b.wall));
            return nullptr;
        }
        const WallPlace &wall = plan_.walls[*index];
        const double y = b.from_outside.value_or(Length::mm(wall.thickness / 2)).mm();
        if (!leaves_wood(i, 0, wall.thickness, y)) return nullptr;
        if (b.diameter.mm() > wall.thickness / 2)
            made_.findings.push_back({Weight::warning,
                                      "bore-takes-half",
                                      place(i, 0),
                                      bores_half_away(b.diameter.mm(), wall.thickness),
                                      {},
                                      subject("bore", i, "diameter")});
        return &wall;
    }

    bool bore(std::size_t i, const WallPlace &wall) {
        const StatedBore &b = shell_.bores[i];
        const double y = b.from_outside.value_or(Length::mm(wall.thickness / 2)).mm();
        const auto &courses = courses_of(b);
        const int rounds = count_of(courses), last = b.to_round.value_or(rounds);
        if (last > rounds || b.from_round > rounds)
            return refuse(i, 0, last > rounds ? "to_round" : "from_round",
                          said("the wall has only %1 rounds", rounds));
        if (b.from_round > last)
            return refuse(
                i, 0, "from_round",
                said("it goes from round %1 up to round %2: that is through no log", b.from_round, last));
        double x = b.from_left.mm();
        for (int round = b.from_round; round <= last; ++round, x += b.drift.mm())
            if (!bore_log(i, wall, round, in_round(courses, round), {x, y, 0})) return false;
        return true;
    }

    std::optional<Said> most_wide(double diameter) const {
        if (rounded_down(shell_, diameter) <= 0) return {};
        return at_most(shell_, diameter);
    }

    /// Of a wall or a log of that width, at y from its outside face.
    bool leaves_wood(std::size_t i, int round, double width, double y) {
        const double d = shell_.bores[i].diameter.mm(), beside = std::min(y, width - y);
        if (d / 2 + least_beside_bore <= beside + tolerance::weld) return true;
        if (!shell_.bores[i].from_outside)
            return refuse(i, round, "diameter", leaves_no_wood(d, width),
                          most_wide(2 * (beside - least_beside_bore)));
        const double outside = shell_.bores[i].from_outside->mm(), near = outside - y;
        const double low = rounded_up(shell_, near + d / 2 + least_beside_bore),
                     high = rounded_down(shell_, near + width - d / 2 - least_beside_bore);
        return refuse(i, round, "from_outside",
                      said("a bore of %1 whose middle lies %2 from the outside leaves no wood beside it in a "
                           "log %3 thick",
                           in_mm(d), in_mm(outside), in_mm(width)),
                      low <= high ? said("from %1 to %2 from the outside it does", exactly_in_mm(low),
                                         exactly_in_mm(high))
                                  : most_wide(width - 2 * least_beside_bore));
    }

    /// Whether so much whole wood lies to either side of x in that log.
    static bool is_whole(const PieceSpan &s, double x, double room) {
        if (x - room < s.shoulders.from || x + room > s.shoulders.to) return false;
        for (const auto *taken : {&s.taken_above, &s.taken_below})
            for (const Span &t : *taken)
                if (x + room > t.from && x - room < t.to) return false;
        return true;
    }

    /// Whether it could start at x: whole wood in each of its rounds.
    bool fits_at(const StatedBore &b, const WallPlace &wall, double x, double room) const {
        const auto &courses = courses_of(b);
        const double y = b.from_outside.value_or(Length::mm(wall.thickness / 2)).mm();
        const int last = b.to_round.value_or(count_of(courses));
        for (int round = b.from_round; round <= last; ++round, x += b.drift.mm()) {
            const CourseSpans &course = in_round(courses, round);
            if (std::none_of(course.begin(), course.end(), [&](const PieceSpan &s) {
                    const double beside = s.course.width(x) / 2 - std::abs(y - wall.thickness / 2);
                    return is_whole(s, x, room) && beside >= b.diameter.mm() / 2 + least_beside_bore;
                }))
                return false;
        }
        return true;
    }

    /// Beside every end and cut of its logs, as far as that from it.
    std::vector<double> places_beside_cuts(const StatedBore &b, double room) const {
        std::vector<double> places;
        const auto &courses = courses_of(b);
        const int last = b.to_round.value_or(count_of(courses));
        double shift = 0;
        for (int round = b.from_round; round <= last; ++round, shift += b.drift.mm())
            for (const PieceSpan &s : in_round(courses, round)) {
                places.insert(places.end(), {s.shoulders.from + room - shift, s.shoulders.to - room - shift});
                for (const auto *taken : {&s.taken_above, &s.taken_below})
                    for (const Span &t : *taken)
                        places.insert(places.end(), {t.to + room - shift, t.from - room - shift});
            }
        return places;
    }

    /// Where it would go through whole logs, nearest to where it is stated: as far from ends as pegs are
    /// kept, else as it just fits. Nothing where it does not.
    std::optional<LengthAmount> place_that_fits(std::size_t i, const WallPlace &wall) const {
        constexpr double past_rounding = 2; // mm: more than a printed length is rounded by
        const StatedBore &b = shell_.bores[i];
        const double least = b.diameter.mm() / 2 + past_rounding;
        for (const double room : {std::max(least, shell_.pegs.end_distance.mm()), least}) {
            std::optional<double> best;
            for (const double beside : places_beside_cuts(b, room))
                if (const double x = round_lengths(shell_, beside).front().mm();
                    x > 0 && fits_at(b, wall, x, room - past_rounding / 2) &&
                    (!best || std::abs(x - b.from_left.mm()) < std::abs(*best - b.from_left.mm())))
                    best = x;
            if (best) return exactly_in_mm(*best);
        }
        return {};
    }

    /// The rounds from the first to the last whole one at its place, if not all that are stated.
    std::optional<std::pair<int, int>> rounds_that_fit(std::size_t i, const WallPlace &wall) const {
        StatedBore b = shell_.bores[i];
        const double room = b.diameter.mm() / 2 + tolerance::clear;
        const int first = b.from_round, last = b.to_round.value_or(count_of(courses_of(b)));
        for (int from = first; from <= last; ++from)
            for (int to = last; to >= from; --to) {
                b.from_round = from, b.to_round = to;
                if (fits_at(b, wall, b.from_left.mm(), room)) return std::pair(from, to);
            }
        return {};
    }

    Said what_would_do(std::size_t i, const WallPlace &wall) const {
        const auto place = place_that_fits(i, wall);
        const auto rounds = rounds_that_fit(i, wall);
        if (rounds && place)
            return said("from round %1 to round %2 it would do there, or %3 from the left", rounds->first,
                        rounds->second, *place);
        if (rounds) return said("from round %1 to round %2 it would do there", rounds->first, rounds->second);
        if (place) return said("%1 from the left would do", *place);
        return said("state the rounds that it goes through, or another place");
    }

    bool bore_log(std::size_t i, const WallPlace &wall, int round, const CourseSpans &course, Vec3 at) {
        const double half = shell_.bores[i].diameter.mm() / 2 + tolerance::clear;
        for (const PieceSpan &s : course) {
            if (at.x - half < s.shoulders.from || at.x + half > s.shoulders.to) continue;
            for (const auto *taken : {&s.taken_above, &s.taken_below})
                for (const Span &t : *taken)
                    if (at.x + half > t.from && at.x - half < t.to)
                        return refuse(i, round, "from_left",
                                      said("it runs into a cut from %1 to %2 from the left", in_mm(t.from),
                                           in_mm(t.to)),
                                      what_would_do(i, wall));
            const double width = s.course.width(at.x);
            if (!leaves_wood(i, round, width, at.y - (wall.thickness - width) / 2)) return false;
            add(i, wall, s, at);
            return true;
        }
        return refuse(i, round, "from_left",
                      no_log_there(shell_, plan_, foundation_, {*wall_named(plan_, wall.name), at.x, half},
                                   course.empty() ? nullptr : &course.front().course),
                      what_would_do(i, wall));
    }

    void add(std::size_t i, const WallPlace &wall, const PieceSpan &s, Vec3 at) {
        const Piece &piece = logs_.pieces[s.piece];
        const Course &course = s.course;
        const double low = wood_from(piece.wall, course, at.x);
        const Vec3 foot = piece.frame.to_local(wall.frame.to_world({at.x, at.y, low}));
        const double to = foot.z + course.high(at.x) + course.crown - low; // a round log's top is crowned
        const Bore bore{
            foot.x, foot.y, foot.z, to, shell_.bores[i].diameter.mm(), {}, true, true, shell_.bores[i].use};
        made_.bores.push_back({s.piece, bore});
    }

    /// How high over the foundation the log's wood begins in the middle of its wall: on a step that carries
    /// it, else a round log's groove is hollow over the log below.
    double wood_from(Index<WallPlace> wall, const Course &course, double x) const {
        const double step = floor_under(foundation_, wall, x, x), low = course.low(x);
        return step > low - tolerance::thinnest ? step : low + course.hollow;
    }

    const Shell &shell_;
    const Plan &plan_;
    const Foundation &foundation_;
    const Pieces &logs_;
    const AllSpans &spans_;
    Found<Bores> made_;
};

} // namespace

Found<Bores> lay_out_bores(const Shell &shell, const Plan &plan, const Foundation &foundation,
                           const Pieces &logs, const AllSpans &spans) {
    return StatedBores(shell, plan, foundation, logs, spans).laid_out();
}

Findings check_bores(const Shell &shell, const Plan &plan) {
    return StatedBores(shell, plan, {}, {}, {}).laid_out().findings;
}

} // namespace roundlay
