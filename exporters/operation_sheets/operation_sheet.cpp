#include "exporters/operation_sheets/operation_sheet.h"

#include "exporters/machining/operations.h"
#include "exporters/operation_sheets/operation_tables.h"
#include "exporters/sheets/cut_sheet/cut_sheet.h"
#include "exporters/sheets/frame/tables.h"
#include "exporters/sheets/set/scales.h"

namespace roundlay::sheets {

namespace {

Titled operation_sheet(const Draft &draft, Index<roundlay::Model> model) {
    const Words words = draft.words();
    const PaperSize size = draft.size();
    const auto list = machining::operations_of(draft.layout, model, draft.bodies[model]);
    const Piece &piece = draft.layout.pieces[draft.layout.models[model].pieces.front()];
    std::vector<Page> pages{empty_page(size)};
    std::vector<Table> tables{stock_table(list, words), setup_table(list, words), reading_table(words)};
    for (Table &table : operations_tables(list, words, inner_area(size).width()))
        tables.push_back(std::move(table));
    for (const Table &table : tables)
        if (!table.rows.empty()) put_on(pages, size, table);
    const std::size_t others = list.pieces.size() - 1;
    return {std::move(pages),
            {others == 0 ? piece.tag : words.say("%1 and %2 alike", piece.tag, others),
             piece_words(draft.layout, piece, words), words.say("Operations"), "O-" + piece.tag,
             said_scale(nullptr, words), false, words.unit_note()},
            {piece.tag, "operations:" + piece.tag, words.say("Operations")}};
}

} // namespace

SheetSet operation_sheet_set(const Layout &layout) {
    SheetSet set;
    for (const auto model : layout.models.indices()) {
        const Piece &first = layout.pieces[layout.models[model].pieces.front()];
        if (is_old_wood(first)) continue;
        set.push_back({"operations " + std::to_string(model.number() + 1) + ", " + first.tag,
                       [model](const Draft &draft) { return std::vector{operation_sheet(draft, model)}; }});
    }
    return set;
}

} // namespace roundlay::sheets
