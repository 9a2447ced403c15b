#include "modeler/window/panels/step_fields.h"

#include "kernel/design/step_edits.h"
#include "kernel/layout/layout.h"
#include "modeler/window/desk/desk.h"
#include "modeler/window/panels/field_row.h"
#include "modeler/window/panels/length_edit.h"

#include <QComboBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QSignalBlocker>
#include <QToolButton>
#include <algorithm>
#include <memory>

namespace roundlay::window {

StepFields::StepFields(Desk &desk, QWidget *parent)
    : QGroupBox(tr("Steps of the foundation"), parent), desk_(desk), steps_(new QComboBox),
      complaint_(new QLabel) {
    auto *form = new QFormLayout(this);
    form->setRowWrapPolicy(QFormLayout::WrapLongRows);
    add_chooser(*form);
    from_left_ = length_field(*form, QStringLiteral("step_left"), tr("Step from the left"),
                              &FoundationStep::from_left);
    width_ = length_field(*form, QStringLiteral("step_width"), tr("Step width"), &FoundationStep::width);
    rise_ = length_field(*form, QStringLiteral("step_rise"), tr("Step rise"), &FoundationStep::rise);
    complaint_->setWordWrap(true);
    form->addRow(complaint_);
    connect(steps_, &QComboBox::activated, this, [this](int at) {
        at_ = at;
        for (LengthEdit *edit : {from_left_, width_, rise_})
            edit->let_go();
        if (desk_.state()->read.shell) refresh(*desk_.state()->read.shell);
    });
}

/// Which step, and buttons for one more and one less.
void StepFields::add_chooser(QFormLayout &form) {
    steps_->setObjectName(QStringLiteral("steps"));
    steps_->setAccessibleName(tr("Step of the foundation"));
    auto *row = new QHBoxLayout;
    row->addWidget(steps_, 1);
    QToolButton *more = sign_button(QStringLiteral("+"), tr("Add a step of the foundation"));
    less_ = sign_button(QStringLiteral("\u2212"), tr("Remove the step of the foundation"));
    more->setObjectName(QStringLiteral("more_steps"));
    less_->setObjectName(QStringLiteral("less_steps"));
    row->addWidget(more);
    row->addWidget(less_);
    auto *label = new QLabel(tr("St&ep"));
    label->setBuddy(steps_);
    form.addRow(label, row);
    connect(more, &QToolButton::clicked, this, [this] { add(middle_); });
    connect(less_, &QToolButton::clicked, this, &StepFields::remove);
}

LengthEdit *StepFields::length_field(QFormLayout &form, const QString &name, const QString &label,
                                     Length FoundationStep::*part) {
    auto *edit = new LengthEdit;
    edit->setObjectName(name);
    add_field(form, label, *edit);
    connect(edit, &LengthEdit::committed, this, [this, edit, part] {
        commit(*edit, desk_, [this, edit, part] {
            desk_.edit(tr("Change step of the foundation"), [&](const Shell &shell) -> Fitted {
                const std::size_t at = chosen(shell);
                if (at >= shell.steps.size()) return {};
                FoundationStep step = shell.steps[at];
                step.*part = edit->length();
                return with_step(shell, at, step);
            });
        });
    });
    return edit;
}

std::size_t StepFields::chosen(const Shell &shell) const {
    const auto all = steps_under(shell, wall_);
    return at_ < static_cast<int>(all.size()) ? all[static_cast<std::size_t>(at_)] : shell.steps.size();
}

void StepFields::show_steps(const Shell &shell, const std::string &wall) {
    if (wall != wall_) {
        at_ = 0;
        complaint_->clear();
    }
    wall_ = wall;
    if (const StatePtr &state = desk_.drawn(); state)
        for (const WallPlace &place : state->drawn().walls)
            if (place.name == wall) middle_ = place.length / 2;
    refresh(shell);
}

void StepFields::refresh(const Shell &shell) {
    write_in_red(*complaint_);
    complaint_->setVisible(!complaint_->text().isEmpty());
    const auto all = steps_under(shell, wall_);
    at_ = std::clamp(at_, 0, std::max(static_cast<int>(all.size()) - 1, 0));
    {
        const QSignalBlocker quiet(steps_);
        steps_->clear();
        for (const std::size_t step : all)
            steps_->addItem(tr("Step %1").arg(step + 1)); // as findings call it
        steps_->setCurrentIndex(all.empty() ? -1 : at_);
    }
    const bool any = !all.empty();
    steps_->setEnabled(any);
    less_->setEnabled(any);
    const FoundationStep step = any ? shell.steps[all[static_cast<std::size_t>(at_)]] : FoundationStep();
    const auto show = [&](LengthEdit *edit, Length length) {
        edit->setEnabled(any);
        edit->set_length(any ? std::optional(length) : std::nullopt, shell.units);
    };
    show(from_left_, step.from_left);
    show(width_, step.width);
    show(rise_, step.rise);
}

void StepFields::add(double along) {
    const auto at = std::make_shared<int>(at_);
    desk_.search(
        tr("Add step of the foundation"),
        [wall = wall_, along, at](const Shell &shell) {
            Fitted next = with_new_step(shell, wall, along);
            if (!next) return next;
            const auto all = steps_under(*next.shell, wall);
            *at = static_cast<int>(std::ranges::find(all, shell.steps.size()) - all.begin());
            return next;
        },
        this,
        [this, wall = wall_, at](const QString &why) {
            if (wall != wall_) return;
            if (why.isEmpty()) at_ = *at;
            complain(why);
        });
}

void StepFields::remove() {
    edit(tr("Remove step of the foundation"),
         [this](const Shell &shell) { return Fitted(without_step(shell, chosen(shell))); });
}

/// Says why where the desk refuses.
bool StepFields::edit(const QString &name, const std::function<Fitted(const Shell &)> &change) {
    QString why;
    const auto listening =
        connect(&desk_, &Desk::refused, this, [&why](const QString &words) { why = words; });
    const bool done = desk_.edit(name, change);
    disconnect(listening);
    complain(why);
    return done;
}

void StepFields::complain(const QString &why) {
    complaint_->setText(why);
    complaint_->setVisible(!why.isEmpty());
}

} // namespace roundlay::window
