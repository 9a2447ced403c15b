#include "modeler/window/views/legend.h"

#include "modeler/window/views/tints.h"

#include <QEvent>
#include <QKeyEvent>
#include <QPainter>
#include <algorithm>

namespace roundlay::window {

namespace {

constexpr int swatch = 18, row_gap = 3, edge = 6, away = 8; // pixels

} // namespace

LegendEntry chosen_entry() {
    return {tints().accent_soft, tints().accent, Qt::BDiagPattern, tints().accent, Legend::tr("chosen")};
}

LegendEntry fault_entry() {
    return {tints().paper, tints().error, Qt::DiagCrossPattern, tints().error, Legend::tr("cannot be built")};
}

bool is_menu_key(const QKeyEvent &event) {
    return event.key() == Qt::Key_Menu ||
           (event.key() == Qt::Key_F10 && event.modifiers() == Qt::ShiftModifier);
}

Legend::Legend(QWidget *view) : QWidget(view) {
    setAttribute(Qt::WA_TransparentForMouseEvents);
    setObjectName(QStringLiteral("legend"));
    view->installEventFilter(this);
    hide();
}

void Legend::want(bool on) {
    wanted_ = on;
    setVisible(on && !entries_.empty());
    parentWidget()->update();
}

void Legend::tell(const std::vector<LegendEntry> &entries) {
    if (entries == entries_ && isVisible() == !entries.empty()) return;
    entries_ = entries;
    QStringList words;
    for (const LegendEntry &entry : entries_)
        words << entry.words;
    setAccessibleName(tr("Legend: %1").arg(words.join(QStringLiteral(", "))));
    setVisible(wanted_ && !entries_.empty());
    lay_in_the_corner();
    update();
}

void Legend::lay_in_the_corner() {
    int widest = 0;
    for (const LegendEntry &entry : entries_)
        widest = std::max(widest, fontMetrics().horizontalAdvance(entry.words));
    const int row = fontMetrics().height() + row_gap;
    resize(3 * edge + swatch + widest, 2 * edge + row * static_cast<int>(entries_.size()) - row_gap);
    move(away, parentWidget()->height() - height() - away);
    raise();
}

bool Legend::eventFilter(QObject *view, QEvent *event) {
    if (event->type() == QEvent::Resize) lay_in_the_corner();
    return QWidget::eventFilter(view, event);
}

void Legend::paintEvent(QPaintEvent *) {
    QPainter painter(this);
    paint(painter);
}

void Legend::paint(QPainter &painter) const {
    painter.setRenderHint(QPainter::Antialiasing);
    QColor paper = tints().paper;
    paper.setAlphaF(0.9F);
    painter.setPen(QPen(tints().faint, 1));
    painter.setBrush(paper);
    painter.drawRoundedRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5), 4, 4);
    const int high = fontMetrics().height();
    int y = edge;
    for (const LegendEntry &entry : entries_) {
        const QRectF box(edge + 0.5, y + 1.5, swatch - 1, high - 3);
        painter.setPen(Qt::NoPen);
        painter.setBrush(entry.colour);
        painter.drawRect(box);
        painter.setPen(QPen(entry.edge, 1));
        painter.setBrush(QBrush(entry.lines, entry.pattern));
        painter.drawRect(box);
        painter.setPen(tints().ink);
        painter.drawText(QRect(2 * edge + swatch, y, width(), high), Qt::AlignLeft | Qt::AlignVCenter,
                         entry.words);
        y += high + row_gap;
    }
}

} // namespace roundlay::window
