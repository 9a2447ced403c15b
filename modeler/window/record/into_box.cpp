#include "modeler/window/record/into_box.h"

#include <QScrollArea>

namespace roundlay::window {

void go_into(QWidget &box) {
    for (QWidget *at = box.parentWidget(); at != nullptr; at = at->parentWidget())
        if (auto *area = qobject_cast<QScrollArea *>(at)) {
            constexpr int beside = 24; // pixels: what stands over it too
            area->ensureWidgetVisible(&box, beside, beside);
            break;
        }
    box.setFocus(Qt::TabFocusReason);
}

} // namespace roundlay::window
