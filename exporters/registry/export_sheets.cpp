#include "exporters/registry/exporters.h"
#include "exporters/sheets/cut_sheet/cut_sheet.h"
#include "exporters/sheets/pdf/pdf.h"
#include "kernel/trade/weight.h"

namespace roundlay {

namespace {

sheets::CutSheetOptions options_of(const ExportJob &job) {
    sheets::CutSheetOptions options;
    options.paper = job.options.paper;
    options.weight = [&job](const Piece &, const Body &body) -> std::optional<sheets::WeightNote> {
        const WeightEstimate weight = weigh(body.volume, job.shell.wood);
        if (!weight.known) return {};
        return sheets::WeightNote{weight.low_kg, weight.high_kg, weight.basis};
    };
    return options;
}

} // namespace

std::optional<ExportFailure> export_sheets(const ExportJob &job, OutputFolder &folder, Progress &progress) {
    const sheets::CutSheetOptions options = options_of(job);
    const auto &models = job.layout.models;
    sheets::Book book;
    book.title = job.shell.name + ": cut sheets";
    book.subject = "one cut sheet for each distinct piece";
    for (std::size_t i = 0; i < models.size(); ++i) {
        if (progress.cancelled()) return stopped();
        progress.at("cut sheets", static_cast<int>(i), static_cast<int>(models.size()));
        for (sheets::Sheet &sheet :
             sheets::cut_sheet(job.shell, job.layout, models[i], job.bodies[i], options))
            book.sheets.push_back(std::move(sheet));
    }
    return add_file(folder, "cut-sheets.pdf", sheets::write_pdf(book), std::string(book.subject));
}

} // namespace roundlay
