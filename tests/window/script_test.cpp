// The real window on a screen: a shell from its first wall to its export, and every menu on every demo.
#include "kernel/design/shell_edits.h"
#include "kernel/shell/shapes.h"
#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/selection.h"
#include "modeler/window/desk/words.h"
#include "modeler/window/frame/export_dialog.h"
#include "modeler/window/frame/new_shell.h"
#include "modeler/window/panels/cut_list_panel.h"
#include "modeler/window/panels/findings_panel.h"
#include "modeler/window/panels/floor_panel.h"
#include "modeler/window/panels/length_edit.h"
#include "modeler/window/panels/log_panel.h"
#include "modeler/window/views/elevation_view.h"
#include "modeler/window/views/joint_page.h"
#include "modeler/window/views/model_page.h"
#include "modeler/window/views/plan_sketch.h"
#include "modeler/window/views/plan_view.h"
#include "modeler/window/views/scene_view.h"
#include "modeler/window/views/sheet_view.h"
#include "modeler/window/views/tints.h"
#include "tests/window/support/window_test.h"

#include <QAction>
#include <QComboBox>
#include <QDockWidget>
#include <QSlider>
#include <QTest>
#include <QTreeWidget>
#include <algorithm>

using namespace roundlay;
using namespace roundlay::window;

class ScriptTest : public WindowTest {
    Q_OBJECT

  private slots:
    void a_shell_from_its_first_wall_to_its_export();
    void the_views_wait_for_another_document();
    void the_views_are_looked_at();
    void every_action_is_triggered_once_on_every_demo();

  private:
    // The parts of the script, each where the one before it ended.
    void drag_a_wall(MainWindow &window);
    void part_two_windows_by_an_island(MainWindow &window);
    void mend_by_a_finding(MainWindow &window);
    void undo_and_do_all_again(MainWindow &window);
    void save_and_open(MainWindow &window);
    void export_all(MainWindow &window);
    std::string first_; ///< the text that it begins with
};

void ScriptTest::a_shell_from_its_first_wall_to_its_export() {
    MainWindow window(kept());
    QVERIFY(shown(window, *shell_of(usual_shell(Shape::ell, UnitSystem::metric)), "Script"));
    QVERIFY(window.model().view() != nullptr);
    first_ = window.desk().document().text();
    for (const auto part : {&ScriptTest::drag_a_wall, &ScriptTest::part_two_windows_by_an_island,
                            &ScriptTest::mend_by_a_finding, &ScriptTest::undo_and_do_all_again,
                            &ScriptTest::save_and_open, &ScriptTest::export_all}) {
        (this->*part)(window);
        if (QTest::currentTestFailed()) return;
    }
    window.close_document();
}

/// The east wall goes half a metre outward: A and the wall on the other side follow.
void ScriptTest::drag_a_wall(MainWindow &window) {
    QTRY_VERIFY(window.plan().width() > 200);
    QTest::qWait(200);
    const double width = shell(window).walls[0].length.mm(), middle = shell(window).walls[1].length.mm() / 2;
    drag(window.plan(), {width - 90, middle}, {width + 410, middle});
    QVERIFY(settled(window));
    QVERIFY(std::abs(shell(window).walls[0].length.mm() - (width + 500)) <= 100);
    QVERIFY(shell(window).walls[0].length.mm() - width == shell(window).walls[2].length.mm() - 4800);
    QVERIFY(!has_error(window));
}

/// The second window is dragged beside the first, so that an island stands between them.
void ScriptTest::part_two_windows_by_an_island(MainWindow &window) {
    window.selection().choose_wall("A");
    window.elevation().add(OpeningKind::window, 2500);
    QVERIFY(settled(window));
    window.elevation().add(OpeningKind::window, 7000);
    QVERIFY(settled(window));
    QCOMPARE(shell(window).openings.size(), std::size_t(2));
    const Opening a = shell(window).openings[0], b = shell(window).openings[1];
    const double gap = 500, to = a.from_left.mm() + a.width.mm() + gap;
    const Vec2 grip{b.from_left.mm() + 300, b.sill.mm() + 400};
    QTest::qWait(100);
    drag(window.elevation(), grip, grip + Vec2{to - b.from_left.mm(), 0});
    QVERIFY(settled(window));
    QVERIFY(!has_error(window));
    QCOMPARE(shell(window).openings[1].width.mm(), b.width.mm()); // moved, not resized by a last digit
    QCOMPARE(shell(window).openings[1].height.mm(), b.height.mm());
    const auto &pieces = window.desk().standing()->job.layout.pieces;
    QVERIFY(std::any_of(pieces.begin(), pieces.end(), [](const Piece &p) { return p.island; }));
    keep_picture(window, "script-two-windows");
}

/// A window wider than its wall: a finding that leads to it, and is put right.
void ScriptTest::mend_by_a_finding(MainWindow &window) {
    window.selection().choose_opening(shell(window), 1);
    LengthEdit &field = *window.log().field("width");
    field.selectAll();
    QTest::keyClicks(&field, "20 m");
    QTest::keyClick(&field, Qt::Key_Return);
    QVERIFY(settled(window));
    QVERIFY(has_error(window));
    QVERIFY(window.findings().count() > 0);
    keep_picture(window, "script-finding");
    window.selection().clear();
    QTreeWidgetItem *item = window.findings().tree()->topLevelItem(0)->child(0);
    QVERIFY(item->text(1).size() > 10);
    emit window.findings().tree()->itemActivated(item, 1);
    QVERIFY(window.selection().is_opening(1));
    QVERIFY(window.desk().edit("fix", [](const Shell &s) {
        Shell next = s;
        next.openings[1].width = Length::mm(900);
        return std::optional(next);
    }));
    QVERIFY(settled(window));
    QVERIFY(!has_error(window));
}

void ScriptTest::undo_and_do_all_again(MainWindow &window) {
    const std::string last = window.desk().document().text();
    while (window.desk().history().canUndo())
        window.desk().history().undo();
    QCOMPARE(window.desk().document().text(), first_);
    while (window.desk().history().canRedo())
        window.desk().history().redo();
    QCOMPARE(window.desk().document().text(), last);
}

void ScriptTest::save_and_open(MainWindow &window) {
    const std::string last = window.desk().document().text();
    const QString path = folder_.filePath("script.roundlay");
    QVERIFY(window.save_to(path));
    QVERIFY(!window.desk().unsaved());
    window.close_document();
    QVERIFY(window.open(path));
    QVERIFY(settled(window));
    QCOMPARE(window.desk().document().text(), last);
}

void ScriptTest::export_all(MainWindow &window) {
    ExportDialog dialog(window.desk().state()->job, folder_.filePath("out"));
    dialog.show();
    dialog.start();
    QTRY_VERIFY_WITH_TIMEOUT(!dialog.is_running(), 120'000);
    QVERIFY2(dialog.succeeded(), qPrintable(dialog.result()));
    QVERIFY(QFile::exists(folder_.filePath("out/manifest.json")));
    QVERIFY(QFile::exists(folder_.filePath("out/cut-sheets.pdf")));
}

/// Between one document and what follows from the next there is nothing to show, and nothing to trip over.
void ScriptTest::the_views_wait_for_another_document() {
    MainWindow window(kept());
    window.show();
    for (int demo = 2; demo >= 0; --demo) {
        window.begin_demo(demo);
        QVERIFY(!window.desk().standing());
        for (QWidget *view :
             {static_cast<QWidget *>(&window.plan()), static_cast<QWidget *>(&window.elevation()),
              static_cast<QWidget *>(&window.joint()), static_cast<QWidget *>(&window.model()),
              static_cast<QWidget *>(&window.log()), static_cast<QWidget *>(&window.floors()),
              static_cast<QWidget *>(&window.cut_list()), static_cast<QWidget *>(&window.sheet())}) {
            view->grab();
            hover(*view, QPointF(view->width() / 2.0, view->height() / 2.0));
            press(*view, QPointF(view->width() / 2.0, view->height() / 2.0));
            release(*view, QPointF(view->width() / 2.0, view->height() / 2.0));
            QTest::keyClick(view, Qt::Key_PageDown);
            QTest::keyClick(view, Qt::Key_Up);
        }
        QVERIFY(settled(window));
        window.selection().choose_wall("A");
        window.action("draw_partition")->trigger();
        QVERIFY(window.plan().is_drawing());
    }
    window.close_document();
}

void ScriptTest::the_views_are_looked_at() {
    MainWindow window(kept());
    window.show();
    keep_picture(window, "start");
    window.begin_demo(1);
    QVERIFY(settled(window));
    const Layout &layout = window.desk().standing()->job.layout;
    keep_picture(window, "house");
    window.selection().choose_piece(layout, layout.timbers.front().piece);
    window.findChild<QDockWidget *>("cut_list")->raise();
    keep_picture(window, "joist-chosen");
    window.selection().choose_opening(shell(window), 0);
    window.findChild<QDockWidget *>("elevation")->raise();
    keep_picture(window, "opening-chosen");
    const auto island =
        std::find_if(layout.pieces.begin(), layout.pieces.end(), [](const Piece &p) { return p.island; });
    window.selection().choose_piece(layout, layout.pieces.index_of(island));
    window.findChild<QDockWidget *>("sheet")->raise();
    QTRY_VERIFY_WITH_TIMEOUT(window.sheet().pages() > 0, 60'000);
    keep_picture(window, "log-and-sheet");
    window.findChild<QDockWidget *>("joint")->raise();
    window.findChild<QDockWidget *>("cut_list")->raise();
    window.selection().choose_corner("CD");
    keep_picture(window, "joint-and-list");
    window.model().spread_slider()->setValue(60);
    window.model().show_labels(true);
    keep_picture(window, "spread-with-tags");
    window.model().show_labels(false);
    window.model().spread_slider()->setValue(0);
    window.model().set_colouring(Colouring::alike);
    window.findChild<QDockWidget *>("text")->raise();
    window.findChild<QDockWidget *>("shell")->raise();
    window.model().raise_slider()->setValue(80);
    wear(Appearance::dark);
    keep_picture(window, "dark-raise-text");
    wear(Appearance::light);
    window.close_document();
}

void ScriptTest::every_action_is_triggered_once_on_every_demo() {
    const DialogCloser closer;
    for (int demo = 0; demo < 3; ++demo) {
        MainWindow window(kept());
        window.show();
        QStringList names;
        for (const QAction *action : window.findChildren<QAction *>())
            if (!action->objectName().isEmpty()) names << action->objectName();
        QVERIFY(names.size() > 45);
        for (const QString &name : names) {
            if (!window.desk().is_open()) window.begin_demo(demo);
            window.show();
            QVERIFY(settled(window));
            window.selection().choose_wall("A");
            if (name == "remove") window.selection().choose_opening(shell(window), 0);
            window.action(name)->trigger();
            QVERIFY2(settled(window), qPrintable(name));
        }
        window.model().play(false);
        window.close_document();
    }
    QVERIFY(closer.closed() >= 3 * 6); // new, open, save as, export, print, keyboard, about …
}

int main(int argc, char **argv) {
    return run_test<ScriptTest>(argc, argv);
}

#include "script_test.moc"
