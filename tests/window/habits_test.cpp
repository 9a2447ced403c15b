// Habits of a finished program: names for screen readers, files dropped in, closing, a full disk, and where
// drags come to rest.
#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/selection.h"
#include "modeler/window/frame/export_dialog.h"
#include "modeler/window/frame/new_shell.h"
#include "modeler/window/panels/findings_panel.h"
#include "modeler/window/panels/message_bar.h"
#include "modeler/window/views/elevation_view.h"
#include "modeler/window/views/model_page.h"
#include "modeler/window/views/plan_view.h"
#include "modeler/window/views/scene_view.h"
#include "tests/window/support/window_test.h"

#include <sys/resource.h>

#include <QAbstractButton>
#include <QAccessible>
#include <QAction>
#include <QApplication>
#include <QDropEvent>
#include <QMessageBox>
#include <QMimeData>
#include <QScreen>
#include <QTest>
#include <QTimer>
#include <csignal>

using namespace roundlay;
using namespace roundlay::window;

namespace {

/// What a screen reader would say of it. A row of tabs has no name of its own: each of its tabs has one.
QString spoken(QWidget *widget) {
    const QAccessibleInterface *face = QAccessible::queryAccessibleInterface(widget);
    if (face == nullptr) return {};
    if (face->role() != QAccessible::PageTabList) return face->text(QAccessible::Name);
    QStringList tabs;
    for (int i = 0; i < face->childCount(); ++i)
        if (face->child(i)->role() == QAccessible::PageTab) tabs << face->child(i)->text(QAccessible::Name);
    if (tabs.isEmpty()) return QStringLiteral("a row without tabs"); // takes no room either
    return tabs.contains(QString()) ? QString() : tabs.join(u' ');
}

/// Those that take the keyboard and have nothing to say for themselves.
QStringList nameless(QWidget &window) {
    QStringList found;
    for (QWidget *w : window.findChildren<QWidget *>()) {
        if (!w->isVisible() || !w->isEnabled() || !(w->focusPolicy() & Qt::TabFocus)) continue;
        if (w->focusProxy() == nullptr && spoken(w).isEmpty())
            found << QString::fromLatin1(w->metaObject()->className()) + u' ' + w->objectName() +
                         QStringLiteral(" in ") +
                         QString::fromLatin1(w->parentWidget()->metaObject()->className());
    }
    return found;
}

/// Files of this process can grow to so many bytes and no more: a disk that is full.
class FullDisk {
  public:
    explicit FullDisk(rlim_t bytes) {
        std::signal(SIGXFSZ, SIG_IGN);
        getrlimit(RLIMIT_FSIZE, &before_);
        const rlimit now{bytes, before_.rlim_max};
        setrlimit(RLIMIT_FSIZE, &now);
    }
    ~FullDisk() { setrlimit(RLIMIT_FSIZE, &before_); }

  private:
    rlimit before_{};
};

} // namespace

class HabitsTest : public WindowTest {
    Q_OBJECT

  private slots:
    void whatever_takes_the_keyboard_has_a_name();
    void a_file_is_dropped_into_the_window();
    void closing_with_unsaved_work_asks();
    void a_full_disk_keeps_the_old_file_and_the_work();
    void an_opening_comes_to_rest_on_the_round_lines();
};

void HabitsTest::whatever_takes_the_keyboard_has_a_name() {
    MainWindow window(kept());
    window.show();
    QVERIFY2(nameless(window).isEmpty(), qPrintable(nameless(window).join(QStringLiteral("; "))));
    window.begin_demo(1);
    QVERIFY(settled(window));
    const Layout &layout = window.desk().standing()->job.layout;
    for (const auto &docks : {std::vector<const char *>{"plan", "elevation", "log"},
                              {"shell", "cut_list", "joint"},
                              {"floors", "sheet", "log"},
                              {"plan", "text", "log"}}) {
        for (const char *dock : docks)
            raise(window, dock);
        window.selection().choose_piece(layout, Index<Piece>(0));
        QVERIFY2(nameless(window).isEmpty(), qPrintable(nameless(window).join(QStringLiteral("; "))));
        window.selection().choose_opening(window.desk().standing()->job.shell, 0);
        QVERIFY2(nameless(window).isEmpty(), qPrintable(nameless(window).join(QStringLiteral("; "))));
        window.selection().choose_wall("A");
        QVERIFY2(nameless(window).isEmpty(), qPrintable(nameless(window).join(QStringLiteral("; "))));
    }
    NewShellDialog shape(UnitSystem::metric);
    shape.choose(Shape::tee);
    shape.show();
    QVERIFY2(nameless(shape).isEmpty(), qPrintable(nameless(shape).join(QStringLiteral("; "))));
    ExportDialog outputs(window.desk().state()->job, folder_.filePath("out"));
    outputs.show();
    QVERIFY2(nameless(outputs).isEmpty(), qPrintable(nameless(outputs).join(QStringLiteral("; "))));
    window.close_document();
}

void HabitsTest::a_file_is_dropped_into_the_window() {
    MainWindow window(kept());
    window.show();
    const auto all = Qt::CopyAction | Qt::MoveAction | Qt::LinkAction;
    const auto drop = [&](const QList<QUrl> &urls) {
        QMimeData what;
        what.setUrls(urls);
        QDragEnterEvent enter({10, 10}, all, &what, Qt::LeftButton, Qt::NoModifier);
        enter.setAccepted(false);
        QApplication::sendEvent(&window, &enter);
        if (!enter.isAccepted()) return false;
        if (enter.dropAction() != Qt::LinkAction) return false; // nothing is copied or moved
        QDropEvent event({10, 10}, all, &what, Qt::LeftButton, Qt::NoModifier);
        QApplication::sendEvent(&window, &event);
        return event.isAccepted() && event.dropAction() == Qt::LinkAction;
    };
    const auto refused = [&](const QList<QUrl> &urls, const char *why) {
        if (drop(urls)) return false;
        const bool said = window.message().sentence().contains(QLatin1String(why));
        window.message().hide();
        return said;
    };
    const QUrl demo = QUrl::fromLocalFile(demo_file("one-room"));
    QVERIFY(refused({demo, demo}, "one roundlay document"));
    QVERIFY(refused({QUrl("https://example.invalid/shell.roundlay")}, "this computer"));
    QVERIFY(refused({QUrl::fromLocalFile(folder_.path())}, "folder"));
    QVERIFY(refused({QUrl::fromLocalFile(written("walls.png", "\x89PNG"))}, "walls.png is no roundlay"));
    QVERIFY(refused({QUrl::fromLocalFile(folder_.filePath("nowhere.txt"))}, "nowhere.txt is no roundlay"));
    QVERIFY(!window.desk().is_open());
    QVERIFY(drop({demo}));
    QVERIFY(settled(window));
    QVERIFY(window.desk().standing() != nullptr);
    QVERIFY(drop({QUrl::fromLocalFile(written("shell.txt", "# mine\nroundlay = 1\n"))})); // by what it says
    const QByteArray nonsense(200, '\xff');
    const QString path = written("picture.roundlay", nonsense);
    QVERIFY(drop({QUrl::fromLocalFile(path)}));
    QVERIFY(settled(window));
    QVERIFY(window.findings().count() > 0); // it says what is wrong, and changes nothing
    QFile file(path);
    QVERIFY(file.open(QIODevice::ReadOnly));
    QCOMPARE(file.readAll(), nonsense);
    window.close_document();
}

void HabitsTest::closing_with_unsaved_work_asks() {
    MainWindow window(kept());
    QVERIFY(shown_demo(window, 0));
    window.desk().edit("name", [](const Shell &s) { return std::optional(named(s, "unsaved")); });
    const auto answer = [&](QMessageBox::ButtonRole role) {
        bool asked = false;
        QTimer::singleShot(200, &window, [&] {
            auto *box = qobject_cast<QMessageBox *>(QApplication::activeModalWidget());
            if (box == nullptr) return;
            asked = true;
            for (QAbstractButton *button : box->buttons())
                if (box->buttonRole(button) == role) return button->click();
        });
        window.close();
        return asked;
    };
    QVERIFY(answer(QMessageBox::RejectRole));
    QVERIFY(window.isVisible() && window.desk().unsaved());
    const QString path = folder_.filePath("closing.roundlay");
    QVERIFY(window.save_to(path));
    window.desk().edit("name", [](const Shell &s) { return std::optional(named(s, "saved on closing")); });
    QVERIFY(answer(QMessageBox::AcceptRole));
    QVERIFY(!window.isVisible());
    QFile file(path);
    QVERIFY(file.open(QIODevice::ReadOnly) && file.readAll().contains("saved on closing"));
}

void HabitsTest::a_full_disk_keeps_the_old_file_and_the_work() {
    MainWindow window(kept());
    QFile demo(demo_file("one-room"));
    QVERIFY(demo.open(QIODevice::ReadOnly));
    const QByteArray before = demo.readAll();
    const QString path = written("full.roundlay", before);
    QVERIFY(window.open(path));
    QVERIFY(settled(window));
    window.desk().edit("name", [](const Shell &s) { return std::optional(named(s, "too much")); });
    const std::string work = window.desk().document().text();
    {
        const FullDisk full(100);
        QVERIFY(!window.save_to(path));
        QVERIFY(!window.message().sentence().isEmpty());
    }
    QFile file(path);
    QVERIFY(file.open(QIODevice::ReadOnly));
    QCOMPARE(file.readAll(), before);
    QVERIFY(window.desk().unsaved());
    QCOMPARE(window.desk().document().text(), work);
    QVERIFY(window.save_to(path)); // there is room again
    QVERIFY(!window.desk().unsaved());
    window.close_document();
}

/// The lines between rounds are at n times the pitch (design note, section 5: n rounds rise n * P).
void HabitsTest::an_opening_comes_to_rest_on_the_round_lines() {
    MainWindow window(kept());
    window.show();
    Shell shell = *shell_of(usual_shell(Shape::rectangle, UnitSystem::metric));
    shell.rounds.pitch = Length::mm(253); // no multiple of the grid
    window.begin(shell, "Snap");
    QVERIFY(settled(window));
    window.elevation().add(OpeningKind::window, 4800);
    QVERIFY(settled(window));
    QTest::qWait(200);
    ElevationView &view = window.elevation();
    const auto opening = [&] { return window.desk().standing()->job.shell.openings.at(0); };
    const auto drag_low = [&](double to, Qt::KeyboardModifiers keys) {
        const double middle = opening().from_left.mm() + opening().width.mm() / 2 - 60;
        const QPointF from = view.to_screen({middle, opening().sill.mm()}),
                      end = view.to_screen({middle, to});
        press(view, from);
        move(view, (from + end) / 2, keys);
        move(view, end, keys);
        release(view, end);
        return settled(window);
    };
    QVERIFY(drag_low(3 * 253 + 8, Qt::NoModifier));
    QCOMPARE(opening().sill.mm(), 3 * 253.0);
    QVERIFY(drag_low(4 * 253 + 8, Qt::AltModifier)); // Alt lets go of the lines
    QVERIFY(std::abs(opening().sill.mm() - (4 * 253 + 8)) < 8 && opening().sill.mm() != 4 * 253.0);
    window.desk().history().undo();
    window.desk().history().undo();
    window.close_document();
}

int main(int argc, char **argv) {
    return run_test<HabitsTest>(argc, argv);
}

#include "habits_test.moc"
