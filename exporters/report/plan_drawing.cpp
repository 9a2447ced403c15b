#include "exporters/report/plan_drawing.h"

#include "exporters/sheets/drawing/board.h"
#include "exporters/sheets/drawing/text.h"
#include "exporters/sheets/plan/plan_frame.h"

#include <algorithm>

namespace roundlay::sheets {

namespace {

class PlanDrawer {
  public:
    PlanDrawer(const Draft &draft, const PlanMarks &marks, const Words &words, const Scale &scale)
        : draft_(draft), marks_(marks), words_(words), scale_(scale), k_(scale.ratio) {}

    Block draw() {
        for (const auto wall : draft_.layout.walls.indices())
            add_wall(wall);
        for (const CornerPlace &corner : draft_.layout.corners)
            add_corner(corner);
        for (const auto wall : draft_.layout.walls.indices())
            add_words(wall);
        const Rect all = bounds(board_.items());
        for (Item &item : north_arrow({all.x1 + 8, all.y0}))
            board_.add(std::move(item));
        add_caption();
        return {bounds(board_.items()).grown(1), std::move(board_).finished()};
    }

  private:
    Vec2 paper(const WallPlace &wall, double x, double y) const {
        const Vec3 at = wall.frame.to_world({x, y, 0});
        return {at.x * k_, at.y * k_};
    }
    void line(Vec2 a, Vec2 b) { board_.add(Path{{a, b}, false, Line::visible, ""}); }

    /// Its two faces, with gaps where openings are.
    void add_wall(Index<WallPlace> index) {
        const WallPlace &wall = draft_.layout.walls[index];
        std::vector<double> turns{0, wall.length};
        for (const Opening &o : draft_.shell.openings)
            if (o.wall == wall.name)
                turns.insert(turns.end(), {o.from_left.mm(), (o.from_left + o.width).mm()});
        std::ranges::sort(turns);
        for (const double y : {0.0, wall.thickness})
            for (std::size_t i = 0; i + 1 < turns.size(); i += 2)
                line(paper(wall, turns[i], y), paper(wall, turns[i + 1], y));
        for (const double x : turns)
            line(paper(wall, x, 0), paper(wall, x, wall.thickness));
        if (!marks_.hatch) return;
        for (std::size_t i = 0; i + 1 < turns.size(); i += 2)
            for (Item &item :
                 hatched({paper(wall, turns[i], 0), paper(wall, turns[i + 1], 0),
                          paper(wall, turns[i + 1], wall.thickness), paper(wall, turns[i], wall.thickness)},
                         marks_.hatch(index)))
                board_.add(std::move(item));
    }

    Vec2 outward(const WallPlace &wall) const {
        const Vec3 way = -1.0 * wall.frame.y;
        return {way.x, way.y};
    }

    void put(const std::string &words, Vec2 at, Vec2 way, double turn, bool bold) {
        Text text = lettered(words, {}, least_lettering, bold, Role::mark);
        text.across = Across::middle, text.upright = Upright::middle, text.turn = turn;
        std::vector<Vec2> places;
        for (const double away : {4.0, 8.0, 12.0, 16.0})
            places.push_back(at + away * way);
        board_.put(text, places);
    }

    void add_words(Index<WallPlace> index) {
        const WallPlace &wall = draft_.layout.walls[index];
        const Vec3 along = wall.frame.x;
        const std::string more = marks_.beside_wall(index);
        const std::string name = words_.say("Wall %1", wall.name);
        put(more.empty() ? name : words_.say("%1: %2", name, more), paper(wall, wall.length / 2, 0),
            outward(wall), reading_turn({along.x, along.y}), false);
    }

    void add_corner(const CornerPlace &corner) {
        if (corner.kind != CornerKind::corner) return;
        const Vec2 way =
            outward(draft_.layout.walls[corner.ends]) + outward(draft_.layout.walls[corner.starts]);
        const Vec2 at{corner.centre.x * k_, corner.centre.y * k_};
        put(marks_.corner_called(corner.name), at, 0.9 * way, 0, true);
    }

    void add_caption() {
        if (marks_.caption.empty()) return;
        constexpr double height = 3, over = 3;
        const Rect all = bounds(board_.items());
        board_.add(lettered(words_.say("%1, %2", marks_.caption, said_scale(&scale_, words_)),
                            {all.x0, all.y1 + over}, height, true, Role::caption));
    }

    const Draft &draft_;
    const PlanMarks &marks_;
    const Words &words_;
    const Scale &scale_;
    double k_;
    Board board_;
};

} // namespace

Block drawn_plan(const Draft &draft, const PlanMarks &marks, const Words &words, const Scale &scale) {
    return PlanDrawer(draft, marks, words, scale).draw();
}

const Scale *plan_scale(const std::vector<std::pair<const Draft *, const PlanMarks *>> &plans,
                        const Words &words, double width, double tallest) {
    for (const Scale &scale : shell_scales(words.system()))
        if (std::ranges::all_of(plans, [&](const auto &plan) {
                const Rect room = drawn_plan(*plan.first, *plan.second, words, scale).room;
                return room.width() <= width && room.height() <= tallest;
            }))
            return &scale;
    return nullptr;
}

} // namespace roundlay::sheets
