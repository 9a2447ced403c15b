#include "modeler/window/frame/new_shell.h"

#include "kernel/layout/layout.h"
#include "kernel/shell/shapes.h"
#include "modeler/window/desk/kernel_words.h"
#include "modeler/window/desk/words.h"
#include "modeler/window/panels/length_edit.h"
#include "modeler/window/views/plan_sketch.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QSpinBox>

namespace roundlay::window {

namespace {

bool parts_fit(const NewShell &s) {
    const Length none;
    if (s.thickness <= none || s.pitch <= none) return false;
    if (s.shape == Shape::drawn) return s.corners.size() > 2;
    if (s.width <= none || s.depth <= none) return false;
    if (s.shape == Shape::rectangle) return true;
    if (s.shape == Shape::cross) return s.part_depth > none;
    if (s.part_width <= none || s.part_depth <= none || s.part_width >= s.width) return false;
    if (s.shape == Shape::ell) return s.part_depth < s.depth;
    return s.from_left > none && s.from_left + s.part_width < s.width &&
           (s.shape == Shape::tee || s.part_depth < s.depth);
}

std::vector<Wall> walls_of(const NewShell &s) {
    switch (s.shape) {
    case Shape::rectangle:
        return rectangle_plan(s.width, s.depth);
    case Shape::ell:
        return l_plan(s.width, s.depth, s.part_width, s.part_depth);
    case Shape::inset:
        return inset_plan(s.width, s.depth, s.from_left, s.part_width, s.part_depth);
    case Shape::tee:
        return t_plan(s.width, s.depth, s.from_left, s.part_width, s.part_depth);
    case Shape::u_shape:
        return u_plan(s.width, s.depth, s.from_left, s.part_width, s.part_depth);
    case Shape::drawn:
        return drawn_plan(s.corners);
    case Shape::cross:
        break;
    }
    return cross_plan(s.width, s.depth, s.part_depth);
}

QString refusal(const Layout &layout) {
    for (const Finding &f : layout.findings)
        if (f.weight == Weight::error)
            return (f.place.empty() ? QString() : kernel_place(f.place) + QStringLiteral(": ")) +
                   kernel_words(f.message);
    return {};
}

} // namespace

NewShell usual_shell(Shape shape, UnitSystem units) {
    const bool metric = units == UnitSystem::metric;
    const auto size = [metric](double mm, double feet) {
        return metric ? Length::mm(mm) : Length::feet(feet);
    };
    NewShell s;
    s.shape = shape;
    s.units = units;
    s.width = shape == Shape::cross ? size(4800, 16) : size(9600, 32);
    s.depth = shape == Shape::cross ? size(4800, 16) : size(7200, 24);
    s.part_width = shape == Shape::ell ? size(4800, 16) : size(3600, 12);
    s.part_depth = shape == Shape::ell ? size(3600, 12) : size(2400, 8);
    s.from_left = size(3000, 10);
    s.thickness = metric ? Length::mm(180) : Length::inches(7);
    s.pitch = metric ? Length::mm(250) : Length::inches(10);
    s.gap = metric ? Length::mm(25) : Length::inches(1);
    return s;
}

std::optional<Shell> shell_of(const NewShell &sizes) {
    if (!parts_fit(sizes)) return {};
    Shell shell = begun_in(sizes.units);
    shell.name = sizes.name;
    shell.thickness = sizes.thickness;
    shell.walls = walls_of(sizes);
    if (shell.walls.empty()) return {};
    shell.rounds.count = sizes.rounds;
    shell.rounds.pitch = sizes.pitch;
    shell.rounds.gap = sizes.gap;
    return shell;
}

NewShellDialog::NewShellDialog(UnitSystem units, QWidget *parent)
    : QDialog(parent), shape_(new QComboBox), units_(new QComboBox), name_(new QLineEdit(tr("New shell"))),
      width_(new LengthEdit), depth_(new LengthEdit), part_width_(new LengthEdit),
      part_depth_(new LengthEdit), from_left_(new LengthEdit), thickness_(new LengthEdit),
      pitch_(new LengthEdit), gap_(new LengthEdit), part_width_label_(new QLabel),
      part_depth_label_(new QLabel), from_left_label_(new QLabel), answer_(new QLabel), rounds_(new QSpinBox),
      sketch_(new PlanSketch) {
    constexpr int most_rounds = 60, usual_rounds = 11;
    setWindowTitle(tr("New shell"));
    shape_->addItems(
        {tr("Rectangle"), tr("L"), tr("Inset porch"), tr("T"), tr("U"), tr("Cross"), tr("Drawn by hand")});
    units_->addItems({tr("metric"), tr("feet and inches")});
    units_->setCurrentIndex(units == UnitSystem::metric ? 0 : 1);
    rounds_->setRange(1, most_rounds);
    rounds_->setValue(usual_rounds);
    answer_->setWordWrap(true);
    answer_->setMinimumHeight(answer_->fontMetrics().height() * 2);
    auto *row = new QHBoxLayout(this);
    form_ = make_form();
    row->addLayout(form_);
    row->addWidget(sketch_, 1);
    make_->setDefault(true); // only now: before it is in the dialog nobody hears it
    connect(shape_, &QComboBox::currentIndexChanged, this, &NewShellDialog::start_over);
    connect(units_, &QComboBox::currentIndexChanged, this, &NewShellDialog::start_over);
    connect(rounds_, &QSpinBox::valueChanged, this, &NewShellDialog::check);
    connect(name_, &QLineEdit::textChanged, this, &NewShellDialog::check);
    connect(sketch_, &PlanSketch::changed, this, &NewShellDialog::check);
    for (LengthEdit *edit :
         {width_, depth_, part_width_, part_depth_, from_left_, thickness_, pitch_, gap_}) {
        connect(edit, &LengthEdit::committed, this, &NewShellDialog::check);
        connect(edit, &MeasureEdit::complained, answer_, &QLabel::setText);
    }
    start_over();
}

QFormLayout *NewShellDialog::make_form() {
    auto *form = new QFormLayout;
    form->addRow(tr("&Name"), name_);
    form->addRow(tr("&Shape"), shape_);
    form->addRow(tr("&Units"), units_);
    form->addRow(tr("&Width, west to east"), width_);
    form->addRow(tr("&Depth, south to north"), depth_);
    form->addRow(part_width_label_, part_width_);
    form->addRow(part_depth_label_, part_depth_);
    form->addRow(from_left_label_, from_left_);
    form->addRow(tr("&Thickness"), thickness_);
    form->addRow(tr("&Rounds"), rounds_);
    form->addRow(tr("&Pitch"), pitch_);
    form->addRow(tr("&Gap"), gap_);
    form->addRow(answer_);
    auto *buttons = new QDialogButtonBox(QDialogButtonBox::Cancel);
    make_ = buttons->addButton(tr("&Make it"), QDialogButtonBox::AcceptRole);
    form->addRow(buttons);
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    return form;
}

void NewShellDialog::choose(Shape shape) {
    shape_->setCurrentIndex(static_cast<int>(shape));
    if (shape == Shape::drawn) sketch_->setFocus();
}

void NewShellDialog::show_labels(Shape shape) {
    const bool parts = shape != Shape::rectangle && shape != Shape::drawn,
               wide = parts && shape != Shape::cross, placed = wide && shape != Shape::ell;
    part_width_label_->setText(shape == Shape::ell     ? tr("What stays of the north side")
                               : shape == Shape::inset ? tr("Width of the recess")
                               : shape == Shape::tee   ? tr("Width of the wing")
                                                       : tr("Width of the court"));
    part_depth_label_->setText(shape == Shape::ell     ? tr("What stays of the east side")
                               : shape == Shape::inset ? tr("Depth of the recess")
                               : shape == Shape::tee   ? tr("Depth of the wing")
                               : shape == Shape::cross ? tr("How far the arms stand out")
                                                       : tr("Depth of the court"));
    from_left_label_->setText(tr("From the left corner"));
    part_width_->setAccessibleName(part_width_label_->text());
    part_depth_->setAccessibleName(part_depth_label_->text());
    from_left_->setAccessibleName(from_left_label_->text());
    form_->setRowVisible(width_, shape != Shape::drawn);
    form_->setRowVisible(depth_, shape != Shape::drawn);
    for (QWidget *w : {static_cast<QWidget *>(part_width_), static_cast<QWidget *>(part_width_label_)})
        w->setVisible(wide);
    for (QWidget *w : {static_cast<QWidget *>(part_depth_), static_cast<QWidget *>(part_depth_label_)})
        w->setVisible(parts);
    for (QWidget *w : {static_cast<QWidget *>(from_left_), static_cast<QWidget *>(from_left_label_)})
        w->setVisible(placed);
}

void NewShellDialog::start_over() {
    const auto shape = static_cast<Shape>(shape_->currentIndex());
    const UnitSystem units = units_->currentIndex() == 0 ? UnitSystem::metric : UnitSystem::imperial;
    const NewShell usual = usual_shell(shape, units);
    show_labels(shape);
    width_->set_length(usual.width, units);
    depth_->set_length(usual.depth, units);
    part_width_->set_length(usual.part_width, units);
    part_depth_->set_length(usual.part_depth, units);
    from_left_->set_length(usual.from_left, units);
    thickness_->set_length(usual.thickness, units);
    pitch_->set_length(usual.pitch, units);
    gap_->set_length(usual.gap, units);
    sketch_->set_units(units);
    if (shape == Shape::drawn) sketch_->draw();
    check();
}

/// Of a given shape; a drawn one is there already.
void NewShellDialog::show_plan() {
    if (shape_->currentIndex() == static_cast<int>(Shape::drawn)) return;
    std::vector<Vec2> corners;
    if (const auto shell = shell_of(sizes()))
        for (const WallPlace &wall : lay_out(*shell).walls)
            corners.push_back({wall.frame.origin.x, wall.frame.origin.y});
    sketch_->show_plan(std::move(corners));
}

QString NewShellDialog::what_is_missing() const {
    if (shape_->currentIndex() == static_cast<int>(Shape::drawn) && !sketch_->is_closed())
        return tr("Draw the corners and close the figure: click the first corner again, or press Enter.");
    return tr("A part must be smaller than the whole, and every size more than nothing.");
}

NewShell NewShellDialog::sizes() const {
    NewShell s;
    s.shape = static_cast<Shape>(shape_->currentIndex());
    s.units = units_->currentIndex() == 0 ? UnitSystem::metric : UnitSystem::imperial;
    s.width = width_->length();
    s.depth = depth_->length();
    s.part_width = part_width_->length();
    s.part_depth = part_depth_->length();
    s.from_left = from_left_->length();
    s.thickness = thickness_->length();
    s.pitch = pitch_->length();
    s.gap = gap_->length();
    s.rounds = rounds_->value();
    s.name = name_->text().toStdString();
    if (sketch_->is_closed()) s.corners = sketch_->corners();
    return s;
}

void NewShellDialog::check() {
    const auto shell = shell_of(sizes());
    QString words = what_is_missing();
    show_plan();
    bool fine = false;
    if (shell) {
        const Layout layout = lay_out(*shell);
        words = refusal(layout);
        fine = words.isEmpty();
        shell_ = *shell;
        if (fine)
            words = tr("%1 pieces in %2 rounds, %3 high")
                        .arg(layout.pieces.size())
                        .arg(layout.rounds)
                        .arg(length_text(layout.height, shell->units));
    }
    answer_->setText(words);
    make_->setEnabled(fine);
}

} // namespace roundlay::window
