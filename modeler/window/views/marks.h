// How drawn views mark what is chosen and what is wrong: never by colour alone.
#pragma once

#include <QColor>

class QPainter;
class QPainterPath;

namespace roundlay::window {

struct Look2D {
    QColor fill, edge;
    double edge_width = 1;                ///< pixels
    bool chosen = false;                  ///< striped, in a thick outline
    bool faulty = false;                  ///< cross-hatched, in a dashed outline
    Qt::BrushStyle pattern = Qt::NoBrush; ///< of what it is marked as, under both
    QColor lines = {};                    ///< of that pattern
};

void paint_shape(QPainter &painter, const QPainterPath &shape, const Look2D &look);

} // namespace roundlay::window
