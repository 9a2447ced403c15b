#include "exporters/sheets/cut_sheet/cut_sheet.h"

#include "exporters/sheets/cut_sheet/compose.h"
#include "exporters/sheets/cut_sheet/tables.h"
#include "kernel/layout/interference.h"

namespace roundlay::sheets {
namespace {

std::string kind_words(const Layout &layout, const Piece &piece) {
    if (piece.timber >= 0)
        return "Floor " + part_letter(layout, part_of(layout, piece)) + ", " +
               name_of(layout.timbers.at(static_cast<std::size_t>(piece.timber)).use);
    const std::string wall = "Wall " + layout.walls.at(static_cast<std::size_t>(piece.wall)).name;
    const char *log = piece.log == LogKind::full         ? ""
                      : piece.log == LogKind::half_start ? ", half log to start"
                                                         : ", half log to finish";
    return wall + ", round " + std::to_string(piece.round) + (piece.island ? ", island" : "") + log;
}

TitleFields fields_for(const Layout &layout, const Model &model, const Words &words, const Scale *scale,
                       const CutSheetOptions &options) {
    const Piece &first = layout.pieces.at(static_cast<std::size_t>(model.pieces.front()));
    TitleFields fields = options.fields;
    const std::size_t others = model.pieces.size() - 1;
    fields.title = first.tag + (others == 0 ? "" : " and " + std::to_string(others) + " alike");
    fields.supplement = kind_words(layout, first);
    fields.document_type = "Cut sheet";
    fields.number = first.tag;
    fields.scale = scale != nullptr ? scale->words : "none";
    fields.angle = options.angle;
    fields.shell = layout.name;
    fields.note = words.unit_note();
    return fields;
}

} // namespace

std::vector<Sheet> cut_sheet(const Shell &shell, const Layout &layout, const Model &model, const Body &body,
                             const CutSheetOptions &options) {
    const Piece &piece = layout.pieces.at(static_cast<std::size_t>(model.pieces.front()));
    const SeenPiece seen = seen_piece(piece, body);
    const Features &features = seen.features;
    const Words words(shell.units, options.denominator);
    const auto weight = options.weight ? options.weight(piece, body) : std::nullopt;

    ComposeWanted wanted{paper_for(shell, options),     options.angle, &seen, &words, {},
                         numbers_table(features, words)};
    const auto at = static_cast<std::size_t>(piece.model);
    if (at < options.warnings.size() && !options.warnings[at].empty())
        wanted.tables.push_back(warnings_table(options.warnings[at]));
    wanted.tables.push_back(data_table(features, body, model, words, weight));
    if (!piece.cuts.empty()) wanted.tables.push_back(steps_table(features, words));
    if (!slanting_places(features).empty()) wanted.tables.push_back(slant_table(features, words));
    if (!features.pegs.empty()) wanted.tables.push_back(peg_table(features, words));
    if (!features.pockets.empty()) wanted.tables.push_back(pocket_table(features, words));
    wanted.tables.push_back(tag_table(layout, model));
    wanted.tables.push_back(notes_table(layout, features, model, weight));
    const Composed made = composed(wanted);

    const TitleFields fields = fields_for(layout, model, words, made.scale, options);
    return framed(made.pages, wanted.size, fields, {piece.tag, "cut-sheet:" + piece.tag, "Cut sheets"});
}

std::string cut_sheet_anchor(const Layout &layout, const Model &model) {
    return "cut-sheet:" + layout.pieces.at(static_cast<std::size_t>(model.pieces.front())).tag + ":1";
}

std::vector<Sheet> cut_sheets(const Shell &shell, const Layout &layout, const std::vector<Body> &bodies,
                              const CutSheetOptions &options) {
    std::vector<Sheet> sheets;
    for (std::size_t m = 0; m < layout.models.size(); ++m)
        for (Sheet &sheet : cut_sheet(shell, layout, layout.models[m], bodies.at(m), options))
            sheets.push_back(std::move(sheet));
    return sheets;
}

std::vector<Sheet> cut_sheets(const Shell &shell, const Layout &layout, const CutSheetOptions &options) {
    return cut_sheets(shell, layout, bodies_of(layout), options);
}

} // namespace roundlay::sheets
