// What becomes of a log: who decided, when, why, and where it goes.
#pragma once

#include "kernel/record/found_log.h"
#include "kernel/shell/shell.h"

#include <QDialog>

class QComboBox;
class QLabel;
class QLineEdit;
class QSpinBox;

namespace roundlay::window {

class DecideDialog : public QDialog {
    Q_OBJECT
  public:
    /// `shell` says which walls there are to go to.
    DecideDialog(const FoundLog &log, Decision first, const Shell &shell, QWidget *parent = nullptr);

    FoundDecision decision() const;

  private:
    void show_where();

    QComboBox *what_, *wall_;
    QLineEdit *by_, *on_, *why_;
    QSpinBox *round_, *piece_;
};

} // namespace roundlay::window
