#include "exporters/report/marked_wall.h"

#include "exporters/sheets/drawing/board.h"
#include "exporters/sheets/drawing/text.h"
#include "kernel/layout/openings/openings.h"

#include <algorithm>

namespace roundlay::sheets {

namespace {

constexpr double air = 0.4;

Rect box_around(const std::vector<Vec2> &points) {
    Rect box = Rect::nothing();
    for (const Vec2 p : points)
        box = joined(box, p);
    return box;
}

std::vector<Vec2> corners_of(const Rect &r) {
    return {{r.x0, r.y0}, {r.x1, r.y0}, {r.x1, r.y1}, {r.x0, r.y1}};
}

/// What of a convex outline lies on that side of an upright line.
std::vector<Vec2> beside(const std::vector<Vec2> &outline, double x, double way) {
    std::vector<Vec2> part;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const Vec2 a = outline[i], b = outline[(i + 1) % outline.size()];
        const double from = way * (a.x - x), to = way * (b.x - x);
        if (from >= 0) part.push_back(a);
        if ((from < 0) != (to < 0) && from != to) part.push_back(a + (from / (from - to)) * (b - a));
    }
    return part;
}

/// The areas that the stretch shows, as far as it does.
std::vector<MarkedArea> shown(std::vector<MarkedArea> areas, const Along &stretch) {
    constexpr double least = 1; // mm of wood: less is a line
    for (MarkedArea &area : areas)
        area.outline = beside(beside(area.outline, stretch.from, 1), stretch.to, -1);
    std::erase_if(areas, [](const MarkedArea &area) {
        return area.outline.size() < 3 || box_around(area.outline).width() < least;
    });
    return areas;
}

class Drawer {
  public:
    Drawer(const MarkedWall &wall, const Along &stretch, double scale)
        : w_(wall), place_(wall.layout.walls[wall.wall]), stretch_(stretch),
          areas_(shown(wall.areas, stretch)), k_(scale), mirrored_(wall.side == WallSide::inside) {}

    MarkedBlock draw() {
        add_wood();
        for (const MarkedPoint &point : w_.points)
            add_point(point);
        add_openings();
        add_words();
        for (const MarkedArea &area : areas_)
            add_area(area);
        add_foundation();
        if (w_.corner_names) add_corners();
        add_caption();
        return {{bounds(items_).grown(0.5), std::move(items_)}, std::move(without_room_)};
    }

  private:
    Vec2 paper(Vec2 wall) const { return {(mirrored_ ? -wall.x : wall.x) * k_, wall.y * k_}; }
    std::vector<Vec2> paper(std::vector<Vec2> points) const {
        for (Vec2 &p : points)
            p = paper(p);
        return points;
    }
    Rect limits() const {
        constexpr double high = 1e5;
        return box_around({paper({stretch_.from, -high}), paper({stretch_.to, high})});
    }

    void put(Item item) {
        board_.add(item);
        items_.push_back(std::move(item));
    }

    void add_wood() {
        const std::vector<Vec2> room = corners_of(limits());
        for (const Stretch &s : w_.seen.edges) { // in the plane of that side already
            auto part = within_outline(k_ * s.from, k_ * s.to, room);
            if (part.size() == 2) put(Path{std::move(part), false, Line::visible, ""});
        }
    }

    void add_foundation() {
        const Rect box = limits();
        items_.emplace_back(Path{{{box.x0, 0}, {box.x1, 0}}, false, Line::strong, ""});
    }

    void add_point(const MarkedPoint &point) {
        if (point.at.x < stretch_.from || point.at.x > stretch_.to) return;
        for (Item &item : point.symbol(paper(point.at))) {
            texts_.push_back(bounds(item).grown(air));
            board_.keep_out(texts_.back());
            items_.push_back(std::move(item));
        }
    }

    /// By their names, where they have room.
    void add_openings() {
        for (std::size_t i = 0; i < w_.shell.openings.size(); ++i) {
            const Opening &o = w_.shell.openings[i];
            if (o.wall != place_.name) continue;
            const Along part = both({o.from_left.mm(), (o.from_left + o.width).mm()}, stretch_);
            if (part.empty()) continue;
            const Rect hole = box_around(
                paper(std::vector<Vec2>{{part.from, o.sill.mm()}, {part.to, (o.sill + o.height).mm()}}));
            holes_.push_back(hole);
            double y = hole.centre().y;
            for (const std::string &line :
                 wrapped(w_.words.name(name_of(w_.shell, i)), hole.width() - 1, least_lettering)) {
                put_text(line, {{hole.centre().x, y}}, hole, false);
                y -= 3.8;
            }
        }
    }

    bool put_text(const std::string &words, const std::vector<Vec2> &places, const Rect &within, bool bold) {
        Text text = lettered(words, {}, least_lettering, bold, Role::mark);
        text.across = Across::middle, text.upright = Upright::middle;
        for (const Vec2 at : places) {
            text.at = at;
            const Rect box = box_of(text).grown(air);
            if (words.empty() || !within.holds(box) || !board_.is_free(box, true)) continue;
            texts_.push_back(box);
            put(text);
            return true;
        }
        return false;
    }

    /// The small ones have the least choice.
    void add_words() {
        std::vector<const MarkedArea *> all;
        for (const MarkedArea &area : areas_)
            if (!area.words.empty() && !area.outline.empty()) all.push_back(&area);
        std::ranges::stable_sort(all, {},
                                 [&](const MarkedArea *area) { return box_around(area->outline).width(); });
        for (const MarkedArea *area : all)
            if (!put_in(*area) && area->must) without_room_.push_back(area->words);
    }

    bool put_in(const MarkedArea &area) {
        const Rect box = box_around(paper(area.outline));
        std::vector<Vec2> places;
        for (const double up : {0.5, 0.35, 0.65})
            for (const double part : {0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8, 0.1, 0.9, 0.45, 0.55, 0.35, 0.65}) {
                const Vec2 at{box.x0 + part * box.width(), box.y0 + up * box.height()};
                const double half = text_width(area.words, least_lettering) / 2 + air;
                const Rect words{at.x - half, at.y - least_lettering, at.x + half, at.y + least_lettering};
                if (std::ranges::none_of(holes_, [&](const Rect &hole) { return hole.overlaps(words); }))
                    places.push_back(at);
            }
        return put_text(area.words, places, box.grown(0.05), area.must);
    }

    void add_area(const MarkedArea &area) {
        if (area.outline.empty()) return;
        const std::vector<Vec2> outline = paper(area.outline);
        for (Item &item : hatched(outline, area.hatch, texts_))
            items_.push_back(std::move(item));
        if (area.edged) add_edge(outline, area.hidden ? Line::hidden : Line::visible);
    }

    void add_edge(const std::vector<Vec2> &outline, Line line) {
        for (std::size_t i = 0; i < outline.size(); ++i)
            for (const auto &[a, b] : outside(outline[i], outline[(i + 1) % outline.size()], texts_, 0.3))
                items_.emplace_back(Path{{a, b}, false, line, ""});
    }

    void add_corners() {
        const double under = bounds(items_).y0 - 1.5;
        for (const WallMeeting &meeting : place_.meetings) {
            const double x = (meeting.low + meeting.high) / 2;
            if (x < stretch_.from || x > stretch_.to) continue;
            const std::string &plan = w_.layout.corners[meeting.corner].name;
            Text text = lettered(w_.corner_called ? w_.corner_called(plan) : plan, {paper({x, 0}).x, under},
                                 least_lettering, true, Role::mark);
            text.across = Across::middle, text.upright = Upright::top;
            for (int i = 0; i < 12 && !board_.is_free(box_of(text).grown(0.5), true); ++i)
                text.at.y -= 3.8;
            put(text);
        }
    }

    void add_caption() {
        if (w_.caption.empty()) return;
        constexpr double height = 3, pitch = 4.6, over = 2.5, widest = 165; // no wider than a page
        const Rect all = bounds(items_);
        const auto lines = wrapped(w_.caption, widest, height, true);
        double y = all.y1 + over + pitch * static_cast<double>(lines.size());
        for (const std::string &line : lines)
            items_.emplace_back(lettered(line, {all.x0, y -= pitch}, height, true, Role::caption));
    }

    const MarkedWall &w_;
    const WallPlace &place_;
    Along stretch_;
    std::vector<MarkedArea> areas_;
    double k_;
    bool mirrored_;
    Board board_; ///< what words must keep clear of
    std::vector<Item> items_;
    std::vector<Rect> texts_, holes_;
    std::vector<std::string> without_room_;
};

} // namespace

Along seen_along(const MarkedWall &wall) {
    Along all{0, wall.layout.walls[wall.wall].length};
    const double way = wall.side == WallSide::inside ? -1 : 1;
    for (const Stretch &s : wall.seen.edges)
        for (const double at : {way * s.from.x, way * s.to.x})
            all = {std::min(all.from, at), std::max(all.to, at)};
    for (const MarkedArea &area : wall.areas)
        for (const Vec2 p : area.outline)
            all = {std::min(all.from, p.x), std::max(all.to, p.x)};
    return all;
}

MarkedBlock drawn(const MarkedWall &wall, const Along &stretch, double scale) {
    return Drawer(wall, stretch, scale).draw();
}

} // namespace roundlay::sheets
