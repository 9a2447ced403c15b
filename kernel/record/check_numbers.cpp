#include "kernel/record/check_numbers.h"

#include "kernel/record/numbers.h"

#include <algorithm>
#include <functional>
#include <map>

namespace roundlay {

namespace {

constexpr double longest = 100'000; // mm, as of a wall
constexpr double thickest = 2'000;

/// Nothing where it is a length that such a number can be.
std::optional<Said> out_of_range(const NotedLength &reading, NumberRange range) {
    const double mm = reading.value->mm();
    const double most = range == NumberRange::size || range == NumberRange::gap ? thickest : longest;
    switch (range) {
    case NumberRange::size:
        if (mm > 0 && mm <= most) break;
        return said("%1 is not over 0 and up to %2: look at the sheet again", reading.written, in_mm(most));
    case NumberRange::along:
    case NumberRange::gap:
        if (mm >= 0 && mm <= most) break;
        return said("%1 is not from 0 to %2: look at the sheet again", reading.written, in_mm(most));
    case NumberRange::up_or_down:
        if (mm >= -most && mm <= most) break;
        return said("%1 is over %2 up or down: look at the sheet again", reading.written, in_mm(most));
    }
    return std::nullopt;
}

/// A number among those that should be much like it: heights of ends, the lengths of one wall.
struct Among {
    std::string path;
    const NotedLength *reading;
};
using Alike = std::map<std::string, std::vector<Among>>;

/// "found[].end[].height", and of a length along a log the wall as well.
std::string likeness(const std::string &path, NumberRange range, const FoundLog &log) {
    std::string kind;
    bool inside = false;
    for (const char c : path) {
        inside = c == '[' || (inside && c != ']');
        if (!inside) kind += c;
    }
    if (range == NumberRange::along) kind += " of " + log.place.wall;
    return kind;
}

bool is_compared(const std::string &path, NumberRange range) {
    return path.starts_with("found[") &&
           (range == NumberRange::size || path.ends_with(".length") || path.ends_with(".between_shoulders"));
}

double middle_of(const std::vector<Among> &all) {
    std::vector<double> sizes;
    for (const Among &each : all)
        sizes.push_back(each.reading->value->mm());
    const auto middle = sizes.begin() + static_cast<std::ptrdiff_t>(sizes.size() / 2);
    std::nth_element(sizes.begin(), middle, sizes.end());
    return *middle;
}

void tell_strangers(const std::vector<Among> &all, std::vector<RecordProblem> &problems) {
    constexpr std::size_t fewest = 4; // of which one can be the slip
    constexpr double strange = 8; // under the 10 of cm for mm and the 25.4 of inches; our choice, no source
    if (all.size() < fewest) return;
    const double middle = middle_of(all);
    for (const Among &each : all) {
        const double size = each.reading->value->mm();
        if (size < middle * strange && size * strange > middle) continue;
        problems.push_back({false, each.path,
                            said("%1 is %2, where others like it are about %3: was it noted in another unit?",
                                 each.reading->written, in_mm(size), in_mm(middle))});
    }
}

/// Notes that stay open for want of one thing: what the survey says as a whole apart from its logs, whose
/// numbers somebody else may have noted.
struct OpenNotes {
    OpenNote lacks;
    bool of_logs;
    std::string first;             ///< as it was noted
    std::vector<std::size_t> told; ///< in the list of problems
};

} // namespace

std::vector<RecordProblem> read_numbers(Record &record) {
    std::vector<RecordProblem> problems;
    each_number(record, [&](const NumberAt &at, NotedLength &reading) {
        const NoteValue read = read_note(reading.written, notation_of(record, at.sheet));
        reading.value.reset();
        if (const auto *trouble = std::get_if<NoteTrouble>(&read)) {
            problems.push_back({!trouble->open, at.path, trouble->what});
            if (!trouble->open) return;
            problems.back().lacks = trouble->lacks, problems.back().written = reading.written;
            return;
        }
        reading.value = std::get<Length>(read);
        if (auto out = out_of_range(reading, at.range)) problems.push_back({true, at.path, std::move(*out)});
    });
    return problems;
}

std::vector<RecordProblem> told_once(std::vector<RecordProblem> problems) {
    constexpr std::size_t few = 3; // who forgot to say the unit forgot it once
    std::vector<OpenNotes> all;
    for (std::size_t i = 0; i < problems.size(); ++i) {
        const RecordProblem &problem = problems[i];
        if (!problem.lacks) continue;
        const bool of_logs = problem.path.starts_with("found[");
        const auto alike = std::ranges::find_if(
            all, [&](const OpenNotes &o) { return o.lacks == *problem.lacks && o.of_logs == of_logs; });
        if (alike != all.end())
            alike->told.push_back(i);
        else
            all.push_back({*problem.lacks, of_logs, problem.written, {i}});
    }
    std::vector<std::size_t> left_out;
    for (const OpenNotes &each : all) {
        if (each.told.size() <= few) continue;
        problems[each.told.front()].what = told_of_all(each.lacks, each.told.size(), each.first);
        left_out.insert(left_out.end(), each.told.begin() + 1, each.told.end());
    }
    std::ranges::sort(left_out, std::greater<>());
    for (const std::size_t i : left_out)
        problems.erase(problems.begin() + static_cast<std::ptrdiff_t>(i));
    return problems;
}

void tell_strange_numbers(const Record &record, std::vector<RecordProblem> &problems) {
    Alike alike;
    for (std::size_t i = 0; i < record.logs.size(); ++i)
        each_number_of(record.logs[i], log_path(i), [&](const NumberAt &at, const NotedLength &reading) {
            if (reading.value && reading.value->mm() > 0 && is_compared(at.path, at.range))
                alike[likeness(at.path, at.range, record.logs[i])].push_back({at.path, &reading});
        });
    for (const auto &[kind, all] : alike)
        tell_strangers(all, problems);
}

} // namespace roundlay
