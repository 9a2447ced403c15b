// A plan drawn corner by corner, by the mouse, by lengths and by directions.
#include "kernel/layout/lay_out.h"
#include "kernel/shell/shapes.h"
#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/selection.h"
#include "modeler/window/frame/application.h"
#include "modeler/window/frame/export_dialog.h"
#include "modeler/window/frame/new_shell.h"
#include "modeler/window/panels/cut_list_panel.h"
#include "modeler/window/panels/floor_panel.h"
#include "modeler/window/panels/length_edit.h"
#include "modeler/window/panels/log_panel.h"
#include "modeler/window/views/elevation_view.h"
#include "modeler/window/views/joint_page.h"
#include "modeler/window/views/model_page.h"
#include "modeler/window/views/plan_sketch.h"
#include "modeler/window/views/plan_view.h"
#include "modeler/window/views/sheet_view.h"
#include "tests/window/support/typing.h"
#include "tests/window/support/window_test.h"

#include <QApplication>
#include <QCheckBox>
#include <QLabel>
#include <QTest>
#include <QTranslator>
#include <algorithm>
#include <cmath>
#include <numbers>

using namespace roundlay;
using namespace roundlay::window;

class SketchTest : public WindowTest {
    Q_OBJECT

  private slots:
    void a_shell_is_drawn_corner_by_corner();
    void a_wall_is_drawn_at_a_slant_without_alt();
    void a_direction_is_typed_behind_the_length();
    void a_direction_is_typed_in_french();
};

void SketchTest::a_shell_is_drawn_corner_by_corner() {
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
void SketchTest::a_wall_is_drawn_at_a_slant_without_alt() {
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

void SketchTest::a_direction_is_typed_behind_the_length() {
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

void SketchTest::a_direction_is_typed_in_french() {
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

int main(int argc, char **argv) {
    return run_test<SketchTest>(argc, argv);
}

#include "sketch_test.moc"
