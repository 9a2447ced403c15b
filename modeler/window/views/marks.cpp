#include "modeler/window/views/marks.h"

#include "modeler/window/views/tints.h"

#include <QPainter>
#include <QPainterPath>

namespace roundlay::window {

namespace {

constexpr double thick = 3; // pixels

void hatch(QPainter &painter, const QPainterPath &shape, const QColor &colour, Qt::BrushStyle pattern) {
    painter.setPen(Qt::NoPen);
    painter.setBrush(QBrush(colour, pattern));
    painter.drawPath(shape);
}

} // namespace

void paint_shape(QPainter &painter, const QPainterPath &shape, const Look2D &look) {
    painter.setPen(Qt::NoPen);
    painter.setBrush(look.chosen ? tints().accent_soft : look.fill);
    painter.drawPath(shape);
    if (look.pattern != Qt::NoBrush) hatch(painter, shape, look.lines, look.pattern);
    if (look.chosen) hatch(painter, shape, tints().accent, Qt::BDiagPattern);
    if (look.faulty) hatch(painter, shape, tints().error, Qt::DiagCrossPattern);
    QPen pen(look.edge, look.edge_width);
    if (look.chosen) pen = QPen(tints().accent, thick);
    if (look.faulty) pen = QPen(tints().error, look.chosen ? thick : thick / 2, Qt::DashLine);
    painter.setPen(pen);
    painter.setBrush(Qt::NoBrush);
    painter.drawPath(shape);
}

} // namespace roundlay::window
