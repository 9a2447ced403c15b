// Files that are no text, or a text as another system writes it, stay as they are.
#include "modeler/window/desk/desk.h"
#include "modeler/window/frame/new_shell.h"
#include "modeler/window/panels/message_bar.h"
#include "modeler/window/panels/text_panel.h"
#include "tests/window/support/answer.h"
#include "tests/window/support/window_test.h"

#include <QAction>
#include <QMessageBox>
#include <QTest>

using namespace roundlay;
using namespace roundlay::window;

class StrangeFilesTest : public WindowTest {
    Q_OBJECT

  private slots:
    void what_is_no_text_is_not_opened_and_stays_as_it_is_data();
    void what_is_no_text_is_not_opened_and_stays_as_it_is();
    void a_file_that_turns_into_no_text_is_not_loaded();
    void typing_in_one_line_leaves_the_others_byte_by_byte();

  private:
    int turn_ = 0;
    QString kept_;
    void init() { kept_ = folder_.filePath(QStringLiteral("unsaved-%1").arg(++turn_)); }
};

void StrangeFilesTest::what_is_no_text_is_not_opened_and_stays_as_it_is_data() {
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

void StrangeFilesTest::what_is_no_text_is_not_opened_and_stays_as_it_is() {
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

void StrangeFilesTest::a_file_that_turns_into_no_text_is_not_loaded() {
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
void StrangeFilesTest::typing_in_one_line_leaves_the_others_byte_by_byte() {
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
    return run_test<StrangeFilesTest>(argc, argv);
}

#include "strange_files_test.moc"
