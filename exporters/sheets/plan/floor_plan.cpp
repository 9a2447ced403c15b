#include "exporters/sheets/plan/floor_plan.h"

#include "exporters/sheets/drawing/clash.h"
#include "exporters/sheets/drawing/columns.h"
#include "exporters/sheets/drawing/dimension.h"
#include "exporters/sheets/drawing/table.h"
#include "exporters/sheets/drawing/text.h"
#include "exporters/sheets/frame/tables.h"
#include "exporters/sheets/set/best.h"
#include "exporters/sheets/shell_view/bore_symbols.h"
#include "exporters/sheets/shell_view/scenes.h"
#include "kernel/layout/floors/bearing.h"
#include "kernel/layout/pieces/stock.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <optional>

namespace roundlay::sheets {
namespace {

constexpr double wall_beyond = 150; ///< mm of wood that walls are shown beyond the room
constexpr double walls_over = 1000; ///< mm: walls are shown as if cut this far over the floor
constexpr double lettering = 2.5;

struct FloorWanted {
    const Shell &shell;
    const Layout &layout;
    const Bodies &bodies;
    const Words &words;
    Index<FloorPlace> floor;
};

const FloorPlace &place_of(const FloorWanted &w) {
    return w.layout.floors.at(w.floor);
}

std::vector<const Timber *> timbers_of(const FloorWanted &w) {
    std::vector<const Timber *> all;
    for (const Timber &t : w.layout.timbers)
        if (t.floor == w.floor) all.push_back(&t);
    return all;
}

const Piece &piece_of(const FloorWanted &w, const Timber &timber) {
    return w.layout.pieces.at(timber.piece);
}

/// The room, and where its timbers run on out of it: in a wing a beam ends in a wall that is none of the
/// room's.
Rect shown_of(const FloorWanted &w) {
    Rect shown{0, 0, place_of(w).width, place_of(w).depth};
    for (const Timber *t : timbers_of(w))
        for (const Vec2 end : {t->from, t->to})
            shown = {std::min(shown.x0, end.x), std::min(shown.y0, end.y), std::max(shown.x1, end.x),
                     std::max(shown.y1, end.y)};
    return shown;
}

/// A wall as a box in the floor's frame, cut to what is shown round the room; nothing where it is not near.
std::optional<Polyhedron> wall_box(const FloorWanted &w, const WallPlace &wall) {
    const FloorPlace &place = place_of(w);
    const Frame frame = within(wall.frame, place.frame);
    const double low = place.level - walls_over, high = place.level + walls_over;
    Cell cell = moved(box_cell({{0, 0, low}, {wall.length, wall.thickness, high}}), frame);
    double out = wall_beyond;
    for (const WallPlace &each : w.layout.walls)
        out = std::max(out, each.thickness + wall_beyond);
    const Rect shown = shown_of(w);
    for (const Plane &plane : {Plane{{-1, 0, 0}, out - shown.x0}, Plane{{1, 0, 0}, shown.x1 + out},
                               Plane{{0, -1, 0}, out - shown.y0}, Plane{{0, 1, 0}, shown.y1 + out}})
        cell = clipped(cell, plane);
    if (cell.empty()) return std::nullopt;
    return border_of({cell});
}

/// Timbers under the walls' ends come out as hidden lines.
std::vector<Stretch> seen_floor(const FloorWanted &w) {
    Scene scene;
    for (const WallPlace &wall : w.layout.walls)
        if (auto box = wall_box(w, wall)) scene.solids.push_back(std::move(*box));
    for (const Timber *t : timbers_of(w)) {
        const Piece &piece = piece_of(w, *t);
        scene.solids.push_back(moved(w.bodies.at(piece.model).hewn, within(piece.frame, place_of(w).frame)));
    }
    return tidied(edges_seen(scene, {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}}));
}

class FloorDrawer {
  public:
    FloorDrawer(const FloorWanted &wanted, const std::vector<Stretch> &edges, double scale)
        : w_(wanted), place_(place_of(wanted)), edges_(edges), k_(scale) {}

    Block draw() {
        for (const Stretch &s : edges_)
            board_.add(Path{
                {k_ * s.from, k_ * s.to}, false, s.seen == Seen::visible ? Line::visible : Line::hidden, ""});
        const Rect drawn = bounds(board_.items());
        corner_ = {drawn.x0, drawn.y0};
        for (const Timber *t : timbers_of(w_))
            if (!add_tag(*t)) without_tag_.push_back(piece_of(w_, *t).tag);
        for (const FloorOpening &o : w_.shell.floors.at(w_.floor.at()).openings)
            add_opening(o);
        add_across(drawn);
        add_away(drawn);
        add_wall_names(drawn);
        return {bounds(board_.items()), std::move(board_).finished()};
    }
    /// Timbers whose tags found no room, in the order of the floor's timbers.
    const std::vector<std::string> &without_tag() const { return without_tag_; }

  private:
    /// Crossed out, as openings in floors are; the cross stops before words, so that the tags of the trimmers
    /// stand at their own.
    void add_opening(const FloorOpening &o) {
        const double x0 = o.from_left.mm() * k_, x1 = (o.from_left + o.width).mm() * k_;
        const double y0 = o.from_wall.mm() * k_, y1 = (o.from_wall + o.length).mm() * k_;
        if (!o.name.empty()) {
            std::vector<Vec2> places;
            for (const double part : {0.5, 0.75, 0.25, 0.9, 0.1})
                places.push_back({(x0 + x1) / 2, y0 + part * (y1 - y0)});
            board_.put(mark_text(o.name), places);
        }
        add_broken({x0, y0}, {x1, y1});
        add_broken({x0, y1}, {x1, y0});
    }

    std::vector<Rect> boxes_of_words(double air) const {
        std::vector<Rect> boxes;
        for (const Item &item : board_.items())
            if (const Text *text = std::get_if<Text>(&item)) boxes.push_back(box_of(*text).grown(air));
        return boxes;
    }

    void add_broken(Vec2 from, Vec2 to) {
        constexpr double air = 0.6, shortest = 1;
        for (const auto &[a, b] : outside(from, to, boxes_of_words(air), shortest))
            board_.add(Path{{a, b}, false, Line::dimension, ""});
    }

    /// It would be cut there, and lead to those words.
    bool runs_through_words(Vec2 from, Vec2 to) const {
        return std::ranges::any_of(boxes_of_words(0),
                                   [&](const Rect &box) { return crosses(box, from, to); });
    }

    /// Along the timber: on it where it is wide enough, else beside it.
    bool add_tag(const Timber &t) {
        Text text = mark_text(piece_of(w_, t).tag);
        const bool across = t.use == TimberUse::beam || t.use == TimberUse::trimmer;
        text.turn = across ? 0 : 90;
        const double beside = piece_of(w_, t).blank.width * k_ / 2 + lettering / 2 + 0.6;
        std::vector<Vec2> places;
        for (const double side : {0.0, -beside, beside})
            for (int i = 0; i <= 14; ++i) {
                const double part = 0.5 + (i % 2 == 0 ? 0.03 : -0.03) * i;
                const Vec2 on = k_ * (t.from + part * (t.to - t.from));
                places.push_back(across ? on + Vec2{0, side} : on + Vec2{side, 0});
            }
        return board_.put(text, places, 0.3) || lead_out(text, t);
    }

    /// Where a timber is too short for its tag and others lie beside it: the tag stands off, at the end of a
    /// leader.
    bool lead_out(Text text, const Timber &own) {
        const Vec2 middle = k_ * (own.from + 0.5 * (own.to - own.from));
        constexpr double farthest = 80, step = 2;
        constexpr int ways = 16;
        text.turn = 0;
        std::vector<Vec2> places;
        for (double off = 2 * step; off <= farthest; off += step)
            for (int way = 0; way < ways; ++way) {
                const double turn = 2 * std::numbers::pi * way / ways;
                places.push_back(middle + off * Vec2{std::cos(turn), std::sin(turn)});
            }
        for (const bool strict : {true, false})
            for (const Vec2 place : places) {
                text.at = place;
                const Rect box = box_of(text).grown(0.4);
                const Vec2 end{std::clamp(middle.x, box.x0, box.x1), std::clamp(middle.y, box.y0, box.y1)};
                const Path leader{{middle, end}, false, Line::dimension, "", true};
                const bool over_measures = box.x0 < corner_.x || box.y0 < corner_.y;
                if (over_measures || !board_.is_free(box, strict) || !board_.is_clear(leader)) continue;
                if (runs_through_words(middle, end) || (strict && is_beside_another(box, own))) continue;
                board_.add(text);
                board_.add(leader);
                return true;
            }
        return false;
    }

    /// A tag there would be read as that timber's.
    bool is_beside_another(const Rect &box, const Timber &own) const {
        for (const Timber *t : timbers_of(w_)) {
            const double half = piece_of(w_, *t).blank.width * k_ / 2 + lettering / 2;
            const Vec2 a = k_ * t->from, b = k_ * t->to;
            const Rect wood = joined(joined(Rect::nothing(), a), b).grown(half);
            if (t->piece != own.piece && box.overlaps(wood) &&
                (box.width() > box.height()) == (wood.width() > wood.height()))
                return true;
        }
        return false;
    }

    void add_marks(std::vector<double> places, double edge, Toward side) {
        std::sort(places.begin(), places.end());
        std::vector<Mark> marks;
        for (const double at : places)
            if (marks.empty() || at * k_ - marks.back().at > 1e-6)
                marks.push_back({at * k_, w_.words.length(at), at == 0});
        RunningLine line;
        line.side = side;
        line.edge = edge;
        line.lettering = lettering;
        add_running_dimensions(board_, marks, line);
    }

    /// Middles of the joists, from the room's left side.
    void add_across(const Rect &drawn) {
        std::vector<double> places{0, place_.width};
        for (const Timber *t : timbers_of(w_))
            if (t->use == TimberUse::joist || t->use == TimberUse::trimmed) places.push_back(t->from.x);
        add_marks(places, drawn.y0, Toward::down);
    }

    /// Middles of beams and trimmers, from the wall that the joists start in.
    void add_away(const Rect &drawn) {
        std::vector<double> places{0, place_.depth};
        for (const Timber *t : timbers_of(w_))
            if (t->use == TimberUse::beam || t->use == TimberUse::trimmer) places.push_back(t->from.y);
        add_marks(places, drawn.x0, Toward::left);
    }

    void add_wall_names(const Rect &drawn) {
        const auto name = [&](Index<WallPlace> wall, Vec2 at) {
            Text text = mark_text(w_.words.say("Wall %1", w_.layout.walls.at(wall).name));
            text.height = 3.5;
            text.bold = true;
            std::vector<Vec2> places;
            for (const double shift : {0.0, 20.0, -20.0, 40.0, -40.0})
                places.push_back(at + Vec2{shift, 0});
            board_.put(text, places);
        };
        const double middle = place_.width * k_ / 2; // of the room, however far a beam runs on
        name(place_.to, {middle, drawn.y1 + 4});
        name(place_.from, {middle, bounds(board_.items()).y0 - 4});
    }

    const FloorWanted &w_;
    const FloorPlace &place_;
    const std::vector<Stretch> &edges_;
    double k_;
    Board board_;
    Vec2 corner_; ///< to the left of it and under it measures will stand
    std::vector<std::string> without_tag_;
};

Table timber_table(const FloorWanted &w) {
    const Words &words = w.words;
    Table table = table_called(words, words.say("Timbers of this floor"));
    table.columns = {flush_left(words.say("Tag"), 24),       flush_left(words.say("What"), 28),
                     flush_right(words.say("Length"), 26),   flush_right(words.say("Width"), 20),
                     flush_right(words.say("Height"), 20),   flush_left(words.say("Clear spans"), 50),
                     flush_right(words.say("Bears on"), 20), flush_left(words.say("Lies on"), 40)};
    for (const Timber *t : timbers_of(w)) {
        const Piece &p = piece_of(w, *t);
        std::string spans, below;
        for (const double span : clear_spans(w.layout, *t))
            spans += (spans.empty() ? "" : ", ") + w.words.length(span);
        for (const std::string &tag : p.below)
            below += (below.empty() ? "" : ", ") + tag;
        const Blank stock = stock_of(p).size;
        table.rows.push_back({p.tag, words.word(name_of(t->use)), w.words.length(stock.length),
                              w.words.length(stock.width), w.words.length(stock.height), spans,
                              w.words.length(std::min(bearing_of(w.layout, *t, End::datum).length,
                                                      bearing_of(w.layout, *t, End::far).length)),
                              below});
    }
    return table;
}

std::string note_for(const FloorWanted &w) {
    return w.words.say(
        "The tops of the joists lie %1 over the foundation. Across: middles of the joists from "
        "the room's left side. Upward: middles of beams and trimmers from wall %2. A drawn span "
        "is no approval: local code and a licensed professional decide.",
        in_mm(place_of(w).level), w.layout.walls.at(place_of(w).from).name);
}

struct DrawnFloor {
    Page page;
    std::vector<std::string> without_tag;
};

/// At the largest scale that fits and gives every tag room; else at the one that leaves the fewest without,
/// and says which.
Best<DrawnFloor> best_floor(const FloorWanted &w, PaperSize size) {
    const std::vector<Stretch> edges = seen_floor(w);
    Best<DrawnFloor> best;
    const auto draw = [&](const Scale &scale) {
        FloorDrawer drawer(w, edges, scale.ratio);
        Page page = empty_page(size);
        if (!page.put(drawer.draw())) return;
        const Cost cost{drawer.without_tag().size(), 1};
        best.offer({std::move(page), drawer.without_tag()}, &scale, cost);
    };
    try_scales(shell_scales(w.shell.units), draw, [&](const Scale &) { return best.is_perfect(); });
    return best;
}

Titled plan_of(const FloorWanted &w, PaperSize size) {
    const std::string &name = place_of(w).name, title = w.words.say("Floor %1", name);
    const Best<DrawnFloor> best = best_floor(w, size);
    std::vector<Page> pages = best.is_empty() ? pages_not_drawn(size, w.words, w.words.say("The plan"))
                                              : std::vector{best.drawing().page};
    put_on(pages, size, note_table(w.words, note_for(w), 62));
    if (best.cost().left_over > 0)
        put_on(pages, size,
               left_over_table(w.words, w.words.say("Timbers with no room here for their tags"),
                               best.drawing().without_tag));
    put_on(pages, size, timber_table(w));
    return {std::move(pages),
            {title, w.words.say("its joists from above"), w.words.say("Joist plan"), "J-" + name,
             said_scale(best.scale(), w.words), false, w.words.unit_note()},
            {title, "floor:" + name, w.words.say("Floors")}};
}

} // namespace

Subject floor_subject(const Layout &layout, Index<FloorPlace> floor) {
    return {"floor " + std::to_string(floor.number() + 1) + ", " + layout.floors.at(floor).name,
            [floor](const Draft &draft) {
                const Words words = draft.words();
                return std::vector{
                    plan_of({draft.shell, draft.layout, draft.bodies, words, floor}, draft.size())};
            }};
}

} // namespace roundlay::sheets
