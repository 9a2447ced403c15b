// Mouse, touchpad and keyboard over a picture of the model.
#include "modeler/window/views/legend.h"
#include "modeler/window/views/scene_view.h"
#include "modeler/window/views/view_keys.h"

#include <QContextMenuEvent>
#include <QKeyEvent>
#include <QNativeGestureEvent>
#include <cmath>

namespace roundlay::window {

namespace {

constexpr double turn_per_pixel = 0.008; // radians
constexpr double click_pixels = 4;

} // namespace

void SceneView::mousePressEvent(QMouseEvent *event) {
    last_ = pressed_ = event->position();
    held_ = event->button() == Qt::LeftButton ? handle_at(pressed_) : -1;
}

void SceneView::mouseMoveEvent(QMouseEvent *event) {
    const QPointF by = event->position() - last_;
    last_ = event->position();
    if (held_ >= 0) return drag_handle(last_, event->modifiers());
    if (event->buttons() == Qt::NoButton) {
        setCursor(handle_at(last_) >= 0 ? Qt::SizeVerCursor : Qt::ArrowCursor);
        return hover_.start();
    }
    if ((last_ - pressed_).manhattanLength() < click_pixels) return;
    const bool shift = event->modifiers() & Qt::ShiftModifier;
    if (event->buttons() == Qt::LeftButton && !shift)
        orbit(-by.x() * turn_per_pixel, by.y() * turn_per_pixel);
    else
        pan(by.x(), -by.y());
}

void SceneView::mouseReleaseEvent(QMouseEvent *event) {
    if (std::exchange(held_, -1) >= 0) return emit handle_released();
    if ((event->position() - pressed_).manhattanLength() >= click_pixels) return;
    if (event->button() == Qt::LeftButton) emit picked(id_under(event->position()));
    if (event->button() == Qt::RightButton)
        emit asked_for_menu(id_under(event->position()), event->globalPosition().toPoint());
}

/// The right button has its own way, since dragging it moves the picture.
void SceneView::contextMenuEvent(QContextMenuEvent *event) {
    if (event->reason() == QContextMenuEvent::Keyboard)
        emit asked_for_menu(by_keyboard, mapToGlobal(rect().center()));
    event->accept();
}

void SceneView::mouseDoubleClickEvent(QMouseEvent *) {
    fit();
}

void SceneView::wheelEvent(QWheelEvent *event) {
    constexpr double per_notch = 1.18, notch = 120;
    if (!event->pixelDelta().isNull() && !(event->modifiers() & Qt::ControlModifier))
        return orbit(-event->pixelDelta().x() * turn_per_pixel, event->pixelDelta().y() * turn_per_pixel);
    zoom(std::pow(per_notch, event->angleDelta().y() / notch), event->position());
}

bool SceneView::event(QEvent *event) {
    if (event->type() == QEvent::NativeGesture) {
        auto *gesture = static_cast<QNativeGestureEvent *>(event);
        constexpr double radians = 3.14159265358979 / 180;
        if (gesture->gestureType() == Qt::ZoomNativeGesture) zoom(1 + gesture->value(), gesture->position());
        if (gesture->gestureType() == Qt::RotateNativeGesture) orbit(gesture->value() * radians, 0);
        return true;
    }
    if (event->type() == QEvent::ShortcutOverride && held_ >= 0) {
        event->accept(); // Escape belongs to the hand
        return true;
    }
    return QOpenGLWidget::event(event);
}

bool SceneView::turn_by_key(int key, bool shift) {
    constexpr double angle = 0.1, pixels = 40;
    const auto go = [&](double right, double up) {
        if (shift)
            pan(-right * pixels, -up * pixels);
        else
            orbit(right * angle, up * angle);
    };
    switch (key) {
    case Qt::Key_Left:
        go(-1, 0);
        return true;
    case Qt::Key_Right:
        go(1, 0);
        return true;
    case Qt::Key_Up:
        go(0, 1);
        return true;
    case Qt::Key_Down:
        go(0, -1);
        return true;
    default:
        return false;
    }
}

void SceneView::keyPressEvent(QKeyEvent *event) {
    if (event->key() == Qt::Key_Escape && std::exchange(held_, -1) >= 0) return emit handle_given_up();
    if (is_menu_key(*event)) return emit asked_for_menu(by_keyboard, mapToGlobal(rect().center()));
    if (turn_by_key(event->key(), event->modifiers() & Qt::ShiftModifier)) return;
    const auto zoom_in = [this](double factor) { zoom(factor, QRectF(rect()).center()); };
    if (!zoom_by_key(*event, zoom_in, [this] { fit(); })) QOpenGLWidget::keyPressEvent(event);
}

} // namespace roundlay::window
