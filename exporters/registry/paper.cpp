#include "exporters/registry/paper.h"

#include "exporters/sheets/cut_sheet/cut_sheet.h"
#include "exporters/sheets/cut_sheet/warnings.h"
#include "exporters/sheets/pdf/pdf.h"
#include "kernel/review/lifted.h"

#include <array>
#include <chrono>
#include <cstdio>

namespace roundlay {

namespace {

/// Year-month-day in UTC.
std::string day_of(std::int64_t seconds_since_1970) {
    using namespace std::chrono;
    const year_month_day day{floor<days>(sys_seconds{seconds{seconds_since_1970}})};
    std::array<char, 32> room{};
    std::snprintf(room.data(), room.size(), "%04d-%02u-%02u", static_cast<int>(day.year()),
                  static_cast<unsigned>(day.month()), static_cast<unsigned>(day.day()));
    return room.data();
}

} // namespace

sheets::SheetOptions sheet_options(const ExportJob &job) {
    sheets::SheetOptions options;
    options.paper = job.options.paper;
    options.fields.date = day_of(sheets::book_time());
    options.warnings = sheets::warnings_by_model(job.findings, job.shell, job.layout);
    options.weight = [&job](const Piece &piece, const Body &body) -> std::optional<sheets::WeightNote> {
        const Lifted l = lifted(job.shell, piece, body.volume);
        if (!l.piece.known) return {};
        return sheets::WeightNote{
            l.piece.low_kg,  l.piece.high_kg, l.piece.basis, l.blank.low_kg,
            l.blank.high_kg, l.log.low_kg,    l.log.high_kg, std::string(weight_caution)};
    };
    return options;
}

std::vector<sheets::Sheet> all_cut_sheets(const ExportJob &job, Progress &progress) {
    const sheets::SheetOptions options = sheet_options(job);
    const auto &models = job.layout.models;
    std::vector<sheets::Sheet> all;
    for (std::size_t i = 0; i < models.size(); ++i) {
        if (progress.cancelled()) return {};
        progress.at("cut sheets", static_cast<int>(i), static_cast<int>(models.size()));
        for (sheets::Sheet &sheet :
             sheets::cut_sheet(job.shell, job.layout, models[i], job.bodies[i], options))
            all.push_back(std::move(sheet));
    }
    return all;
}

std::vector<std::string> paper_cautions() {
    return {
        "Drawings show what was stated in the document and what follows from it, never an approval: loads, "
        "foundations, openings, fastenings and bearings are for local code and a licensed professional to "
        "decide.",
        std::string(weight_caution),
        "Check the first log of each kind against its sheet and its neighbours before the next are cut. Wood "
        "moves as it dries: dimensions are those of the day of cutting."};
}

std::optional<ExportFailure> add_pdf(const ExportJob &job, OutputFolder &folder, const std::string &name,
                                     const std::string &what, std::vector<sheets::Sheet> pages) {
    sheets::Book book;
    book.title = (job.shell.name.empty() ? "Log shell" : job.shell.name) + ": " + what;
    book.subject = what;
    book.sheets = std::move(pages);
    sheets::number_pages(book.sheets);
    return add_file(folder, name, sheets::write_pdf(book), what);
}

} // namespace roundlay
