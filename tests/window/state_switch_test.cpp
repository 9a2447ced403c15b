// States of a house as a switch: which is seen, and where edits go.
#include "kernel/document/document.h"
#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/selection.h"
#include "modeler/window/desk/words.h"
#include "modeler/window/frame/application.h"
#include "modeler/window/frame/state_bar.h"
#include "modeler/window/panels/length_edit.h"
#include "modeler/window/panels/log_panel.h"
#include "modeler/window/record/at_hand.h"
#include "modeler/window/record/decide_dialog.h"
#include "modeler/window/record/faces_view.h"
#include "modeler/window/record/found_words.h"
#include "modeler/window/record/record_panel.h"
#include "modeler/window/views/elevation_view.h"
#include "modeler/window/views/model_page.h"
#include "modeler/window/views/record_marks.h"
#include "modeler/window/views/scene_view.h"
#include "tests/window/support/old_house_test.h"
#include "tests/window/support/recording.h"

#include <QAction>
#include <QApplication>
#include <QComboBox>
#include <QDockWidget>
#include <QLineEdit>
#include <QMenu>
#include <QSpinBox>
#include <QTest>
#include <QTimer>
#include <QTranslator>
#include <algorithm>

using namespace roundlay;
using namespace roundlay::window;

class StateSwitchTest : public OldHouseTest {
    Q_OBJECT

  private slots:
    void states_are_switched_and_edits_go_where_they_are_seen();
    void what_was_measured_is_seen_and_not_edited();

  private:
    void open(MainWindow &window, const QString &path) {
        window.resize(1300, 800);
        window.show();
        QVERIFY(window.open(path));
        QVERIFY(settled(window));
        QVERIFY(QTest::qWaitForWindowActive(&window));
    }
    static Opening door(const Shell &shell) {
        return *std::ranges::find(shell.openings, std::string("door"), &Opening::name);
    }
    static Shell in_state(MainWindow &window, const char *state) {
        return *read_document(window.desk().document().text(), "x", state).shell;
    }
};

void StateSwitchTest::states_are_switched_and_edits_go_where_they_are_seen() {
    MainWindow window(kept());
    open(window, old_house());
    QComboBox &states = window.states().states();
    QVERIFY(window.states().isVisible());
    QCOMPARE(states.count(), 3);
    QCOMPARE(states.currentText(), QString("as found"));
    const double found = shell(window).walls[0].length.mm();
    const QString own_words = window.states().told();
    states.setFocus();
    QTest::keyClick(&states, Qt::Key_Down);
    QVERIFY(settled(window));
    QCOMPARE(window.desk().seen(), std::string("as first built"));
    QVERIFY(shell(window).walls[0].length.mm() > found); // two feet longer
    QVERIFY(window.states().told() != own_words && window.states().told().contains("as found"));
    QTest::keyClick(&states, Qt::Key_Down);
    QVERIFY(settled(window));
    QCOMPARE(shell(window).state, std::string("as it shall stand"));
    // A window put in, a door made wider: in this state alone.
    const std::string before = window.desk().document().text();
    const Shell own = in_state(window, ""), built = in_state(window, "as first built");
    int at = 0;
    while (shell(window).openings[static_cast<std::size_t>(at)].name != "door")
        ++at;
    window.selection().choose_opening(shell(window), at);
    raise(window, "log");
    LengthEdit *width = window.log().field("width");
    width->setFocus();
    width->selectAll();
    QTest::keyClicks(width, "3 ft 3 in");
    QTest::keyClick(width, Qt::Key_Return);
    QVERIFY2(width->complaint().isEmpty(), qPrintable(width->complaint()));
    QVERIFY(settled(window));
    QCOMPARE(door(shell(window)).width, Length::inches(39));
    QCOMPARE(door(in_state(window, "as it shall stand")).width, Length::inches(39));
    QVERIFY(in_state(window, "") == own && in_state(window, "as first built") == built);
    keep_picture(window, "states");
    window.desk().history().undo();
    QCOMPARE(window.desk().document().text(), before);
    QVERIFY(settled(window));
    // The record is of the house, not of a state: it is not begun where nobody can have found the log.
    QVERIFY(window.at_hand().logs().empty());
    states.setFocus();
    QTest::keyClick(&states, Qt::Key_Home);
    QVERIFY(settled(window));
    QVERIFY(window.desk().seen().empty() && shell(window).walls[0].length.mm() == found);
    QVERIFY(!window.at_hand().logs().empty());
    // A state that the text loses is not seen any more.
    window.desk().see("as first built");
    QVERIFY(settled(window));
    std::string lost = window.desk().document().text();
    for (auto name = lost.find("as first built"); name != std::string::npos;
         name = lost.find("as first built"))
        lost.replace(name, 14, "as it was");
    window.desk().replace_text("Edit text", lost);
    QVERIFY(settled(window));
    QCOMPARE(shell(window).walls[0].length.mm(), found);
    QCOMPARE(states.currentText(), QString("as found"));
    window.desk().history().setClean();
}

void StateSwitchTest::what_was_measured_is_seen_and_not_edited() {
    MainWindow window(kept());
    open(window,
         old_house("\n[[state]]\nname = \"as measured\"\nmeasured = true\n\n[record]\nnumbers_in = \"in\"\n"
                   "\n[[found]]\ntag = \"A 3\"\nwall = \"A\"\nround = 3\nend = [\n"
                   "  { corner = \"DA\", height = \"11\" },\n  { corner = \"AB\", height = \"8\" },\n]\n"));
    QComboBox &states = window.states().states();
    states.setFocus();
    QTest::keyClick(&states, Qt::Key_End);
    QVERIFY(settled(window));
    QVERIFY2(window.states().told().contains("measured"), qPrintable(window.states().told()));
    QVERIFY(window.desk().state()->stands());
    QVERIFY(window.desk().state()->job.shell != *window.desk().state()->read.shell); // the numbers are in it
    const std::string before = window.desk().document().text();
    QString why;
    connect(&window.desk(), &Desk::refused, this, [&](const QString &words) { why = words; });
    window.elevation().setFocus();
    window.selection().choose_opening(shell(window), 0);
    QTest::keyClick(&window.elevation(), Qt::Key_Right);
    QVERIFY2(why.contains("as measured") && why.contains("as found"), qPrintable(why));
    QCOMPARE(window.desk().document().text(), before);
    // Its numbers are the record's: they are changed there, and the shell follows.
    raise(window, "record");
    window.at_hand().take(0);
    window.record().form().go_to("end0_height");
    QApplication::focusWidget()->setFocus();
    type_here("10");
    press_enter();
    QVERIFY(settled(window));
    QCOMPARE(found(window, "A 3")->ends[0].height.written, std::string("10"));
    window.desk().history().setClean();
}

int main(int argc, char **argv) {
    return run_test<StateSwitchTest>(argc, argv);
}

#include "state_switch_test.moc"
