// What fits is looked for aside: the thread that draws goes on, and what was changed meanwhile is not lost.
#include "kernel/document/document.h"
#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/selection.h"
#include "modeler/window/panels/floor_panel.h"
#include "tests/window/support/window_test.h"

#include <QAction>
#include <QElapsedTimer>
#include <QTemporaryDir>
#include <QTest>
#include <QThread>
#include <QTimer>
#include <atomic>
#include <ctime>
#include <memory>
#include <stdexcept>

using namespace roundlay;
using namespace roundlay::window;

namespace {

constexpr unsigned long looks_for = 300; // ms

/// Takes its time, and adds its word to the name that it finds.
Desk::ShellEdit slowly_adding(const char *word, std::atomic<int> *looks = nullptr) {
    return [word, looks](const Shell &shell) {
        QThread::msleep(looks_for);
        if (looks != nullptr) ++*looks;
        return named(shell, (shell.name + " " + word).c_str());
    };
}

std::string name_in(const Desk &desk) {
    return desk.document().read().shell->name;
}

Desk::ShellEdit called(const char *name) {
    return [name](const Shell &shell) { return named(shell, name); };
}

} // namespace

class SearchTest : public QObject {
    Q_OBJECT

  private slots:
    void init();
    void the_thread_that_draws_goes_on();
    void what_is_changed_meanwhile_is_kept();
    void one_follows_the_other();
    void it_waits_while_a_hand_drags();
    void nothing_comes_into_another_document();
    void what_does_not_fit_and_what_fails_is_told();
    void a_hand_that_asks_is_never_held_for_a_frame();

  private:
    void search(const Desk::ShellEdit &change) {
        desk_->search(QStringLiteral("Look"), change, this, [this](const QString &why) { whys_ << why; });
    }
    std::unique_ptr<Desk> desk_;
    QStringList whys_;
};

void SearchTest::init() {
    desk_ = std::make_unique<Desk>();
    desk_->begin(QStringLiteral("Room"), write_document(named(a_room(), "room")));
    QTRY_VERIFY(desk_->is_current());
    whys_.clear();
}

/// Ticks of a timer come all the while: none waits for the search.
void SearchTest::the_thread_that_draws_goes_on() {
    QTimer ticking;
    QElapsedTimer since;
    qint64 longest = 0;
    int ticks = 0, wondered = 0;
    connect(&ticking, &QTimer::timeout, this, [&] {
        longest = std::max(longest, since.restart());
        ++ticks;
    });
    connect(desk_.get(), &Desk::searching, this, [&] { ++wondered; });
    ticking.start(5);
    since.start();
    QElapsedTimer asking;
    asking.start();
    search(slowly_adding("found"));
    QVERIFY2(asking.elapsed() < 100, qPrintable(QString::number(asking.elapsed())));
    QVERIFY(!desk_->is_current());
    QCOMPARE(QString::fromStdString(name_in(*desk_)), QStringLiteral("room")); // not yet
    QTRY_VERIFY(desk_->is_current());
    QCOMPARE(QString::fromStdString(name_in(*desk_)), QStringLiteral("room found"));
    QCOMPARE(desk_->history().undoText(), QStringLiteral("Look"));
    QVERIFY2(ticks > 10 && longest < static_cast<qint64>(looks_for) / 2,
             qPrintable(QStringLiteral("%1 ticks, longest %2 ms").arg(ticks).arg(longest)));
    QCOMPARE(wondered, 1);
    QCOMPARE(whys_, QStringList{QString()});
}

void SearchTest::what_is_changed_meanwhile_is_kept() {
    std::atomic<int> looks = 0;
    search(slowly_adding("found", &looks));
    QVERIFY(desk_->edit(QStringLiteral("Name"), called("house")));
    QTRY_VERIFY(desk_->is_current());
    QCOMPARE(QString::fromStdString(name_in(*desk_)), QStringLiteral("house found"));
    QCOMPARE(looks.load(), 2);
    desk_->history().undo();
    QCOMPARE(QString::fromStdString(name_in(*desk_)), QStringLiteral("house"));
}

void SearchTest::one_follows_the_other() {
    search(slowly_adding("one"));
    search(slowly_adding("two"));
    QTRY_VERIFY(desk_->is_current());
    QCOMPARE(QString::fromStdString(name_in(*desk_)), QStringLiteral("room one two"));
    QCOMPARE(whys_.size(), 2);
}

void SearchTest::it_waits_while_a_hand_drags() {
    search(slowly_adding("found"));
    desk_->show(called("dragged"));
    QTest::qWait(2 * static_cast<int>(looks_for));
    QVERIFY(whys_.isEmpty() && desk_->dragging());
    desk_->settle(QStringLiteral("Drag"));
    QTRY_VERIFY(desk_->is_current());
    QCOMPARE(QString::fromStdString(name_in(*desk_)), QStringLiteral("dragged found"));
}

/// Not even where it holds the same text.
void SearchTest::nothing_comes_into_another_document() {
    const std::string text = desk_->document().text();
    search(slowly_adding("found"));
    desk_->begin(QStringLiteral("Other"), text);
    search(slowly_adding("other"));
    QTRY_VERIFY(desk_->is_current());
    QCOMPARE(QString::fromStdString(name_in(*desk_)), QStringLiteral("room other"));
    QCOMPARE(whys_.size(), 1);
}

void SearchTest::what_does_not_fit_and_what_fails_is_told() {
    QStringList refused, failed;
    connect(desk_.get(), &Desk::refused, this, [&](const QString &why) { refused << why; });
    connect(desk_.get(), &Desk::failed, this, [&](const QString &what) { failed << what; });
    search([](const Shell &) { return Fitted(); });
    QTRY_VERIFY(desk_->is_current());
    QCOMPARE(refused, QStringList{QStringLiteral("That does not fit there.")});
    search([](const Shell &) -> Fitted { throw std::runtime_error("the plank broke"); });
    QTRY_VERIFY(desk_->is_current());
    QVERIFY(failed.size() == 1 && failed[0].contains(QStringLiteral("the plank broke")));
    search(called("goes on"));
    QTRY_VERIFY(desk_->is_current());
    QCOMPARE(QString::fromStdString(name_in(*desk_)), QStringLiteral("goes on"));
    QCOMPARE(whys_.size(), 3);
}

namespace {

/// Milliseconds that this thread has worked, whatever else the machine does.
double worked_ms() {
    timespec now{};
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &now);
    return static_cast<double>(now.tv_sec) * 1e3 + static_cast<double>(now.tv_nsec) / 1e6;
}

} // namespace

/// Whatever has to be tried, in a house of a hundred logs: sixty frames a second have 16 ms each.
void SearchTest::a_hand_that_asks_is_never_held_for_a_frame() {
    constexpr double frame = 1000.0 / 60;
    QTemporaryDir folder;
    MainWindow window(folder.filePath(QStringLiteral("unsaved")));
    window.show();
    QVERIFY(window.open(demo_file("ell-house")));
    QVERIFY(settled(window));
    window.selection().choose_wall("A");
    const auto held = [&](const char *what, const std::function<void()> &ask) {
        const double before = worked_ms();
        ask();
        const double ms = worked_ms() - before;
        qInfo("%s: held for %.2f ms", what, ms);
        return ms < frame && settled(window);
    };
    for (const char *action : {"add_window", "add_door", "add_partition", "add_floor", "add_floor"})
        QVERIFY2(held(action, [&] { window.action(action)->trigger(); }), action);
    QVERIFY(held("beam", [&] { window.floors().add_beam(); }));
    QVERIFY(held("stair", [&] { window.floors().add_opening(); }));
    window.desk().history().setClean();
    window.close_document();
}

int main(int argc, char **argv) {
    return run_test<SearchTest>(argc, argv);
}

#include "search_test.moc"
