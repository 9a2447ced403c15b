// Nothing is lost: not by a crash, a change on the disk, the end of a session, or what goes wrong inside.
#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/mishaps.h"
#include "modeler/window/desk/recovery.h"
#include "modeler/window/desk/selection.h"
#include "modeler/window/frame/main_window.h"
#include "modeler/window/panels/length_edit.h"
#include "modeler/window/panels/message_bar.h"

#include <QDir>
#include <QDockWidget>
#include <QFile>
#include <QFileInfo>
#include <QMessageBox>
#include <QPushButton>
#include <QScrollArea>

namespace roundlay::window {

void MainWindow::keep_aside() {
    if (!desk_->unsaved()) return recovery_->clear();
    if (!recovery_->keep({{}, desk_->path(), desk_->title(), desk_->document().text(), desk_->on_disk()}))
        message_->say(
            tr("Unsaved work cannot be kept aside: the disk does not take it. Save soon, elsewhere."),
            {{tr("Save elsewhere…"), [this] { save_as(); }}, {tr("Close"), {}}});
}

void MainWindow::tell_changed_on_disk() {
    const MessageBar::Answers::value_type elsewhere{tr("Save mine elsewhere…"), [this] { save_as(); }},
        keep{tr("Keep mine"), [this] {
                 desk_->keep_mine();
                 clear_message();
             }};
    if (desk_->gone_from_disk())
        return message_->say(tr("The file of %1 is gone from the disk; what is here is all there is of it.")
                                 .arg(desk_->title()),
                             {{tr("Save it again"), [this] { save_to(desk_->path()); }}, elsewhere, keep});
    const MessageBar::Answers::value_type load{tr("Load it"), [this] { load_changed(); }};
    if (desk_->unsaved())
        return message_->say(
            tr("%1 was changed on the disk by something else, and has changes here that are not "
               "saved. Loading it takes their place; Undo brings them back.")
                .arg(desk_->title()),
            {load, elsewhere, keep});
    message_->say(tr("%1 was changed on the disk by something else.").arg(desk_->title()), {load, keep});
}

/// The bar may stand there already: who saves is asked.
bool MainWindow::save_over_change() {
    const QString aside = QFileInfo(desk_->free_path_beside()).fileName();
    QMessageBox box(QMessageBox::Warning, tr("Changed on the disk"),
                    tr("%1 was changed on the disk by something else.").arg(desk_->title()),
                    QMessageBox::NoButton, this);
    box.setInformativeText(tr("To save here would take the place of that change. Overwriting keeps it beside "
                              "the file, as %1; loading it keeps yours in Undo.")
                               .arg(aside));
    QPushButton *elsewhere = box.addButton(tr("Save mine &elsewhere…"), QMessageBox::AcceptRole);
    QPushButton *over = box.addButton(tr("&Overwrite"), QMessageBox::DestructiveRole);
    QPushButton *load = box.addButton(tr("&Load theirs"), QMessageBox::ActionRole);
    QPushButton *stay = box.addButton(tr("&Go on working"), QMessageBox::RejectRole);
    box.setDefaultButton(elsewhere);
    box.setEscapeButton(stay);
    box.exec();
    if (box.clickedButton() == elsewhere) return save_as();
    if (box.clickedButton() == load) load_changed();
    return box.clickedButton() == over && overwrite();
}

/// What another has written there is kept beside it, or nothing is done.
bool MainWindow::overwrite() {
    const QString aside = desk_->free_path_beside();
    if (!QFile::copy(desk_->path(), aside)) {
        message_->say(tr("What stands on the disk cannot be kept as %1, so nothing was overwritten.")
                          .arg(QDir::toNativeSeparators(aside)),
                      {{tr("Save mine elsewhere…"), [this] { save_as(); }}, {tr("Close"), {}}});
        return false;
    }
    if (!save_to(desk_->path())) return false;
    message_->say(tr("What stood on the disk is kept as %1.").arg(QDir::toNativeSeparators(aside)),
                  {{tr("Close"), [this] { clear_message(); }}});
    return true;
}

/// For what was left behind and neither taken nor put off.
void MainWindow::clear_message() {
    message_->hide();
    if (offers_left_) offer_recovery();
}

/// One more edit: own work that was not saved, and all before it, can be had back.
void MainWindow::load_changed() {
    const bool had_work = desk_->unsaved();
    if (const auto why = desk_->reload()) return message_->say(*why, {{tr("Close"), {}}});
    clear_message();
    if (had_work)
        message_->say(tr("What is on the disk is loaded in place of your own changes."),
                      {{tr("Bring mine back"), [this] { desk_->history().undo(); }}, {tr("Close"), {}}});
}

bool MainWindow::is_of_this(const Rescued &work) const {
    return !work.path.isEmpty() && QFileInfo(work.path) == QFileInfo(desk_->path());
}

void MainWindow::offer_recovery() {
    if (!offer([this](const Rescued &work) { return is_of_this(work); }))
        offer([](const Rescued &) { return true; });
}

/// The first that is wanted; false where there is none.
bool MainWindow::offer(const std::function<bool(const Rescued &)> &wanted) {
    for (const Rescued &work : recovery_->left_behind()) {
        if (!wanted(work)) continue;
        if (is_of_this(work) && work.text == desk_->document().text()) {
            recovery_->forget(work); // it reached the disk after all
            continue;
        }
        offers_left_ = true;
        message_->say(tr("roundlay ended badly while %1 had unsaved changes.").arg(work.title),
                      {{tr("Recover"), [this, work] { recover(work); }},
                       {tr("Throw away"),
                        [this, work] {
                            recovery_->forget(work);
                            offer_recovery();
                        }},
                       {tr("Later"), [this] { offers_left_ = false; }}});
        return true;
    }
    offers_left_ = false;
    return false;
}

void MainWindow::recover(const Rescued &work) {
    if (!may_leave() || !recovery_->take_over(work)) return clear_message();
    selection_->clear();
    desk_->recover(work.path, work.title, work.text, work.on_disk);
    if (desk_->changed_on_disk())
        tell_changed_on_disk();
    else
        clear_message(); // others may be left
}

bool MainWindow::end_session(bool may_ask) {
    if (may_ask) return may_leave();
    take_typed();
    keep_aside();
    return true;
}

void MainWindow::tell_failure(const QString &what) {
    const QString words =
        tr("Something went wrong inside roundlay: %1. The document is as it was, and what is not "
           "saved is kept aside; to be sure, save it. It is noted in %2.")
            .arg(what, QDir::toNativeSeparators(mishap_log()));
    if (message_->sentence() == words) return; // once is enough
    desk_->cancel();
    message_->say(words, {{tr("Save elsewhere…"), [this] { save_as(); }}, {tr("Close"), {}}});
    keep_aside();
}

void MainWindow::tell_left_out() {
    QStringList names;
    QPointer<MeasureEdit> first;
    for (MeasureEdit *edit : findChildren<MeasureEdit *>()) {
        if (edit->complaint().isEmpty()) continue;
        if (!first) first = edit;
        names << edit->accessibleName();
    }
    if (!first) return;
    message_->say(tr("Saved without what could not be taken: %1. It still stands there to be put right.")
                      .arg(names.join(QStringLiteral(", "))),
                  {{tr("Show it"),
                    [this, first] {
                        if (first) show_field(*first);
                    }},
                   {tr("Close"), {}}});
}

/// With its panel in front, and scrolled to.
void MainWindow::show_field(QWidget &field) {
    for (QWidget *at = &field; at != nullptr; at = at->parentWidget()) {
        constexpr int beside = 24; // pixels
        if (auto *area = qobject_cast<QScrollArea *>(at)) area->ensureWidgetVisible(&field, beside, beside);
        if (const auto *dock = qobject_cast<QDockWidget *>(at)) bring_to_front(dock->objectName());
    }
    field.setFocus(Qt::TabFocusReason);
}

} // namespace roundlay::window
