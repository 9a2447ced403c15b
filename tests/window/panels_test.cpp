// What the panels tell, take and say, in words and by the keyboard, on a machine that draws no model.
#include "kernel/design/floor_edits.h"
#include "kernel/design/opening_edits.h"
#include "kernel/design/round_figures.h"
#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/selection.h"
#include "modeler/window/desk/words.h"
#include "modeler/window/frame/application.h"
#include "modeler/window/frame/new_shell.h"
#include "modeler/window/panels/cut_list_panel.h"
#include "modeler/window/panels/findings_panel.h"
#include "modeler/window/panels/floor_panel.h"
#include "modeler/window/panels/length_edit.h"
#include "modeler/window/panels/log_fields.h"
#include "modeler/window/panels/log_panel.h"
#include "modeler/window/panels/message_bar.h"
#include "modeler/window/views/elevation_view.h"
#include "modeler/window/views/model_page.h"
#include "modeler/window/views/plan_view.h"
#include "tests/window/support/window_test.h"

#include <QClipboard>
#include <QComboBox>
#include <QDockWidget>
#include <QGuiApplication>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QSignalSpy>
#include <QTableView>
#include <QTest>
#include <QTreeWidget>

using namespace roundlay;
using namespace roundlay::window;

class PanelsTest : public WindowTest {
    Q_OBJECT

  private slots:
    void nonsense_in_a_length_field_keeps_the_old_value();
    void the_keyboard_alone_is_enough();
    void the_tab_key_goes_everywhere_and_comes_back();
    void the_cut_list_is_sorted_filtered_and_copied();
    void nothing_of_the_document_before_stays_in_the_panels();
    void findings_that_an_edit_does_not_change_stay();
    void without_opengl_a_sentence_stands_where_the_model_would_be();
};

void PanelsTest::nonsense_in_a_length_field_keeps_the_old_value() {
    LengthEdit edit;
    edit.set_length(Length::mm(230), UnitSystem::metric);
    edit.selectAll();
    QTest::keyClicks(&edit, "about a foot");
    QTest::keyClick(&edit, Qt::Key_Return);
    QCOMPARE(edit.length(), Length::mm(230));
    QVERIFY(edit.complaint().contains("expected"));
    edit.selectAll();
    QTest::keyClicks(&edit, "8 1/2 in");
    QTest::keyClick(&edit, Qt::Key_Return);
    QCOMPARE(edit.length(), Length::inches(8.5));
    QVERIFY(edit.complaint().isEmpty());
}

void PanelsTest::the_keyboard_alone_is_enough() {
    MainWindow window(kept());
    window.show();
    QVERIFY(QTest::qWaitForWindowActive(&window));
    window.begin_demo(1);
    QVERIFY(settled(window));
    window.plan().setFocus();
    QTest::keyClick(&window.plan(), Qt::Key_PageDown);
    QCOMPARE(window.selection().wall(), std::string("A"));
    const double before = window.desk().standing()->job.shell.walls[1].length.mm();
    QTest::keyClick(&window.plan(), Qt::Key_Up);
    QVERIFY(settled(window));
    QCOMPARE(window.desk().standing()->job.shell.walls[1].length.mm(),
             before + grid_step(UnitSystem::imperial));
    window.elevation().setFocus();
    QTest::keyClick(&window.elevation(), Qt::Key_PageDown);
    QVERIFY(window.selection().is_opening(0));
    const double left = window.desk().standing()->job.shell.openings[0].from_left.mm();
    QTest::keyClick(&window.elevation(), Qt::Key_Right);
    QTest::keyClick(&window.elevation(), Qt::Key_Right, Qt::ControlModifier);
    QVERIFY(settled(window));
    QCOMPARE(window.desk().standing()->job.shell.openings[0].from_left.mm(),
             left + grid_step(UnitSystem::imperial));
    const auto openings = window.desk().standing()->job.shell.openings.size();
    QTest::keyClick(&window, Qt::Key_Delete);
    QVERIFY(settled(window));
    QCOMPARE(window.desk().standing()->job.shell.openings.size(), openings - 1);
    QTest::keyClick(&window, Qt::Key_Z, Qt::ControlModifier);
    QVERIFY(settled(window));
    QCOMPARE(window.desk().standing()->job.shell.openings.size(), openings);
    QTest::keyClick(&window, Qt::Key_Period, Qt::ControlModifier);
    QCOMPARE(window.selection().chosen().kind, Chosen::Kind::piece);
    window.close_document();
}

void PanelsTest::the_tab_key_goes_everywhere_and_comes_back() {
    MainWindow window(kept());
    QVERIFY(shown_demo(window, 1));
    QVERIFY(QTest::qWaitForWindowActive(&window));
    window.findChild<QWidget *>("text")->raise(); // a field for text must let the tab key go
    window.plan().setFocus();
    QSet<const QWidget *> seen;
    constexpr int most = 200;
    for (int i = 0; i < most; ++i) {
        const QWidget *now = QApplication::focusWidget();
        QVERIFY(now != nullptr);
        if (now == &window.plan() && i > 0) break;
        seen.insert(now);
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
    }
    QCOMPARE(QApplication::focusWidget(), &window.plan()); // round once
    QStringList missed;
    for (const QWidget *w : window.findChildren<QWidget *>())
        if (w->isVisible() && w->isEnabled() && (w->focusPolicy() & Qt::TabFocus) &&
            w->focusProxy() == nullptr && !seen.contains(w))
            missed << QString::fromLatin1(w->metaObject()->className()) + u' ' + w->accessibleName();
    QCOMPARE(missed, QStringList());
    window.close_document();
}

void PanelsTest::the_cut_list_is_sorted_filtered_and_copied() {
    MainWindow window(kept());
    window.begin_demo(1);
    QVERIFY(settled(window));
    window.cut_list().show();
    window.show();
    window.findChild<QWidget *>("cut_list")->raise();
    QTRY_VERIFY(window.cut_list().isVisible());
    QTableView &table = *window.cut_list().table();
    const int all = table.model()->rowCount();
    QCOMPARE(all, static_cast<int>(window.desk().standing()->job.layout.pieces.size()));
    window.cut_list().filter()->setText("C-0");
    QVERIFY(table.model()->rowCount() > 0 && table.model()->rowCount() < all);
    window.cut_list().copy();
    const QStringList lines = QGuiApplication::clipboard()->text().trimmed().split('\n');
    QCOMPARE(lines.size(), table.model()->rowCount() + 1);
    QVERIFY(lines[1].contains('\t'));
    window.close_document();
}

namespace {

/// All that fields, boxes and lists below it show.
QStringList shown_in(const QWidget &panel) {
    QStringList all;
    for (const QLineEdit *edit : panel.findChildren<QLineEdit *>())
        all << edit->text();
    for (const QComboBox *box : panel.findChildren<QComboBox *>())
        all << box->currentText();
    for (const QLabel *label : panel.findChildren<QLabel *>())
        if (label->buddy() == nullptr) all << label->text();
    for (const QTableView *table : panel.findChildren<QTableView *>())
        for (int row = 0; row < table->model()->rowCount(); ++row)
            all << table->model()->index(row, 0).data().toString();
    if (const auto *text = panel.findChild<QPlainTextEdit *>(); text->isVisible())
        all << text->toPlainText(); // else it is filled when it is seen
    return all;
}

} // namespace

/// A text that cannot be read takes the place of one that could, with each panel in front once.
void PanelsTest::nothing_of_the_document_before_stays_in_the_panels() {
    Shell first = *shell_of(usual_shell(Shape::rectangle, UnitSystem::metric));
    first.name = "Zebrawood";
    first.thickness = Length::mm(187);
    first.notch.slope = Slope::rise_per_run(1.0 / 11);
    first.openings.push_back(usual_opening(OpeningKind::door, "A", UnitSystem::metric));
    first.openings.back().from_left = Length::mm(2000);
    first.openings.back().name = "zebra door";
    Fitted floor = with_fitting_floor(first);
    QVERIFY(floor);
    floor.shell->floors[0].name = "Z9";
    for (const char *front : {"shell", "floors", "joint", "log", "text", "cut_list"}) {
        MainWindow window(kept());
        QVERIFY(shown(window, *floor.shell, "Zebrawood"));
        window.selection().choose_corner("AB");
        raise(window, front);
        auto *joint = window.findChild<QDockWidget *>("joint");
        window.desk().begin("Other", "roundlay = 1\n[shell\n");
        QVERIFY(settled(window));
        for (const char *dock : {"shell", "floors", "joint", "log", "text", "cut_list"}) {
            raise(window, dock);
            auto *panel = window.findChild<QDockWidget *>(QLatin1String(dock));
            for (QString words : shown_in(window)) {
                const QString where = QString("%1 in front, then %2: %3").arg(front, dock, words.left(60));
                for (const char *old : {"ebra", "187", "1:11", "Z9"})
                    QVERIFY2(!words.contains(QLatin1String(old)), qPrintable(where));
            }
            for (const QComboBox *box : panel->findChildren<QComboBox *>())
                if (QLatin1String(dock) != QLatin1String("cut_list"))
                    QVERIFY2(!box->isVisible() || !box->isEnabled(), dock);
        }
        window.desk().begin("Third", write_document(*floor.shell)); // and all of it comes again
        QVERIFY(settled(window));
        raise(window, "shell");
        QVERIFY(shown_in(window).contains("Zebrawood"));
        raise(window, "joint");
        QVERIFY(shown_in(*window.findChild<QDockWidget *>("joint")->parentWidget()).contains("1:11"));
        QVERIFY(joint->findChild<QComboBox *>()->isEnabled());
        window.close_document();
    }
}

void PanelsTest::findings_that_an_edit_does_not_change_stay() {
    MainWindow window(kept());
    window.begin_demo(0);
    QTRY_VERIFY(window.desk().is_current());
    auto *tree = window.findings().tree();
    QVERIFY(tree->topLevelItemCount() > 0);
    const QSignalSpy told(tree->model(), &QAbstractItemModel::rowsInserted);
    QVERIFY(window.desk().edit("Name", [](const Shell &s) {
        Shell next = s;
        next.name = "another name";
        return std::optional(next);
    }));
    QTRY_VERIFY(window.desk().is_current());
    QCOMPARE(told.count(), 0); // nothing was laid out again for it
    window.close_document();
}

void PanelsTest::without_opengl_a_sentence_stands_where_the_model_would_be() {
    MainWindow window(kept());
    QVERIFY(window.model().view() == nullptr);
    const auto *sentence = window.findChild<QLabel *>("no-model");
    QVERIFY(sentence != nullptr && sentence->text().contains("OpenGL"));
}

int main(int argc, char **argv) {
    return run_test<PanelsTest>(argc, argv);
}

#include "panels_test.moc"
