#include "exporters/sheets/cut_sheet/cut_sheet.h"

#include "exporters/sheets/cut_sheet/compose.h"
#include "exporters/sheets/cut_sheet/snap.h"
#include "exporters/sheets/cut_sheet/tables.h"
#include "exporters/sheets/frame/tables.h"
#include "exporters/sheets/set/scales.h"
#include "exporters/sheets/tag/tags.h"
#include "kernel/layout/wood/interference.h"

namespace roundlay::sheets {

std::string piece_words(const Layout &layout, const Piece &piece, const Words &words) {
    const std::string &part = part_letter(layout, part_of(layout, piece));
    if (piece.timber)
        return words.say("Floor %1, %2", part, words.word(name_of(layout.timbers.at(*piece.timber).use)));
    const std::string log = piece.log == LogKind::full         ? ""
                            : piece.log == LogKind::half_start ? words.say(", half log to start")
                                                               : words.say(", half log to finish");
    if (piece.mends) // of new wood the joints are the log's, and so is its place
        return words.say("Wall %1, round %2", part, piece.round) + ", " +
               words.say("new wood in %1", layout.pieces[*piece.mends].tag);
    return words.say("Wall %1, round %2", part, piece.round) + (piece.island ? words.say(", island") : "") +
           log + (is_old_wood(piece) ? words.say(", old log") : "");
}

namespace {

Title title_of(const Layout &layout, const Model &model, const Words &words, const Scale *scale) {
    const Piece &first = layout.pieces.at(model.pieces.front());
    const std::size_t others = model.pieces.size() - 1;
    return {others == 0 ? first.tag : words.say("%1 and %2 alike", first.tag, others),
            piece_words(layout, first, words),
            words.say("Cut sheet"),
            first.tag,
            said_scale(scale, words),
            true,
            words.unit_note() + " " + words.say("Code %1, as on its tag.", piece_hash(first))};
}

Titled titled_cut_sheet(const Shell &shell, const Layout &layout, const Model &model, const Body &body,
                        const CutSheetOptions &options) {
    const Piece &piece = layout.pieces.at(model.pieces.front());
    const Words words = words_for(shell, layout, options);
    const SeenPiece seen = seen_piece(piece, body, words.system());
    const Features &features = seen.features;
    const auto weight = options.weight ? options.weight(piece, body) : std::nullopt;

    ComposeWanted wanted{paper_for(shell, options),     options.angle, &seen, &words, {},
                         numbers_table(features, words)};
    if (Table found = found_table(options, layout, model.pieces, words); !found.rows.empty())
        wanted.tables.push_back(std::move(found));
    if (options.warnings.holds(piece.model) && !options.warnings[piece.model].empty())
        wanted.tables.push_back(warnings_table(options.warnings[piece.model], words));
    wanted.tables.push_back(data_table(features, body, model, words, weight));
    wanted.tables.push_back(snap_table(features, words));
    for (Table &steps : steps_tables(features, old_cuts(options, layout, model), words))
        wanted.tables.push_back(std::move(steps));
    if (Table slants = slant_table(features, words); !slants.rows.empty())
        wanted.tables.push_back(std::move(slants));
    if (!features.pegs.empty()) wanted.tables.push_back(peg_table(features, words));
    if (!features.pockets.empty()) wanted.tables.push_back(pocket_table(features, words));
    wanted.tables.push_back(tag_table(layout, model, features, words));
    wanted.tables.push_back(notes_table(shell, layout, features, model, words, weight));
    Composed made = composed(wanted);
    return {std::move(made.pages),
            title_of(layout, model, words, made.scale),
            {piece.tag, "cut-sheet:" + piece.tag, words.say("Cut sheets")}};
}

} // namespace

std::vector<Sheet> cut_sheet(const Shell &shell, const Layout &layout, const Model &model, const Body &body,
                             const CutSheetOptions &options) {
    return framed(titled_cut_sheet(shell, layout, model, body, options), paper_for(shell, options), options,
                  layout.name);
}

Subject cut_sheet_subject(const Layout &layout, Index<Model> model) {
    const Index<Piece> first = layout.models.at(model).pieces.front();
    return {"cut sheet " + std::to_string(model.number() + 1) + ", " + layout.pieces.at(first).tag,
            [model](const Draft &d) {
                return std::vector{titled_cut_sheet(d.shell, d.layout, d.layout.models.at(model),
                                                    d.bodies.at(model), d.options)};
            }};
}

SheetSet cut_sheet_set(const Layout &layout) {
    const auto all = layout.models.indices();
    return cut_sheet_set(layout, {all.begin(), all.end()});
}

SheetSet cut_sheet_set(const Layout &layout, const std::vector<Index<Model>> &models) {
    SheetSet set;
    for (const auto model : models)
        set.push_back(cut_sheet_subject(layout, model));
    return set;
}

SheetSet cut_sheets_with_notes(const Layout &layout) {
    SheetSet set = cut_sheet_set(layout);
    if (!set.empty()) set.insert(set.begin(), common_notes_subject());
    return set;
}

} // namespace roundlay::sheets
