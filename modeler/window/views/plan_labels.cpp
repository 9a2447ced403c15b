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

/// A line along or over joists would be read as one of theirs.
bool PlanView::is_over_timber(const QLineF &line) const {
    constexpr double beside = 4; // pixels
    const QLineF across = line.normalVector().unitVector();
    const QPointF off = beside * QPointF(across.dx(), across.dy());
    QPainterPath strip;
    strip.addPolygon(QPolygonF{line.p1() + off, line.p2() + off, line.p2() - off, line.p1() - off});
    const Layout &layout = *layout_of(desk_);
    return std::any_of(layout.timbers.begin(), layout.timbers.end(), [&](const Timber &timber) {
        return path_round(outline_of(layout.pieces[timber.piece])).intersects(strip);
    });
}

/// How far the walls that end at its corners run out past its outside face.
double PlanView::tails_beyond(const WallPlace &w) const {
    const Layout &layout = *layout_of(desk_);
    double beyond = 0;
    if (footprints_.size() != layout.walls.size()) return beyond;
    for (const CornerPlace &c : layout.corners)
        for (const Index<WallPlace> each : {c.ends, c.starts}) {
            const WallPlace &other = place(layout, each);
            const Index<WallPlace> mate = each == c.ends ? c.starts : c.ends;
            const auto inward = [&](Vec2 p) { return w.frame.to_local({p.x, p.y, 0}).y; };
            if (place(layout, mate).name != w.name || inward(on_wall(other, other.length / 2, 0)) < 0)
                continue;
            for (const Vec2 p : footprints_[each])
                beyond = std::max(beyond, -inward(p));
        }
    return beyond;
}

void PlanView::paint_dimensions(QPainter &painter) {
    const Layout &layout = *layout_of(desk_);
    std::vector<const WallPlace *> walls;
    taken_.clear();
    wall_shapes_.clear();
    dimension_lines_.clear();
    for (const auto &footprint : footprints_)
        wall_shapes_.push_back(path_round(footprint));
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

/// Outside of the wall, else inside; along it, as lengths stand on drawings. Where its line would run over
/// joists the words stand alone.
void PlanView::paint_length(QPainter &painter, const WallPlace &w) {
    constexpr double away = 22, tolerated = 4; // pixels
    const QString words = length_text(w.length, desk_.units());
    const QSizeF size = size_of(painter, words);
    const QLineF run = length_line(w, 0);
    const bool upright = std::abs(run.dy()) > std::abs(run.dx());
    if (run.length() < size.width()) return; // its ends would lie under its words
    const double nx = std::abs(run.dy()) / run.length(), ny = std::abs(run.dx()) / run.length();
    const QSizeF lying = upright ? size.transposed() : size;
    // Beside a wall at a slant the words need more room than beside one that they run along.
    const double clear = lying.width() / 2 * nx + lying.height() / 2 * ny + tolerated;
    const double off = std::max(away, clear) / scale(), beyond = std::max(off, tails_beyond(w) + off / 2);
    for (const bool lined : {true, false})
        for (const double inward : {-beyond, w.thickness + off}) {
            if (lined && is_over_timber(length_line(w, inward))) continue;
            for (const double share : along_wall) {
                const QPointF at = to_screen(on_wall(w, share * w.length, inward));
                const QRectF box = centred(at, lying);
                if (!is_free(box)) continue;
                taken_.push_back(box);
                if (lined) draw_line(painter, w, inward);
                return draw_words(painter, at, upright, words);
            }
        }
}

QLineF PlanView::length_line(const WallPlace &w, double inward) const {
    return {to_screen(on_wall(w, 0, inward)), to_screen(on_wall(w, w.length, inward))};
}

void PlanView::draw_line(QPainter &painter, const WallPlace &w, double inward) {
    constexpr double tick = 6; // pixels
    dimension_lines_.push_back(length_line(w, inward));
    painter.setPen(QPen(tints().faint, 1));
    painter.drawLine(dimension_lines_.back());
    for (const double end : {0.0, w.length})
        painter.drawLine(to_screen(on_wall(w, end, inward - tick / scale())),
                         to_screen(on_wall(w, end, inward + tick / scale())));
}

void PlanView::draw_words(QPainter &painter, QPointF at, bool upright, const QString &words) const {
    painter.save();
    painter.translate(at);
    if (upright) painter.rotate(-90);
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
