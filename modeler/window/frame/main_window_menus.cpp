#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/selection.h"
#include "modeler/window/frame/application.h"
#include "modeler/window/frame/main_window.h"
#include "modeler/window/frame/recent.h"
#include "modeler/window/frame/start_page.h"
#include "modeler/window/panels/cut_list_panel.h"
#include "modeler/window/panels/floor_panel.h"
#include "modeler/window/panels/log_panel.h"
#include "modeler/window/panels/message_bar.h"
#include "modeler/window/panels/text_panel.h"
#include "modeler/window/record/record_panel.h"
#include "modeler/window/views/elevation_view.h"
#include "modeler/window/views/model_page.h"
#include "modeler/window/views/plan_view.h"
#include "modeler/window/views/scene_view.h"
#include "modeler/window/views/tints.h"

#include <QActionGroup>
#include <QDockWidget>
#include <QFileInfo>
#include <QMenuBar>
#include <QSettings>

namespace roundlay::window {

QAction *MainWindow::add(QMenu *menu, const QString &name, const QString &words, const QKeySequence &keys,
                         const Deed &deed, bool needs_document) {
    QAction *made = menu->addAction(words);
    made->setObjectName(name);
    made->setShortcut(keys);
    connect(made, &QAction::triggered, this, [deed] { deed(); });
    if (needs_document) need_document_.push_back(made);
    return made;
}

QAction *MainWindow::action(const QString &name) const {
    return findChild<QAction *>(name);
}

void MainWindow::make_menus() {
    make_file_menu();
    make_edit_menu();
    make_shell_menu();
    make_view_menu();
    make_help_menu();
    auto *opens = new QAction(this); // the key that many know for it, beside Alt
    opens->setObjectName(QStringLiteral("open_menus"));
    opens->setShortcut(QKeySequence(Qt::Key_F10));
    connect(opens, &QAction::triggered, this,
            [this] { menuBar()->setActiveAction(menuBar()->actions().front()); });
    addAction(opens);
}

void MainWindow::make_file_menu() {
    QMenu *file = menuBar()->addMenu(tr("&File"));
    add_beginnings(file);
    file->addSeparator();
    add(file, "save", tr("&Save"), QKeySequence::Save, [this] { save(); });
    add(file, "save_as", tr("Save &as…"), QKeySequence(tr("Ctrl+Shift+S")), [this] { save_as(); });
    file->addSeparator();
    add_outputs(file);
    file->addSeparator();
    add(file, "close", tr("&Close"), QKeySequence::Close, [this] {
        if (may_leave()) close_document();
    });
    add(
        file, "quit", tr("&Quit"), QKeySequence(tr("Ctrl+Q")), [this] { close(); }, false);
}

/// A new document, one from a file, or a demo.
void MainWindow::add_beginnings(QMenu *file) {
    add(
        file, "new", tr("&New shell…"), QKeySequence::New, [this] { ask_new(); }, false);
    add(
        file, "draw_new", tr("&Draw a new shell…"), QKeySequence(tr("Ctrl+Shift+N")),
        [this] { ask_new(true); }, false);
    add(
        file, "open", tr("&Open…"), QKeySequence::Open, [this] { ask_open(); }, false);
    recent_ = file->addMenu(tr("Open &recent"));
    recent_->setObjectName(QStringLiteral("recent"));
    QMenu *demo = file->addMenu(tr("Open a de&mo"));
    for (int i = 0; i < static_cast<int>(demos().size()); ++i)
        add(
            demo, QStringLiteral("demo_%1").arg(i), demos()[static_cast<std::size_t>(i)].name, {},
            [this, i] { begin_demo(i); }, false);
}

void MainWindow::add_outputs(QMenu *file) {
    add(file, "export", tr("&Export…"), QKeySequence(tr("Ctrl+E")), [this] { ask_export(); });
    add(file, "save_picture", tr("Save th&is picture…"), QKeySequence(tr("Ctrl+Shift+P")),
        [this] { save_this_picture(); });
    add(file, "print", tr("&Print cut sheets…"), QKeySequence::Print, [this] { print_preview(); });
    add(file, "print_sheet", tr("Print the chosen log's cut s&heet…"), QKeySequence(tr("Ctrl+Alt+P")),
        [this] { print_this_sheet(); });
}

/// What is typed into a field and not taken yet comes before the document.
void MainWindow::make_history_actions(QMenu *edit) {
    QAction *undo = add(
        edit, "undo", tr("Undo"), QKeySequence::Undo, [this] { take_back(); }, false);
    QAction *redo = add(
        edit, "redo", tr("Redo"), QKeySequence::Redo, [this] { do_again(); }, false);
    redo->setShortcuts(
        {QKeySequence(QStringLiteral("Ctrl+Shift+Z")), QKeySequence(QStringLiteral("Ctrl+Y"))});
    follow_history(undo, redo);
}

/// What they would take back or do again is told in the menu.
void MainWindow::follow_history(QAction *undo, QAction *redo) {
    QUndoStack &history = desk_->history();
    undo->setEnabled(false);
    redo->setEnabled(false);
    connect(&history, &QUndoStack::canUndoChanged, undo, &QAction::setEnabled);
    connect(&history, &QUndoStack::canRedoChanged, redo, &QAction::setEnabled);
    connect(&history, &QUndoStack::undoTextChanged, undo, [undo](const QString &what) {
        undo->setText(what.isEmpty() ? tr("Undo") : tr("Undo: %1").arg(what));
    });
    connect(&history, &QUndoStack::redoTextChanged, redo, [redo](const QString &what) {
        redo->setText(what.isEmpty() ? tr("Redo") : tr("Redo: %1").arg(what));
    });
}

void MainWindow::make_edit_menu() {
    QMenu *edit = menuBar()->addMenu(tr("&Edit"));
    make_history_actions(edit);
    edit->addSeparator();
    add(edit, "remove", tr("Re&move opening or partition"), QKeySequence::Delete, [this] {
        if (plan_->chosen_partition() >= 0)
            plan_->remove_chosen();
        else
            elevation_->remove_chosen();
    });
    add(edit, "copy_list", tr("&Copy the cut list"), QKeySequence(tr("Ctrl+Shift+C")),
        [this] { cut_list_->copy(); });
    edit->addSeparator();
    add(edit, "next_log", tr("&Next log"), QKeySequence(tr("Ctrl+.")), [this] { choose_next_piece(1); });
    add(edit, "previous_log", tr("&Previous log"), QKeySequence(tr("Ctrl+,")),
        [this] { choose_next_piece(-1); });
    add(edit, "record_log", tr("&Record the log"), QKeySequence(tr("Ctrl+Shift+R")), [this] {
        bring_to_front(QStringLiteral("record"));
        record_->begin_typing();
    });
    add(edit, "choose_nothing", tr("Choose n&othing"), QKeySequence(tr("Ctrl+Shift+A")),
        [this] { selection_->clear(); });
}

/// What can be put into the shell.
void MainWindow::add_parts(QMenu *shell) {
    add(shell, "add_window", tr("Add a &window to the wall"), QKeySequence(tr("Ctrl+W, W")),
        [this] { elevation_->add(OpeningKind::window); });
    add(shell, "add_door", tr("Add a &door to the wall"), QKeySequence(tr("Ctrl+D")),
        [this] { elevation_->add(OpeningKind::door); });
    action("add_window")->setShortcut(QKeySequence(tr("Ctrl+I")));
    add(shell, "add_partition", tr("Add a &partition to the wall"), QKeySequence(tr("Ctrl+Shift+I")),
        [this] { plan_->add_partition(); });
    add(shell, "add_step", tr("Add a s&tep of the foundation to the wall"), {}, [this] {
        log_->add_step(selection_->wall());
        bring_to_front(QStringLiteral("log"));
    });
    add(shell, "add_floor", tr("Add a &floor"), QKeySequence(tr("Ctrl+Shift+F")), [this] {
        bring_to_front(QStringLiteral("floors"));
        floors_->add_floor();
    });
    QAction *draw = add(shell, "draw_partition", tr("D&raw a partition"), QKeySequence(tr("Ctrl+Shift+D")),
                        [this] { plan_->draw_partition(!plan_->is_drawing()); });
    draw->setCheckable(true);
    connect(plan_, &PlanView::drawing_changed, draw, &QAction::setChecked);
}

void MainWindow::make_shell_menu() {
    QMenu *shell = menuBar()->addMenu(tr("&Shell"));
    add_parts(shell);
    shell->addSeparator();
    add(shell, "wall_outward", tr("Move the wall &outward"), QKeySequence(tr("Ctrl+Shift+Up")),
        [this] { plan_->nudge(1); });
    add(shell, "wall_inward", tr("Move the wall &inward"), QKeySequence(tr("Ctrl+Shift+Down")),
        [this] { plan_->nudge(-1); });
    shell->addSeparator();
    add(shell, "begin_record", tr("Record an old &house"), {}, [this] { begin_record(); });
    shell->addSeparator();
    add(shell, "units", tr("Switch &units"), QKeySequence(tr("Ctrl+U")), [this] { switch_units(); });
}

void MainWindow::make_look_menu(QMenu *menu) {
    QMenu *from = menu->addMenu(tr("&Look from"));
    const std::vector<std::tuple<QString, QString, View>> views = {
        {"from_south_east", tr("South-&east"), View::south_east},
        {"from_south_west", tr("South-&west"), View::south_west},
        {"from_north_east", tr("North-e&ast"), View::north_east},
        {"from_north_west", tr("North-wes&t"), View::north_west},
        {"from_south", tr("&South"), View::south},
        {"from_north", tr("&North"), View::north},
        {"from_east", tr("Eas&t"), View::east},
        {"from_west", tr("Wes&t"), View::west},
        {"from_above", tr("&Above"), View::plan}};
    int number = 1;
    for (const auto &[name, words, view] : views)
        add(from, name, words, QKeySequence(QStringLiteral("Ctrl+%1").arg(number++)), [this, v = view] {
            if (model_->view() != nullptr) model_->view()->set_view(v);
        });
}

void MainWindow::make_view_menu() {
    QMenu *menu = menuBar()->addMenu(tr("&View"));
    make_look_menu(menu);
    add(menu, "fit", tr("&Fit everything"), QKeySequence(tr("Ctrl+0")), [this] {
        if (model_->view() != nullptr) model_->view()->fit();
        plan_->fit();
        elevation_->fit();
    });
    QAction *legend = add(menu, "legend", tr("Le&gend"), QKeySequence(tr("Ctrl+L")), [] {});
    legend->setCheckable(true);
    connect(legend, &QAction::triggered, this, [this](bool on) { show_legend(on); });
    add(menu, "play", tr("Pla&y the raise"), QKeySequence(tr("Ctrl+R")),
        [this] { model_->play(!model_->is_playing()); });
    make_colour_menu(menu);
    menu->addSeparator();
    make_panel_menu(menu);
    add(menu, "put_panels_back", tr("Put panels &back"), {}, [this] { put_panels_back(); });
    make_appearance_menu(menu);
    make_language_menu(menu);
}

void MainWindow::make_colour_menu(QMenu *menu) {
    QMenu *colours = menu->addMenu(tr("&Colour the model"));
    const std::vector<std::tuple<QString, QString, Colouring>> all = {
        {"colour_wall", tr("by &wall"), Colouring::wall},
        {"colour_finding", tr("by &finding"), Colouring::finding},
        {"colour_alike", tr("by &equal pieces"), Colouring::alike},
        {"colour_fabric", tr("by &kept and new"), Colouring::fabric},
        {"colour_condition", tr("by &condition"), Colouring::condition},
        {"colour_decision", tr("by &decision"), Colouring::decision},
        {"colour_certainty", tr("by &measured or proposed"), Colouring::certainty},
        {"colour_progress", tr("by what is &up"), Colouring::progress}};
    for (const auto &[name, words, colouring] : all)
        add(colours, name, words, {}, [this, by = colouring] { model_->set_colouring(by); });
}

void MainWindow::make_panel_menu(QMenu *menu) {
    QMenu *panels = menu->addMenu(tr("&Panels"));
    for (QDockWidget *dock : docks_) {
        QAction *toggle = add(panels, QStringLiteral("panel_") + dock->objectName(), dock->windowTitle(), {},
                              [this, dock] { show_or_close(*dock); });
        toggle->setCheckable(true);
        connect(dock->toggleViewAction(), &QAction::toggled, toggle, &QAction::setChecked);
    }
    action(QStringLiteral("panel_raising"))->setShortcut(QKeySequence(tr("Ctrl+T")));
    panels->addSeparator();
    add(panels, "next_panel", tr("&Next panel"), QKeySequence(tr("F6")), [this] { next_panel(1); });
    add(panels, "previous_panel", tr("P&revious panel"), QKeySequence(tr("Shift+F6")),
        [this] { next_panel(-1); });
}

namespace {

void add_one_of(QActionGroup &group, QAction *choice, bool is_taken) {
    choice->setCheckable(true);
    choice->setChecked(is_taken);
    group.addAction(choice);
}

} // namespace

void MainWindow::make_appearance_menu(QMenu *menu) {
    QMenu *looks = menu->addMenu(tr("&Appearance"));
    auto *group = new QActionGroup(this);
    const int now = QSettings().value(QStringLiteral("appearance"), 0).toInt();
    const std::vector<std::tuple<QString, QString, Appearance>> all = {
        {"look_system", tr("As the &system"), Appearance::system},
        {"look_light", tr("&Light"), Appearance::light},
        {"look_dark", tr("&Dark"), Appearance::dark}};
    for (const auto &[name, words, look] : all) {
        const Deed choose = [l = look] {
            QSettings().setValue(QStringLiteral("appearance"), static_cast<int>(l));
            wear(l);
        };
        add_one_of(*group, add(looks, name, words, {}, choose, false), now == static_cast<int>(look));
    }
}

/// Every language by its own name, whatever is spoken now.
void MainWindow::make_language_menu(QMenu *menu) {
    QMenu *languages = menu->addMenu(tr("Lang&uage"));
    auto *group = new QActionGroup(this);
    const std::vector<std::tuple<QString, QString, QString>> all = {
        {"language_system", tr("As the &system"), QString()},
        {"language_en", QStringLiteral("&English"), QStringLiteral("en")},
        {"language_fr", QStringLiteral("&Français"), QStringLiteral("fr")}};
    for (const auto &[name, words, code] : all) {
        const Deed choose = [this, chosen = code] {
            choose_language(chosen);
            message_->say(tr("The language is chosen. It is spoken from the next start of roundlay on."),
                          {{tr("Close"), {}}});
        };
        add_one_of(*group, add(languages, name, words, {}, choose, false), language_choice() == code);
    }
}

void MainWindow::make_help_menu() {
    QMenu *help = menuBar()->addMenu(tr("&Help"));
    add(
        help, "shortcuts", tr("&Keyboard"), QKeySequence(tr("F1")), [this] { show_shortcuts(); }, false);
    add(
        help, "about", tr("&About roundlay"), {}, [this] { show_about(); }, false);
}

void MainWindow::show_recent() {
    const QStringList paths = recent_files();
    start_->show_recent(paths);
    for (QAction *before :
         recent_->actions()) { // one of them may be what opened the file, and is still at work
        recent_->removeAction(before);
        before->deleteLater();
    }
    recent_->setEnabled(!paths.isEmpty());
    for (const QString &path : paths)
        connect(recent_->addAction(QFileInfo(path).fileName()), &QAction::triggered, this, [this, path] {
            if (may_leave()) open(path);
        });
}

void MainWindow::enable_actions() {
    for (QAction *action : need_document_)
        action->setEnabled(desk_->is_open());
    const bool stands = desk_->is_open() && desk_->state()->stands();
    for (const char *name : {"export", "print"})
        action(QLatin1String(name))->setEnabled(stands);
    action(QStringLiteral("remove"))
        ->setEnabled(desk_->is_open() &&
                     (selection_->chosen().kind == Chosen::Kind::opening || plan_->chosen_partition() >= 0));
    action(QStringLiteral("save_picture"))->setEnabled(stands && model_->view() != nullptr);
    action(QStringLiteral("print_sheet"))
        ->setEnabled(stands && selection_->chosen().kind == Chosen::Kind::piece);
    for (const char *name : {"wall_outward", "wall_inward"})
        action(QLatin1String(name))
            ->setEnabled(desk_->is_open() && selection_->chosen().kind == Chosen::Kind::wall);
}

} // namespace roundlay::window
