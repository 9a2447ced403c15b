#include "kernel/document/key.h"
#include "kernel/survey/survey.h"
#include "kernel/survey/survey_cells.h"
#include "kernel/survey/survey_parts.h"

#include <algorithm>

namespace roundlay {

namespace {

/// Takes what another record says into one log.
class Merging {
  public:
    Merging(Merged &out, FoundLog &log, bool replace) : out_(out), log_(log), replace_(replace) {}

    void keys(const SurveyPart &part, void *into, const void *from, const std::string &of);
    template <typename Part, typename Known>
    void known(const char *name, std::vector<Part> FoundLog::*list, const FoundLog &from, Known known_by);
    template <typename Part> void others(std::vector<Part> FoundLog::*list, const FoundLog &from);

  private:
    Merged &out_;
    FoundLog &log_;
    bool replace_;
};

const SurveyPart &part_named(const std::string &name) {
    return *std::ranges::find(survey_parts(), name, &SurveyPart::name);
}

/// The same number, with no more said of it than stands there.
bool says_no_more(const format::Value &stands, const format::Value &other) {
    const auto *a = std::get_if<NotedLength>(&stands), *b = std::get_if<NotedLength>(&other);
    return a && b && a->written == b->written && b->certainty == Certainty::measured && b->by.empty() &&
           b->on.empty();
}

/// Where a rule has put a number in, a measured one is no contradiction.
bool was_only_proposed(const format::Value &stands) {
    const auto *noted = std::get_if<NotedLength>(&stands);
    return noted && noted->certainty == Certainty::proposed;
}

void Merging::keys(const SurveyPart &part, void *into, const void *from, const std::string &of) {
    for (const format::Item &item : part.section->table->items) {
        const auto &key = std::get<format::Key>(item);
        const auto stands = key.value(into), other = key.value(from);
        if (!other || stands == other || (stands && says_no_more(*stands, *other))) continue;
        const bool differs = stands && !was_only_proposed(*stands);
        if (differs)
            out_.conflicts.push_back({log_.tag, of, key.name, cell_of(key.kind, *stands, false),
                                      cell_of(key.kind, *other, false)});
        if (differs && !replace_) continue;
        key.set(into, *other);
        ++out_.values;
    }
}

/// Those that are known by something are the same ones.
template <typename Part, typename Known>
void Merging::known(const char *name, std::vector<Part> FoundLog::*list, const FoundLog &from,
                    Known known_by) {
    for (const Part &part : from.*list) {
        const auto same = std::ranges::find(log_.*list, known_by(part), known_by);
        if (same != (log_.*list).end() && !known_by(part).empty())
            keys(part_named(name), &*same, &part, name + (" " + known_by(part)));
        else if (std::ranges::find(log_.*list, part) == (log_.*list).end())
            (log_.*list).push_back(part), ++out_.values;
    }
}

template <typename Part> void Merging::others(std::vector<Part> FoundLog::*list, const FoundLog &from) {
    for (const Part &part : from.*list)
        if (std::ranges::find(log_.*list, part) == (log_.*list).end())
            (log_.*list).push_back(part), ++out_.values;
}

void merge_log(Merged &out, FoundLog &into, const FoundLog &from, bool replace) {
    Merging merging(out, into, replace);
    merging.keys(part_named("log"), &into, &from, "");
    merging.known("end", &FoundLog::ends, from, [](const FoundEnd &end) { return end.corner; });
    merging.known("station", &FoundLog::stations, from,
                  [](const FoundStation &station) { return station.at.written; });
    merging.others(&FoundLog::zones, from);
    merging.others(&FoundLog::tests, from);
    merging.others(&FoundLog::moistures, from);
    merging.others(&FoundLog::pegs, from);
    merging.others(&FoundLog::later_cuts, from);
}

} // namespace

Merged merged(const Record &into, const Record &from, bool replace) {
    Merged out{into, {}, 0, 0};
    for (const FoundLog &log : from.logs) {
        const auto same = std::ranges::find(out.record.logs, log.tag, &FoundLog::tag);
        if (same != out.record.logs.end())
            merge_log(out, *same, log, replace);
        else
            out.record.logs.push_back(log), ++out.logs;
    }
    return out;
}

} // namespace roundlay
