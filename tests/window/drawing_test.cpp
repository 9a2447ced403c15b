// What is drawn and dragged by hand in the views: a partition, a wall, a slope.
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
#include "tests/window/support/typing.h"
#include "tests/window/support/window_test.h"

#include <QAction>
#include <QComboBox>
#include <QDockWidget>
#include <QTest>
#include <cmath>

using namespace roundlay;
using namespace roundlay::window;

class DrawingTest : public WindowTest {
    Q_OBJECT

  private slots:
    void a_length_is_typed_while_dragging();
    void lines_are_let_go_of_with_shift();
    void a_partition_is_drawn();
    void a_slope_is_dragged_in_the_joint();
    void a_slope_typed_for_the_whole_shell_takes_the_corner_s_own_away();
    void a_slope_is_dragged_of_one_log();
};

void DrawingTest::a_length_is_typed_while_dragging() {
    MainWindow window(kept());
    QVERIFY(shown(window, *shell_of(usual_shell(Shape::rectangle, UnitSystem::metric)), "Typed"));
    QTest::qWait(200);
    const double width = shell(window).walls[0].length.mm(), middle = shell(window).walls[1].length.mm() / 2;
    press(window.plan(), window.plan().to_screen({width - 90, middle}));
    move(window.plan(), window.plan().to_screen({width + 200, middle}));
    QTest::keyClick(&window.plan(), Qt::Key_8);
    auto *typed = window.plan().findChild<LengthEdit *>();
    QVERIFY(typed->isVisible());
    QTest::keyClicks(typed, " m");
    QTest::keyClick(typed, Qt::Key_Return);
    QVERIFY(settled(window));
    QCOMPARE(shell(window).walls[0].length, Length::metres(8));
    QCOMPARE(window.desk().history().count(), 1);
    window.close_document();
}

void DrawingTest::lines_are_let_go_of_with_shift() {
    MainWindow window(kept());
    QVERIFY(shown(window, *shell_of(usual_shell(Shape::rectangle, UnitSystem::metric)), "Let go"));
    QTest::qWait(200);
    const double width = shell(window).walls[0].length.mm(), middle = shell(window).walls[1].length.mm() / 2;
    press(window.plan(), window.plan().to_screen({width - 90, middle}));
    move(window.plan(), window.plan().to_screen({width - 90 + 333, middle}), Qt::ShiftModifier);
    release(window.plan(), window.plan().to_screen({width - 90 + 333, middle}));
    QVERIFY(settled(window));
    const double grown = shell(window).walls[0].length.mm() - width;
    QVERIFY(std::abs(grown - 333) < 2 / window.plan().scale());
    QVERIFY(std::abs(std::remainder(grown, 10)) > 0.5); // not on the grid
    window.close_document();
}

void DrawingTest::a_partition_is_drawn() {
    MainWindow window(kept());
    QVERIFY(shown(window, *shell_of(usual_shell(Shape::rectangle, UnitSystem::metric)), "Drawn"));
    QTest::qWait(200);
    const std::string first = window.desk().document().text();
    PlanView &plan = window.plan();
    window.action("draw_partition")->trigger();
    QVERIFY(plan.is_drawing() && window.action("draw_partition")->isChecked());
    hover(plan, plan.to_screen({3000, 60}));
    keep_picture(window, "partition-before-the-press");
    press(plan, plan.to_screen({3000, 60}));
    move(plan, plan.to_screen({4000, 900}));
    type_length(plan, "3", "210 mm");
    QVERIFY(settled(window));
    QVERIFY(!plan.is_drawing());
    QCOMPARE(shell(window).partitions.size(), std::size_t(1));
    QCOMPARE(shell(window).partitions[0].from_left, Length::mm(3210));
    QCOMPARE(window.desk().history().undoText(), QString("Draw partition"));
    QVERIFY(!has_error(window));
    keep_picture(window, "partition-drawn");
    window.action("draw_partition")->trigger();
    press(plan, plan.to_screen({6000, 60}));
    QTest::keyClick(&plan, Qt::Key_Escape);
    QVERIFY(!plan.is_drawing());
    window.desk().history().undo();
    QCOMPARE(window.desk().document().text(), first);
    // A corner under the pointer shows its joint.
    window.findChild<QDockWidget *>("joint")->raise();
    QTest::qWait(200);
    hover(plan, plan.to_screen({9600 - 90, 7200 - 90}));
    QCOMPARE(window.joint().findChild<QComboBox *>()->currentText(), QString("BC"));
    hover(plan, plan.to_screen({4000, 3000}));
    QCOMPARE(window.joint().findChild<QComboBox *>()->currentText(), text(window.selection().corner()));
    window.close_document();
}

namespace {

/// A plain room whose joint AB is in front, to be dragged in.
SceneView &joint_of_a_room(MainWindow &window) {
    window.show();
    window.begin(*shell_of(usual_shell(Shape::rectangle, UnitSystem::metric)), "Joint");
    if (!settled(window)) QTest::qFail("no room", __FILE__, __LINE__);
    window.selection().choose_corner("AB");
    window.findChild<QDockWidget *>("joint")->raise();
    QTest::qWait(300);
    return *window.joint().view();
}

double slope_of_shell(MainWindow &window) {
    return window.desk().state()->job.shell.notch.slope.ratio();
}

/// The corner's own, where it has one.
double slope_of_joint(MainWindow &window) {
    for (const CornerNotch &c : window.desk().state()->job.shell.corners)
        if (c.first == "A" && c.second == "B") return c.notch.slope.ratio();
    return slope_of_shell(window);
}

/// The end of the tail is raised by 6 mm, half the wall's thickness of 180 mm from the corner's middle: its
/// slope of 1 in 8 grows by 6/90, to 0.192, of which the next easy one is 1 in 5.
void raise_tail(SceneView &view, double by = 6) {
    const Vec3 at = view.handles()[0].at;
    press(view, view.on_screen(at));
    move(view, view.on_screen(at + Vec3{0, 0, by}));
    release(view, view.on_screen(at + Vec3{0, 0, by}));
}

void undo_all(MainWindow &window) {
    while (window.desk().history().canUndo())
        window.desk().history().undo();
}

} // namespace

void DrawingTest::a_slope_is_dragged_in_the_joint() {
    MainWindow window(kept());
    SceneView &view = joint_of_a_room(window);
    const std::string before = window.desk().document().text();
    QCOMPARE(view.handles().size(), std::size_t(2)); // along and across
    QCOMPARE(slope_of_joint(window), 1.0 / 8);
    const Vec3 at = view.handles()[0].at;
    const QPointF from = view.on_screen(at), to = view.on_screen(at + Vec3{0, 0, 6}); // as raise_tail has it
    press(view, from);
    move(view, (from + to) / 2);
    move(view, to);
    QVERIFY(settled(window));
    QCOMPARE(slope_of_joint(window), 1.0 / 5); // live, before the hand lets go
    keep_picture(window, "joint-slope-dragged");
    QTest::keyClick(&view, Qt::Key_Escape);
    QVERIFY(settled(window));
    QCOMPARE(window.desk().document().text(), before);
    raise_tail(view);
    QVERIFY(settled(window));
    QCOMPARE(slope_of_joint(window), 1.0 / 5);
    QCOMPARE(slope_of_shell(window), 1.0 / 8); // of this corner only
    QCOMPARE(window.desk().history().undoText(), QString("Change notch of corner AB"));
    // Further than can be built: it stays where it was seen last.
    const QPointF beyond = view.on_screen(at + Vec3{0, 0, 60});
    press(view, view.on_screen(view.handles()[0].at));
    move(view, beyond);
    QVERIFY(settled(window));
    QVERIFY(!window.desk().state()->stands());
    release(view, beyond);
    QVERIFY(settled(window));
    QVERIFY(window.desk().state()->stands());
    QCOMPARE(slope_of_joint(window), 1.0 / 5);
    undo_all(window);
    QCOMPARE(window.desk().document().text(), before);
    window.close_document();
}

void DrawingTest::a_slope_typed_for_the_whole_shell_takes_the_corner_s_own_away() {
    MainWindow window(kept());
    SceneView &view = joint_of_a_room(window);
    raise_tail(view);
    QVERIFY(settled(window));
    QCOMPARE(window.desk().state()->job.shell.corners.size(), std::size_t(1));
    window.joint().scope()->setCurrentIndex(1);
    emit window.joint().scope()->activated(1);
    window.joint().slope()->selectAll();
    QTest::keyClicks(window.joint().slope(), "1:7");
    QTest::keyClick(window.joint().slope(), Qt::Key_Return);
    QVERIFY(settled(window));
    QCOMPARE(slope_of_shell(window), 1.0 / 7);
    QVERIFY(window.desk().state()->job.shell.corners.empty());
    undo_all(window);
    window.close_document();
}

void DrawingTest::a_slope_is_dragged_of_one_log() {
    MainWindow window(kept());
    SceneView &view = joint_of_a_room(window);
    const std::string before = window.desk().document().text();
    const Layout &layout = window.desk().standing()->job.layout;
    window.selection().choose_piece(layout, *piece_tagged(layout, "B-06-1"));
    window.selection().choose_corner("AB");
    window.selection().choose_piece(layout, *piece_tagged(layout, "B-06-1"));
    window.joint().scope()->setCurrentIndex(2);
    emit window.joint().scope()->activated(2);
    QTest::qWait(200);
    raise_tail(view, 3);
    QVERIFY(settled(window));
    const OwnLog own = own_log(window.desk().state()->job.shell, {"B", 6, {}});
    QVERIFY(own.notch.slope && own.notch.slope->ratio() > 1.0 / 8);
    QCOMPARE(slope_of_joint(window), 1.0 / 8); // of this log only
    keep_picture(window, "joint-of-one-log");
    window.joint().lift_apart(true);
    QTest::qWait(300);
    window.joint().lift_apart(false);
    undo_all(window);
    QCOMPARE(window.desk().document().text(), before);
    window.close_document();
}

int main(int argc, char **argv) {
    return run_test<DrawingTest>(argc, argv);
}

#include "drawing_test.moc"
