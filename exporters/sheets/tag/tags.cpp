#include "exporters/sheets/tag/tags.h"

#include "exporters/sheets/drawing/dimension.h"
#include "exporters/sheets/drawing/text.h"
#include "exporters/sheets/form/form_pen.h"
#include "exporters/sheets/tag/label_stock.h"
#include "exporters/sheets/tag/qr.h"
#include "exporters/sheets/tag/tag_place.h"
#include "kernel/layout/pieces/stock.h"
#include "kernel/stock/taking_down.h"

#include <algorithm>

namespace roundlay::sheets {
namespace {

constexpr double code_size = 34; ///< quiet zone included: the code itself is over 25 mm
constexpr double tall = 60;      ///< mm: a label as high as that has its tag in large type over the code
constexpr double small_step = 3.9, beside = 4;

/// The largest lettering in which the words are no wider than `width`.
double fitting(const std::string &words, double width) {
    for (const double height : {14.0, 10.0, 7.0, 5.0, 3.5})
        if (text_width(words, height, true) <= width) return height;
    return least_lettering;
}

void add_arrow(std::vector<Item> &items, Vec2 from, Vec2 to, const std::string &name, Vec2 at) {
    const Vec2 d = to - from;
    items.emplace_back(Path{{from, to}, false, Line::frame, ""});
    const Vec2 way = (1 / length(d)) * d, side{-way.y, way.x};
    items.emplace_back(Fill{{{to, to - 4.5 * way + 1.8 * side, to - 4.5 * way - 1.8 * side}}, 0});
    items.emplace_back(lettered(name, at, 3.5, true, Role::mark));
}

std::string wall_words(const Layout &layout, const Piece &piece, const Words &words) {
    const std::string &part = part_letter(layout, part_of(layout, piece));
    if (!piece.timber) return words.say("Wall %1, round %2", part, piece.round);
    return words.say("Floor %1, %2", part, words.word(name_of(layout.timbers.at(*piece.timber).use)));
}

/// One label in the making.
struct Label {
    std::vector<Item> &items;
    const Draft &draft;
    const Words &words;
    Rect box, code;
    Index<Piece> index;
    bool whole = true; ///< all that must stand on it has found room

    const Piece &piece() const { return draft.layout.pieces[index]; }
    double left() const { return box.x0 + beside; }
    double right() const { return box.x1 - 3; }
    double column() const { return code.x0 - left() - 1; }

    /// Line under line from `y` down; where the next would stand. Not whole where the last is under `lowest`.
    double add(const std::string &all, double y, double width, double height, double step, double lowest) {
        for (const std::string &line : wrapped(all, width, height)) {
            if (y < lowest - 1e-6) {
                whole = false;
                return y;
            }
            items.emplace_back(lettered(line, {left(), y}, height, false, Role::mark));
            y -= step;
        }
        return y;
    }
};

/// Of what hangs in the slings; empty where no weights are wanted.
std::string weight_words(const Label &label) {
    const Words &words = label.words;
    if (!label.draft.options.weight) return {};
    if (const auto log = label.piece().mends)
        return words.say("Lifted with %1.", label.draft.layout.pieces[*log].tag);
    const Lift lift = lift_of(label.draft.shell, label.draft.layout, label.draft.bodies, label.index);
    if (!lift.known) return words.say("Weight not known.");
    return words.say("%1, estimated: no lift plan.", words.weights(lift.low_kg, lift.high_kg));
}

std::string size_words(const Label &label) {
    return label.words.say("Length %1, raise %2", in_mm(stock_of(label.piece()).size.length),
                           label.piece().raise);
}

std::string code_words(const Label &label) {
    const std::string &revision = label.draft.options.fields.revision;
    return piece_hash(label.piece()) + (revision.empty() ? "" : " r." + revision);
}

/// Between the tag and what is beside its code: as much as there is room for, what can hurt first.
void add_found(Label &label, const Rect &room) {
    const FoundNote *note = label.draft.options.found_of(label.index);
    if (!note) return;
    std::string all = note->words();
    if (!note->pegs.empty()) all += (all.empty() ? "" : "; ") + label.words.say("pegs: %1", note->pegs);
    std::vector<std::string> lines =
        wrapped(label.words.say("as found: %1", all), room.width(), least_lettering);
    const auto fit = static_cast<std::size_t>(std::max(0.0, room.height() / small_step));
    if (lines.size() > fit && fit > 0) {
        lines[fit - 1] = shortened(lines[fit - 1] + " " + lines[fit], room.width(), least_lettering);
        lines.resize(fit);
    }
    double y = room.y1 - least_lettering;
    for (std::size_t i = 0; i < std::min(fit, lines.size()); ++i, y -= small_step)
        label.items.emplace_back(lettered(lines[i], {label.left(), y}, least_lettering, false, Role::mark));
}

/// How the tag lies on the piece: up, and what is to its right; on a timber's top the way to its datum end.
void add_arrows(Label &label, TagFace face) {
    const double x = label.left() + 3, low = label.box.y0 + 7.5;
    const Words &words = label.words;
    if (face == TagFace::showing) return;
    if (face != TagFace::top)
        add_arrow(label.items, {x, low}, {x, low + 8}, words.say("up"), {x + 2.5, low + 5});
    const std::string right = face == TagFace::end_grain
                                  ? right_words(label.draft.layout, label.piece(), words)
                                  : words.say("datum end");
    add_arrow(label.items, {x, low}, {x + 12, low}, right, {x + 13.5, low + 0.5});
}

std::string arrow_words(const Label &label, TagFace face) {
    const Words &words = label.words;
    switch (face) {
    case TagFace::showing:
        return {};
    case TagFace::top:
        return " " + words.say("→ datum end");
    case TagFace::inside:
        return " " + words.say("↑ up, → datum end");
    case TagFace::end_grain:
        break;
    }
    return " " + words.say("↑ up, → %1", right_words(label.draft.layout, label.piece(), words));
}

/// The tag itself, as large as it fits; where what follows begins.
double add_name(Label &label, double largest, double width) {
    const double height = std::min(largest, fitting(label.piece().tag, width));
    double y = label.box.y1 - (label.box.height() < tall ? 2.5 : 6) - height;
    for (const std::string &line : wrapped(label.piece().tag, width, height, true)) {
        label.items.emplace_back(lettered(line, {label.left(), y}, height, true, Role::mark));
        y -= height * 1.6;
    }
    return y + height * 1.6;
}

void fill_tall(Label &label, TagFace face) {
    const Layout &layout = label.draft.layout;
    const double name = add_name(label, 10, label.right() - label.left());
    const double over_code = label.code.y1 + 1.2;
    const std::string staple = staple_words(layout, label.piece(), face, label.words);
    const double width = label.right() - label.left();
    const double lines = static_cast<double>(wrapped(staple, width, least_lettering).size());
    const double first = over_code + (lines - 1) * small_step;
    label.whole = label.whole && first + least_lettering < name - 1;
    label.add(staple, first, width, least_lettering, small_step, over_code);
    add_found(label, {label.left(), first + least_lettering + 1, label.right(), name - 2});
    const double lowest = label.box.y0 + 18;
    const std::string where = wall_words(layout, label.piece(), label.words);
    const bool large = text_width(where, 3.5) <= label.column();
    double y = label.add(where, label.code.y1 - 4, label.column(), large ? 3.5 : least_lettering,
                         large ? 4.6 : small_step, lowest);
    y = label.add(size_words(label), y, label.column(), least_lettering, small_step, lowest);
    y = label.add(weight_words(label), y, label.column(), least_lettering, small_step, lowest);
    if (!layout.name.empty() && y >= lowest)
        label.items.emplace_back(lettered(shortened(layout.name, label.column(), least_lettering),
                                          {label.left(), y}, least_lettering, false, Role::mark));
    add_arrows(label, face);
}

void fill_low(Label &label, TagFace face) {
    constexpr double from_edge = 2, largest = 5;
    const Layout &layout = label.draft.layout;
    const double lowest = label.box.y0 + from_edge;
    const std::string code = code_words(label);
    const double name = add_name(label, largest, label.column() - text_width(code, least_lettering) - 2);
    Text beside_name =
        lettered(code, {label.left() + label.column(), name}, least_lettering, false, Role::mark);
    beside_name.across = Across::right;
    label.items.emplace_back(beside_name);
    double y = name - small_step - 0.7;
    for (const std::string &all :
         {wall_words(layout, label.piece(), label.words), size_words(label), weight_words(label),
          staple_words(layout, label.piece(), face, label.words) + arrow_words(label, face)})
        if (!all.empty()) y = label.add(all, y, label.column(), least_lettering, small_step, lowest);
    add_found(label, {label.left(), lowest, label.left() + label.column(), y + least_lettering});
}

/// Whether all that must stand on it found room.
bool add_tag(std::vector<Item> &items, const Rect &box, const Draft &draft, Index<Piece> index,
             const Words &words) {
    const double size = std::min(code_size, box.height() - 2);
    Label label{items, draft, words, box, {box.x1 - size - 1, box.y0 + 1, box.x1 - 1, box.y0 + 1 + size},
                index};
    const Piece &piece = label.piece();
    if (!draft.options.labels) // to be cut apart
        items.emplace_back(Path{{{box.x0, box.y0}, {box.x1, box.y0}, {box.x1, box.y1}, {box.x0, box.y1}},
                                true,
                                Line::dimension,
                                ""});
    if (const auto fill = qr_code(tag_code(piece, draft.options.fields.revision), label.code))
        items.emplace_back(*fill);
    const TagFace face = tag_face(piece, box.width(), box.height());
    if (box.height() < tall) {
        fill_low(label, face);
        return label.whole;
    }
    fill_tall(label, face);
    items.emplace_back(
        lettered(code_words(label), {label.left(), box.y0 + 1.8}, least_lettering, false, Role::mark));
    return label.whole;
}

Sheet empty_sheet(PaperSize size, const std::string &first_tag, std::size_t number, const Words &words) {
    Sheet sheet;
    sheet.size = size;
    sheet.drawing = Rect{0, 0, size.width, size.height};
    sheet.title_block = Rect::nothing();
    sheet.title = words.say("Tags from %1", first_tag);
    sheet.chapter = words.say("Tags");
    sheet.anchor = "tags:" + std::to_string(number);
    return sheet;
}

/// The sheets, and the first tag that has no room for all.
std::pair<std::vector<Sheet>, std::optional<Index<Piece>>> drawn(const Draft &draft, const OnlyPieces &only) {
    const PaperSize size = office_paper_for(draft.shell, draft.options);
    const LabelStock stock = draft.options.labels.value_or(plain_labels(size));
    const Words words = draft.words();
    std::vector<Sheet> sheets;
    std::optional<Index<Piece>> without_room;
    int tags = 0;
    for (const auto i : pieces_of(draft.layout, only)) {
        const int place = tags++ % (stock.columns * stock.rows);
        if (place == 0)
            sheets.push_back(empty_sheet(size, draft.layout.pieces[i].tag, sheets.size() + 1, words));
        if (!add_tag(sheets.back().items, label_box(stock, size, place), draft, i, words) && !without_room)
            without_room = i;
    }
    return {std::move(sheets), without_room};
}

bool have_room(const Draft &draft, const OnlyPieces &only, const LabelStock &stock) {
    SheetOptions options = draft.options;
    options.labels = stock;
    return !drawn({draft.shell, draft.layout, draft.bodies, options}, only).second;
}

/// A label no smaller than that on which all tags have room, tried; nothing where no paper has it.
std::optional<LabelStock> that_does(const Draft &draft, const OnlyPieces &only, const LabelStock &stock,
                                    Index<Piece> hardest) {
    constexpr double step = 5, most = 200;
    const double least = std::max(stock.height, least_label_height);
    for (const double height : {least, least + step, least + 2 * step, tall})
        for (double width = std::max(stock.width, least_label_width); width <= most; width += step) {
            const LabelStock tried = one_label(width, height);
            if (have_room(draft, std::vector{hardest}, tried) && have_room(draft, only, tried)) return tried;
        }
    return {};
}

} // namespace

std::vector<Sheet> tag_sheets(const Draft &draft, const OnlyPieces &only) {
    return drawn(draft, only).first;
}

std::optional<Said> tag_fault(const Draft &draft, const OnlyPieces &only) {
    const auto &stock = draft.options.labels;
    if (!stock) return {};
    const bool too_small = is_too_small(*stock);
    auto fault = label_fault(*stock, office_paper_for(draft.shell, draft.options));
    if (fault && !too_small) return fault;
    const auto pieces = pieces_of(draft.layout, only);
    const std::optional<Index<Piece>> without_room =
        too_small && !pieces.empty() ? pieces.front() : drawn(draft, only).second;
    if (!without_room) return fault;
    const std::string &tag = draft.layout.pieces[*without_room].tag;
    const auto does = that_does(draft, only, *stock, *without_room);
    if (does)
        return said("labels of %1 by %2 have no room for all that stands on the tag of %3; %4 by %5 have it, "
                    "and for all others",
                    in_mm(stock->width), in_mm(stock->height), tag, in_mm(does->width), in_mm(does->height));
    return said("labels of %1 by %2 have no room for all that stands on the tag of %3", in_mm(stock->width),
                in_mm(stock->height), tag);
}

} // namespace roundlay::sheets
