#include "modeler/window/panels/wrapped_label.h"

#include <QLayout>
#include <QResizeEvent>
#include <QScreen>
#include <algorithm>

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

QString breakable(QString sentence) {
    constexpr QChar may_break(0x200B);
    return sentence.replace(u'/', QString(u'/') + may_break);
}

/// Twice: sentences know how high they are once they have their width.
void make_room(QWidget &dialog) {
    const QRect screen = dialog.screen()->availableGeometry();
    const QSize frame = dialog.frameGeometry().size() - dialog.size();
    constexpr int passes = 2;
    for (int pass = 0; pass < passes; ++pass) {
        dialog.layout()->activate();
        const int least = dialog.layout()->totalMinimumSize().height();
        const int wanted =
            std::min(dialog.layout()->totalSizeHint().height(), screen.height() - frame.height());
        dialog.resize(dialog.width(), std::max({dialog.height(), least, wanted}));
    }
    const int below = dialog.frameGeometry().bottom() - screen.bottom();
    if (below > 0) dialog.move(dialog.x(), std::max(dialog.y() - below, screen.top()));
}

} // namespace roundlay::window
