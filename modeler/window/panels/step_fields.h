// The fields for the steps of the foundation under one wall.
#pragma once

#include "kernel/shell/shell.h"

#include <QGroupBox>
#include <functional>

class QComboBox;
class QFormLayout;
class QLabel;
class QToolButton;

namespace roundlay {
struct Fitted;
}

namespace roundlay::window {

class Desk;
class LengthEdit;

class StepFields : public QGroupBox {
    Q_OBJECT
  public:
    explicit StepFields(Desk &desk, QWidget *parent = nullptr);

    /// Those under that wall, as the text states them; another wall's first is shown first.
    void show_steps(const Shell &shell, const std::string &wall);
    void add(double along); ///< as near to there as it fits: from the wall's left, mm

  private:
    void add_chooser(QFormLayout &form);
    LengthEdit *length_field(QFormLayout &form, const QString &name, const QString &label,
                             Length FoundationStep::*part);
    void refresh(const Shell &shell);
    void remove();
    bool edit(const QString &name, const std::function<Fitted(const Shell &)> &change);
    void complain(const QString &why);
    std::size_t
    chosen(const Shell &shell) const; ///< index into Shell::steps; past its end where there is none

    Desk &desk_;
    std::string wall_;
    int at_ = 0; ///< among those of the wall
    double middle_ = 0;
    QComboBox *steps_;
    QToolButton *less_;
    LengthEdit *from_left_, *width_, *rise_;
    QLabel *complaint_;
};

} // namespace roundlay::window
