#include "modeler/window/panels/shell_panel.h"

#include "kernel/design/shell_edits.h"
#include "kernel/document/limits.h"
#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/notch_words.h"
#include "modeler/window/desk/words.h"
#include "modeler/window/panels/count_box.h"
#include "modeler/window/panels/field_row.h"
#include "modeler/window/panels/length_edit.h"
#include "modeler/window/panels/project_fields.h"
#include "modeler/window/panels/scrolled.h"
#include "modeler/window/panels/species_choice.h"
#include "modeler/window/panels/wrapped_label.h"
#include "modeler/window/views/stand_banner.h"

#include <QComboBox>
#include <QFormLayout>
#include <QLabel>
#include <QVBoxLayout>

namespace roundlay::window {

ShellPanel::ShellPanel(Desk &desk, QWidget *parent)
    : QScrollArea(parent), desk_(desk), name_(new NameEdit), project_(new ProjectFields(desk)),
      kind_(new QComboBox), top_(new QComboBox), species_(new QComboBox),
      count_(new CountBox(1, limits::rounds)), slope_(new SlopeEdit), height_(new WrappedLabel),
      complaint_(new WrappedLabel) {
    auto *inside = new QWidget;
    auto *column = new QVBoxLayout(inside);
    column->setContentsMargins(0, 0, 0, 0);
    new StandBanner(desk_, column, StandBanner::Shows::fields);
    fields_ = new QWidget;
    form_ = new QFormLayout(fields_);
    column->addWidget(fields_, 1);
    form_->setRowWrapPolicy(QFormLayout::WrapLongRows);
    setWidgetResizable(true);
    setFrameShape(QFrame::NoFrame);
    setFocusPolicy(Qt::NoFocus);
    setAccessibleName(tr("Shell"));
    count_->setKeyboardTracking(false);
    fill_choices();
    make_fields();
    make_joint_fields();
    setWidget(inside);
    keep_narrow(*this, *inside);
    connect_fields();
    connect(&desk_, &Desk::began, this, &ShellPanel::begin);
    connect(&desk_, &Desk::state_changed, this, &ShellPanel::refresh);
}

/// Another document: nothing is known until what it says is read.
void ShellPanel::begin() {
    put_in_reach(*this, *fields_, false);
    blank_fields(*this);
    height_->clear();
    complaint_->clear();
}

void ShellPanel::fill_choices() {
    kind_->addItems(notch_words());
    top_->addItems({tr("level"), tr("staggered")});
    species_->addItem(tr("not stated: eastern hemlock is taken"), QString());
    add_species(*species_);
    for (QComboBox *box : {kind_, top_, species_}) { // the longest word does not decide how wide the panel is
        box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
        box->setMinimumContentsLength(8);
    }
}

void ShellPanel::make_fields() {
    name_->setObjectName(QStringLiteral("name"));
    add_field(*form_, tr("&Name"), *name_);
    thickness_ = length_field(QStringLiteral("thickness"), tr("&Thickness"), tr("Change thickness"),
                              [](Shell &s, Length v) { s.thickness = v; });
    add_field(*form_, tr("&Rounds"), *count_);
    pitch_ = length_field(QStringLiteral("pitch"), tr("&Pitch"), tr("Change pitch"), [](Shell &s, Length v) {
        if (s.rounds.count) s.rounds.height.reset(); // two of the three are stated
        s.rounds.pitch = v;
    });
    gap_ = length_field(QStringLiteral("gap"), tr("&Gap"), tr("Change gap"),
                        [](Shell &s, Length v) { s.rounds.gap = v; });
    form_->addRow(tr("Height"), height_);
    form_->addRow(tr("T&op"), top_);
}

void ShellPanel::make_joint_fields() {
    form_->addRow(tr("Notc&h"), kind_);
    slope_->setObjectName(QStringLiteral("slope"));
    add_field(*form_, tr("&Slope"), *slope_);
    overhang_ = length_field(QStringLiteral("overhang"), tr("O&verhang"), tr("Change overhang"),
                             [](Shell &s, Length v) { s.notch.overhang = v; });
    least_tail_ = length_field(QStringLiteral("least_tail"), tr("&Least tail"), tr("Change least tail"),
                               [](Shell &s, Length v) { s.notch.least_tail = v; });
    form_->addRow(tr("&Wood"), species_);
    form_->addRow(complaint_);
    form_->addRow(project_);
}

LengthEdit *ShellPanel::length_field(const QString &name, const QString &label, const QString &undo,
                                     const std::function<void(Shell &, Length)> &set) {
    auto *edit = new LengthEdit;
    edit->setObjectName(name);
    add_field(*form_, label, *edit);
    connect(edit, &LengthEdit::committed, this, [this, edit, undo, set] {
        commit(*edit, desk_,
               [&] { change(undo, [edit, set](Shell &shell) { set(shell, edit->length()); }); });
        complaint_->clear(); // it is told beside the field
    });
    return edit;
}

LengthEdit *ShellPanel::field(const QString &name) const {
    return findChild<LengthEdit *>(name);
}

void ShellPanel::connect_fields() {
    connect_choices();
    connect(name_, &NameEdit::committed, this, [this] {
        commit(*name_, desk_, [this] {
            change(tr("Name shell"), [this](Shell &s) { s.name = name_->name().toStdString(); });
        });
        complaint_->clear();
    });
    connect(slope_, &SlopeEdit::committed, this, [this] {
        commit(*slope_, desk_,
               [this] { change(tr("Change slope"), [this](Shell &s) { s.notch.slope = slope_->slope(); }); });
        complaint_->clear();
    });
}

void ShellPanel::connect_choices() {
    connect(count_, &CountBox::counted, this, [this](int count) {
        change(tr("Change rounds"), [count](Shell &s) {
            if (s.rounds.pitch) s.rounds.height.reset();
            s.rounds.count = count;
        });
    });
    connect(kind_, &QComboBox::activated, this, [this](int kind) {
        change(tr("Change notch"), [kind](Shell &s) { s = with_kind(s, static_cast<NotchKind>(kind)); });
    });
    connect(top_, &QComboBox::activated, this, [this](int top) {
        change(tr("Change top"), [top](Shell &s) { s.rounds.top = static_cast<TopRule>(top); });
    });
    connect(species_, &QComboBox::activated, this, [this] {
        change(tr("Change wood"),
               [this](Shell &s) { s.wood.species = species_->currentData().toString().toStdString(); });
    });
}

void ShellPanel::change(const QString &name, const std::function<void(Shell &)> &set) {
    QString why;
    const auto listening =
        connect(&desk_, &Desk::refused, this, [&why](const QString &words) { why = words; });
    const bool done = desk_.edit(name, [&](const Shell &shell) {
        Shell next = shell;
        set(next);
        return std::optional(next);
    });
    disconnect(listening);
    if (!done) refresh(); // what was chosen is not what is
    complaint_->setText(why);
}

/// What nobody sees is not brought up to date at every step of a drag.
void ShellPanel::showEvent(QShowEvent *event) {
    QScrollArea::showEvent(event);
    refresh();
}

void ShellPanel::refresh() {
    if (!isVisible()) return;
    write_in_red(*complaint_);
    const State &state = *desk_.state();
    put_in_reach(*this, *fields_, state.read.shell.has_value());
    if (!state.read.shell) return;
    const Shell &s = *state.read.shell;
    const UnitSystem units = s.units;
    name_->set_name(text(s.name));
    project_->show_project(s.project);
    thickness_->set_length(s.thickness, units);
    const double laid_out = state.job.layout.pitch; // none where the rounds cannot be
    pitch_->set_length(laid_out > 0 ? std::optional(Length::mm(laid_out)) : s.rounds.pitch, units);
    gap_->set_length(s.rounds.gap, units);
    overhang_->set_length(s.notch.overhang, units);
    least_tail_->set_length(s.notch.least_tail, units);
    height_->setText(standing_text(state.job.layout, units));
    kind_->setCurrentIndex(static_cast<int>(s.notch.kind));
    top_->setCurrentIndex(static_cast<int>(s.rounds.top));
    slope_->set_slope(s.notch.slope);
    slope_->setEnabled(takes_slope(s.notch.kind));
    species_->setCurrentIndex(species_->findData(text(s.wood.species)));
    count_->show_count(state.job.layout.rounds > 0 ? state.job.layout.rounds : s.rounds.count.value_or(1));
}

} // namespace roundlay::window
