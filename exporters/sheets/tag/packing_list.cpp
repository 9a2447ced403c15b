#include "exporters/sheets/drawing/columns.h"
#include "exporters/sheets/drawing/table.h"
#include "exporters/sheets/frame/tables.h"
#include "exporters/sheets/set/scales.h"
#include "exporters/sheets/tag/tags.h"
#include "kernel/stock/totals.h"

#include <algorithm>
#include <functional>

namespace roundlay::sheets {
namespace {

std::vector<Index<Piece>> loading_order(const Layout &layout) {
    std::vector<Index<Piece>> order;
    for (const auto i : layout.pieces.indices())
        order.push_back(i);
    std::ranges::stable_sort(order, std::greater<>(), [&](Index<Piece> i) { return layout.pieces[i].raise; });
    return order;
}

/// No figure where one of them is not known, since it would be too low.
void add_weights(const Draft &draft, const Totals &sums, const std::optional<WeightNote> &said,
                 const Words &words, Table &table) {
    if (sums.weights_known())
        table.rows.push_back({words.say("Weight, estimated"), words.weights(sums.low_kg, sums.high_kg)});
    else
        table.rows.push_back({words.say("Weight"), words.words(not_weighed_words(sums, draft.layout))});
    if (!said) return;
    for (const Said &basis : weight_bases(draft.shell, draft.layout.pieces))
        table.rows.push_back({words.say("Basis"), words.words(basis)});
    if (!said->caution.empty()) table.rows.push_back({words.say("Caution"), said->caution});
}

std::vector<Column> packing_columns(const Words &words, const SheetOptions &options, bool notes) {
    std::vector<Column> columns{flush_right(words.say("Load"), 12), flush_left(words.say("Tag"), 34)};
    add_sizes(columns, words);
    columns.push_back(flush_right(words.say("Volume"), 24));
    if (options.weight) {
        columns.push_back(flush_right(words.say("Weight from"), 20));
        columns.push_back(flush_right(words.say("to"), 20));
    }
    columns.push_back(flush_right(words.say("Raise"), 14));
    if (notes) add_found_columns(options, words, false, columns);
    columns.push_back(flush_left(words.say("Loaded"), 16));
    return columns;
}

std::vector<std::string> weight_cells(const std::optional<WeightNote> &weight, const Words &words) {
    if (!weight) return {words.say("not known"), words.say("not known")};
    return {words.low_weight(weight->low_kg), words.high_weight(weight->high_kg)};
}

/// `number` in the order of loading; `any_weight` becomes the piece's where it is known.
std::vector<std::string> load_row(const Draft &draft, std::size_t number, Index<Piece> index,
                                  const PieceStock &stock, const Words &words,
                                  std::optional<WeightNote> &any_weight) {
    const Piece &piece = draft.layout.pieces[index];
    std::vector<std::string> row{std::to_string(number),           piece.tag,
                                 words.length(stock.blank.length), words.length(stock.blank.width),
                                 words.length(stock.blank.height), words.volume(stock.volume)};
    if (draft.options.weight) {
        const auto weight = draft.options.weight(piece, draft.bodies[piece.model]);
        for (const std::string &cell : weight_cells(weight, words))
            row.push_back(cell);
        if (weight) any_weight = weight;
    }
    row.push_back(std::to_string(piece.raise));
    if (has_room_for_notes(draft.size())) add_found_cells(draft.options, index, false, row);
    row.emplace_back(); // to be ticked
    return row;
}

/// Piece by piece; `any_weight` is the last that is known.
Table load_table(const Draft &draft, const Indexed<PieceStock, Piece> &stock, const Words &words,
                 std::optional<WeightNote> &any_weight) {
    Table table = table_called(words, words.say("Load in this order: the last to be raised goes on first"));
    table.columns = packing_columns(words, draft.options, has_room_for_notes(draft.size()));
    for (const Index<Piece> i : loading_order(draft.layout))
        table.rows.push_back(load_row(draft, table.rows.size() + 1, i, stock[i], words, any_weight));
    return table;
}

Table sum_table(const Totals &sums, const Words &words) {
    Table sum = table_called(words, words.say("In all"));
    sum.columns = {flush_left("", 40), flush_left("", 120)};
    sum.rows = {{words.say("Pieces"), std::to_string(sums.pieces)},
                {words.say("Finished volume"), words.volume(sums.finished)}};
    return sum;
}

Titled packing_list(const Draft &draft) {
    const PaperSize size = draft.size();
    const Words words = draft.words();
    const Layout &layout = draft.layout;
    const Indexed<PieceStock, Piece> stock = stock_of_pieces(draft.shell, layout, volumes_of(draft.bodies));
    std::optional<WeightNote> any_weight;
    const Table table = load_table(draft, stock, words, any_weight);
    const Totals sums = totals_of(layout, stock);
    Table sum = sum_table(sums, words);
    if (draft.options.weight) add_weights(draft, sums, any_weight, words, sum);
    const std::string title = words.say("Packing list");
    std::vector<Page> pages{empty_page(size)};
    put_on(pages, size, sum); // the caution is read before the weights
    put_on(pages, size, table);
    if (!has_room_for_notes(size))
        if (const Table notes = found_table(draft.options, layout, loading_order(layout), words);
            !notes.rows.empty())
            put_on(pages, size, notes);
    return {std::move(pages),
            {title, words.say("%1 logs, the last raised first", layout.pieces.size()), title, "L-1",
             said_scale(nullptr, words), false, words.unit_note()},
            {title, "packing", ""}};
}

} // namespace

Subject packing_subject() {
    return {"packing list", [](const Draft &draft) { return std::vector{packing_list(draft)}; }};
}

} // namespace roundlay::sheets
