#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/selection.h"
#include "modeler/window/desk/words.h"
#include "modeler/window/views/elevation_view.h"
#include "modeler/window/views/tints.h"

#include <QPainter>
#include <QPainterPath>

namespace roundlay::window {

void ElevationView::paint(QPainter &painter) {
    if (scene_.wall < 0) return;
    paint_rounds(painter);
    paint_logs(painter);
    paint_holes(painter);
    if (const auto *hole = chosen_hole()) paint_measures(painter, hole->box);
    QFont bold = painter.font();
    bold.setBold(true);
    painter.setFont(bold);
    draw_label(
        painter, to_screen({scene_.length / 2, 0}) + QPointF(0, 22),
        tr("Wall %1 from outside, %2").arg(text(selection_.wall()), length_text(scene_.length, units())),
        tints().ink);
}

void ElevationView::paint_rounds(QPainter &painter) const {
    painter.setPen(QPen(tints().grid, 1, Qt::DashLine));
    for (const double height : scene_.round_lines)
        painter.drawLine(QPointF(0, to_screen({0, height}).y()),
                         QPointF(width(), to_screen({0, height}).y()));
    painter.setPen(QPen(tints().ink, 2));
    painter.drawLine(QPointF(0, to_screen({0, 0}).y()), QPointF(width(), to_screen({0, 0}).y()));
}

void ElevationView::paint_logs(QPainter &painter) const {
    const Layout &layout = desk_.standing()->job.layout;
    for (const auto &shape : scene_.shapes) {
        QPainterPath path;
        for (const auto &ring : shape.rings) {
            QPolygonF polygon;
            for (const Vec2 &p : ring)
                polygon << to_screen(p);
            path.addPolygon(polygon);
            path.closeSubpath();
        }
        const bool chosen = selection_.is_piece(layout.pieces[static_cast<std::size_t>(shape.piece)].tag);
        const QColor wood = !shape.own ? tints().end_grain : shape.island ? tints().island : tints().wood;
        painter.setPen(QPen(chosen ? tints().accent : tints().wood_edge, chosen ? 2.5 : 0.8));
        painter.setBrush(chosen ? tints().accent_soft : wood);
        painter.drawPath(path);
    }
    for (const auto &peg : scene_.pegs) {
        painter.setPen(
            QPen(tints().ink, std::max(1.0, peg.diameter * scale() / 3), Qt::SolidLine, Qt::FlatCap));
        painter.drawLine(to_screen(peg.top), to_screen(peg.foot));
    }
}

void ElevationView::paint_holes(QPainter &painter) const {
    for (const auto &hole : scene_.holes) {
        const bool chosen = selection_.is_opening(hole.opening);
        const QRectF box = screen_rect(hole.box);
        painter.setPen(QPen(chosen ? tints().accent : tints().ink, chosen ? 2.5 : 1.2));
        painter.setBrush(hole.door ? tints().hollow : tints().accent_soft);
        painter.drawRect(box);
        if (!hole.door) {
            painter.setPen(QPen(tints().faint, 1));
            painter.drawLine(QPointF(box.center().x(), box.top()), QPointF(box.center().x(), box.bottom()));
        }
        constexpr double beside = 12; // names stay within their openings
        const QString name = painter.fontMetrics().elidedText(text(hole.name), Qt::ElideRight,
                                                              static_cast<int>(box.width() - beside));
        draw_label(painter, box.center(), name, tints().ink);
        if (!chosen) continue;
        painter.setPen(QPen(tints().accent, 1.5));
        painter.setBrush(tints().paper);
        for (const QPointF &grip : {box.topLeft(), box.topRight(), box.bottomLeft(), box.bottomRight()})
            painter.drawRect(QRectF(grip - QPointF(3.5, 3.5), QSizeF(7, 7)));
    }
}

void ElevationView::paint_measures(QPainter &painter, const sheets::Rect &box) const {
    const QRectF on_screen = screen_rect(box);
    const auto measure = [&](QPointF from, QPointF to, double mm) {
        painter.setPen(QPen(tints().accent, 1));
        painter.drawLine(from, to);
        draw_label(painter, (from + to) / 2, length_text(mm, units()), tints().accent);
    };
    const double above = on_screen.top() - 12, beside = on_screen.right() + 30;
    measure({on_screen.left(), above}, {on_screen.right(), above}, box.width());
    measure({to_screen({0, 0}).x(), on_screen.bottom() + 12}, {on_screen.left(), on_screen.bottom() + 12},
            box.x0);
    measure({beside, on_screen.top()}, {beside, on_screen.bottom()}, box.height());
    if (box.y0 > 0) measure({beside, on_screen.bottom()}, {beside, to_screen({0, 0}).y()}, box.y0);
}

} // namespace roundlay::window
