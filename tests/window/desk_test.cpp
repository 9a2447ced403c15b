// The document on the desk, recovery, fields and keyboard, on a machine that draws no model.
#include "kernel/document/restate.h"
#include "kernel/layout/finding_pieces.h"
#include "kernel/shell/partition_edit.h"
#include "kernel/shell/plan_edit.h"
#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/kernel_words.h"
#include "modeler/window/desk/recovery.h"
#include "modeler/window/desk/selection.h"
#include "modeler/window/desk/shell_edits.h"
#include "modeler/window/desk/snap.h"
#include "modeler/window/desk/words.h"
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
#include "tests/window/support.h"

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

class DeskTest : public QObject {
    Q_OBJECT

  private slots:
    void a_wall_moves_and_the_plan_stays_closed();
    void an_edit_is_undone_and_done_again_to_the_letter();
    void what_is_restated_reads_back_as_meant();
    void round_logs_leave_no_air_in_their_elevation();
    void a_partition_comes_moves_and_goes();
    void a_new_opening_brings_no_warning();
    void a_floor_comes_is_changed_and_goes();
    void nonsense_in_a_length_field_keeps_the_old_value();
    void a_drag_comes_to_rest_on_the_nearest_line();
    void a_file_that_changed_on_the_disk_is_noticed();
    void a_full_disk_keeps_the_work();
    void errors_of_a_document_are_shown_with_their_lines();
    void unsaved_work_survives_two_crashes();
    void the_keyboard_alone_is_enough();
    void the_tab_key_goes_everywhere_and_comes_back();
    void units_switch_and_the_shell_stays();
    void the_cut_list_is_sorted_filtered_and_copied();
    void a_log_is_stated_and_what_has_no_field_stays();
    void what_can_hurt_is_said_with_its_caution();
    void a_joist_is_chosen_like_a_log();
    void the_window_speaks_french();
    void without_opengl_a_sentence_stands_where_the_model_would_be();

  private:
    QTemporaryDir folder_;
    QString kept() const { return folder_.filePath(QStringLiteral("unsaved")); }
    QString copy_of(const QString &demo) const;
};

QString DeskTest::copy_of(const QString &demo) const {
    const QString path = folder_.filePath(demo + QStringLiteral(".roundlay"));
    QFile::remove(path);
    QFile::copy(demo_file(demo), path);
    return path;
}

void DeskTest::a_wall_moves_and_the_plan_stays_closed() {
    const Shell before = *read_document_file(demo_file("ell-house").toStdString()).shell;
    for (std::size_t wall = 0; wall < before.walls.size(); ++wall) {
        const auto after = wall_moved(before, wall, Length::mm(300));
        QVERIFY(after);
        const Layout layout = lay_out(*after);
        for (const Finding &f : layout.findings)
            QVERIFY2(f.code != "plan-not-closed", f.message.c_str());
        QCOMPARE(layout.walls.size(), before.walls.size());
    }
    QVERIFY(!wall_moved(before, 0, Length::metres(-40))); // its neighbours would have no length left
    const auto longer = wall_lengthened(before, 0, Length::feet(40));
    QVERIFY(longer && longer->walls[0].length == Length::feet(40));
}

void DeskTest::an_edit_is_undone_and_done_again_to_the_letter() {
    MainWindow window(kept());
    QVERIFY(window.open(copy_of("ell-house")));
    QVERIFY(settled(window));
    const std::string before = window.desk().document().text();
    QVERIFY(window.desk().edit("thicker", [](const Shell &s) {
        Shell next = s;
        next.thickness = Length::inches(9);
        return std::optional(next);
    }));
    const std::string after = window.desk().document().text();
    QVERIFY(after != before && window.desk().unsaved());
    QCOMPARE(window.desk().history().undoText(), QString("thicker"));
    window.desk().history().undo();
    QCOMPARE(window.desk().document().text(), before);
    QVERIFY(!window.desk().unsaved());
    window.desk().history().redo();
    QCOMPARE(window.desk().document().text(), after);
    // Only the one statement has changed.
    const auto lines = text(before).split('\n'), now = text(after).split('\n');
    QCOMPARE(lines.size(), now.size());
    int different = 0;
    for (qsizetype i = 0; i < lines.size(); ++i)
        different += lines[i] != now[i] ? 1 : 0;
    QCOMPARE(different, 1);
    window.desk().history().undo();
}

void DeskTest::what_is_restated_reads_back_as_meant() {
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

void DeskTest::round_logs_leave_no_air_in_their_elevation() {
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
                if (!hole)
                    QVERIFY2(wood, qPrintable(QStringLiteral("%1: %2, %3").arg(wall).arg(x).arg(z)));
            }
    }
    window.selection().choose_wall("A");
    QCOMPARE(window.elevation().scene().bores.size(), std::size_t(2));
    QCOMPARE(window.elevation().scene().bores.front().mark, std::string("rod 1"));
}

void DeskTest::a_partition_comes_moves_and_goes() {
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

void DeskTest::a_new_opening_brings_no_warning() {
    for (const UnitSystem units : {UnitSystem::metric, UnitSystem::imperial})
        for (const OpeningKind kind : {OpeningKind::window, OpeningKind::door}) {
            const Shell shell = *shell_of(usual_shell(Shape::rectangle, units));
            const auto next = with_opening(shell, usual_opening(kind, "A", units), 4000);
            QVERIFY(next);
            for (const Finding &f : lay_out(*next).findings)
                QVERIFY2(f.weight == Weight::note, f.message.c_str());
        }
}

void DeskTest::a_floor_comes_is_changed_and_goes() {
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

void DeskTest::nonsense_in_a_length_field_keeps_the_old_value() {
    LengthEdit edit;
    edit.set_length(Length::mm(230), UnitSystem::metric);
    edit.selectAll();
    QTest::keyClicks(&edit, "about a foot");
    QTest::keyClick(&edit, Qt::Key_Return);
    QCOMPARE(edit.length(), Length::mm(230));
    QVERIFY(edit.complaint().contains("expected"));
    edit.selectAll();
    QTest::keyClicks(&edit, "8 1/2 in");
    QTest::keyClick(&edit, Qt::Key_Return);
    QCOMPARE(edit.length(), Length::inches(8.5));
    QVERIFY(edit.complaint().isEmpty());
}

void DeskTest::a_drag_comes_to_rest_on_the_nearest_line() {
    QCOMPARE(snapped(103, {100, 110}, 5, 10).at, 100.0);
    QCOMPARE(snapped(106.2, {100, 107.5}, 5, 10).at, 107.5);
    QVERIFY(!snapped(144, {100}, 5, 10).on_line);
    QCOMPARE(snapped(144, {100}, 5, 10).at, 140.0);
}

void DeskTest::a_file_that_changed_on_the_disk_is_noticed() {
    MainWindow window(kept());
    const QString path = copy_of("one-room");
    QVERIFY(window.open(path));
    QFile file(path);
    QVERIFY(file.open(QIODevice::Append));
    file.write("# somebody else was here\n");
    file.close();
    QTRY_VERIFY(!window.message().sentence().isEmpty());
    window.message().answer(0); // load it
    QVERIFY(window.desk().document().text().ends_with("somebody else was here\n"));
}

void DeskTest::a_full_disk_keeps_the_work() {
    MainWindow window(kept());
    window.begin(*shell_of(usual_shell(Shape::rectangle, UnitSystem::metric)), "Made");
    const std::string text = window.desk().document().text();
    QVERIFY(!window.save_to("/dev/full"));
    QVERIFY(!window.message().sentence().isEmpty());
    QVERIFY(window.desk().unsaved());
    QCOMPARE(window.desk().document().text(), text);
    window.close_document();
}

void DeskTest::errors_of_a_document_are_shown_with_their_lines() {
    const QString path = folder_.filePath("broken.roundlay");
    const QByteArray broken = "roundlay = 1\n[shell]\nthickness = \"eight\"\nwidht = 3\n";
    QFile file(path);
    QVERIFY(file.open(QIODevice::WriteOnly));
    file.write(broken);
    file.close();
    MainWindow window(kept());
    QVERIFY(window.open(path));
    QVERIFY(settled(window));
    QVERIFY(window.findings().count() >= 2);
    bool third = false;
    for (auto *item : window.findings().tree()->findItems("line 3", Qt::MatchContains | Qt::MatchRecursive))
        third = third || item->text(0) == "line 3";
    QVERIFY(third);
    QVERIFY(file.open(QIODevice::ReadOnly));
    QCOMPARE(file.readAll(), broken);
}

void DeskTest::unsaved_work_survives_two_crashes() {
    for (const char *mode : {"--begin", "--recover"}) { // the second recovers, and is killed in its turn
        QProcess other;
        other.start(QCoreApplication::applicationFilePath(), {mode, kept()});
        QVERIFY(other.waitForReadyRead(20'000));
        QVERIFY(other.readAll().contains("kept"));
        other.kill(); // SIGKILL
        other.waitForFinished();
    }
    MainWindow window(kept());
    window.offer_recovery();
    QVERIFY(!window.message().sentence().isEmpty());
    window.message().answer(0);
    QVERIFY(settled(window));
    QVERIFY(window.desk().path().isEmpty()); // it was never saved
    QCOMPARE(window.desk().state()->job.shell.name, std::string("twice crashed"));
    QVERIFY(window.desk().unsaved());
    window.close_document();
    QVERIFY(Recovery(kept()).left_behind().empty());
}

void DeskTest::the_keyboard_alone_is_enough() {
    MainWindow window(kept());
    window.show();
    QVERIFY(QTest::qWaitForWindowActive(&window));
    window.begin_demo(1);
    QVERIFY(settled(window));
    window.plan().setFocus();
    QTest::keyClick(&window.plan(), Qt::Key_PageDown);
    QCOMPARE(window.selection().wall(), std::string("A"));
    const double before = window.desk().standing()->job.shell.walls[1].length.mm();
    QTest::keyClick(&window.plan(), Qt::Key_Up);
    QVERIFY(settled(window));
    QCOMPARE(window.desk().standing()->job.shell.walls[1].length.mm(),
             before + grid_step(UnitSystem::imperial));
    window.elevation().setFocus();
    QTest::keyClick(&window.elevation(), Qt::Key_PageDown);
    QVERIFY(window.selection().is_opening(0));
    const double left = window.desk().standing()->job.shell.openings[0].from_left.mm();
    QTest::keyClick(&window.elevation(), Qt::Key_Right);
    QTest::keyClick(&window.elevation(), Qt::Key_Right, Qt::ControlModifier);
    QVERIFY(settled(window));
    QCOMPARE(window.desk().standing()->job.shell.openings[0].from_left.mm(),
             left + grid_step(UnitSystem::imperial));
    const auto openings = window.desk().standing()->job.shell.openings.size();
    QTest::keyClick(&window, Qt::Key_Delete);
    QVERIFY(settled(window));
    QCOMPARE(window.desk().standing()->job.shell.openings.size(), openings - 1);
    QTest::keyClick(&window, Qt::Key_Z, Qt::ControlModifier);
    QVERIFY(settled(window));
    QCOMPARE(window.desk().standing()->job.shell.openings.size(), openings);
    QTest::keyClick(&window, Qt::Key_Period, Qt::ControlModifier);
    QCOMPARE(window.selection().chosen().kind, Chosen::Kind::piece);
    window.close_document();
}

void DeskTest::the_tab_key_goes_everywhere_and_comes_back() {
    MainWindow window(kept());
    window.show();
    window.begin_demo(1);
    QVERIFY(settled(window));
    QVERIFY(QTest::qWaitForWindowActive(&window));
    window.findChild<QWidget *>("text")->raise(); // a field for text must let the tab key go
    window.plan().setFocus();
    QSet<const QWidget *> seen;
    constexpr int most = 200;
    for (int i = 0; i < most; ++i) {
        const QWidget *now = QApplication::focusWidget();
        QVERIFY(now != nullptr);
        if (now == &window.plan() && i > 0) break;
        seen.insert(now);
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
    }
    QCOMPARE(QApplication::focusWidget(), &window.plan()); // round once
    QStringList missed;
    for (const QWidget *w : window.findChildren<QWidget *>())
        if (w->isVisible() && w->isEnabled() && (w->focusPolicy() & Qt::TabFocus) &&
            w->focusProxy() == nullptr && !seen.contains(w))
            missed << QString::fromLatin1(w->metaObject()->className()) + u' ' + w->accessibleName();
    QCOMPARE(missed, QStringList());
    window.close_document();
}

void DeskTest::units_switch_and_the_shell_stays() {
    MainWindow window(kept());
    window.begin_demo(0);
    QVERIFY(settled(window));
    const Shell before = window.desk().standing()->job.shell;
    window.selection().choose_opening(before, 0);
    QVERIFY(window.log().field("width")->text().contains('\''));
    window.action("units")->trigger();
    QVERIFY(settled(window));
    QVERIFY(window.log().field("width")->text().endsWith(" mm"));
    Shell after = window.desk().standing()->job.shell;
    QCOMPARE(after.units, UnitSystem::metric);
    after.units = before.units;
    QVERIFY(after == before);
    window.close_document();
}

void DeskTest::the_cut_list_is_sorted_filtered_and_copied() {
    MainWindow window(kept());
    window.begin_demo(1);
    QVERIFY(settled(window));
    window.cut_list().show();
    window.show();
    window.findChild<QWidget *>("cut_list")->raise();
    QTRY_VERIFY(window.cut_list().isVisible());
    QTableView &table = *window.cut_list().table();
    const int all = table.model()->rowCount();
    QCOMPARE(all, static_cast<int>(window.desk().standing()->job.layout.pieces.size()));
    window.cut_list().filter()->setText("C-0");
    QVERIFY(table.model()->rowCount() > 0 && table.model()->rowCount() < all);
    window.cut_list().copy();
    const QStringList lines = QGuiApplication::clipboard()->text().trimmed().split('\n');
    QCOMPARE(lines.size(), table.model()->rowCount() + 1);
    QVERIFY(lines[1].contains('\t'));
    window.close_document();
}

void DeskTest::a_log_is_stated_and_what_has_no_field_stays() {
    MainWindow window(kept());
    Shell shell = *shell_of(usual_shell(Shape::rectangle, UnitSystem::metric));
    OwnLog stated;
    stated.wall = shell.walls[1].name;
    stated.round = 2;
    stated.notch.overhang_left = Length::mm(80);
    shell.own_logs.push_back(stated);
    window.begin(shell, "A log");
    QVERIFY(settled(window));
    QVERIFY(window.desk().standing() != nullptr);
    const Layout &layout = window.desk().standing()->job.layout;
    window.selection().choose_piece(layout, piece_tagged(layout, shell.walls[1].name + "-02-1"));
    auto *mark = window.log().findChild<QLineEdit *>("mark");
    QVERIFY(mark != nullptr);
    QTest::keyClicks(mark, "IX");
    QTest::keyClick(mark, Qt::Key_Return);
    QVERIFY(settled(window));
    stated.mark = "IX";
    QCOMPARE(window.desk().standing()->job.shell.own_logs.size(), std::size_t(1));
    QVERIFY(window.desk().standing()->job.shell.own_logs[0] == stated);
    window.close_document();
}

void DeskTest::what_can_hurt_is_said_with_its_caution() {
    MainWindow window(kept());
    window.begin_demo(1);
    QVERIFY(settled(window));
    const State &state = *window.desk().standing();
    QVERIFY(!words_of_piece(state, 0).contains("Screened span")); // a log of a wall
    QVERIFY(words_of_piece(state, 0).contains("no lift plan"));
    QVERIFY(words_of_opening(state, 0).contains("Ontario Building Code"));
    QVERIFY(words_of_opening(state, 0).contains("by 6 percent it would be"));
    QVERIFY(words_of_opening(state, 0).contains("licensed professional"));
    QCOMPARE(weight_text(320.2 * 0.45359237, 321.5 * 0.45359237, UnitSystem::imperial), QString("325 to 325 lb"));
    window.close_document();
}

void DeskTest::a_joist_is_chosen_like_a_log() {
    MainWindow window(kept());
    window.begin_demo(1);
    QVERIFY(settled(window));
    const Layout &layout = window.desk().standing()->job.layout;
    QVERIFY(!layout.timbers.empty());
    const std::string corner = window.selection().corner();
    for (const Timber &timber : layout.timbers) {
        window.selection().choose_piece(layout, timber.piece);
        QCOMPARE(window.selection().corner(), corner); // none of its ends is at one
        QVERIFY(!window.log().words().isEmpty());
        QVERIFY(!window.log().field("butt_height")->isVisibleTo(&window.log()));
        const QString words = words_of_piece(*window.desk().standing(), timber.piece);
        for (const char *told : {"Screened span", "Bends under the live load", "no design value", "never an approval",
                                 "Its round log", "no lift plan"})
            QVERIFY2(words.contains(told), told);
    }
    window.grab();
    window.close_document();
}

void DeskTest::the_window_speaks_french() {
    const auto translator = own_translator(QLocale(QLocale::French, QLocale::France));
    QVERIFY(translator != nullptr);
    QApplication::installTranslator(translator.get());
    MainWindow window(kept());
    const auto menus = window.menuBar()->actions();
    QCOMPARE(menus.front()->text(), QStringLiteral("&Fichier"));
    // What the kernel says, too, down to what stands in its sentences.
    QCOMPARE(kernel_words(QStringLiteral("sill log")), QStringLiteral("pièce de seuil"));
    QCOMPARE(kernel_place("wall C, round 7"), QStringLiteral("mur C, rang 7"));
    QCOMPARE(kernel_words(QStringLiteral("jamb of hall %1 pair")), QStringLiteral("jambage de hall %1 pair"));
    window.begin_demo(1);
    QVERIFY(settled(window));
    window.desk().edit("wide", [](const Shell &s) {
        Shell next = s;
        next.openings[0].width = Length::feet(90);
        next.units = UnitSystem::metric;
        return std::optional(next);
    });
    QVERIFY(settled(window));
    const QTreeWidgetItem *item = window.findings().tree()->topLevelItem(0)->child(0);
    QCOMPARE(item->text(0), QStringLiteral("mur A, front pair, left"));
    QVERIFY2(item->text(1).startsWith("elle est large de 27432 mm ; entre les angles du mur A"),
             qPrintable(item->text(1)));
    for (const Finding &f : window.desk().state()->job.findings)
        QVERIFY2(is_kernel_phrase(text(f.message)), f.message.c_str());
    QVERIFY(!is_kernel_phrase(QStringLiteral("nobody says this")));
    window.close_document();
    QApplication::removeTranslator(translator.get());
}

void DeskTest::without_opengl_a_sentence_stands_where_the_model_would_be() {
    MainWindow window(kept());
    QVERIFY(window.model().view() == nullptr);
    const auto *sentence = window.findChild<QLabel *>("no-model");
    QVERIFY(sentence != nullptr && sentence->text().contains("OpenGL"));
}

namespace {

/// Another session, to be killed: begins or recovers work, says when it is kept, and waits for its end.
int be_killed(const QString &mode, const QString &folder) {
    MainWindow window(folder);
    if (mode == "--begin") {
        window.begin_demo(0);
        window.desk().edit("name", [](const Shell &s) {
            Shell next = s;
            next.name = "twice crashed";
            return std::optional(next);
        });
        QTest::qWait(1500); // longer than the pause before work is kept
    } else {
        window.offer_recovery();
        window.message().answer(0); // killed before anything new is kept
    }
    std::puts("kept");
    std::fflush(stdout);
    return QGuiApplication::exec();
}

} // namespace

int main(int argc, char **argv) {
    const TestProgram program(argc, argv);
    if (argc == 3 && QString(argv[1]).startsWith("--")) return be_killed(argv[1], argv[2]);
    DeskTest test;
    return QTest::qExec(&test, argc, argv);
}

#include "desk_test.moc"
