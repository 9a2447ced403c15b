#include "exporters/registry/job.h"

#include "exporters/registry/drawn_pictures.h"
#include "exporters/registry/shared_order.h"
#include "exporters/sheets/set/composed_sheets.h"
#include "kernel/layout/lay_out.h"
#include "kernel/review/review.h"

namespace roundlay {

std::shared_ptr<sheets::ComposedSheets> no_sheets() {
    return std::make_shared<sheets::ComposedSheets>();
}

std::shared_ptr<DrawnPictures> no_pictures() {
    return std::make_shared<DrawnPictures>();
}

std::shared_ptr<SharedOrder> no_order() {
    return std::make_shared<SharedOrder>();
}

std::shared_ptr<const Record> no_record() {
    static const auto none = std::make_shared<const Record>();
    return none;
}

Voice voice_of(const ExportJob &job) {
    return Voice({job.options.language, job.shell.units});
}

const Layout &found_layout(const ExportJob &job) {
    return job.found ? job.found->layout : job.layout;
}

const Bodies &found_bodies(const ExportJob &job) {
    return job.found ? job.found->bodies : job.bodies;
}

ChosenPieces chosen_of(const ExportJob &job) {
    return chosen_pieces(job.options.pieces, found_layout(job), job.layout);
}

ExportJob make_job(Shell shell) {
    ExportJob job;
    job.shell = std::move(shell);
    job.layout = lay_out(job.shell);
    job.findings = job.layout.findings;
    if (has_errors(job.findings)) return job;
    job.bodies = bodies_of(job.layout);
    const Findings reviewed = review(job.shell, job.layout, job.bodies);
    job.findings.insert(job.findings.end(), reviewed.begin(), reviewed.end());
    return job;
}

} // namespace roundlay
