#include "exporters/step/step.h"

#include "exporters/part21/header.h"
#include "exporters/part21/part21_text.h"
#include "exporters/step/in_unit.h"
#include "exporters/step/part_solid.h"
#include "exporters/step/product_writer.h"
#include "exporters/step/stock_solid.h"

#include <stdexcept>

namespace roundlay {

namespace {

/// Header names beyond this are cut; ISO 10303-21 lets readers stop at 256 characters.
constexpr std::size_t longest_header_name = 200;

/// With the object identifier of its edition.
std::string schema_name(StepSchema schema) {
    return schema == StepSchema::ap242
               ? "AP242_MANAGED_MODEL_BASED_3D_ENGINEERING_MIM_LF { 1 0 10303 442 3 1 4 }"
               : "AUTOMOTIVE_DESIGN { 1 0 10303 214 1 1 1 1 }";
}

const char *unit_words(const StepOptions &options) {
    return options.unit == StepUnit::inch ? "inches" : "millimetres";
}

std::string header_for(std::vector<std::string> descriptions, const std::string &name, const Project &project,
                       const StepOptions &options) {
    const auto fitting = [](const std::string &text) { return part21::shortened(text, longest_header_name); };
    if (!project.number.empty()) descriptions.push_back(fitting("project " + project.number));
    return part21::header_of({std::move(descriptions), fitting(name), fitting(project.creator),
                              fitting(project.owner), fitting(project.approved),
                              part21::time_of_export(options.seconds), schema_name(options.schema)});
}

/// How a piece lies in its own frame, for whoever clamps it.
std::string frame_words(const Piece &piece, const StepOptions &options) {
    return std::string(unit_words(options)) +
           "; origin at the lower corner of the blank's datum end on its " + side_word(piece, false) +
           " face; x along the piece to its far end, y across it to its " + side_word(piece, true) +
           " face, z up as it lies in the house";
}

step::PartSolid solid_of_model(const Layout &layout, Index<Model> model, const Body &body, StepRoute route) {
    const auto &pieces = layout.models[model].pieces;
    return step::part_solid(layout.pieces[pieces.front()], body, pieces.size() == 1, route);
}

std::string file_of(const std::string &header, const step::ProductTree &tree,
                    std::vector<step::PartSolid> solids, const StepOptions &options) {
    for (step::PartSolid &solid : solids)
        solid = step::in_unit(std::move(solid), options.unit);
    step::Extras extras;
    extras.schema = options.schema, extras.unit = options.unit;
    return header + step::data_of(step::in_unit(tree, options.unit), solids, extras) + part21::footer();
}

} // namespace

std::string write_linked_step(const Shell &shell, const Layout &layout, const Bodies &bodies,
                              const Indexed<std::string, Model> &files, const StepOptions &options) {
    if (layout.pieces.empty()) throw std::invalid_argument("A layout without pieces has no STEP file.");
    if (bodies.size() != layout.models.size())
        throw std::invalid_argument("A STEP file needs one body for each model of the layout.");
    std::vector<step::PartSolid> all;
    for (const auto m : layout.models.indices())
        all.push_back(solid_of_model(layout, m, bodies[m], options.route));
    step::ProductTree tree = step::tree_of(shell, layout, options.colours);
    for (const auto m : files.indices())
        tree.parts[m.at()].file = files[m];
    const std::string frame =
        std::string(unit_words(options)) + "; x and y in plan, z up from the foundation";
    return file_of(header_for({"shell of hewn logs", frame}, layout.name, shell.project, options), tree,
                   std::move(all), options);
}

std::string write_shell_step(const Shell &shell, const Layout &layout, const Bodies &bodies,
                             const StepOptions &options) {
    return write_linked_step(shell, layout, bodies, {}, options);
}

std::string write_piece_step(const Shell &shell, const Layout &layout, const Piece &piece, const Body &body,
                             const StepOptions &options) {
    const bool alone = layout.models.at(piece.model).pieces.size() == 1;
    std::vector<step::PartSolid> solids{step::part_solid(piece, body, alone, options.route)};
    if (options.with_stock) solids.push_back(step::stock_solid(piece));
    return file_of(header_for({"one piece of a shell of hewn logs", frame_words(piece, options)}, piece.tag,
                              shell.project, options),
                   step::tree_of(shell, layout, piece, options), std::move(solids), options);
}

std::vector<PieceStep> write_piece_steps(const Shell &shell, const Layout &layout, const Bodies &bodies,
                                         const StepOptions &options) {
    std::vector<PieceStep> files;
    for (const auto m : layout.models.indices()) {
        const Piece &first = layout.pieces[layout.models[m].pieces.front()];
        files.push_back({first.tag, write_piece_step(shell, layout, first, bodies.at(m), options)});
    }
    return files;
}

} // namespace roundlay
