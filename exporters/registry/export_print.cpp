#include "exporters/lists/table.h"
#include "exporters/mesh/mesh.h"
#include "exporters/print/print.h"
#include "exporters/print/stl.h"
#include "exporters/print/three_mf.h"
#include "exporters/registry/as_it_stands.h"
#include "exporters/registry/exporters.h"
#include "exporters/registry/piece_names.h"

namespace roundlay {

namespace {

constexpr int hundredths = 2;

/// Which log lies where: prints of logs that are nearly alike are told apart by it.
std::string places_csv(const PrintJob &job, const PrintOptions &options, const Voice &voice) {
    Table table;
    table.columns = {{"plate", ""}, {"tag", ""},    {"x_mm", ""},
                     {"y_mm", ""},  {"turned", ""}, {"tag_under_it", ""}};
    const auto under = [&](const PrintPlace &place) -> std::string {
        if (!options.tags || job.parts[place.part].tags.empty()) return {};
        const auto why = job.untagged.find(place.name);
        return why == job.untagged.end() ? "yes" : voice.words(why->second);
    };
    for (std::size_t plate = 0; plate < job.plates.size(); ++plate)
        for (const PrintPlace &place : job.plates[plate])
            table.rows.push_back({number(static_cast<double>(plate + 1), 0), place.name,
                                  number(place.x, hundredths), number(place.y, hundredths),
                                  place.turned ? "yes" : "no", under(place)});
    return to_csv(table);
}

std::optional<ExportFailure> add_plate(const ExportJob &job, OutputFolder &folder, const PrintJob &print,
                                       std::size_t at) {
    const PrintPlate &plate = print.plates[at];
    const std::string name = "print/plate-" + std::to_string(at + 1);
    std::vector<Mesh> meshes;
    for (const PrintPlace &place : plate)
        meshes.push_back(placed_mesh(print, place));
    const Voice voice = voice_of(job);
    if (auto failure = add_file(folder, name + ".stl", write_stl(meshes),
                                voice.say("a plate to be printed, millimetres")))
        return failure;
    return add_file(folder, name + ".3mf", write_3mf(print, plate, called(job.shell)),
                    voice.say("a plate to be printed, each part by its tag"));
}

} // namespace

std::optional<ExportFailure> export_print(const ExportJob &asked, OutputFolder &folder, Progress &progress) {
    const ExportJob job = asked.options.print.pegs == PrintedPegs::none ? asked : as_it_stands(asked);
    const auto made = print_job(job.layout, job.bodies, job.options.print);
    if (const auto *problems = std::get_if<PrintProblems>(&made)) {
        std::string all;
        for (const Said &problem : *problems)
            all += (all.empty() ? "" : "; ") + voice_of(job).words(problem);
        return ExportFailure{Trouble::refused, all};
    }
    const auto &print = std::get<PrintJob>(made);
    for (std::size_t plate = 0; plate < print.plates.size(); ++plate) {
        progress.at("print", static_cast<int>(plate), static_cast<int>(print.plates.size()));
        if (progress.cancelled()) return stopped();
        if (auto failure = add_plate(job, folder, print, plate)) return failure;
    }
    return add_file(folder, "print/places.csv", places_csv(print, job.options.print, voice_of(job)),
                    voice_of(job).say("which log lies where on which plate"));
}

std::optional<ExportFailure> export_stl(const ExportJob &job, OutputFolder &folder, Progress &progress) {
    const auto names = piece_file_names(job.layout);
    for (const Index<Model> model : chosen_of(job).models) {
        progress.at("stl", model.number(), static_cast<int>(names.size()));
        if (progress.cancelled()) return stopped();
        const std::string tag = job.layout.pieces[job.layout.models[model].pieces.front()].tag;
        if (auto failure = add_file(
                folder, "stl/" + names[model] + ".stl", write_stl({mesh_of(job.bodies[model])}),
                voice_of(job).say("%1 at full size as triangles, millimetres, in its own frame", tag)))
            return failure;
    }
    return {};
}

} // namespace roundlay
