#include "exporters/step/step.h"

#include "exporters/part21/header.h"
#include "exporters/part21/part21_text.h"
#include "exporters/step/product_writer.h"
#include "kernel/boundary/face_words.h"

#include <stdexcept>

namespace roundlay {

namespace {

/// Header names beyond this are cut; ISO 10303-21 lets readers stop at 256 characters.
constexpr std::size_t longest_header_name = 200;

/// AP214.
constexpr std::string_view schema = "AUTOMOTIVE_DESIGN { 1 0 10303 214 1 1 1 1 }";

std::string header_for(std::vector<std::string> descriptions, const std::string &name, const Project &project,
                       const StepOptions &options) {
    const auto fitting = [](const std::string &text) { return part21::shortened(text, longest_header_name); };
    if (!project.number.empty()) descriptions.push_back(fitting("project " + project.number));
    return part21::header_of({std::move(descriptions), fitting(name), fitting(project.creator),
                              fitting(project.owner), fitting(project.approved),
                              part21::time_of_export(options.seconds), std::string(schema)});
}

/// How a piece lies in its own frame, for whoever clamps it.
std::string frame_words(const Piece &piece) {
    return std::string("millimetres; origin at the lower corner of the blank's datum end on its ") +
           side_word(piece, false) + " face; x along the piece to its far end, y across it to its " +
           side_word(piece, true) + " face, z up as it lies in the house";
}

/// A body, and a piece that it is of; does it stand for that piece alone?
struct BodyOf {
    const Body *body;
    const Piece *piece;
    bool alone;
};

step::PartSolid part_solid(const BodyOf &of, StepRoute route) {
    const Body &body = *of.body;
    step::PartSolid solid;
    if (route == StepRoute::automatic) solid.border = boundary_of(body);
    if (solid.border) solid.faces = face_names(*of.piece, *solid.border, of.alone);
    if (!solid.border) solid.built = build(body).solid;
    solid.measures = solid.border ? measures_of(*solid.border) : measures_of(solid.built);
    return solid;
}

BodyOf body_of_model(const Layout &layout, Index<Model> model, const Body &body) {
    const auto &pieces = layout.models[model].pieces;
    return {&body, &layout.pieces[pieces.front()], pieces.size() == 1};
}

std::string file_of(const std::string &header, const step::ProductTree &tree,
                    const std::vector<BodyOf> &bodies, const StepOptions &options) {
    std::vector<step::PartSolid> solids;
    solids.reserve(bodies.size());
    for (const BodyOf &body : bodies)
        solids.push_back(part_solid(body, options.route));
    return header + step::data_of(tree, solids, step::Extras{}) + part21::footer();
}

} // namespace

std::string write_shell_step(const Shell &shell, const Layout &layout, const Bodies &bodies,
                             const StepOptions &options) {
    if (layout.pieces.empty()) throw std::invalid_argument("A layout without pieces has no STEP file.");
    if (bodies.size() != layout.models.size())
        throw std::invalid_argument("A STEP file needs one body for each model of the layout.");
    std::vector<BodyOf> all;
    for (const auto m : layout.models.indices())
        all.push_back(body_of_model(layout, m, bodies[m]));
    return file_of(
        header_for({"shell of hewn logs", "millimetres; x and y in plan, z up from the foundation"},
                   layout.name, shell.project, options),
        step::tree_of(shell, layout), all, options);
}

std::string write_piece_step(const Shell &shell, const Layout &layout, const Piece &piece, const Body &body,
                             const StepOptions &options) {
    return file_of(header_for({"one piece of a shell of hewn logs", frame_words(piece)}, piece.tag,
                              shell.project, options),
                   step::tree_of(shell, layout, piece),
                   {{&body, &piece, layout.models.at(piece.model).pieces.size() == 1}}, options);
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
