#include "exporters/report/report.h"

#include "exporters/report/parts.h"

namespace roundlay::sheets {

namespace {

using Part = std::vector<Sheet> (*)(const Draft &draft, const ReportSource &source);

Subject subject_of(const char *about, Part part, const ReportSource &source) {
    return {about, [part, source](const Draft &draft) { return part(draft, source); }};
}

} // namespace

SheetSet report_set(const Layout &layout, const ReportSource &source) {
    SheetSet set{subject_of("report: summary", summary_part, source),
                 subject_of("report: plan", plan_part, source)};
    for (const auto wall : layout.walls.indices())
        set.push_back({"report: wall " + std::to_string(wall.number() + 1),
                       [wall, source](const Draft &draft) { return wall_part(draft, source, wall); }});
    for (const auto &[about, part] : {std::pair<const char *, Part>{"report: corners", corner_part},
                                      {"report: logs", log_part},
                                      {"report: wood", wood_part},
                                      {"report: photographs", photograph_part},
                                      {"report: measures", measure_part},
                                      {"report: cautions", caution_part}})
        set.push_back(subject_of(about, part, source));
    return set;
}

} // namespace roundlay::sheets
