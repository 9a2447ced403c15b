// The form for a new shell: sizes that cannot be, or were hardly meant, and a drawing that is not lost.
#include "modeler/window/desk/desk.h"
#include "modeler/window/frame/new_shell.h"
#include "modeler/window/frame/new_shell_words.h"
#include "modeler/window/frame/save_picture.h"
#include "modeler/window/panels/count_box.h"
#include "modeler/window/panels/length_edit.h"
#include "modeler/window/views/plan_sketch.h"
#include "tests/window/support/sight.h"
#include "tests/window/support/typing.h"
#include "tests/window/support/window_test.h"

#include <QApplication>
#include <QComboBox>
#include <QDockWidget>
#include <QLabel>
#include <QMessageBox>
#include <QPushButton>
#include <QSettings>
#include <QTest>
#include <QTimer>

using namespace roundlay;
using namespace roundlay::window;

namespace {

QPushButton *make_button(QDialog &dialog) {
    for (QPushButton *button : dialog.findChildren<QPushButton *>())
        if (!button->text().contains("Cancel")) return button;
    return nullptr;
}

/// Four corners, not closed yet.
void draw_a_room(NewShellDialog &dialog) {
    dialog.show();
    dialog.choose(Shape::drawn);
    for (const Vec2 corner : {Vec2{0, 0}, Vec2{6000, 0}, Vec2{6000, 5000}, Vec2{0, 5000}})
        dialog.sketch().add_corner(corner);
}

} // namespace

class NewShellSizesTest : public WindowTest {
    Q_OBJECT

  private slots:
    void a_size_that_cannot_be_is_refused_at_its_field();
    void what_cannot_be_read_is_told_at_its_field_of_every_kind_of_log();
    void too_many_rounds_are_refused_at_their_field();
    void it_says_what_a_bare_number_is_and_doubts_a_tiny_wall();
    void it_starts_with_the_units_that_were_used_last();
    void a_picture_too_large_is_refused_at_its_field();
    void enter_goes_on_drawing();
    void a_drawing_that_was_cleared_comes_back();
};

/// Bounds of the format (FORMAT.md): walls over 0, gaps from 0, all of the section up to 2 m.
void NewShellSizesTest::a_size_that_cannot_be_is_refused_at_its_field() {
    for (const UnitSystem units : {UnitSystem::metric, UnitSystem::imperial}) {
        NewShellDialog dialog(units);
        dialog.choose(Shape::ell);
        dialog.show();
        QVERIFY(QTest::qWaitForWindowActive(&dialog));
        for (LengthEdit *edit : seen_lengths(dialog))
            for (const char *wrong : {"-3 m", "500 m"}) {
                const Length before = edit->length();
                enter(*edit, wrong);
                const QString why = told_beside(*edit);
                QVERIFY2(why.contains(units == UnitSystem::metric ? " m" : " ft"), qPrintable(why));
                QVERIFY2(why.contains(edit->accessibleName().section(u',', 0, 0)), qPrintable(why));
                QCOMPARE(edit->length(), before);
                QVERIFY(!make_button(dialog)->isEnabled());
                QTest::keyClick(edit, Qt::Key_Escape);
                QVERIFY(told_beside(*edit).isEmpty());
                QVERIFY(make_button(dialog)->isEnabled());
            }
    }
}

/// What is typed stays as it was typed: no digit goes by itself.
/// Rows that come and go with the kind of log take no reason along.
void NewShellSizesTest::what_cannot_be_read_is_told_at_its_field_of_every_kind_of_log() {
    NewShellDialog dialog(UnitSystem::metric);
    dialog.show();
    QVERIFY(QTest::qWaitForWindowActive(&dialog));
    QComboBox *kind = nullptr;
    for (QComboBox *box : dialog.findChildren<QComboBox *>())
        if (box->count() == 4) kind = box;
    QVERIFY(kind != nullptr);
    for (const int logs : {0, 3, 1, 3}) { // hewn, and round ones
        kind->setCurrentIndex(logs);
        for (LengthEdit *edit : seen_lengths(dialog)) {
            const QString before = edit->text();
            type(*edit, "abc");
            QTest::keyClick(edit, Qt::Key_Tab);
            QVERIFY2(told_beside(*edit).contains("expected"), qPrintable(edit->accessibleName()));
            bool below = false;
            for (const QLabel *label : dialog.findChildren<QLabel *>())
                below = below || label->text().startsWith("Put right first");
            QVERIFY2(below, qPrintable(edit->accessibleName()));
            QVERIFY(!make_button(dialog)->isEnabled());
            enter(*edit, before);
            QVERIFY(told_beside(*edit).isEmpty() && make_button(dialog)->isEnabled());
        }
    }
}

void NewShellSizesTest::too_many_rounds_are_refused_at_their_field() {
    NewShellDialog dialog(UnitSystem::metric);
    dialog.show();
    QVERIFY(QTest::qWaitForWindowActive(&dialog));
    auto *rounds = dialog.findChild<CountBox *>();
    const auto count = [&](const char *typed) {
        rounds->setFocus();
        rounds->selectAll();
        QTest::keyClicks(rounds, typed);
        QTest::keyClick(rounds, Qt::Key_Tab);
        return rounds->text();
    };
    for (const char *wrong : {"9999", "-4", "0"}) {
        QCOMPARE(count(wrong), QString(wrong));
        QVERIFY2(told_beside(*rounds).contains("200"), qPrintable(told_beside(*rounds))); // FORMAT.md
        QVERIFY(!make_button(dialog)->isEnabled());
    }
    QCOMPARE(count("9"), QString("9"));
    QVERIFY(told_beside(*rounds).isEmpty());
    QVERIFY(make_button(dialog)->isEnabled());
    QCOMPARE(dialog.shell().rounds.count, std::optional(9));
    QTest::keyClick(rounds, Qt::Key_Up);
    QCOMPARE(dialog.shell().rounds.count, std::optional(10));
    MainWindow window(kept());
    put_up(window);
    raise(window, "shell");
    auto *box = window.findChild<QDockWidget *>("shell")->findChild<CountBox *>();
    const std::string before = window.desk().document().text();
    box->setFocus();
    box->selectAll();
    QTest::keyClicks(box, "9999");
    QTest::keyClick(box, Qt::Key_Return);
    QVERIFY(told_beside(*box).contains("200"));
    QCOMPARE(box->text(), QString("9999"));
    QCOMPARE(window.desk().document().text(), before);
    box->selectAll();
    QTest::keyClicks(box, "7");
    DialogCloser closer;
    window.action("save")->trigger(); // takes what stands in the field, though nobody pressed Enter
    QVERIFY(told_beside(*box).isEmpty());
    QVERIFY(window.desk().document().text() != before);
    window.close_document();
}

void NewShellSizesTest::it_says_what_a_bare_number_is_and_doubts_a_tiny_wall() {
    const auto says = [](NewShellDialog &dialog, const QString &words) {
        for (const QLabel *label : dialog.findChildren<QLabel *>())
            if (label->isVisible() && label->text().contains(words)) return true;
        return false;
    };
    NewShellDialog dialog(UnitSystem::imperial);
    dialog.show();
    QVERIFY(says(dialog, "A bare number is in inches"));
    LengthEdit &width = *seen_lengths(dialog).front();
    enter(width, "26"); // 2' 2"
    QCOMPARE(width.length(), Length::inches(26));
    QVERIFY2(told_beside(width).contains("inches"), qPrintable(told_beside(width)));
    QVERIFY(width.complaint().isEmpty()); // a doubt, no refusal
    enter(width, "26'");
    QVERIFY(told_beside(width).isEmpty());
    dialog.findChildren<QComboBox *>()[1]->setCurrentIndex(0);
    QVERIFY(says(dialog, "A bare number is in millimetres") && !says(dialog, "in inches"));
    QCOMPARE(width.length(), Length::feet(26));
    enter(width, "8");
    QVERIFY(told_beside(width).contains("millimetres"));
}

void NewShellSizesTest::it_starts_with_the_units_that_were_used_last() {
    QSettings().remove("new_shell");
    const QLocale america(QLocale::English, QLocale::UnitedStates), france(QLocale::French, QLocale::France);
    QCOMPARE(units_to_begin_with(america), UnitSystem::imperial);
    QCOMPARE(units_to_begin_with(france), UnitSystem::metric);
    NewShellDialog dialog(UnitSystem::imperial);
    dialog.accept();
    QCOMPARE(units_to_begin_with(france), UnitSystem::imperial);
    NewShellDialog other(UnitSystem::metric);
    other.reject(); // nothing was made
    QCOMPARE(units_to_begin_with(america), UnitSystem::imperial);
    other.accept();
    QCOMPARE(units_to_begin_with(america), UnitSystem::metric);
    QSettings().remove("new_shell");
}

void NewShellSizesTest::a_picture_too_large_is_refused_at_its_field() {
    PictureSizeDialog dialog({800, 400});
    dialog.show();
    QVERIFY(QTest::qWaitForWindowActive(&dialog));
    auto *width = dialog.findChild<CountBox *>();
    width->setFocus();
    width->selectAll();
    QTest::keyClicks(width, "99999");
    QVERIFY(width->text().startsWith("99999"));
    QVERIFY(!told_beside(*width).isEmpty());
    QVERIFY(!make_button(dialog)->isEnabled());
    width->selectAll();
    QTest::keyClicks(width, "640");
    QVERIFY(make_button(dialog)->isEnabled());
    QCOMPARE(dialog.size_in_pixels().width(), 640);
}

void NewShellSizesTest::enter_goes_on_drawing() {
    for (const Qt::Key key : {Qt::Key_Return, Qt::Key_Escape}) {
        NewShellDialog dialog(UnitSystem::metric);
        draw_a_room(dialog);
        bool asked = false;
        QTimer::singleShot(100, &dialog, [&] {
            auto *box = qobject_cast<QMessageBox *>(QApplication::activeModalWidget());
            asked = box != nullptr;
            if (asked) QTest::keyClick(box, key);
        });
        dialog.reject();
        QVERIFY(asked);
        QVERIFY(dialog.isVisible());
        QCOMPARE(dialog.sketch().corners().size(), std::size_t(4));
    }
}

void NewShellSizesTest::a_drawing_that_was_cleared_comes_back() {
    for (const auto &[key, with] :
         {std::pair(Qt::Key_Backspace, Qt::NoModifier), std::pair(Qt::Key_Z, Qt::ControlModifier)}) {
        NewShellDialog dialog(UnitSystem::metric);
        draw_a_room(dialog);
        PlanSketch &sketch = dialog.sketch();
        QTest::keyClick(&sketch, Qt::Key_Escape);
        QVERIFY(dialog.isVisible());
        QVERIFY(sketch.corners().empty());
        DialogCloser closer; // stays, for it asks first
        QTest::keyClick(&sketch, Qt::Key_Escape);
        QVERIFY(dialog.isVisible());
        QCOMPARE(closer.closed(), 1);
        QTest::keyClick(&sketch, key, with);
        QCOMPARE(sketch.corners().size(), std::size_t(4));
        QTest::keyClick(&sketch, key, with);
        QCOMPARE(sketch.corners().size(), std::size_t(3));
    }
}

int main(int argc, char **argv) {
    return run_test<NewShellSizesTest>(argc, argv);
}

#include "new_shell_sizes_test.moc"
