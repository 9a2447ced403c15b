#include "exporters/operation_sheets/operation_tables.h"

#include "exporters/machining/operation_words.h"
#include "exporters/sheets/drawing/columns.h"

#include <algorithm>
#include <cmath>

namespace roundlay::sheets {

namespace {

using machining::Operation;
using machining::OperationList;
using machining::Setup;

constexpr double noise = 1e-6;

/// In whole steps of what is printed: never less than it is, or never more.
double in_steps(const Words &words, double mm, bool up, double of_inch = 16) {
    const double step = words.system() == UnitSystem::metric ? 1 : mm_per_inch / of_inch;
    return (up ? std::ceil(mm / step - noise) : std::floor(mm / step + noise)) * step;
}

std::string length_up(const Words &words, double mm) {
    return words.length(in_steps(words, mm, true));
}

std::string length_down(const Words &words, double mm) {
    return words.length(in_steps(words, mm, false));
}

/// "0 to 203", within what it is of: a stretch that is free is told no longer, one that is not no shorter.
std::string stretch(const Words &words, double from, double to, bool no_longer) {
    return words.say("%1 to %2", in_mm(in_steps(words, from, no_longer)),
                     in_mm(in_steps(words, to, !no_longer)));
}

std::string stretches(const Words &words, const std::vector<machining::Stretch> &all, bool no_longer) {
    std::string text;
    for (const machining::Stretch &each : all)
        text += (text.empty() ? "" : "; ") + stretch(words, each.from, each.to, no_longer);
    return text;
}

std::string joined(const std::vector<std::string> &all) {
    std::string text;
    for (const std::string &each : all)
        text += (text.empty() ? "" : ", ") + each;
    return text;
}

/// Tenths of a degree, never less than it is: "7.2°".
std::string degrees_up(double angle, const Words &words) {
    const long long tenths = std::llround(std::ceil(angle * 10 - noise));
    if (tenths == 0) return "0°";
    std::string text = std::to_string(tenths / 10);
    if (tenths % 10 != 0)
        text += (words.language() == Language::french ? "," : ".") + std::to_string(tenths % 10);
    return text + "°";
}

/// Its long ones.
std::string faces_of(const machining::RawStock &raw, const Words &words) {
    std::vector<std::string> all;
    for (const machining::StockFace &face : raw.faces)
        if (face.side != LogFace::datum_end && face.side != LogFace::far_end)
            all.push_back(machining::words_of(face.side, words));
    return all.empty() ? words.say("none") : joined(all);
}

std::string packing_words(const Setup &setup, const Words &words) {
    if (std::abs(setup.packing) < 0.5) return words.say("none");
    const double mm = in_steps(words, std::abs(setup.packing) + 0.5, false);
    return setup.packing > 0 ? words.say("%1 under its far end", in_mm(mm))
                             : words.say("%1 under its datum end", in_mm(mm));
}

std::string hold_words(const Setup &setup, const Words &words) {
    switch (setup.hold) {
    case machining::Hold::faces:
        return stretches(words, setup.clamp, true);
    case machining::Hold::round:
        return words.say("no flat faces: for the shop to say");
    case machining::Hold::nowhere:
        break;
    }
    return words.say("no stretch long enough: for the shop to say");
}

const machining::AccessSide *way_in(const Operation &operation) {
    for (const machining::AccessSide &access : operation.access)
        if (access.side == operation.from) return &access;
    return nullptr;
}

std::string tolerance(double mm, const Words &words) {
    constexpr int parts = 64; // of an inch: 1 mm is less than a sixteenth
    if (words.system() == UnitSystem::metric) return words.length(mm);
    const Words fine(words.system(), parts, words.language());
    return fine.length(in_steps(words, mm, false, parts));
}

std::string diameter(const Operation &operation, const Words &words) {
    if (operation.bore) return words.length(operation.bore->diameter);
    return operation.round ? words.length(2 * operation.round->radius) : std::string();
}

std::string depth(const Operation &operation, const Words &words) {
    if (!operation.bore) return {};
    return operation.bore->through ? words.say("through") : words.length(operation.bore->depth);
}

std::string place(double from, double to, const Words &words) {
    return stretch(words, from, to, false);
}

using Row = std::vector<std::string>;

const char *const none = "–";

/// How it is cut.
Row how(const Operation &operation, const Words &words) {
    const machining::AccessSide *way = way_in(operation);
    return {operation.setup > 0 ? std::to_string(operation.setup) : none,
            operation.mark,
            machining::words_of(operation.kind, words),
            operation.made_for.empty() ? std::string() : words.name(operation.made_for),
            operation.from ? machining::words_of(*operation.from, words)
                           : words.say("no straight tool reaches it"),
            way ? degrees_up(way->tilt, words) : none,
            way ? length_up(words, way->reach) : none,
            operation.inside_radius ? length_down(words, *operation.inside_radius) : none,
            tolerance(operation.tolerance, words)};
}

std::vector<Column> how_columns(const Words &words) {
    return {flush_right(words.say("Set-up"), 16), flush_left(words.say("Mark"), 16),
            flush_left(words.say("Cut"), 30),     flush_left(words.say("For"), 26),
            flush_left(words.say("From"), 24),    flush_right(words.say("Tilt"), 24),
            flush_right(words.say("Reach"), 22),  flush_right(words.say("Radius"), 18),
            flush_right(words.say("Within"), 22)};
}

/// What of the stock it takes, and what it leaves.
Row where(const Operation &operation, const Words &words) {
    const Box3 &box = operation.box;
    return {diameter(operation, words),          depth(operation, words),
            place(box.low.x, box.high.x, words), place(box.low.y, box.high.y, words),
            place(box.low.z, box.high.z, words), joined(operation.makes)};
}

std::vector<Column> where_columns(const Words &words) {
    return {flush_right(words.say("Diameter"), 18),
            flush_right(words.say("Deep"), 22),
            flush_left("x", 34),
            flush_left("y", 30),
            flush_left("z", 30),
            flush_left(words.say("Faces"), 60)};
}

/// Some columns, and what stands in them.
struct Part {
    std::vector<Column> columns;
    Row (*row)(const Operation &, const Words &);
};

/// Each operation by its number and these parts of its row.
Table operations_by(const OperationList &list, const Words &words, const std::string &title,
                    const std::vector<Part> &parts) {
    Table table = table_called(words, title);
    table.columns = {flush_right(words.say("No."), 10)};
    for (const Part &part : parts)
        table.columns.insert(table.columns.end(), part.columns.begin(), part.columns.end());
    for (std::size_t i = 0; i < list.operations.size(); ++i) {
        Row row{std::to_string(i + 1)};
        for (const Part &part : parts) {
            const Row more = part.row(list.operations[i], words);
            row.insert(row.end(), more.begin(), more.end());
        }
        table.rows.push_back(std::move(row));
    }
    return table;
}

} // namespace

Table stock_table(const OperationList &list, const Words &words) {
    Table table = table_called(words, words.say("Stock"));
    table.columns = {flush_left("", 34), flush_left("", 110)};
    const Stock &stock = list.stock.stock;
    const auto row = [&](std::string what, std::string said) {
        table.rows.push_back({std::move(what), std::move(said)});
    };
    if (list.stock.rounds.empty())
        row(words.say("Squared stick"), words.say("%1 by %2 by %3", in_mm(stock.size.length),
                                                  in_mm(stock.size.width), in_mm(stock.size.height)));
    for (const machining::RoundStick &round : list.stock.rounds)
        row(words.say("Round stick"),
            words.say("%1 long, %2 across", in_mm(stock.size.length), in_mm(2 * round.radius)));
    if (!list.stock.rounds.empty()) row(words.say("Flats"), faces_of(list.stock, words));
    row(words.say("Lies"),
        words.say("x along the log from its datum end, y from its outside face to its inside face, z up as "
                  "it lies in the house; one corner of the stick at x %1, y %2, z %3",
                  in_mm(stock.frame.origin.x), in_mm(stock.frame.origin.y), in_mm(stock.frame.origin.z)));
    if (list.pieces.size() > 1) row(words.say("Alike"), joined(list.pieces));
    return table;
}

Table setup_table(const OperationList &list, const Words &words) {
    Table table = table_called(words, words.say("Set-ups"));
    table.columns = {flush_right(words.say("No."), 12),       flush_left(words.say("Lies on"), 30),
                     flush_left(words.say("Face up"), 24),    flush_left(words.say("Packing"), 34),
                     flush_left(words.say("Clamp at x"), 70), flush_left(words.say("Keep clear at x"), 70)};
    for (std::size_t i = 0; i < list.setups.size(); ++i) {
        const Setup &setup = list.setups[i];
        const std::string down = machining::words_of(setup.down, words);
        table.rows.push_back(
            {std::to_string(i + 1), setup.lies_on_flat ? down : words.say("%1, which is round", down),
             machining::words_of(setup.up, words), packing_words(setup, words), hold_words(setup, words),
             setup.keep_clear.empty() ? words.say("nothing") : stretches(words, setup.keep_clear, false)});
    }
    return table;
}

std::vector<Table> operations_tables(const OperationList &list, const Words &words, double width) {
    constexpr double all_in_one = 250; // mm: narrower paper breaks words
    const Part done{how_columns(words), how}, placed{where_columns(words), where};
    const std::string title = words.say("Operations, in working order");
    if (width >= all_in_one) return {operations_by(list, words, title, {done, placed})};
    return {operations_by(list, words, title, {done}),
            operations_by(list, words, words.say("Where they cut"), {placed})};
}

Table reading_table(const Words &words) {
    Table table = table_called(words, words.say("To be read so"));
    table.columns = {flush_left("", 28), flush_left("", 130)};
    table.rows = {
        {words.say("Tilt, reach"),
         words.say(
             "at least, of a straight tool from that side: the tilt at which its end or its flank lies on "
             "all faces of the cut, and the reach straight in from the stock; tilted, it needs more")},
        {words.say("Radius"), words.say("the least of an inner corner along the tool; 0: sharp, and a "
                                        "chisel's where the tool is round")},
        {words.say("Within"), words.say("plus or minus, a proposal that rests on no standard")},
        {words.say("x, y, z"),
         words.say("between which the cut takes wood of the stock, told outward to whole "
                   "steps: not to be set out by. The file beside it has planes and axes.")},
        {words.say("Faces"), words.say("of the finished piece, as they are called in its STEP file")},
        {words.say("Caution"), machining::caution(words)}};
    return table;
}

} // namespace roundlay::sheets
