// Menus of the things in the views, and what is done with what is seen.
#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/selection.h"
#include "modeler/window/desk/words.h"
#include "modeler/window/frame/main_window.h"
#include "modeler/window/frame/print.h"
#include "modeler/window/frame/save_picture.h"
#include "modeler/window/frame/thing_menu.h"
#include "modeler/window/panels/text_panel.h"
#include "modeler/window/views/elevation_view.h"
#include "modeler/window/views/joint_page.h"
#include "modeler/window/views/model_page.h"
#include "modeler/window/views/plan_view.h"
#include "modeler/window/views/reasons_page.h"
#include "modeler/window/views/scene_view.h"
#include "modeler/window/views/sheet_view.h"
#include "modeler/window/views/stand_banner.h"

#include <QAction>
#include <QDockWidget>
#include <QGuiApplication>
#include <QLabel>
#include <QMenu>
#include <QSettings>
#include <algorithm>

namespace roundlay::window {

void MainWindow::connect_menus() {
    const auto menu_of = [this](Legend *legend) {
        return [this, legend](const Chosen &thing, const QPoint &at) { show_menu(thing, at, legend, {}); };
    };
    for (DrawingView *drawing : {static_cast<DrawingView *>(plan_), static_cast<DrawingView *>(elevation_)})
        connect(drawing, &DrawingView::asked_for_menu, this,
                [this, drawing](const Chosen &thing, const QPoint &at, const Spot &spot) {
                    show_menu(thing, at, &drawing->legend_panel(), spot);
                });
    connect(model_, &ModelPage::asked_for_menu, this,
            menu_of(model_->view() == nullptr ? nullptr : &model_->view()->legend_panel()));
    connect(joint_, &JointPage::asked_for_menu, this, menu_of(nullptr));
    connect(sheet_, &SheetView::asked_for_menu, this, menu_of(nullptr));
    connect(&model_->reasons(), &ReasonsPage::asked_for_text, this, &MainWindow::go_to_text);
    for (StandBanner *banner : findChildren<StandBanner *>())
        connect(banner, &StandBanner::asked_why, this, [this] {
            findChild<QDockWidget *>(QStringLiteral("findings"))->show();
            findChild<QDockWidget *>(QStringLiteral("findings"))->raise();
        });
    for (const auto &[name, legend] : legends()) // the drawings are small to begin with, the model is not
        legend->want(
            QSettings().value(QStringLiteral("legend/") + name, name == QStringLiteral("model")).toBool());
    enable_legend();
}

void MainWindow::show_menu(const Chosen &thing, const QPoint &on_screen, Legend *legend, const Spot &spot) {
    if (!desk_->is_open()) return;
    drop_menu();
    auto *menu = new ThingMenu(*this, thing, legend, spot);
    thing_menu_ = menu;
    menu->popup(on_screen);
}

/// One that is open, or at work, is not reached from here: its dialogs keep the window.
void MainWindow::drop_menu() {
    if (thing_menu_) thing_menu_->deleteLater();
    thing_menu_.clear();
}

/// Not over what was told a moment ago, unless a hand is at work again.
void MainWindow::hint(const QString &words) {
    if (!told_.isActive() || QGuiApplication::mouseButtons() != Qt::NoButton) hint_->setText(words);
}

/// What was told of an edit is true no more once it is taken back.
void MainWindow::forget_told() {
    hint_->clear();
    told_.stop();
}

void MainWindow::tell(const QString &words) {
    constexpr int to_be_read = 5000; // ms
    hint_->setText(words);
    told_words_ = words;
    told_.start(to_be_read);
}

void MainWindow::tell_dropped(const QString &field, const QString &typed) {
    tell(tr("%1: “%2” could not be taken and is gone, for something else is chosen now.").arg(field, typed));
}

std::vector<std::pair<QString, Legend *>> MainWindow::legends() const {
    std::vector<std::pair<QString, Legend *>> all{{QStringLiteral("plan"), &plan_->legend_panel()},
                                                  {QStringLiteral("elevation"), &elevation_->legend_panel()}};
    if (model_->view() != nullptr) all.emplace_back(QStringLiteral("model"), &model_->view()->legend_panel());
    return all;
}

void MainWindow::show_legend(bool on, const Legend *only) {
    for (const auto &[name, legend] : legends()) {
        if (only != nullptr && only != legend) continue;
        QSettings().setValue(QStringLiteral("legend/") + name, on);
        legend->want(on);
    }
    enable_legend();
}

/// Ticked while any view shows its own: then it puts all of them away.
void MainWindow::enable_legend() {
    const auto all = legends();
    action(QStringLiteral("legend"))->setChecked(std::any_of(all.begin(), all.end(), [](const auto &l) {
        return l.second->is_wanted();
    }));
}

void MainWindow::go_to_text(int line, int column) {
    findChild<QDockWidget *>(QStringLiteral("text"))->show();
    findChild<QDockWidget *>(QStringLiteral("text"))->raise();
    text_->go_to(line, column);
}

void MainWindow::save_this_picture() {
    if (model_->view() == nullptr) return;
    const std::string &state = desk_->state()->job.shell.state;
    const QString caption = state.empty() ? desk_->title() : tr("%1, %2").arg(desk_->title(), text(state));
    save_picture(*model_->view(), caption, caption, this);
}

void MainWindow::print_this_sheet() {
    const StatePtr &state = desk_->standing();
    if (!state) return;
    if (const auto piece = piece_tagged(state->job.layout, selection_->chosen().name))
        preview_sheets(state, state->job.layout.pieces[*piece].model,
                       desk_->title() + u' ' + text(selection_->chosen().name), this);
}

} // namespace roundlay::window
