// What the views draw, and how: shells that cannot be built, partitions drawn by hand, marks, words, legends.
#include "kernel/design/floor_edits.h"
#include "kernel/design/shell_edits.h"
#include "kernel/shell/drawn_plan.h"
#include "kernel/shell/shapes.h"
#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/faults.h"
#include "modeler/window/desk/finding_words.h"
#include "modeler/window/desk/selection.h"
#include "modeler/window/desk/words.h"
#include "modeler/window/frame/new_shell.h"
#include "modeler/window/panels/cut_list_panel.h"
#include "modeler/window/panels/text_panel.h"
#include "modeler/window/views/elevation_view.h"
#include "modeler/window/views/joint_page.h"
#include "modeler/window/views/model_page.h"
#include "modeler/window/views/plan_view.h"
#include "modeler/window/views/reasons_page.h"
#include "modeler/window/views/scene_view.h"
#include "modeler/window/views/sheet_view.h"
#include "modeler/window/views/stand_banner.h"
#include "modeler/window/views/tints.h"
#include "tests/window/support/window.h"

#include <QAction>
#include <QComboBox>
#include <QDockWidget>
#include <QImage>
#include <QLabel>
#include <QLineEdit>
#include <QSlider>
#include <QTemporaryDir>
#include <QTest>
#include <algorithm>
#include <cmath>

using namespace roundlay;
using namespace roundlay::window;

namespace {

QString banner(const QWidget &view) {
    const auto *found = view.findChild<StandBanner *>();
    return found->isVisible() ? found->words() : QString();
}

} // namespace

class ViewsTest : public QObject {
    Q_OBJECT

  private slots:
    void what_cannot_be_built_is_drawn_as_stated();
    void steps_and_floors_that_cannot_be_built_stand_in_the_elevation();
    void a_plan_that_does_not_close_is_drawn_wall_by_wall();
    void a_text_that_cannot_be_read_leaves_what_stood_under_a_banner();
    void figures_of_an_opening_that_cannot_be_built_say_so();
    void the_plan_shows_the_ends_past_the_corners();
    void no_dimension_runs_over_joists();
    void a_log_that_crosses_at_a_slant_is_seen_in_the_elevation();
    void a_click_on_an_opening_in_the_plan_chooses_it();
    void a_round_log_is_offered_what_it_can_have();
    void a_click_in_a_seam_chooses_the_log_beside_it();
    void the_sheet_says_that_it_is_being_drawn();
    void a_document_that_is_broken_from_the_start_says_why();
    void a_model_that_grows_stays_whole_in_sight();

  private:
    QTemporaryDir folder_;
    QString kept() const { return folder_.filePath(QStringLiteral("unsaved")); }
    QString written(const QString &name, const QByteArray &bytes) const {
        QFile file(folder_.filePath(name));
        if (file.open(QIODevice::WriteOnly)) file.write(bytes);
        return file.fileName();
    }
};

void ViewsTest::what_cannot_be_built_is_drawn_as_stated() {
    MainWindow window(kept());
    window.show();
    window.begin(a_room(), "Stated");
    QVERIFY(settled(window));
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

void ViewsTest::steps_and_floors_that_cannot_be_built_stand_in_the_elevation() {
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

void ViewsTest::a_plan_that_does_not_close_is_drawn_wall_by_wall() {
    MainWindow window(kept());
    window.show();
    window.begin(a_room(), "Open");
    QVERIFY(settled(window));
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

void ViewsTest::a_text_that_cannot_be_read_leaves_what_stood_under_a_banner() {
    MainWindow window(kept());
    window.show();
    window.begin(a_room(), "Text");
    QVERIFY(settled(window));
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
void ViewsTest::figures_of_an_opening_that_cannot_be_built_say_so() {
    MainWindow window(kept());
    window.show();
    Shell shell = a_room();
    shell.openings.push_back(
        {"door", OpeningKind::door, "A", Length::metres(2), {}, Length::metres(1), Length::metres(2)});
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

namespace {

/// Wood, its end grain or its edge; paper and ink are nearly grey.
bool is_wood(const QColor &colour) {
    return colour.red() - colour.blue() > 40;
}

Shell with_slants(Length overhang) {
    Shell slanted = a_room();
    std::vector<PlanPoint> corners;
    for (const Vec2 p : {Vec2{0, 0}, {6000, 0}, {8000, 2000}, {8000, 5000}, {6000, 7000}, {0, 7000}})
        corners.push_back({Length::mm(p.x), Length::mm(p.y)});
    slanted.walls = drawn_plan(corners);
    slanted.notch.overhang = overhang;
    return slanted;
}

} // namespace

/// Hewn and round, square and slanted: where wood runs past a corner there is wood in the plan.
void ViewsTest::the_plan_shows_the_ends_past_the_corners() {
    Shell hewn = *shell_of(usual_shell(Shape::rectangle, UnitSystem::metric));
    hewn.notch.overhang = Length::mm(300);
    int number = 0;
    for (const Shell &shell : {hewn, with_slants(Length::mm(300)),
                               *shell_of(usual_shell(Shape::ell, UnitSystem::metric, NotchKind::saddle))}) {
        MainWindow window(kept());
        window.show();
        window.begin(shell, "Tails");
        QVERIFY(settled(window) && !has_error(window));
        QTest::qWait(200);
        PlanView &plan = window.plan();
        keep_picture(window, QStringLiteral("plan-tails-%1").arg(++number));
        const QImage seen = plan.grab().toImage();
        const double ratio = seen.devicePixelRatio();
        const Layout &layout = window.desk().standing()->job.layout;
        for (const WallPlace &w : layout.walls)
            for (const double along : {-150.0, w.length + 150.0}) {
                const Vec3 at = w.frame.to_world({along, w.thickness / 2, 0});
                const QPointF pixel = plan.to_screen({at.x, at.y});
                QVERIFY2(plan.rect().contains(pixel.toPoint()), w.name.c_str());
                const QColor colour = seen.pixelColor((pixel * ratio).toPoint());
                const bool on_dot = std::ranges::any_of(layout.corners, [&](const CornerPlace &c) {
                    return QLineF(plan.to_screen(c.centre), pixel).length() <
                           6; // the mark of an inside corner
                });
                QVERIFY2(on_dot || is_wood(colour), qPrintable(text(w.name) + u' ' + colour.name()));
            }
        QCOMPARE(plan.dimension_lines().size(), layout.walls.size()); // those at a slant too
        for (const QLineF &line : plan.dimension_lines())             // nor does a dimension run over them
            for (const double part : {0.0, 1.0}) {
                const QColor colour = seen.pixelColor((line.pointAt(part) * ratio).toPoint());
                QVERIFY(!is_wood(colour));
            }
        window.close_document();
    }
}

void ViewsTest::a_log_that_crosses_at_a_slant_is_seen_in_the_elevation() {
    MainWindow window(kept());
    window.show();
    window.begin(with_slants(Length::mm(300)), "Crossing");
    QVERIFY(settled(window) && !has_error(window));
    window.selection().choose_wall("A");
    window.selection().clear();
    QTest::qWait(200);
    ElevationView &view = window.elevation();
    keep_picture(window, "elevation-slanted");
    const QImage seen = view.grab().toImage();
    const Layout &layout = window.desk().standing()->job.layout;
    const WallPlace &a = layout.walls.front(), &b = layout.walls[Index<WallPlace>(1)];
    int logs = 0;
    for (const Piece &piece : layout.pieces) {
        if (piece.wall != Index<WallPlace>(1) || piece.timber) continue;
        // In the middle of its height, where its middle line runs through A, from A's outside to its inside.
        const double z = piece.frame.origin.z + piece.blank.height / 2;
        for (const double deep : {0.1, 0.5, 0.9}) {
            const Vec3 start = b.frame.to_world({0, b.thickness / 2, 0});
            const double run = (deep * a.thickness - a.frame.to_local(start).y) / dot(b.frame.x, a.frame.y);
            const Vec3 at = a.frame.to_local(start + run * b.frame.x);
            const QPointF pixel = view.to_screen({at.x, z});
            const QColor colour = seen.pixelColor((pixel * seen.devicePixelRatio()).toPoint());
            QVERIFY2(is_wood(colour),
                     qPrintable(text(piece.tag) + u' ' + colour.name() + QString::number(deep)));
        }
        ++logs;
    }
    QVERIFY(logs > 8);
    window.close_document();
}

void ViewsTest::no_dimension_runs_over_joists() {
    Shell house = *shell_of(usual_shell(Shape::rectangle, UnitSystem::imperial));
    house = *with_partition_there(house, "A", Length::mm(3500)); // across the joists
    house = *with_partition_there(house, "B", Length::mm(2600)); // and along them
    house = *with_fitting_floor(house).shell;
    MainWindow window(kept());
    window.show();
    window.begin(house, "Joists");
    QVERIFY(settled(window) && !has_error(window));
    QTest::qWait(200);
    PlanView &plan = window.plan();
    keep_picture(window, "plan-joists");
    const Layout &layout = window.desk().standing()->job.layout;
    QVERIFY(!layout.timbers.empty() && plan.dimension_lines().size() >= 4);
    for (const Timber &timber : layout.timbers) {
        const Piece &joist = layout.pieces[timber.piece];
        for (const double y : {0.0, joist.blank.width}) {
            const Vec3 a = joist.frame.to_world({0, y, 0}),
                       b = joist.frame.to_world({joist.blank.length, y, 0});
            const QLineF edge(plan.to_screen({a.x, a.y}), plan.to_screen({b.x, b.y}));
            for (const QLineF &line : plan.dimension_lines())
                QVERIFY2(line.intersects(edge, nullptr) != QLineF::BoundedIntersection, joist.tag.c_str());
        }
    }
    window.close_document();
}

void ViewsTest::a_click_on_an_opening_in_the_plan_chooses_it() {
    MainWindow window(kept());
    window.show();
    Shell shell = a_room();
    shell.openings.push_back(
        {"door", OpeningKind::door, "A", Length::metres(2), {}, Length::metres(1), Length::metres(2)});
    window.begin(shell, "Text");
    QVERIFY(settled(window));
    click(window.plan(), {2500, 60});
    QVERIFY(window.selection().is_opening(0));
    click(window.plan(), {4500, 60});
    QVERIFY(window.selection().is_wall("A"));
    window.desk().history().setClean();
}

/// Heights and widths of logs that are scoped over one another are refused; another diameter is not.
void ViewsTest::a_round_log_is_offered_what_it_can_have() {
    MainWindow window(kept());
    window.show();
    QVERIFY(window.open(demo_file("round-cabin")));
    QVERIFY(settled(window));
    window.selection().choose_piece(window.desk().standing()->job.layout, Index<Piece>(0));
    auto *panel = window.findChild<QDockWidget *>("log")->widget();
    for (const char *name : {"butt_height", "tip_height", "butt_width", "tip_width"})
        QVERIFY(!panel->findChild<QLineEdit *>(name)->isVisible());
    auto *diameter = panel->findChild<QLineEdit *>("diameter");
    QVERIFY(diameter->isVisible());
    diameter->setFocus();
    QTest::keyClicks(diameter, "250 mm");
    QTest::keyClick(diameter, Qt::Key_Return);
    QVERIFY(settled(window));
    QVERIFY(window.desk().state()->stands());
    QCOMPARE(window.desk().state()->read.shell->own_logs.back().sizes.diameter,
             std::optional(Length::mm(250)));
    window.desk().history().setClean();
}

void ViewsTest::a_click_in_a_seam_chooses_the_log_beside_it() {
    MainWindow window(kept());
    window.show();
    window.begin(a_room(), "Text");
    QVERIFY(settled(window));
    window.selection().choose_wall("A");
    constexpr double from = 200, to = 520, step = 10; // mm: seams are 25 mm high, one in each round of 250 mm
    for (double up = from; up < to; up += step) {
        window.selection().clear();
        click(window.elevation(), {3100, up});
        QVERIFY2(window.selection().chosen().kind == Chosen::Kind::piece, qPrintable(QString::number(up)));
    }
    window.desk().history().setClean();
}

void ViewsTest::the_sheet_says_that_it_is_being_drawn() {
    MainWindow window(kept());
    window.show();
    window.begin(a_room(), "Text");
    QVERIFY(settled(window));
    window.findChild<QDockWidget *>("sheet")->raise();
    QTRY_VERIFY(window.sheet().isVisible());
    QVERIFY(window.sheet().words().startsWith("Choose a log"));
    const Layout &layout = window.desk().standing()->job.layout;
    window.selection().choose_piece(layout, Index<Piece>(0));
    QCOMPARE(window.sheet().words(),
             QString("Drawing the cut sheet of %1").arg(text(layout.pieces.front().tag)));
    window.selection().clear();
    QVERIFY(window.sheet().words().startsWith("Choose a log"));
    QTest::qWait(500);
    QCOMPARE(window.sheet().pages(), 0); // it came when nobody wanted it any more
    window.selection().choose_piece(layout, Index<Piece>(0));
    QTRY_VERIFY_WITH_TIMEOUT(window.sheet().pages() > 0, 60'000);
    QVERIFY(window.sheet().words().isEmpty());
    window.desk().history().setClean();
}

void ViewsTest::a_document_that_is_broken_from_the_start_says_why() {
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

/// Until a hand turns it.
void ViewsTest::a_model_that_grows_stays_whole_in_sight() {
    MainWindow window(kept());
    window.show();
    window.begin(a_room(), "Grows");
    QVERIFY(settled(window));
    QTest::qWait(200);
    const auto rounds = [&](int count) {
        window.desk().edit("rounds", [count](const Shell &s) {
            Shell next = s;
            next.rounds.height.reset();
            next.rounds.count = count;
            return std::optional(next);
        });
        return settled(window);
    };
    SceneView &view = *window.model().view();
    QVERIFY(rounds(4));
    QTest::qWait(100);
    const double low = view.camera().target.z;
    QVERIFY(rounds(24));
    QTRY_VERIFY(view.camera().target.z > 3 * low);
    const double before = view.camera().target.z;
    QTest::keyClick(&view, Qt::Key_Left); // a hand
    QVERIFY(rounds(6));
    QTest::qWait(100);
    QCOMPARE(view.camera().target.z, before);
    window.close_document();
}

int main(int argc, char **argv) {
    const TestProgram program(argc, argv);
    ViewsTest test;
    return QTest::qExec(&test, argc, argv);
}

#include "views_test.moc"
