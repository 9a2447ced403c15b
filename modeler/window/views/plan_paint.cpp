// What the plan draws: floors' timbers, walls, openings, corners.
#include "modeler/window/desk/faults.h"
#include "modeler/window/desk/selection.h"
#include "modeler/window/views/marks.h"
#include "modeler/window/views/plan_places.h"
#include "modeler/window/views/plan_view.h"
#include "modeler/window/views/tints.h"

#include <QPainter>
#include <QPainterPath>

namespace roundlay::window {

sheets::Rect PlanView::content() const {
    sheets::Rect box = sheets::Rect::nothing();
    if (const Layout *layout = layout_of(desk_))
        for (const WallPlace &w : layout->walls)
            box = joined(joined(box, flat(w.frame.origin)), on_wall(w, w.length, 0));
    for (const auto &footprint : footprints_)
        for (const Vec2 corner : footprint)
            box = joined(box, corner);
    return box;
}

void PlanView::paint(QPainter &painter) {
    if (layout_of(desk_) == nullptr) return;
    const Faults faults = faults_of(*desk_.drawn());
    paint_timbers(painter, faults);
    paint_walls(painter, faults);
    paint_openings(painter, faults);
    paint_gap(painter);
    paint_preview(painter);
    paint_corners(painter, faults);
    paint_dimensions(painter);
    paint_why(painter);
}

QPainterPath PlanView::outline(const WallPlace &w, double from, double to) const {
    QPolygonF shape;
    shape << to_screen(on_wall(w, from, 0)) << to_screen(on_wall(w, to, 0))
          << to_screen(on_wall(w, to, w.thickness)) << to_screen(on_wall(w, from, w.thickness));
    QPainterPath path;
    path.addPolygon(shape);
    path.closeSubpath();
    return path;
}

QPainterPath PlanView::path_round(const std::vector<Vec2> &corners) const {
    QPolygonF shape;
    for (const Vec2 corner : corners)
        shape << to_screen(corner);
    QPainterPath path;
    path.addPolygon(shape);
    path.closeSubpath();
    return path;
}

/// Under the walls, in which their ends lie.
void PlanView::paint_timbers(QPainter &painter, const Faults &faults) const {
    const Layout &layout = *layout_of(desk_);
    for (const Timber &timber : layout.timbers) {
        const Piece &piece = layout.pieces[timber.piece];
        Look2D look{tints().hollow, tints().wood_edge, 0.8, selection_.is_piece(piece.tag)};
        look.faulty = faults.floors.contains(timber.floor.number());
        paint_shape(painter, path_round(outline_of(piece)), look);
    }
}

/// A chosen log marks its wall more softly than a chosen wall. What runs past the corners lies under the
/// walls that it crosses.
void PlanView::paint_walls(QPainter &painter, const Faults &faults) const {
    const Layout &layout = *layout_of(desk_);
    const bool cut = footprints_.size() == layout.walls.size();
    for (const bool tails : {true, false})
        for (const auto i : layout.walls.indices()) {
            const WallPlace &w = place(layout, i);
            Look2D look{selection_.wall() == w.name ? tints().end_grain : tints().wood, tints().wood_edge,
                        1.2};
            look.chosen = selection_.is_wall(w.name) || dragged_ == i.number();
            look.faulty = faults.walls.contains(w.name);
            if (!tails)
                paint_shape(painter, outline(w, 0, w.length), look);
            else if (cut && !footprints_[i].empty())
                paint_shape(painter, path_round(footprints_[i]), look);
        }
}

void PlanView::paint_openings(QPainter &painter, const Faults &faults) const {
    const Shell &shell = shell_of(desk_);
    for (std::size_t i = 0; i < shell.openings.size(); ++i) {
        const Opening &o = shell.openings[i];
        const auto wall = wall_named(*layout_of(desk_), o.wall);
        if (!wall) continue;
        const WallPlace &w = place(*layout_of(desk_), *wall);
        const double from = o.from_left.mm(), to = from + o.width.mm();
        const bool door = o.kind == OpeningKind::door;
        Look2D look{door ? tints().paper : tints().accent_soft, tints().wood_edge, 1};
        look.chosen = selection_.is_opening(static_cast<int>(i));
        look.faulty = faults.openings.contains(static_cast<int>(i));
        paint_shape(painter, outline(w, from, to), look);
        if (!door)
            painter.drawLine(to_screen(on_wall(w, from, w.thickness / 2)),
                             to_screen(on_wall(w, to, w.thickness / 2)));
    }
}

/// Between the last wall's end and the first one's beginning, where the plan does not close.
void PlanView::paint_gap(QPainter &painter) const {
    constexpr double seen = 0.01; // mm
    const Layout &layout = *layout_of(desk_);
    const std::size_t outer = shell_of(desk_).walls.size();
    if (!layout.corners.empty() || outer == 0) return;
    const WallPlace &first = layout.walls.front(), &last = layout.walls[Index<WallPlace>(outer - 1)];
    const bool ccw = outer < 2 || length(on_wall(first, first.length, 0) -
                                         flat(layout.walls[Index<WallPlace>(1)].frame.origin)) < seen;
    const Vec2 begin = on_wall(first, ccw ? 0 : first.length, 0),
               end = on_wall(last, ccw ? last.length : 0, 0);
    if (length(end - begin) < seen) return;
    painter.setPen(QPen(tints().error, 2, Qt::DotLine));
    painter.drawLine(to_screen(begin), to_screen(end));
    for (const Vec2 p : {begin, end})
        painter.drawEllipse(to_screen(p), 5, 5);
}

void PlanView::paint_corners(QPainter &painter, const Faults &faults) const {
    constexpr double dot = 4, ring = 9;
    for (const CornerPlace &corner : layout_of(desk_)->corners) {
        const bool chosen = selection_.is_corner(corner.name), faulty = faults.corners.contains(corner.name);
        const QColor edge = faulty ? tints().error : chosen ? tints().accent : tints().wood_edge;
        painter.setPen(QPen(edge, chosen || faulty ? 3 : 1, faulty ? Qt::DotLine : Qt::SolidLine));
        painter.setBrush(chosen ? tints().accent_soft : tints().paper);
        const double size = chosen ? dot + 2 : dot;
        painter.drawEllipse(to_screen(corner.centre), size, size);
        painter.setBrush(Qt::NoBrush);
        if (chosen || faulty)
            painter.drawEllipse(to_screen(corner.centre), ring, ring); // seen without its colour
    }
}

} // namespace roundlay::window
