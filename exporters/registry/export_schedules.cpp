#include "exporters/registry/paper.h"
#include "exporters/sheets/schedule/schedules.h"

namespace roundlay {

std::optional<ExportFailure> export_schedules(const ExportJob &job, OutputFolder &folder,
                                              Progress &progress) {
    return add_pdf(job, folder,
                   {"schedules.pdf",
                    said("openings, pegs and rods, sticks to order, floors and the raise, as tables"),
                    "schedules", sheets::schedule_set()},
                   progress);
}

} // namespace roundlay
