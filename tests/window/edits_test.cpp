// Edits of a shell, through the desk: what they change, what follows from it, and what they leave alone.
#include "exporters/words/words.h"
#include "kernel/design/floor_edits.h"
#include "kernel/design/opening_edits.h"
#include "kernel/design/shell_edits.h"
#include "kernel/document/restate.h"
#include "kernel/layout/lay_out.h"
#include "kernel/layout/pieces/finding_pieces.h"
#include "kernel/layout/wood/interference.h"
#include "kernel/review/review.h"
#include "kernel/shell/partition_edit.h"
#include "kernel/shell/plan_edit.h"
#include "kernel/shell/shapes.h"
#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/kernel_words.h"
#include "modeler/window/desk/recovery.h"
#include "modeler/window/desk/selection.h"
#include "modeler/window/desk/snap.h"
#include "modeler/window/desk/words.h"
#include "modeler/window/desk/workshop.h"
#include "modeler/window/frame/application.h"
#include "modeler/window/frame/new_shell.h"
#include "modeler/window/panels/cut_list_panel.h"
#include "modeler/window/panels/findings_panel.h"
#include "modeler/window/panels/floor_panel.h"
#include "modeler/window/panels/length_edit.h"
#include "modeler/window/panels/log_panel.h"
#include "modeler/window/panels/log_words.h"
#include "modeler/window/panels/message_bar.h"
#include "modeler/window/views/elevation_view.h"
#include "modeler/window/views/model_page.h"
#include "modeler/window/views/plan_view.h"
#include "modeler/window/views/scene_view.h"
#include "modeler/window/views/stand_banner.h"
#include "tests/window/support/window.h"

#include <QAction>
#include <QClipboard>
#include <QGuiApplication>
#include <QLabel>
#include <QLineEdit>
#include <QMenuBar>
#include <QProcess>
#include <QTableView>
#include <QTemporaryDir>
#include <QTest>
#include <QTranslator>
#include <QTreeWidget>

using namespace roundlay;
using namespace roundlay::window;

class EditsTest : public QObject {
    Q_OBJECT

  private slots:
    void a_wall_moves_and_the_plan_stays_closed();
    void what_is_restated_reads_back_as_meant();
    void round_logs_leave_no_air_in_their_elevation();
    void a_partition_comes_moves_and_goes();
    void a_floor_comes_is_changed_and_goes();
    void a_second_floor_without_room_is_refused();
    void what_shares_wood_does_not_stand();
    void a_drag_comes_to_rest_on_the_nearest_line();
    void only_what_an_edit_changes_is_cut_anew_data();
    void only_what_an_edit_changes_is_cut_anew();
    void bores_come_when_the_hand_rests();

  private:
    QTemporaryDir folder_;
    QString kept() const { return folder_.filePath(QStringLiteral("unsaved")); }
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
    window.show();
    window.begin(*shell_of(usual_shell(Shape::ell, UnitSystem::metric)), "Partition");
    QVERIFY(settled(window));
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

namespace {

QString banner(const QWidget &view) {
    const auto *found = view.findChild<StandBanner *>();
    return found != nullptr && !found->isHidden() ? found->words() : QString();
}

} // namespace

void EditsTest::a_second_floor_without_room_is_refused() {
    MainWindow window(kept());
    window.show();
    Shell low = *shell_of(usual_shell(Shape::rectangle, UnitSystem::imperial));
    low.rounds.count = 6;
    window.begin(low, "Low");
    QVERIFY(settled(window));
    raise(window, "floors");
    window.action("add_floor")->trigger();
    QVERIFY(settled(window) && shell(window).floors.size() == 1);
    window.action("add_floor")->trigger();
    QVERIFY(settled(window) && shell(window).floors.size() == 1);
    QVERIFY(window.findChild<QLabel *>("hint")->text().contains("6' 8\" between their tops"));
    // No beam: its fields take nothing and say so.
    LengthEdit &beam = *window.floors().field("beam_width");
    QVERIFY(!beam.isEnabled() && beam.placeholderText().contains("no beam"));
    QVERIFY(beam.palette().color(QPalette::Disabled, QPalette::Base) !=
            beam.palette().color(QPalette::Active, QPalette::Base));
    keep_picture(window, "floor-without-beam");
    window.floors().add_beam();
    QVERIFY(settled(window) && beam.isEnabled() && beam.placeholderText().isEmpty());
    window.close_document();
}

/// Two floors stated at one height: all of it is laid out, and none of it can be built.
void EditsTest::what_shares_wood_does_not_stand() {
    MainWindow window(kept());
    window.show();
    const Shell one =
        *with_fitting_floor(*shell_of(usual_shell(Shape::rectangle, UnitSystem::imperial))).shell;
    window.begin(one, "Shared");
    QVERIFY(settled(window) && window.desk().state()->stands());
    QVERIFY(window.desk().edit("Twice", [](const Shell &s) {
        Shell next = s;
        next.floors.push_back(next.floors[0]);
        next.floors[1].name = "G";
        return std::optional(next);
    }));
    QVERIFY(settled(window));
    QVERIFY(has_error(window) && !window.desk().state()->stands());
    QVERIFY(window.desk().standing_is_old());
    const QWidget *model = window.model().view(); // none on a machine that draws no model
    QVERIFY2(model == nullptr || banner(*model).contains("as it last stood"), "the model says nothing");
    QVERIFY2(banner(window.plan()).contains("as stated"), "the plan says nothing");
    QVERIFY(banner(window.plan()).contains("a cube of 1'"));
    QVERIFY(!window.action("export")->isEnabled());
    keep_picture(window, "shared-wood");
    window.desk().history().undo();
    QVERIFY(settled(window) && window.desk().state()->stands());
    QVERIFY(model == nullptr || banner(*model).isEmpty());
    window.desk().history().setClean();
    window.close_document();
}

void EditsTest::a_floor_comes_is_changed_and_goes() {
    MainWindow window(kept());
    window.show();
    window.begin(*shell_of(usual_shell(Shape::tee, UnitSystem::imperial)), "Floor");
    QVERIFY(settled(window));
    const std::string first = window.desk().document().text();
    const auto floors = [&] { return window.desk().state()->read.shell->floors; };
    const auto undo_text = [&] { return window.desk().history().undoText(); };
    window.action("add_floor")->trigger();
    QVERIFY(settled(window));
    QCOMPARE(floors().size(), std::size_t(1));
    QVERIFY(!has_errors(window.desk().state()->job.findings));
    QVERIFY(!window.desk().standing()->job.layout.timbers.empty());
    QCOMPARE(undo_text(), QString("Add floor"));
    FloorPanel &panel = window.floors();
    const auto type = [&](const char *field, const char *words) {
        LengthEdit &edit = *panel.field(field);
        edit.selectAll();
        QTest::keyClicks(&edit, words);
        QTest::keyClick(&edit, Qt::Key_Return);
        return settled(window);
    };
    QVERIFY(type("spacing", "16 in"));
    QCOMPARE(floors()[0].spacing, Length::inches(16));
    QCOMPARE(undo_text(), QString("Change floor ") + text(floors()[0].name));
    QVERIFY(type("spacing", "now and then"));
    QCOMPARE(floors()[0].spacing, Length::inches(16));
    QVERIFY(panel.field("spacing")->complaint().contains("expected"));
    QVERIFY(type("first", "10 in"));
    QCOMPARE(floors()[0].first, std::optional(Length::inches(10)));
    QVERIFY(type("joist_height", "9 in"));
    QCOMPARE(floors()[0].joist.height, Length::inches(9));
    panel.add_beam();
    QVERIFY(settled(window));
    QCOMPARE(floors()[0].beams.size(), std::size_t(1));
    QVERIFY(type("beam_width", "10 in"));
    QCOMPARE(floors()[0].beams[0].size.width, Length::inches(10));
    panel.add_opening();
    QVERIFY(settled(window));
    QCOMPARE(floors()[0].openings.size(), std::size_t(1));
    QCOMPARE(undo_text(), QString("Add floor opening"));
    QVERIFY(type("opening_width", "40 in"));
    QCOMPARE(floors()[0].openings[0].width, Length::inches(40));
    QVERIFY(!has_errors(window.desk().state()->job.findings));
    panel.remove_opening();
    panel.remove_beam();
    QVERIFY(settled(window));
    QVERIFY(floors()[0].openings.empty() && floors()[0].beams.empty());
    panel.remove_floor();
    QVERIFY(settled(window));
    QVERIFY(floors().empty());
    while (window.desk().history().canUndo())
        window.desk().history().undo();
    QCOMPARE(window.desk().document().text(), first);
    window.close_document();
}

void EditsTest::a_drag_comes_to_rest_on_the_nearest_line() {
    QCOMPARE(snapped(103, {100, 110}, 5, 10).at, 100.0);
    QCOMPARE(snapped(106.2, {100, 107.5}, 5, 10).at, 107.5);
    QVERIFY(!snapped(144, {100}, 5, 10).on_line);
    QCOMPARE(snapped(144, {100}, 5, 10).at, 140.0);
}

void EditsTest::only_what_an_edit_changes_is_cut_anew_data() {
    QTest::addColumn<QString>("demo");
    for (const char *demo : {"one-room", "ell-house", "long-house", "round-cabin"})
        QTest::newRow(demo) << demo;
}

/// What is remembered is to the last digit what would be worked out anew.
void EditsTest::only_what_an_edit_changes_is_cut_anew() {
    QFETCH(const QString, demo);
    Shell shell = *Document(text_of(demo_file(demo)), "demo").read().shell;
    ModelCache cache;
    const auto work_out = [&] {
        const Layout layout = lay_out(shell);
        QVERIFY(!has_errors(layout.findings));
        const Bodies anew = bodies_of(layout), bodies = cache.bodies(layout);
        QCOMPARE(bodies.size(), anew.size());
        for (const auto i : anew.indices()) {
            QVERIFY(bodies[i].hewn.vertices == anew[i].hewn.vertices);
            QCOMPARE(bodies[i].volume, anew[i].volume);
            QCOMPARE(bodies[i].bores.size(), anew[i].bores.size());
            for (std::size_t k = 0; k < anew[i].bores.size(); ++k)
                QVERIFY(bodies[i].bores[k].peg == anew[i].bores[k].peg);
        }
        const Findings known = review(shell, layout, bodies, &cache.meetings()),
                       fresh = review(shell, layout, anew);
        QCOMPARE(known.size(), fresh.size());
        for (std::size_t i = 0; i < fresh.size(); ++i)
            QCOMPARE(sentence_of(known[i], in_english(UnitSystem::metric)),
                     sentence_of(fresh[i], in_english(UnitSystem::metric)));
        QCOMPARE(overlaps(layout, bodies, &cache.meetings()).size(), overlaps(layout, anew).size());
        cache.models();
        QVERIFY(cache.models_with_bores([] { return true; }).empty()); // told to stop
        const SceneModels models = cache.models_with_bores([] { return false; }), all = models_of(anew);
        for (std::size_t i = 0; i < all.size(); ++i)
            QVERIFY(models[i]->levels[0].triangles.size() == all[i]->levels[0].triangles.size());
    };
    work_out();
    const int at_first = cache.cut();
    QVERIFY(at_first > 0);
    work_out(); // nothing has changed
    QCOMPARE(cache.cut(), 0);
    shell.openings.front().from_left = shell.openings.front().from_left + Length::mm(10);
    work_out();
    QVERIFY2(cache.cut() > 0 && cache.cut() < at_first, qPrintable(QString::number(cache.cut())));
    shell.openings.front().name = "another name"; // the same wood
    work_out();
    QCOMPARE(cache.cut(), 0);
}

void EditsTest::bores_come_when_the_hand_rests() {
    Workshop workshop;
    std::vector<StatePtr> states;
    connect(
        &workshop, &Workshop::worked, this, [&](const StatePtr &s) { states.push_back(s); },
        Qt::QueuedConnection);
    const Document document(text_of(demo_file("round-cabin")), "round");
    workshop.ask_for(document, 1);
    QTRY_COMPARE_WITH_TIMEOUT(states.size(), std::size_t(2), 60'000);
    QVERIFY(states[0]->lacks_bores && states[0]->stands());
    QVERIFY(!states[1]->lacks_bores && states[1]->revision == 1);
    const SceneModels all = models_of(states[1]->job.bodies);
    bool fewer = false;
    for (std::size_t i = 0; i < all.size(); ++i) {
        const auto triangles = [i](const StatePtr &s) { return s->models[i]->levels[0].triangles.size(); };
        fewer = fewer || triangles(states[0]) < all[i]->levels[0].triangles.size();
        QCOMPARE(triangles(states[1]), all[i]->levels[0].triangles.size());
    }
    QVERIFY(fewer);
    workshop.ask_for(document, 2); // all of it is known: nothing is carved again
    QTRY_COMPARE_WITH_TIMEOUT(states.size(), std::size_t(3), 60'000);
    QVERIFY(!states[2]->lacks_bores);
}

int main(int argc, char **argv) {
    const TestProgram program(argc, argv);
    EditsTest test;
    return QTest::qExec(&test, argc, argv);
}

#include "edits_test.moc"
