// What lies over a picture of the model: tags, and handles that a hand drags.
#include "modeler/window/views/scene_view.h"
#include "modeler/window/views/tints.h"

#include <QPainter>
#include <algorithm>

namespace roundlay::window {

namespace {

constexpr double handle_size = 8; // pixels, from its middle

/// What words take on a slip of paper, its middle anywhere.
QRectF slip_for(const QPainter &painter, const QString &words) {
    return QFontMetricsF(painter.font()).boundingRect(words).adjusted(-4, -1, 4, 1);
}

void paint_slip(QPainter &painter, const QRectF &slip, const QString &words, const QColor &paper) {
    painter.setPen(Qt::NoPen);
    painter.setBrush(paper);
    painter.drawRoundedRect(slip, 3, 3);
    painter.setPen(tints().ink);
    painter.drawText(slip, Qt::AlignCenter, words);
}

} // namespace

Matrix4 SceneView::clip() const {
    return projection_matrix(camera_, aspect(), depth_range(camera_, box_)) * view_matrix(camera_);
}

QPointF SceneView::on_screen(Vec3 world) const {
    const auto p = transformed(clip(), world);
    return {(p[0] / p[3] + 1) / 2 * width(), (1 - p[1] / p[3]) / 2 * height()};
}

void SceneView::set_handles(std::vector<Handle> handles, std::vector<Vec3> outline) {
    handles_ = std::move(handles);
    outline_ = std::move(outline);
    update();
}

int SceneView::handle_at(QPointF at) const {
    for (std::size_t i = 0; i < handles_.size(); ++i)
        if (QLineF(on_screen(handles_[i].at), at).length() <= handle_size + 4) return static_cast<int>(i);
    return -1;
}

/// By how much the hand has moved along the picture of a plumb line through the handle.
void SceneView::drag_handle(QPointF to, Qt::KeyboardModifiers keys) {
    constexpr double probe = 10; // mm
    const Vec3 at = handles_[static_cast<std::size_t>(held_)].at;
    const QPointF up = (on_screen(at + Vec3{0, 0, probe}) - on_screen(at)) / probe;
    const double squared = QPointF::dotProduct(up, up);
    if (squared < 1e-9) return; // seen from straight above
    emit handle_moved(held_, QPointF::dotProduct(to - pressed_, up) / squared, keys);
}

void SceneView::paint_handles(QPainter &painter) const {
    QPolygonF outline;
    for (const Vec3 p : outline_)
        outline << on_screen(p);
    QColor wash = tints().accent;
    wash.setAlphaF(0.22F);
    painter.setPen(QPen(tints().accent, 1.6));
    painter.setBrush(wash);
    if (!outline.isEmpty()) painter.drawPolygon(outline);
    for (std::size_t i = 0; i < handles_.size(); ++i) {
        const QPointF at = on_screen(handles_[i].at);
        const bool held = held_ == static_cast<int>(i);
        painter.setPen(QPen(held ? tints().paper : tints().accent, 1.6));
        painter.setBrush(held ? tints().accent : tints().paper);
        painter.drawEllipse(at, handle_size, handle_size);
        painter.drawLine(at - QPointF(0, 4.5), at + QPointF(0, 4.5));
        for (const double way : {-1.0, 1.0})
            painter.drawPolyline(QPolygonF(
                {at + QPointF(-2.5, way * 2), at + QPointF(0, way * 4.5), at + QPointF(2.5, way * 2)}));
        QRectF slip = slip_for(painter, handles_[i].words);
        const double side = at.x() < outline.boundingRect().center().x() ? -1 : 1;
        slip.moveCenter(at + QPointF(side * (handle_size + slip.width() / 2 + 3), 0));
        paint_slip(painter, slip, handles_[i].words, tints().paper);
    }
}

void SceneView::paint_labels(QPainter &painter) const {
    painter.setRenderHint(QPainter::Antialiasing);
    std::vector<QRectF> taken; // a label that would cover another stays away
    for (const Label &label : labels_)
        draw_label(painter, label, taken);
    paint_handles(painter);
}

/// False where it found no place.
bool SceneView::draw_label(QPainter &painter, const Label &label, std::vector<QRectF> &taken) const {
    constexpr double lifted = 34; // pixels of a tag that stands above its log
    const Matrix4 to_picture = clip();
    if (transformed(to_picture, label.from)[3] <= 0 || transformed(to_picture, label.to)[3] <= 0)
        return false;
    const QPointF from = on_screen(label.from), to = on_screen(label.to), middle = (from + to) / 2;
    QRectF rect = slip_for(painter, label.words);
    const bool covers_it = QLineF(from, to).length() < 2 * rect.width();
    rect.moveCenter(covers_it ? middle - QPointF(0, lifted) : middle);
    const auto covers = [&](const QRectF &other) { return other.intersects(rect); };
    if (std::any_of(taken.begin(), taken.end(), covers)) return false;
    taken.push_back(rect);
    if (covers_it) {
        painter.setPen(QPen(tints().ink, 1.2));
        painter.drawLine(rect.center(), middle);
    }
    QColor paper = tints().paper;
    paper.setAlphaF(0.85F);
    paint_slip(painter, rect, label.words, paper);
    return true;
}

} // namespace roundlay::window
