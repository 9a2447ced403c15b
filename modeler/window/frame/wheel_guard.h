// The wheel scrolls; it changes no field.
#pragma once

#include <QObject>

namespace roundlay::window {

/// In every window of the program: a wheel over a box that chooses or counts goes to the panel that it lies
/// in, whether or not it has the keyboard. Who reads on in a panel passes over its fields, and a house must
/// not change by that. A slider in a panel that scrolls does so too unless it has the keyboard.
class WheelGuard : public QObject {
  public:
    explicit WheelGuard(QObject *parent);

  protected:
    bool eventFilter(QObject *object, QEvent *event) override;
};

} // namespace roundlay::window
