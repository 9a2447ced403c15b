// The floors of the shell: which walls their joists lie in, how high, how far apart, their beams and
// openings.
#pragma once

#include "kernel/design/fitted.h"

#include <QScrollArea>
#include <functional>
#include <optional>
#include <vector>

class QComboBox;
class QFormLayout;
class QGroupBox;
class QLabel;
class QToolButton;

namespace roundlay::window {

class Desk;
class LengthEdit;
class MeasureEdit;
class NameEdit;
class LoadEdit;
class Selection;
class SlopeEdit;

class FloorPanel : public QScrollArea {
    Q_OBJECT
  public:
    FloorPanel(Desk &desk, Selection &selection, QWidget *parent = nullptr);

    void add_floor();
    void remove_floor();
    void add_beam();
    void remove_beam();
    void add_opening();
    void remove_opening();
    LengthEdit *field(const QString &name) const; ///< by its object name

  protected:
    void showEvent(QShowEvent *event) override;

  private:
    using Change = std::function<void(Floor &)>;
    /// A box that chooses one of several, with buttons for one more and one less.
    struct Chooser {
        QComboBox *box = nullptr;
        QToolButton *more = nullptr, *less = nullptr;
    };
    Chooser chooser(QFormLayout *form, const QString &label, const QString &more, const QString &less);
    LengthEdit *length_field(QFormLayout *form, const QString &name, const QString &label,
                             const std::function<void(Floor &, LengthEdit &)> &set);
    LengthEdit *joist_field(QFormLayout *form, const QString &name, const QString &label,
                            Length Floor::*part);
    LengthEdit *optional_field(QFormLayout *form, const char *name, const QString &label,
                               const QString &when_empty, std::optional<Length> Floor::*part);
    LengthEdit *beam_field(QFormLayout *form, const QString &name, const QString &label,
                           const std::function<Length &(Beam &)> &part);
    LengthEdit *opening_field(QFormLayout *form, const QString &name, const QString &label,
                              Length FloorOpening::*part);
    QComboBox *wall_field(QFormLayout *form, const QString &label, std::string Floor::*part);
    LoadEdit *load_field(QFormLayout *form, const QString &name, const QString &label,
                         std::optional<double> Floor::*part);
    void make_fields();
    void begin();
    void make_joists(QFormLayout *form);
    void make_joist_ends(QFormLayout *form);
    void make_wood(QFormLayout *form);
    QGroupBox *beams_box();
    QGroupBox *openings_box();
    void connect_choosers();
    using ShellEdit = std::function<Fitted(const Shell &)>;
    void take_from(QFormLayout *form, const QString &label, MeasureEdit *edit, const Change &set);
    void change(const Change &change);
    bool edit(const QString &name, const ShellEdit &change);
    void search(const QString &name, const ShellEdit &change, const std::function<void()> &made);
    std::vector<Floor> floors_of_text() const;
    void let_go();
    void refresh();
    void show_floor(const Floor &floor, UnitSystem units);
    void show_beams(const Floor &floor, UnitSystem units);
    void show_openings(const Floor &floor, UnitSystem units);
    void list_floors(const Shell &shell);
    void follow_selection();
    std::size_t chosen() const { return static_cast<std::size_t>(std::max(floor_, 0)); }

    Desk &desk_;
    Selection &selection_;
    int floor_ = 0, beam_ = 0, opening_ = 0; ///< chosen ones
    Chooser floors_, beams_, openings_;
    QWidget *all_ = nullptr; ///< fields of the chosen floor
    NameEdit *name_, *opening_name_ = nullptr;
    QComboBox *from_ = nullptr, *to_ = nullptr, *pocket_ = nullptr, *fabric_ = nullptr, *species_ = nullptr;
    SlopeEdit *tail_ = nullptr;
    LoadEdit *live_ = nullptr, *dead_ = nullptr;
    LengthEdit *level_ = nullptr, *width_ = nullptr, *height_ = nullptr, *tip_width_ = nullptr,
               *tip_height_ = nullptr, *spacing_ = nullptr, *first_ = nullptr, *bearing_ = nullptr;
    LengthEdit *beam_at_ = nullptr, *beam_width_ = nullptr, *beam_height_ = nullptr;
    LengthEdit *opening_left_ = nullptr, *opening_wall_ = nullptr, *opening_width_ = nullptr,
               *opening_length_ = nullptr;
    QLabel *complaint_;
    QWidget *fields_; ///< all but the banner
};

} // namespace roundlay::window
