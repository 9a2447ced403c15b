#include "exporters/machining/operation_files.h"
#include "exporters/machining/operations.h"
#include "exporters/registry/exporters.h"
#include "exporters/registry/piece_names.h"
#include "kernel/layout/names_given.h"

namespace roundlay {

namespace {

Voice speaker_of(const ExportJob &job) {
    Voice voice = voice_of(job);
    voice.know(names_given(job.shell, job.layout));
    return voice;
}

/// Wood that stays in the house is made from no stick: to list how would have a shop cut it anew.
bool is_old(const ExportJob &job, Index<Model> model) {
    return is_old_wood(job.layout.pieces.at(job.layout.models[model].pieces.front()));
}

std::string folder_of(const std::string &name) {
    return "operations/" + name;
}

} // namespace

std::optional<ExportFailure> export_operations(const ExportJob &job, OutputFolder &folder,
                                               Progress &progress) {
    const Voice voice = speaker_of(job);
    const auto names = piece_file_names(job.layout);
    std::vector<machining::OperationList> lists;
    for (const auto i : chosen_of(job).models) {
        if (progress.cancelled()) return stopped();
        if (is_old(job, i)) continue;
        progress.at("operations", i.number(), count_of(job.layout.models) + 1);
        lists.push_back(machining::operations_of(job.layout, i, job.bodies[i]));
        const std::string bytes = machining::operations_json(lists.back(), called(job.shell), voice);
        const auto what =
            Voice().say("operations on one piece, for no machine in particular; a proposal, see its caution");
        if (auto failure = add_file(folder, folder_of(names[i] + ".json"), bytes, what)) return failure;
    }
    if (auto failure = add_file(folder, folder_of(std::string(machining::schema_name)),
                                machining::operations_schema(), Voice().say("JSON Schema of the operations")))
        return failure;
    return add_file(folder, "operations.csv", to_csv(machining::operation_table(lists, voice)),
                    Voice().say("operations on all pieces, a row each; a proposal, see its caution"));
}

} // namespace roundlay
