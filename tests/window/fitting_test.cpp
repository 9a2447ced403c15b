// What is added fits its wall or its room, as small as these ask, or is refused with the reason.
#include "kernel/document/document.h"
#include "kernel/layout/lay_out.h"
#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/finding_words.h"
#include "modeler/window/desk/floor_edits.h"
#include "modeler/window/desk/opening_edits.h"
#include "modeler/window/desk/selection.h"
#include "modeler/window/desk/shell_edits.h"
#include "modeler/window/desk/step_edits.h"
#include "modeler/window/frame/new_shell.h"
#include "tests/window/support/window.h"

#include <QAction>
#include <QElapsedTimer>
#include <QTemporaryDir>
#include <QTest>

using namespace roundlay;
using namespace roundlay::window;

class FittingTest : public QObject {
    Q_OBJECT

  private slots:
    void a_new_opening_is_as_low_and_narrow_as_its_wall_asks_data();
    void a_new_opening_is_as_low_and_narrow_as_its_wall_asks();
    void what_fits_nowhere_says_why();
    void a_stair_in_a_narrow_room_is_as_small_as_it_asks();
    void a_step_beside_a_door_brings_no_warning();

  private:
    QTemporaryDir folder_;
    QString kept() const { return folder_.filePath(QStringLiteral("unsaved")); }
};

void FittingTest::a_new_opening_is_as_low_and_narrow_as_its_wall_asks_data() {
    QTest::addColumn<UnitSystem>("units");
    QTest::addColumn<int>("rounds");
    QTest::addColumn<double>("wall"); // mm
    for (const UnitSystem units : {UnitSystem::metric, UnitSystem::imperial})
        for (const int rounds : {3, 5, 7, 12})
            for (const double wall : {1500.0, 6000.0})
                QTest::addRow("%s, %d rounds, wall of %.0f mm",
                              units == UnitSystem::metric ? "metric" : "imperial", rounds, wall)
                    << units << rounds << wall;
}

/// Of hewn logs and of round ones: it can be built, and leaves a log over it.
void FittingTest::a_new_opening_is_as_low_and_narrow_as_its_wall_asks() {
    QFETCH(UnitSystem, units);
    QFETCH(int, rounds);
    QFETCH(double, wall);
    Shell hewn = *shell_of(usual_shell(Shape::rectangle, units));
    hewn.rounds.height.reset();
    hewn.rounds.count = rounds;
    hewn.rounds.pitch = Length::mm(240);
    hewn.walls[0].length = hewn.walls[2].length = Length::mm(wall);
    for (const Shell &low : {hewn, with_kind(hewn, NotchKind::saddle)}) {
        QVERIFY(!has_errors(lay_out(low).findings));
        for (const OpeningKind kind : {OpeningKind::window, OpeningKind::door}) {
            const auto next = with_new_opening(low, kind, "A", {wall / 2, {}});
            QVERIFY(next.placed);
            const Layout layout = lay_out(next.placed->shell);
            QVERIFY(!has_errors(layout.findings));
            const Opening &o = next.placed->shell.openings.back();
            QVERIFY((o.sill + o.height).mm() < layout.heights[0].top);
            QVERIFY2(
                o.width.mm() >= 400 && o.height.mm() >= 140,
                qPrintable(QString("%1 x %2 over %3").arg(o.width.mm()).arg(o.height.mm()).arg(o.sill.mm())));
            QVERIFY((kind == OpeningKind::door) == (o.sill == Length()));
        }
    }
}

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
    QVERIFY2(why.contains("long light"), qPrintable(why));
    window.close_document();
}

/// Rooms that are narrow: the smallest hatch has 600 mm, or 24 in, each way.
void FittingTest::a_stair_in_a_narrow_room_is_as_small_as_it_asks() {
    for (const UnitSystem units : {UnitSystem::metric, UnitSystem::imperial})
        for (const double depth : {1500.0, 1800.0, 2130.0, 3000.0}) {
            Shell narrow = *shell_of(usual_shell(Shape::rectangle, units));
            narrow.walls[1].length = narrow.walls[3].length = Length::mm(depth);
            const Fitted floor = with_fitting_floor(narrow);
            QVERIFY(floor);
            QElapsedTimer timer;
            timer.start();
            const Fitted next = with_fitting_floor_opening(*floor.shell, 0);
            qInfo("%.0f mm: %lld ms", depth, timer.elapsed());
            QVERIFY2(next, qPrintable(next.why ? sentence_text(*next.why, units) : QString("no reason")));
            QVERIFY(!has_errors(lay_out(*next.shell).findings));
        }
}

/// Wanted where the door stands: it goes as far aside as it must.
void FittingTest::a_step_beside_a_door_brings_no_warning() {
    const auto warnings = [](const Shell &shell) {
        const Findings all = lay_out(shell).findings;
        return std::count_if(all.begin(), all.end(),
                             [](const Finding &f) { return f.weight != Weight::note; });
    };
    for (const UnitSystem units : {UnitSystem::metric, UnitSystem::imperial}) {
        const Shell bare = *shell_of(usual_shell(Shape::rectangle, units));
        const double middle = bare.walls[0].length.mm() / 2;
        const Shell house = with_new_opening(bare, OpeningKind::door, "A", {middle, {}}).placed->shell;
        const Fitted next = with_new_step(house, "A", middle);
        QVERIFY(next);
        QCOMPARE(warnings(*next.shell), warnings(house));
        QVERIFY(next.shell->steps[0].width > Length::metres(1));
    }
}

int main(int argc, char **argv) {
    const TestProgram program(argc, argv);
    FittingTest test;
    return QTest::qExec(&test, argc, argv);
}

#include "fitting_test.moc"
