// The record of a log: what is typed, how it is shown, what is not taken.
#include "kernel/document/document.h"
#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/selection.h"
#include "modeler/window/desk/words.h"
#include "modeler/window/frame/new_shell.h"
#include "modeler/window/frame/state_bar.h"
#include "modeler/window/panels/message_bar.h"
#include "modeler/window/record/at_hand.h"
#include "modeler/window/record/note_edit.h"
#include "modeler/window/record/photographs.h"
#include "modeler/window/record/record_panel.h"
#include "tests/window/support/recording.h"
#include "tests/window/support/window_test.h"

#include <QAbstractButton>
#include <QAction>
#include <QApplication>
#include <QComboBox>
#include <QDockWidget>
#include <QElapsedTimer>
#include <QFileInfo>
#include <QLabel>
#include <QTest>
#include <algorithm>
#include <map>

using namespace roundlay;
using namespace roundlay::window;

class RecordTest : public WindowTest {
    Q_OBJECT

  private slots:
    void what_is_typed_stands_in_the_text_as_it_was_noted();
    void what_the_document_does_not_take_stays_to_be_put_right();
    void a_number_is_called_proposed_or_contradicted();
    void zones_and_pegs_come_and_go_by_typing();
    void photographs_are_shown_and_one_that_moved_is_told();
    void a_log_is_called_otherwise_and_keeps_its_record();
    void each_refused_box_is_named_and_none_of_the_others_moves();
    void an_old_house_is_begun_in_the_window();
};

void RecordTest::what_is_typed_stands_in_the_text_as_it_was_noted() {
    MainWindow window(kept());
    open_record(window, a_room());
    const std::string before = window.desk().document().text();
    window.action("record_log")->trigger();
    const std::string tag = window.at_hand().tag();
    QVERIFY(window.record().told().contains("Not recorded yet"));
    window.record().form().go_to("end0_height");
    type_here("9 1/2\"");
    press_enter();
    QVERIFY(!window.record().told().contains("Not recorded yet"));
    std::optional<FoundLog> log = found(window, tag);
    QVERIFY(log && log->ends.size() == 2);
    QCOMPARE(log->ends[0].height.written, std::string("9 1/2\""));
    QCOMPARE(log->ends[0].height.value, std::optional(Length::inches(9.5)));
    QVERIFY(window.desk().document().text().starts_with(before)); // nothing else of the text is touched
    for (const auto &[box, words] : std::map<QString, QString>{{"condition", "sapwood soft below"},
                                                               {"cause", "splash from the eaves"},
                                                               {"urgency", "before winter"},
                                                               {"marks", "II; an axe cut"},
                                                               {"species", "white oak"}}) {
        window.record().form().go_to(box);
        type_here(words);
        press_enter();
    }
    log = found(window, tag);
    QCOMPARE(log->condition, std::string("sapwood soft below"));
    QCOMPARE(log->urgency, std::string("before winter"));
    QCOMPARE(log->marks, (std::vector<std::string>{"II", "an axe cut"}));
    QVERIFY(settled(window));
    QVERIFY(window.desk().state()->stands());
    QCOMPARE(*window.desk().state()->job.record, record(window)); // exports see it
    for (int steps = 0; steps < 6; ++steps)
        window.desk().history().undo();
    QCOMPARE(window.desk().document().text(), before);
    QVERIFY(window.record().told().contains("Not recorded yet"));
    keep_picture(window, "record-panel");
    window.close_document();
}

void RecordTest::what_the_document_does_not_take_stays_to_be_put_right() {
    MainWindow window(kept());
    open_record(window, a_room());
    window.action("record_log")->trigger();
    const std::string before = window.desk().document().text();
    window.record().form().go_to("end0_height");
    type_here("abc");
    press_enter();
    QCOMPARE(at_hand(), QString("record_end0_height")); // it does not go on
    auto *box = qobject_cast<NoteEdit *>(QApplication::focusWidget());
    QCOMPARE(box->text(), QString("abc"));
    QVERIFY2(window.record().told().startsWith("Height: ") && window.record().told().contains("abc"),
             qPrintable(window.record().told()));
    QCOMPARE(window.desk().document().text(), before);
    box->selectAll();
    type_here("5 m"); // no log is that high
    press_enter();
    QVERIFY(!box->complaint().isEmpty());
    box->selectAll();
    type_here("240"); // nobody said of what: it stays as it was noted, and open
    press_enter();
    QVERIFY(box->complaint().isEmpty());
    QCOMPARE(sign_of(box->number()), QString("?"));
    QVERIFY2(window.record().told().contains("Numbers are in"), qPrintable(window.record().told()));
    auto *fold = window.record().findChild<QAbstractButton *>("fold_survey");
    if (!window.record().findChild<QWidget *>("survey_unit")->isVisible()) fold->click();
    auto *unit = window.record().findChild<QComboBox *>("survey_unit");
    unit->setFocus();
    type_here("mm");
    QTest::keyClick(unit, Qt::Key_Tab);
    QCOMPARE(record(window).notation.unit, std::optional(NoteUnit::mm));
    QCOMPARE(sign_of(box->number()), QString());
    QCOMPARE(box->number().value, std::optional(Length::mm(240)));
    window.close_document();
}

void RecordTest::a_number_is_called_proposed_or_contradicted() {
    MainWindow window(kept());
    open_record(window, a_room());
    window.action("record_log")->trigger();
    auto *box = qobject_cast<NoteEdit *>(window.record().form().box("end1_width"));
    QVERIFY2(box->placeholderText().startsWith(QStringLiteral("\u2248 ")),
             "the plan proposes what nobody measured");
    window.record().form().go_to("end1_width");
    type_here("152 mm");
    press_enter();
    box->call(Certainty::contradicted);
    QCOMPARE(sign_of(box->number()), QStringLiteral("\u2260"));
    QVERIFY(box->toolTip().contains("contradicted"));
    QCOMPARE(record(window).logs[0].ends[1].width.certainty, Certainty::contradicted);
    QCOMPARE(record(window).logs[0].ends[1].width.written, std::string("152 mm"));
    box->setFocus();
    box->selectAll();
    type_here("153 mm"); // measured anew
    press_enter();
    QCOMPARE(record(window).logs[0].ends[1].width.certainty, Certainty::measured);
    window.desk().history().undo();
    QCOMPARE(box->number().certainty, Certainty::contradicted);
    window.close_document();
}

void RecordTest::zones_and_pegs_come_and_go_by_typing() {
    MainWindow window(kept());
    open_record(window, a_room());
    window.action("record_log")->trigger();
    const RecordForm &form = window.record().form();
    QVERIFY(form.box("zone0_what")->isEnabled() && !form.box("zone0_from")->isEnabled()); // what comes first
    window.record().form().go_to("zone0_what");
    type_here("r");
    press_enter();
    QCOMPARE(at_hand(), QString("record_zone0_from"));
    type_here("0 mm");
    press_enter();
    type_here("400 mm");
    press_enter();
    QCOMPARE(at_hand(), QString("record_zone0_faces"));
    type_here("out, und");
    press_enter();
    type_here("30 mm");
    press_enter();
    Record now = record(window);
    QCOMPARE(now.logs[0].zones.size(), std::size_t(1));
    QCOMPARE(now.logs[0].zones[0].what, Soundness::rotten);
    QCOMPARE(now.logs[0].zones[0].to.written, std::string("400 mm"));
    QCOMPARE(now.logs[0].zones[0].faces, (std::vector<FoundFace>{FoundFace::outside, FoundFace::under}));
    QVERIFY(form.box("zone1_what") != nullptr &&
            form.box("zone1_what")->isEnabled()); // room for the next one
    window.record().form().go_to("zone0_faces");
    type_here("sideways");
    press_enter();
    QVERIFY(window.record().told().contains("sideways"));
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Escape);
    window.record().form().go_to("peg0_state");
    type_here("b");
    press_enter();
    type_here("600 mm");
    press_enter();
    now = record(window);
    QCOMPARE(now.logs[0].pegs.size(), std::size_t(1));
    QCOMPARE(now.logs[0].pegs[0].state, PegState::broken);
    window.record().form().go_to("zone0_what");
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Home); // none of the words
    press_enter();
    QVERIFY(record(window).logs[0].zones.empty());
    QCOMPARE(record(window).logs[0].pegs.size(), std::size_t(1));
    window.close_document();
}

void RecordTest::photographs_are_shown_and_one_that_moved_is_told() {
    QImage image(40, 30, QImage::Format_RGB32);
    image.fill(Qt::darkGreen);
    QVERIFY(image.save(folder_.filePath("ne-corner.png")));
    written("no-picture.jpg", "words");
    MainWindow window(kept());
    open_record(window, a_room());
    window.action("record_log")->trigger();
    window.record().form().go_to("photographs");
    type_here("ne-corner.png; gone.png; no-picture.jpg");
    press_enter();
    QCOMPARE(window.record().photographs().seen(), 0);
    QVERIFY(window.record().photographs().told()[0].contains("saved"));
    QVERIFY(window.save_to(folder_.filePath("house.roundlay")));
    const Photographs &shown = window.record().photographs();
    QCOMPARE(shown.seen(), 1);
    QCOMPARE(shown.told().size(), 3);
    QVERIFY2(shown.told()[1].contains("gone.png") && shown.told()[1].contains("moved"),
             qPrintable(shown.told()[1]));
    QVERIFY2(shown.told()[2].contains("no picture"), qPrintable(shown.told()[2]));
    QVERIFY(QFile::remove(folder_.filePath("ne-corner.png")));
    window.record().form().go_to("urgency");
    type_here("soon");
    press_enter();
    QVERIFY(settled(window));
    window.close_document();
}

void RecordTest::a_log_is_called_otherwise_and_keeps_its_record() {
    MainWindow window(kept());
    open_record(window, a_room());
    window.action("record_log")->trigger();
    const std::string first = window.at_hand().tag();
    type_here("NE 1"); // over the proposed one
    press_enter();
    QCOMPARE(window.at_hand().tag(), std::string("NE 1"));
    QVERIFY(found(window, "NE 1") && !found(window, first));
    window.record().form().go_to("length");
    type_here("6 m");
    press_enter(Qt::ControlModifier);
    type_here("5 m");
    press_enter(); // of the second
    const std::string second = window.at_hand().tag();
    window.record().form().go_to("tag");
    type_here("NE 1");
    press_enter();
    QCOMPARE(at_hand(), QString("record_tag"));
    QVERIFY2(window.record().told().contains("NE 1"), qPrintable(window.record().told())); // it is taken
    QCOMPARE(window.at_hand().tag(), second);
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Escape);
    QCOMPARE(record(window).logs.size(), std::size_t(2));
    QCOMPARE(record(window).logs[0].length.written, std::string("6 m"));
    window.close_document();
}

void RecordTest::each_refused_box_is_named_and_none_of_the_others_moves() {
    MainWindow window(kept());
    open_record(window, a_room());
    window.action("record_log")->trigger();
    const RecordForm &form = window.record().form();
    const auto place = [&] { return form.box("bow")->mapTo(&window, QPoint(0, 0)); };
    window.record().form().go_to("wind"); // all of it is in sight
    QTest::qWait(20);
    QPoint before = place();
    auto *length = qobject_cast<NoteEdit *>(form.box("length"));
    auto *shoulders = qobject_cast<NoteEdit *>(form.box("between_shoulders"));
    for (NoteEdit *edit : {length, shoulders}) {
        edit->setFocus();
        type_here("abc");
        QTest::keyClick(edit, Qt::Key_Tab);
        QTest::qWait(20);
        QCOMPARE(place(), before);
    }
    QCOMPARE(window.record().told().split('\n').size(), qsizetype(2));
    QVERIFY(window.record().told().contains("Length over all: ") &&
            window.record().told().contains("Between shoulders: "));
    QVERIFY(length->toolTip().contains("abc") && shoulders->toolTip().contains("abc"));
    QVERIFY(window.save_to(folder_.filePath("left-out.roundlay")));
    QVERIFY2(window.message().sentence().contains("Length over all, Between shoulders"),
             qPrintable(window.message().sentence()));
    window.record().form().go_to("on");
    window.message().answer(0);
    QCOMPARE(at_hand(), QString("record_length"));
    QVERIFY(!length->visibleRegion().isEmpty());
    QTest::qWait(20);
    before = place(); // scrolled to it
    length->selectAll();
    type_here("6 m"); // one is right again, the other is named still
    press_enter();
    QTest::qWait(20);
    QCOMPARE(place(), before);
    QVERIFY(window.record().told().startsWith("Between shoulders: "));
    // What cannot be taken and is left is told as it goes.
    window.selection().choose_wall("C");
    QVERIFY2(window.findChild<QLabel *>("hint")->text().contains("abc"),
             qPrintable(window.findChild<QLabel *>("hint")->text()));
    window.close_document();
}

void RecordTest::an_old_house_is_begun_in_the_window() {
    for (const char *name : {"", "as drawn"}) {
        MainWindow window(kept());
        Shell shell = a_room();
        shell.state = name;
        window.resize(1300, 800);
        QVERIFY(shown(window, shell, "Old house"));
        const std::string before = window.desk().document().text();
        window.action("begin_record")->trigger();
        QVERIFY(settled(window));
        const ReadPtr read = window.desk().reading();
        QVERIFY(read->shell && !has_errors(read->problems));
        QCOMPARE(read->states.size(), std::size_t(3));
        QVERIFY(!read->states[0].name.empty() && !read->states[0].measured);
        QVERIFY(read->states[1].measured && read->states[2].on == read->states[1].name);
        QVERIFY(window.states().isVisible());
        QCOMPARE(at_hand(), QString("record_tag")); // typing can begin
        window.record().form().go_to("end0_height");
        type_here("250 mm");
        press_enter();
        for (const HouseState &state : read->states) { // each of them stands
            window.desk().see(state.name);
            QVERIFY(settled(window));
            QVERIFY2(window.desk().state()->stands(), state.name.c_str());
        }
        QCOMPARE(record(window).logs.size(), std::size_t(1));
        window.action("begin_record")->trigger(); // once is enough
        QCOMPARE(window.desk().reading()->states.size(), std::size_t(3));
        window.desk().history().undo();
        window.desk().history().undo();
        QCOMPARE(window.desk().document().text(), before);
        window.close_document();
    }
}

int main(int argc, char **argv) {
    return run_test<RecordTest>(argc, argv);
}

#include "record_test.moc"
