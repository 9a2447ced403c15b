#include "exporters/registry/exporters.h"
#include "exporters/registry/piece_names.h"
#include "exporters/step/step.h"

namespace roundlay {

namespace {

std::string kind_words(const StepOptions &options) {
    return std::string(options.schema == StepSchema::ap242 ? "AP242" : "AP214") +
           (options.unit == StepUnit::inch ? ", inches" : ", millimetres");
}

/// Empty where the shell has all solids itself.
Indexed<std::string, Model> linked_files(const Indexed<std::string, Model> &names,
                                         const StepOptions &options) {
    Indexed<std::string, Model> files;
    if (options.linked)
        for (const std::string &name : names)
            files.push_back("pieces/" + name + ".step");
    return files;
}

} // namespace

std::optional<ExportFailure> export_step(const ExportJob &job, OutputFolder &folder, Progress &progress) {
    const int count = count_of(job.layout.models);
    progress.at("STEP", 0, count + 1);
    const auto names = piece_file_names(job.layout);
    const Indexed<std::string, Model> files = linked_files(names, job.options.step);
    if (auto failure = add_file(folder, "shell.step",
                                write_linked_step(job.shell, job.layout, job.bodies, files, job.options.step),
                                "the whole shell as one STEP assembly, " + kind_words(job.options.step)))
        return failure;
    for (const auto i : job.layout.models.indices()) {
        if (progress.cancelled()) return stopped();
        progress.at("STEP", i.number() + 1, count + 1);
        const auto &pieces = job.layout.models[i].pieces;
        const Piece &first = job.layout.pieces.at(pieces.front());
        const std::string what =
            std::string(job.options.step.with_stock ? "the finished piece and its stock as two STEP products"
                                                    : "one STEP solid") +
            " in the piece frame, for " + std::to_string(pieces.size()) +
            (pieces.size() == 1 ? " piece" : " equal pieces");
        if (auto failure = add_file(
                folder, "pieces/" + names[i] + ".step",
                write_piece_step(job.shell, job.layout, first, job.bodies[i], job.options.step), what))
            return failure;
    }
    return {};
}

} // namespace roundlay
