#include "exporters/operation_sheets/operation_sheet.h"
#include "exporters/registry/paper.h"

namespace roundlay {

std::optional<ExportFailure> export_operation_sheets(const ExportJob &job, OutputFolder &folder,
                                                     Progress &progress) {
    sheets::SheetSet set = sheets::operation_sheet_set(job.layout);
    if (set.empty())
        return ExportFailure{Trouble::nothing,
                             voice_of(job).say("no sheets of operations were made: all pieces "
                                               "are old wood that stays")};
    const PaperFile file{"operation-sheets.pdf",
                         said("sheets of operations, a proposal; see the caution on each"), "operations",
                         std::move(set)};
    return add_pdf(job, folder, file, progress);
}

} // namespace roundlay
