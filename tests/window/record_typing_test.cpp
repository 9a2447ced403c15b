// Down a wall by the keyboard alone: the record of a house that stands.
#include "kernel/document/document.h"
#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/selection.h"
#include "modeler/window/desk/words.h"
#include "modeler/window/frame/new_shell.h"
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

class RecordTypingTest : public WindowTest {
    Q_OBJECT

  private slots:
    void two_hundred_logs_are_recorded_without_the_mouse();
    void enter_goes_from_box_to_box_and_on_to_the_next_log();
    void the_panel_follows_the_selection();
    void tags_say_where_a_log_is_when_the_plan_has_none();
    void what_is_typed_next_replaces_what_stood_there();
    void what_was_typed_is_taken_before_the_next_log_is_chosen();
    void tab_stops_at_boxes_alone_and_keys_reach_the_titles();
    void letters_that_are_no_word_choose_none();
};

/// As a person does it: the key that begins, numbers, Enter; nothing else.
void RecordTypingTest::two_hundred_logs_are_recorded_without_the_mouse() {
    constexpr int rounds = 17, wanted = 200;
    NewShell sizes = usual_shell(Shape::cross, UnitSystem::metric);
    sizes.rounds = rounds;
    MainWindow window(kept());
    open_record(window, *shell_of(sizes));
    QTest::keyClick(&window, Qt::Key_R, Qt::ControlModifier | Qt::ShiftModifier);
    QCOMPARE(at_hand(), QString("record_tag"));
    const std::map<QString, QString> numbers = {{"record_length", "%1 mm"},
                                                {"record_end0_height", "2%1 mm"},
                                                {"record_end0_width", "150 mm"},
                                                {"record_end1_height", "23%2 mm"},
                                                {"record_end1_overhang", "18 cm"}};
    std::vector<double> waits;
    QElapsedTimer whole;
    whole.start();
    int begun = 0;
    while (begun < wanted) {
        QCOMPARE(at_hand(), QString("record_tag"));
        const std::string tag = window.at_hand().tag();
        do {
            const auto number = numbers.find(at_hand());
            if (number != numbers.end())
                type_here(number->second.contains("%2")
                              ? QString(number->second).replace("%2", QString::number(begun % 10))
                          : number->first == "record_length" ? number->second.arg(3000 + begun)
                          : !number->second.contains("%1")   ? number->second
                                                             : number->second.arg(10 + begun % 90));
            QElapsedTimer wait;
            wait.start();
            press_enter();
            if (number != numbers.end()) waits.push_back(static_cast<double>(wait.nsecsElapsed()) / 1e6);
        } while (window.at_hand().tag() == tag && !at_hand().isEmpty());
        ++begun;
    }
    const double took = static_cast<double>(whole.nsecsElapsed()) / 1e6;
    std::ranges::sort(waits);
    qInfo("%d logs, %zu numbers: %.1f s in all; Enter after a number takes %.1f ms in the middle, %.1f ms at "
          "most",
          begun, waits.size(), took / 1000, waits[waits.size() / 2], waits.back());
    QCOMPARE(waits.size(), numbers.size() * wanted);
    QVERIFY(settled(window));
    const Record made = record(window);
    QCOMPARE(made.logs.size(), std::size_t(wanted));
    for (int i = 0; i < wanted; ++i) {
        const FoundLog &log = made.logs[static_cast<std::size_t>(i)];
        QCOMPARE(log.length.written, std::to_string(3000 + i) + " mm");
        QCOMPARE(log.length.value, std::optional(Length::mm(3000 + i)));
        QCOMPARE(log.ends[0].height.written, "2" + std::to_string(10 + i % 90) + " mm");
        QCOMPARE(log.ends[1].height.written, "23" + std::to_string(i % 10) + " mm");
        QVERIFY(!log.place.wall.empty() && log.place.round);
    }
    QVERIFY2(waits[waits.size() / 2] < 100, "nobody types on while a box takes that long");
    QCOMPARE(window.desk().history().count(), wanted * static_cast<int>(numbers.size())); // one step each
    window.desk().history().undo();
    QVERIFY(!record(window).logs.back().ends[1].overhang.is_taken());
    window.close_document();
}

void RecordTypingTest::enter_goes_from_box_to_box_and_on_to_the_next_log() {
    MainWindow window(kept());
    open_record(window, a_room());
    window.action("record_log")->trigger();
    const std::string first = window.at_hand().tag();
    QVERIFY(!first.empty());
    QCOMPARE(at_hand(), QString("record_tag"));
    press_enter();
    QCOMPARE(at_hand(), QString("record_species"));
    press_enter(Qt::ShiftModifier);
    QCOMPARE(at_hand(), QString("record_tag"));
    press_enter();
    press_enter();
    QCOMPARE(at_hand(), QString("record_length"));
    press_enter(Qt::ControlModifier); // the same box of the next log
    QCOMPARE(at_hand(), QString("record_length"));
    const std::string second = window.at_hand().tag();
    QVERIFY(second != first);
    QVERIFY(window.selection().is_piece(second)); // the views go along
    press_enter(Qt::ControlModifier | Qt::ShiftModifier);
    QCOMPARE(window.at_hand().tag(), first);
    for (int boxes = 0; window.at_hand().tag() == first && boxes < 100; ++boxes)
        press_enter();
    QCOMPARE(window.at_hand().tag(), second);
    QCOMPARE(at_hand(), QString("record_tag"));
    press_enter(Qt::ShiftModifier); // and back to the end of the one before
    QCOMPARE(window.at_hand().tag(), first);
    QCOMPARE(at_hand(), QString("record_on"));
    // What is folded away is passed by.
    auto *fold = window.record().findChild<QAbstractButton *>("fold_ends");
    fold->setFocus();
    QTest::keyClick(fold, Qt::Key_Space);
    window.record().form().go_to("wind");
    press_enter();
    QCOMPARE(at_hand(), QString("record_station0_at"));
    QTest::keyClick(fold, Qt::Key_Space);
    QVERIFY(record(window).logs.empty()); // nothing was typed
    window.close_document();
}

void RecordTypingTest::the_panel_follows_the_selection() {
    MainWindow window(kept());
    open_record(window, a_room_with_a_door());
    const auto choose = [&](const char *tag) { // in the layout of the moment: each edit brings another
        const StatePtr state = window.desk().standing();
        window.selection().choose_piece(state->job.layout, *piece_tagged(state->job.layout, tag));
    };
    for (const char *tag : {"A-01-1", "A-01-2", "B-03-1"}) {
        choose(tag);
        QCOMPARE(window.at_hand().tag(), std::string(tag));
    }
    window.selection().choose_wall("C");
    QVERIFY(window.at_hand().tag().starts_with("C-"));
    choose("A-01-2");
    window.record().form().go_to("length");
    type_here("2 m");
    press_enter();
    std::optional<FoundLog> log = found(window, "A-01-2");
    QVERIFY(log && log->place.piece == std::optional(2));
    choose("A-01-1");
    QVERIFY(qobject_cast<NoteEdit *>(window.record().form().box("length"))->text().isEmpty());
    // What was typed of one log and not taken is not typed of the next.
    window.record().form().go_to("length");
    QTest::keyClicks(QApplication::focusWidget(), "oops");
    choose("B-03-1");
    QVERIFY(qobject_cast<NoteEdit *>(window.record().form().box("length"))->text().isEmpty());
    QVERIFY(!found(window, "B-03-1") && !found(window, "A-01-1"));
    window.close_document();
}

void RecordTypingTest::tags_say_where_a_log_is_when_the_plan_has_none() {
    MainWindow window(kept());
    open_record(window, a_room());
    window.desk().edit_record("Lost log", [](const Record &before) {
        Record next = before;
        next.logs.emplace_back();
        next.logs.back().tag = "barn 7";
        next.logs.back().note = "lies in the yard";
        return std::optional(next);
    });
    auto *logs = window.record().findChild<QComboBox *>("record_logs");
    QVERIFY(logs->itemText(logs->count() - 1).contains("barn 7"));
    logs->setFocus();
    QTest::keyClick(logs, Qt::Key_End);
    QCOMPARE(window.at_hand().tag(), std::string("barn 7"));
    window.record().form().go_to("condition");
    type_here("sound");
    press_enter();
    QCOMPARE(found(window, "barn 7")->condition, std::string("sound"));
    window.close_document();
}

/// Also when the layout is worked out anew meanwhile and all boxes are shown again.
void RecordTypingTest::what_is_typed_next_replaces_what_stood_there() {
    MainWindow window(kept());
    open_record(window, a_room());
    window.action("record_log")->trigger();
    const std::string tag = window.at_hand().tag();
    for (const char *number : {"4001 mm", "4002 mm"}) {
        window.record().form().go_to("length");
        type_here(number);
        press_enter(); // the box just left has changed, the next is shown anew
        QVERIFY(settled(window));
        type_here(number);
        press_enter();
        QVERIFY(settled(window));
    }
    QCOMPARE(found(window, tag)->length.written, std::string("4002 mm"));
    QCOMPARE(found(window, tag)->between_shoulders.written, std::string("4002 mm"));
    window.record().form().go_to("between_shoulders");
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_End); // and a caret stays where it was put
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Home);
    window.desk().edit_record("From elsewhere", [](const Record &before) {
        Record next = before;
        next.by = "a neighbour";
        return std::optional(next);
    });
    QVERIFY(settled(window));
    type_here("1");
    press_enter();
    QCOMPARE(found(window, tag)->between_shoulders.written, std::string("14002 mm"));
    window.close_document();
}

void RecordTypingTest::what_was_typed_is_taken_before_the_next_log_is_chosen() {
    MainWindow window(kept());
    open_record(window, a_room());
    window.action("record_log")->trigger();
    for (const char *step : {"next_log", "previous_log"}) {
        const std::string tag = window.at_hand().tag();
        window.record().form().go_to("length");
        type_here("4321 mm");
        window.action(step)->trigger();
        QVERIFY(window.at_hand().tag() != tag);
        const auto log = found(window, tag);
        QVERIFY2(log && log->length.written == "4321 mm", step);
    }
    // What is refused stays to be put right: nobody goes on over it.
    const std::string tag = window.at_hand().tag();
    window.record().form().go_to("length");
    type_here("abc");
    window.action("next_log")->trigger();
    QCOMPARE(window.at_hand().tag(), tag);
    QCOMPARE(at_hand(), QString("record_length"));
    QVERIFY(window.record().told().contains("abc"));
    window.close_document();
}

void RecordTypingTest::tab_stops_at_boxes_alone_and_keys_reach_the_titles() {
    MainWindow window(kept());
    open_record(window, a_room());
    window.action("record_log")->trigger();
    QWidget *form = &window.record().form();
    int boxes = 0;
    while (form->isAncestorOf(QApplication::focusWidget()) && boxes < 200) {
        QVERIFY2(at_hand().startsWith("record_"), qPrintable(at_hand()));
        ++boxes;
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
    }
    QVERIFY2(boxes > 40, qPrintable(QString::number(boxes)));
    window.record().form().go_to("end0_width");
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Up, Qt::ControlModifier);
    QCOMPARE(at_hand(), QString("fold_ends"));
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Up);
    QCOMPARE(at_hand(), QString("fold_log"));
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Down);
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Space);
    QVERIFY(!window.record().form().box("end0_width")->isVisible());
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Space);
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    QCOMPARE(at_hand(), QString("record_end0_height"));
    window.close_document();
}

/// Meant for another box, they make no peg.
void RecordTypingTest::letters_that_are_no_word_choose_none() {
    MainWindow window(kept());
    open_record(window, a_room());
    window.action("record_log")->trigger();
    const std::string tag = window.at_hand().tag();
    window.record().form().go_to("peg0_state");
    type_here("burnt at the far end");
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
    QVERIFY(!found(window, tag));
    window.record().form().go_to("peg0_state");
    QTest::qWait(700); // and begins anew
    type_here("bro");
    press_enter();
    QCOMPARE(found(window, tag)->pegs.at(0).state, PegState::broken);
    window.close_document();
}

int main(int argc, char **argv) {
    return run_test<RecordTypingTest>(argc, argv);
}

#include "record_typing_test.moc"
