#include "exporters/sheets/drawing/columns.h"
#include "exporters/sheets/drawing/table.h"
#include "exporters/sheets/frame/tables.h"
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
            all.push_back({"Weight, estimated", words.weights(low, high)});
        else
            all.push_back(
                {"Weight",
                 "not known: no weights are known of the wood that is stated. Weigh before lifting."});
        if (!basis.empty()) all.push_back({"Basis", basis});
        if (!caution.empty()) all.push_back({"Caution", caution});
        return all;
    }
};

Titled packing_list(const Draft &draft) {
    const PaperSize size = draft.size();
    const Words words = draft.words();
    const Layout &layout = draft.layout;
    const SheetOptions &options = draft.options;
    Table table;
    table.title = "Load in this order: the last to be raised goes on first";
    table.columns = {flush_right("Load", 12),  flush_left("Tag", 34),     flush_right("Length", 30),
                     flush_right("Width", 22), flush_right("Height", 22), flush_right("Volume", 24)};
    if (options.weight)
        table.columns.push_back(flush_right("Weight from", 20)),
            table.columns.push_back(flush_right("to", 20));
    table.columns.push_back(flush_right("Raise", 14));
    table.columns.push_back(flush_left("Loaded", 16));
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
            row.push_back(weight ? words.low_weight(weight->low_kg) : "not known");
            row.push_back(weight ? words.high_weight(weight->high_kg) : "not known");
            weight_sum.add(weight);
        }
        row.push_back(std::to_string(piece->raise));
        row.emplace_back();
        table.rows.push_back(std::move(row));
    }
    Table sum;
    sum.columns = {flush_left("", 40), flush_left("", 120)};
    sum.title = "In all";
    sum.rows = {{"Pieces", std::to_string(layout.pieces.size())}, {"Finished volume", words.volume(volume)}};
    if (options.weight)
        for (auto &row : weight_sum.rows(words))
            sum.rows.push_back(std::move(row));

    std::vector<Page> pages{empty_page(size)};
    put_on(pages, size, sum); // the caution is read before the weights
    put_on(pages, size, table);
    return {std::move(pages),
            {"Packing list", std::to_string(layout.pieces.size()) + " logs, the last raised first",
             "Packing list", "L-1", "none", false, words.unit_note()},
            {"Packing list", "packing", ""}};
}

} // namespace

Subject packing_subject() {
    return {"packing list", [](const Draft &draft) { return std::vector{packing_list(draft)}; }};
}

} // namespace roundlay::sheets
