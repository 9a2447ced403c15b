// What the menu of a thing opens: the menu outlives whatever is asked, for it is still at work when that
// closes.
#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/selection.h"
#include "modeler/window/record/at_hand.h"
#include "modeler/window/views/elevation_view.h"
#include "tests/window/support/recording.h"
#include "tests/window/support/window_test.h"

#include <QAction>
#include <QApplication>
#include <QDialog>
#include <QLineEdit>
#include <QMenu>
#include <QPointer>
#include <QTest>
#include <QTimer>
#include <functional>

using namespace roundlay;
using namespace roundlay::window;

namespace {

QMenu *opened(const char *name) {
    auto *menu = qobject_cast<QMenu *>(QApplication::activePopupWidget());
    return menu != nullptr && menu->objectName() == QLatin1String(name) ? menu : nullptr;
}

/// As in the program, where events come from a loop: what is deleted later is deleted in loops inside it too.
void in_a_loop(const std::function<void()> &deed) {
    QEventLoop loop;
    QTimer::singleShot(0, &loop, [&] {
        deed();
        loop.quit();
    });
    loop.exec();
}

/// While a dialog is open: how it was called, and whether all that was watched is still there.
struct Watched {
    QPointer<QMenu> menu, under;
    QString dialog;
    bool alive = false;
};

/// Closes the next dialog after a while of its own events.
class Closer : public QObject {
  public:
    Closer(Watched &watched, bool accept) : watched_(watched), accept_(accept) { startTimer(50); }

  protected:
    void timerEvent(QTimerEvent *) override {
        auto *dialog = qobject_cast<QDialog *>(QApplication::activeModalWidget());
        constexpr int looks = 4;
        if (dialog == nullptr || ++looked_ < looks) return;
        watched_.dialog = dialog->objectName();
        watched_.alive = !watched_.menu.isNull() && !watched_.under.isNull();
        if (accept_)
            dialog->accept();
        else
            dialog->reject();
    }

  private:
    Watched &watched_;
    bool accept_;
    int looked_ = 0;
};

/// The entry of that name in the menu, chosen by the keyboard.
void choose(QMenu &menu, const char *name, Watched &watched, bool accept) {
    for (QAction *action : menu.actions())
        if (action->objectName() == QLatin1String(name)) menu.setActiveAction(action);
    QVERIFY(menu.activeAction() != nullptr);
    const Closer closer(watched, accept);
    QTest::keyClick(&menu, Qt::Key_Return);
}

} // namespace

class MenuDialogsTest : public WindowTest {
    Q_OBJECT

  private slots:
    void a_decision_asked_for_in_the_menu_is_taken();
    void other_dialogs_leave_the_menu_alone_too();
    void one_menu_goes_when_the_next_one_comes();

  private:
    QMenu *menu_of_a_log(MainWindow &window);
};

QMenu *MenuDialogsTest::menu_of_a_log(MainWindow &window) {
    ElevationView &elevation = window.elevation();
    QTest::mouseClick(&elevation, Qt::RightButton, Qt::NoModifier,
                      elevation.to_screen({1000, 130}).toPoint());
    return opened("thing");
}

void MenuDialogsTest::a_decision_asked_for_in_the_menu_is_taken() {
    MainWindow window(kept());
    open_record(window, a_room());
    raise(window, "elevation");
    for (int time = 1; time <= 3; ++time) {
        Watched watched;
        in_a_loop([&] {
            watched.menu = menu_of_a_log(window);
            QVERIFY(!watched.menu.isNull());
            for (QAction *action : watched.menu->actions())
                if (action->menu() != nullptr) watched.menu->setActiveAction(action);
            QTest::keyClick(watched.menu, Qt::Key_Right);
            watched.under = opened("thing_decide");
            QVERIFY(!watched.under.isNull());
            choose(*watched.under, "thing_decide_1", watched, true);
        });
        QCOMPARE(watched.dialog, QString("decide"));
        QVERIFY2(watched.alive, "the menu is gone while its dialog is open");
        const auto log = found(window, window.at_hand().logs().front().found.tag);
        QVERIFY(log && log->decisions.size() == static_cast<std::size_t>(time));
        QVERIFY(settled(window));
    }
    window.close_document();
}

void MenuDialogsTest::other_dialogs_leave_the_menu_alone_too() {
    MainWindow window(kept());
    open_record(window, a_room());
    raise(window, "elevation");
    for (const char *name : {"thing_export", "thing_print"}) {
        Watched watched;
        in_a_loop([&] {
            watched.menu = watched.under = menu_of_a_log(window);
            QVERIFY(!watched.menu.isNull());
            choose(*watched.menu, name, watched, false);
        });
        QVERIFY2(watched.alive, name);
    }
    window.close_document();
}

void MenuDialogsTest::one_menu_goes_when_the_next_one_comes() {
    MainWindow window(kept());
    open_record(window, a_room());
    raise(window, "elevation");
    const QPointer<QMenu> first = menu_of_a_log(window);
    QVERIFY(!first.isNull());
    first->close();
    const QPointer<QMenu> second = menu_of_a_log(window);
    QVERIFY(!second.isNull() && second != first);
    in_a_loop([] {});
    QTRY_VERIFY(first.isNull());
    second->close();
    window.close_document();
    QTRY_VERIFY2(second.isNull(), "what it was about is closed");
}

int main(int argc, char **argv) {
    return run_test<MenuDialogsTest>(argc, argv);
}

#include "menu_dialogs_test.moc"
