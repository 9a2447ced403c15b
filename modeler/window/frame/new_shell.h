// A new shell from a shape, with sizes typed in either system.
#pragma once

#include "kernel/shell/drawn_plan.h"

#include <QDialog>

class QComboBox;
class QFormLayout;
class QLabel;
class QLineEdit;
class QPushButton;
class QSpinBox;

namespace roundlay::window {

class LengthEdit;
class PlanSketch;

enum class Shape { rectangle, ell, inset, tee, u_shape, cross, drawn };

struct NewShell {
    Shape shape = Shape::rectangle;
    UnitSystem units = UnitSystem::metric;
    Length width, depth;
    Length part_width, part_depth, from_left; ///< wing and leg of an L; arm of a cross is part_depth
    Length thickness, pitch, gap;
    int rounds = 11;
    std::vector<PlanPoint> corners; ///< of a drawn one, once closed
    std::string name;
};

NewShell usual_shell(Shape shape, UnitSystem units);
/// Nothing where a drawn one is not closed, or a part is larger than the whole.
std::optional<Shell> shell_of(const NewShell &sizes);

class NewShellDialog : public QDialog {
    Q_OBJECT
  public:
    explicit NewShellDialog(UnitSystem units, QWidget *parent = nullptr);

    const Shell &shell() const { return shell_; } ///< after it was accepted

    void choose(Shape shape);
    PlanSketch &sketch() { return *sketch_; }

  private:
    QFormLayout *make_form();
    void start_over();
    void show_plan();
    QString what_is_missing() const;
    void check();
    NewShell sizes() const;
    void show_labels(Shape shape);

    QComboBox *shape_, *units_;
    QLineEdit *name_;
    LengthEdit *width_, *depth_, *part_width_, *part_depth_, *from_left_, *thickness_, *pitch_, *gap_;
    QLabel *part_width_label_, *part_depth_label_, *from_left_label_, *answer_;
    QSpinBox *rounds_;
    QPushButton *make_;
    PlanSketch *sketch_;
    QFormLayout *form_ = nullptr;
    Shell shell_;
};

} // namespace roundlay::window
