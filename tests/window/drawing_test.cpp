// What is drawn by hand in the views: a shell corner by corner, a partition, a slope.
#include "kernel/design/shell_edits.h"
#include "kernel/layout/lay_out.h"
#include "kernel/shell/shapes.h"
#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/selection.h"
#include "modeler/window/desk/words.h"
#include "modeler/window/frame/application.h"
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
#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QDockWidget>
#include <QLabel>
#include <QSlider>
#include <QTemporaryDir>
#include <QTest>
#include <QTranslator>
#include <QTreeWidget>
#include <algorithm>
#include <cmath>
#include <numbers>

using namespace roundlay;
using namespace roundlay::window;

class DrawingTest : public QObject {
    Q_OBJECT

  private slots:
    void a_length_is_typed_while_dragging();
    void a_shell_is_drawn_corner_by_corner();
    void a_wall_is_drawn_at_a_slant_without_alt();
    void a_direction_is_typed_behind_the_length();
    void a_direction_is_typed_in_french();
    void lines_are_let_go_of_with_shift();
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

namespace {

/// A form with the first wall of a plan: from (1000, 1000) to (6000, 1000).
std::unique_ptr<NewShellDialog> begun_sketch() {
    auto dialog = std::make_unique<NewShellDialog>(UnitSystem::metric);
    dialog->choose(Shape::drawn);
    dialog->show();
    QTest::qWait(200);
    click(dialog->sketch(), {1000, 1000});
    click(dialog->sketch(), {6000, 1000});
    return dialog;
}

double heading_of_last(const PlanSketch &sketch) {
    const auto &c = sketch.corners();
    const PlanPoint &a = c[c.size() - 2], &b = c.back();
    return std::atan2((b.north - a.north).mm(), (b.east - a.east).mm()) * 180 / std::numbers::pi;
}

double length_of_last(const PlanSketch &sketch) {
    const auto &c = sketch.corners();
    return std::hypot((c.back().east - c[c.size() - 2].east).mm(),
                      (c.back().north - c[c.size() - 2].north).mm());
}

void click_with(DrawingView &view, Vec2 at, Qt::KeyboardModifiers keys) {
    QTest::mouseClick(&view, Qt::LeftButton, keys, view.to_screen(at).toPoint());
}

} // namespace

/// Many a desk takes what is pressed with Alt for moving windows: Shift does the same, and a tick.
void DrawingTest::a_wall_is_drawn_at_a_slant_without_alt() {
    for (const Qt::KeyboardModifier key : {Qt::AltModifier, Qt::ShiftModifier}) {
        const auto dialog = begun_sketch();
        click_with(dialog->sketch(), {8000, 2000}, key);
        QVERIFY(std::abs(heading_of_last(dialog->sketch()) - 26.6) < 3);
    }
    const auto dialog = begun_sketch();
    PlanSketch &sketch = dialog->sketch();
    auto *slanted = dialog->findChild<QCheckBox *>("slanted");
    QVERIFY(slanted && slanted->isVisible());
    slanted->click();
    click(sketch, {8000, 2000});
    QVERIFY(std::abs(heading_of_last(sketch) - 26.6) < 3);
    click(sketch, {8020, 4000}); // a hand that means north gets north
    QVERIFY(std::abs(heading_of_last(sketch) - 90) < 1e-6);
    click(sketch, {7010, 5000}); // and one that means north-west gets that
    QVERIFY(std::abs(heading_of_last(sketch) - 135) < 1e-6);
    hover(sketch, sketch.to_screen({4000, 6500}));
    keep_picture(*dialog, "sketch-slanted");
    slanted->click();
    click(sketch, {4000, 5200});
    QVERIFY(std::abs(heading_of_last(sketch) - 180) < 1e-6);
    // What to do is said where it is done; a shape that is not drawn has neither tick nor words.
    QVERIFY(sketch.accessibleDescription().contains("Shift") &&
            sketch.accessibleDescription().contains("at 135"));
    QVERIFY(dialog->findChild<QLabel *>("drawing_hint")->text().contains("Shift"));
    dialog->choose(Shape::ell);
    QVERIFY(!slanted->isVisible() && !dialog->findChild<QLabel *>("drawing_hint")->isVisible());
}

void DrawingTest::a_direction_is_typed_behind_the_length() {
    const auto dialog = begun_sketch();
    PlanSketch &sketch = dialog->sketch();
    hover(sketch, sketch.to_screen({6000, 4000}));
    type_length(sketch, "1", "500 at 45"); // of the compass: north-east
    QVERIFY(std::abs(heading_of_last(sketch) - 45) < 1e-6);
    QVERIFY(std::abs(length_of_last(sketch) - 1500) < 1e-6);
    type_length(sketch, "3", " m at north");
    QVERIFY(std::abs(heading_of_last(sketch) - 90) < 1e-6);
    type_length(sketch, "1", "500 mm at 45 deg north of west"); // as documents have it
    QVERIFY(std::abs(heading_of_last(sketch) - 135) < 1e-6);
    const auto refused = [&](const char *rest, const char *reason) {
        const std::size_t before = sketch.corners().size();
        type_length(sketch, "2", rest);
        auto *typed = sketch.findChild<LengthEdit *>();
        const bool told = typed->isVisible() && typed->complaint().contains(reason);
        if (!told) qInfo() << rest << typed->isVisible() << typed->complaint();
        QTest::keyClick(typed, Qt::Key_Escape); // what was typed goes
        QTest::keyClick(typed, Qt::Key_Escape); // then the field, and nothing that is drawn
        return told && !typed->isVisible() && sketch.corners().size() == before;
    };
    QVERIFY(refused("000 at 400", "400 is no direction"));
    QVERIFY(refused("000 at", "direction is missing"));
    QVERIFY(refused("000 at somewhere", "somewhere is no direction"));
    QVERIFY(refused("000 at 135", "run back over"));
    type_length(sketch, "5", "000 at 270");
    QVERIFY(std::abs(std::abs(heading_of_last(sketch)) - 180) < 1e-6);
    QTest::keyClick(&sketch, Qt::Key_Return);
    QVERIFY(sketch.is_closed());
    keep_picture(*dialog, "sketch-typed-slants");
    // Written as a person would: no digits that say nothing.
    const auto walls = drawn_plan(sketch.corners());
    QCOMPARE(walls[1].heading, 45.0);
    QCOMPARE(walls[1].length, Length::mm(1500));
    QVERIFY(!has_errors(lay_out(dialog->shell()).findings));
}

void DrawingTest::a_direction_is_typed_in_french() {
    const auto french = own_translator(QLocale(QLocale::French, QLocale::France));
    QApplication::installTranslator(french.get());
    const auto dialog = begun_sketch();
    PlanSketch &sketch = dialog->sketch();
    QVERIFY(sketch.what_to_type().contains(QStringLiteral("4500 mm à 135")));
    hover(sketch, sketch.to_screen({6000, 4000}));
    const auto typed = [&](const QString &rest) {
        QTest::keyClicks(&sketch, "1");
        auto *field = sketch.findChild<LengthEdit *>();
        field->insert(rest);
        QTest::keyClick(field, Qt::Key_Return);
    };
    typed(QStringLiteral("500 à nord-est"));
    QVERIFY(std::abs(heading_of_last(sketch) - 45) < 1e-6);
    typed(QStringLiteral("500 à 22,5"));
    QVERIFY(std::abs(heading_of_last(sketch) - 67.5) < 1e-6);
    typed(QStringLiteral("500 at north-west"));
    QVERIFY(std::abs(heading_of_last(sketch) - 135) < 1e-6);
    keep_picture(*dialog, "sketch-french");
    QApplication::removeTranslator(french.get());
}

void DrawingTest::lines_are_let_go_of_with_shift() {
    MainWindow window(kept());
    window.show();
    window.begin(*shell_of(usual_shell(Shape::rectangle, UnitSystem::metric)), "Let go");
    QVERIFY(settled(window));
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
    window.selection().choose_piece(layout, *piece_tagged(layout, "B-06-1"));
    window.selection().choose_corner("AB");
    window.selection().choose_piece(layout, *piece_tagged(layout, "B-06-1"));
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
