// What is drawn by hand in the views: a shell corner by corner, a partition, a slope.
#include "kernel/layout/lay_out.h"
#include "kernel/shell/shapes.h"
#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/selection.h"
#include "modeler/window/desk/shell_edits.h"
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
#include "tests/window/support/window.h"

#include <QAction>
#include <QComboBox>
#include <QDockWidget>
#include <QSlider>
#include <QTemporaryDir>
#include <QTest>
#include <QTreeWidget>
#include <algorithm>

using namespace roundlay;
using namespace roundlay::window;

class DrawingTest : public QObject {
    Q_OBJECT

  private slots:
    void a_length_is_typed_while_dragging();
    void a_shell_is_drawn_corner_by_corner();
    void a_partition_is_drawn();
    void a_slope_is_dragged_in_the_joint();

  private:
    QTemporaryDir folder_;
    QString kept() const { return folder_.filePath(QStringLiteral("unsaved")); }
};

void DrawingTest::a_length_is_typed_while_dragging() {
    MainWindow window(kept());
    window.show();
    window.begin(*shell_of(usual_shell(Shape::rectangle, UnitSystem::metric)), "Typed");
    QVERIFY(settled(window));
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

namespace {

void type_length(DrawingView &view, const char *first, const char *rest) {
    QTest::keyClicks(&view, first);
    auto *typed = view.findChild<LengthEdit *>();
    QVERIFY(typed->isVisible());
    QTest::keyClicks(typed, rest);
    QTest::keyClick(typed, Qt::Key_Return);
}

} // namespace

void DrawingTest::a_shell_is_drawn_corner_by_corner() {
    NewShellDialog dialog(UnitSystem::metric);
    dialog.choose(Shape::drawn);
    dialog.show();
    PlanSketch &sketch = dialog.sketch();
    QTRY_VERIFY(sketch.width() > 300);
    QTest::qWait(200);
    click(sketch, {1020, 980});
    click(sketch, {9030, 1200}); // at right angles, to a round length
    QCOMPARE(sketch.corners().back(), (PlanPoint{Length::mm(9000), Length::mm(1000)}));
    hover(sketch, sketch.to_screen({9100, 4000}));
    type_length(sketch, "5", "013 mm");
    QCOMPARE(sketch.corners().back(), (PlanPoint{Length::mm(9000), Length::mm(6013)}));
    click(sketch, {5030, 6100});
    click(sketch, {5030, 8500});
    keep_picture(dialog, "sketch-open");
    QVERIFY(!sketch.is_closed());
    QTest::keyClick(&sketch, Qt::Key_Return); // one more corner, then home
    QVERIFY(sketch.is_closed());
    QCOMPARE(sketch.corners().size(), std::size_t(6));
    keep_picture(dialog, "sketch-closed");
    QTest::keyClick(&sketch, Qt::Key_Backspace);
    QVERIFY(!sketch.is_closed());
    click(sketch, {1010, 1030}); // the first corner closes it too
    QVERIFY(sketch.is_closed());
    // The same L from the trade's own shapes, up to its lengths.
    const double depth = sketch.corners()[4].north.mm() - 1000;
    const auto plan = drawn_plan(sketch.corners());
    QVERIFY(plan == l_plan(Length::metres(8), Length::mm(depth),
                           Length::mm(sketch.corners()[4].east.mm() - 1000), Length::mm(5013)));
    auto backwards = sketch.corners();
    std::reverse(backwards.begin(), backwards.end());
    QVERIFY(drawn_plan(backwards) == plan);
    dialog.accept();
    QCOMPARE(dialog.shell().walls.size(), std::size_t(6));
    QVERIFY(!has_errors(lay_out(dialog.shell()).findings));
    NewShellDialog left(UnitSystem::imperial);
    left.choose(Shape::drawn);
    left.show();
    QTest::qWait(100);
    click(left.sketch(), {1000, 1000});
    QTest::keyClick(&left.sketch(), Qt::Key_Escape);
    QVERIFY(left.isVisible() && left.sketch().corners().empty());
}

void DrawingTest::a_partition_is_drawn() {
    MainWindow window(kept());
    window.show();
    window.begin(*shell_of(usual_shell(Shape::rectangle, UnitSystem::metric)), "Drawn");
    QVERIFY(settled(window));
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

void DrawingTest::a_slope_is_dragged_in_the_joint() {
    MainWindow window(kept());
    window.show();
    window.begin(*shell_of(usual_shell(Shape::rectangle, UnitSystem::metric)), "Joint");
    QVERIFY(settled(window));
    const std::string before = window.desk().document().text();
    window.selection().choose_corner("AB");
    window.findChild<QDockWidget *>("joint")->raise();
    QTest::qWait(300);
    SceneView &view = *window.joint().view();
    const auto ratio = [&] {
        for (const CornerNotch &c : window.desk().state()->job.shell.corners)
            if (c.first == "A" && c.second == "B") return c.notch.slope.ratio();
        return window.desk().state()->job.shell.notch.slope.ratio();
    };
    QCOMPARE(view.handles().size(), std::size_t(2)); // along and across
    QCOMPARE(ratio(), 1.0 / 8);
    // The end of the tail is raised by 6 mm, half the wall's thickness of 180 mm from the corner's middle:
    // its slope grows by 6/90, to 0.192, of which the next easy one is 1 in 5.
    const Vec3 at = view.handles()[0].at;
    const QPointF from = view.on_screen(at), to = view.on_screen(at + Vec3{0, 0, 6});
    press(view, from);
    move(view, (from + to) / 2);
    move(view, to);
    QVERIFY(settled(window));
    QCOMPARE(ratio(), 1.0 / 5); // live, before the hand lets go
    keep_picture(window, "joint-slope-dragged");
    QTest::keyClick(&view, Qt::Key_Escape);
    QVERIFY(settled(window));
    QCOMPARE(window.desk().document().text(), before);
    press(view, from);
    move(view, to);
    release(view, to);
    QVERIFY(settled(window));
    QCOMPARE(ratio(), 1.0 / 5);
    QCOMPARE(window.desk().state()->job.shell.notch.slope.ratio(), 1.0 / 8); // of this corner only
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
    QCOMPARE(ratio(), 1.0 / 5);
    // Typed, of the whole shell: the corner lets go of its own.
    window.joint().scope()->setCurrentIndex(1);
    emit window.joint().scope()->activated(1);
    window.joint().slope()->selectAll();
    QTest::keyClicks(window.joint().slope(), "1:7");
    QTest::keyClick(window.joint().slope(), Qt::Key_Return);
    QVERIFY(settled(window));
    QCOMPARE(window.desk().state()->job.shell.notch.slope.ratio(), 1.0 / 7);
    QVERIFY(window.desk().state()->job.shell.corners.empty());
    // Of one log.
    const Layout &layout = window.desk().standing()->job.layout;
    window.selection().choose_piece(layout, piece_tagged(layout, "B-06-1"));
    window.selection().choose_corner("AB");
    window.selection().choose_piece(layout, piece_tagged(layout, "B-06-1"));
    window.joint().scope()->setCurrentIndex(2);
    emit window.joint().scope()->activated(2);
    QTest::qWait(200);
    const Vec3 end = view.handles()[0].at;
    const QPointF grip = view.on_screen(end);
    press(view, grip);
    move(view, view.on_screen(end + Vec3{0, 0, 3}));
    release(view, view.on_screen(end + Vec3{0, 0, 3}));
    QVERIFY(settled(window));
    const OwnLog own = own_log(window.desk().state()->job.shell, {"B", 6, {}});
    QVERIFY(own.notch.slope && own.notch.slope->ratio() > 1.0 / 7);
    keep_picture(window, "joint-of-one-log");
    window.joint().lift_apart(true);
    QTest::qWait(300);
    window.joint().lift_apart(false);
    while (window.desk().history().canUndo())
        window.desk().history().undo();
    QCOMPARE(window.desk().document().text(), before);
    window.close_document();
}

int main(int argc, char **argv) {
    const TestProgram program(argc, argv);
    DrawingTest test;
    return QTest::qExec(&test, argc, argv);
}

#include "drawing_test.moc"
