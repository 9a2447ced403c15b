#include "exporters/sheets/frame/title_block.h"

#include "exporters/sheets/drawing/text.h"
#include "exporters/words/voice.h"

#include <array>

namespace roundlay::sheets {
namespace {

constexpr double filing_margin = 20, margin = 10; // ISO 5457, from memory
constexpr double block_width = 180;               // ISO 7200, from memory
constexpr double label = 2.5;                     // lettering of the fields' names: the least that is allowed
constexpr double row_height = 9.5;
constexpr int rows = 4;
constexpr double centring_mark = 5;

struct Field {
    double x, width; ///< within the block
    int row, tall;   ///< rows from the top, how many rows it takes
    std::string name;
    const std::string *value;
    double lettering;
};

void line(std::vector<Item> &items, Vec2 from, Vec2 to, Line kind) {
    items.emplace_back(Path{{from, to}, false, kind, ""});
}

/// The largest lettering of the series not over `height` in which the words take `width` or less, and their
/// accents keep clear of what stands above; in the smallest they are cut off with an ellipsis.
Text fitted(const std::string &text, Vec2 at, double width, double height, bool bold,
            const Rect &above = Rect::nothing()) {
    for (const double h : {7.0, 5.0, 3.5, 2.5}) {
        if (h > height || text_width(text, h, bold) > width) continue;
        Text made = lettered(text, at, h, bold, Role::title);
        if (h == label || !box_of(made).overlaps(above)) return made;
    }
    const auto lines = wrapped(text, width - text_width("\u2026", label, bold), label, bold);
    return lettered(lines.size() > 1 ? lines[0] + "\u2026" : lines[0], at, label, bold, Role::title);
}

void draw_field(std::vector<Item> &items, const Rect &block, const Field &field) {
    constexpr double air = 1.2;
    const double top = block.y1 - field.row * row_height, bottom = top - field.tall * row_height;
    const Rect cell{block.x0 + field.x, bottom, block.x0 + field.x + field.width, top};
    items.emplace_back(Path{{{cell.x0, cell.y0}, {cell.x1, cell.y0}, {cell.x1, cell.y1}, {cell.x0, cell.y1}},
                            true,
                            Line::dimension,
                            ""});
    const Text name = lettered(field.name, {cell.x0 + air, cell.y1 - air - label}, label, false, Role::title);
    if (!field.name.empty()) items.emplace_back(name);
    if (!field.value->empty())
        items.emplace_back(fitted(*field.value, {cell.x0 + air, cell.y0 + 1.4}, cell.width() - 2 * air,
                                  field.lettering, true, box_of(name)));
}

void draw_title(std::vector<Item> &items, const Rect &block, const Field &field, const TitleFields &fields) {
    const std::string none;
    Field empty = field;
    empty.value = &none;
    draw_field(items, block, empty);
    constexpr double air = 1.2;
    const double x = block.x0 + field.x + air, width = field.width - 2 * air;
    const double top = block.y1 - field.row * row_height;
    if (!fields.shell.empty()) {
        constexpr double beside_label = 12;
        Text shell =
            fitted(fields.shell, {x + beside_label, top - air - label}, width - beside_label, label, false);
        items.emplace_back(shell);
    }
    const Text title = fitted(fields.title, {x, top - 11.2}, width, 5, true);
    items.emplace_back(title);
    if (!fields.supplement.empty())
        items.emplace_back(fitted(fields.supplement, {x, top - 16.4}, width, 3.5, false, box_of(title)));
}

/// Under the name of its field.
void draw_note(std::vector<Item> &items, const Rect &block, const std::string &note) {
    double y = block.y1 - 2 * row_height - 8.3;
    for (const std::string &text : wrapped(note, 74 - 2.4, label)) {
        items.emplace_back(lettered(text, {block.x0 + 45.2, y}, label, false, Role::title));
        y -= 3.9;
    }
}

/// In the field that is left empty for it.
void draw_symbol(std::vector<Item> &items, const Rect &block, Angle angle) {
    const Block symbol = projection_symbol(angle, 2.5);
    const double x = block.x0 + 27 + (17 - symbol.room.width()) / 2;
    const double bottom = block.y0 + (row_height - symbol.room.height()) / 2;
    for (const Item &item : placed(symbol, {x, bottom}).items)
        items.push_back(item);
}

/// What stands in the block beside what its sheet is about.
struct OwnWords {
    std::string sheet, paper, language, none;
};

std::array<Field, 12> fields_of(const TitleFields &f, const OwnWords &own, const Voice &voice) {
    return {{
        {0, 44, 0, 1, voice.say("Owner"), &f.owner, 3.5},
        {0, 44, 1, 1, voice.say("Created by"), &f.creator, 3.5},
        {0, 44, 2, 1, voice.say("Approved by"), &f.approved, 3.5},
        {0, 27, 3, 1, voice.say("Scale"), &f.scale, 3.5},
        {27, 17, 3, 1, "", &own.none, 3.5},
        {118, 62, 0, 1, voice.say("Document type"), &f.document_type, 3.5},
        {118, 62, 1, 1, voice.say("Number"), &f.number, 3.5},
        {118, 31, 2, 1, voice.say("Date of issue"), &f.date, 3.5},
        {149, 31, 2, 1, voice.say("Revision"), &f.revision, 3.5},
        {118, 31, 3, 1, voice.say("Sheet"), &own.sheet, 3.5},
        {149, 16, 3, 1, voice.say("Lang."), &own.language, 3.5},
        {165, 15, 3, 1, voice.say("Size"), &own.paper, 3.5},
    }};
}

void draw_block(std::vector<Item> &items, const Rect &block, const TitleFields &f, const std::string &sheet,
                const std::string &paper) {
    const Voice voice({f.language, UnitSystem::metric});
    const OwnWords own{sheet, paper, std::string(tag_of(f.language)), ""};
    for (const Field &field : fields_of(f, own, voice))
        draw_field(items, block, field);
    draw_title(items, block, {44, 74, 0, 2, voice.say("Title"), &own.none, 5}, f);
    draw_field(items, block, {44, 74, 2, 2, voice.say("Notes on this sheet"), &own.none, 2.5});
    draw_note(items, block, f.note);
    if (f.symbol) draw_symbol(items, block, f.angle);
    items.emplace_back(
        Path{{{block.x0, block.y0}, {block.x0, block.y1}, {block.x1, block.y1}}, false, Line::frame, ""});
}

std::string paper_name(PaperSize size) {
    for (const Paper paper : {Paper::a4, Paper::a3, Paper::a2, Paper::a1, Paper::letter, Paper::tabloid})
        if (size_of(paper) == size || turned(size_of(paper)) == size)
            return paper == Paper::tabloid ? "11x17" : name_of(paper);
    return "";
}

void draw_frame(std::vector<Item> &items, PaperSize size) {
    const Rect a = drawing_area(size);
    items.emplace_back(Path{{{a.x0, a.y0}, {a.x1, a.y0}, {a.x1, a.y1}, {a.x0, a.y1}}, true, Line::frame, ""});
    const double mx = size.width / 2, my = size.height / 2;
    line(items, {mx, a.y0 - centring_mark}, {mx, a.y0}, Line::frame);
    line(items, {mx, a.y1}, {mx, a.y1 + centring_mark}, Line::frame);
    line(items, {a.x0 - centring_mark, my}, {a.x0, my}, Line::frame);
    line(items, {a.x1, my}, {a.x1 + centring_mark, my}, Line::frame);
}

} // namespace

Rect drawing_area(PaperSize size) {
    return {filing_margin, margin, size.width - margin, size.height - margin};
}

Rect title_block_area(PaperSize size) {
    const Rect area = drawing_area(size);
    return {area.x1 - block_width, area.y0, area.x1, area.y0 + rows * row_height};
}

Sheet framed_sheet(PaperSize size, const TitleFields &fields, int number, int of) {
    Sheet sheet;
    sheet.size = size;
    sheet.drawing = drawing_area(size);
    sheet.title_block = title_block_area(size);
    draw_frame(sheet.items, size);
    draw_block(sheet.items, sheet.title_block, fields, std::to_string(number) + " / " + std::to_string(of),
               paper_name(size));
    return sheet;
}

// A truncated cone, its narrow end to the left, and the view of that end: to the left of it in third angle,
// to the right in first angle. Diameters are as 2 to 1, the length is the large diameter.
Block projection_symbol(Angle angle, double height) {
    const double large = 2 * height, small = height, between = 0.8 * height, tip = 0.6 * height;
    const bool third = angle == Angle::third;
    const double cone = third ? tip + large + between : tip,
                 ends = third ? tip + large / 2 : cone + large + between + large / 2;
    const double y = large / 2 + tip;
    Block block;
    block.items.emplace_back(Path{{{cone, y - small / 2},
                                   {cone + large, y - large / 2},
                                   {cone + large, y + large / 2},
                                   {cone, y + small / 2}},
                                  true,
                                  Line::strong,
                                  ""});
    block.items.emplace_back(Circle{{ends, y}, large / 2, Line::strong, ""});
    block.items.emplace_back(Circle{{ends, y}, small / 2, Line::strong, ""});
    line(block.items, {cone - tip, y}, {cone + large + tip, y}, Line::centre);
    line(block.items, {ends - large / 2 - tip, y}, {ends + large / 2 + tip, y}, Line::centre);
    line(block.items, {ends, 0}, {ends, 2 * y}, Line::centre);
    block.room = {0, 0, 2 * large + between + 2 * tip, 2 * y};
    return block;
}

} // namespace roundlay::sheets
