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

std::optional<ExportFailure> add_shell(const ExportJob &job, const Indexed<std::string, Model> &names,
                                       OutputFolder &folder) {
    const StepOptions &options = job.options.step;
    return add_file(
        folder, "shell.step",
        write_linked_step(job.shell, job.layout, job.bodies, linked_files(names, options), options),
        "the whole shell as one STEP assembly, " + kind_words(options));
}

std::optional<ExportFailure> add_piece(const ExportJob &job, Index<Model> model, const std::string &name,
                                       OutputFolder &folder) {
    const auto &pieces = job.layout.models[model].pieces;
    const Piece &first = job.layout.pieces.at(pieces.front());
    const std::string what =
        std::string(job.options.step.with_stock ? "the finished piece and its stock as two STEP products"
                                                : "one STEP solid") +
        " in the piece frame, for " + std::to_string(pieces.size()) +
        (pieces.size() == 1 ? " piece" : " equal pieces");
    return add_file(folder, "pieces/" + name + ".step",
                    write_piece_step(job.shell, job.layout, first, job.bodies[model], job.options.step),
                    what);
}

} // namespace

std::optional<ExportFailure> export_step(const ExportJob &job, OutputFolder &folder, Progress &progress) {
    const int count = count_of(job.layout.models);
    progress.at("STEP", 0, count + 1);
    const auto names = piece_file_names(job.layout);
    if (job.options.pieces.is_all())
        if (auto failure = add_shell(job, names, folder)) return failure;
    for (const auto i : chosen_of(job).models) {
        if (progress.cancelled()) return stopped();
        progress.at("STEP", i.number() + 1, count + 1);
        if (auto failure = add_piece(job, i, names[i], folder)) return failure;
    }
    return {};
}

} // namespace roundlay
