// What lies over a picture of the model: tags, and handles that a hand drags.
#include "exporters/picture/picture.h"
#include "modeler/window/views/scene_view.h"
#include "modeler/window/views/stand_banner.h"
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

Matrix4 SceneView::clip(double aspect) const {
    return projection_matrix(camera_, aspect, depth_range(camera_, box_)) * view_matrix(camera_);
}

QPointF SceneView::on_picture(Vec3 world, QSizeF size) const {
    const auto p = transformed(clip(size.width() / std::max(size.height(), 1.0)), world);
    return {(p[0] / p[3] + 1) / 2 * size.width(), (1 - p[1] / p[3]) / 2 * size.height()};
}

QPointF SceneView::on_screen(Vec3 world) const {
    return on_picture(world, QWidget::size());
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
    if (washed_) wash(painter, rect());
    paint_tags(painter, QWidget::size());
    paint_handles(painter);
}

void SceneView::paint_tags(QPainter &painter, QSizeF size) const {
    std::vector<QRectF> taken; // a label that would cover another stays away
    for (const Label &label : labels_)
        draw_label(painter, label, size, taken);
}

/// What the section leaves of the line that a label stands on; nothing where that has cut it away.
std::optional<std::pair<Vec3, Vec3>> SceneView::not_cut_away(const Label &label) const {
    if (!section_) return std::pair(label.from, label.to);
    const double a = section_->distance(label.from), b = section_->distance(label.to);
    if (a > 0 && b > 0) return {};
    if (a <= 0 && b <= 0) return std::pair(label.from, label.to);
    const Vec3 cut = label.from + (a / (a - b)) * (label.to - label.from);
    return a > 0 ? std::pair(cut, label.to) : std::pair(label.from, cut);
}

/// False where it found no place.
bool SceneView::draw_label(QPainter &painter, const Label &label, QSizeF size,
                           std::vector<QRectF> &taken) const {
    constexpr double lifted = 34; // pixels of a tag that stands above its log
    const auto line = not_cut_away(label);
    const Matrix4 to_picture = clip(size.width() / std::max(size.height(), 1.0));
    if (!line || transformed(to_picture, line->first)[3] <= 0 ||
        transformed(to_picture, line->second)[3] <= 0)
        return false;
    const QPointF from = on_picture(line->first, size), to = on_picture(line->second, size),
                  middle = (from + to) / 2;
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

int SceneView::labels_in_sight() const {
    QImage nowhere(1, 1, QImage::Format_ARGB32_Premultiplied);
    QPainter painter(&nowhere);
    std::vector<QRectF> taken;
    int count = 0;
    for (const Label &label : labels_)
        count += draw_label(painter, label, QWidget::size(), taken) ? 1 : 0;
    return count;
}

/// Letters are as large beside the shell as they are on the screen.
namespace {

/// In the corner that the legend leaves free.
void paint_caption(QPainter &painter, const QString &caption) {
    constexpr int away = 8, edge = 6; // pixels
    const QRect words = painter.fontMetrics().boundingRect(caption);
    const QRect plate(away, away, words.width() + 2 * edge, words.height() + edge);
    QColor paper = tints().paper;
    paper.setAlphaF(0.9F);
    painter.setPen(QPen(tints().faint, 1));
    painter.setBrush(paper);
    painter.drawRoundedRect(plate, 4, 4);
    painter.setPen(tints().ink);
    painter.drawText(plate, Qt::AlignCenter, caption);
}

} // namespace

QImage SceneView::with_tags(const Picture &picture, const QString &caption) const {
    constexpr int channels = 3;
    QImage image = QImage(picture.pixels.data(), picture.width, picture.height, channels * picture.width,
                          QImage::Format_RGB888)
                       .convertToFormat(QImage::Format_RGB32);
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    const double scale = static_cast<double>(picture.height) / std::max(height(), 1);
    painter.setFont(font());
    painter.scale(scale, scale);
    paint_tags(painter, QSizeF(picture.width, picture.height) / scale);
    if (!legend_->is_wanted()) return image;
    painter.save();
    painter.translate(legend_->pos());
    legend_->paint(painter);
    painter.restore();
    if (!caption.isEmpty()) paint_caption(painter, caption);
    return image;
}

} // namespace roundlay::window
