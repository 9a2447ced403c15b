#include "exporters/registry/paper.h"
#include "exporters/sheets/dxf/dxf.h"
#include "exporters/sheets/pattern/templates.h"
#include "kernel/compare/cuts_to_make.h"

namespace roundlay {

namespace {

std::optional<ExportFailure> add_single_drawings(const std::vector<sheets::Pattern> &patterns,
                                                 OutputFolder &folder, Progress &progress) {
    const int count = static_cast<int>(patterns.size());
    for (int i = 0; i < count; ++i) {
        if (progress.cancelled()) return stopped();
        progress.at("templates", i + 1, count + 1);
        const sheets::Pattern &pattern = patterns[static_cast<std::size_t>(i)];
        if (auto failure = add_file(folder, "templates/" + pattern.name + ".dxf",
                                    sheets::write_dxf(sheets::template_drawing({pattern})),
                                    "one tail, notch or pocket for a plotter, laser or router, millimetres"))
            return failure;
    }
    return {};
}

} // namespace

std::optional<ExportFailure> export_templates(const ExportJob &job, OutputFolder &folder,
                                              Progress &progress) {
    const sheets::Words words(job.shell.units, 16, job.options.language);
    const sheets::OnlyPieces only = only_pieces(job);
    const std::vector<sheets::Pattern> patterns =
        sheets::patterns_to_cut(job.layout, cuts_to_make(found_layout(job), job.layout), words, only);
    if (patterns.empty())
        return ExportFailure{
            Trouble::nothing,
            "no templates were made: this shell has no tails, notches or pockets that are "
            "to be cut to a line; round logs are scribed in place, and what stands has its own"};
    const PaperFile paper{"templates.pdf",
                          said("tails, notches and pockets at full size"),
                          "templates",
                          {sheets::template_subject(only)}};
    if (auto failure = add_pdf(job, folder, paper, progress)) return failure;
    if (auto failure =
            add_file(folder, "templates.dxf", sheets::write_dxf(sheets::template_drawing(patterns)),
                     "all tails, notches and pockets for a plotter, laser or router, millimetres"))
        return failure;
    return add_single_drawings(patterns, folder, progress);
}

} // namespace roundlay
