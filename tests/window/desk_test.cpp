// The document on the desk, recovery, fields and keyboard, on a machine that draws no model.
#include "kernel/design/opening_edits.h"
#include "kernel/design/shell_edits.h"
#include "kernel/document/restate.h"
#include "kernel/layout/pieces/finding_pieces.h"
#include "kernel/shell/partition_edit.h"
#include "kernel/shell/plan_edit.h"
#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/kernel_words.h"
#include "modeler/window/desk/recovery.h"
#include "modeler/window/desk/selection.h"
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
#include "tests/window/support/window_test.h"

#include <QAction>
#include <QClipboard>
#include <QGuiApplication>
#include <QLabel>
#include <QLineEdit>
#include <QMenuBar>
#include <QProcess>
#include <QTableView>
#include <QTest>
#include <QTranslator>
#include <QTreeWidget>

using namespace roundlay;
using namespace roundlay::window;

class DeskTest : public WindowTest {
    Q_OBJECT

  private slots:
    void an_edit_is_undone_and_done_again_to_the_letter();
    void an_edit_leaves_the_states_of_the_house_alone();
    void a_file_that_changed_on_the_disk_is_noticed();
    void a_full_disk_keeps_the_work();
    void errors_of_a_document_are_shown_with_their_lines();
    void unsaved_work_survives_two_crashes();
    void units_switch_and_the_shell_stays();
    void advice_waits_until_a_drag_rests();
};

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

/// It takes many layouts, and nobody reads it while a hand moves.
void DeskTest::advice_waits_until_a_drag_rests() {
    Desk desk;
    desk.begin(
        "Dragged",
        write_document(with_opening(*shell_of(usual_shell(Shape::rectangle, UnitSystem::metric)),
                                    usual_opening(OpeningKind::window, "A", UnitSystem::metric), {4000, {}})
                           ->shell));
    QTRY_VERIFY(desk.is_current());
    const auto too_near = [&]() -> const Finding * {
        for (const Finding &f : desk.state()->job.findings)
            if (f.code == "opening-cuts-corner") return &f;
        return nullptr;
    };
    const auto moved_to = [](double x) {
        return [x](const Shell &s) {
            Shell next = s;
            next.openings[0].from_left = Length::mm(x);
            return std::optional(next);
        };
    };
    int states = 0;
    connect(&desk, &Desk::state_changed, this, [&states] { ++states; });
    desk.show(moved_to(10));
    QTRY_VERIFY(desk.is_current());
    QVERIFY(too_near() && !too_near()->advice && desk.state()->lacks_advice);
    QTRY_VERIFY(too_near() && too_near()->advice); // it rests
    QVERIFY(!desk.state()->lacks_advice && states == 2);
    desk.show(moved_to(11));
    QTRY_VERIFY(desk.is_current());
    desk.settle("Move opening"); // or ends
    QVERIFY(!desk.is_current());
    QTRY_VERIFY(desk.is_current());
    QVERIFY(too_near() && too_near()->advice);
    // What stands has nothing to wait for.
    desk.show(moved_to(3000));
    QTRY_VERIFY(desk.is_current());
    QVERIFY(!desk.state()->lacks_advice && desk.state()->stands());
    desk.settle("Move opening");
    QVERIFY(desk.is_current());
}

/// Edits go to the document's own shell. A state may say more than the window shows.
void DeskTest::an_edit_leaves_the_states_of_the_house_alone() {
    const std::string states =
        "\n# Kept as it is typed.\n[[state]]\nname   =  \"as first built\"\n\n[[state.log]]\nwall = "
        "\"B\"\nround = 2\nnote = \"was longer\"\n\n[state.pegs]\nspacing = \"4 ft\"\n";
    MainWindow window(kept());
    QVERIFY(window.open(copy_of("ell-house")));
    QVERIFY(settled(window));
    std::string text = window.desk().document().text();
    text.insert(text.find("[shell]\n") + 8, "state = \"as found\"\n");
    const QString path = folder_.filePath("states.roundlay");
    QFile file(path);
    QVERIFY(file.open(QIODevice::WriteOnly));
    file.write(QByteArray::fromStdString(text + states));
    file.close();
    QVERIFY(window.open(path));
    QVERIFY(settled(window));
    QVERIFY(window.desk().document().read().states.size() == 2);
    QVERIFY(window.desk().edit("thicker", [](const Shell &s) {
        Shell next = s;
        next.thickness = Length::inches(9);
        next.pegs.spacing = Length::inches(50);
        next.own_logs.push_back({});
        next.own_logs.back().wall = "A", next.own_logs.back().round = 3, next.own_logs.back().note = "new";
        return std::optional(next);
    }));
    const std::string after = window.desk().document().text();
    QVERIFY(after.find(states) != std::string::npos);
    const ReadResult read = window.desk().document().read();
    QVERIFY(read.shell && read.shell->own_logs.back().note == "new" && read.states.size() == 2);
    window.desk().history().undo();
    QVERIFY(window.desk().document().text() == text + states);
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
