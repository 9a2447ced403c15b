#include "kernel/layout/plan/wall_side.h"
#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/faults.h"
#include "modeler/window/desk/kernel_words.h"
#include "modeler/window/desk/selection.h"
#include "modeler/window/desk/words.h"
#include "modeler/window/views/elevation_view.h"
#include "modeler/window/views/marks.h"
#include "modeler/window/views/record_marks.h"
#include "modeler/window/views/ring_path.h"
#include "modeler/window/views/tints.h"

#include <QPainter>
#include <QPainterPath>

namespace roundlay::window {

void ElevationView::paint(QPainter &painter) {
    if (!scene_.wall) return;
    paint_rounds(painter);
    paint_logs(painter);
    paint_holes(painter);
    paint_choice(painter);
    if (const auto *hole = chosen_hole()) paint_measures(painter, hole->box);
    QFont bold = painter.font();
    bold.setBold(true);
    painter.setFont(bold);
    constexpr double beneath = 22, beneath_a_measure = 36; // pixels: a door's stands under the ground line
    const auto *hole = chosen_hole();
    const bool measured = hole != nullptr && hole->box.y0 * scale() < beneath;
    draw_label(painter,
               to_screen({scene_.length / 2, 0}) + QPointF(0, measured ? beneath_a_measure : beneath),
               caption(), tints().ink);
}

/// A partition has no outside.
QString ElevationView::caption() const {
    const Layout &layout = desk_.drawn()->job.layout;
    const QString name = text(selection_.wall()), length = length_text(scene_.length, units());
    const auto wall = wall_named(layout, selection_.wall());
    if (!wall || !is_partition(layout, *wall)) return tr("Wall %1 from outside, %2").arg(name, length);
    return tr("Wall %1 from the %2, %3").arg(name, kernel_words(side_of_wall(layout, *wall, true)), length);
}

void ElevationView::paint_rounds(QPainter &painter) const {
    painter.setPen(QPen(tints().grid, 1, Qt::DashLine));
    for (const double height : scene_.round_lines)
        painter.drawLine(QPointF(0, to_screen({0, height}).y()),
                         QPointF(width(), to_screen({0, height}).y()));
    painter.setPen(QPen(tints().ink, 2));
    painter.drawLine(QPointF(0, to_screen({0, 0}).y()), QPointF(width(), to_screen({0, 0}).y()));
}

namespace {

/// `bears`: it is the header of the opening that is chosen.
QColor wood_of(const ElevationScene::Shape &shape, bool bears) {
    if (shape.side) return tints().wood;
    if (!shape.own) return tints().end_grain;
    if (shape.island) return tints().island;
    return bears ? tints().end_grain : tints().wood;
}

} // namespace

void ElevationView::paint_logs(QPainter &painter) const {
    const Layout &layout = desk_.drawn()->job.layout;
    if (scene_.shapes.empty()) paint_stated_wall(painter);
    const auto *hole = chosen_hole();
    const auto bears = [&](Index<Piece> log) { return hole != nullptr && hole->header == log; };
    const auto kinds = record_marks(colouring_);
    for (const auto &shape : scene_.shapes) {
        const QPainterPath path = ring_path(shape.rings, [this](Vec2 p) { return to_screen(p); });
        const bool chosen = selection_.is_piece(layout.pieces[shape.piece].tag);
        Look2D look{wood_of(shape, bears(shape.piece)), tints().wood_edge, 0.8, chosen};
        if (!shape.side && !marks_.empty()) {
            const RecordMark &mark = kinds[marks_[shape.piece]];
            look.fill = mark.fill, look.lines = mark.lines, look.pattern = mark.pattern;
        }
        paint_shape(painter, path, look);
        if (shape.own && !shape.side) paint_zones(painter, shape.piece, path);
    }
    paint_timber_ends(painter);
    paint_pegs(painter);
    paint_bores(painter);
}

/// As far as they lie on the wood that there is; what is on the inside alone as a dashed outline.
void ElevationView::paint_zones(QPainter &painter, Index<Piece> piece, const QPainterPath &wood) const {
    const auto kinds = record_marks(Colouring::condition);
    for (const ZoneArea &zone : zones_) {
        if (zone.piece != piece) continue;
        const RecordMark &mark = kinds[zone.mark];
        const QPainterPath area =
            ring_path({zone.outline}, [this](Vec2 p) { return to_screen(p); }).intersected(wood);
        if (zone.behind) {
            painter.setBrush(Qt::NoBrush);
            painter.setPen(QPen(mark.lines, 1.2, Qt::DashLine));
            painter.drawPath(area);
            continue;
        }
        Look2D look{mark.fill, tints().ink, 1};
        look.pattern = mark.pattern, look.lines = mark.lines;
        paint_shape(painter, area, look);
    }
}

void ElevationView::paint_timber_ends(QPainter &painter) const {
    const Layout &layout = desk_.drawn()->job.layout;
    painter.setBrush(Qt::NoBrush);
    for (const auto &end : scene_.timbers) {
        const bool chosen = selection_.is_piece(layout.pieces[end.piece].tag);
        painter.setPen(QPen(chosen ? tints().accent : tints().ink, chosen ? 2.5 : 1, Qt::DashLine));
        painter.drawRect(screen_rect(end.box));
    }
}

void ElevationView::paint_pegs(QPainter &painter) const {
    for (const auto &peg : scene_.pegs) {
        painter.setPen(
            QPen(tints().ink, std::max(1.0, peg.diameter * scale() / 3), Qt::SolidLine, Qt::FlatCap));
        painter.drawLine(to_screen(peg.top), to_screen(peg.foot));
    }
}

void ElevationView::paint_bores(QPainter &painter) const {
    for (const auto &bore : scene_.bores) {
        QPolygonF line;
        for (const Vec2 &p : bore.points)
            line << to_screen(p);
        painter.setPen(QPen(tints().ink, 1.6, Qt::DashDotLine));
        painter.setBrush(Qt::NoBrush);
        painter.drawPolyline(line);
        draw_label(painter, line.back() - QPointF(0, 12), kernel_words(bore.mark), tints().ink);
    }
}

/// Of the wall as a whole an outline, of a corner its line and its name; the rest is marked where it is
/// painted.
void ElevationView::paint_choice(QPainter &painter) const {
    constexpr double thick = 3, past = 12; // pixels
    const Layout &layout = desk_.drawn()->drawn();
    const WallPlace &wall = layout.walls[*scene_.wall];
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(tints().accent, thick));
    if (selection_.is_wall(wall.name)) painter.drawRect(screen_rect({0, 0, scene_.length, scene_.height}));
    for (const WallMeeting &meeting : wall.meetings) {
        const std::string &name = layout.corners[meeting.corner].name;
        if (!selection_.is_corner(name)) continue;
        const QPointF low = to_screen({meeting.x, 0}), high = to_screen({meeting.x, scene_.height});
        painter.setPen(QPen(tints().accent, thick, Qt::DashLine));
        painter.drawLine(low + QPointF(0, past), high - QPointF(0, past));
        draw_label(painter, high - QPointF(0, 2 * past), text(name), tints().accent);
    }
}

/// Its outline, its steps and its floors, while no logs can be cut for it.
void ElevationView::paint_stated_wall(QPainter &painter) const {
    const Faults faults = faults_of(*desk_.drawn());
    const auto paint_box = [&](const sheets::Rect &box, Look2D look, bool faulty) {
        QPainterPath path;
        path.addRect(screen_rect(box));
        look.faulty = faulty;
        paint_shape(painter, path, look);
    };
    paint_box({0, 0, scene_.length, scene_.height}, {tints().hollow, tints().wood_edge, 1},
              faults.walls.contains(selection_.wall()));
    for (const auto &step : scene_.steps)
        paint_box(step.box, {tints().paper, tints().ink, 1.5}, faults.steps.contains(step.step));
    for (const auto &floor : scene_.floors)
        paint_stated_floor(painter, floor, faults.floors.contains(floor.floor));
}

/// A line along the tops of its joists, with its name.
void ElevationView::paint_stated_floor(QPainter &painter, const ElevationScene::StatedFloor &floor,
                                       bool faulty) const {
    const QColor ink = faulty ? tints().error : tints().ink;
    const QPointF left = to_screen({0, floor.level}), right = to_screen({scene_.length, floor.level});
    painter.setPen(QPen(ink, faulty ? 2.5 : 1.5, faulty ? Qt::DashLine : Qt::SolidLine));
    painter.drawLine(left, right);
    draw_label(painter, (left + right) / 2 - QPointF(0, 10), kernel_words("floor " + floor.name), ink);
}

void ElevationView::paint_holes(QPainter &painter) const {
    const Faults faults = faults_of(*desk_.drawn());
    for (const auto &hole : scene_.holes) {
        const bool chosen = selection_.is_opening(hole.opening);
        const QRectF box = screen_rect(hole.box);
        QPainterPath path;
        path.addRect(box);
        Look2D look{hole.door ? tints().hollow : tints().accent_soft, tints().ink, 1.2, chosen};
        look.faulty = faults.openings.contains(hole.opening);
        paint_shape(painter, path, look);
        if (hole.settle > 0) paint_settling(painter, hole);
        if (!hole.door) {
            painter.setPen(QPen(tints().faint, 1));
            painter.drawLine(QPointF(box.center().x(), box.top()), QPointF(box.center().x(), box.bottom()));
        }
        if (chosen)
            paint_grips(painter, box);
        else
            draw_name(painter, box, text(hole.name)); // the chosen one's is in its panel
    }
}

/// Over the frame, for the logs to come down.
void ElevationView::paint_settling(QPainter &painter, const ElevationScene::Hole &hole) const {
    const sheets::Rect space{hole.box.x0, hole.box.y1 - hole.settle, hole.box.x1, hole.box.y1};
    painter.setPen(Qt::NoPen);
    painter.setBrush(QBrush(tints().faint, Qt::BDiagPattern));
    painter.drawRect(screen_rect(space));
    painter.setBrush(Qt::NoBrush);
}

void ElevationView::paint_grips(QPainter &painter, const QRectF &box) const {
    painter.setPen(QPen(tints().accent, 1.5));
    painter.setBrush(tints().paper);
    for (const QPointF &grip : {box.topLeft(), box.topRight(), box.bottomLeft(), box.bottomRight()})
        painter.drawRect(QRectF(grip - QPointF(3.5, 3.5), QSizeF(7, 7)));
}

/// Within the opening: on as many lines as it takes, or not at all.
void ElevationView::draw_name(QPainter &painter, const QRectF &box, const QString &name) const {
    constexpr int wraps = Qt::AlignCenter | Qt::TextWordWrap;
    const QRectF room = box.adjusted(4, 2, -4, -2);
    const QRectF words = painter.fontMetrics().boundingRect(room.toRect(), wraps, name);
    if (words.width() > room.width() || words.height() > room.height()) return;
    QColor paper = tints().paper;
    paper.setAlphaF(0.88F);
    painter.setPen(Qt::NoPen);
    painter.setBrush(paper);
    painter.drawRoundedRect(words.adjusted(-3, -1, 3, 1), 3, 3);
    painter.setPen(tints().ink);
    painter.drawText(room, wraps, name);
}

/// Within the opening, above and below it: never over one beside it.
void ElevationView::paint_measures(QPainter &painter, const sheets::Rect &box) const {
    const QRectF on_screen = screen_rect(box);
    // A line too short for its words stands alone: the words are in the panel beside.
    const auto measure = [&](QPointF from, QPointF to, double mm, double room) {
        painter.setPen(QPen(tints().accent, 1));
        painter.drawLine(from, to);
        const QString words = length_text(mm, units());
        const QRectF size = painter.fontMetrics().boundingRect(words);
        const bool upright = from.x() == to.x();
        if (upright ? QLineF(from, to).length() < size.height() + 4 || room < size.width()
                    : QLineF(from, to).length() + room < size.width() + 10)
            return;
        draw_label(painter, (from + to) / 2, words, tints().accent);
    };
    constexpr double wide = 1e6; // there is room beside
    const double above = on_screen.top() - 12, middle = on_screen.center().x();
    measure({on_screen.left(), above}, {on_screen.right(), above}, box.width(), wide);
    measure({to_screen({0, 0}).x(), on_screen.bottom() + 12}, {on_screen.left(), on_screen.bottom() + 12},
            box.x0, 0);
    measure({middle, on_screen.top()}, {middle, on_screen.bottom()}, box.height(), on_screen.width());
    if (box.y0 > 0) measure({middle, on_screen.bottom()}, {middle, to_screen({0, 0}).y()}, box.y0, wide);
}

} // namespace roundlay::window
