// The panel of what is chosen: a log, a joist, an opening, the steps under a wall.
#include "kernel/design/floor_edits.h"
#include "kernel/design/shell_edits.h"
#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/selection.h"
#include "modeler/window/desk/words.h"
#include "modeler/window/frame/new_shell.h"
#include "modeler/window/panels/cut_list_panel.h"
#include "modeler/window/panels/floor_panel.h"
#include "modeler/window/panels/length_edit.h"
#include "modeler/window/panels/log_fields.h"
#include "modeler/window/panels/log_panel.h"
#include "modeler/window/panels/log_words.h"
#include "modeler/window/panels/message_bar.h"
#include "modeler/window/views/elevation_view.h"
#include "modeler/window/views/model_page.h"
#include "modeler/window/views/plan_view.h"
#include "tests/window/support/typing.h"
#include "tests/window/support/window_test.h"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QTest>
#include <QToolButton>

using namespace roundlay;
using namespace roundlay::window;

class LogPanelTest : public WindowTest {
    Q_OBJECT

  private slots:
    void a_log_is_stated_and_what_has_no_field_stays();
    void one_of_the_logs_that_an_opening_parts_is_stated_alone();
    void what_can_hurt_is_said_with_its_caution();
    void a_joist_is_chosen_like_a_log();
    void steps_of_the_foundation_come_change_and_go_data();
    void steps_of_the_foundation_come_change_and_go();
};

void LogPanelTest::a_log_is_stated_and_what_has_no_field_stays() {
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
    window.selection().choose_piece(layout, *piece_tagged(layout, shell.walls[1].name + "-02-1"));
    auto *mark = window.log().findChild<QLineEdit *>("mark");
    QVERIFY(mark != nullptr);
    QTest::keyClicks(mark, "IX");
    QTest::keyClick(mark, Qt::Key_Return);
    QVERIFY(settled(window));
    stated.mark = "IX";
    auto *note = window.log().findChild<NameEdit *>("note");
    QVERIFY(note != nullptr);
    QTest::keyClicks(note, "rot at the sill");
    QTest::keyClick(note, Qt::Key_Return);
    QVERIFY(settled(window));
    stated.note = "rot at the sill";
    QCOMPARE(window.desk().standing()->job.shell.own_logs.size(), std::size_t(1));
    QVERIFY(window.desk().standing()->job.shell.own_logs[0] == stated);
    window.close_document();
}

/// A round that a door parts is one straight stick in its sizes; mark, finish, bow, fabric and note are
/// each log's own.
void LogPanelTest::one_of_the_logs_that_an_opening_parts_is_stated_alone() {
    MainWindow window(kept());
    window.resize(1300, 800);
    window.show();
    window.begin_demo(0); // its wall A has a door in round 1
    QVERIFY(settled(window));
    raise(window, "log");
    const auto choose = [&](const char *tag) {
        const Layout &layout = window.desk().standing()->job.layout;
        window.selection().choose_piece(layout, *piece_tagged(layout, tag));
    };
    auto *fields = window.log().findChild<LogFields *>();
    auto *meant = window.log().findChild<QComboBox *>("meant");
    auto *mark = window.log().findChild<NameEdit *>("mark");
    choose("B-02-1");
    QVERIFY(!meant->isVisible()); // nothing parts it
    QCOMPARE(fields->title(), QString("Stated of the whole log"));
    choose("A-01-2");
    QVERIFY(meant->isVisible());
    QCOMPARE(fields->title(), QString("Stated of all logs of this round"));
    QVERIFY(window.log().field("butt_height")->isVisible());
    meant->setCurrentIndex(1);
    emit meant->activated(1);
    QCOMPARE(fields->title(), QString("Stated of log A-01-2 alone"));
    QVERIFY(!window.log().field("butt_height")->isVisible());
    auto *note = window.log().findChild<NameEdit *>("note");
    QVERIFY(mark->isVisible() && note->isVisible() && window.log().field("bow")->isVisible());
    mark->setFocus();
    QTest::keyClicks(mark, "right of the door");
    QTest::keyClick(mark, Qt::Key_Return);
    QVERIFY(settled(window));
    QVERIFY(window.desk().state()->stands());
    const Shell &shell = window.desk().state()->job.shell;
    QCOMPARE(own_log(shell, {"A", 1, 2}).mark, std::string("right of the door"));
    QVERIFY(!says_something_of(shell, {"A", 1, {}}) && !says_something_of(shell, {"A", 1, 1}));
    QCOMPARE(fields->title(), QString("Stated of log A-01-2 alone")); // it stays what the person meant
    note->setFocus();
    QTest::keyClicks(note, "of the barn");
    QTest::keyClick(note, Qt::Key_Return);
    QVERIFY(settled(window));
    QCOMPARE(own_log(window.desk().state()->job.shell, {"A", 1, 2}).note, std::string("of the barn"));
    choose("A-01-1");
    QCOMPARE(fields->title(), QString("Stated of all logs of this round"));
    QVERIFY(mark->name().isEmpty() && note->name().isEmpty());
    choose("A-01-2"); // something is stated of it alone: that is what is met
    QCOMPARE(fields->title(), QString("Stated of log A-01-2 alone"));
    QCOMPARE(mark->name(), QString("right of the door"));
    keep_picture(window, "log-alone");
    window.close_document();
}

void LogPanelTest::what_can_hurt_is_said_with_its_caution() {
    MainWindow window(kept());
    window.begin_demo(1);
    QVERIFY(settled(window));
    const State &state = *window.desk().standing();
    QVERIFY(!words_of_piece(state, Index<Piece>(0)).contains("Screened span")); // a log of a wall
    QVERIFY(words_of_piece(state, Index<Piece>(0)).contains("no lift plan"));
    QVERIFY(words_of_opening(state, 0).contains("Ontario Building Code"));
    QVERIFY(words_of_opening(state, 0).contains("by 6 percent it would be"));
    QVERIFY(words_of_opening(state, 0).contains("licensed professional"));
    // the low end down, the high end up
    QCOMPARE(weight_text(320.2 * 0.45359237, 321.5 * 0.45359237, UnitSystem::imperial),
             QString("320 to 325 lb"));
    window.close_document();
}

void LogPanelTest::a_joist_is_chosen_like_a_log() {
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
        for (const char *told : {"Screened span", "Bends under the live load", "no design value",
                                 "never an approval", "Its round log", "no lift plan"})
            QVERIFY2(words.contains(told), told);
    }
    window.grab();
    window.close_document();
}

void LogPanelTest::steps_of_the_foundation_come_change_and_go_data() {
    QTest::addColumn<UnitSystem>("units");
    QTest::addColumn<NotchKind>("notch");
    QTest::newRow("hewn, metric") << UnitSystem::metric << NotchKind::full_dovetail;
    QTest::newRow("round, imperial") << UnitSystem::imperial << NotchKind::saddle;
}

void LogPanelTest::steps_of_the_foundation_come_change_and_go() {
    QFETCH(UnitSystem, units);
    QFETCH(NotchKind, notch);
    MainWindow window(kept());
    QVERIFY(shown(window, *shell_of(usual_shell(Shape::rectangle, units, notch)), "Slope"));
    raise(window, "log");
    const auto steps = [&] { return window.desk().state()->read.shell->steps; };
    const auto press = [&](const char *name) {
        window.log().findChild<QToolButton *>(QLatin1String(name))->click();
        return settled(window);
    };
    const auto field = [&](const char *name) { return window.log().field(QLatin1String(name)); };
    window.selection().choose_wall("B");
    QVERIFY(field("step_left")->isVisible() && !field("step_left")->isEnabled());
    QVERIFY(field("step_left")->text().isEmpty());
    QVERIFY(press("more_steps"));
    QVERIFY(steps().size() == 1 && steps()[0].wall == "B");
    QVERIFY(!has_error(window));
    QVERIFY(field("step_left")->isEnabled());
    QCOMPARE(field("step_rise")->length(), steps()[0].rise);
    const Length narrow = units == UnitSystem::metric ? Length::mm(800) : Length::inches(32);
    enter(*field("step_width"), units == UnitSystem::metric ? "800" : "32");
    QVERIFY(settled(window));
    QCOMPARE(steps()[0].width, narrow);
    enter(*field("step_rise"), "500 m"); // over what the format takes
    QVERIFY(!told_beside(*field("step_rise")).isEmpty());
    QTest::keyClick(field("step_rise"), Qt::Key_Escape);
    QVERIFY(press("more_steps")); // beside the first
    QVERIFY(steps().size() == 2 && !has_error(window));
    QVERIFY(field("step_left")->length() == steps()[1].from_left);
    window.selection().choose_wall("A"); // which has none
    QVERIFY(field("step_left")->text().isEmpty());
    window.selection().choose_wall("B");
    QVERIFY(press("less_steps") && press("less_steps"));
    QVERIFY(steps().empty());
    window.desk().history().undo();
    QVERIFY(settled(window));
    QCOMPARE(steps().size(), std::size_t(1));
    for (int i = 0; i < 8; ++i) // until there is no room: it says why
        QVERIFY(press("more_steps"));
    QVERIFY(!has_error(window));
    bool says = false;
    for (const QLabel *label : window.log().findChildren<QLabel *>())
        says = says || (label->isVisible() && label->text().contains("fit there. "));
    QVERIFY(says);
    window.close_document();
}

int main(int argc, char **argv) {
    return run_test<LogPanelTest>(argc, argv);
}

#include "log_panel_test.moc"
