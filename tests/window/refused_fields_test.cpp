// What is typed and cannot be taken: refused beside its field, where it is put right.
#include "kernel/document/limits.h"
#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/selection.h"
#include "modeler/window/desk/words.h"
#include "modeler/window/frame/new_shell.h"
#include "modeler/window/panels/floor_panel.h"
#include "modeler/window/panels/length_edit.h"
#include "modeler/window/panels/log_panel.h"
#include "modeler/window/views/joint_page.h"
#include "tests/window/support/typing.h"
#include "tests/window/support/window_test.h"

#include <QApplication>
#include <QComboBox>
#include <QTest>

using namespace roundlay;
using namespace roundlay::window;

class RefusedFieldsTest : public WindowTest {
    Q_OBJECT

  private slots:
    void what_is_out_of_range_is_refused_beside_its_field_data();
    void what_is_out_of_range_is_refused_beside_its_field();
    void what_cannot_be_read_stays_on_tab_and_says_why();
    void what_was_typed_of_one_thing_is_not_of_the_next();
    void what_cannot_be_built_is_put_right_where_it_was_typed();
    void what_is_out_of_reach_looks_so();
};

/// Limits of the format: FORMAT.md and kernel/document/limits.h.
void RefusedFieldsTest::what_is_out_of_range_is_refused_beside_its_field_data() {
    QTest::addColumn<QString>("dock");
    QTest::addColumn<QString>("field");
    QTest::addColumn<QString>("wrong");
    QTest::addColumn<QString>("right");
    const QByteArray long_name(201, 'x');
    struct Row {
        const char *called, *dock, *field, *wrong, *right;
    };
    const Row rows[] = {
        {"shell name", "shell", "name", long_name.constData(), "House"},
        {"thickness", "shell", "thickness", "5 m", "9 in"},
        {"pitch", "shell", "pitch", "5 m", "11 in"},
        {"pitch of nothing", "shell", "pitch", "0", "11 in"},
        {"gap", "shell", "gap", "-3 mm", "1/2 in"},
        {"overhang", "shell", "overhang", "9 m", "3 in"},
        {"least tail", "shell", "least_tail", "-1 in", "1 in"},
        {"slope", "shell", "slope", "-1:8", "1:9"},
        {"opening name", "log", "name", long_name.constData(), "pair"},
        {"opening width", "log", "width", "0", "40 in"},
        {"opening width, too far", "log", "width", "101 m", "40 in"},
        {"opening sill", "log", "sill", "-1 mm", "32 in"},
        {"floor level", "floors", "level", "-3 m", "8 ft"},
        {"joist spacing", "floors", "spacing", "0 mm", "20 in"},
        {"joist bearing", "floors", "bearing", "5 m", "3 in"},
        {"joist width", "floors", "joist_width", "-4 in", "4 in"},
        {"load", "floors", "live_load", "2000", "40 psf"},
        {"load without its unit", "floors", "live_load", "40", "40 psf"},
        {"joint slope", "joint", "joint_slope", "-1:8", "1:9"},
    };
    for (const Row &row : rows)
        QTest::newRow(row.called) << QString(row.dock) << QString(row.field) << QString(row.wrong)
                                  << QString(row.right);
}

void RefusedFieldsTest::what_is_out_of_range_is_refused_beside_its_field() {
    QFETCH(QString, dock);
    QFETCH(QString, field);
    QFETCH(QString, wrong);
    QFETCH(QString, right);
    MainWindow window(kept());
    put_up(window);
    if (dock == "log") window.selection().choose_opening(as_written(window), 0);
    const std::string before = window.desk().document().text();
    MeasureEdit &edit = field_in(window, dock.toLatin1(), field.toLatin1());
    enter(edit, wrong);
    QVERIFY(settled(window));
    QCOMPARE(window.desk().document().text(), before);
    QVERIFY(window.desk().state()->read.shell.has_value());
    QVERIFY2(!edit.complaint().isEmpty(), "nothing is said");
    QCOMPARE(told_beside(edit), edit.complaint());
    QCOMPARE(edit.text(), wrong.left(edit.maxLength())); // it is there to be put right
    // Other fields are not in its way.
    MeasureEdit &other = field_in(window, "shell", field == "overhang" ? "thickness" : "overhang");
    enter(other, "7 in");
    QVERIFY(settled(window));
    QVERIFY(window.desk().document().text() != before);
    const std::string then = window.desk().document().text();
    MeasureEdit &again = field_in(window, dock.toLatin1(), field.toLatin1());
    enter(again, right);
    QVERIFY(settled(window));
    QVERIFY2(again.complaint().isEmpty(), qPrintable(again.complaint()));
    QVERIFY(told_beside(again).isEmpty());
    QVERIFY(window.desk().document().text() != then);
    window.close_document();
}

void RefusedFieldsTest::what_cannot_be_read_stays_on_tab_and_says_why() {
    MainWindow window(kept());
    put_up(window);
    const std::string before = window.desk().document().text();
    MeasureEdit &edit = field_in(window, "shell", "thickness");
    const QString old = edit.text();
    type(edit, "about a foot");
    QTest::keyClick(&edit, Qt::Key_Tab);
    QVERIFY(QApplication::focusWidget() != &edit);
    QCOMPARE(edit.text(), QString("about a foot"));
    QVERIFY(told_beside(edit).contains("expected"));
    QCOMPARE(window.desk().document().text(), before);
    edit.setFocus();
    QTest::keyClick(&edit, Qt::Key_Escape); // or the old value again
    QCOMPARE(edit.text(), old);
    QVERIFY(told_beside(edit).isEmpty());
    window.close_document();
}

void RefusedFieldsTest::what_was_typed_of_one_thing_is_not_of_the_next() {
    MainWindow window(kept());
    put_up(window);
    window.selection().choose_opening(as_written(window), 0);
    MeasureEdit &edit = field_in(window, "log", "width");
    enter(edit, "wide");
    QVERIFY(!edit.complaint().isEmpty());
    window.selection().choose_opening(as_written(window), 1);
    QVERIFY(edit.complaint().isEmpty() && edit.text() != "wide");
    QCOMPARE(edit.text(), length_text(as_written(window).openings[1].width.mm(), UnitSystem::imperial));
    MeasureEdit &name = field_in(window, "shell", "name");
    enter(name, QString(201, u'x'));
    QVERIFY(!name.complaint().isEmpty());
    window.close_document();
    window.begin_demo(0);
    QVERIFY(settled(window));
    QVERIFY(name.complaint().isEmpty());
    type(name, "being typed when the window goes");
}

void RefusedFieldsTest::what_cannot_be_built_is_put_right_where_it_was_typed() {
    MainWindow window(kept());
    put_up(window);
    raise(window, "joint");
    window.joint().scope()->setCurrentIndex(1); // the whole shell
    emit window.joint().scope()->activated(1);
    MeasureEdit &slope = field_in(window, "joint", "joint_slope");
    const QString old = slope.text();
    const std::string before = window.desk().document().text();
    enter(slope, "1:1");
    QVERIFY(settled(window));
    QVERIFY(!window.desk().state()->stands());
    QCOMPARE(slope.text(), QString("1:1")); // what is stated, not what stood last
    enter(slope, old);
    QVERIFY(settled(window));
    QVERIFY(window.desk().state()->stands());
    QCOMPARE(slope.text(), old);
    // A log of its own, and the pitch of the shell.
    const Layout &layout = window.desk().standing()->job.layout;
    window.selection().choose_piece(layout, Index<Piece>(0));
    MeasureEdit &height = field_in(window, "log", "butt_height");
    enter(height, "60 in");
    QVERIFY(settled(window));
    QVERIFY(!window.desk().state()->stands());
    QCOMPARE(height.text(), length_text(1524, UnitSystem::imperial));
    height.setFocus();
    height.selectAll();
    QTest::keyClick(&height, Qt::Key_Delete);
    QTest::keyClick(&height, Qt::Key_Return);
    QVERIFY(settled(window));
    QVERIFY(window.desk().state()->stands());
    window.close_document();
}

/// Also once something wrong was typed there and put right.
void RefusedFieldsTest::what_is_out_of_reach_looks_so() {
    MainWindow window(kept());
    put_up(window);
    MeasureEdit &slope = field_in(window, "shell", "slope");
    type(slope, "steep");
    QTest::keyClick(&slope, Qt::Key_Return);
    QVERIFY(!slope.complaint().isEmpty());
    QVERIFY(slope.palette().color(QPalette::Active, QPalette::Text) !=
            QApplication::palette().color(QPalette::Active, QPalette::Text));
    QTest::keyClick(&slope, Qt::Key_Escape);
    for (const auto group : {QPalette::Active, QPalette::Disabled})
        QCOMPARE(slope.palette().color(group, QPalette::Text),
                 QApplication::palette().color(group, QPalette::Text));
    QVERIFY(slope.palette().color(QPalette::Disabled, QPalette::Text) !=
            slope.palette().color(QPalette::Active, QPalette::Text));
    window.close_document();
}

int main(int argc, char **argv) {
    return run_test<RefusedFieldsTest>(argc, argv);
}

#include "refused_fields_test.moc"
