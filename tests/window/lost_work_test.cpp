// No work is lost without a question: by another document, a change on the disk, a crash, the end of the
// session, or what goes wrong inside the program.
#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/recovery.h"
#include "modeler/window/desk/workshop.h"
#include "modeler/window/frame/application.h"
#include "modeler/window/frame/new_shell.h"
#include "modeler/window/frame/recent.h"
#include "modeler/window/panels/message_bar.h"
#include "modeler/window/panels/text_panel.h"
#include "tests/window/support/window.h"

#include <QAbstractButton>
#include <QAction>
#include <QDir>
#include <QDropEvent>
#include <QMenu>
#include <QMessageBox>
#include <QMimeData>
#include <QPushButton>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>
#include <QTimer>
#include <functional>

using namespace roundlay;
using namespace roundlay::window;

namespace {

/// Answers the question about unsaved work, if one is asked while the deed is done; then closes what is left.
class Answer : public QObject {
  public:
    explicit Answer(QMessageBox::ButtonRole role) : role_(role) { startTimer(20); }
    int asked() const { return asked_; }
    int dialogs() const { return dialogs_; } ///< others, that were closed

  protected:
    void timerEvent(QTimerEvent *) override {
        QWidget *dialog = QApplication::activeModalWidget();
        auto *box = qobject_cast<QMessageBox *>(dialog);
        if (box == nullptr) {
            if (dialog == nullptr) return;
            ++dialogs_;
            dialog->close();
            return;
        }
        ++asked_;
        for (QAbstractButton *button : box->buttons())
            if (box->buttonRole(button) == role_) return button->click();
    }

  private:
    QMessageBox::ButtonRole role_;
    int asked_ = 0, dialogs_ = 0;
};

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

class LostWorkTest : public QObject {
    Q_OBJECT

  private slots:
    void a_new_shell_is_asked_about_whatever_takes_its_place();
    void a_demo_that_nobody_touched_is_not_asked_about();
    void who_stays_with_the_old_shell_gets_the_form_of_the_new_one_back();
    void loading_what_is_on_the_disk_is_an_edit_like_any_other();
    void a_file_that_is_gone_is_saved_again();
    void what_is_only_here_is_asked_about();
    void left_work_is_offered_when_its_very_file_is_opened();
    void left_work_that_reached_the_disk_is_not_offered();
    void a_file_changed_since_the_crash_is_told_of();
    void the_end_of_the_session_asks_or_keeps();
    void what_is_no_text_is_not_opened_and_stays_as_it_is_data();
    void what_is_no_text_is_not_opened_and_stays_as_it_is();
    void a_file_that_turns_into_no_text_is_not_loaded();
    void typing_in_one_line_leaves_the_others_byte_by_byte();

  private:
    QTemporaryDir folder_;
    int turn_ = 0;
    QString kept_;
    void init() { kept_ = folder_.filePath(QStringLiteral("unsaved-%1").arg(++turn_)); }
    QString copy_of(const QString &demo) {
        const QString path = folder_.filePath(QStringLiteral("%1-%2.roundlay").arg(demo).arg(++turn_));
        QFile::copy(demo_file(demo), path);
        QFile(path).setPermissions(QFile::ReadOwner | QFile::WriteOwner);
        return path;
    }
};

void LostWorkTest::a_new_shell_is_asked_about_whatever_takes_its_place() {
    init();
    const QString other = copy_of("one-room");
    remember_file(other);
    MainWindow window(kept_);
    window.show();
    window.begin(a_room(), "Made");
    QVERIFY(settled(window));
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
    window.show();
    window.begin_demo(0);
    QVERIFY(settled(window));
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
    window.show();
    window.begin(a_room(), "Made");
    QVERIFY(settled(window));
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

namespace {

/// As a session that ended badly leaves it: nobody holds its lock any more.
void leave(const QString &folder, const QString &path, const std::string &text,
           const std::optional<std::string> &on_disk) {
    Recovery session(folder);
    QVERIFY(session.keep({{}, path, "left", text, on_disk}));
}

} // namespace

void LostWorkTest::left_work_is_offered_when_its_very_file_is_opened() {
    init();
    const QString path = copy_of("one-room"), other = copy_of("ell-house");
    const std::string before = text_of(path), left = before + "# typed before the crash\n";
    leave(kept_, path, left, before);
    MainWindow window(kept_);
    QVERIFY(window.open(other));
    QVERIFY(window.message().sentence().isEmpty()); // it is none of that file's business
    QVERIFY(window.open(path));
    QVERIFY(!window.message().sentence().isEmpty());
    window.message().answer(0);
    QVERIFY(settled(window));
    QCOMPARE(window.desk().document().text(), left);
    QVERIFY(window.desk().unsaved());
    QCOMPARE(window.desk().path(), path);
    window.action("save")->trigger();
    QCOMPARE(text_of(path), left);
    QVERIFY(Recovery(kept_).left_behind().empty());
    window.close_document();
}

void LostWorkTest::left_work_that_reached_the_disk_is_not_offered() {
    init();
    const QString path = copy_of("one-room");
    leave(kept_, path, text_of(path), {});
    MainWindow window(kept_);
    QVERIFY(window.open(path));
    QVERIFY(window.message().sentence().isEmpty());
    QVERIFY(Recovery(kept_).left_behind().empty());
}

void LostWorkTest::a_file_changed_since_the_crash_is_told_of() {
    init();
    const QString path = copy_of("one-room");
    leave(kept_, path, text_of(path) + "# typed before the crash\n", "what it held then");
    MainWindow window(kept_);
    window.offer_recovery();
    window.message().answer(0);
    QVERIFY(settled(window));
    QVERIFY(window.message().sentence().contains("changed on the disk"));
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

void LostWorkTest::what_is_no_text_is_not_opened_and_stays_as_it_is_data() {
    QTest::addColumn<QByteArray>("bytes");
    QTest::addColumn<QString>("said");
    QFile demo(demo_file("one-room"));
    QVERIFY(demo.open(QIODevice::ReadOnly));
    const QByteArray text = demo.readAll();
    // PNG's signature and first chunk, W3C Portable Network Graphics 5.2 and 11.2.
    QTest::newRow("a picture") << QByteArray("\x89PNG\r\n\x1a\n\0\0\0\rIHDR\0\0\0\1", 20) << "Line 1";
    QTest::newRow("Latin-1") << QByteArray(text).replace("Tarnfold one-room", "Maison d'\xe9t\xe9") << "0xE9";
    QTest::newRow("UTF-16") << QByteArray("r\0o\0u\0n\0d\0l\0a\0y\0=\0001\0", 20) << "Line 1";
}

void LostWorkTest::what_is_no_text_is_not_opened_and_stays_as_it_is() {
    QFETCH(QByteArray, bytes);
    QFETCH(QString, said);
    init();
    const QString path = folder_.filePath(QStringLiteral("strange-%1.roundlay").arg(++turn_));
    QFile file(path);
    QVERIFY(file.open(QIODevice::WriteOnly));
    file.write(bytes);
    file.close();
    MainWindow window(kept_);
    window.show();
    QVERIFY(!window.open(path));
    QVERIFY(!window.desk().is_open());
    QVERIFY2(window.message().sentence().contains(said), qPrintable(window.message().sentence()));
    QVERIFY(window.message().sentence().contains("UTF-8"));
    const QString other = copy_of("one-room"); // what lies open goes on lying there
    QVERIFY(window.open(other));
    QVERIFY(!window.open(path));
    QCOMPARE(window.desk().path(), other);
    window.action("save")->trigger();
    QCOMPARE(QByteArray::fromStdString(text_of(path)), bytes);
    window.close_document();
}

void LostWorkTest::a_file_that_turns_into_no_text_is_not_loaded() {
    init();
    const QString path = copy_of("one-room");
    const std::string before = text_of(path);
    MainWindow window(kept_);
    window.show();
    QVERIFY(window.open(path));
    QVERIFY(settled(window));
    QFile file(path);
    QVERIFY(file.open(QIODevice::WriteOnly));
    file.write(QByteArray("\xff\xfe\0", 3));
    file.close();
    QVERIFY(window.desk().reload());
    QCOMPARE(window.desk().document().text(), before);
    {
        const Answer answer(QMessageBox::RejectRole); // it asks first, and is told to go on working
        window.action("save")->trigger();
        QCOMPARE(answer.asked(), 1);
    }
    QCOMPARE(text_of(path), std::string("\xff\xfe\0", 3));
    window.close_document();
}

/// Ends of lines as another system writes them, a mark of the encoding, a blank that does not break.
void LostWorkTest::typing_in_one_line_leaves_the_others_byte_by_byte() {
    init();
    const QString path = folder_.filePath("elsewhere.roundlay");
    std::string text = "\xef\xbb\xbf# de\xc2\xa0loin\n" + text_of(demo_file("one-room"));
    for (std::size_t at = 0; (at = text.find('\n', at)) != std::string::npos; at += 2)
        text.replace(at, 1, "\r\n");
    QFile file(path);
    QVERIFY(file.open(QIODevice::WriteOnly));
    file.write(QByteArray::fromStdString(text));
    file.close();
    MainWindow window(kept_);
    window.show();
    QVERIFY(window.open(path));
    QVERIFY(settled(window));
    raise(window, "text");
    TextPanel &panel = window.text_panel();
    panel.go_to(3, 1);
    QTest::keyClicks(&panel, "# mine ");
    panel.take();
    const std::size_t third = text.find("\r\n", text.find("\r\n") + 2) + 2;
    QCOMPARE(window.desk().document().text(), std::string(text).insert(third, "# mine "));
    QCOMPARE(panel.textCursor().columnNumber(), 7); // and the hand goes on where it was
    QTest::keyClick(&panel, Qt::Key_Return);
    panel.take();
    QCOMPARE(window.desk().document().text(), std::string(text).insert(third, "# mine \r\n"));
    window.close_document();
}

int main(int argc, char **argv) {
    const TestProgram program(argc, argv);
    LostWorkTest test;
    return QTest::qExec(&test, argc, argv);
}

#include "lost_work_test.moc"
