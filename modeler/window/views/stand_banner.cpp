#include "modeler/window/views/stand_banner.h"

#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/faults.h"
#include "modeler/window/views/tints.h"

#include <QBoxLayout>
#include <QEvent>
#include <QPainter>
#include <algorithm>

namespace roundlay::window {

namespace {

constexpr int bar = 5, beside = 9, beneath = 5; // pixels
constexpr int wraps = Qt::AlignLeft | Qt::AlignVCenter | Qt::TextWordWrap;

} // namespace

void wash(QPainter &painter, const QRect &rect) {
    constexpr float most = 0.68F;
    QColor paper = tints().paper;
    paper.setAlphaF(most);
    painter.fillRect(rect, paper);
    QColor lines = tints().faint;
    lines.setAlphaF(0.22F);
    painter.fillRect(rect, QBrush(lines, Qt::BDiagPattern)); // for eyes that do not tell the tints apart
}

StandBanner::StandBanner(const Desk &desk, QWidget *view, Shows shows)
    : QFrame(view), desk_(desk), shows_(shows) {
    view->installEventFilter(this);
    listen();
}

StandBanner::StandBanner(const Desk &desk, QBoxLayout *column, Shows shows)
    : desk_(desk), shows_(shows), in_column_(true) {
    QSizePolicy policy(QSizePolicy::Ignored, QSizePolicy::Minimum); // as high as its sentence at that width
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    column->addWidget(this);
    listen();
}

void StandBanner::listen() {
    setCursor(Qt::PointingHandCursor);
    connect(&desk_, &Desk::state_changed, this, &StandBanner::refresh);
    connect(&desk_, &Desk::began, this, &StandBanner::refresh);
    hide();
}

QString StandBanner::sentence() const {
    const State &state = *desk_.state();
    if (!desk_.is_open() || state.stands()) return {};
    const QString why = why_not(state);
    if (why.isEmpty()) return {};
    if (shows_ == Shows::fields && state.can_be_drawn()) return {};
    if (shows_ == Shows::as_stated && state.can_be_drawn())
        return tr("Drawn as stated; it cannot be built. %1").arg(why);
    if (desk_.standing())
        return tr("This is the shell as it last stood; it cannot be built now. %1").arg(why);
    return tr("There is nothing to show yet. %1").arg(why);
}

void StandBanner::refresh() {
    words_ = sentence();
    setAccessibleName(words_);
    setToolTip(words_);
    setVisible(!words_.isEmpty());
    lay_along_the_edge();
    update();
}

int StandBanner::heightForWidth(int width) const {
    constexpr int endless = 10'000;
    const QRect room(0, 0, std::max(width - bar - 2 * beside, 1), endless);
    return fontMetrics().boundingRect(room, wraps, words_).height() + 2 * beneath;
}

/// One line: how many it takes is asked by width.
QSize StandBanner::sizeHint() const {
    return {1, fontMetrics().height() + 2 * beneath};
}

void StandBanner::lay_along_the_edge() {
    if (words_.isEmpty()) return;
    if (in_column_) return updateGeometry();
    const int width = parentWidget()->width();
    setGeometry(0, 0, width, std::min(heightForWidth(width), std::max(parentWidget()->height() / 2, 1)));
    raise();
}

bool StandBanner::eventFilter(QObject *view, QEvent *event) {
    if (event->type() == QEvent::Resize) lay_along_the_edge();
    return QFrame::eventFilter(view, event);
}

void StandBanner::paintEvent(QPaintEvent *) {
    QPainter painter(this);
    painter.fillRect(rect(), tints().paper);
    painter.fillRect(QRect(0, 0, bar, height()), tints().error);
    painter.setPen(tints().error);
    painter.drawLine(rect().bottomLeft(), rect().bottomRight());
    painter.setPen(tints().ink);
    painter.drawText(rect().adjusted(bar + beside, 0, -beside, 0), wraps, words_);
}

} // namespace roundlay::window
