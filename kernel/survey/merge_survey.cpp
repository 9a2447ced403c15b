#include "kernel/document/key.h"
#include "kernel/record/numbers.h"
#include "kernel/survey/survey.h"
#include "kernel/survey/survey_cells.h"
#include "kernel/survey/survey_parts.h"

#include <algorithm>
#include <limits>

namespace roundlay {

namespace {

const SurveyPart &part_named(const std::string &name) {
    return *std::ranges::find(survey_parts(), name, &SurveyPart::name);
}

/// The same number, measured by whomever: two agree.
bool says_no_more(const format::Value &stands, const format::Value &other) {
    const auto *a = std::get_if<NotedLength>(&stands), *b = std::get_if<NotedLength>(&other);
    return a && b && a->written == b->written && a->certainty != Certainty::proposed &&
           b->certainty == Certainty::measured;
}

/// Where a rule has put a number in, a measured one is no contradiction.
bool was_only_proposed(const format::Value &stands) {
    const auto *noted = std::get_if<NotedLength>(&stands);
    return noted && noted->certainty == Certainty::proposed;
}

/// Of what a value is told.
struct ToldOf {
    std::string tag, of;
};

void merge_keys(Merged &out, const ToldOf &told, bool replace, const SurveyPart &part, void *into,
                const void *from) {
    for (const format::Item &item : part.section->table->items) {
        const auto &key = std::get<format::Key>(item);
        const auto stands = key.value(into), other = key.value(from);
        if (part.of_house && part.by.empty() &&
            (key.name == std::string("from") || key.name == std::string("to")))
            continue; // what it is known by, in whatever order
        if (!other || stands == other || (stands && says_no_more(*stands, *other))) continue;
        const bool differs = stands && !was_only_proposed(*stands);
        if (differs)
            out.conflicts.push_back({told.tag, told.of, key.name, cell_of(key.kind, *stands, false),
                                     cell_of(key.kind, *other, false)});
        if (differs && !replace) continue;
        key.set(into, *other);
        ++out.values;
    }
}

/// Takes what another record says into one log.
class Merging {
  public:
    Merging(Merged &out, FoundLog &log, bool replace) : out_(out), log_(log), replace_(replace) {}

    void keys(const SurveyPart &part, void *into, const void *from, const std::string &of) {
        merge_keys(out_, {log_.tag, of}, replace_, part, into, from);
    }
    template <typename Part, typename Known>
    void known(const char *name, std::vector<Part> FoundLog::*list, const FoundLog &from, Known known_by,
               std::size_t most = std::numeric_limits<std::size_t>::max());
    template <typename Part> void others(std::vector<Part> FoundLog::*list, const FoundLog &from);

  private:
    Merged &out_;
    FoundLog &log_;
    bool replace_;
};

/// "SE, front door": by what each is known.
template <typename Part, typename Known>
std::string all_known(const std::vector<Part> &parts, Known known_by) {
    std::string all;
    for (const Part &part : parts)
        all += (all.empty() ? "" : ", ") + known_by(part);
    return all;
}

constexpr std::size_t most_ends = 2; // of a log

/// Those that are known by something are the same ones.
template <typename Part, typename Known>
void Merging::known(const char *name, std::vector<Part> FoundLog::*list, const FoundLog &from, Known known_by,
                    std::size_t most) {
    for (const Part &part : from.*list) {
        if (std::ranges::find(log_.*list, part) != (log_.*list).end()) continue;
        const auto same = std::ranges::find(log_.*list, known_by(part), known_by);
        if (same != (log_.*list).end() && !known_by(part).empty())
            keys(part_named(name), &*same, &part, name + (" " + known_by(part)));
        else if ((log_.*list).size() >= most)
            out_.conflicts.push_back(
                {log_.tag, name, "corner", all_known(log_.*list, known_by), known_by(part)});
        else
            (log_.*list).push_back(part), ++out_.values;
    }
}

template <typename Part> void Merging::others(std::vector<Part> FoundLog::*list, const FoundLog &from) {
    for (const Part &part : from.*list)
        if (std::ranges::find(log_.*list, part) == (log_.*list).end())
            (log_.*list).push_back(part), ++out_.values;
}

/// The log alone, to be asked for its numbers.
Record alone(const FoundLog &log) {
    Record record;
    record.logs = {log};
    return record;
}

bool has_numbers(const FoundLog &log) {
    bool any = false;
    Record record = alone(log);
    each_number(record, [&](const NumberAt &, NotedLength &) { any = true; });
    return any;
}

/// Who says so, and when, said with each number and test of a log instead of once with the log.
FoundLog attributed(const FoundLog &log) {
    Record record = alone(log);
    const auto say = [&](std::string &by, std::string &on) {
        if (!by.empty() || !on.empty()) return;
        by = log.by, on = log.on;
    };
    each_number(record, [&](const NumberAt &, NotedLength &number) { say(number.by, number.on); });
    for (WoodTest &test : record.logs[0].tests)
        say(test.by, test.on);
    for (MoistureReading &reading : record.logs[0].moistures)
        say(reading.by, reading.on);
    record.logs[0].by.clear(), record.logs[0].on.clear();
    return record.logs[0];
}

/// Without what would be read otherwise by another sheet.
FoundLog without_numbers(const FoundLog &log) {
    Record record = alone(log);
    each_number(record, [](const NumberAt &, NotedLength &number) { number = {}; });
    FoundLog left = record.logs[0];
    left.sheet.clear();
    left.ends.clear(), left.stations.clear(), left.zones.clear(), left.tests.clear();
    left.moistures.clear(), left.pegs.clear(), left.later_cuts.clear();
    return left;
}

/// What of a log can stand beside what is there.
FoundLog fitting(Merged &out, const FoundLog &into, const FoundLog &from) {
    FoundLog fits = from.by == into.by && from.on == into.on ? from : attributed(from);
    if (from.sheet == into.sheet || !has_numbers(into) || !has_numbers(from)) return fits;
    out.conflicts.push_back({into.tag, "", "sheet", into.sheet, from.sheet});
    return without_numbers(fits);
}

void merge_log(Merged &out, FoundLog &into, const FoundLog &other, bool replace) {
    const FoundLog from = fitting(out, into, other);
    Merging merging(out, into, replace);
    merging.keys(part_named("log"), &into, &from, "");
    merging.known(
        "end", &FoundLog::ends, from, [](const FoundEnd &end) { return end.corner; }, most_ends);
    merging.known("station", &FoundLog::stations, from,
                  [](const FoundStation &station) { return station.at.written; });
    merging.known("zone", &FoundLog::zones, from, [](const ConditionZone &zone) {
        return zone.from.is_taken() ? zone.from.written + " to " + zone.to.written : std::string();
    });
    merging.others(&FoundLog::tests, from);
    merging.others(&FoundLog::moistures, from);
    merging.known("peg", &FoundLog::pegs, from, [](const FoundPeg &peg) { return peg.at.written; });
    merging.known("later_cut", &FoundLog::later_cuts, from,
                  [](const LaterCut &cut) { return cut.at.written; });
    merging.others(&FoundLog::decisions, from);
}

std::string sheet_of(const SurveyPart &part, const void *owner) {
    const format::Key *key = survey_key(part, "sheet");
    const auto value = key ? key->value(owner) : std::nullopt;
    return value ? std::get<std::string>(*value) : std::string();
}

bool has_numbers(const SurveyPart &part, const void *owner) {
    return std::ranges::any_of(part.section->table->items, [&](const format::Item &item) {
        const auto value = std::get<format::Key>(item).value(owner);
        return value && std::holds_alternative<NotedLength>(*value);
    });
}

bool say_the_same(const SurveyPart &part, const void *a, const void *b) {
    return std::ranges::all_of(part.section->table->items, [&](const format::Item &item) {
        const auto &key = std::get<format::Key>(item);
        return key.value(a) == key.value(b);
    });
}

bool is_said(const SurveyPart &part, const Record &record, const void *other) {
    for (std::size_t i = 0; i < part.section->size(&record); ++i)
        if (say_the_same(part, part.section->at(&record, i), other)) return true;
    return false;
}

/// Walls, corners, diagonals, openings and level planes, each by what it is known by.
void merge_house(Merged &out, const Record &from, bool replace) {
    for (const SurveyPart &part : house_parts())
        for (std::size_t i = 0; i < part.section->size(&from); ++i) {
            const void *other = part.section->at(&from, i);
            if (is_said(part, out.record, other)) continue;
            const std::string name = known_as(part, other);
            void *into = const_cast<void *>(one_known_as(part, out.record, name)); // ours
            if (!into) {
                part.section->add(&out.record, other), ++out.values;
            } else if (sheet_of(part, into) != sheet_of(part, other) && has_numbers(part, into) &&
                       has_numbers(part, other)) {
                out.conflicts.push_back({name, "", "sheet", sheet_of(part, into), sheet_of(part, other)});
            } else {
                merge_keys(out, {name, ""}, replace, part, into, other);
            }
        }
}

} // namespace

Merged merged(const Record &into, const Record &from, bool replace) {
    Merged out{into, {}, 0, 0};
    merge_keys(out, {survey_head().name, ""}, replace, survey_head(), &out.record, &from);
    merge_house(out, from, replace);
    for (const FoundLog &log : from.logs) {
        const auto same = std::ranges::find(out.record.logs, log.tag, &FoundLog::tag);
        if (same != out.record.logs.end() && *same == log) continue;
        if (same != out.record.logs.end())
            merge_log(out, *same, log, replace);
        else
            out.record.logs.push_back(log), ++out.logs;
    }
    return out;
}

} // namespace roundlay
