// The raise as a tick list: in its order, by mouse and by keys, and what is said of ticks that cannot be.
#include "exporters/registry/shared_order.h"
#include "kernel/progress/ticked.h"
#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/selection.h"
#include "modeler/window/desk/words.h"
#include "modeler/window/frame/state_bar.h"
#include "modeler/window/panels/findings_panel.h"
#include "modeler/window/panels/lift_model.h"
#include "modeler/window/panels/raising_panel.h"
#include "modeler/window/views/elevation_view.h"
#include "modeler/window/views/record_marks.h"
#include "tests/support/mended.h"
#include "tests/window/support/recording.h"
#include "tests/window/support/window_test.h"

#include <QAction>
#include <QApplication>
#include <QComboBox>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QTableView>
#include <QTest>
#include <QTreeWidget>
#include <algorithm>

using namespace roundlay;
using namespace roundlay::window;

class RaisingTest : public WindowTest {
    Q_OBJECT

  private slots:
    void lifts_stand_in_their_order_with_the_next_one_marked();
    void keys_alone_tick_and_undo();
    void a_press_on_a_box_ticks_what_its_column_says();
    void several_lifts_are_ticked_at_once();
    void what_speaks_against_a_tick_is_said_beside_it();
    void a_text_with_errors_is_not_ticked_into();
    void the_chosen_piece_is_the_same_everywhere();
    void new_wood_goes_with_its_log();
    void ticks_are_of_the_state_that_is_seen();
    void taking_down_goes_the_other_way_round();
    void ticked_pieces_are_coloured();
    void every_kind_of_house_has_its_lifts();

  private:
    /// That shell, with the panel in front and the keyboard in its table.
    static void open(MainWindow &window, const Shell &shell) {
        window.resize(1300, 800);
        QVERIFY(shown(window, shell, "Raised"));
        come_forward(window);
    }
    static void come_forward(MainWindow &window) {
        QVERIFY(QTest::qWaitForWindowActive(&window));
        QTest::keyClick(&window, Qt::Key_T, Qt::ControlModifier);
        QTRY_COMPARE(QApplication::focusWidget(), window.raising().table());
        QTRY_VERIFY_WITH_TIMEOUT(!rows(window).empty(), 60000);
    }
    static const std::vector<LiftRow> &rows(MainWindow &window) { return window.raising().model().rows(); }
    static const LiftRow &row(MainWindow &window, int at) {
        return rows(window)[static_cast<std::size_t>(at)];
    }
    static bool is(const LiftRow &row, Deed deed) { return row.ticked[static_cast<std::size_t>(deed)]; }
    static void key(MainWindow &window, int key, Qt::KeyboardModifiers with = Qt::NoModifier) {
        QTest::keyClick(window.raising().table(), static_cast<Qt::Key>(key), with);
    }
    static void go_to(MainWindow &window, int at, int column = LiftModel::tag) {
        QTableView &table = *window.raising().table();
        const QModelIndex index = table.model()->index(at, column);
        table.scrollTo(index);
        QTest::mouseClick(table.viewport(), Qt::LeftButton, {},
                          table.visualRect(index).center() + QPoint(table.visualRect(index).width() / 3, 0));
    }
    static void press_box(MainWindow &window, int at, Deed deed) {
        constexpr int into_the_box = 12; // pixels from the left of its cell
        QTableView &table = *window.raising().table();
        const QModelIndex index = table.model()->index(at, LiftModel::first_tick + static_cast<int>(deed));
        table.scrollTo(index);
        const QRect cell = table.visualRect(index);
        QTest::mouseClick(table.viewport(), Qt::LeftButton, {},
                          {cell.left() + into_the_box, cell.center().y()});
    }
    static QString said(MainWindow &window) {
        return window.raising().said()->isVisible() ? window.raising().said()->text() : QString();
    }
    static QString left(MainWindow &window) {
        return window.raising().findChild<QLabel *>("raising_left")->text();
    }
};

void RaisingTest::lifts_stand_in_their_order_with_the_next_one_marked() {
    MainWindow window(kept());
    open(window, a_room_with_a_door());
    const ExportJob &job = window.desk().standing()->job;
    QCOMPARE(rows(window).size(), job.layout.pieces.size());
    for (std::size_t i = 0; i < rows(window).size(); ++i) {
        const LiftRow &lift = rows(window)[i];
        const Piece &piece = job.layout.pieces[lift.piece];
        QCOMPARE(piece.raise, static_cast<int>(i + 1));
        QCOMPARE(lift.tag, text(piece.tag));
        const Lift weighed = lift_of(job.shell, job.layout, job.bodies, lift.piece);
        QCOMPARE(lift.weight, weight_text(weighed.low_kg, weighed.high_kg, job.shell.units));
        QCOMPARE(lift.is_next, i == 0);
    }
    // Marked by more than a colour, and what else may come now is told too.
    const LiftModel &model = window.raising().model();
    QVERIFY(model.data(model.index(0, LiftModel::number), Qt::DisplayRole).toString().contains(u'▶'));
    QVERIFY(!model.data(model.index(1, LiftModel::number), Qt::DisplayRole).toString().contains(u'▶'));
    QCOMPARE(row(window, 0).turn, QStringLiteral("next"));
    const auto now = may_now(job.layout, site_of(job, {}), Deed::up);
    QVERIFY(now.size() > 1);
    for (const LiftRow &lift : rows(window))
        QCOMPARE(lift.may == May::now, std::ranges::find(now, lift.piece) != now.end());
    QVERIFY(left(window).contains(QStringLiteral("Up: 0 of %1 pieces").arg(rows(window).size())));
    QVERIFY2(left(window).contains("heaviest"), qPrintable(left(window)));
    const QString basis = window.raising().findChild<QLabel *>("raising_basis")->text();
    QVERIFY2(basis.contains("geometry alone") && basis.contains("stimate"), qPrintable(basis));
    keep_picture(window, "raising");
    window.close_document();
}

void RaisingTest::keys_alone_tick_and_undo() {
    MainWindow window(kept());
    open(window, a_room());
    const std::string before = window.desk().document().text();
    window.raising().findChild<QLineEdit *>("raising_by")->setText("Ada");
    const std::string first = row(window, 0).tag.toStdString(), second = row(window, 1).tag.toStdString();
    key(window, Qt::Key_Space);
    QCOMPARE(record(window).done, (std::vector<Done>{{.what = Deed::up, .pieces = {first}, .by = "Ada"}}));
    QVERIFY(is(row(window, 0), Deed::up) && row(window, 0).may == May::done); // at once
    QVERIFY(row(window, 1).is_next && !row(window, 0).is_next);
    QVERIFY(left(window).startsWith("Up: 1 of"));
    key(window, Qt::Key_Down);
    key(window, Qt::Key_Space);
    QCOMPARE(record(window).done.front().pieces, (std::vector<std::string>{first, second}));
    key(window, Qt::Key_Space); // and back
    QCOMPARE(record(window).done.front().pieces, std::vector<std::string>{first});
    for (int i = LiftModel::tag; i < LiftModel::first_tick + static_cast<int>(Deed::cut); ++i)
        key(window, Qt::Key_Right);
    key(window, Qt::Key_Space); // what that column says
    QCOMPARE(record(window).done.back(), (Done{.what = Deed::cut, .pieces = {second}, .by = "Ada"}));
    QVERIFY(settled(window));
    QCOMPARE(QApplication::focusWidget(), window.raising().table());
    QCOMPARE(window.raising().table()->currentIndex().row(), 1); // where it was
    while (window.desk().history().canUndo())
        QTest::keyClick(&window, Qt::Key_Z, Qt::ControlModifier);
    QCOMPARE(window.desk().document().text(), before);
    QVERIFY(!is(row(window, 0), Deed::up) && row(window, 0).is_next);
    window.close_document();
}

void RaisingTest::a_press_on_a_box_ticks_what_its_column_says() {
    MainWindow window(kept());
    open(window, a_room());
    for (const Deed deed : all_deeds) {
        press_box(window, 2, deed);
        QVERIFY2(is(row(window, 2), deed), qPrintable(deed_word(deed)));
        QCOMPARE(record(window).done.back().what, deed);
        QCOMPARE(record(window).done.back().pieces,
                 std::vector<std::string>{row(window, 2).tag.toStdString()});
    }
    QCOMPARE(record(window).done.size(), deeds);
    for (const Deed deed : all_deeds)
        press_box(window, 2, deed);
    QVERIFY(record(window).done.empty());
    // A click anywhere in a cell that ticks is a click on its box, and its heading has room.
    QTableView &table = *window.raising().table();
    const QRect cell = table.visualRect(table.model()->index(2, LiftModel::first_tick));
    QTest::mouseClick(table.viewport(), Qt::LeftButton, {}, {cell.right() - 3, cell.center().y()});
    QCOMPARE(record(window).done.size(), std::size_t(1));
    QTest::mouseClick(table.viewport(), Qt::LeftButton, {}, {cell.right() - 3, cell.center().y()});
    QVERIFY(record(window).done.empty());
    for (const int which : {1, 0}) {
        window.raising().findChild<QComboBox *>("raising_which")->setCurrentIndex(which);
        const QHeaderView &header = *table.horizontalHeader();
        QVERIFY(header.sectionSize(LiftModel::turn) >= header.sectionSizeHint(LiftModel::turn));
    }
    window.close_document();
}

void RaisingTest::several_lifts_are_ticked_at_once() {
    MainWindow window(kept());
    open(window, a_room());
    go_to(window, 0);
    QTableView &table = *window.raising().table(); // by the keyboard: a click in that cell would tick it
    table.setCurrentIndex(table.model()->index(0, LiftModel::first_tick + static_cast<int>(Deed::cut)));
    for (int i = 0; i < 3; ++i)
        key(window, Qt::Key_Down, Qt::ShiftModifier);
    key(window, Qt::Key_Space);
    QCOMPARE(record(window).done.size(), std::size_t(1));
    QCOMPARE(record(window).done.front().pieces.size(), std::size_t(4));
    QCOMPARE(window.desk().history().count(), 1); // one step to take back
    window.close_document();
}

/// The person sees the house: it is ticked all the same.
void RaisingTest::what_speaks_against_a_tick_is_said_beside_it() {
    MainWindow window(kept());
    open(window, a_room());
    const int last = static_cast<int>(rows(window).size()) - 1;
    QCOMPARE(row(window, last).may, May::waits);
    QVERIFY(!row(window, last).waits_for.isEmpty());
    go_to(window, last);
    key(window, Qt::Key_Space);
    QVERIFY(is(row(window, last), Deed::up));
    QVERIFY2(said(window).contains("is ticked as up and lies over"), qPrintable(said(window)));
    QVERIFY(settled(window));
    QTreeWidget &tree = *window.findings().tree();
    QVERIFY(!tree.findItems("is ticked as up and lies over", Qt::MatchContains | Qt::MatchRecursive, 1)
                 .isEmpty());
    QVERIFY(window.desk().standing() == window.desk().state()); // told, and nothing refused for it
    key(window, Qt::Key_Space);
    QVERIFY(said(window).isEmpty());
    QVERIFY(settled(window));
    QVERIFY(
        tree.findItems("is ticked as up and lies over", Qt::MatchContains | Qt::MatchRecursive, 1).isEmpty());
    window.close_document();
}

void RaisingTest::a_text_with_errors_is_not_ticked_into() {
    MainWindow window(kept());
    open(window, a_room());
    const std::string broken = window.desk().document().text() + "\n[[wall\n";
    window.desk().replace_text("slip", broken);
    QVERIFY(settled(window));
    key(window, Qt::Key_Space);
    QVERIFY2(said(window).contains("errors"), qPrintable(said(window)));
    QVERIFY(!is(row(window, 0), Deed::up));
    QCOMPARE(window.desk().document().text(), broken);
    window.desk().history().undo();
    QVERIFY(said(window).isEmpty());
    key(window, Qt::Key_Space);
    QVERIFY(is(row(window, 0), Deed::up));
    window.close_document();
}

void RaisingTest::the_chosen_piece_is_the_same_everywhere() {
    MainWindow window(kept());
    open(window, a_room());
    go_to(window, 3);
    QVERIFY(window.selection().is_piece(row(window, 3).tag.toStdString()));
    key(window, Qt::Key_Down);
    QVERIFY(window.selection().is_piece(row(window, 4).tag.toStdString()));
    const Layout &layout = window.desk().standing()->job.layout;
    window.selection().choose_piece(layout, row(window, 7).piece);
    QCOMPARE(window.raising().table()->currentIndex().row(), 7);
    window.close_document();
}

void RaisingTest::new_wood_goes_with_its_log() {
    MainWindow window(kept());
    Shell shell = a_room();
    shell.mends = {test::spliced_end()};
    open(window, shell);
    const auto wood = std::ranges::find_if(rows(window), &LiftRow::is_new_wood);
    QVERIFY(wood != rows(window).end());
    const int at = static_cast<int>(wood - rows(window).begin());
    QCOMPARE(row(window, at - 1).piece, wood->log); // behind its log
    QVERIFY(wood->weight.isEmpty() && wood->waits_for.contains(row(window, at - 1).tag));
    go_to(window, at);
    key(window, Qt::Key_Space);
    QCOMPARE(record(window).done.front().pieces,
             std::vector<std::string>{row(window, at - 1).tag.toStdString()});
    QVERIFY(is(row(window, at), Deed::up) && is(row(window, at - 1), Deed::up));
    press_box(window, at, Deed::cut); // each is cut by itself
    QVERIFY(is(row(window, at), Deed::cut) && !is(row(window, at - 1), Deed::cut));
    window.close_document();
}

void RaisingTest::ticks_are_of_the_state_that_is_seen() {
    MainWindow window(kept());
    window.resize(1300, 800);
    window.show();
    QVERIFY(window.open(copy_of("old-house")));
    QVERIFY(settled(window));
    come_forward(window);
    const auto states = window.desk().reading()->states;
    QVERIFY(states.size() > 1);
    window.desk().see(states.back().name);
    QVERIFY(settled(window));
    QTRY_VERIFY_WITH_TIMEOUT(window.desk().standing()->job.order->is_known(), 60000);
    QTRY_VERIFY_WITH_TIMEOUT(!rows(window).empty(), 60000);
    const auto next = std::ranges::find(rows(window), true, &LiftRow::is_next);
    QVERIFY(next != rows(window).end());
    const std::string tag = next->tag.toStdString();
    go_to(window, static_cast<int>(next - rows(window).begin()));
    const auto order = window.desk().standing()->job.order;
    key(window, Qt::Key_Space);
    QCOMPARE(record(window).done.back().state, states.back().name);
    QCOMPARE(record(window).done.back().pieces.back(), tag);
    QVERIFY(settled(window));
    QCOMPARE(window.desk().standing()->job.order, order); // nothing is worked out anew for a tick
    window.desk().see({});
    QVERIFY(settled(window));
    QTRY_VERIFY_WITH_TIMEOUT(window.desk().standing()->job.order->is_known(), 60000);
    for (const LiftRow &lift : rows(window))
        QVERIFY(lift.tag.toStdString() != tag || !is(lift, Deed::up));
    window.close_document();
}

void RaisingTest::taking_down_goes_the_other_way_round() {
    MainWindow window(kept());
    open(window, a_room());
    QStringList up, down;
    for (const LiftRow &lift : rows(window))
        up << lift.tag;
    auto *which = window.raising().findChild<QComboBox *>("raising_which");
    QTest::keyClick(which, Qt::Key_Down);
    for (const LiftRow &lift : rows(window))
        down.prepend(lift.tag);
    QCOMPARE(down, up);
    go_to(window, 0);
    key(window, Qt::Key_Space);
    QCOMPARE(record(window).done.back().what, Deed::down);
    QVERIFY(left(window).startsWith("Down: 1 of"));
    // A document that is being taken down opens so.
    const QString path = folder_.filePath("down.roundlay");
    QVERIFY(window.save_to(path));
    window.begin(a_room(), "Another");
    QVERIFY(settled(window));
    QTRY_COMPARE(which->currentIndex(), 0);
    QVERIFY(window.open(path));
    QVERIFY(settled(window));
    QTRY_COMPARE(which->currentIndex(), 1);
    QTRY_VERIFY(left(window).startsWith("Down: 1 of"));
    window.close_document();
}

void RaisingTest::ticked_pieces_are_coloured() {
    MainWindow window(kept());
    open(window, a_room());
    key(window, Qt::Key_Space);
    press_box(window, 1, Deed::cut);
    QVERIFY(settled(window));
    window.show_legend(true);
    raise(window, "elevation");
    QTest::qWait(100);
    window.action("colour_progress")->trigger();
    QTest::qWait(100);
    const ExportJob &job = window.desk().standing()->job;
    const auto marks = record_marks(Colouring::progress);
    const auto marked = marked_pieces(*job.record, job, Colouring::progress);
    QCOMPARE(marks[marked[row(window, 0).piece]].words, QStringLiteral("up"));
    QCOMPARE(marks[marked[row(window, 1).piece]].words, QStringLiteral("cut"));
    QCOMPARE(marks[marked[row(window, 2).piece]].words, QStringLiteral("nothing is ticked"));
    for (std::size_t i = 0; i < marks.size(); ++i)
        for (std::size_t j = 0; j < i; ++j) // by more than the colour
            QVERIFY(marks[i].pattern != marks[j].pattern && marks[i].fill != marks[j].fill);
    bool told = false;
    for (const LegendEntry &entry : window.elevation().legend_panel().entries())
        told = told || entry.words == "nothing is ticked";
    QVERIFY(told);
    window.close_document();
}

void RaisingTest::every_kind_of_house_has_its_lifts() {
    for (const char *demo : {"one-room", "ell-house", "long-house", "round-cabin", "old-house"}) {
        MainWindow window(kept());
        window.resize(1300, 800);
        window.show();
        QVERIFY(window.open(copy_of(demo)));
        QVERIFY(settled(window));
        come_forward(window);
        const ExportJob &job = window.desk().standing()->job;
        QCOMPARE(rows(window).size(), job.layout.pieces.size());
        QVERIFY(!left(window).isEmpty());
        const auto next = std::ranges::find(rows(window), true, &LiftRow::is_next);
        QVERIFY(next != rows(window).end());
        const int at = static_cast<int>(next - rows(window).begin());
        go_to(window, at);
        key(window, Qt::Key_Space);
        QVERIFY2(row(window, at).may == May::done && said(window).isEmpty(), demo);
        keep_picture(window, QStringLiteral("raising-%1").arg(demo));
        window.close_document();
    }
}

int main(int argc, char **argv) {
    return run_test<RaisingTest>(argc, argv);
}

#include "raising_test.moc"
