// What a person types into fields, by the keyboard: taken, refused beside the field, undone; and where the
// keyboard is.
#include "kernel/design/shell_edits.h"
#include "kernel/document/limits.h"
#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/selection.h"
#include "modeler/window/desk/words.h"
#include "modeler/window/frame/focus_ring.h"
#include "modeler/window/frame/new_shell.h"
#include "modeler/window/panels/floor_panel.h"
#include "modeler/window/panels/length_edit.h"
#include "modeler/window/panels/log_panel.h"
#include "modeler/window/panels/text_panel.h"
#include "modeler/window/views/joint_page.h"
#include "modeler/window/views/plan_view.h"
#include "tests/window/support/typing.h"

#include <QAction>
#include <QApplication>
#include <QComboBox>
#include <QDialog>
#include <QDockWidget>
#include <QFormLayout>
#include <QLabel>
#include <QScreen>
#include <QSettings>
#include <QSpinBox>
#include <QStandardItemModel>
#include <QTemporaryDir>
#include <QTest>
#include <QTimer>

using namespace roundlay;
using namespace roundlay::window;

namespace {

const Shell &as_written(MainWindow &window) {
    return *window.desk().state()->read.shell;
}

} // namespace

class FieldsTest : public QObject {
    Q_OBJECT

  private slots:
    void what_is_out_of_range_is_refused_beside_its_field_data();
    void what_is_out_of_range_is_refused_beside_its_field();
    void what_cannot_be_read_stays_on_tab_and_says_why();
    void what_was_typed_of_one_thing_is_not_of_the_next();
    void a_bare_number_is_of_the_shell_s_unit();
    void what_cannot_be_built_is_put_right_where_it_was_typed();
    void what_stands_in_a_field_is_saved();
    void a_corner_that_is_stated_as_the_shell_is_not_stated();
    void what_is_out_of_reach_looks_so();
    void saddles_are_offered_for_the_whole_shell_only();
    void the_window_fits_its_screen_and_remembers_its_panels();
    void reading_an_edit_back_costs_little();

  private:
    QTemporaryDir folder_;
    QString kept() const { return folder_.filePath(QStringLiteral("unsaved")); }
};

/// Limits of the format: FORMAT.md and kernel/document/limits.h.
void FieldsTest::what_is_out_of_range_is_refused_beside_its_field_data() {
    QTest::addColumn<QString>("dock");
    QTest::addColumn<QString>("field");
    QTest::addColumn<QString>("wrong");
    QTest::addColumn<QString>("right");
    const QString long_name(201, u'x');
    QTest::newRow("shell name") << "shell"
                                << "name" << long_name << "House";
    QTest::newRow("thickness") << "shell"
                               << "thickness"
                               << "5 m"
                               << "9 in";
    QTest::newRow("pitch") << "shell"
                           << "pitch"
                           << "5 m"
                           << "11 in";
    QTest::newRow("pitch of nothing") << "shell"
                                      << "pitch"
                                      << "0"
                                      << "11 in";
    QTest::newRow("gap") << "shell"
                         << "gap"
                         << "-3 mm"
                         << "1/2 in";
    QTest::newRow("overhang") << "shell"
                              << "overhang"
                              << "9 m"
                              << "3 in";
    QTest::newRow("least tail") << "shell"
                                << "least_tail"
                                << "-1 in"
                                << "1 in";
    QTest::newRow("slope") << "shell"
                           << "slope"
                           << "-1:8"
                           << "1:9";
    QTest::newRow("opening name") << "log"
                                  << "name" << long_name << "pair";
    QTest::newRow("opening width") << "log"
                                   << "width"
                                   << "0"
                                   << "40 in";
    QTest::newRow("opening width, too far") << "log"
                                            << "width"
                                            << "101 m"
                                            << "40 in";
    QTest::newRow("opening sill") << "log"
                                  << "sill"
                                  << "-1 mm"
                                  << "32 in";
    QTest::newRow("floor level") << "floors"
                                 << "level"
                                 << "-3 m"
                                 << "8 ft";
    QTest::newRow("joist spacing") << "floors"
                                   << "spacing"
                                   << "0 mm"
                                   << "20 in";
    QTest::newRow("joist bearing") << "floors"
                                   << "bearing"
                                   << "5 m"
                                   << "3 in";
    QTest::newRow("joist width") << "floors"
                                 << "joist_width"
                                 << "-4 in"
                                 << "4 in";
    QTest::newRow("load") << "floors"
                          << "live_load"
                          << "2000"
                          << "40 psf";
    QTest::newRow("load without its unit") << "floors"
                                           << "live_load"
                                           << "40"
                                           << "40 psf";
    QTest::newRow("joint slope") << "joint"
                                 << "joint_slope"
                                 << "-1:8"
                                 << "1:9";
}

void FieldsTest::what_is_out_of_range_is_refused_beside_its_field() {
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

void FieldsTest::what_cannot_be_read_stays_on_tab_and_says_why() {
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

void FieldsTest::what_was_typed_of_one_thing_is_not_of_the_next() {
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

void FieldsTest::a_bare_number_is_of_the_shell_s_unit() {
    LengthEdit edit;
    const auto takes = [&](UnitSystem units, const char *typed, double mm) {
        edit.set_length(Length::mm(1), units);
        edit.selectAll();
        QTest::keyClicks(&edit, typed);
        QTest::keyClick(&edit, Qt::Key_Return);
        return edit.complaint().isEmpty() && std::abs(edit.length().mm() - mm) < 1e-9;
    };
    QVERIFY(takes(UnitSystem::metric, "1200", 1200));
    QVERIFY(takes(UnitSystem::metric, "22.5", 22.5));
    QVERIFY(takes(UnitSystem::imperial, "36", 914.4)); // 25.4 mm to the inch, by definition
    QVERIFY(takes(UnitSystem::imperial, "8 1/2", 215.9));
    QVERIFY(takes(UnitSystem::imperial, "2 m", 2000)); // a unit that is typed counts
    QVERIFY(takes(UnitSystem::metric, "10 in", 254));
    QVERIFY(!takes(UnitSystem::metric, "12 34", 1234)); // two numbers are none
}

void FieldsTest::what_cannot_be_built_is_put_right_where_it_was_typed() {
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

void FieldsTest::what_stands_in_a_field_is_saved() {
    MainWindow window(kept());
    put_up(window);
    const QString path = folder_.filePath("typed.roundlay");
    QVERIFY(window.save_to(path));
    MeasureEdit &edit = field_in(window, "shell", "name");
    type(edit, "Typed and not entered");
    QTest::keyClick(&edit, Qt::Key_S, Qt::ControlModifier);
    QFile file(path);
    QVERIFY(file.open(QIODevice::ReadOnly));
    QVERIFY(file.readAll().contains("Typed and not entered"));
    QVERIFY(!window.desk().unsaved());
    window.close_document();
}

void FieldsTest::a_corner_that_is_stated_as_the_shell_is_not_stated() {
    MainWindow window(kept());
    window.show();
    window.begin(*shell_of(usual_shell(Shape::rectangle, UnitSystem::metric)), "Corner");
    QVERIFY(settled(window));
    raise(window, "joint");
    window.selection().choose_corner("AB");
    const std::string first = window.desk().document().text();
    JointPage &joint = window.joint();
    for (const NotchKind kind : {NotchKind::half_dovetail, NotchKind::full_dovetail}) {
        joint.kind()->setCurrentIndex(static_cast<int>(kind));
        emit joint.kind()->activated(static_cast<int>(kind));
        QVERIFY(settled(window));
        QCOMPARE(as_written(window).corners.size(), std::size_t(kind == NotchKind::half_dovetail ? 1 : 0));
    }
    QVERIFY(window.desk().document().text().find("[[corner]]") == std::string::npos);
    QVERIFY(first.find("[[corner]]") == std::string::npos);
    window.close_document();
}

/// Also once something wrong was typed there and put right.
void FieldsTest::what_is_out_of_reach_looks_so() {
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

void FieldsTest::saddles_are_offered_for_the_whole_shell_only() {
    MainWindow window(kept());
    window.show();
    window.begin(*shell_of(usual_shell(Shape::ell, UnitSystem::metric)), "Round");
    QVERIFY(settled(window));
    raise(window, "joint");
    JointPage &joint = window.joint();
    window.selection().choose_corner("AB");
    const auto offered = [&](NotchKind kind) {
        return qobject_cast<QStandardItemModel *>(joint.kind()->model())
            ->item(static_cast<int>(kind))
            ->isEnabled();
    };
    const auto take_scope = [&](NotchScope scope) {
        joint.scope()->setCurrentIndex(static_cast<int>(scope));
        emit joint.scope()->activated(static_cast<int>(scope));
    };
    const auto take_kind = [&](NotchKind kind) {
        joint.kind()->setCurrentIndex(static_cast<int>(kind));
        emit joint.kind()->activated(static_cast<int>(kind));
        return settled(window);
    };
    const Layout &layout = window.desk().standing()->job.layout;
    window.selection().choose_piece(layout, *piece_tagged(layout, "A-02-1"));
    for (const NotchScope scope : {NotchScope::corner, NotchScope::log}) {
        take_scope(scope);
        QVERIFY(!offered(NotchKind::saddle));
        QVERIFY(offered(NotchKind::half_dovetail));
    }
    take_scope(NotchScope::shell);
    QVERIFY(offered(NotchKind::saddle) && offered(NotchKind::square_lap));
    QVERIFY(take_kind(NotchKind::saddle)); // with what round logs need, it stands
    QVERIFY(window.desk().state()->stands());
    QCOMPARE(window.desk().state()->job.shell.notch.kind, NotchKind::saddle);
    take_scope(NotchScope::corner);
    QVERIFY(offered(NotchKind::saddle) && !offered(NotchKind::full_dovetail));
    const std::string saddled = window.desk().document().text();
    QVERIFY(take_kind(NotchKind::saddle)); // again: there is nothing to write
    QCOMPARE(window.desk().document().text(), saddled);
    take_scope(NotchScope::shell);
    QVERIFY(take_kind(NotchKind::full_dovetail));
    QVERIFY(window.desk().state()->stands());
    window.close_document();
}

void FieldsTest::the_window_fits_its_screen_and_remembers_its_panels() {
    QSettings().remove("window");
    const QSize room = QGuiApplication::primaryScreen()->availableGeometry().size();
    const auto front = [](MainWindow &window, const char *dock) {
        return !window.findChild<QDockWidget *>(QLatin1String(dock))->visibleRegion().isEmpty();
    };
    {
        MainWindow window(kept());
        QVERIFY(window.width() <= room.width() && window.height() <= room.height());
        window.show();
        window.begin_demo(0);
        QVERIFY(settled(window));
        window.resize(700, 560); // of the offscreen screen of 800 x 800
        raise(window, "shell");
        window.action("panel_findings")->trigger();
        QVERIFY(!front(window, "findings") && front(window, "shell") && !front(window, "plan"));
        window.close_document(); // and another in the same session
        window.begin_demo(0);
        QVERIFY(settled(window));
        QTRY_VERIFY(!front(window, "findings") && front(window, "shell"));
        window.close();
    }
    MainWindow window(kept());
    window.show();
    QCOMPARE(window.size(), QSize(700, 560));
    window.begin_demo(0);
    QVERIFY(settled(window));
    QTRY_VERIFY(!front(window, "findings") && front(window, "shell") && !front(window, "plan"));
    window.findChild<QDockWidget *>("plan")->setFloating(true);
    window.action("put_panels_back")->trigger();
    QTRY_VERIFY(front(window, "findings") && front(window, "plan") && !front(window, "shell"));
    QVERIFY(!window.findChild<QDockWidget *>("plan")->isFloating());
    window.close_document();
    QSettings().remove("window");
}

/// Every step of a drag is read back before it is taken: a small part of what is worked out for it anyway.
void FieldsTest::reading_an_edit_back_costs_little() {
    MainWindow window(kept());
    window.begin_demo(1);
    QVERIFY(settled(window));
    std::vector<double> shares;
    for (int i = 1; i <= 9; ++i) {
        window.desk().edit("wall", [i](const Shell &s) {
            Shell next = s;
            next.notch.overhang = Length::inches(i);
            return std::optional(next);
        });
        QVERIFY(settled(window));
        const Times &times = window.desk().state()->times;
        shares.push_back(times.read / times.all());
    }
    std::sort(shares.begin(), shares.end());
    qInfo("reading: %.1f %% of an edit", 100 * shares[shares.size() / 2]);
    QVERIFY(shares[shares.size() / 2] < 0.1);
    window.close_document();
}

int main(int argc, char **argv) {
    const TestProgram program(argc, argv);
    FieldsTest test;
    return QTest::qExec(&test, argc, argv);
}

#include "fields_test.moc"
