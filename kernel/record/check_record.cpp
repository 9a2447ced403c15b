#include "kernel/record/check_record.h"

#include "kernel/measure/said_number.h"
#include "kernel/record/check_names.h"
#include "kernel/record/check_numbers.h"
#include "kernel/record/numbers.h"
#include "kernel/record/places.h"

namespace roundlay {

namespace {

Said shortest(double number) {
    constexpr int figures = 6;
    return in_figures(number, figures);
}

/// Numbers of one log that exclude one another.
class OneLog {
  public:
    OneLog(const FoundLog &log, std::string path, std::vector<RecordProblem> &problems)
        : log_(log), path_(std::move(path)), problems_(problems) {}

    void check() {
        if (log_.between_shoulders.value && log_.length.value &&
            *log_.between_shoulders.value > *log_.length.value)
            tell("between_shoulders",
                 said("%1 between shoulders is more than the %2 over all: measure one of them again",
                      log_.between_shoulders.written, log_.length.written));
        check_zones();
        past_end();
        check_zero();
        for (std::size_t i = 0; i < log_.moistures.size(); ++i)
            check_moisture(log_.moistures[i], "moisture[" + std::to_string(i) + "]");
    }

  private:
    void tell(const std::string &at, Said what, bool refused = false) {
        problems_.push_back({refused, path_ + "." + at, std::move(what)});
    }

    /// Without it nobody knows which end a place is near: it is kept as it was noted, and drawn nowhere.
    void check_zero() {
        if (auto parts = log_.zero.empty() ? parts_with_places(log_) : std::nullopt)
            tell("zero", said("places along log %1 were noted (%2), and not from which corner: state it as "
                              "its zero; until then they are drawn nowhere",
                              log_.tag, *std::move(parts)));
    }

    void check_moisture(const MoistureReading &moisture, const std::string &at) {
        constexpr double least = 1; // our choice: below it a share of one was typed where percent stand
        if (!moisture.season || !moisture.depth.is_taken())
            tell(at,
                 said("a moisture says little without its season and the depth of its probe: state both"));
        if (moisture.percent > 0 && moisture.percent < least)
            tell(
                at + ".percent",
                said("a moisture of %1 in a hundred is less than wood in a house has: was it a share of one, "
                     "and %2 meant?",
                     shortest(moisture.percent), shortest(100 * moisture.percent)));
    }

    void check_zones() {
        for (std::size_t i = 0; i < log_.zones.size(); ++i) {
            const ConditionZone &zone = log_.zones[i];
            if (zone.from.value && zone.to.value && *zone.to.value < *zone.from.value)
                tell("zone[" + std::to_string(i) + "].to",
                     said("the zone ends at %1, before its beginning at %2: put the two in order",
                          zone.to.written, zone.from.written),
                     true);
        }
    }

    /// A zone that begins past the end ends there too, and is told once.
    void past_end() {
        if (!log_.length.value) return;
        for (const PlaceAlong &place : places_along(log_))
            if (place.key != "from" && place.number.value && *place.number.value > *log_.length.value)
                tell(path_of(place),
                     said("%1 lies past the end of the log, which is %2 long: measure one of them again",
                          place.number.written, log_.length.written));
    }

    const FoundLog &log_;
    std::string path_;
    std::vector<RecordProblem> &problems_;
};

/// Numbers of one opening of which the second cannot be less than the first.
void check_opening(const RecordedOpening &opening, const std::string &path,
                   std::vector<RecordProblem> &problems) {
    const auto less = [&](const NotedLength &first, const NotedLength &second, const char *key, Said what) {
        if (first.value && second.value && *second.value <= *first.value)
            problems.push_back({false, path + "." + key, std::move(what)});
    };
    const bool jamb_noted = opening.near_at_sill.is_taken() || opening.near_at_head.is_taken() ||
                            opening.far_at_sill.is_taken() || opening.far_at_head.is_taken();
    if (opening.zero.empty() && jamb_noted)
        problems.push_back({false, path + ".zero",
                            said("jambs of opening %1 were noted, and not from which corner: state it as its "
                                 "zero; until then it is put nowhere by them",
                                 opening.name)});
    const auto jambs = [&](const NotedLength &near, const NotedLength &far, const char *key) {
        less(
            near, far, key,
            said(
                "the jamb at %1 does not stand further from the corner than the one at %2: look which corner "
                "they were measured from",
                far.written, near.written));
    };
    jambs(opening.near_at_sill, opening.far_at_sill, "far_at_sill");
    jambs(opening.near_at_head, opening.far_at_head, "far_at_head");
    less(opening.sill, opening.head, "head",
         said("the head at %1 does not lie over the sill at %2: look at their signs again",
              opening.head.written, opening.sill.written));
}

} // namespace

std::vector<RecordProblem> contradictions(const Record &record) {
    std::vector<RecordProblem> problems;
    tell_wrong_names(record, problems);
    tell_ticked_twice(record, problems);
    for (std::size_t i = 0; i < record.openings.size(); ++i)
        check_opening(record.openings[i], "record.opening[" + std::to_string(i) + "]", problems);
    for (std::size_t i = 0; i < record.logs.size(); ++i)
        OneLog(record.logs[i], log_path(i), problems).check();
    tell_strange_numbers(record, problems);
    return problems;
}

} // namespace roundlay
