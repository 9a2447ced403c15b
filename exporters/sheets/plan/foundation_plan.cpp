#include "exporters/sheets/drawing/dimension.h"
#include "exporters/sheets/drawing/table.h"
#include "exporters/sheets/drawing/text.h"
#include "exporters/sheets/plan/plan_frame.h"
#include "exporters/sheets/plan/round_plan.h"
#include "exporters/sheets/shell_view/shell_scales.h"

#include <algorithm>
#include <cmath>

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

/// A wall indoors, between the faces of the walls it stands against.
std::vector<Vec2> partition_corners(const WallPlace &wall) {
    std::vector<Vec2> ring;
    for (const Vec2 p :
         {Vec2{0, 0}, Vec2{wall.length, 0}, Vec2{wall.length, wall.thickness}, Vec2{0, wall.thickness}}) {
        const Vec3 world = wall.frame.to_world({p.x, p.y, 0});
        ring.push_back({world.x, world.y});
    }
    return ring;
}

class FoundationDrawer {
  public:
    FoundationDrawer(const Layout &layout, const Words &words, double scale)
        : layout_(layout), words_(words), scale_(scale), outer_(outside_corners(layout)),
          inner_(inside_corners(layout)) {
        origin_ = outer_[0];
        for (const Vec2 p : outer_)
            origin_ = {std::min(origin_.x, p.x), std::min(origin_.y, p.y)};
    }

    Block draw() {
        for (std::size_t i = outer_walls(layout_); i < layout_.walls.size(); ++i)
            add_ring(partition_corners(layout_.walls[i]), Line::visible);
        add_ring(outer_, Line::visible);
        add_ring(inner_, Line::visible);
        add_dimensions();
        add_names();
        add_diagonals();
        const Rect drawn = bounds(board_.items());
        for (Item &item : north_arrow({drawn.x1 + 8, drawn.y1 - 22}))
            board_.add(std::move(item));
        return {bounds(board_.items()), board_.finished()};
    }

  private:
    Vec2 paper(Vec2 p) const { return scale_ * (p - origin_); }

    void add_ring(const std::vector<Vec2> &ring, Line line) {
        Path path{{}, true, line, ""};
        for (const Vec2 p : ring)
            path.points.push_back(paper(p));
        board_.add(path);
    }

    /// All corners, outside and inside, from the south-west corner of what the plan covers.
    void add_dimensions() {
        std::vector<Vec2> all = outer_;
        all.insert(all.end(), inner_.begin(), inner_.end());
        for (std::size_t i = outer_walls(layout_); i < layout_.walls.size(); ++i)
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

    void add_names() {
        const std::size_t n = outer_walls(layout_);
        for (std::size_t i = 0; i < layout_.walls.size(); ++i) {
            Vec2 a, b; // the inside face
            if (i < n) {
                a = paper(inner_[i]), b = paper(inner_[(i + 1) % n]);
            } else {
                const std::vector<Vec2> ring = partition_corners(layout_.walls[i]);
                a = paper(ring[3]), b = paper(ring[2]);
            }
            const Vec2 along = (1 / length(b - a)) * (b - a), in{-along.y, along.x};
            put("Wall " + layout_.walls[i].name, 0.5 * (a + b), in, 3.5);
        }
    }

    void put(const std::string &words, Vec2 at, Vec2 inward, double height) {
        Text text;
        text.words = words;
        text.height = height;
        text.across = Across::middle;
        text.upright = Upright::middle;
        text.role = Role::mark;
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
            text.words = "diagonal " + words_.length(length(b - a));
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

    const Layout &layout_;
    const Words &words_;
    double scale_;
    std::vector<Vec2> outer_, inner_;
    Vec2 origin_;
    Board board_;
};

/// Does the log lie on the foundation, or on a step of it?
bool is_bedded(const Piece &piece) {
    const auto on_step = [](const Cut &cut) {
        const BoxCut *box = std::get_if<BoxCut>(&cut);
        return box != nullptr && box->use == BoxUse::step;
    };
    return piece.timber < 0 && (piece.round == 1 || piece.below.empty() ||
                                std::any_of(piece.cuts.begin(), piece.cuts.end(), on_step));
}

/// Where the foundation stands higher, measured along the walls.
LaidTable step_table(const Layout &layout, const Words &words) {
    Table table;
    table.title = "Steps of the foundation";
    table.columns = {{"Step", Across::left, 20},
                     {"Wall", Across::left, 14},
                     {"From left corner", Across::right, 26},
                     {"To", Across::right, 26},
                     {"Rise", Across::right, 22}};
    for (const StepPlace &step : layout.steps) {
        const WallPlace &wall = layout.walls.at(static_cast<std::size_t>(step.wall));
        table.rows.push_back({step.name, wall.name, words.length(std::max(step.from, 0.0)),
                              words.length(std::min(step.to, wall.length)), words.length(step.rise)});
    }
    return LaidTable(table);
}

/// The logs that lie on the foundation, and which way round.
LaidTable sill_table(const Layout &layout, const Words &words) {
    Table table;
    table.title = "Sill logs, bedded on the foundation";
    table.columns = {{"Tag", Across::left, 34},
                     {"Log", Across::left, 20},
                     {"Length", Across::right, 30},
                     {"Width", Across::right, 22},
                     {"Height", Across::right, 22},
                     {"Butt, from outside", Across::left, 20},
                     {"From left corner", Across::right, 26}};
    for (const Piece &piece : layout.pieces) {
        if (!is_bedded(piece)) continue;
        const Vec3 origin =
            layout.walls.at(static_cast<std::size_t>(piece.wall)).frame.to_local(piece.frame.origin);
        table.rows.push_back({piece.tag, piece.log == LogKind::full ? "full" : "half",
                              words.length(piece.blank.length), words.length(piece.blank.width),
                              words.length(piece.blank.height), piece.butt_at_datum ? "left" : "right",
                              origin.x < -0.5 ? words.length(-origin.x) + " before it" : words.length(origin.x)});
    }
    return LaidTable(table);
}

} // namespace

std::vector<Sheet> foundation_plan(const Shell &shell, const Layout &layout, const SheetOptions &options) {
    if (layout.walls.empty()) return {};
    const PaperSize size = paper_for(shell, options);
    const Words words(shell.units, options.denominator);
    for (const Scale &scale : shell_scales(shell.units)) {
        std::vector<Page> pages{empty_page(size)};
        if (!pages.back().put(FoundationDrawer(layout, words, scale.ratio).draw())) continue;
        put_on(pages, size,
               note_block(
                   "All corners, outside and inside, from the outermost faces in the west and in the south.",
                   62));
        put_on(pages, size, sill_table(layout, words).drawn());
        if (!layout.steps.empty()) put_on(pages, size, step_table(layout, words).drawn());
        TitleFields fields = options.fields;
        fields.title = "Foundation and sills";
        fields.supplement = "outlines of the walls on it";
        fields.document_type = "Foundation plan";
        fields.number = "F-1";
        fields.scale = scale.words;
        fields.symbol = false;
        fields.note = words.unit_note();
        fields.shell = layout.name;
        return framed(pages, size, fields, {"Foundation and sills", "foundation", ""});
    }
    return {};
}

} // namespace roundlay::sheets
