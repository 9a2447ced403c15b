// What the record says of the house itself, and what is noted of a log beside its sizes.
#include "kernel/document/document.h"
#include "kernel/layout/openings/openings.h"
#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/selection.h"
#include "modeler/window/panels/message_bar.h"
#include "modeler/window/record/at_hand.h"
#include "modeler/window/record/note_edit.h"
#include "modeler/window/record/photographs.h"
#include "modeler/window/record/record_panel.h"
#include "tests/window/support/recording.h"
#include "tests/window/support/window_test.h"

#include <QAction>
#include <QApplication>
#include <QCommandLinkButton>
#include <QDir>
#include <QLabel>
#include <QTest>

using namespace roundlay;
using namespace roundlay::window;

class HouseFieldsTest : public WindowTest {
    Q_OBJECT

  private slots:
    void walls_and_corners_are_recorded_where_they_are_chosen();
    void planes_and_diagonals_come_one_after_the_other();
    void an_opening_is_typed_round_by_the_keyboard_alone();
    void a_second_opening_of_one_name_is_refused_with_a_reason();
    void moisture_and_what_was_tried_are_typed();
    void photographs_are_taken_from_their_files();
    void photographs_of_the_demo_are_found();

  private:
    static MeasureEdit *typed(MainWindow &window, const char *name, const QString &words) {
        QTest::qWait(20); // a row that comes is shown in a moment
        auto *edit = window.record().findChild<MeasureEdit *>(QLatin1String(name));
        if (edit == nullptr || !edit->isVisible() || !edit->isEnabled()) return nullptr;
        edit->setFocus();
        edit->selectAll();
        QTest::keyClick(edit, Qt::Key_Delete);
        QTest::keyClicks(edit, words);
        QTest::keyClick(edit, Qt::Key_Return);
        return edit;
    }
};

void HouseFieldsTest::walls_and_corners_are_recorded_where_they_are_chosen() {
    MainWindow window(kept());
    open_record(window, a_room());
    const std::string before = window.desk().document().text();
    window.selection().choose_wall("B");
    QVERIFY(typed(window, "wall_length", "7210 mm"));
    window.selection().choose_wall("C");
    auto *length = window.record().findChild<NoteEdit *>("wall_length");
    QVERIFY(length->text().isEmpty()); // nobody measured it
    QVERIFY(typed(window, "wall_note", "bulges"));
    QCOMPARE(record(window).walls.size(), std::size_t(2));
    QCOMPARE(record(window).walls[0].wall, std::string("B"));
    QCOMPARE(record(window).walls[0].length.value, std::optional(Length::mm(7210)));
    const std::string corner = window.desk().standing()->job.layout.corners.front().name;
    window.selection().choose_corner(corner);
    QVERIFY(!length->isVisible());
    QVERIFY(typed(window, "corner_level", "-35 mm"));
    QVERIFY(typed(window, "corner_lean_first", "20 mm"));
    QVERIFY(typed(window, "corner_lean_over", "2400 mm"));
    const Record now = record(window);
    QCOMPARE(now.corners.size(), std::size_t(1));
    QCOMPARE(now.corners[0].name, corner);
    QCOMPARE(now.corners[0].walls.size(), std::size_t(2));
    QCOMPARE(now.corners[0].level.written, std::string("-35 mm"));
    QCOMPARE(now.corners[0].lean_over.value, std::optional(Length::mm(2400)));
    // What cannot be is told beside the box, and what is cleared is gone.
    MeasureEdit *level = typed(window, "corner_level", "abc");
    QVERIFY(level != nullptr && !level->complaint().isEmpty());
    QCOMPARE(record(window), now);
    window.selection().choose_wall("B");
    QVERIFY(typed(window, "wall_length", ""));
    window.selection().choose_wall("C");
    QVERIFY(typed(window, "wall_note", ""));
    QVERIFY(record(window).walls.empty());
    while (window.desk().history().canUndo())
        window.desk().history().undo();
    QCOMPARE(window.desk().document().text(), before);
    window.close_document();
}

void HouseFieldsTest::planes_and_diagonals_come_one_after_the_other() {
    MainWindow window(kept());
    open_record(window, a_room());
    window.selection().clear();
    QVERIFY(!typed(window, "plane0_offset", "1 mm")); // of no plane yet
    QVERIFY(typed(window, "plane0_name", "L1"));
    QVERIFY(typed(window, "plane1_name", "L2"));
    QVERIFY(typed(window, "plane1_offset", "900 mm"));
    MeasureEdit *alone = typed(window, "diagonal0_between", "NE");
    QVERIFY(alone != nullptr && alone->complaint().contains("two corners"));
    QVERIFY(typed(window, "diagonal0_between", "AB, CD"));
    QVERIFY(typed(window, "diagonal0_length", "11870 mm"));
    const Record now = record(window);
    QCOMPARE(now.planes.size(), std::size_t(2));
    QCOMPARE(now.planes[1].name, std::string("L2"));
    QCOMPARE(now.planes[1].offset.value, std::optional(Length::mm(900)));
    QCOMPARE(now.diagonals.size(), std::size_t(1));
    QCOMPARE(now.diagonals[0].from + now.diagonals[0].to, std::string("ABCD"));
    QCOMPARE(now.diagonals[0].length.written, std::string("11870 mm"));
    QVERIFY(settled(window));
    QVERIFY(window.desk().state()->stands());
    keep_picture(window, "house-fields");
    window.close_document();
}

void HouseFieldsTest::an_opening_is_typed_round_by_the_keyboard_alone() {
    MainWindow window(kept());
    Shell shell = a_room_with_a_door();
    shell.openings.push_back(shell.openings.front());
    shell.openings.back().kind = OpeningKind::window;
    shell.openings.back().wall = "C";
    shell.openings.back().sill = Length::mm(900);
    shell.openings.back().height = Length::mm(800);
    open_record(window, shell);
    const std::string before = window.desk().document().text();
    window.selection().choose_opening(roundlay::window::shell(window), 0);
    QTest::qWait(20);
    auto *zero = window.record().findChild<QLineEdit *>("opening_zero");
    QVERIFY(zero->isVisible() && !zero->placeholderText().isEmpty());
    const std::string corner = window.desk().standing()->job.layout.corners.front().name;
    zero->setFocus();
    const std::vector<std::pair<const char *, QString>> boxes = {
        {"opening_zero", QString::fromStdString(corner)},
        {"opening_near_at_sill", "2000 mm"},
        {"opening_far_at_sill", "3005 mm"},
        {"opening_near_at_head", "2010 mm"},
        {"opening_far_at_head", "3015 mm"},
        {"opening_width", "1005 mm"},
        {"opening_height", "2040 mm"},
        {"opening_sill", "-20 mm"},
        {"opening_head", "+2020 mm"},
        {"opening_plane", ""},
        {"opening_sheet", ""},
        {"opening_note", "frame sawn out"}};
    for (const auto &[name, words] : boxes) {
        QCOMPARE(at_hand(), QLatin1String(name));
        type_here(words);
        press_enter();
    }
    Record now = record(window);
    QCOMPARE(now.openings.size(), std::size_t(1));
    const RecordedOpening &door = now.openings.front();
    QCOMPARE(door.name, name_of(roundlay::window::shell(window), 0));
    QCOMPARE(door.zero, corner);
    QCOMPARE(door.near_at_sill.value, std::optional(Length::mm(2000)));
    QCOMPARE(door.far_at_head.value, std::optional(Length::mm(3015)));
    QCOMPARE(door.sill.written, std::string("-20 mm"));
    QCOMPARE(door.head.value, std::optional(Length::mm(2020)));
    QCOMPARE(door.note, std::string("frame sawn out"));
    // Past the last box comes the next opening, and with Shift one goes back.
    QVERIFY(window.selection().is_opening(1));
    QCOMPARE(at_hand(), QStringLiteral("opening_zero"));
    QVERIFY(zero->text().isEmpty());
    press_enter();
    QCOMPARE(at_hand(), QStringLiteral("opening_near_at_sill"));
    type_here("abc");
    press_enter();
    QCOMPARE(at_hand(), QStringLiteral("opening_near_at_sill")); // to be put right first
    QVERIFY(!qobject_cast<MeasureEdit *>(QApplication::focusWidget())->complaint().isEmpty());
    QCOMPARE(record(window), now);
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Escape);
    press_enter(Qt::ShiftModifier);
    QCOMPARE(at_hand(), QStringLiteral("opening_zero"));
    keep_picture(window, "opening-fields");
    while (window.desk().history().canUndo())
        window.desk().history().undo();
    QCOMPARE(window.desk().document().text(), before);
    window.close_document();
}

/// The record tells openings by their names: of two that are called alike it has one.
void HouseFieldsTest::a_second_opening_of_one_name_is_refused_with_a_reason() {
    MainWindow window(kept());
    Shell shell = a_room_with_a_door();
    shell.openings.front().name = "door";
    shell.openings.push_back(shell.openings.front());
    shell.openings.back().wall = "C";
    open_record(window, shell);
    window.selection().choose_opening(roundlay::window::shell(window), 0);
    QVERIFY(typed(window, "opening_width", "1001 mm"));
    QCOMPARE(record(window).openings.front().wall, std::string("A"));
    window.selection().choose_opening(roundlay::window::shell(window), 1);
    MeasureEdit *width = typed(window, "opening_width", "1002 mm");
    QVERIFY(width != nullptr && !width->complaint().isEmpty());
    QCOMPARE(record(window).openings.size(), std::size_t(1));
    window.selection().choose_opening(roundlay::window::shell(window), 0);
    QCOMPARE(width->text(), QStringLiteral("1001 mm"));
    QVERIFY(typed(window, "opening_width", "")); // nothing is said of it any more
    QVERIFY(record(window).openings.empty());
    window.close_document();
}

void HouseFieldsTest::moisture_and_what_was_tried_are_typed() {
    MainWindow window(kept());
    open_record(window, a_room());
    window.action("record_log")->trigger();
    const std::string tag = window.at_hand().tag();
    const auto fill = [&](const char *box, const char *words) {
        window.record().form().go_to(QLatin1String(box));
        if (at_hand() != QStringLiteral("record_") + QLatin1String(box)) return false;
        type_here(words);
        press_enter();
        return true;
    };
    QVERIFY(fill("moisture0_percent", "18,5"));
    QVERIFY(fill("moisture0_at", "1200 mm"));
    QVERIFY(fill("moisture0_face", "in"));
    QVERIFY(fill("moisture0_season", "wi"));
    QVERIFY(fill("test0_tool", "awl"));
    QVERIFY(fill("test0_showed", "soft for a thumb's depth"));
    QVERIFY(fill("bow", "30 mm"));
    QVERIFY(fill("bow_to", "out"));
    QVERIFY(fill("peg0_state", "sawn"));
    QVERIFY(fill("peg0_note", "flush"));
    const auto log = found(window, tag);
    QVERIFY(log.has_value());
    QCOMPARE(log->moistures.size(), std::size_t(1));
    QCOMPARE(log->moistures[0].percent, 18.5);
    QCOMPARE(log->moistures[0].face, std::optional(FoundFace::inside));
    QCOMPARE(log->moistures[0].season, std::optional(Season::winter));
    QCOMPARE(log->tests.size(), std::size_t(1));
    QCOMPARE(log->tests[0].showed, std::string("soft for a thumb's depth"));
    QCOMPARE(log->bow_to, std::optional(FoundFace::outside));
    QCOMPARE(log->pegs.at(0).note, std::string("flush"));
    QVERIFY(fill("moisture0_percent", "damp"));
    auto *percent = qobject_cast<MeasureEdit *>(window.record().form().box("moisture0_percent"));
    QVERIFY2(percent->complaint().contains("300"), qPrintable(percent->complaint()));
    percent->selectAll();
    QTest::keyClick(percent, Qt::Key_Delete);
    QTest::keyClick(percent, Qt::Key_Return);
    QVERIFY(found(window, tag)->moistures.empty());
    window.close_document();
}

void HouseFieldsTest::photographs_are_taken_from_their_files() {
    MainWindow window(kept());
    open_record(window, a_room());
    window.action("record_log")->trigger();
    const std::string tag = window.at_hand().tag();
    const QString near = folder_.filePath("sill.png");
    QImage image(40, 30, QImage::Format_RGB32);
    image.fill(Qt::darkGreen);
    QVERIFY(image.save(near));
    window.record().add_photographs({near}); // the document lies nowhere yet
    QCOMPARE(found(window, tag)->photographs, std::vector<std::string>{near.toStdString()});
    window.desk().history().undo();
    QVERIFY(window.save_to(folder_.filePath("photographed.roundlay")));
    window.record().add_photographs({near, near, QDir::rootPath() + "elsewhere/a.png"});
    QCOMPARE(found(window, tag)->photographs,
             (std::vector<std::string>{"sill.png", (QDir::rootPath() + "elsewhere/a.png").toStdString()}));
    window.close_document();
}

void HouseFieldsTest::photographs_of_the_demo_are_found() {
    MainWindow window(kept());
    window.resize(1300, 800);
    window.show();
    QVERIFY(QTest::qWaitForWindowActive(&window));
    QCommandLinkButton *link = nullptr;
    for (auto *each : window.findChildren<QCommandLinkButton *>())
        if (each->text().contains("Old house")) link = each;
    QVERIFY(link != nullptr);
    QTest::mouseClick(link, Qt::LeftButton);
    QVERIFY(settled(window));
    raise(window, "record");
    const auto look = [&] {
        int names = 0, seen = 0;
        for (std::size_t i = 0; i < window.at_hand().logs().size(); ++i) {
            const auto photographs = window.at_hand().logs()[i].found.photographs;
            if (photographs.empty()) continue;
            window.at_hand().take(i);
            names += static_cast<int>(photographs.size());
            seen += window.record().photographs().seen();
        }
        return std::pair(names, seen);
    };
    QCOMPARE(look(), std::pair(4, 4));
    keep_picture(window, "demo-photographs");
    // Saved, it looks beside itself; they are put there where the person wants them.
    const QDir folder(folder_.filePath("saved"));
    QVERIFY(QDir().mkpath(folder.path()));
    QVERIFY(window.save_to(folder.filePath("mine.roundlay")));
    QCOMPARE(look(), std::pair(4, 0));
    QVERIFY(window.message().isVisible());
    window.message().answer(0);
    QCOMPARE(folder.entryList(QDir::Dirs | QDir::NoDotAndDotDot), QStringList("old-house"));
    QCOMPARE(look(), std::pair(4, 4));
    QVERIFY(window.save_to(folder.filePath("mine.roundlay")));
    QVERIFY(!window.message().isVisible()); // asked once
    window.close_document();
}

int main(int argc, char **argv) {
    return run_test<HouseFieldsTest>(argc, argv);
}

#include "house_fields_test.moc"
