#include "modeler/window/frame/wheel_guard.h"

#include <QAbstractSpinBox>
#include <QComboBox>
#include <QCoreApplication>
#include <QEvent>
#include <QScrollArea>
#include <QSlider>

namespace roundlay::window {

namespace {

bool is_box(const QWidget *widget) {
    return qobject_cast<const QComboBox *>(widget) != nullptr ||
           qobject_cast<const QAbstractSpinBox *>(widget) != nullptr;
}

bool scrolls_with(const QWidget *widget) {
    for (const QWidget *at = widget->parentWidget(); at != nullptr; at = at->parentWidget())
        if (qobject_cast<const QScrollArea *>(at) != nullptr) return true;
    return false;
}

bool passes_on(const QWidget *widget) {
    if (is_box(widget)) return true;
    return qobject_cast<const QSlider *>(widget) != nullptr && !widget->hasFocus() && scrolls_with(widget);
}

} // namespace

WheelGuard::WheelGuard(QObject *parent) : QObject(parent) {
    QCoreApplication::instance()->installEventFilter(this);
}

/// A wheel that gave the keyboard away would take what is typed elsewhere.
bool WheelGuard::eventFilter(QObject *object, QEvent *event) {
    const bool comes = event->type() == QEvent::Polish;
    if (!comes && event->type() != QEvent::Wheel) return false;
    auto *widget = qobject_cast<QWidget *>(object);
    if (widget == nullptr) return false;
    if (comes) {
        if (is_box(widget) && widget->focusPolicy() == Qt::WheelFocus)
            widget->setFocusPolicy(Qt::StrongFocus);
        return false;
    }
    if (!passes_on(widget)) return false;
    event->ignore(); // so that what it lies in is asked
    return true;
}

} // namespace roundlay::window
