#include "exporters/registry/paper.h"
#include "exporters/sheets/dxf/dxf.h"
#include "exporters/sheets/pattern/joints.h"
#include "exporters/sheets/pattern/templates.h"

namespace roundlay {

std::optional<ExportFailure> export_templates(const ExportJob &job, OutputFolder &folder,
                                              Progress &progress) {
    const std::vector<sheets::Joint> joints = sheets::distinct_joints(job.layout);
    const int count = static_cast<int>(joints.size());
    progress.at("templates", 0, count + 1);
    if (auto failure = add_pdf(job, folder, "templates.pdf", "tails and notches at full size",
                               sheets::template_sheets(job.shell, job.layout, sheet_options(job))))
        return failure;
    if (joints.empty()) return {};
    if (auto failure = add_file(folder, "templates.dxf", sheets::write_dxf(sheets::template_drawing(joints)),
                                "all tails and notches for a plotter, laser or router, millimetres"))
        return failure;
    for (int i = 0; i < count; ++i) {
        if (progress.cancelled()) return stopped();
        progress.at("templates", i + 1, count + 1);
        const sheets::Joint &joint = joints[static_cast<std::size_t>(i)];
        if (auto failure = add_file(folder, "templates/" + joint.name + ".dxf",
                                    sheets::write_dxf(sheets::template_drawing({joint})),
                                    "one tail or notch for a plotter, laser or router, millimetres"))
            return failure;
    }
    return {};
}

} // namespace roundlay
