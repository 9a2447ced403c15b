// Forms and pages that scroll where the screen is too small for them.
#pragma once

class QScrollArea;
class QWidget;

namespace roundlay::window {

/// Without a frame; the tab key passes it by.
QScrollArea *scrolled(QWidget *inside);

/// A panel is as narrow as its content can be, or, on a small screen, narrower: then it scrolls.
void keep_narrow(QWidget &panel, const QWidget &inside);

} // namespace roundlay::window
