#include "exporters/report/report.h"

#include "exporters/report/parts.h"

namespace roundlay::sheets {

namespace {

/// All parts run on, so that one composes all.
std::vector<Sheet> drawn(const Draft &draft, const ReportSource &source) {
    ReportPages pages(draft, draft.words().say("Report on the house as it was found"));
    summary_part(pages, draft, source);
    plan_part(pages, draft, source);
    for (const auto wall : draft.layout.walls.indices())
        wall_part(pages, draft, source, wall);
    for (const auto part :
         {corner_part, log_part, size_part, wood_part, photograph_part, measure_part, caution_part})
        part(pages, draft, source);
    return pages.finished();
}

} // namespace

SheetSet report_set(const ReportSource &source) {
    return {{"report", [source](const Draft &draft) { return drawn(draft, source); }}};
}

} // namespace roundlay::sheets
