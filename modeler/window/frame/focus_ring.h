// A ring round whatever takes the keyboard, in every window of the program.
#pragma once

#include <QObject>
#include <QPointer>
#include <QWidget>

namespace roundlay::window {

/// Away while the mouse is in use: it shows by itself where it is.
class FocusRing : public QObject {
  public:
    explicit FocusRing(QObject *parent);

    const QWidget *ring() const { return ring_; } ///< null where none was needed yet
    QWidget *round() const { return round_; }

  protected:
    bool eventFilter(QObject *object, QEvent *event) override;

  private:
    void follow(QWidget *widget);
    void place();

    QPointer<QWidget> ring_, round_;
    bool by_mouse_ = false;
};

} // namespace roundlay::window
