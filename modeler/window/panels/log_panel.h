// The chosen thing in numbers, and the fields for what is the person's to state about it.
#pragma once

#include "kernel/layout/index.h"
#include "kernel/shell/shell.h"

#include <QWidget>
#include <functional>
#include <optional>

class QComboBox;
class QFormLayout;
class QGroupBox;
class QLabel;
class QScrollArea;

namespace roundlay {
struct LogPlace;
struct Piece;
} // namespace roundlay

namespace roundlay::window {

class Desk;
class LengthEdit;
class LogFields;
class MeasureEdit;
class NameEdit;
class Selection;
class StepFields;

class LogPanel : public QWidget {
    Q_OBJECT
  public:
    LogPanel(Desk &desk, Selection &selection, QWidget *parent = nullptr);

    LengthEdit *field(const QString &object_name) const;
    QString words() const; ///< what is told of the chosen thing
    /// A step of the foundation under that wall, as near to there as it fits; in its middle where no place is
    /// given.
    void add_step(const std::string &wall, std::optional<double> along = {});

  private:
    LengthEdit *length_field(QFormLayout *form, const QString &name, const QString &label);
    QGroupBox *opening_box();
    void fill(QWidget &inside);
    void make_wall_fields();
    void make_words();
    void refresh();
    void lay_out_now();
    QString shown(std::optional<Index<Piece>> piece);
    QString show_log(Index<Piece> piece);
    QString show_opening();
    QString show_wall();
    QString show_corner();
    void follow_selection();
    const Shell &stated() const; ///< as the text states it, also where it cannot be built
    LogPlace log_place(const Piece &piece) const;
    void take_log(MeasureEdit *field);
    void take_opening();
    void edit_opening(const QString &name, const std::function<void(Opening &)> &change);
    void take_name();
    void take_wall();

    Desk &desk_;
    Selection &selection_;
    QLabel *title_, *words_;
    QScrollArea *scroll_ = nullptr;
    LogFields *log_;
    QGroupBox *opening_, *wall_;
    QComboBox *kind_;
    NameEdit *name_;
    LengthEdit *from_left_, *sill_, *width_, *height_;
    LengthEdit *wall_length_;
    StepFields *steps_;
};

} // namespace roundlay::window
