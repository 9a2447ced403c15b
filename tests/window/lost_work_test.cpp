// No work is lost without a question: by another document, a change on the disk, the end of the session.
#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/recovery.h"
#include "modeler/window/frame/application.h"
#include "modeler/window/frame/new_shell.h"
#include "modeler/window/frame/recent.h"
#include "modeler/window/panels/message_bar.h"
#include "tests/window/support/answer.h"
#include "tests/window/support/window_test.h"

#include <QAction>
#include <QDir>
#include <QDropEvent>
#include <QMenu>
#include <QMessageBox>
#include <QMimeData>
#include <QTest>
#include <QTimer>
#include <functional>

using namespace roundlay;
using namespace roundlay::window;

namespace {

/// Makes a new shell in the form, as often as the form is there.
class Maker : public QObject {
  public:
    Maker() { startTimer(20); }
    int made = 0, most = 1;

  protected:
    void timerEvent(QTimerEvent *) override {
        auto *form = qobject_cast<NewShellDialog *>(QApplication::activeModalWidget());
        if (form == nullptr) return;
        if (made++ < most)
            form->accept();
        else
            form->reject();
    }
};

} // namespace

class LostWorkTest : public WindowTest {
    Q_OBJECT

  private slots:
    void a_new_shell_is_asked_about_whatever_takes_its_place();
    void a_demo_that_nobody_touched_is_not_asked_about();
    void who_stays_with_the_old_shell_gets_the_form_of_the_new_one_back();
    void loading_what_is_on_the_disk_is_an_edit_like_any_other();
    void a_file_that_is_gone_is_saved_again();
    void what_is_only_here_is_asked_about();
    void the_end_of_the_session_asks_or_keeps();

  private:
    int turn_ = 0;
    QString kept_;
    void init() { kept_ = folder_.filePath(QStringLiteral("unsaved-%1").arg(++turn_)); }
};

void LostWorkTest::a_new_shell_is_asked_about_whatever_takes_its_place() {
    init();
    const QString other = copy_of("one-room");
    remember_file(other);
    MainWindow window(kept_);
    QVERIFY(shown(window, a_room(), "Made"));
    QVERIFY(window.desk().unsaved());
    const std::string text = window.desk().document().text();
    QMimeData what;
    what.setUrls({QUrl::fromLocalFile(other)});
    Maker maker; // the form is filled before anybody is asked
    const std::vector<std::pair<const char *, std::function<void()>>> deeds = {
        {"close the window", [&] { window.close(); }},
        {"close", [&] { window.action("close")->trigger(); }},
        {"quit", [&] { window.action("quit")->trigger(); }},
        {"open", [&] { window.action("open")->trigger(); }},
        {"demo", [&] { window.action("demo_0")->trigger(); }},
        {"new", [&] { window.action("new")->trigger(); }},
        {"recent", [&] { window.findChild<QMenu *>("recent")->actions().front()->trigger(); }},
        {"session", [&] { window.end_session(true); }},
        {"drop", [&] {
             QDragEnterEvent enter({10, 10}, Qt::CopyAction | Qt::LinkAction, &what, Qt::LeftButton,
                                   Qt::NoModifier);
             QApplication::sendEvent(&window, &enter);
             QDropEvent event({10, 10}, Qt::CopyAction | Qt::LinkAction, &what, Qt::LeftButton,
                              Qt::NoModifier);
             QApplication::sendEvent(&window, &event);
         }}};
    for (const auto &[name, deed] : deeds) {
        const Answer answer(QMessageBox::RejectRole);
        deed();
        QVERIFY2(answer.asked() == 1, name);
        QVERIFY2(window.isVisible() && window.desk().document().text() == text, name);
        QVERIFY2(window.desk().unsaved(), name);
    }
    const Answer answer(QMessageBox::DestructiveRole);
    window.close();
    QCOMPARE(answer.asked(), 1);
    QVERIFY(!window.isVisible());
}

void LostWorkTest::a_demo_that_nobody_touched_is_not_asked_about() {
    init();
    MainWindow window(kept_);
    QVERIFY(shown_demo(window, 0));
    {
        const Answer answer(QMessageBox::RejectRole);
        window.action("close")->trigger();
        QCOMPARE(answer.asked(), 0);
    }
    window.begin_demo(0);
    QVERIFY(settled(window));
    QVERIFY(window.desk().edit("name", [](const Shell &s) { return named(s, "touched"); }));
    const Answer answer(QMessageBox::RejectRole);
    window.action("close")->trigger();
    QCOMPARE(answer.asked(), 1);
    window.close_document();
}

void LostWorkTest::who_stays_with_the_old_shell_gets_the_form_of_the_new_one_back() {
    init();
    MainWindow window(kept_);
    QVERIFY(shown(window, a_room(), "Made"));
    Maker maker;
    maker.most = 2;
    const Answer answer(QMessageBox::RejectRole);
    window.action("new")->trigger();
    QCOMPARE(answer.asked(), 2);
    QVERIFY(maker.made >= 3); // and it is there a third time, to be left
    window.close_document();
}

void LostWorkTest::loading_what_is_on_the_disk_is_an_edit_like_any_other() {
    init();
    const QString path = copy_of("one-room");
    MainWindow window(kept_);
    QVERIFY(window.open(path));
    QVERIFY(settled(window));
    const std::string first = window.desk().document().text();
    QVERIFY(window.desk().edit("name", [](const Shell &s) { return named(s, "mine"); }));
    const std::string mine = window.desk().document().text();
    QFile file(path);
    QVERIFY(file.open(QIODevice::Append));
    file.write("# somebody else was here\n");
    file.close();
    QTRY_VERIFY(window.message().sentence().contains("not saved")); // it says that there is own work
    window.message().answer(0);
    QVERIFY(window.desk().document().text().ends_with("somebody else was here\n"));
    QVERIFY(!window.desk().unsaved());
    window.message().answer(0); // bring mine back
    QCOMPARE(window.desk().document().text(), mine);
    QVERIFY(window.desk().unsaved());
    window.desk().history().undo();
    QCOMPARE(window.desk().document().text(), first);
    window.close_document();
}

/// Without an edit: who leaves then would lose all of it.
void LostWorkTest::what_is_only_here_is_asked_about() {
    for (const char *bytes : {"\xff\xfe garbage", "[shell\nthis is no TOML\n", ""}) {
        init();
        const QString path = copy_of("one-room");
        const std::string good = text_of(path);
        MainWindow window(kept_);
        QVERIFY(window.open(path));
        QVERIFY(settled(window));
        QVERIFY(!window.desk().unsaved());
        QFile file(path);
        if (*bytes == 0) {
            QVERIFY(file.remove());
        } else {
            QVERIFY(file.open(QIODevice::WriteOnly));
            file.write(bytes);
            file.close();
        }
        QTRY_VERIFY(window.desk().unsaved());
        const Answer answer(QMessageBox::RejectRole);
        window.action("close")->trigger();
        QCOMPARE(answer.asked(), 1);
        QCOMPARE(window.desk().document().text(), good);
        window.desk().keep_mine(); // over what is there now
        window.action("save")->trigger();
        QCOMPARE(text_of(path), good);
        QVERIFY(!window.desk().unsaved());
        window.close_document();
    }
}

void LostWorkTest::a_file_that_is_gone_is_saved_again() {
    init();
    const QString path = copy_of("one-room");
    MainWindow window(kept_);
    QVERIFY(window.open(path));
    QVERIFY(settled(window));
    QVERIFY(QFile::remove(path));
    QTRY_VERIFY(window.message().sentence().contains("gone"));
    window.message().answer(2); // keep mine: nothing is on the disk now
    QVERIFY(window.desk().unsaved());
    window.action("save")->trigger(); // goes through, and asks no more
    QVERIFY(QFile::exists(path));
    QVERIFY(!window.desk().unsaved());
    QVERIFY(QFile::remove(path));
    QTRY_VERIFY(window.message().sentence().contains("gone"));
    window.message().answer(0);
    QVERIFY(QFile::exists(path) && !window.desk().unsaved());
    window.close_document();
}

void LostWorkTest::the_end_of_the_session_asks_or_keeps() {
    init();
    MainWindow window(kept_);
    window.begin(a_room(), "Made");
    {
        const Answer answer(QMessageBox::RejectRole);
        QVERIFY(!window.end_session(true)); // the person stays
        QCOMPARE(answer.asked(), 1);
    }
    const Answer answer(QMessageBox::RejectRole);
    QVERIFY(window.end_session(false)); // nobody can be asked: it is kept aside
    QCOMPARE(answer.asked(), 0);
    QCOMPARE(QDir(kept_).entryList({"*.unsaved"}).size(), 1);
    window.close_document();
    QVERIFY(QDir(kept_).entryList({"*.unsaved"}).isEmpty());
}

int main(int argc, char **argv) {
    return run_test<LostWorkTest>(argc, argv);
}

#include "lost_work_test.moc"
