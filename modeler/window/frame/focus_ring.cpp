#include "modeler/window/frame/focus_ring.h"

#include "modeler/window/views/tints.h"

#include <QApplication>
#include <QPainter>

namespace roundlay::window {

namespace {

constexpr int stroke = 2, outside = 2; // pixels

class Ring : public QWidget {
  public:
    explicit Ring(QWidget *window) : QWidget(window) {
        setObjectName(QStringLiteral("focus-ring"));
        setAttribute(Qt::WA_TransparentForMouseEvents);
        setFocusPolicy(Qt::NoFocus);
    }

  protected:
    void resizeEvent(QResizeEvent *) override {
        setMask(QRegion(rect()) - QRegion(rect().adjusted(stroke, stroke, -stroke, -stroke)));
    }
    void paintEvent(QPaintEvent *) override { QPainter(this).fillRect(rect(), tints().accent); }
};

/// In the window's pixels, as far as what it lies in lets it be seen.
QRect seen(const QWidget &widget) {
    const QWidget *window = widget.window();
    QRect box(widget.mapTo(window, QPoint()), widget.size());
    box.adjust(-outside, -outside, outside, outside);
    for (const QWidget *p = widget.parentWidget(); p != nullptr;
         p = p == window ? nullptr : p->parentWidget())
        box &= QRect(p->mapTo(window, QPoint()), p->size());
    return box;
}

} // namespace

FocusRing::FocusRing(QObject *parent) : QObject(parent) {
    QCoreApplication::instance()->installEventFilter(this);
    connect(qApp, &QApplication::focusChanged, this, [this](QWidget *, QWidget *now) { follow(now); });
}

void FocusRing::follow(QWidget *widget) {
    round_ = widget;
    place();
}

void FocusRing::place() {
    const bool wanted =
        round_ && !by_mouse_ && round_->isVisible() &&
        (round_->window()->windowType() == Qt::Window || round_->window()->windowType() == Qt::Dialog);
    if (!wanted) {
        if (ring_) ring_->hide();
        return;
    }
    if (!ring_ || ring_->parentWidget() != round_->window()) {
        delete ring_;
        ring_ = new Ring(round_->window());
    }
    ring_->setGeometry(seen(*round_));
    ring_->raise();
    ring_->setVisible(!ring_->geometry().isEmpty());
}

bool FocusRing::eventFilter(QObject *object, QEvent *event) {
    switch (event->type()) {
    case QEvent::MouseButtonPress:
    case QEvent::KeyPress: {
        const bool mouse = event->type() == QEvent::MouseButtonPress;
        if (std::exchange(by_mouse_, mouse) != mouse) place();
        break;
    }
    case QEvent::Move:
    case QEvent::Resize:
    case QEvent::Show:
    case QEvent::Hide: {
        const auto *widget = qobject_cast<QWidget *>(object);
        if (round_ && widget != nullptr && widget != ring_ &&
            (widget == round_ || widget->isAncestorOf(round_)))
            place();
        break;
    }
    default:
        break;
    }
    return false;
}

} // namespace roundlay::window
