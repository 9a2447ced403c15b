#include "exporters/sheets/drawing/columns.h"
#include "exporters/sheets/drawing/table.h"
#include "exporters/sheets/frame/tables.h"
#include "exporters/sheets/set/scales.h"
#include "exporters/sheets/tag/tags.h"
#include "kernel/layout/pieces/stock.h"

#include <algorithm>

namespace roundlay::sheets {
namespace {

std::vector<const Piece *> loading_order(const Layout &layout) {
    std::vector<const Piece *> order;
    for (const Piece &piece : layout.pieces)
        order.push_back(&piece);
    std::stable_sort(order.begin(), order.end(),
                     [](const Piece *a, const Piece *b) { return a->raise > b->raise; });
    return order;
}

/// Of all that is loaded; no figure where one of them is not known, since it would be too low.
struct WeightSum {
    double low = 0, high = 0;
    std::string basis, caution;
    bool known = true;

    void add(const std::optional<WeightNote> &weight) {
        known = known && weight;
        if (!weight) return;
        low += weight->low_kg;
        high += weight->high_kg;
        basis = weight->basis;
        caution = weight->caution;
    }

    std::vector<std::vector<std::string>> rows(const Words &words) const {
        std::vector<std::vector<std::string>> all;
        if (known)
            all.push_back({words.say("Weight, estimated"), words.weights(low, high)});
        else
            all.push_back(
                {words.say("Weight"), words.say("not known: no weights are known of the wood that is "
                                                "stated. Weigh before lifting.")});
        if (!basis.empty()) all.push_back({words.say("Basis"), basis});
        if (!caution.empty()) all.push_back({words.say("Caution"), caution});
        return all;
    }
};

std::vector<Column> packing_columns(const Words &words, bool weights) {
    std::vector<Column> columns{flush_right(words.say("Load"), 12), flush_left(words.say("Tag"), 34)};
    add_sizes(columns, words);
    columns.push_back(flush_right(words.say("Volume"), 24));
    if (weights) {
        columns.push_back(flush_right(words.say("Weight from"), 20));
        columns.push_back(flush_right(words.say("to"), 20));
    }
    columns.push_back(flush_right(words.say("Raise"), 14));
    columns.push_back(flush_left(words.say("Loaded"), 16));
    return columns;
}

Titled packing_list(const Draft &draft) {
    const PaperSize size = draft.size();
    const Words words = draft.words();
    const Layout &layout = draft.layout;
    const SheetOptions &options = draft.options;
    Table table = table_called(words, words.say("Load in this order: the last to be raised goes on first"));
    table.columns = packing_columns(words, static_cast<bool>(options.weight));
    double volume = 0;
    WeightSum weight_sum;
    for (const Piece *piece : loading_order(layout)) {
        const Body &body = draft.bodies.at(static_cast<std::size_t>(piece->model));
        const Blank stock = stock_of(*piece).size;
        volume += body.volume;
        std::vector<std::string> row{std::to_string(table.rows.size() + 1),
                                     piece->tag,
                                     words.length(stock.length),
                                     words.length(stock.width),
                                     words.length(stock.height),
                                     words.volume(body.volume)};
        if (options.weight) {
            const auto weight = options.weight(*piece, body);
            row.push_back(weight ? words.low_weight(weight->low_kg) : words.say("not known"));
            row.push_back(weight ? words.high_weight(weight->high_kg) : words.say("not known"));
            weight_sum.add(weight);
        }
        row.push_back(std::to_string(piece->raise));
        row.emplace_back();
        table.rows.push_back(std::move(row));
    }
    Table sum = table_called(words, words.say("In all"));
    sum.columns = {flush_left("", 40), flush_left("", 120)};
    sum.rows = {{words.say("Pieces"), std::to_string(layout.pieces.size())},
                {words.say("Finished volume"), words.volume(volume)}};
    if (options.weight)
        for (auto &row : weight_sum.rows(words))
            sum.rows.push_back(std::move(row));

    const std::string title = words.say("Packing list");
    std::vector<Page> pages{empty_page(size)};
    put_on(pages, size, sum); // the caution is read before the weights
    put_on(pages, size, table);
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
