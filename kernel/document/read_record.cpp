#include "kernel/document/read_record.h"

#include "kernel/document/said_text.h"
#include "kernel/document/table_reading.h"
#include "kernel/record/check_record.h"

#include <algorithm>

namespace roundlay {

namespace {

/// A record outlives the plan: a wall that is called otherwise by now is told, and nothing is refused.
void warn_of_walls(Reading &reading, const Record &record, const Shell &shell) {
    const auto names = wall_names(shell);
    const auto look = [&](const std::string &path, const std::string &wall) {
        if (wall.empty() || std::ranges::find(names, wall) != names.end()) return;
        reading.warning(reading.places().locate(path).value_or(Place{}),
                        "there is no wall " + quoted_for_message(wall) + did_you_mean(wall, names));
    };
    for (std::size_t i = 0; i < record.logs.size(); ++i)
        look("found[" + std::to_string(i) + "].wall", record.logs[i].place.wall);
    for (std::size_t i = 0; i < record.walls.size(); ++i)
        look("record.wall[" + std::to_string(i) + "].wall", record.walls[i].wall);
    for (std::size_t i = 0; i < record.corners.size(); ++i)
        for (const std::string &wall : record.corners[i].walls)
            look("record.corner[" + std::to_string(i) + "].walls", wall);
}

} // namespace

void check_record(Reading &reading, Record &record, const Shell &shell) {
    const LengthStyle style{.system = shell.units};
    const auto report = [&](const std::vector<RecordProblem> &problems) {
        for (const RecordProblem &problem : problems) {
            if (problem.path.ends_with(".tag") && !reading.places().states(problem.path))
                continue; // told: missing
            const Place place = reading.places().locate(problem.path).value_or(Place{});
            if (problem.refused)
                reading.error(place, english_of(problem.what, style));
            else
                reading.warning(place, english_of(problem.what, style));
        }
    };
    report(read_numbers(record));
    report(contradictions(record));
    warn_of_walls(reading, record, shell);
}

} // namespace roundlay
