// What is measured of the house as a whole: walls from corner to corner, diagonals, level planes, where north
// is.
#include "exporters/sheets/drawing/board.h"
#include "exporters/sheets/drawing/text.h"
#include "exporters/sheets/form/forms.h"
#include "exporters/sheets/form/key_marks.h"
#include "kernel/survey/survey.h"

#include <algorithm>
#include <cmath>

namespace roundlay::sheets {
namespace {

constexpr double plan_tall = 44, plan_wide = 110; ///< on paper, at most
constexpr double name_width = 22, air = 3;
constexpr std::size_t least_planes = 2;

/// By outside corners, whose walls walk round the house.
std::vector<Index<CornerPlace>> outline_of(const Layout &layout) {
    std::vector<Index<CornerPlace>> corners;
    for (const auto corner : layout.corners.indices())
        if (layout.corners[corner].kind == CornerKind::corner) corners.push_back(corner);
    return corners;
}

Vec2 outside_point(const Layout &layout, const CornerPlace &corner) {
    const Vec3 at = layout.walls[corner.starts].frame.origin;
    return {at.x, at.y};
}

template <typename Part> bool is_in(const std::vector<Part> &parts, const Part &part) {
    return std::ranges::find(parts, part) != parts.end();
}

class HouseForm {
  public:
    HouseForm(const Draft &draft, const Record &record)
        : draft_(draft), recorded_(record), record_(with_house_to_measure(record, draft.shell, draft.layout)),
          sheets_(draft, record, head()) {}

    std::vector<Sheet> draw() {
        add_remarks();
        add_plan();
        in_pairs(record_.walls.size(), line_height_, [&](FormPen &pen, const Rect &room, std::size_t i) {
            draw_wall(pen, room, record_.walls[i]);
        });
        in_pairs(record_.diagonals.size(), line_height_, [&](FormPen &pen, const Rect &room, std::size_t i) {
            draw_diagonal(pen, room, record_.diagonals[i]);
        });
        std::vector<LevelPlane> planes = record_.planes;
        planes.resize(std::max(planes.size() + 1, least_planes));
        in_pairs(planes.size(), print_line + box_height + 1,
                 [&](FormPen &pen, const Rect &room, std::size_t i) { draw_plane(pen, room, planes[i]); });
        return sheets_.finished();
    }

  private:
    FormHead head() const {
        const Words words = draft_.words();
        return {words.say("The house"),
                "",
                "F-0",
                words.say("Field forms"),
                "form-house",
                words.say(
                    "Walls from outside corner to outside corner, or, ticked, from inside corner to inside "
                    "corner; diagonals the same; a partition between the faces of the two walls that it runs "
                    "between. A level plane is told apart by its name, and marked on "
                    "the house; a second one says how much higher it lies than the first.")};
    }

    void add_remarks() {
        const Words &words = sheets_.words();
        const Rect room = sheets_.strip(print_line + box_height + 1);
        FormPen pen = sheets_.pen();
        const double top = room.y1 - print_line, low = top - box_height, half = room.width() / 2;
        pen.print({room.x0, top}, half - 2, words.say("how exact, and how it was measured"));
        pen.box({room.x0, low, room.x0 + half, top}, words_box, "", {record_.exactness, ""});
        pen.print({room.x0 + half + 1, top}, half - 2, words.say("what could not be seen"));
        pen.box({room.x0 + half, low, room.x1, top}, words_box, "", {record_.not_seen, ""});
    }

    std::string name_of_corner(Index<CornerPlace> corner) const {
        return sheets_.words().name(corner_name(record_, draft_.layout, draft_.layout.corners[corner].name));
    }

    /// The walk of its walls, with its corners and what runs through it, and a circle for the arrow of north.
    void add_plan() {
        const auto outline = outline_of(draft_.layout);
        if (outline.size() < 3) return;
        Board board;
        std::vector<Vec2> points;
        for (const auto corner : outline)
            points.push_back(outside_point(draft_.layout, draft_.layout.corners[corner]));
        Rect size = Rect::nothing();
        for (const Vec2 p : points)
            size = joined(size, p);
        const double k = std::min(plan_tall / size.height(), plan_wide / size.width());
        for (Vec2 &p : points)
            p = k * (p - Vec2{size.x0, size.y0});
        board.add(Path{points, true, Line::dimension, ""});
        add_diagonals(board, outline, points);
        add_names(board, outline, points);
        const Rect drawn = bounds(board.items());
        const Rect room = sheets_.strip(drawn.height() + 2 * air);
        for (Item &item : placed({drawn, std::move(board).finished()}, {room.x0, room.y0 + air}).items)
            sheets_.items().push_back(std::move(item));
        add_north(room);
    }

    void add_diagonals(Board &board, const std::vector<Index<CornerPlace>> &outline,
                       const std::vector<Vec2> &points) const {
        const auto at = [&](const std::string &name) -> std::optional<Vec2> {
            for (std::size_t i = 0; i < outline.size(); ++i)
                if (corner_name(record_, draft_.layout, draft_.layout.corners[outline[i]].name) == name)
                    return points[i];
            return {};
        };
        for (const Diagonal &diagonal : record_.diagonals)
            if (const auto from = at(diagonal.from), to = at(diagonal.to); from && to)
                add_stroke(board, *from, *to, Line::hidden);
    }

    /// Of corners outside of them, of walls beside their middles.
    void add_names(Board &board, const std::vector<Index<CornerPlace>> &outline,
                   const std::vector<Vec2> &points) const {
        for (std::size_t i = 0; i < outline.size(); ++i) {
            const Vec2 p = points[i], before = points[(i + points.size() - 1) % points.size()],
                       next = points[(i + 1) % points.size()];
            const Vec2 way = (1 / length(next - p)) * (next - p),
                       back = (1 / length(p - before)) * (p - before);
            const Vec2 out = Vec2{way.y, -way.x} + Vec2{back.y, -back.x};
            put_name(board, name_of_corner(outline[i]), p, out, 3.5);
            put_name(board, draft_.layout.walls[draft_.layout.corners[outline[i]].starts].name,
                     0.5 * (p + next), {way.y, -way.x}, 3.5);
        }
    }

    void put_name(Board &board, const std::string &name, Vec2 at, Vec2 out, double height) const {
        Text text = lettered(shortened(name, 24, height, true), {}, height, true, Role::mark);
        text.across = Across::middle;
        text.upright = Upright::middle;
        const double half = text_width(text.words, height, true) / 2;
        std::vector<Vec2> places;
        for (const double off : {1.5, 3.0, 5.0, 8.0, 12.0}) {
            const double reach = length(out) > 0 ? 1 / length(out) : 0;
            places.push_back(at + Vec2{reach * out.x * (off + half), reach * out.y * (off + height)});
        }
        board.put(text, places, 0.3);
    }

    void add_north(const Rect &room) {
        const Words &words = sheets_.words();
        FormPen pen = sheets_.pen();
        constexpr double wide = 62;
        const double radius = std::min(14.0, room.height() / 2 - print_line);
        const Vec2 middle{room.x1 - wide / 2, room.y1 - print_line - radius - 1};
        pen.print({room.x1 - wide, room.y1 - print_line}, wide, words.say("draw an arrow to the north"));
        sheets_.items().emplace_back(Circle{middle, radius, Line::dimension, ""});
        sheets_.items().emplace_back(Circle{middle, 0.6, Line::dimension, ""});
    }

    /// Two beside one another in each strip.
    template <typename Draw> void in_pairs(std::size_t count, double height, const Draw &draw) {
        for (std::size_t i = 0; i < count; i += 2) {
            const Rect room = sheets_.strip(height);
            FormPen pen = sheets_.pen();
            const double middle = (room.x0 + room.x1) / 2;
            draw(pen, {room.x0, room.y0, middle - air / 2, room.y1}, i);
            if (i + 1 < count) draw(pen, {middle + air / 2, room.y0, room.x1, room.y1}, i + 1);
        }
    }

    /// Ticked only where somebody has said it.
    void draw_side(FormPen &pen, const Rect &room, std::optional<ReadFrom> side,
                   const std::string &label) const {
        const Words &words = pen.words();
        pen.print({room.x0, room.y1}, room.width(), label);
        pen.ticks(room, {{{words.say("outside"), side == ReadFrom::outside}},
                         {{words.say("inside"), side == ReadFrom::inside}}});
    }

    void draw_length(FormPen &pen, const Rect &room, const std::string &name, const Known &length,
                     std::optional<ReadFrom> side, const std::string &side_label,
                     const std::string *note) const {
        const Words &words = pen.words();
        const double top = room.y1 - print_line, low = top - box_height;
        double x = room.x0;
        pen.print({x, (low + top - print_line) / 2}, name_width - 2, name, true);
        x += name_width;
        pen.print({x + 1, top}, place_width - 1, words.say("length"));
        pen.box({x, low, x + place_width, top}, place_box, "", length);
        if (!length.proposed.empty())
            pen.print_right({x - 1, low - print_line - off_the_line}, name_width - 2, words.say("proposed"));
        x += place_width + 1.5;
        constexpr double ticks = 24;
        draw_side(pen, {x, low, x + ticks, top}, side, side_label);
        x += ticks;
        if (!note) return;
        pen.print({x + 1, top}, room.x1 - x - 1, words.say("note"));
        pen.box({x, low, room.x1, top}, words_box, "", {*note, ""});
    }

    void draw_wall(FormPen &pen, const Rect &room, const RecordedWall &wall) const {
        const Words &words = pen.words();
        std::optional<double> by_plan;
        for (const WallPlace &place : draft_.layout.walls)
            if (place.name == wall.wall) by_plan = place.length;
        draw_length(pen, room, words.say("Wall %1", wall.wall), known(wall.length, by_plan, words),
                    is_in(recorded_.walls, wall) ? std::optional(wall.read_from) : std::nullopt,
                    words.say("read from"), &wall.note);
    }

    void draw_diagonal(FormPen &pen, const Rect &room, const Diagonal &diagonal) const {
        const Words &words = pen.words();
        std::optional<Vec2> from, to;
        for (const auto corner : outline_of(draft_.layout)) {
            const std::string name = corner_name(record_, draft_.layout, draft_.layout.corners[corner].name);
            const Vec2 at = outside_point(draft_.layout, draft_.layout.corners[corner]);
            if (name == diagonal.from) from = at;
            if (name == diagonal.to) to = at;
        }
        const bool by_plan = from && to && diagonal.side == ReadFrom::outside;
        draw_length(
            pen, room, words.say("%1 to %2", words.name(diagonal.from), words.name(diagonal.to)),
            known(diagonal.length, by_plan ? std::optional(length(*to - *from)) : std::nullopt, words),
            is_in(recorded_.diagonals, diagonal) ? std::optional(diagonal.side) : std::nullopt,
            words.say("corners"), nullptr);
    }

    void draw_plane(FormPen &pen, const Rect &room, const LevelPlane &plane) const {
        const Words &words = pen.words();
        const double top = room.y1 - print_line, low = top - box_height;
        double x = room.x0;
        const auto box = [&](double width, const char *layer, const std::string &label, const Known &known) {
            pen.print({x + 1, top}, width - 1.5, label);
            pen.box({x, low, x + width, top}, layer, "", known);
            x += width;
        };
        box(name_width, words_box, words.say("plane"), {plane.name, ""});
        box(place_width, place_box, words.say("over the first"), known(plane.offset, {}, words));
        box(room.x1 - x, words_box, words.say("its marks on the house"), {plane.where, ""});
    }

    static constexpr double line_height_ = print_line + box_height + print_line + 2; ///< apart

    const Draft &draft_;
    const Record &recorded_;
    Record record_; ///< with walls, corners and diagonals that nobody has measured yet
    FormSheets sheets_;
};

} // namespace

std::vector<Sheet> house_form(const Draft &draft, const Record &record) {
    if (draft.layout.walls.empty()) return {};
    return HouseForm(draft, record).draw();
}

} // namespace roundlay::sheets
