// What is stated of the shell as a whole: name, thickness, rounds, notch, wood.
#pragma once

#include "kernel/shell/shell.h"

#include <QWidget>
#include <functional>

class QComboBox;
class QFormLayout;
class QLabel;
class QLineEdit;
class QSpinBox;

namespace roundlay::window {

class Desk;
class LengthEdit;
class SlopeEdit;

class ShellPanel : public QWidget {
    Q_OBJECT
  public:
    ShellPanel(Desk &desk, QWidget *parent = nullptr);

    LengthEdit *pitch() const { return pitch_; }

  protected:
    void showEvent(QShowEvent *event) override;

  private:
    void refresh();
    LengthEdit *length_field(QFormLayout *form, const QString &label, const QString &undo,
                             const std::function<void(Shell &, Length)> &set);
    void change(const QString &name, const std::function<void(Shell &)> &set);
    void connect_fields();

    Desk &desk_;
    QLineEdit *name_;
    QComboBox *kind_, *top_, *species_;
    QSpinBox *count_;
    SlopeEdit *slope_;
    LengthEdit *thickness_, *pitch_, *gap_, *overhang_, *least_tail_;
    QLabel *height_, *complaint_;
};

} // namespace roundlay::window
