#include "modeler/window/views/view_keys.h"

#include <QKeyEvent>

namespace roundlay::window {

bool zoom_by_key(const QKeyEvent &event, const std::function<void(double factor)> &zoom,
                 const std::function<void()> &show_everything) {
    constexpr double step = 1.25;
    switch (event.key()) {
    case Qt::Key_Plus:
    case Qt::Key_Equal:
        zoom(step);
        return true;
    case Qt::Key_Minus:
        zoom(1 / step);
        return true;
    case Qt::Key_Home:
        show_everything();
        return true;
    default:
        return false;
    }
}

} // namespace roundlay::window
