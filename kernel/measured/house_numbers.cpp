#include "kernel/measured/house_numbers.h"

#include <algorithm>

namespace roundlay {

std::optional<double> taken(const NotedLength &number) {
    if (!number.value || number.certainty == Certainty::contradicted) return {};
    return number.value->mm();
}

std::optional<double> level_of(const Record &record, const NotedLength &level, const std::string &plane) {
    const auto read = taken(level);
    if (!read) return {};
    if (record.planes.empty()) return read;
    const auto at = plane.empty() && record.planes.size() == 1
                        ? record.planes.begin()
                        : std::ranges::find(record.planes, plane, &LevelPlane::name);
    if (at == record.planes.end()) return {};
    return *read + taken(at->offset).value_or(0);
}

namespace {

/// The walls that meet in a corner of the record, by their names.
bool joins(const RecordedCorner &corner, const std::string &a, const std::string &b) {
    return corner.walls.size() == 2 && std::ranges::count(corner.walls, a) == 1 &&
           std::ranges::count(corner.walls, b) == 1;
}

bool is_called(const Record &record, const Plan &plan, Index<CornerPlace> index, const std::string &name) {
    const CornerPlace &corner = plan.corners[index];
    if (corner.name == name) return true;
    return std::ranges::any_of(record.corners, [&](const RecordedCorner &recorded) {
        return recorded.name == name &&
               joins(recorded, plan.walls[corner.ends].name, plan.walls[corner.starts].name);
    });
}

EndNumbers numbers_of_end(const Record &record, const FoundEnd &end) {
    EndNumbers n;
    n.height = taken(end.height);
    n.width = taken(end.width);
    n.overhang = taken(end.overhang);
    if (!n.overhang && end.overhang.value) n.ran_past = end.overhang.value->mm();
    n.level = level_of(record, end.level, end.plane);
    n.tail = {taken(end.shoulder_outside), taken(end.shoulder_inside), taken(end.end_outside),
              taken(end.end_inside)};
    n.gap = taken(end.gap);
    return n;
}

class Gatherer {
  public:
    Gatherer(const Record &record, const Plan &plan, const Courses &courses)
        : record_(record), plan_(plan), courses_(courses) {}

    HouseNumbers all() {
        for (const auto w : plan_.walls.indices())
            numbers_.push_back(std::vector<LogNumbers>(courses_.logs[w].size()));
        for (const FoundLog &log : record_.logs)
            take(log);
        return std::move(numbers_);
    }

  private:
    void take(const FoundLog &log) {
        const auto wall = wall_named(plan_, log.place.wall);
        if (!wall || !log.place.round) return;
        auto &logs = numbers_[*wall];
        if (*log.place.round < 1 || *log.place.round > std::ssize(logs)) return;
        LogNumbers &to = logs[static_cast<std::size_t>(*log.place.round - 1)];
        to.logs.push_back(&log);
        for (const FoundEnd &end : log.ends)
            if (const auto at = end_at(record_, plan_, *wall, end.corner))
                to.ends[*at == LogEnd::left ? 0 : 1] = numbers_of_end(record_, end);
        if (const auto zero = end_at(record_, plan_, *wall, log.zero))
            take_stations(log, *zero, in_round(courses_.logs[*wall], *log.place.round), to);
    }

    /// Running dimensions start at the end of the log, its overhang included.
    static void take_stations(const FoundLog &log, LogEnd zero, const Course &course, LogNumbers &to) {
        for (const FoundStation &station : log.stations) {
            const auto at = taken(station.at);
            if (!at) continue;
            const double x = zero == LogEnd::left ? course.x_datum + *at : course.x_far - *at;
            to.stations.push_back(
                {log.tag, x, taken(station.height), taken(station.gap_below), taken(station.gap_above)});
        }
    }

    const Record &record_;
    const Plan &plan_;
    const Courses &courses_;
    HouseNumbers numbers_;
};

} // namespace

std::optional<LogEnd> end_at(const Record &record, const Plan &plan, Index<WallPlace> wall,
                             const std::string &corner) {
    if (corner.empty()) return {};
    const WallPlace &place = plan.walls[wall];
    if (is_called(record, plan, place.start_corner, corner)) return LogEnd::left;
    if (is_called(record, plan, place.end_corner, corner)) return LogEnd::right;
    return {};
}

HouseNumbers numbers_by_log(const Record &record, const Plan &plan, const Courses &courses) {
    return Gatherer(record, plan, courses).all();
}

} // namespace roundlay
