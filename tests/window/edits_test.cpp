// Edits of a shell, through the desk: what they change, what follows from it, and what they leave alone.
#include "kernel/design/floor_edits.h"
#include "kernel/document/restate.h"
#include "kernel/layout/lay_out.h"
#include "kernel/shell/partition_edit.h"
#include "kernel/shell/plan_edit.h"
#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/selection.h"
#include "modeler/window/desk/snap.h"
#include "modeler/window/desk/workshop.h"
#include "modeler/window/frame/new_shell.h"
#include "modeler/window/panels/floor_panel.h"
#include "modeler/window/panels/length_edit.h"
#include "modeler/window/panels/log_panel.h"
#include "modeler/window/panels/message_bar.h"
#include "modeler/window/views/elevation_view.h"
#include "modeler/window/views/plan_view.h"
#include "modeler/window/views/scene_view.h"
#include "tests/window/support/window_test.h"

#include <QAction>
#include <QTest>

using namespace roundlay;
using namespace roundlay::window;

class EditsTest : public WindowTest {
    Q_OBJECT

  private slots:
    void a_wall_moves_and_the_plan_stays_closed();
    void what_is_restated_reads_back_as_meant();
    void round_logs_leave_no_air_in_their_elevation();
    void a_partition_comes_moves_and_goes();
    void a_drag_comes_to_rest_on_the_nearest_line();
};

void EditsTest::a_wall_moves_and_the_plan_stays_closed() {
    const Shell before = *read_document_file(demo_file("ell-house").toStdString()).shell;
    for (std::size_t wall = 0; wall < before.walls.size(); ++wall) {
        const auto after = wall_moved(before, wall, Length::mm(300));
        QVERIFY(after);
        const Layout layout = lay_out(*after);
        for (const Finding &f : layout.findings)
            QVERIFY2(f.code != "plan-not-closed", f.subject.c_str());
        QCOMPARE(layout.walls.size(), before.walls.size());
    }
    QVERIFY(!wall_moved(before, 0, Length::metres(-40))); // its neighbours would have no length left
    const auto longer = wall_lengthened(before, 0, Length::feet(40));
    QVERIFY(longer && longer->walls[0].length == Length::feet(40));
}

void EditsTest::what_is_restated_reads_back_as_meant() {
    for (const char *demo : {"one-room", "ell-house", "long-house", "round-cabin"}) {
        const auto document = std::get<Document>(open_document(demo_file(demo).toStdString()));
        const Shell before = *document.read().shell;
        Shell after = before;
        after.name = "Another \"name\"";
        after.notch.slope = Slope::rise_per_run(1.0 / 7);
        after.rounds.gap = Length::mm(21.5);
        after.openings.erase(after.openings.begin());
        after.openings.back().width = after.openings.back().width + Length::mm(13);
        after.own_logs.push_back({"B", 2, {}});
        after.own_logs.back().sizes.tip_height = Length::mm(171);
        after.pegs.fewest = 4;
        const auto next = restated(document, before, after);
        QVERIFY(std::holds_alternative<Document>(next));
        QVERIFY(*std::get<Document>(next).read().shell == after);
    }
}

namespace {

bool within(const std::vector<Vec2> &ring, Vec2 p) {
    bool in = false;
    for (std::size_t i = 0, j = ring.size() - 1; i < ring.size(); j = i++)
        if ((ring[i].y > p.y) != (ring[j].y > p.y) &&
            p.x < (ring[j].x - ring[i].x) * (p.y - ring[i].y) / (ring[j].y - ring[i].y) + ring[i].x)
            in = !in;
    return in;
}

int shapes_at(const ElevationScene &scene, Vec2 p) {
    return static_cast<int>(std::count_if(scene.shapes.begin(), scene.shapes.end(), [&](const auto &shape) {
        return std::any_of(shape.rings.begin(), shape.rings.end(),
                           [&](const auto &ring) { return within(ring, p); });
    }));
}

} // namespace

void EditsTest::round_logs_leave_no_air_in_their_elevation() {
    MainWindow window(kept());
    window.show();
    QVERIFY(window.open(demo_file("round-cabin")));
    QVERIFY(settled(window));
    for (const char *wall : {"A", "B", "P"}) {
        window.selection().choose_wall(wall);
        const ElevationScene &scene = window.elevation().scene();
        for (double x = 20; x < scene.length; x += 130)
            for (double z = 7; z < scene.height - 240; z += 23) {
                const bool hole = std::any_of(scene.holes.begin(), scene.holes.end(), [&](const auto &h) {
                    return h.box.grown(1).holds(sheets::Rect{x, z, x, z});
                });
                // ends that cross are scribed 3 mm clear of those they lie on
                const bool wood = shapes_at(scene, {x, z}) > 0 || shapes_at(scene, {x, z + 4}) > 0;
                if (!hole) QVERIFY2(wood, qPrintable(QStringLiteral("%1: %2, %3").arg(wall).arg(x).arg(z)));
            }
    }
    window.selection().choose_wall("A");
    QCOMPARE(window.elevation().scene().bores.size(), std::size_t(2));
    QCOMPARE(window.elevation().scene().bores.front().mark, std::string("rod 1"));
}

void EditsTest::a_partition_comes_moves_and_goes() {
    MainWindow window(kept());
    QVERIFY(shown(window, *shell_of(usual_shell(Shape::ell, UnitSystem::metric)), "Partition"));
    const std::string first = window.desk().document().text();
    window.selection().choose_wall("A");
    window.action("add_partition")->trigger();
    QVERIFY(settled(window));
    const auto partition = [&] { return window.desk().standing()->job.shell.partitions.at(0); };
    QCOMPARE(window.desk().standing()->job.shell.partitions.size(), std::size_t(1));
    QCOMPARE(partition().from, std::string("A"));
    window.selection().choose_wall(partition().name);
    const double before = partition().from_left.mm();
    // Slide it, with the mouse, half a metre along its wall, away from the inside corner.
    const Shell &now = window.desk().standing()->job.shell;
    const double inside = now.walls[0].length.mm() - now.walls[2].length.mm();
    const double way = before > inside ? 500 : -500;
    const auto &walls = window.desk().standing()->job.layout.walls;
    const Vec3 grip = walls.back().frame.to_world({walls.back().length / 2, walls.back().thickness / 2, 0});
    const QPointF at = window.plan().to_screen({grip.x, grip.y});
    const QPointF to = window.plan().to_screen({grip.x + way, grip.y});
    press(window.plan(), at);
    move(window.plan(), to);
    release(window.plan(), to);
    QVERIFY(settled(window));
    QVERIFY(std::abs(partition().from_left.mm() - (before + way)) <= 60);
    QCOMPARE(window.desk().history().undoText(), QString("Move partition"));
    // An opening in it goes with it.
    window.action("add_door")->trigger();
    QVERIFY(settled(window));
    QCOMPARE(window.desk().standing()->job.shell.openings.size(), std::size_t(1));
    window.selection().choose_wall(partition().name);
    QVERIFY(window.action("remove")->isEnabled());
    window.action("remove")->trigger();
    QVERIFY(settled(window));
    QVERIFY(window.desk().standing()->job.shell.partitions.empty());
    QVERIFY(window.desk().standing()->job.shell.openings.empty());
    while (window.desk().history().canUndo())
        window.desk().history().undo();
    QCOMPARE(window.desk().document().text(), first);
    window.close_document();
    // Without a wall, without a place on it, without a wall across.
    const Shell shell = *shell_of(usual_shell(Shape::rectangle, UnitSystem::metric));
    QVERIFY(!with_partition(shell, "Z", Length::mm(1000)));
    QVERIFY(!with_partition(shell, "A", shell.walls[0].length));
    QVERIFY(!partition_moved(shell, 0, Length::mm(1000)));
    QVERIFY(without_partition(shell, "Z") == shell);
}

void EditsTest::a_drag_comes_to_rest_on_the_nearest_line() {
    QCOMPARE(snapped(103, {100, 110}, 5, 10).at, 100.0);
    QCOMPARE(snapped(106.2, {100, 107.5}, 5, 10).at, 107.5);
    QVERIFY(!snapped(144, {100}, 5, 10).on_line);
    QCOMPARE(snapped(144, {100}, 5, 10).at, 140.0);
}

int main(int argc, char **argv) {
    return run_test<EditsTest>(argc, argv);
}

#include "edits_test.moc"
