// What does not stand: drawn as stated or dimmed, with a banner that says why.
#include "kernel/design/floor_edits.h"
#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/faults.h"
#include "modeler/window/desk/finding_words.h"
#include "modeler/window/desk/selection.h"
#include "modeler/window/frame/new_shell.h"
#include "modeler/window/panels/cut_list_panel.h"
#include "modeler/window/views/elevation_view.h"
#include "modeler/window/views/joint_page.h"
#include "modeler/window/views/model_page.h"
#include "modeler/window/views/plan_view.h"
#include "modeler/window/views/reasons_page.h"
#include "modeler/window/views/scene_view.h"
#include "modeler/window/views/sheet_view.h"
#include "modeler/window/views/stand_banner.h"
#include "tests/window/support/window_test.h"

#include <QDockWidget>
#include <QImage>
#include <QLineEdit>
#include <QTest>
#include <cmath>

using namespace roundlay;
using namespace roundlay::window;

namespace {

QString banner(const QWidget &view) {
    const auto *found = view.findChild<StandBanner *>();
    return found->isVisible() ? found->words() : QString();
}

} // namespace

class StatedViewsTest : public WindowTest {
    Q_OBJECT

  private slots:
    void what_cannot_be_built_is_drawn_as_stated();
    void steps_and_floors_that_cannot_be_built_stand_in_the_elevation();
    void a_plan_that_does_not_close_is_drawn_wall_by_wall();
    void a_text_that_cannot_be_read_leaves_what_stood_under_a_banner();
    void figures_of_an_opening_that_cannot_be_built_say_so();
    void a_document_that_is_broken_from_the_start_says_why();
};

void StatedViewsTest::what_cannot_be_built_is_drawn_as_stated() {
    MainWindow window(kept());
    QVERIFY(shown(window, a_room(), "Stated"));
    window.selection().choose_wall("A");
    window.elevation().add(OpeningKind::window, 3000);
    QVERIFY(settled(window));
    QCOMPARE(banner(window.plan()), QString());
    QVERIFY(window.desk().edit("too wide", [](const Shell &s) {
        Shell next = s;
        next.openings[0].width = Length::metres(20);
        return std::optional(next);
    }));
    QVERIFY(settled(window));
    const State &state = *window.desk().state();
    QVERIFY(!state.stands() && window.desk().drawn() == window.desk().state());
    QVERIFY(window.desk().standing_is_old() && !window.desk().drawn_is_old());
    const QString why = message_text(state.job.findings.front(), state.job.shell.units);
    for (const QWidget *view :
         {static_cast<QWidget *>(&window.plan()), static_cast<QWidget *>(&window.elevation()),
          static_cast<QWidget *>(window.model().view())})
        QVERIFY2(banner(*view).contains(why), qPrintable(banner(*view)));
    QCOMPARE(window.elevation().scene().holes.at(0).box.width(), 20'000.0); // as stated, not as it stood
    QVERIFY(faults_of(state).openings.contains(0));
    const auto *told = window.plan().findChild<StandBanner *>();
    const double depth = state.read.shell->walls[1].length.mm();
    QTRY_VERIFY(window.plan().to_screen({0, depth + 300}).y() >
                told->geometry().bottom()); // nothing lies under it
    keep_picture(window, "views-too-wide");
    window.desk().history().undo();
    QVERIFY(settled(window));
    for (const QWidget *view :
         {static_cast<QWidget *>(&window.plan()), static_cast<QWidget *>(&window.elevation()),
          static_cast<QWidget *>(window.model().view())})
        QCOMPARE(banner(*view), QString());
    window.desk().history().setClean();
}

void StatedViewsTest::steps_and_floors_that_cannot_be_built_stand_in_the_elevation() {
    MainWindow window(kept());
    window.show();
    Shell house = a_room();
    FoundationStep step;
    step.wall = "A", step.from_left = Length::mm(1500), step.width = Length::mm(2000);
    step.rise = Length::mm(230);
    house.steps = {step};
    Floor floor;
    floor.name = "G", floor.from = "A", floor.to = "C", floor.level = Length::mm(700);
    floor.joist = {Length::mm(100), Length::mm(200)};
    house.floors = {floor};
    house.floors[0].first = Length::mm(1); // the first joist would lie in the wall
    window.begin(house, "Stated");
    QVERIFY(settled(window));
    QVERIFY(has_error(window));
    raise(window, "elevation");
    window.selection().choose_wall("A");
    const ElevationScene &scene = window.elevation().scene();
    QVERIFY(scene.shapes.empty());
    QCOMPARE(scene.steps.size(), std::size_t(1));
    QCOMPARE(scene.steps[0].box.width(), 2000.0);
    QCOMPARE(scene.steps[0].box.y1, 230.0);
    QCOMPARE(scene.floors.size(), std::size_t(1));
    QCOMPARE(scene.floors[0].level, 700.0);
    QVERIFY(faults_of(*window.desk().state()).floors.contains(0));
    QVERIFY(faults_of(*window.desk().state()).steps.empty());
    keep_picture(window, "views-stated-floor");
    window.selection().choose_wall("B");
    QVERIFY(window.elevation().scene().floors.empty()); // its joists lie in A and C
    window.desk().history().setClean();
}

void StatedViewsTest::a_plan_that_does_not_close_is_drawn_wall_by_wall() {
    MainWindow window(kept());
    QVERIFY(shown(window, a_room(), "Open"));
    QVERIFY(window.desk().edit("longer", [](const Shell &s) {
        Shell next = s;
        next.walls[0].length = Length::metres(11);
        return std::optional(next);
    }));
    QVERIFY(settled(window));
    const Layout &drawn = window.desk().drawn()->drawn();
    QVERIFY(window.desk().state()->job.layout.walls.empty()); // nothing was laid out
    QCOMPARE(drawn.walls.size(), std::size_t(4));
    QCOMPARE(drawn.walls.front().length, 11'000.0);
    QVERIFY(std::abs(drawn.walls[Index<WallPlace>(1)].frame.origin.x - 11'000) <
            1e-6); // the second goes on where the first ends
    click(window.plan(), {6000, 60});
    QVERIFY(window.selection().is_wall("A"));
    QCOMPARE(window.elevation().scene().length, 11'000.0);
    keep_picture(window, "views-not-closed");
    window.desk().history().undo();
    window.desk().history().setClean();
}

void StatedViewsTest::a_text_that_cannot_be_read_leaves_what_stood_under_a_banner() {
    MainWindow window(kept());
    QVERIFY(shown(window, a_room(), "Text"));
    window.selection().choose_piece(window.desk().standing()->job.layout, Index<Piece>(0));
    window.findChild<QDockWidget *>("sheet")->raise();
    QTRY_VERIFY_WITH_TIMEOUT(window.sheet().pages() > 0, 60'000);
    window.findChild<QDockWidget *>("joint")->raise();
    const QImage before = greys(window.plan());
    window.desk().replace_text("broken", window.desk().document().text() + "\nthickness = 3 parsecs\n");
    QVERIFY(settled(window));
    QVERIFY(window.desk().drawn_is_old() && window.desk().standing_is_old());
    for (const QWidget *view :
         {static_cast<QWidget *>(&window.plan()), static_cast<QWidget *>(window.model().view()),
          static_cast<QWidget *>(window.joint().view()), static_cast<QWidget *>(&window.sheet())}) {
        QVERIFY2(banner(*view).contains("as it last stood"), qPrintable(banner(*view)));
        QVERIFY2(banner(*view).contains("Line "), qPrintable(banner(*view)));
    }
    for (const QWidget *panel :
         {static_cast<QWidget *>(&window.cut_list()), window.findChild<QDockWidget *>("log")->widget(),
          window.findChild<QDockWidget *>("floors")->widget()}) {
        const auto *told = panel->findChild<StandBanner *>();
        QVERIFY(told != nullptr && told->isVisibleTo(panel));
        QVERIFY2(told->words().contains("as it last stood"), qPrintable(told->words()));
    }
    QVERIFY(greys(window.plan()) != before); // dimmed
    keep_picture(window, "views-unreadable");
    QTest::mouseClick(window.plan().findChild<StandBanner *>(), Qt::LeftButton);
    QVERIFY(window.findChild<QDockWidget *>("findings")->isVisible());
    window.desk().history().undo();
    window.desk().history().setClean();
}

/// Its fields mend it: the banner stands beneath them, over the figures of the shell that stood.
void StatedViewsTest::figures_of_an_opening_that_cannot_be_built_say_so() {
    MainWindow window(kept());
    window.show();
    Shell shell = a_room_with_a_door();
    window.begin(shell, "Text");
    QVERIFY(settled(window));
    window.selection().choose_opening(shell, 0);
    auto *panel = window.findChild<QDockWidget *>("log")->widget();
    auto *told = panel->findChild<StandBanner *>();
    auto *width = panel->findChild<QLineEdit *>("width");
    QVERIFY(!told->isVisible());
    shell.openings[0].width = Length::metres(20);
    window.desk().edit("Too wide", [&](const Shell &) { return std::optional(shell); });
    QVERIFY(settled(window));
    QTRY_VERIFY(told->isVisible() &&
                told->height() >= told->heightForWidth(told->width())); // every line of it
    QVERIFY2(told->words().contains("door: it is 20000 mm wide"), qPrintable(told->words()));
    QVERIFY(width->isEnabled() &&
            told->y() > width->mapTo(told->parentWidget(), QPoint(0, width->height())).y() - 1);
    QVERIFY(window.cut_list().findChild<StandBanner *>()->words().contains("as it last stood"));
    QVERIFY(
        window.findChild<QDockWidget *>("floors")->widget()->findChild<StandBanner *>()->words().isEmpty());
    keep_picture(window, "views-figures-that-are-old");
    window.desk().history().undo();
    QVERIFY(settled(window));
    QTRY_VERIFY(!told->isVisible());
    window.desk().history().setClean();
}

void StatedViewsTest::a_document_that_is_broken_from_the_start_says_why() {
    MainWindow window(kept());
    window.show();
    QFile demo(demo_file("one-room"));
    QVERIFY(demo.open(QIODevice::ReadOnly));
    const QByteArray good = demo.readAll();
    QVERIFY(window.open(written("broken.roundlay", "name = \"x\"\nthickness = 3 parsecs\n" + good)));
    QVERIFY(settled(window));
    ReasonsPage &reasons = window.model().reasons();
    QVERIFY(reasons.isVisible() && !window.model().view()->isVisible());
    QVERIFY2(reasons.toPlainText().contains("line 2"), qPrintable(reasons.toPlainText()));
    QVERIFY(banner(window.plan()).contains("Line 2"));
    keep_picture(window, "views-broken-from-the-start");
    QTest::keyClick(&reasons, Qt::Key_Tab); // to the first line's link
    QTest::keyClick(&reasons, Qt::Key_Return);
    QVERIFY(window.findChild<QDockWidget *>("text")->isVisible());
    window.desk().replace_text("mended", good.toStdString());
    QVERIFY(settled(window));
    QVERIFY(!reasons.isVisible() && window.model().view()->isVisible());
    window.desk().history().undo();
    // A plan that reads but cannot be built is drawn, and its reason stands beside.
    QByteArray open = good; // its first wall is a foot too long
    open.replace(open.indexOf("\"16 ft\""), 7, "\"17 ft\"");
    QVERIFY(window.open(written("open.roundlay", open)));
    QVERIFY(settled(window));
    QVERIFY(!window.desk().standing() && window.desk().drawn() == window.desk().state());
    QVERIFY(reasons.isVisible() && banner(window.plan()).contains("Drawn as stated"));
    keep_picture(window, "views-never-stood");
}

int main(int argc, char **argv) {
    return run_test<StatedViewsTest>(argc, argv);
}

#include "stated_views_test.moc"
