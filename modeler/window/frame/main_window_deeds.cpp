#include "exporters/registry/version.h"
#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/selection.h"
#include "modeler/window/desk/words.h"
#include "modeler/window/frame/field_keys.h"
#include "modeler/window/frame/main_window.h"
#include "modeler/window/panels/length_edit.h"
#include "modeler/window/panels/text_panel.h"
#include "modeler/window/record/record_panel.h"
#include "modeler/window/views/model_page.h"
#include "modeler/window/views/scene_view.h"

#include <QAction>
#include <QApplication>
#include <QDialog>
#include <QDialogButtonBox>
#include <QLineEdit>
#include <QMenuBar>
#include <QMessageBox>
#include <QScreen>
#include <QTextBrowser>
#include <QVBoxLayout>

namespace roundlay::window {

namespace {

QString bare(QString words) {
    return words.remove(u'&').remove(u'…');
}

void list_actions(const QMenu *menu, const QString &under, QString &rows) {
    for (const QAction *action : menu->actions()) {
        const QString name = under + bare(action->text());
        if (action->menu() != nullptr) list_actions(action->menu(), name + QStringLiteral(" › "), rows);
        if (action->shortcut().isEmpty()) continue;
        rows += QStringLiteral("<tr><td style='padding-right:24px'>%1</td><td><b>%2</b></td></tr>")
                    .arg(name.toHtmlEscaped(),
                         action->shortcut().toString(QKeySequence::NativeText).toHtmlEscaped());
    }
}

} // namespace

void MainWindow::take_back() {
    QLineEdit *line = line_of(focusWidget());
    if (line != nullptr && line->isUndoAvailable()) return line->undo();
    text_->take();
    desk_->history().undo();
    forget_told();
}

void MainWindow::do_again() {
    QLineEdit *line = line_of(focusWidget());
    if (line != nullptr && line->isRedoAvailable()) return line->redo();
    desk_->history().redo();
    forget_told();
}

void MainWindow::switch_units() {
    const bool metric = desk_->units() == UnitSystem::metric;
    desk_->edit(metric ? tr("Show feet and inches") : tr("Show millimetres"), [metric](const Shell &shell) {
        Shell next = shell;
        next.units = metric ? UnitSystem::imperial : UnitSystem::metric;
        return std::optional(next);
    });
}

void MainWindow::choose_next_piece(int step) {
    take_typed();
    if (const auto *field = qobject_cast<MeasureEdit *>(focusWidget());
        field && !field->complaint().isEmpty())
        return; // to be put right first
    if (!desk_->standing()) return;
    const Layout &layout = desk_->standing()->job.layout;
    const int count = count_of(layout.pieces), before_all = step > 0 ? -1 : 0;
    const auto chosen = selection_->chosen().kind == Chosen::Kind::piece
                            ? piece_tagged(layout, selection_->chosen().name)
                            : std::nullopt;
    const int now = chosen ? chosen->number() : before_all;
    selection_->choose_piece(layout, Index<Piece>((now + step + count) % count));
}

void MainWindow::begin_record() {
    take_typed();
    if (!desk_->begin_states()) return;
    bring_to_front(QStringLiteral("record"));
    record_->begin_typing();
    tell(tr("The states of the house stand over the views. What is typed in the panel Record is in all of "
            "them."));
}

namespace {

QString keys_of_views() {
    return MainWindow::tr(
        "<h3>In the views</h3>"
        "<p>Plan: Page Up and Page Down choose a wall, arrow keys move it.<br>"
        "Elevation: Page Up and Page Down choose an opening, arrow keys move it, with Ctrl they size it, "
        "with Shift by more.<br>"
        "Model and joint: arrow keys turn, with Shift they move.<br>"
        "Sketch of a new shell: Enter closes the figure, Backspace takes the last corner back. Walls run "
        "east, "
        "north, west or south; with Shift or Alt, or while Slanted walls is ticked, in any direction. "
        "Typed, a "
        "direction stands behind the length: 4500 mm at 135, in degrees of the compass (0 north, 90 east, "
        "180 "
        "south, 270 west), or 4500 mm at south-east.<br>"
        "Cut sheet: Page Up and Page Down turn pages.<br>"
        "Everywhere: plus and minus zoom, Home fits; the right button, or the Menu key or Shift+F10 for "
        "what is "
        "chosen, shows what can be done with it. While dragging or drawing, digits type an exact length, "
        "Escape gives up, Shift or Alt lets go of the lines.</p>");
}

QString keys_of_panels() {
    return MainWindow::tr(
        "<h3>In the window</h3>"
        "<p>F10, or Alt with its letter, opens a menu; F6 goes on to the next panel. A panel that is chosen "
        "under View › Panels comes to the front; one that is seen closes.</p>");
}

QString keys_of_fields() {
    return MainWindow::tr(
        "<h3>In fields</h3>"
        "<p>Enter or Tab takes what is typed, Escape brings the old value back. A bare number is in "
        "millimetres, or "
        "in inches where the shell is. Undo takes back letters first, then goes on in the document.</p>");
}

QString keys_of_record() {
    return MainWindow::tr(
        "<h3>In the record</h3>"
        "<p>Enter takes what is typed and goes to the next box, at the end of a log to the next log; with "
        "Shift it goes back. With Ctrl it goes to the same box of the next log. The title of a group folds "
        "it "
        "away, and Enter and Tab pass it by; Ctrl+Up goes to it, Space folds it. The Menu key on a number "
        "says whether it is measured, proposed or "
        "contradicted. Faces may be typed by their first letters.</p>");
}

QString keys_of_raising() {
    return MainWindow::tr(
        "<h3>In the raise</h3>"
        "<p>Up and down go from lift to lift, with Shift over several. Space ticks them as up, or as down "
        "while "
        "they are taken down; left and right go to the boxes for cut, checked and pegged, where Space ticks "
        "that. Where there is a tick, Space takes it back.</p>");
}

} // namespace

void MainWindow::show_shortcuts() {
    constexpr QSize size(520, 560);
    QString rows;
    for (const QAction *menu : menuBar()->actions())
        if (menu->menu() != nullptr)
            list_actions(menu->menu(), bare(menu->text()) + QStringLiteral(" › "), rows);
    QWidget *over = QApplication::activeModalWidget(); // the form for a new shell asks too
    QDialog dialog(over != nullptr ? over : this);
    dialog.setWindowTitle(tr("Keyboard"));
    auto *words = new QTextBrowser;
    words->setHtml(QStringLiteral("<table>%1</table>%2%3%4%5%6")
                       .arg(rows, keys_of_panels(), keys_of_views(), keys_of_fields(), keys_of_record(),
                            keys_of_raising()));
    words->setAccessibleName(tr("Keyboard shortcuts"));
    auto *buttons = new QDialogButtonBox(QDialogButtonBox::Close);
    connect(buttons, &QDialogButtonBox::rejected, &dialog, &QDialog::reject);
    auto *column = new QVBoxLayout(&dialog);
    column->addWidget(words);
    column->addWidget(buttons);
    dialog.resize(size.boundedTo(dialog.screen()->availableGeometry().size() * 9 / 10));
    dialog.exec();
}

void MainWindow::show_about() {
    const QString driver = model_->view() != nullptr ? model_->view()->driver() : tr("none");
    QMessageBox::about(
        this, tr("About roundlay"),
        tr("<h3>roundlay %1</h3><p>Hewn-log shells as one solid model: plans, cut sheets, cut lists.</p>"
           "<p>Free software under the GNU General Public License, version 3 or later, without any "
           "warranty. Weights and spans are estimates; local code and a licensed professional decide.</p>"
           "<p>Drawn by: %2</p>")
            .arg(text(program_version), driver.toHtmlEscaped()));
}

} // namespace roundlay::window
