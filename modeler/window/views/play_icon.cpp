#include "modeler/window/views/play_icon.h"

#include <QApplication>
#include <QIconEngine>
#include <QPainter>
#include <QPalette>
#include <QPixmap>

namespace roundlay::window {

namespace {

class PlayEngine : public QIconEngine {
  public:
    explicit PlayEngine(bool running) : running_(running) {}

    void paint(QPainter *painter, const QRect &box, QIcon::Mode mode, QIcon::State) override {
        const auto group = mode == QIcon::Disabled ? QPalette::Disabled : QPalette::Active;
        painter->save();
        painter->setRenderHint(QPainter::Antialiasing);
        painter->setPen(Qt::NoPen);
        painter->setBrush(QApplication::palette().color(group, QPalette::ButtonText));
        const QRectF r = QRectF(box).adjusted(0.2 * box.width(), 0.15 * box.height(), -0.2 * box.width(),
                                              -0.15 * box.height());
        if (running_) {
            const double bar = r.width() / 3;
            painter->drawRect(QRectF(r.left(), r.top(), bar, r.height()));
            painter->drawRect(QRectF(r.right() - bar, r.top(), bar, r.height()));
        } else {
            painter->drawPolygon(
                QPolygonF({r.topLeft(), QPointF(r.right(), r.center().y()), r.bottomLeft()}));
        }
        painter->restore();
    }

    QPixmap pixmap(const QSize &size, QIcon::Mode mode, QIcon::State state) override {
        QPixmap made(size);
        made.fill(Qt::transparent);
        QPainter painter(&made);
        paint(&painter, QRect(QPoint(), size), mode, state);
        return made;
    }

    QIconEngine *clone() const override { return new PlayEngine(running_); }

  private:
    bool running_;
};

} // namespace

QIcon play_icon(bool running) {
    return QIcon(new PlayEngine(running));
}

} // namespace roundlay::window
