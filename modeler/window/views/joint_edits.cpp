// What the joint's fields say of the notch that is shown, and what is stated by them and by its handles.
#include "kernel/layout/corners/notch.h"
#include "kernel/shell/notch_kinds.h"
#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/selection.h"
#include "modeler/window/desk/snap.h"
#include "modeler/window/desk/words.h"
#include "modeler/window/panels/form_rows.h"
#include "modeler/window/panels/length_edit.h"
#include "modeler/window/views/joint_handles.h"
#include "modeler/window/views/joint_page.h"
#include "modeler/window/views/scene_view.h"
#include "modeler/window/views/view_keys.h"

#include <QComboBox>
#include <QFormLayout>
#include <QLabel>
#include <QStandardItemModel>

namespace roundlay::window {

NotchScope JointPage::chosen_scope() const {
    return static_cast<NotchScope>(scope_->currentIndex());
}

NotchPlace JointPage::place() const {
    const Layout &layout = desk_.standing()->job.layout;
    const CornerPlace &c = layout.corners[*corner()];
    NotchPlace at{wall_of(layout, c.ends).name, wall_of(layout, c.starts).name, {}, 0};
    if (const auto log = chosen_log()) {
        const Piece &p = layout.pieces[*log];
        at.wall = wall_of(layout, p.wall).name;
        at.round = p.round;
    }
    return at;
}

NotchRule JointPage::rule() const {
    const auto &stated =
        desk_.state()->read.shell; // also what cannot be built: it is put right where it was typed
    return notch_at(stated ? *stated : desk_.standing()->job.shell, place(), chosen_scope());
}

void JointPage::connect_handles() {
    connect(view_, &SceneView::handle_moved, this, [this](int handle, double up, Qt::KeyboardModifiers keys) {
        drag_slope(handle, up, lets_go(keys));
    });
    connect(view_, &SceneView::handle_released, this, [this] {
        if (dragging_) let_go();
        refresh();
    });
    connect(view_, &SceneView::handle_given_up, this, [this] {
        if (std::exchange(dragging_, false)) desk_.cancel();
        refresh();
    });
}

QString JointPage::deed(const NotchPlace &at) const {
    if (chosen_scope() == NotchScope::shell) return tr("Change notch of the shell");
    if (chosen_scope() == NotchScope::log)
        return tr("Change notch of log %1-%2").arg(text(at.wall)).arg(at.round);
    return tr("Change notch of corner %1").arg(text(at.first + at.second));
}

void JointPage::list_corners() {
    QStringList names, now;
    for (const CornerPlace &c : desk_.standing()->job.layout.corners)
        names << text(c.name);
    for (int i = 0; i < corners_->count(); ++i)
        now << corners_->itemText(i);
    if (names != now) {
        corners_->clear();
        corners_->addItems(names);
    }
    corners_->setCurrentText(text(corner_name()));
}

void JointPage::show_notch() {
    list_corners();
    auto *scopes = qobject_cast<QStandardItemModel *>(scope_->model());
    scopes->item(static_cast<int>(NotchScope::log))->setEnabled(chosen_log().has_value());
    if (!chosen_log() && chosen_scope() == NotchScope::log)
        scope_->setCurrentIndex(static_cast<int>(NotchScope::corner));
    const NotchRule now = rule();
    offer_kinds(now.kind);
    kind_->setCurrentIndex(static_cast<int>(now.kind));
    slope_->set_slope(now.slope);
    along_->set_slope(now.along);
    across_->set_slope(now.across);
    show_row(*form_, *slope_, now.kind != NotchKind::stated);
    show_row(*form_, *along_, now.kind == NotchKind::stated);
    show_row(*form_, *across_, now.kind == NotchKind::stated);
    slope_->setEnabled(takes_slope(now.kind));
    show_words(desk_.standing()->job.layout.corners[*corner()], now);
}

void JointPage::show_words(const CornerPlace &c, const NotchRule &now) {
    const TailTop top = tail_top(now);
    const double locked = lock(top, top);
    QString words;
    if (now.kind != NotchKind::saddle)
        words = locked > 0 ? tr("Each tail thickens toward its end by %1: locked against pulling out.")
                                 .arg(text(print_slope(Slope::rise_per_run(locked))))
                           : tr("Nothing but pegs keeps these tails from pulling out.");
    if (c.reentrant) words += u' ' + tr("An inside corner: the log ends show indoors.");
    title_->setText(words.trimmed());
}

/// Saddles are of the whole shell: one log, or one corner, that is scoped among notched ones cannot be.
void JointPage::offer_kinds(NotchKind now) {
    auto *kinds = qobject_cast<QStandardItemModel *>(kind_->model());
    const bool whole = chosen_scope() == NotchScope::shell;
    for (int i = 0; i < kind_->count(); ++i)
        kinds->item(i)->setEnabled(
            whole || ((static_cast<NotchKind>(i) == NotchKind::saddle) == (now == NotchKind::saddle)));
}

/// Stated slopes begin as what the tail has.
void JointPage::take_kind() {
    if (!corner()) return;
    const auto kind = static_cast<NotchKind>(kind_->currentIndex());
    const NotchPlace at = place();
    const NotchScope scope = chosen_scope();
    if (kind == rule().kind) return; // chosen again
    desk_.edit(deed(at), [&](const Shell &shell) {
        if (scope == NotchScope::shell && kind != shell.notch.kind)
            return std::optional(with_kind(shell, kind));
        NotchRule next = notch_at(shell, at, scope);
        const TailTop top = tail_top(next);
        if (kind == NotchKind::stated && next.kind != NotchKind::stated) {
            next.along = Slope::rise_per_run(top.along);
            next.across = Slope::rise_per_run(top.across);
        }
        next.kind = kind;
        return std::optional(with_notch(shell, at, scope, next));
    });
}

void JointPage::take_slopes() {
    if (!corner()) return;
    const NotchPlace at = place();
    const NotchScope scope = chosen_scope();
    desk_.edit(deed(at), [&](const Shell &shell) {
        NotchRule next = notch_at(shell, at, scope);
        next.slope = slope_->slope();
        next.along = along_->slope();
        next.across = across_->slope();
        return std::optional(with_notch(shell, at, scope, next));
    });
}

/// Beyond what can be built the tail has not followed the hand: it stays where it is seen.
void JointPage::let_go() {
    dragging_ = false;
    if (!desk_.state()->stands() && desk_.standing()) {
        const NotchScope scope = chosen_scope();
        const NotchRule seen = notch_at(desk_.standing()->job.shell, grabbed_place_, scope);
        desk_.show([&](const Shell &shell) {
            return std::optional(with_notch(shell, grabbed_place_, scope, seen));
        });
    }
    desk_.settle(deed(grabbed_place_));
}

/// A dovetail keeps its family: either of its slopes changes the one that is stated.
void JointPage::drag_slope(int handle, double up, bool free) {
    if (!corner() || handle >= static_cast<int>(handle_is_along_.size())) return;
    if (!std::exchange(dragging_, true)) {
        grabbed_ = rule();
        grabbed_place_ = place();
    }
    const bool along = handle_is_along_[static_cast<std::size_t>(handle)];
    const TailTop before = tail_top(grabbed_);
    const double wanted = along ? before.along + up / along_arm_ : before.across + up / across_arm_;
    const Slope slope = Slope::rise_per_run(snapped_slope(wanted, free));
    NotchRule next = grabbed_;
    if (takes_slope(next.kind))
        next.slope = along ? slope : -slope;
    else
        (along ? next.along : next.across) = slope;
    const NotchPlace at = grabbed_place_;
    const NotchScope scope = chosen_scope();
    emit hinted(tr("%1: %2. Shift or Alt lets go of round slopes, Escape gives up.")
                    .arg(along ? tr("Along the log") : tr("Across it"), text(print_slope(slope))));
    desk_.show([&](const Shell &shell) { return std::optional(with_notch(shell, at, scope, next)); });
}

} // namespace roundlay::window
