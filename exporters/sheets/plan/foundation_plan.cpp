#include "exporters/sheets/drawing/dimension.h"
#include "exporters/sheets/drawing/text.h"
#include "exporters/sheets/frame/tables.h"
#include "exporters/sheets/plan/foundation_tables.h"
#include "exporters/sheets/plan/laid_out.h"
#include "exporters/sheets/plan/outlines.h"
#include "exporters/sheets/plan/plan_frame.h"
#include "exporters/sheets/plan/round_plan.h"
#include "exporters/sheets/set/best.h"
#include "exporters/sheets/shell_view/bore_symbols.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>

namespace roundlay::sheets {
namespace {

constexpr double same_place = 0.5; ///< mm of wood

std::vector<double> places(const std::vector<Vec2> &points, double origin, double Vec2::*axis) {
    std::vector<double> all;
    for (const Vec2 p : points) {
        const double v = p.*axis - origin;
        const bool known =
            std::any_of(all.begin(), all.end(), [&](double o) { return std::abs(o - v) < same_place; });
        if (!known) all.push_back(v);
    }
    std::sort(all.begin(), all.end());
    return all;
}

/// Index of the corner that is furthest out in that direction.
std::size_t furthest(const std::vector<Vec2> &points, Vec2 direction) {
    std::size_t best = 0;
    for (std::size_t i = 1; i < points.size(); ++i)
        if (dot(points[i], direction) > dot(points[best], direction)) best = i;
    return best;
}

/// "rod 1", and the 1 of it.
int number_in(const std::string &mark) {
    return std::atoi(mark.c_str() + mark.rfind(' ') + 1);
}

/// "rod 1 to 24, bolt 3": a whole wall's bores stand in one row, and named one by one would be too long for
/// any paper.
std::string in_few_words(const std::vector<std::string> &marks, const Words &said) {
    constexpr std::size_t run_worth_folding = 3;
    const auto follows = [&](std::size_t i) {
        return marks[i].substr(0, marks[i].rfind(' ')) == marks[i - 1].substr(0, marks[i - 1].rfind(' ')) &&
               number_in(marks[i]) == number_in(marks[i - 1]) + 1;
    };
    std::string words;
    for (std::size_t from = 0, to = 0; from < marks.size(); from = to) {
        for (to = from + 1; to < marks.size() && follows(to); ++to) {
        }
        const bool fold = to - from >= run_worth_folding;
        for (std::size_t i = from; i < (fold ? from + 1 : to); ++i)
            words += (words.empty() ? "" : ", ") +
                     (fold ? said.say("%1 to %2", marks[i], number_in(marks[to - 1])) : marks[i]);
    }
    return words;
}

class FoundationDrawer {
  public:
    FoundationDrawer(const Shell &shell, const Layout &layout, const Words &words, double scale)
        : shell_(shell), layout_(layout), words_(words), scale_(scale), outer_(outside_corners(layout)),
          inner_(inside_corners(layout)), run_ons_(run_ons(layout)) {
        for (PlacedBore &bore : named_bores(shell, layout, words))
            if (is_from_foundation(shell, bore)) bores_.push_back(std::move(bore));
        origin_ = outer_[0];
        for (const Vec2 p : all_corners())
            origin_ = {std::min(origin_.x, p.x), std::min(origin_.y, p.y)};
    }

    /// Without rows of bores where they take more room than the paper has: all are in their table.
    Block draw(bool rows_of_bores) {
        for (const auto i : Indices<WallPlace>(layout_.walls.size(), outer_walls(layout_)))
            add_ring(partition_corners(layout_.walls[i]), Line::visible);
        for (const std::vector<Vec2> &ring : run_ons_)
            add_ring(ring, Line::visible);
        add_ring(outer_, Line::visible);
        add_ring(inner_, Line::visible);
        add_doors();
        add_bores();
        add_dimensions();
        for (const bool eastward : {true, false})
            if (rows_of_bores) add_bore_dimensions(eastward);
        add_names();
        add_angles();
        // A mark that finds no room beside its bore stands in the rows of bores all the same.
        for (const PlacedBore &bore : bores_)
            put_bore_mark(board_, bore.mark, centre_of(bore), diameter_of(bore));
        add_diagonals();
        const Rect drawn = bounds(board_.items());
        for (Item &item : north_arrow({drawn.x1 + 8, drawn.y1 - 22}))
            board_.add(std::move(item));
        return Block{bounds(board_.items()), std::move(board_).finished()};
    }

  private:
    /// On the outside, with the ends of logs that run on.
    std::vector<Vec2> all_corners() const {
        std::vector<Vec2> all = outer_;
        for (const std::vector<Vec2> &ring : run_ons_)
            all.insert(all.end(), ring.begin(), ring.end());
        return all;
    }

    Vec2 paper(Vec2 p) const { return scale_ * (p - origin_); }

    void add_ring(const std::vector<Vec2> &ring, Line line) {
        Path path{{}, true, line, ""};
        for (const Vec2 p : ring)
            path.points.push_back(paper(p));
        board_.add(path);
    }

    /// All corners, outside and inside, from the south-west corner of what the plan covers.
    void add_dimensions() {
        std::vector<Vec2> all = all_corners();
        all.insert(all.end(), inner_.begin(), inner_.end());
        for (const auto i : Indices<WallPlace>(layout_.walls.size(), outer_walls(layout_)))
            for (const Vec2 p : partition_corners(layout_.walls[i]))
                all.push_back(p);
        for (const bool eastward : {true, false}) {
            std::vector<Mark> marks;
            const double start = eastward ? origin_.x : origin_.y;
            for (const double v : places(all, start, eastward ? &Vec2::x : &Vec2::y))
                marks.push_back({v * scale_, words_.length(v), v == 0});
            RunningLine line;
            line.side = eastward ? Toward::down : Toward::left;
            line.distance = 5;
            add_running_dimensions(board_, marks, line);
        }
    }

    static Vec2 flat(const PlacedBore &bore) {
        const Vec3 foot = bore.logs.front().foot;
        return {foot.x, foot.y};
    }
    Vec2 centre_of(const PlacedBore &bore) const { return paper(flat(bore)); }
    double diameter_of(const PlacedBore &bore) const {
        return shell_.bores[bore.stated].diameter.mm() * scale_;
    }

    void add_bores() {
        for (const PlacedBore &bore : bores_)
            for (Item &item : bore_symbol(shell_.bores[bore.stated].use, centre_of(bore), diameter_of(bore)))
                board_.add(std::move(item));
    }

    /// What comes out of the foundation, in a row of its own beyond the corners, from the same origin.
    void add_bore_dimensions(bool eastward) {
        if (bores_.empty()) return;
        const double start = eastward ? origin_.x : origin_.y;
        std::vector<Mark> marks{{0, words_.length(0), true}};
        std::vector<std::vector<std::string>> names{{}};
        std::vector<const PlacedBore *> order;
        for (const PlacedBore &bore : bores_)
            order.push_back(&bore);
        const auto at = [&](const PlacedBore &bore) {
            return (eastward ? flat(bore).x : flat(bore).y) - start;
        };
        std::stable_sort(order.begin(), order.end(),
                         [&](const PlacedBore *a, const PlacedBore *b) { return at(*a) < at(*b); });
        for (const PlacedBore *bore : order) {
            const double v = at(*bore) * scale_;
            if (marks.size() > 1 && std::abs(marks.back().at - v) < same_place * scale_)
                names.back().push_back(bore->mark);
            else {
                marks.push_back({v, words_.length(at(*bore)) + "  ", false});
                names.push_back({bore->mark});
            }
        }
        for (std::size_t i = 1; i < marks.size(); ++i)
            marks[i].number += in_few_words(names[i], words_);
        const Rect drawn = bounds(board_.items());
        RunningLine line;
        line.side = eastward ? Toward::down : Toward::left;
        line.edge = eastward ? drawn.y0 : drawn.x0;
        line.distance = 3;
        add_running_dimensions(board_, marks, line);
    }

    /// Across the wall at each jamb, crossed between: no log lies there.
    void add_doors() {
        for (const DoorGap &gap : door_gaps(shell_, layout_)) {
            const WallPlace &wall = layout_.walls.at(gap.wall);
            const auto at = [&](double x, double y) {
                const Vec3 p = wall.frame.to_world({x, y, 0});
                return paper({p.x, p.y});
            };
            const double in = wall.thickness;
            for (const double x : {gap.from, gap.to})
                board_.add(Path{{at(x, 0), at(x, in)}, false, Line::visible, ""});
            board_.add(Path{{at(gap.from, 0), at(gap.to, in)}, false, Line::dimension, ""});
            board_.add(Path{{at(gap.from, in), at(gap.to, 0)}, false, Line::dimension, ""});
        }
    }

    /// Inside the corner.
    void add_angles() {
        for (const CornerAngle &corner : odd_angles(layout_)) {
            const Vec2 here = paper(inner_[corner.at]), there = paper(outer_[corner.at]);
            const Vec2 in = (1 / length(here - there)) * (here - there);
            put(said_angle(corner.degrees, words_), here, in, 2.5);
        }
    }

    void add_names() {
        const std::size_t n = outer_walls(layout_);
        for (const auto i : layout_.walls.indices()) {
            Vec2 a, b; // the inside face
            if (i.at() < n) {
                a = paper(inner_[i.at()]), b = paper(inner_[(i.at() + 1) % n]);
            } else {
                const std::vector<Vec2> ring = partition_corners(layout_.walls[i]);
                a = paper(ring[3]), b = paper(ring[2]);
            }
            const Vec2 along = (1 / length(b - a)) * (b - a), in{-along.y, along.x};
            put(words_.say("Wall %1", layout_.walls[i].name), 0.5 * (a + b), in, 3.5);
        }
    }

    void put(const std::string &words, Vec2 at, Vec2 inward, double height) {
        Text text = mark_text(words);
        text.height = height;
        std::vector<Vec2> tries;
        const double reach =
            std::abs(inward.x) * text_width(words, height) / 2 + std::abs(inward.y) * height / 2;
        for (double away = 1.5; away < 14; away += 2)
            tries.push_back(at + (away + reach) * inward);
        board_.put(text, tries);
    }

    /// Between the outermost corners both ways: equal where the plan is symmetrical, and to be measured
    /// anyway.
    void add_diagonals() {
        for (const Vec2 way : {Vec2{1, 1}, Vec2{1, -1}}) {
            const Vec2 a = outer_[furthest(outer_, -1 * way)], b = outer_[furthest(outer_, way)];
            const Vec2 from = paper(a), to = paper(b);
            board_.add(Path{{from, to}, false, Line::centre, ""});
            Text text;
            text.words = words_.say("diagonal %1", in_mm(length(b - a)));
            text.height = 2.5;
            text.across = Across::middle;
            text.upright = Upright::middle;
            text.role = Role::dimension;
            std::vector<Vec2> tries;
            for (const double part : {0.4, 0.3, 0.6, 0.7, 0.2, 0.8, 0.5, 0.45, 0.35})
                for (const double side : {0.0, 6.0, -6.0})
                    tries.push_back(from + part * (to - from) + Vec2{side, 0});
            board_.put(text, tries);
        }
    }

    const Shell &shell_;
    const Layout &layout_;
    const Words &words_;
    double scale_;
    std::vector<Vec2> outer_, inner_;
    std::vector<std::vector<Vec2>> run_ons_;
    std::vector<PlacedBore> bores_; ///< that come out of the foundation
    Vec2 origin_;
    Board board_;
};

std::string note_for(const Shell &shell, const Layout &layout, const Words &words, bool rows_of_bores) {
    std::string note =
        words.say("All corners, outside and inside, from the outermost faces in the west and in the south.");
    if (!door_gaps(shell, layout).empty()) note += words.say(" Crossed: a door's gap in the sill logs.");
    const auto bores = placed_bores(shell, layout);
    if (std::any_of(bores.begin(), bores.end(),
                    [&](const PlacedBore &b) { return is_from_foundation(shell, b); }))
        note +=
            rows_of_bores
                ? words.say(" In a row of their own, from the same faces: middles of what comes out of the "
                            "foundation. Disc: rod; hexagon: bolt; circle crossed out: wiring.")
                : words.say(" Middles of what comes out of the foundation: in the table. Disc: rod; "
                            "hexagon: bolt; circle crossed out: wiring.");
    return note;
}

/// With the row of bores, or without it where it takes more room than the paper has.
struct DrawnPlan {
    Page page;
    bool rows_of_bores;
};

Best<DrawnPlan> best_plan(const Draft &draft, const Words &words) {
    Best<DrawnPlan> best;
    for (const bool rows : {true, false}) {
        const auto draw = [&](const Scale &scale) {
            Page page = empty_page(draft.size());
            if (page.put(FoundationDrawer(draft.shell, draft.layout, words, scale.ratio).draw(rows)))
                best.offer({std::move(page), rows}, &scale, least_cost);
        };
        try_scales(shell_scales(words.system()), draw, [&](const Scale &) { return best.is_perfect(); });
    }
    return best;
}

Titled foundation(const Draft &draft) {
    const PaperSize size = draft.size();
    const Words words = draft.words();
    const Best<DrawnPlan> best = best_plan(draft, words);
    std::vector<Page> pages = best.is_empty() ? pages_not_drawn(size, words, words.say("The plan"))
                                              : std::vector{best.drawing().page};
    const bool rows_of_bores = !best.is_empty() && best.drawing().rows_of_bores;
    put_on(pages, size, note_table(words, note_for(draft.shell, draft.layout, words, rows_of_bores), 62));
    for (const Table &table : foundation_tables(draft.shell, draft.layout, words))
        put_on(pages, size, table);
    return {std::move(pages),
            {words.say("Foundation and sills"), words.say("outlines of the walls on it"),
             words.say("Foundation plan"), "F-1", said_scale(best.scale(), words), false, words.unit_note()},
            {words.say("Foundation and sills"), "foundation", ""}};
}

} // namespace

Subject foundation_subject() {
    return {"foundation", [](const Draft &draft) { return std::vector{foundation(draft)}; }};
}

} // namespace roundlay::sheets
