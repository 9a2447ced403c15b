// What the views draw of a shell that stands, and what a hand in them chooses.
#include "kernel/design/floor_edits.h"
#include "kernel/design/shell_edits.h"
#include "kernel/shell/drawn_plan.h"
#include "kernel/shell/shapes.h"
#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/selection.h"
#include "modeler/window/desk/words.h"
#include "modeler/window/frame/new_shell.h"
#include "modeler/window/panels/cut_list_panel.h"
#include "modeler/window/views/elevation_view.h"
#include "modeler/window/views/joint_page.h"
#include "modeler/window/views/model_page.h"
#include "modeler/window/views/plan_view.h"
#include "modeler/window/views/scene_view.h"
#include "modeler/window/views/sheet_view.h"
#include "tests/window/support/window_test.h"

#include <QDockWidget>
#include <QImage>
#include <QLineEdit>
#include <QTest>
#include <algorithm>

using namespace roundlay;
using namespace roundlay::window;

class ViewsTest : public WindowTest {
    Q_OBJECT

  private slots:
    void the_plan_shows_the_ends_past_the_corners();
    void no_dimension_runs_over_joists();
    void a_log_that_crosses_at_a_slant_is_seen_in_the_elevation();
    void a_click_on_an_opening_in_the_plan_chooses_it();
    void a_round_log_is_offered_what_it_can_have();
    void a_click_in_a_seam_chooses_the_log_beside_it();
    void the_sheet_says_that_it_is_being_drawn();
    void a_model_that_grows_stays_whole_in_sight();
};

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
        QVERIFY(shown(window, shell, "Tails") && !has_error(window));
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
    QVERIFY(shown(window, with_slants(Length::mm(300)), "Crossing") && !has_error(window));
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
    QVERIFY(shown(window, house, "Joists") && !has_error(window));
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
    const Shell shell = a_room_with_a_door();
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
    QVERIFY(shown(window, a_room(), "Text"));
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
    QVERIFY(shown(window, a_room(), "Text"));
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

/// Until a hand turns it.
void ViewsTest::a_model_that_grows_stays_whole_in_sight() {
    MainWindow window(kept());
    QVERIFY(shown(window, a_room(), "Grows"));
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
    return run_test<ViewsTest>(argc, argv);
}

#include "views_test.moc"
