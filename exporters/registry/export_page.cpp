#include "exporters/lists/found_words.h"
#include "exporters/page/yard.h"
#include "exporters/registry/paper.h"
#include "exporters/sheets/cut_sheet/cut_sheet.h"

namespace roundlay {

std::optional<ExportFailure> export_page(const ExportJob &job, OutputFolder &folder, Progress &progress) {
    CutList list = collect_cut_list(job.shell, job.layout, volumes_of(job.bodies), job.options.language);
    tell_found(list, *job.record, job.layout);
    const Ticked ticked = ticked_of(*job.record, job.layout, job.shell.state);
    Yard yard = yard_of({job.shell, job.layout, job.bodies, list, job.findings, ticked});
    const auto sheets = sheets_of(job, sheets::cut_sheet_set(job.layout), "page", progress);
    if (progress.cancelled()) return stopped();
    for (const Index<Model> model : yard.sheets.indices())
        yard.sheets[model] = sheets.at(model.at());
    return add_file(folder, "yard.html", write_page(yard),
                    voice_of(job).say("the shell for a phone: turn it, tap a log, step through the raise"));
}

} // namespace roundlay
