#include "tests/window/support/recording.h"

#include "modeler/window/desk/desk.h"

#include <QApplication>
#include <QTest>

namespace roundlay::window {

QString at_hand() {
    const QWidget *now = QApplication::focusWidget();
    return now == nullptr ? QString() : now->objectName();
}

void press_enter(Qt::KeyboardModifiers keys) {
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return, keys);
}

void type_here(const QString &words) {
    QTest::keyClicks(QApplication::focusWidget(), words);
}

Record record(MainWindow &window) {
    return window.desk().reading()->record;
}

std::optional<FoundLog> found(MainWindow &window, const std::string &tag) {
    for (const FoundLog &log : record(window).logs)
        if (log.tag == tag) return log;
    return {};
}

void open_record(MainWindow &window, const Shell &shell) {
    window.resize(1300, 800);
    QVERIFY(shown(window, shell, "Old house"));
    QVERIFY(QTest::qWaitForWindowActive(&window));
    raise(window, "record");
}

} // namespace roundlay::window
