#include "modeler/window/panels/shell_panel.h"

#include "kernel/trade/species.h"
#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/kernel_words.h"
#include "modeler/window/desk/words.h"
#include "modeler/window/panels/length_edit.h"
#include "modeler/window/views/tints.h"

#include <QComboBox>
#include <QFormLayout>
#include <QLabel>
#include <QSignalBlocker>
#include <QSpinBox>

namespace roundlay::window {

ShellPanel::ShellPanel(Desk &desk, QWidget *parent)
    : QWidget(parent), desk_(desk), name_(new QLineEdit), kind_(new QComboBox), top_(new QComboBox),
      species_(new QComboBox), count_(new QSpinBox), slope_(new SlopeEdit), height_(new QLabel),
      complaint_(new QLabel) {
    constexpr int most_rounds = 60;
    auto *form = new QFormLayout(this);
    count_->setRange(1, most_rounds);
    count_->setKeyboardTracking(false);
    kind_->addItems({tr("full dovetail"), tr("half dovetail"), tr("square lap"), tr("stated")});
    top_->addItems({tr("level"), tr("staggered")});
    species_->addItem(tr("not stated: eastern hemlock is taken"), QString());
    for (const Species &species : all_species())
        species_->addItem(kernel_words(text(species.name)), text(species.name));
    complaint_->setWordWrap(true);
    form->addRow(tr("&Name"), name_);
    thickness_ = length_field(form, tr("&Thickness"), tr("Change thickness"),
                              [](Shell &s, Length v) { s.thickness = v; });
    form->addRow(tr("&Rounds"), count_);
    pitch_ = length_field(form, tr("&Pitch"), tr("Change pitch"), [](Shell &s, Length v) {
        if (s.rounds.count) s.rounds.height.reset(); // two of the three are stated
        s.rounds.pitch = v;
    });
    gap_ = length_field(form, tr("&Gap"), tr("Change gap"), [](Shell &s, Length v) { s.rounds.gap = v; });
    form->addRow(tr("Height"), height_);
    form->addRow(tr("T&op"), top_);
    form->addRow(tr("Notc&h"), kind_);
    form->addRow(tr("&Slope"), slope_);
    overhang_ = length_field(form, tr("O&verhang"), tr("Change overhang"),
                             [](Shell &s, Length v) { s.notch.overhang = v; });
    least_tail_ = length_field(form, tr("&Least tail"), tr("Change least tail"),
                               [](Shell &s, Length v) { s.notch.least_tail = v; });
    form->addRow(tr("&Wood"), species_);
    form->addRow(complaint_);
    connect_fields();
    connect(&desk_, &Desk::state_changed, this, &ShellPanel::refresh);
}

LengthEdit *ShellPanel::length_field(QFormLayout *form, const QString &label, const QString &undo,
                                     const std::function<void(Shell &, Length)> &set) {
    auto *edit = new LengthEdit;
    edit->setAccessibleName(QString(label).remove(u'&'));
    form->addRow(label, edit);
    connect(edit, &MeasureEdit::complained, complaint_, &QLabel::setText);
    connect(edit, &LengthEdit::committed, this, [this, edit, undo, set] {
        change(undo, [edit, set](Shell &shell) { set(shell, edit->length()); });
    });
    return edit;
}

void ShellPanel::connect_fields() {
    connect(slope_, &MeasureEdit::complained, complaint_, &QLabel::setText);
    connect(name_, &QLineEdit::editingFinished, this, [this] {
        if (name_->isModified())
            change(tr("Name shell"), [this](Shell &s) { s.name = name_->text().toStdString(); });
        name_->setModified(false);
    });
    connect(count_, &QSpinBox::valueChanged, this, [this](int count) {
        change(tr("Change rounds"), [count](Shell &s) {
            if (s.rounds.pitch) s.rounds.height.reset();
            s.rounds.count = count;
        });
    });
    connect(kind_, &QComboBox::activated, this, [this](int kind) {
        change(tr("Change notch"), [kind](Shell &s) { s.notch.kind = static_cast<NotchKind>(kind); });
    });
    connect(top_, &QComboBox::activated, this, [this](int top) {
        change(tr("Change top"), [top](Shell &s) { s.rounds.top = static_cast<TopRule>(top); });
    });
    connect(species_, &QComboBox::activated, this, [this] {
        change(tr("Change wood"),
               [this](Shell &s) { s.wood.species = species_->currentData().toString().toStdString(); });
    });
    connect(slope_, &SlopeEdit::committed, this,
            [this] { change(tr("Change slope"), [this](Shell &s) { s.notch.slope = slope_->slope(); }); });
}

void ShellPanel::change(const QString &name, const std::function<void(Shell &)> &set) {
    desk_.edit(name, [&](const Shell &shell) {
        Shell next = shell;
        set(next);
        return std::optional(next);
    });
}

/// What nobody sees is not brought up to date at every step of a drag.
void ShellPanel::showEvent(QShowEvent *event) {
    QWidget::showEvent(event);
    refresh();
}

void ShellPanel::refresh() {
    if (!isVisible()) return;
    QPalette red = palette();
    red.setColor(QPalette::WindowText, tints().error);
    complaint_->setPalette(red);
    const State &state = *desk_.state();
    setEnabled(state.read.shell.has_value());
    if (!state.read.shell) return;
    const Shell &s = *state.read.shell;
    const UnitSystem units = s.units;
    if (!name_->isModified()) name_->setText(text(s.name));
    thickness_->set_length(s.thickness, units);
    pitch_->set_length(Length::mm(state.job.layout.pitch), units);
    gap_->set_length(s.rounds.gap, units);
    overhang_->set_length(s.notch.overhang, units);
    least_tail_->set_length(s.notch.least_tail, units);
    height_->setText(length_text(state.job.layout.height, units));
    kind_->setCurrentIndex(static_cast<int>(s.notch.kind));
    top_->setCurrentIndex(static_cast<int>(s.rounds.top));
    slope_->set_slope(s.notch.slope);
    slope_->setEnabled(s.notch.kind == NotchKind::full_dovetail || s.notch.kind == NotchKind::half_dovetail);
    species_->setCurrentIndex(species_->findData(text(s.wood.species)));
    const QSignalBlocker quiet(count_);
    count_->setValue(state.job.layout.rounds);
}

} // namespace roundlay::window
