#include "exporters/report/found_numbers.h"
#include "exporters/report/parts.h"
#include "exporters/sheets/drawing/columns.h"
#include "kernel/measured/measured_shell.h"
#include "kernel/measured/opening_numbers.h"
#include "kernel/record/check_record.h"

#include <cmath>
#include <optional>

namespace roundlay::sheets {

namespace {

std::string unit_word(NoteUnit unit) {
    switch (unit) {
    case NoteUnit::mm:
        return "mm";
    case NoteUnit::cm:
        return "cm";
    case NoteUnit::m:
        return "m";
    case NoteUnit::inch:
        return "in";
    case NoteUnit::foot:
        break;
    }
    return "ft";
}

} // namespace

std::string notation_words(const Notation &notation, const Words &words) {
    std::vector<std::string> all;
    if (notation.denominator)
        all.push_back(words.say("3.10.1 is 3 ft 10 in and 1/%1 in", *notation.denominator));
    if (notation.two_fields)
        all.push_back(*notation.two_fields == TwoFields::feet_and_inches ? words.say("3.10 is 3 ft 10 in")
                                                                         : words.say("3.10 is decimal feet"));
    if (notation.unit) all.push_back(words.say("bare numbers are %1", unit_word(*notation.unit)));
    return joined(all);
}

namespace {

Table sheet_table(const Record &record, const Words &words) {
    Table table = table_called(words, words.say("Field sheets"));
    table.columns = {flush_left(words.say("Sheet"), 30), flush_left(words.say("How its numbers count"), 90),
                     flush_left(words.say("By, on"), 45)};
    table.rows.push_back({words.say("all others"), notation_words(record.notation, words),
                          by_and_on(record.by, record.on, words)});
    for (const FieldSheet &sheet : record.sheets)
        table.rows.push_back(
            {sheet.name, notation_words(sheet.notation, words), by_and_on(sheet.by, sheet.on, words)});
    return table;
}

Table plane_table(const Record &record, const Words &words) {
    Table table = table_called(words, words.say("Level planes"));
    table.columns = {flush_left(words.say("Plane"), 25), flush_left(words.say("Over the first"), 40),
                     flush_left(words.say("Its marks"), 100)};
    for (const LevelPlane &plane : record.planes)
        table.rows.push_back({plane.name, noted_words(plane.offset, words), plane.where});
    return table;
}

Table doubtful_table(const Record &record, const Words &words) {
    Table table = table_called(words, words.say("Numbers that are proposed, contradicted or open"));
    table.columns = {flush_left(words.say("Tag"), 24), flush_left(words.say("What"), 55),
                     flush_left(words.say("As noted"), 45), flush_left(words.say("By, on"), 45)};
    for (const DoubtfulNumber &each : doubtful_numbers(record, words)) {
        const std::string written = noted_words(each.number, words);
        table.rows.push_back({each.log->tag, each.what,
                              each.number.value ? written : words.say("%1 (open)", written),
                              by_and_on(each.number.by.empty() ? each.log->by : each.number.by,
                                        each.number.on.empty() ? each.log->on : each.number.on, words)});
    }
    return table;
}

/// Which log or opening of the record a problem is about.
std::string subject_of(const std::string &path, const Record &record, const Words &words) {
    const auto entry = [&](const std::string &list) -> std::optional<std::size_t> {
        if (!path.starts_with(list + "[")) return {};
        return static_cast<std::size_t>(std::stoul(path.substr(list.size() + 1)));
    };
    if (const auto log = entry("found")) return words.say("log %1", record.logs.at(*log).tag);
    if (const auto opening = entry("record.opening"))
        return words.say("opening %1", record.openings.at(*opening).name);
    return "";
}

/// Where the numbers of an opening say two things of its size: as the measured house tells it.
std::vector<Said> measured_twice(const Record &record, const RecordedOpening &opening) {
    std::vector<Said> all;
    const auto differ = [](const std::optional<double> &a, const std::optional<double> &b) {
        return a && b && std::abs(*a - *b) > told_from;
    };
    const Jambs jambs = jambs_of(opening);
    const auto width = taken(opening.width), height = taken(opening.height);
    if (jambs.near && jambs.far)
        if (const double by = *jambs.far - *jambs.near; differ(width, by))
            all.push_back(said(
                "it was measured %1 wide, and by its jambs it is %2, a difference of %3: the jambs are taken",
                in_mm(*width), in_mm(by), in_mm(std::abs(*width - by))));
    const auto sill = level_of(record, opening.sill, opening.plane),
               head = level_of(record, opening.head, opening.plane);
    if (sill && head)
        if (const double by = *head - *sill; differ(height, by))
            all.push_back(said("it was measured %1 high, and by its levels it is %2, a difference of %3: the "
                               "levels are taken",
                               in_mm(*height), in_mm(by), in_mm(std::abs(*height - by))));
    return all;
}

/// What the record says against itself.
Table contradiction_table(const Record &record, const Words &words) {
    Table table = table_called(words, words.say("Measures that do not agree, or cannot be placed"));
    table.columns = {flush_left(words.say("What it is about"), 50),
                     flush_left(words.say("What is said"), 120)};
    for (const RecordProblem &problem : told_once(contradictions(record)))
        table.rows.push_back({subject_of(problem.path, record, words), words.words(problem.what)});
    for (const RecordedOpening &opening : record.openings)
        for (const Said &what : measured_twice(record, opening))
            table.rows.push_back({words.say("opening %1", opening.name), words.words(what)});
    return table;
}

} // namespace

void measure_part(ReportPages &pages, const Draft &, const ReportSource &source) {
    pages.begin_part(pages.words().say("How it was measured"), "report-measures");
    const Record &record = *source.record;
    const Words &words = pages.words();
    pages.add_text(
        words.say("Numbers stay as they stand on the field sheets. What was not measured is proposed by "
                  "a rule or by the drawing, and is no finding."));
    pages.add(sheet_table(record, words));
    for (const Table &table :
         {plane_table(record, words), doubtful_table(record, words), contradiction_table(record, words)})
        if (!table.rows.empty()) pages.add(table);
}

} // namespace roundlay::sheets
