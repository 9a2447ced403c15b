#include "exporters/sheets/shell_view/bore_symbols.h"

#include "exporters/sheets/drawing/columns.h"
#include "exporters/sheets/drawing/dimension.h"
#include "exporters/sheets/drawing/text.h"

#include <algorithm>

namespace roundlay::sheets {
namespace {

constexpr double least_peg = 0.9, least_other = 1.6; ///< smaller on paper than this is drawn this large
constexpr double cross_arm = 1.3;                    ///< of centre lines beyond the bore
constexpr double lettering = 2.5;

Item stroke(Vec2 a, Vec2 b) {
    return Path{{a, b}, false, Line::dimension, ""};
}

void add_centre_lines(std::vector<Item> &items, Vec2 c, double arm) {
    items.push_back(stroke({c.x - arm, c.y}, {c.x + arm, c.y}));
    items.push_back(stroke({c.x, c.y - arm}, {c.x, c.y + arm}));
}

Path hexagon(Vec2 c, double r) {
    constexpr double half = 0.5, high = 0.8660254;
    Path path{{}, true, Line::strong, ""};
    for (const Vec2 d : {Vec2{1, 0}, Vec2{half, high}, Vec2{-half, high}, Vec2{-1, 0}, Vec2{-half, -high},
                         Vec2{half, -high}})
        path.points.push_back(c + r * d);
    return path;
}

std::string rounds_of(const Layout &layout, const PlacedBore &bore, const Words &words) {
    if (bore.logs.empty()) return words.say("none");
    const auto round = [&](const BoredLog &log) { return std::to_string(layout.pieces.at(log.piece).round); };
    const std::string first = round(bore.logs.front()), last = round(bore.logs.back());
    return first == last ? first : words.say("%1 to %2", first, last);
}

std::string drift_of(const StatedBore &stated, const Words &words) {
    const double drift = stated.drift.mm();
    if (drift == 0) return words.say("none");
    return drift > 0 ? words.say("%1 to the right", in_mm(drift))
                     : words.say("%1 to the left", in_mm(-drift));
}

} // namespace

double symbol_reach(double diameter) {
    return std::max(diameter, least_other) / 2 + cross_arm;
}

std::vector<Item> bore_symbol(const std::optional<BoreUse> &use, Vec2 c, double diameter) {
    std::vector<Item> items;
    const double r = std::max(diameter, use ? least_other : least_peg) / 2;
    constexpr double diagonal = 0.7071068;
    if (use == BoreUse::bolt)
        items.emplace_back(hexagon(c, r));
    else
        items.emplace_back(Circle{c, r, use == BoreUse::hole ? Line::hidden : Line::strong, ""});
    if (use == BoreUse::rod) items.emplace_back(dot(c, 0.6 * r));
    if (use == BoreUse::wire)
        for (const double way : {1.0, -1.0})
            items.push_back(stroke(c - r * diagonal * Vec2{1, way}, c + r * diagonal * Vec2{1, way}));
    else
        add_centre_lines(items, c, r + cross_arm);
    return items;
}

Text mark_text(const std::string &words) {
    Text text;
    text.words = words;
    text.height = lettering;
    text.across = Across::middle;
    text.upright = Upright::middle;
    text.role = Role::mark;
    return text;
}

bool put_bore_mark(Board &board, const std::string &mark, Vec2 c, double diameter) {
    const double dx = symbol_reach(diameter) + text_width(mark, lettering) / 2,
                 dy = symbol_reach(diameter) + lettering / 2;
    std::vector<Vec2> places;
    for (const double away : {0.6, 2.0, 4.0, 7.0, 11.0, 16.0})
        for (const Vec2 way : {Vec2{1, 0}, Vec2{-1, 0}, Vec2{0, 1}, Vec2{0, -1}, Vec2{1, 1}, Vec2{-1, 1},
                               Vec2{1, -1}, Vec2{-1, -1}})
            places.push_back(c + Vec2{way.x * (dx + away), way.y * (dy + away)});
    return board.put(mark_text(mark), places, 0.3);
}

std::vector<PlacedBore> named_bores(const Shell &shell, const Layout &layout, const Words &words) {
    std::vector<PlacedBore> all = placed_bores(shell, layout);
    for (PlacedBore &bore : all)
        bore.mark = words.name(bore.mark);
    return all;
}

bool is_from_foundation(const Shell &shell, const PlacedBore &bore) {
    return shell.bores.at(bore.stated).use != BoreUse::hole && !bore.logs.empty() && bore.logs.front().bedded;
}

Table bore_table(const Shell &shell, const Layout &layout, const Words &words,
                 std::optional<Index<WallPlace>> wall_wanted) {
    Table table = table_called(
        words, wall_wanted ? words.say("Bores of this wall, but for pegs")
                           : words.say("Rods, bolts and wiring that come out of the foundation"));
    table.columns = {flush_left(words.say("Mark"), 20),
                     flush_left(words.say("Name"), 34),
                     flush_left(words.say("Wall"), 12),
                     flush_right(words.say("From left corner"), 26),
                     flush_right(words.say("From outside face"), 26),
                     flush_right(words.say("Bore"), 18),
                     flush_right(words.say("Rounds"), 18),
                     flush_left(words.say("Drift each round"), 26)};
    for (const PlacedBore &bore : named_bores(shell, layout, words)) {
        if (wall_wanted ? bore.wall != *wall_wanted : !is_from_foundation(shell, bore)) continue;
        const StatedBore &stated = shell.bores[bore.stated];
        const WallPlace &wall = layout.walls.at(bore.wall);
        const double in = stated.from_outside ? stated.from_outside->mm() : wall.thickness / 2;
        table.rows.push_back({bore.mark, stated.name.empty() ? "-" : stated.name, wall.name,
                              words.length(stated.from_left.mm()), words.length(in),
                              words.length(stated.diameter.mm()), rounds_of(layout, bore, words),
                              drift_of(stated, words)});
    }
    return table;
}

} // namespace roundlay::sheets
