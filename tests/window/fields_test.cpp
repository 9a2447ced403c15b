// What a person types into fields, by the keyboard: taken, saved, offered where it has a meaning.
#include "kernel/design/shell_edits.h"
#include "kernel/document/limits.h"
#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/selection.h"
#include "modeler/window/frame/focus_ring.h"
#include "modeler/window/frame/new_shell.h"
#include "modeler/window/panels/floor_panel.h"
#include "modeler/window/panels/length_edit.h"
#include "modeler/window/panels/log_panel.h"
#include "modeler/window/views/joint_page.h"
#include "modeler/window/views/plan_view.h"
#include "tests/window/support/typing.h"
#include "tests/window/support/window_test.h"

#include <QAction>
#include <QApplication>
#include <QComboBox>
#include <QDockWidget>
#include <QScreen>
#include <QSettings>
#include <QStandardItemModel>
#include <QTest>

using namespace roundlay;
using namespace roundlay::window;

class FieldsTest : public WindowTest {
    Q_OBJECT

  private slots:
    void a_bare_number_is_of_the_shell_s_unit();
    void what_stands_in_a_field_is_saved();
    void what_stands_on_title_blocks_is_stated_and_taken_back();
    void a_corner_that_is_stated_as_the_shell_is_not_stated();
    void saddles_are_offered_for_the_whole_shell_only();
    void the_window_fits_its_screen_and_remembers_its_panels();
    void reading_an_edit_back_costs_little();
};

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

void FieldsTest::what_stands_on_title_blocks_is_stated_and_taken_back() {
    MainWindow window(kept());
    put_up(window);
    const std::string before = window.desk().document().text();
    for (const auto &[field, words] : {std::pair{"project_number", "26-014"},
                                       {"project_owner", "Orne"},
                                       {"project_creator", "R. Hale"},
                                       {"project_approved", "M. Orne"},
                                       {"project_revision", "B"}}) {
        enter(field_in(window, "shell", field), words);
        QVERIFY(settled(window));
    }
    const Project project = as_written(window).project;
    QVERIFY((project == Project{"26-014", "Orne", "R. Hale", "M. Orne", "B"}));
    for (int i = 0; i < 5; ++i)
        window.desk().history().undo();
    QVERIFY(window.desk().document().text() == before);
    window.close_document();
}

void FieldsTest::a_corner_that_is_stated_as_the_shell_is_not_stated() {
    MainWindow window(kept());
    QVERIFY(shown(window, *shell_of(usual_shell(Shape::rectangle, UnitSystem::metric)), "Corner"));
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

void FieldsTest::saddles_are_offered_for_the_whole_shell_only() {
    MainWindow window(kept());
    QVERIFY(shown(window, *shell_of(usual_shell(Shape::ell, UnitSystem::metric)), "Round"));
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
        QVERIFY(shown_demo(window, 0));
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
    return run_test<FieldsTest>(argc, argv);
}

#include "fields_test.moc"
