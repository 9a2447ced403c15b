// The chosen thing in numbers, and the fields for what is the person's to state about it.
#pragma once

#include "kernel/shell/shell.h"

#include <QWidget>

class QComboBox;
class QFormLayout;
class QGroupBox;
class QLabel;
class QLineEdit;

namespace roundlay::window {

class Desk;
class LengthEdit;
class LogFields;
class Selection;

class LogPanel : public QWidget {
    Q_OBJECT
  public:
    LogPanel(Desk &desk, Selection &selection, QWidget *parent = nullptr);

    LengthEdit *field(const QString &object_name) const;
    QString words() const; ///< what is told of the chosen thing

  private:
    LengthEdit *length_field(QFormLayout *form, const QString &name, const QString &label);
    QGroupBox *opening_box();
    void refresh();
    void show_log(int piece);
    void show_opening();
    void show_wall();
    void show_corner();
    void take_log();
    void take_opening();
    void take_name();
    void take_wall();

    Desk &desk_;
    Selection &selection_;
    QLabel *title_, *words_, *complaint_;
    LogFields *log_;
    QGroupBox *opening_, *wall_;
    QComboBox *kind_;
    QLineEdit *name_;
    LengthEdit *from_left_, *sill_, *width_, *height_;
    LengthEdit *wall_length_;
};

} // namespace roundlay::window
