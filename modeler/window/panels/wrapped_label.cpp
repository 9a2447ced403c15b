#include "modeler/window/panels/wrapped_label.h"

#include <QResizeEvent>

namespace roundlay::window {

WrappedLabel::WrappedLabel(const QString &sentence, QWidget *parent) : QLabel(sentence, parent) {
    setWordWrap(true);
}

QSize WrappedLabel::sizeHint() const {
    return {QLabel::sizeHint().width(), minimumSizeHint().height()};
}

QSize WrappedLabel::minimumSizeHint() const {
    return {QLabel::minimumSizeHint().width(), text().isEmpty() ? 0 : heightForWidth(width())};
}

void WrappedLabel::resizeEvent(QResizeEvent *event) {
    QLabel::resizeEvent(event);
    if (event->size().width() != event->oldSize().width()) updateGeometry();
}

} // namespace roundlay::window
