// A new shell from a shape, or drawn, with sizes typed in either system.
#pragma once

#include "kernel/design/new_shell.h"

#include <QDialog>
#include <QSet>

class QCheckBox;
class QComboBox;
class QFormLayout;
class QLabel;
class QLineEdit;
class QPushButton;

namespace roundlay {
struct Layout;
}

namespace roundlay::window {

class CountBox;
class LengthEdit;
class PlanSketch;

class NewShellDialog : public QDialog {
    Q_OBJECT
  public:
    explicit NewShellDialog(UnitSystem units, QWidget *parent = nullptr);

    const Shell &shell() const { return shell_; } ///< after it was accepted

    void choose(Shape shape);
    PlanSketch &sketch() { return *sketch_; }

    void accept() override;
    void reject() override; ///< asks where a plan was drawn

  signals:
    void asked_for_keys(); ///< F1

  private:
    void fill_choices();
    void connect_fields();
    QLayout *left_side();
    QLayout *drawing_side();
    void make_form(QWidget *inside);
    QList<LengthEdit *> fields() const;
    void start_over();
    void show_plan(const Layout *layout); ///< none where the sizes make no shell
    QString what_is_missing() const;
    void check();
    bool is_wrong() const;
    bool is_wall(const LengthEdit *edit) const;
    void take(LengthEdit &edit);
    void show_doubts();
    NewShell sizes() const;
    NotchKind notch() const;
    UnitSystem units() const;
    void show_labels(Shape shape);

    QComboBox *shape_, *units_, *kind_, *species_;
    QLineEdit *name_;
    LengthEdit *width_, *depth_, *part_width_, *part_depth_, *from_left_, *thickness_, *pitch_, *gap_,
        *overhang_;
    QLabel *part_width_label_, *part_depth_label_, *thickness_label_, *answer_, *bare_;
    CountBox *rounds_;
    QPushButton *make_;
    PlanSketch *sketch_;
    QCheckBox *slanted_;
    QLabel *drawing_hint_;
    QFormLayout *form_ = nullptr;
    QSet<LengthEdit *> typed_; ///< by the person
    bool fits_ = false;
    Shell shell_;
};

} // namespace roundlay::window
