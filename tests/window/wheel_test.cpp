// The wheel over a field: it scrolls the panel, and the house stays as it is.
#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/selection.h"
#include "modeler/window/frame/new_shell.h"
#include "modeler/window/panels/length_edit.h"
#include "tests/window/support/typing.h"
#include "tests/window/support/window_test.h"

#include <QtTest/qtestspontaneevent.h>

#include <QAbstractSpinBox>
#include <QApplication>
#include <QComboBox>
#include <QDockWidget>
#include <QScrollArea>
#include <QScrollBar>
#include <QSlider>
#include <QTest>
#include <QWheelEvent>

using namespace roundlay;
using namespace roundlay::window;

namespace {

/// As the system gives it: to the widget below the pointer, and on from there.
void wheel(QWidget &over, int notches) {
    constexpr int notch = 120;
    const QPointF at = over.rect().center();
    QWheelEvent event(at, over.mapToGlobal(at), {}, {0, notch * notches}, Qt::NoButton, Qt::NoModifier,
                      Qt::NoScrollPhase, false);
    QSpontaneKeyEvent::setSpontaneous(&event); // what a program sends itself goes no further
    qApp->notify(&over, &event);
}

/// All that the wheel could change, with what stands there now.
QStringList values(const QWidget &window) {
    QStringList now;
    for (const QComboBox *box : window.findChildren<QComboBox *>())
        now << box->objectName() + box->currentText();
    for (const QAbstractSpinBox *box : window.findChildren<QAbstractSpinBox *>())
        now << box->text();
    return now;
}

QList<QWidget *> boxes(const QWidget &window) {
    QList<QWidget *> all;
    for (QComboBox *box : window.findChildren<QComboBox *>())
        all << box;
    for (QAbstractSpinBox *box : window.findChildren<QAbstractSpinBox *>())
        all << box;
    all.removeIf([](const QWidget *box) { return !box->isVisible(); });
    return all;
}

} // namespace

class WheelTest : public WindowTest {
    Q_OBJECT

  private slots:
    void over_a_field_it_changes_nothing_of_the_house();
    void over_a_field_it_scrolls_the_panel();
    void it_takes_the_keyboard_from_nobody();
    void in_a_dialog_too();
};

void WheelTest::over_a_field_it_changes_nothing_of_the_house() {
    MainWindow window(kept());
    put_up(window);
    window.selection().choose_piece(window.desk().standing()->job.layout, Index<Piece>(0));
    window.selection().choose_corner("AB");
    const std::string before = window.desk().document().text();
    int met = 0;
    for (const char *dock : {"shell", "floors", "log", "joint"}) {
        if (QLatin1String(dock) == QLatin1String("log"))
            window.selection().choose_piece(window.desk().standing()->job.layout, Index<Piece>(0));
        raise(window, dock);
        auto *panel = window.findChild<QDockWidget *>(QLatin1String(dock));
        const QStringList shown = values(*panel);
        for (QWidget *box : boxes(*panel)) {
            ++met;
            for (const bool with_the_keyboard : {false, true}) {
                if (with_the_keyboard) box->setFocus();
                wheel(*box, -1);
                wheel(*box, -1);
                wheel(*box, 1);
                QCOMPARE(values(*panel), shown);
                QCOMPARE(window.desk().document().text(), before);
            }
        }
    }
    QVERIFY2(met >= 10, qPrintable(QString::number(met)));
    window.close_document();
}

void WheelTest::over_a_field_it_scrolls_the_panel() {
    MainWindow window(kept());
    put_up(window);
    window.resize(1000, 420); // low: the panel is longer
    raise(window, "shell");
    auto *panel = window.findChild<QDockWidget *>("shell")->findChild<QScrollArea *>();
    QTRY_VERIFY(panel->verticalScrollBar()->maximum() > 0);
    for (QWidget *box : boxes(*panel)) {
        panel->verticalScrollBar()->setValue(0);
        wheel(*box, -1);
        QVERIFY2(panel->verticalScrollBar()->value() > 0, box->metaObject()->className());
    }
    window.close_document();
}

/// The keyboard would take along what is typed elsewhere and not taken yet.
void WheelTest::it_takes_the_keyboard_from_nobody() {
    MainWindow window(kept());
    put_up(window);
    MeasureEdit &edit = field_in(window, "shell", "thickness");
    type(edit, "12");
    for (QWidget *box : boxes(*window.findChild<QDockWidget *>("shell"))) {
        wheel(*box, -1);
        QCOMPARE(QApplication::focusWidget(), &edit);
    }
    QTest::keyClick(&edit, Qt::Key_Escape);
    window.close_document();
}

void WheelTest::in_a_dialog_too() {
    NewShellDialog dialog(UnitSystem::metric);
    dialog.show();
    QVERIFY(QTest::qWaitForWindowActive(&dialog));
    const QStringList shown = values(dialog);
    const QList<QWidget *> all = boxes(dialog);
    QVERIFY(all.size() >= 3);
    for (QWidget *box : all) {
        box->setFocus();
        wheel(*box, -1);
        QCOMPARE(values(dialog), shown);
    }
}

int main(int argc, char **argv) {
    return run_test<WheelTest>(argc, argv);
}

#include "wheel_test.moc"
