// What is stated of the shell as a whole: name, thickness, rounds, notch, wood.
#pragma once

#include "kernel/shell/shell.h"

#include <QScrollArea>
#include <functional>

class QComboBox;
class QFormLayout;
class QLabel;

namespace roundlay::window {

class Desk;
class CountBox;
class LengthEdit;
class NameEdit;
class ProjectFields;
class SlopeEdit;

class ShellPanel : public QScrollArea {
    Q_OBJECT
  public:
    ShellPanel(Desk &desk, QWidget *parent = nullptr);

    LengthEdit *field(const QString &name) const; ///< by its object name

  protected:
    void showEvent(QShowEvent *event) override;

  private:
    void refresh();
    LengthEdit *length_field(const QString &name, const QString &label, const QString &undo,
                             const std::function<void(Shell &, Length)> &set);
    void fill_choices();
    void make_fields();
    void make_joint_fields();
    void change(const QString &name, const std::function<void(Shell &)> &set);
    void connect_fields();
    void connect_choices();
    void begin();

    Desk &desk_;
    NameEdit *name_;
    ProjectFields *project_;
    QComboBox *kind_, *top_, *species_;
    CountBox *count_;
    SlopeEdit *slope_;
    QFormLayout *form_;
    LengthEdit *thickness_, *pitch_, *gap_, *overhang_, *least_tail_;
    QLabel *height_, *complaint_;
    QWidget *fields_; ///< all but the banner
};

} // namespace roundlay::window
