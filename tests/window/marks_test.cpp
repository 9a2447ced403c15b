// What lies over the drawings: partitions that are being drawn, words, tags, marks and legends.
#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/faults.h"
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
#include "modeler/window/views/record_marks.h"
#include "modeler/window/views/scene_view.h"
#include "modeler/window/views/sheet_view.h"
#include "modeler/window/views/stand_banner.h"
#include "tests/window/support/window_test.h"

#include <QAction>
#include <QComboBox>
#include <QDockWidget>
#include <QLabel>
#include <QLineEdit>
#include <QSlider>
#include <QTest>
#include <cmath>

using namespace roundlay;
using namespace roundlay::window;

namespace {

/// How often it gets lighter or darker by more than a shade from one end of a line to the other.
int changes_along(const QImage &grey, QPointF from, QPointF to) {
    constexpr int shade = 12;
    int changes = 0;
    const int steps = static_cast<int>(QLineF(from, to).length());
    int before = -1;
    for (int i = 0; i <= steps; ++i) {
        const QPointF at = from + (to - from) * i / steps;
        const int now = qGray(grey.pixel(at.toPoint()));
        changes += before >= 0 && std::abs(now - before) > shade ? 1 : 0;
        before = now;
    }
    return changes;
}

} // namespace

class MarksTest : public WindowTest {
    Q_OBJECT

  private slots:
    void a_partition_is_drawn_by_two_clicks();
    void a_partition_that_does_not_fit_says_why();
    void a_partition_drawn_to_another_ends_there();
    void words_in_the_plan_lie_over_no_wall();
    void tags_go_with_the_logs_that_a_section_cuts_away();
    void what_is_chosen_is_marked_without_colour();
    void every_colouring_has_a_legend();
    void a_condition_told_in_the_words_of_zones_has_their_colour();
};

void MarksTest::a_partition_is_drawn_by_two_clicks() {
    MainWindow window(kept());
    QVERIFY(shown(window, a_room(), "Clicks"));
    QTest::qWait(200);
    PlanView &plan = window.plan();
    const auto &walls = window.desk().standing()->job.layout.walls;
    const double across = walls[Index<WallPlace>(1)].length; // wall C lies this far from A
    const std::string first = window.desk().document().text();
    window.action("draw_partition")->trigger();
    click(plan, {3000, 60});
    QVERIFY(plan.is_drawing());
    QVERIFY(settled(window));
    click(plan, {walls.front().length - 60, across / 2}); // wall B is not where it ends
    QVERIFY(plan.is_drawing());
    click(plan, {3100, across - 60});
    QVERIFY(settled(window));
    QVERIFY(!plan.is_drawing());
    const auto &partitions = window.desk().standing()->job.shell.partitions;
    QCOMPARE(partitions.size(), std::size_t(1));
    QCOMPARE(partitions[0].from_left, Length::mm(3000)); // where it was begun
    QCOMPARE(partitions[0].to, std::string("C"));
    QCOMPARE(window.desk().history().undoText(), QString("Draw partition"));
    window.desk().history().undo();
    QCOMPARE(window.desk().document().text(), first);
    QVERIFY(settled(window));
    window.action("draw_partition")->trigger();
    click(plan, {3000, 60});
    QTest::keyClick(&plan, Qt::Key_Escape);
    QVERIFY(!plan.is_drawing());
    QCOMPARE(window.desk().document().text(), first);
    window.desk().history().setClean();
}

void MarksTest::a_partition_that_does_not_fit_says_why() {
    MainWindow window(kept());
    QVERIFY(shown(window, a_room(), "Unfit"));
    QTest::qWait(200);
    PlanView &plan = window.plan();
    const std::string first = window.desk().document().text();
    QString hint;
    connect(&plan, &DrawingView::hinted, this, [&](const QString &words) { hint = words; });
    window.action("draw_partition")->trigger();
    click(plan, {240, 60}); // in the corner
    QVERIFY2(hint.contains("does not fit: "), qPrintable(hint));
    QVERIFY(hint.section("does not fit: ", 1).size() > 10);
    keep_picture(window, "views-partition-unfit");
    click(plan, {700, 3000});
    QVERIFY2(plan.is_drawing() && hint.contains("does not fit: "), qPrintable(hint)); // nor by a second click
    QCOMPARE(window.desk().document().text(), first);
    QTest::keyClick(&plan, Qt::Key_Escape);
    QCOMPARE(window.desk().document().text(), first);
}

void MarksTest::a_partition_drawn_to_another_ends_there() {
    MainWindow window(kept());
    QVERIFY(shown(window, a_room(), "Ended"));
    QTest::qWait(200);
    PlanView &plan = window.plan();
    const auto width = shell(window).walls[0].length.mm(), depth = shell(window).walls[1].length.mm();
    window.action("draw_partition")->trigger();
    click(plan, {width / 2, 60});
    click(plan, {width / 2, depth - 60});
    QVERIFY(settled(window));
    QCOMPARE(shell(window).partitions.size(), std::size_t(1));
    const std::string first = shell(window).partitions[0].name;
    window.action("draw_partition")->trigger();
    click(plan, {60, depth / 2});        // on the west side
    click(plan, {width / 2, depth / 2}); // on the partition
    QVERIFY(settled(window));
    QCOMPARE(shell(window).partitions.size(), std::size_t(2));
    QCOMPARE(shell(window).partitions[1].to, first);
    window.desk().history().setClean();
}

void MarksTest::words_in_the_plan_lie_over_no_wall() {
    MainWindow window(kept());
    window.show();
    for (const QSize size : {QSize(1024, 700), QSize(1400, 900)})
        for (int demo = 0; demo < 3; ++demo) {
            window.resize(size);
            window.begin_demo(demo);
            QVERIFY(settled(window));
            PlanView &plan = window.plan();
            plan.grab();
            QVERIFY(!plan.label_boxes().empty());
            for (const WallPlace &w : window.desk().standing()->job.layout.walls) {
                QPolygonF wall;
                for (const auto &[x, y] : {std::pair(0.0, 0.0), std::pair(w.length, 0.0),
                                           std::pair(w.length, w.thickness), std::pair(0.0, w.thickness)}) {
                    const Vec3 p = w.frame.to_world({x, y, 0});
                    wall << plan.to_screen({p.x, p.y});
                }
                for (const QRectF &box : plan.label_boxes())
                    QVERIFY2(!wall.intersects(QPolygonF(box)), w.name.c_str());
            }
            window.close_document();
        }
}

void MarksTest::tags_go_with_the_logs_that_a_section_cuts_away() {
    MainWindow window(kept());
    QVERIFY(shown(window, a_room(), "Section"));
    QTest::qWait(200);
    ModelPage &model = window.model();
    const Layout &layout = window.desk().standing()->job.layout;
    QComboBox *section = nullptr;
    for (QComboBox *box : model.findChildren<QComboBox *>())
        if (box->accessibleName() == "Section plane") section = box;
    QVERIFY(section != nullptr);
    const auto in_sight = [&](const char *tag) {
        window.selection().choose_piece(layout, *piece_tagged(layout, tag));
        return model.view()->labels_in_sight();
    };
    QCOMPARE(in_sight("A-10-1"), 1);
    section->setCurrentIndex(3); // from above, half way up
    QCOMPARE(in_sight("A-10-1"), 0);
    QCOMPARE(in_sight("A-01-1"), 1);
    model.show_labels(true);
    keep_picture(window, "views-section-with-tags");
    section->setCurrentIndex(0);
    QCOMPARE(in_sight("A-10-1") > 0, true);
}

/// A line along the middle of a wall changes often where stripes lie over it.
void MarksTest::what_is_chosen_is_marked_without_colour() {
    MainWindow window(kept());
    QVERIFY(shown(window, a_room(), "Marks"));
    QTest::qWait(300);
    PlanView &plan = window.plan();
    const QPointF from = plan.to_screen({1500, 90}), to = plan.to_screen({8000, 90});
    window.selection().clear();
    const int plain = changes_along(greys(plan), from, to);
    window.selection().choose_wall("A");
    const int marked = changes_along(greys(plan), from, to);
    QVERIFY2(marked > plain + 10, qPrintable(QStringLiteral("%1, %2").arg(plain).arg(marked)));
    ElevationView &elevation = window.elevation();
    const QPointF left = elevation.to_screen({1500, 130}), right = elevation.to_screen({8000, 130});
    const int plain_log = changes_along(greys(elevation), left, right);
    window.selection().choose_piece(window.desk().standing()->job.layout, Index<Piece>(0));
    const int marked_log = changes_along(greys(elevation), left, right);
    QVERIFY2(marked_log > plain_log + 10,
             qPrintable(QStringLiteral("%1, %2").arg(plain_log).arg(marked_log)));
    const auto &instances = window.model().view()->scene().instances;
    QVERIFY(instances[0].marked && !instances[1].marked);
    keep_picture(window, "views-chosen");
    // A corner has its name over it in the model, and a line through it in the elevation.
    const int plain_corner =
        changes_along(greys(elevation), elevation.to_screen({9000, -150}), elevation.to_screen({9700, -150}));
    window.selection().choose_corner("AB");
    QCOMPARE(window.model().view()->labels_in_sight(), 1);
    QVERIFY(changes_along(greys(elevation), elevation.to_screen({9000, -150}),
                          elevation.to_screen({9700, -150})) > plain_corner);
    keep_picture(window, "views-corner-chosen");
}

void MarksTest::a_condition_told_in_the_words_of_zones_has_their_colour() {
    FoundLog log;
    const auto mark = [&](const char *condition) {
        log.condition = condition;
        return condition_mark(log, log.zones);
    };
    QCOMPARE(mark(""), std::size_t(0));
    QCOMPARE(mark("sound"), condition_mark(Soundness::sound));
    QCOMPARE(mark(" Sound "), condition_mark(Soundness::sound));
    QCOMPARE(mark("rotten"), condition_mark(Soundness::rotten));
    QVERIFY(mark("rotten at DE") != condition_mark(Soundness::rotten));
    QVERIFY(mark("rotten at DE") != condition_mark(Soundness::sound));
    log.zones.push_back({});
    log.zones.back().what = Soundness::soft;
    QCOMPARE(mark("sound"), condition_mark(Soundness::soft)); // the worst of what was found
}

void MarksTest::every_colouring_has_a_legend() {
    MainWindow window(kept());
    QVERIFY(shown_demo(window, 1));
    Legend &model = window.model().view()->legend_panel();
    std::vector<std::vector<LegendEntry>> seen;
    for (const Colouring colouring :
         {Colouring::wall, Colouring::finding, Colouring::alike, Colouring::fabric}) {
        window.model().set_colouring(colouring);
        QVERIFY(model.isVisible() && model.entries().size() > 2);
        QVERIFY(model.entries().back().words == "chosen" && model.entries().back().pattern != Qt::NoBrush);
        for (const auto &other : seen)
            QVERIFY(other != model.entries());
        seen.push_back(model.entries());
    }
    QVERIFY(!window.plan().legend_panel().isVisible());
    const double before = window.elevation().scale();
    QVERIFY(window.action("legend")->isChecked()); // while any shows
    window.action("legend")->trigger();
    QVERIFY(!model.isVisible() && !window.action("legend")->isChecked());
    window.action("legend")->trigger();
    QVERIFY(model.isVisible() && window.action("legend")->isChecked());
    QTRY_VERIFY(window.plan().legend_panel().isVisible());
    QTRY_VERIFY(window.elevation().legend_panel().isVisible());
    QVERIFY2(window.elevation().scale() > before / 2, "the legend leaves the wall no room");
    QVERIFY(window.elevation().legend_panel().isVisible());
    keep_picture(window, "views-legends");
    for (const WallPlace &w : window.desk().standing()->job.layout.walls) { // the drawing makes room for it
        const QPoint corner = window.plan().to_screen({w.frame.origin.x, w.frame.origin.y}).toPoint();
        QVERIFY2(!window.plan().legend_panel().geometry().contains(corner), w.name.c_str());
    }
    window.action("legend")->trigger();
    QVERIFY(!model.isVisible() && !window.plan().legend_panel().isVisible());
    QVERIFY(!window.action("legend")->isChecked());
    window.show_legend(true, &model);
    QVERIFY(model.isVisible() && window.action("legend")->isChecked());
}

int main(int argc, char **argv) {
    return run_test<MarksTest>(argc, argv);
}

#include "marks_test.moc"
