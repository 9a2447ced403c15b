#include "kernel/layout/openings/openings.h"
#include "kernel/measured/opening_numbers.h"
#include "kernel/measured/rebuild.h"
#include "kernel/record/numbers.h"

#include <algorithm>
#include <cmath>

namespace roundlay {

namespace {

/// Two edges of an opening that lie across from one another, and the size between them.
struct TwoEdges {
    std::optional<double> low, high, size;
    bool is_measured() const { return low || high || size; }
};

struct Stretch {
    double from = 0, to = 0;
    double size() const { return to - from; }
};

/// What nobody has measured stays as it is stated.
Stretch settled(const TwoEdges &is, const Stretch &stated) {
    Stretch now{is.low.value_or(stated.from), is.high.value_or(stated.to)};
    if (is.size && !is.high) now.to = now.from + *is.size;
    if (is.size && !is.low && is.high) now.from = now.to - *is.size;
    return now;
}

/// One opening of the record and the one of the shell that it is.
class OneOpening {
  public:
    OneOpening(Rebuild &at, const RecordedOpening &recorded, std::size_t opening, std::optional<double> zero)
        : at_(at), recorded_(recorded), opening_(at.made.shell.openings[opening]), zero_(zero),
          place_(opening_place(at.made.shell, opening)),
          wall_(wall_named(at.plan, at.made.shell.openings[opening].wall)) {}

    void set() {
        if (!wall_) return; // the check of the plan says so
        set_jambs();
        set_heights();
    }

  private:
    const WallPlace &wall() const { return at_.plan.walls[*wall_]; }

    void tell(const char *code, Said what, std::optional<Said> advice = {}) {
        at_.tell(code, place_, std::move(what), std::move(advice));
    }

    void set_jambs() {
        const Jambs read = jambs_of(recorded_);
        const auto from = zero_end();
        if (!from && (read.near || read.far))
            tell("opening-not-placed",
                 recorded_.zero.empty()
                     ? said("its jambs were measured, and not from which corner: they are not in the model")
                     : said("its jambs were measured from corner %1, which is no end of wall %2: they are "
                            "not in "
                            "the model",
                            recorded_.zero, wall().name),
                 said("state the corner at one end of the wall as its zero"));
        TwoEdges edges{{}, {}, taken(recorded_.width)};
        if (from) {
            edges = edges_along(read, *from);
            tell_leans(read);
            if (const auto by_jambs = measured_otherwise(edges))
                tell_twice(
                    said("it was measured %1 wide, and by its jambs it is %2, a difference of %3: the jambs "
                         "are taken",
                         in_mm(*edges.size), in_mm(*by_jambs), in_mm(std::abs(*by_jambs - *edges.size))));
        }
        const Stretch now =
            settled(edges, {opening_.from_left.mm(), (opening_.from_left + opening_.width).mm()});
        if (!edges.is_measured() || !can_be(now)) return;
        opening_.from_left = Length::mm(now.from), opening_.width = Length::mm(now.size());
        count(from ? read.count : 0, edges.size);
    }

    /// The end of the wall that its jambs are told from.
    std::optional<LogEnd> zero_end() const { return end_at(at_.record, at_.plan, *wall_, recorded_.zero); }

    TwoEdges edges_along(const Jambs &read, LogEnd from) const {
        const auto across = [&](const std::optional<double> &x) {
            return x ? std::optional(wall().length - *x) : x;
        };
        if (from == LogEnd::left) return {read.near, read.far, taken(recorded_.width)};
        return {across(read.far), across(read.near), taken(recorded_.width)};
    }

    void tell_leans(const Jambs &read) {
        if (read.near_leans && std::abs(*read.near_leans) > told_from)
            tell("jamb-leans", said("its jamb nearer to corner %1 was measured %2 from it at the sill and %3 "
                                    "at the head: the "
                                    "model has it upright, in the middle",
                                    recorded_.zero, in_mm(*read.near - *read.near_leans / 2),
                                    in_mm(*read.near + *read.near_leans / 2)));
        if (read.far_leans && std::abs(*read.far_leans) > told_from)
            tell(
                "jamb-leans",
                said(
                    "its jamb further from corner %1 was measured %2 from it at the sill and %3 at the head: "
                    "the model has it upright, in the middle",
                    recorded_.zero, in_mm(*read.far - *read.far_leans / 2),
                    in_mm(*read.far + *read.far_leans / 2)));
    }

    /// What its two edges leave between them, where its size was measured otherwise.
    static std::optional<double> measured_otherwise(const TwoEdges &is) {
        if (!is.low || !is.high || !is.size) return {};
        const double apart = *is.high - *is.low;
        return std::abs(apart - *is.size) > told_from ? std::optional(apart) : std::nullopt;
    }

    void tell_twice(Said what) {
        tell("opening-measured-twice", std::move(what), said("measure both again"));
    }

    void set_heights() {
        const auto sill = level_of(at_.record, recorded_.sill, recorded_.plane),
                   head = level_of(at_.record, recorded_.head, recorded_.plane);
        tell_not_levelled(sill || head);
        const double slant = at_.slant(*wall_, (opening_.from_left + opening_.width / 2).mm());
        const auto over_zero = [&](const std::optional<double> &level) {
            return level && zero_ ? std::optional(*level - slant - *zero_) : std::nullopt;
        };
        const TwoEdges edges{over_zero(sill), over_zero(head), taken(recorded_.height)};
        if (const auto by_levels = measured_otherwise({sill, head, edges.size}))
            tell_twice(
                said("it was measured %1 high, and by its levels it is %2, a difference of %3: the levels "
                     "are taken",
                     in_mm(*edges.size), in_mm(*by_levels), in_mm(std::abs(*by_levels - *edges.size))));
        Stretch now = settled(edges, {opening_.sill.mm(), (opening_.sill + opening_.height).mm()});
        if (now.from < 0) set_on_foundation(now);
        if (!edges.is_measured() || !can_be(now)) return;
        opening_.sill = Length::mm(now.from), opening_.height = Length::mm(now.size());
        count((edges.low ? 1 : 0) + (edges.high ? 1 : 0), edges.size);
    }

    /// The foundation lies where the lowest log does.
    void set_on_foundation(Stretch &now) {
        if (-now.from > tape_tolerance)
            tell("opening-under-logs",
                 said("its sill lies %1 under the lowest log by its level: it is set on the foundation",
                      in_mm(-now.from)),
                 said("read its level again, and those of the logs of the first round"));
        now.from = 0;
    }

    /// Of levels that nothing can be made of it is said why.
    void tell_not_levelled(bool read) {
        if (!taken(recorded_.sill) && !taken(recorded_.head)) return;
        if (!read)
            tell("opening-not-placed",
                 said("its levels are not in the model: nothing says which level plane they were read from"),
                 said("name a plane of the record, with its offset"));
        else if (!zero_)
            tell(
                "levels-without-sill",
                said(
                    "its levels are not in the model: none was read of a log of the first round, and nothing "
                    "tells how high it lies over that"),
                said("read the level and the height of a first log at its ends"));
    }

    bool can_be(const Stretch &now) {
        constexpr double least = 1; // mm: an opening at all
        if (now.size() >= least && now.from >= 0) return true;
        tell("opening-not-placed",
             said("by what was measured it would reach from %1 to %2: it stays as it is stated",
                  in_mm(now.from), in_mm(now.to)),
             said("measure it again, and look which corner and plane it was measured from"));
        return false;
    }

    void count(int edges, const std::optional<double> &size) {
        at_.made.taken += static_cast<std::size_t>(edges) + (size ? 1 : 0);
    }

    Rebuild &at_;
    const RecordedOpening &recorded_;
    Opening &opening_;
    std::optional<double> zero_;
    About place_;
    std::optional<Index<WallPlace>> wall_;
};

void tell_stranger(Rebuild &at, const RecordedOpening &recorded, std::size_t called_so) {
    if (!is_measured(recorded)) return;
    if (called_so > 1)
        return at.tell(
            "opening-not-in-plan", {about::All::openings},
            said("opening %1 was measured, and the plan has %2 of that name: its numbers are not in "
                 "the model",
                 recorded.name, called_so),
            said("give each opening a name of its own"));
    const Said what =
        recorded.wall.empty()
            ? said("opening %1 was measured, and the plan has none of that name: its numbers are not in the "
                   "model",
                   recorded.name)
            : said(
                  "opening %1 of wall %2 was measured, and the plan has none of that name there: its numbers "
                  "are not in the model",
                  recorded.name, recorded.wall);
    at.tell("opening-not-in-plan", {about::All::openings}, what,
            said("put it into the plan by eye, or mend its name"));
}

} // namespace

void set_openings(Rebuild &at) {
    const auto zero = lowest_level(at);
    for (const RecordedOpening &recorded : at.record.openings) {
        const auto called_so = openings_called(at.made.shell, recorded);
        if (called_so.size() != 1)
            tell_stranger(at, recorded, called_so.size());
        else
            OneOpening(at, recorded, called_so.front(), zero).set();
    }
}

} // namespace roundlay
