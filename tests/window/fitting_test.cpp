// What is added fits its wall or its room, as small as these ask, or is refused with the reason.
#include "kernel/design/opening_edits.h"
#include "kernel/document/document.h"
#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/selection.h"
#include "modeler/window/frame/new_shell.h"
#include "modeler/window/panels/length_edit.h"
#include "modeler/window/panels/log_panel.h"
#include "modeler/window/views/elevation_view.h"
#include "tests/window/support/window_test.h"

#include <QAction>
#include <QLabel>
#include <QTest>

using namespace roundlay;
using namespace roundlay::window;

class FittingTest : public WindowTest {
    Q_OBJECT

  private slots:
    void what_fits_nowhere_says_why();
    void what_is_added_comes_where_the_wall_was_pressed();
    void a_hand_that_goes_along_the_wall_keeps_the_sill();
    void empty_fields_of_a_log_say_what_all_logs_have();
};

void FittingTest::what_fits_nowhere_says_why() {
    MainWindow window(kept());
    window.show();
    Shell one = *shell_of(usual_shell(Shape::rectangle, UnitSystem::metric));
    one.rounds.height.reset();
    one.rounds.count = 1;
    window.begin(one, "Sill logs");
    QVERIFY(settled(window));
    QString why;
    connect(&window.desk(), &Desk::refused, &window, [&](const QString &words) { why = words; });
    window.selection().choose_wall("A");
    window.action("add_door")->trigger();
    QVERIFY(settled(window));
    QVERIFY2(why.contains("wall A") && why.contains("high"), qPrintable(why));
    // A wall that is full.
    Shell full = *shell_of(usual_shell(Shape::rectangle, UnitSystem::metric));
    Opening wide = usual_opening(OpeningKind::window, "A", UnitSystem::metric);
    wide.name = "long light";
    wide.width = full.walls[0].length - Length::mm(900);
    wide.from_left = Length::mm(450);
    wide.sill = Length();
    wide.height = Length::mm(2600);
    full.openings = {wide};
    window.desk().begin("Full", write_document(full));
    QVERIFY(settled(window));
    window.selection().choose_wall("A");
    window.action("add_window")->trigger();
    QVERIFY(settled(window));
    QVERIFY2(why.contains("long light"), qPrintable(why));
    window.close_document();
}

/// A window is added and taken back: what was told of it goes with it.
void FittingTest::what_is_added_comes_where_the_wall_was_pressed() {
    MainWindow window(kept());
    window.resize(1200, 800);
    QVERIFY(shown(window, *shell_of(usual_shell(Shape::rectangle, UnitSystem::metric)), "Pressed"));
    window.selection().choose_wall("A");
    raise(window, "elevation");
    QTest::qWait(100);
    click(window.elevation(), {2000, 1400});
    window.action("add_window")->trigger();
    QVERIFY(settled(window));
    QCOMPARE(shell(window).openings.size(), std::size_t(1));
    const Opening &made = shell(window).openings[0];
    QVERIFY2(std::abs((made.from_left + made.width / 2).mm() - 2000) < 100,
             qPrintable(QString::number(made.from_left.mm())));
    const auto *hint = window.findChild<QLabel *>("hint");
    QVERIFY2(hint->text().contains("from the left of wall A"), qPrintable(hint->text()));
    window.action("undo")->trigger();
    QVERIFY(settled(window));
    QVERIFY(shell(window).openings.empty());
    QCOMPARE(hint->text(), QString());
    window.close_document();
}

void FittingTest::a_hand_that_goes_along_the_wall_keeps_the_sill() {
    MainWindow window(kept());
    window.resize(1200, 800);
    window.show();
    Shell room = *shell_of(usual_shell(Shape::rectangle, UnitSystem::metric));
    Opening light = usual_opening(OpeningKind::window, "A", UnitSystem::metric);
    light.from_left = Length::mm(3000), light.sill = Length::mm(885);
    room.openings = {light};
    window.begin(room, "Drag");
    QVERIFY(settled(window));
    window.selection().choose_wall("A");
    raise(window, "elevation");
    QTest::qWait(100);
    const Vec2 grip{3300, 885 + 500};
    drag(window.elevation(), grip, grip + Vec2{1000, 60}); // as a hand shakes
    QVERIFY(settled(window));
    QCOMPARE(shell(window).openings[0].sill.mm(), 885.0);
    QVERIFY(std::abs(shell(window).openings[0].from_left.mm() - 4000) < 100);
    const double from_left = shell(window).openings[0].from_left.mm();
    drag(window.elevation(), {from_left + 300, 1385}, {from_left + 340, 1385 + 240}); // and up
    QVERIFY(settled(window));
    QCOMPARE(shell(window).openings[0].from_left.mm(), from_left);
    QVERIFY(shell(window).openings[0].sill.mm() > 1000);
    window.close_document();
}

void FittingTest::empty_fields_of_a_log_say_what_all_logs_have() {
    MainWindow window(kept());
    window.show();
    Shell room = *shell_of(usual_shell(Shape::rectangle, UnitSystem::metric));
    room.logs.butt_height = room.logs.tip_height = Length::mm(215);
    window.begin(room, "All logs");
    QVERIFY(settled(window));
    window.selection().choose_piece(window.desk().standing()->job.layout, Index<Piece>(0));
    QVERIFY(window.log().field("butt_height")->placeholderText().contains("215 mm"));
    QCOMPARE(window.log().field("butt_width")->placeholderText(), QString("as the wall"));
    window.close_document();
}

int main(int argc, char **argv) {
    return run_test<FittingTest>(argc, argv);
}

#include "fitting_test.moc"
