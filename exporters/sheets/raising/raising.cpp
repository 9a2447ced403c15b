#include "exporters/sheets/raising/raising.h"

#include "exporters/sheets/drawing/columns.h"
#include "exporters/sheets/drawing/table.h"
#include "exporters/sheets/frame/tables.h"
#include "exporters/sheets/set/scales.h"
#include "kernel/stock/taking_down.h"

#include <cmath>

namespace roundlay::sheets {
namespace {

constexpr double box_width = 24; ///< mm: who and when are wrapped

std::optional<WeightNote> weight_of(const Draft &draft, const Piece &piece) {
    if (!draft.options.weight) return std::nullopt;
    return draft.options.weight(piece, draft.bodies[piece.model]);
}

/// "from" and "to" of what hangs in the slings, where weights are wanted: a log with the new wood in it.
void add_weights(const Draft &draft, const Words &words, Index<Piece> index, std::vector<std::string> &row) {
    if (!draft.options.weight) return;
    if (const auto log = draft.layout.pieces[index].mends) {
        row.insert(row.end(), {words.say("with"), draft.layout.pieces[*log].tag});
        return;
    }
    const Lift lift = lift_of(draft.shell, draft.layout, draft.bodies, index);
    row.push_back(lift.known ? words.low_weight(lift.low_kg) : words.say("not known"));
    row.push_back(lift.known ? words.high_weight(lift.high_kg) : words.say("not known"));
}

void add_weight_columns(const Draft &draft, const Words &words, std::vector<Column> &columns) {
    if (!draft.options.weight) return;
    columns.push_back(flush_right(words.say("Weight from"), 20));
    columns.push_back(flush_right(words.say("to"), 20));
}

std::string joined(const std::vector<std::string> &parts) {
    std::string text;
    for (const std::string &part : parts)
        text += (text.empty() ? "" : ", ") + part;
    return text;
}

/// Never less than it is.
std::string length_up(const Words &words, double mm) {
    constexpr double noise = 1e-6;
    const double step = words.system() == UnitSystem::metric ? 1 : mm_per_inch / 16;
    return words.length(std::ceil(mm / step - noise) * step);
}

std::string loose_tags(const Draft &draft, const DownStep &step) {
    std::vector<std::string> tags;
    for (const Index<Piece> piece : step.loose)
        tags.push_back(draft.layout.pieces[piece].tag);
    return joined(tags);
}

/// A box to be ticked; of what is done already a tick, with who did it and when.
std::string box(const Draft &draft, Index<Piece> piece, Deed deed) {
    const Ticked &ticked = draft.options.ticked;
    if (ticked.ticks.empty() || !ticked.is(piece, deed)) return "\u2610";
    const Tick &tick = *ticked.tick(piece, deed);
    std::string text = "\u2713";
    for (const std::string &part : {tick.on, tick.by})
        if (!part.empty()) text += " " + part;
    return text;
}

/// How far they have come, and what is still to be lifted; nothing where nothing is done.
std::string so_far(const Draft &draft, const Words &words, Deed deed) {
    const Ticked &ticked = draft.options.ticked;
    if (!ticked.any(deed)) return {};
    const Left left = what_is_left(draft.shell, draft.layout, draft.bodies, ticked, deed);
    const std::size_t all = left.done + left.left;
    const std::string done = deed == Deed::up ? words.say("Up: %1 of %2 pieces.", left.done, all)
                                              : words.say("Down: %1 of %2 pieces.", left.done, all);
    if (left.left == 0) return done + " " + words.say("Nothing is left.");
    if (!draft.options.weight || !left.heaviest)
        return done + " " + words.say("Left: %1 {piece|pieces}; what they weigh is not known.", left.left);
    return done + " " +
           words.say("Left: %1 {piece|pieces}, %2; the heaviest lift of them %3, %4.", left.left,
                     words.weights(left.low_kg, left.high_kg), draft.layout.pieces[*left.heaviest].tag,
                     words.weights(left.heaviest_low_kg, left.heaviest_high_kg));
}

std::string gone_tags(const Draft &draft) {
    std::vector<std::string> tags;
    for (const Index<Piece> piece : draft.options.ticked.gone)
        tags.push_back(draft.layout.pieces[piece].tag);
    return joined(tags);
}

/// Read before the rows: how far they are, what the order is, and what weights rest on.
Table cautions(const Draft &draft, const Words &words, Deed deed) {
    Table table = table_called(words, words.say("Before you begin"));
    table.columns = {flush_left("", 40), flush_left("", 120)};
    table.rows = {
        {words.say("Order"),
         words.say("Geometry alone: what lies free to rise. Whether a wall, a corner or a roof stands "
                   "meanwhile, what is braced, and with what is lifted, is for a licensed "
                   "professional and whoever is on the site.")}};
    if (const std::string done = so_far(draft, words, deed); !done.empty())
        table.rows.insert(table.rows.begin(), {words.say("So far"), done});
    if (deed == Deed::down)
        table.rows.push_back(
            {words.say("Free after"), words.say("How far a piece must rise before the deepest of "
                                                "its joints is clear.")});
    if (deed == Deed::down && !draft.options.ticked.gone.empty())
        table.rows.push_back(
            {words.say("Missing"), words.say("Recorded as missing and left out: %1.", gone_tags(draft))});
    const auto said =
        draft.layout.pieces.empty() ? std::nullopt : weight_of(draft, draft.layout.pieces.front());
    if (!said) return table;
    if (!said->basis.empty()) table.rows.push_back({words.say("Basis"), said->basis});
    if (!said->caution.empty()) table.rows.push_back({words.say("Caution"), said->caution});
    return table;
}

/// What was found of each, in that order, where the list has no room for it.
void put_notes(const Draft &draft, const Words &words, const std::vector<Index<Piece>> &order,
               std::vector<Page> &pages) {
    if (has_room_for_notes(draft.size())) return;
    const Table notes = found_table(draft.options, draft.layout, order, words);
    if (!notes.rows.empty()) put_on(pages, draft.size(), notes);
}

Titled titled(const Draft &draft, const Words &words, const Table &table,
              const std::vector<Index<Piece>> &order, const std::string &title, const std::string &number,
              const std::string &subtitle, const std::string &name, Deed deed) {
    const PaperSize size = draft.size();
    std::vector<Page> pages{empty_page(size)};
    put_on(pages, size, cautions(draft, words, deed));
    put_on(pages, size, table);
    put_notes(draft, words, order, pages);
    return {std::move(pages),
            {title, subtitle, title, number, said_scale(nullptr, words), false, words.unit_note()},
            {title, name, ""}};
}

Titled taking_down_sheet(const Draft &draft) {
    const Words words = draft.words();
    Table table =
        table_called(words, words.say("Take down in this order: the last that was raised comes first"));
    table.columns = {flush_right(words.say("No."), 12), flush_left(words.say("Tag"), 34),
                     flush_right(words.say("Pegs"), 12), flush_right(words.say("Free after"), 22)};
    add_weight_columns(draft, words, table.columns);
    table.columns.push_back(flush_left(words.say("Then held by its pegs alone"), 44));
    const bool beside = has_room_for_notes(draft.size());
    if (beside) add_found_columns(draft.options, words, true, table.columns);
    table.columns.push_back(flush_left(words.say("Down"), box_width));
    std::vector<Index<Piece>> order;
    for (const DownStep &step : taking_down(draft.layout, draft.bodies)) {
        if (draft.options.ticked.is_gone(step.piece)) continue;
        const Piece &piece = draft.layout.pieces[step.piece];
        std::vector<std::string> row{std::to_string(table.rows.size() + 1), piece.tag,
                                     std::to_string(step.pegs.size()), length_up(words, step.rise)};
        add_weights(draft, words, step.piece, row);
        row.push_back(loose_tags(draft, step));
        if (beside) add_found_cells(draft.options, step.piece, true, row);
        order.push_back(step.piece);
        row.push_back(box(draft, step.piece, Deed::down));
        table.rows.push_back(std::move(row));
    }
    return titled(draft, words, table, order, words.say("Taking down"), "L-2",
                  words.say("%1 pieces, the last raised first", table.rows.size()), "taking-down",
                  Deed::down);
}

Titled raising_sheet(const Draft &draft) {
    const Words words = draft.words();
    Table table = table_called(words, words.say("Raise in this order, and tick off"));
    table.columns = {flush_right(words.say("Raise"), 14), flush_left(words.say("Tag"), 34),
                     flush_left(words.say("Laid on"), 50), flush_right(words.say("Pegs"), 12)};
    add_weight_columns(draft, words, table.columns);
    const bool beside = has_room_for_notes(draft.size());
    if (beside) add_found_columns(draft.options, words, true, table.columns);
    for (const std::string &heading :
         {words.say("Joints cut"), words.say("Checked"), words.say("Up"), words.say("Pegged")})
        table.columns.push_back(flush_left(heading, box_width));
    std::vector<Index<Piece>> order;
    for (const UpStep &step : raising(draft.layout)) {
        const Piece &piece = draft.layout.pieces[step.piece];
        std::vector<std::string> row{std::to_string(piece.raise), piece.tag, joined(piece.below),
                                     std::to_string(step.pegs.size())};
        add_weights(draft, words, step.piece, row);
        if (beside) add_found_cells(draft.options, step.piece, true, row);
        order.push_back(step.piece);
        for (const Deed deed : {Deed::cut, Deed::checked, Deed::up, Deed::pegged})
            row.push_back(box(draft, step.piece, deed));
        table.rows.push_back(std::move(row));
    }
    return titled(draft, words, table, order, words.say("Raising"), "L-3",
                  words.say("%1 pieces, one on the other", draft.layout.pieces.size()), "raising", Deed::up);
}

} // namespace

Subject taking_down_subject() {
    return {"taking down", [](const Draft &draft) { return std::vector{taking_down_sheet(draft)}; }};
}

Subject raising_subject() {
    return {"raising", [](const Draft &draft) { return std::vector{raising_sheet(draft)}; }};
}

} // namespace roundlay::sheets
