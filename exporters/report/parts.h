// The parts of a report; each in a file of its own, put on its pages one after the other.
#pragma once

#include "exporters/report/report.h"
#include "exporters/report/report_pages.h"
#include "exporters/sheets/form/form_logs.h"

#include <memory>

namespace roundlay::sheets {

/// Who, when and how exact; what was found, what is decided, how much old wood stays; what is open.
void summary_part(ReportPages &pages, const Draft &draft, const ReportSource &source);
/// The plan with what was measured of it, and what is decided wall by wall.
void plan_part(ReportPages &pages, const Draft &draft, const ReportSource &source);
/// A wall by decision and by the condition of its wood.
void wall_part(ReportPages &pages, const Draft &draft, const ReportSource &source, Index<WallPlace> wall);
void corner_part(ReportPages &pages, const Draft &draft, const ReportSource &source);
/// Every log in a row: condition, cause, urgency, decision.
void log_part(ReportPages &pages, const Draft &draft, const ReportSource &source);
/// Every log in a row: lengths, heights and widths as they were measured, wood and finish; then what was
/// measured along them.
void size_part(ReportPages &pages, const Draft &draft, const ReportSource &source);
/// Zones, tests, moisture, pegs, later cuts.
void wood_part(ReportPages &pages, const Draft &draft, const ReportSource &source);
void photograph_part(ReportPages &pages, const Draft &draft, const ReportSource &source);
/// What was measured, proposed and contradicted.
void measure_part(ReportPages &pages, const Draft &draft, const ReportSource &source);
void caution_part(ReportPages &pages, const Draft &draft, const ReportSource &source);

/// Tags in one line: "A 1, B 2".
std::string joined(const std::vector<std::string> &words);
/// The last decision; none where nobody has decided.
std::optional<Decision> last_decision(const FoundLog &log);
/// What the hatch of new wood in a mended log stands for.
std::string said_of_mend_areas(const Words &words);
/// "wall A, round 3, piece 1", as far as the record says.
std::string place_words(const FoundPlace &place, const Words &words);
/// As it was noted, and behind it what is said of it.
std::string noted_words(const NotedLength &number, const Words &words);
/// Of the record that is told and the layout of the house as it was found.
struct Telling {
    const Record &record;
    const Layout &layout;
    const Words &words;
};

/// "2.0.0 from SW", a place along a log. What lies past its end is never printed as if it were true.
std::string where(const NotedLength &at, const FoundLog &log, const Telling &of);
/// What a ? behind a place says.
std::string said_of_places_without_zero(const Words &words);
/// Who and when, of both as much as there is.
std::string by_and_on(const std::string &by, const std::string &on, const Words &words);

/// How the numbers of a sheet are to be read; empty where nobody said.
std::string notation_words(const Notation &notation, const Words &words);

} // namespace roundlay::sheets
