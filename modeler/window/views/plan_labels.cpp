// Names and lengths of walls in the plan: beside the walls, never over one.
#include "modeler/window/desk/selection.h"
#include "modeler/window/desk/words.h"
#include "modeler/window/views/plan_places.h"
#include "modeler/window/views/plan_view.h"
#include "modeler/window/views/tints.h"

#include <QPainter>
#include <QPainterPath>
#include <algorithm>
#include <array>
#include <cmath>

namespace roundlay::window {

namespace {

/// Shares of a wall's length at which its words may stand, the middle first.
constexpr std::array along_wall{0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8};

QRectF centred(QPointF middle, QSizeF size) {
    QRectF box({}, size);
    box.moveCenter(middle);
    return box;
}

QSizeF size_of(const QPainter &painter, const QString &words) {
    return painter.fontMetrics().boundingRect(words).adjusted(-5, -2, 5, 2).size();
}

} // namespace

/// True where nothing lies there yet: no wall, no timber, no other words.
bool PlanView::is_free(const QRectF &box) const {
    if (!QRectF(rect()).contains(box)) return false;
    for (const QRectF &other : taken_)
        if (other.intersects(box)) return false;
    for (const QPainterPath &wall : wall_shapes_)
        if (wall.intersects(box)) return false;
    return true;
}

void PlanView::paint_dimensions(QPainter &painter) {
    const Layout &layout = *layout_of(desk_);
    std::vector<const WallPlace *> walls;
    taken_.clear();
    wall_shapes_.clear();
    for (const WallPlace &w : layout.walls) {
        walls.push_back(&w);
        wall_shapes_.push_back(outline(w, 0, w.length));
    }
    // The wall that is shown first, then the longest: what would lie over another's length stays away.
    std::stable_sort(walls.begin(), walls.end(), [this](const WallPlace *a, const WallPlace *b) {
        const bool a_shown = selection_.wall() == a->name, b_shown = selection_.wall() == b->name;
        return a_shown != b_shown ? a_shown : a->length > b->length;
    });
    for (const WallPlace *w : walls)
        paint_name(painter, *w);
    for (const WallPlace *w : walls)
        paint_length(painter, *w);
}

/// Outside of the wall, else inside; along it, as lengths stand on drawings.
void PlanView::paint_length(QPainter &painter, const WallPlace &w) {
    constexpr double away = 22; // pixels
    const QString words = length_text(w.length, desk_.units());
    const QSizeF size = size_of(painter, words);
    const QPointF run = to_screen(on_wall(w, w.length, 0)) - to_screen(on_wall(w, 0, 0));
    const bool upright = std::abs(run.y()) > std::abs(run.x());
    if (std::hypot(run.x(), run.y()) < size.width()) return; // its ends would lie under its words
    const double off = away / scale();
    for (const double inward : {-off, w.thickness + off})
        for (const double share : along_wall) {
            const QPointF at = to_screen(on_wall(w, share * w.length, inward));
            const QRectF box = centred(at, upright ? size.transposed() : size);
            if (!is_free(box)) continue;
            taken_.push_back(box);
            return draw_length(painter, w, inward, at, words);
        }
}

void PlanView::draw_length(QPainter &painter, const WallPlace &w, double inward, QPointF at,
                           const QString &words) const {
    constexpr double tick = 6; // pixels
    const QPointF from = to_screen(on_wall(w, 0, inward)), to = to_screen(on_wall(w, w.length, inward));
    painter.setPen(QPen(tints().faint, 1));
    painter.drawLine(from, to);
    for (const double end : {0.0, w.length})
        painter.drawLine(to_screen(on_wall(w, end, inward - tick / scale())),
                         to_screen(on_wall(w, end, inward + tick / scale())));
    painter.save();
    painter.translate(at);
    if (std::abs((to - from).y()) > std::abs((to - from).x())) painter.rotate(-90);
    draw_label(painter, {}, words, tints().ink);
    painter.restore();
}

/// Inside, else outside; where there is no room at all it stands on the wood itself, without paper under it.
void PlanView::paint_name(QPainter &painter, const WallPlace &w) {
    constexpr double away = 16; // pixels
    const QFont plain = painter.font();
    QFont bold = plain;
    bold.setBold(true);
    painter.setFont(bold);
    const QColor ink = selection_.wall() == w.name ? tints().accent : tints().ink;
    const QSizeF size = size_of(painter, text(w.name));
    const auto free_place = [&]() -> std::optional<QPointF> {
        for (const double inward : {w.thickness + away / scale(), -away / scale()})
            for (const double share : along_wall)
                if (const QPointF at = to_screen(on_wall(w, share * w.length, inward));
                    is_free(centred(at, size)))
                    return at;
        return {};
    };
    if (const auto at = free_place()) {
        taken_.push_back(centred(*at, size));
        draw_label(painter, *at, text(w.name), ink);
    } else {
        painter.setPen(tints().ink);
        painter.drawText(centred(to_screen(on_wall(w, w.length / 2, w.thickness / 2)), size), Qt::AlignCenter,
                         text(w.name));
    }
    painter.setFont(plain);
}

} // namespace roundlay::window
