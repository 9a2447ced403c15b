#include "modeler/window/panels/scrolled.h"

#include <QScreen>
#include <QScrollArea>
#include <QStyle>
#include <algorithm>

namespace roundlay::window {

QScrollArea *scrolled(QWidget *inside) {
    auto *scroll = new QScrollArea;
    scroll->setWidget(inside);
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setFocusPolicy(Qt::NoFocus);
    return scroll;
}

void keep_narrow(QWidget &panel, const QWidget &inside) {
    const int whole =
        inside.minimumSizeHint().width() + panel.style()->pixelMetric(QStyle::PM_ScrollBarExtent);
    panel.setMinimumWidth(std::min(whole, panel.screen()->availableGeometry().width() / 4));
}

} // namespace roundlay::window
