#include "kernel/document/read_record.h"

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
    for (std::size_t i = 0; i < record.openings.size(); ++i)
        look("record.opening[" + std::to_string(i) + "].wall", record.openings[i].wall);
}

/// One round more than are stated lies in walls that start with a half log.
void warn_of_rounds(Reading &reading, const Record &record, const Shell &shell) {
    if (!shell.rounds.count) return;
    for (std::size_t i = 0; i < record.logs.size(); ++i) {
        const FoundLog &log = record.logs[i];
        if (!log.place.round || *log.place.round <= *shell.rounds.count + 1) continue;
        reading.warning(reading.places().locate("found[" + std::to_string(i) + "].round").value_or(Place{}),
                        "the shell has " + std::to_string(*shell.rounds.count) + " rounds, and log " +
                            quoted_for_message(log.tag) + " is noted in round " +
                            std::to_string(*log.place.round) +
                            ": look at the sheet again, or mend the shell's rounds");
    }
}

/// Who notes in feet is answered in feet, whatever the shell is stated in.
UnitSystem units_of(const Record &record, const Shell &shell) {
    const auto &unit = record.notation.unit;
    if (unit)
        return *unit == NoteUnit::inch || *unit == NoteUnit::foot ? UnitSystem::imperial : UnitSystem::metric;
    if (record.notation.denominator || record.notation.two_fields) return UnitSystem::imperial;
    return shell.units;
}

} // namespace

void check_record(Reading &reading, Record &record, const Shell &shell) {
    const LengthStyle style{.system = units_of(record, shell)};
    const auto report = [&](const std::vector<RecordProblem> &problems) {
        for (const RecordProblem &problem : problems) {
            if (problem.path.ends_with(".tag") && !reading.places().states(problem.path))
                continue; // told: missing
            const Place place = reading.places().locate(problem.path).value_or(Place{});
            reading.report(problem.refused ? Weight::error : Weight::warning, place, problem.what, style);
        }
    };
    report(told_once(read_numbers(record)));
    report(contradictions(record));
    warn_of_walls(reading, record, shell);
    warn_of_rounds(reading, record, shell);
}

} // namespace roundlay
