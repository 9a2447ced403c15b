#include "exporters/registry/make_picture.h"
#include "exporters/registry/paper.h"
#include "exporters/sheets/drawing/words.h"
#include "exporters/sheets/pattern/templates.h"
#include "exporters/sheets/pdf/pdf.h"
#include "exporters/sheets/pole/story_pole.h"
#include "exporters/sheets/tag/tags.h"
#include "kernel/layout/standing.h"
#include "kernel/trade/weight.h"

#include <algorithm>

namespace roundlay {

namespace {

/// Half a page wide at 150 dots per inch: enough for paper, and small.
constexpr int picture_width = 1200, picture_height = 900;

std::vector<std::pair<std::string, std::string>> facts_of(const ExportJob &job) {
    const sheets::Words words(job.shell.units);
    double volume = 0;
    for (const Piece &piece : job.layout.pieces)
        volume += job.bodies.at(static_cast<std::size_t>(piece.model)).volume;
    const auto warnings = std::count_if(job.findings.begin(), job.findings.end(),
                                        [](const Finding &f) { return f.weight == Weight::warning; });
    std::vector<std::pair<std::string, std::string>> facts{
        {"Walls", std::to_string(job.layout.walls.size())},
        {"Rounds", round_words(job.layout)},
        {"Stands", height_words(job.layout, job.shell.units)},
        {"Logs", std::to_string(job.layout.pieces.size()) + ", " + std::to_string(job.layout.models.size()) +
                     " distinct"},
        {"Pegs", std::to_string(job.layout.pegs.size())},
        {"Wood", species_of(job.shell.wood) + (job.shell.wood.species.empty() ? ", as none is stated" : "")},
        {"Finished volume", words.volume(volume)},
    };
    const WeightEstimate weight = weigh(volume, job.shell.wood);
    if (weight.known) facts.emplace_back("Weight, estimated", words.weights(weight.low_kg, weight.high_kg));
    facts.emplace_back("Warnings of the check", std::to_string(warnings));
    return facts;
}

/// A machine that can make no picture still gets its book.
sheets::BookWords words_of(const ExportJob &job) {
    sheets::BookWords words;
    words.facts = facts_of(job);
    words.cautions = paper_cautions();
    ExportJob small = job;
    small.options.picture.width = picture_width;
    small.options.picture.height = picture_height;
    auto picture = make_picture(small);
    if (auto *png = std::get_if<std::string>(&picture)) {
        words.picture_png = std::move(*png);
        words.pictured = "the shell seen from the " + std::string(name_of(job.options.picture.view));
    }
    return words;
}

void append(std::vector<sheets::Sheet> &all, std::vector<sheets::Sheet> more) {
    for (sheets::Sheet &sheet : more)
        all.push_back(std::move(sheet));
}

} // namespace

std::optional<ExportFailure> export_book(const ExportJob &job, OutputFolder &folder, Progress &progress) {
    const sheets::SheetOptions options = sheet_options(job);
    std::vector<sheets::Sheet> all = sheets::shell_drawings(job.shell, job.layout, job.bodies, options);
    append(all, all_cut_sheets(job, progress));
    if (progress.cancelled()) return stopped();
    append(all, sheets::packing_list(job.shell, job.layout, job.bodies, options));
    append(all, sheets::tag_sheets(job.shell, job.layout, options));
    append(all, sheets::template_sheets(job.shell, job.layout, options));
    append(all, sheets::full_size_poles(job.shell, job.layout, options));
    const sheets::Book book = sheets::bound_book(job.shell, options, words_of(job), std::move(all));
    return add_file(folder, "book.pdf", sheets::write_pdf(book), book.subject);
}

} // namespace roundlay
