#include "modeler/window/views/drawing_view.h"

#include "modeler/window/panels/length_edit.h"
#include "modeler/window/views/stand_banner.h"
#include "modeler/window/views/tints.h"
#include "modeler/window/views/view_keys.h"

#include <QContextMenuEvent>
#include <QMouseEvent>
#include <QNativeGestureEvent>
#include <QPainter>
#include <algorithm>
#include <cmath>

namespace roundlay::window {

namespace {

constexpr double margin = 42; // pixels round what is fitted
constexpr double reach_pixels = 8;
constexpr double least_scale = 0.002, most_scale = 5;
constexpr double click_pixels = 4;

} // namespace

DrawingView::DrawingView(QWidget *parent, LengthEdit *typed)
    : QWidget(parent), legend_(new Legend(this)), typed_(typed != nullptr ? typed : new LengthEdit) {
    constexpr int field_width = 130;
    typed_->setParent(this);
    setMouseTracking(true);
    setFocusPolicy(Qt::StrongFocus);
    setMinimumSize(160, 120);
    typed_->hide();
    typed_->setFixedWidth(std::max(field_width, typed_->minimumWidth()));
    typed_->setAccessibleName(tr("Exact length"));
    connect(typed_, &LengthEdit::committed, this, [this] {
        const Length length = typed_->length();
        if (const QString why = why_not_typed(length); !why.isEmpty()) return typed_->refuse(why);
        end_typing();
        take_typed(length);
    });
}

DrawingView::~DrawingView() = default;

QPointF DrawingView::to_screen(Vec2 mm) const {
    return {width() / 2.0 + (mm.x - middle_.x) * scale_, height() / 2.0 - (mm.y - middle_.y) * scale_};
}

Vec2 DrawingView::to_sheet(QPointF pixel) const {
    return {middle_.x + (pixel.x() - width() / 2.0) / scale_,
            middle_.y - (pixel.y() - height() / 2.0) / scale_};
}

QRectF DrawingView::screen_rect(const sheets::Rect &r) const {
    return QRectF(to_screen({r.x0, r.y1}), to_screen({r.x1, r.y0}));
}

double DrawingView::reach() const {
    return reach_pixels / scale_;
}

bool DrawingView::went_far() const {
    return (last_ - pressed_).manhattanLength() >= click_pixels;
}

void DrawingView::fit() {
    fits_ = true;
    apply_fit();
    update();
}

void DrawingView::apply_fit() {
    const sheets::Rect box = content();
    if (fits_ && !box.empty() && !is_dragging()) show_whole(box);
}

void DrawingView::fit_now() {
    const sheets::Rect box = content();
    if (!box.empty()) show_whole(box);
    update();
}

int DrawingView::banner_height() const {
    const auto *banner = findChild<const StandBanner *>(QString(), Qt::FindDirectChildrenOnly);
    return banner && banner->isVisibleTo(this) ? banner->height() : 0;
}

/// Beside the legend or above it, whichever leaves it larger, and under the banner.
void DrawingView::show_whole(const sheets::Rect &box) {
    const QSizeF taken = legend_->isVisible() ? QSizeF(legend_->size()) : QSizeF(0, 0);
    const double high = banner_height();
    const auto scale_left = [&](double left, double low) {
        return std::min((width() - left - 2 * margin) / std::max(box.width(), 1.0),
                        (height() - low - high - 2 * margin) / std::max(box.height(), 1.0));
    };
    const double beside = scale_left(taken.width(), 0), above = scale_left(0, taken.height());
    scale_ = std::clamp(std::max(beside, above), least_scale, most_scale);
    const Vec2 room = beside >= above ? Vec2{taken.width(), 0} : Vec2{0, taken.height()};
    middle_ = box.centre() - (1 / (2 * scale_)) * (room - Vec2{0, high});
}

void DrawingView::zoom(double factor, QPointF at) {
    fits_ = false;
    const Vec2 held = to_sheet(at);
    scale_ = std::clamp(scale_ * factor, least_scale, most_scale);
    middle_ = middle_ + (held - to_sheet(at));
    update();
}

void DrawingView::draw_label(QPainter &painter, QPointF at, const QString &words, const QColor &ink) const {
    const QFontMetricsF metrics(painter.font());
    QRectF box = metrics.boundingRect(words).adjusted(-5, -2, 5, 2);
    box.moveCenter(at);
    painter.setPen(Qt::NoPen);
    QColor paper = tints().paper;
    paper.setAlphaF(0.88F);
    painter.setBrush(paper);
    painter.drawRoundedRect(box, 3, 3);
    painter.setPen(ink);
    painter.drawText(box, Qt::AlignCenter, words);
}

void DrawingView::paintEvent(QPaintEvent *) {
    if (legend_->is_wanted()) legend_->tell(legend()); // what is drawn makes room for it
    apply_fit();
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(rect(), tints().paper);
    paint(painter);
    if (is_old()) wash(painter, rect());
    if (!hasFocus()) return;
    painter.setPen(QPen(tints().accent, 1));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(rect().adjusted(0, 0, -1, -1));
}

void DrawingView::mousePressEvent(QMouseEvent *event) {
    last_ = pressed_ = event->position();
    panning_ = event->button() != Qt::LeftButton;
    if (!panning_) press(to_sheet(last_), event->modifiers());
}

void DrawingView::mouseMoveEvent(QMouseEvent *event) {
    const QPointF by = event->position() - last_;
    last_ = event->position();
    if (event->buttons() == Qt::NoButton) return hover(to_sheet(last_));
    if (panning_) {
        fits_ = false;
        middle_ = middle_ - Vec2{by.x() / scale_, -by.y() / scale_};
        return update();
    }
    if (is_dragging() && !typed_->isVisible()) drag(to_sheet(last_), event->modifiers());
}

void DrawingView::mouseReleaseEvent(QMouseEvent *event) {
    panning_ = false;
    if (event->button() == Qt::RightButton && !is_dragging() && !went_far())
        return emit asked_for_menu(thing_at(to_sheet(pressed_)), event->globalPosition().toPoint(),
                                   spot_at(to_sheet(pressed_)));
    if (is_dragging() && !typed_->isVisible()) release();
}

/// The right button has its own way, since dragging it moves the sheet.
void DrawingView::contextMenuEvent(QContextMenuEvent *event) {
    if (event->reason() == QContextMenuEvent::Keyboard)
        emit asked_for_menu(chosen_thing(), mapToGlobal(rect().center()), {});
    event->accept();
}

void DrawingView::mouseDoubleClickEvent(QMouseEvent *event) {
    if (event->button() == Qt::LeftButton) double_click(to_sheet(event->position()));
}

void DrawingView::wheelEvent(QWheelEvent *event) {
    constexpr double per_notch = 1.2, notch = 120;
    if (!event->pixelDelta().isNull() && !(event->modifiers() & Qt::ControlModifier)) {
        fits_ = false; // two fingers on a touchpad
        const QPointF by = event->pixelDelta();
        middle_ = middle_ - Vec2{by.x() / scale_, -by.y() / scale_};
        return update();
    }
    zoom(std::pow(per_notch, event->angleDelta().y() / notch), event->position());
}

bool DrawingView::event(QEvent *event) {
    if (event->type() == QEvent::NativeGesture) {
        auto *gesture = static_cast<QNativeGestureEvent *>(event);
        if (gesture->gestureType() == Qt::ZoomNativeGesture) {
            zoom(1 + gesture->value(), gesture->position());
            return true;
        }
    }
    // Escape and digits belong to the drag while one is under way, whatever shortcuts there are.
    if (event->type() == QEvent::ShortcutOverride && is_dragging()) {
        event->accept();
        return true;
    }
    return QWidget::event(event);
}

void DrawingView::keyPressEvent(QKeyEvent *event) {
    const QString typed = event->text();
    if (is_dragging()) {
        if (event->key() == Qt::Key_Escape) return typed_->isVisible() ? end_typing() : give_up();
        if (!typed.isEmpty() && typed.at(0).isDigit()) return begin_typing(typed);
    }
    if (is_menu_key(*event) && !is_dragging())
        return emit asked_for_menu(chosen_thing(), mapToGlobal(rect().center()), {});
    if (event->key() == Qt::Key_PageDown && choose_next(1)) return;
    if (event->key() == Qt::Key_PageUp && choose_next(-1)) return;
    const auto zoom_in = [this](double factor) { zoom(factor, QRectF(rect()).center()); };
    if (!zoom_by_key(*event, zoom_in, [this] { fit(); })) QWidget::keyPressEvent(event);
}

void DrawingView::resizeEvent(QResizeEvent *) {
    apply_fit();
}

void DrawingView::begin_typing(const QString &first) {
    typed_->let_go();
    typed_->set_length({}, units());
    typed_->move(last_.toPoint() + QPoint(14, 10));
    typed_->show();
    typed_->setFocus();
    typed_->insert(first);
    emit hinted(what_to_type());
}

QString DrawingView::what_to_type() const {
    return tr("Type the exact length and press Enter");
}

void DrawingView::end_typing() {
    if (!typed_->isVisible()) return;
    setFocus();
    typed_->hide();
}

} // namespace roundlay::window
