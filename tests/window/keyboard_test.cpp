// Keys in fields and between them: what is undone, whose shortcut it is, and where the keyboard is.
#include "kernel/design/shell_edits.h"
#include "kernel/document/limits.h"
#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/selection.h"
#include "modeler/window/desk/words.h"
#include "modeler/window/frame/application.h"
#include "modeler/window/frame/focus_ring.h"
#include "modeler/window/frame/new_shell.h"
#include "modeler/window/panels/floor_panel.h"
#include "modeler/window/panels/length_edit.h"
#include "modeler/window/panels/log_panel.h"
#include "modeler/window/panels/text_panel.h"
#include "modeler/window/views/joint_page.h"
#include "modeler/window/views/plan_view.h"
#include "tests/window/support/typing.h"
#include "tests/window/support/window_test.h"

#include <QAction>
#include <QApplication>
#include <QComboBox>
#include <QCommandLinkButton>
#include <QDialog>
#include <QDockWidget>
#include <QFormLayout>
#include <QLabel>
#include <QMenuBar>
#include <QScreen>
#include <QSettings>
#include <QSpinBox>
#include <QStandardItemModel>
#include <QTest>
#include <QTimer>
#include <QTranslator>

using namespace roundlay;
using namespace roundlay::window;

class KeyboardTest : public WindowTest {
    Q_OBJECT

  private slots:
    void undo_takes_back_letters_first_then_the_document();
    void undo_in_the_text_is_the_document_s();
    void keys_of_the_menu_are_the_menu_s_in_a_field();
    void tab_goes_nowhere_unseen_and_its_ring_is_seen();
    void f6_goes_through_the_panels();
    void letters_of_the_menus_are_no_field_s_data();
    void letters_of_the_menus_are_no_field_s();
    void f10_opens_the_menus();
    void a_panel_that_is_chosen_comes_to_the_front();
    void enter_does_what_looks_ready();
};

void KeyboardTest::undo_takes_back_letters_first_then_the_document() {
    MainWindow window(kept());
    put_up(window);
    const std::string first = window.desk().document().text();
    MeasureEdit &edit = field_in(window, "shell", "overhang");
    const QString old = edit.text();
    enter(edit, "4 in");
    QVERIFY(settled(window));
    const std::string second = window.desk().document().text();
    const QString now = edit.text();
    QVERIFY(second != first);
    type(edit, "5");
    QTest::keyClick(&edit, Qt::Key_Z, Qt::ControlModifier); // of what is being typed
    for (int i = 0; i < 5 && edit.isUndoAvailable(); ++i)
        QTest::keyClick(&edit, Qt::Key_Z, Qt::ControlModifier);
    QCOMPARE(window.desk().document().text(), second);
    QCOMPARE(edit.text(), now);
    QTest::keyClick(&edit, Qt::Key_Z, Qt::ControlModifier); // of the document
    QVERIFY(settled(window));
    QCOMPARE(window.desk().document().text(), first);
    QCOMPARE(edit.text(), old);
    QTest::keyClick(&edit, Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
    QVERIFY(settled(window));
    QCOMPARE(window.desk().document().text(), second);
    QTest::keyClick(&edit, Qt::Key_Z, Qt::ControlModifier);
    QVERIFY(settled(window));
    enter(edit, now); // as it is printed: what is taken is no longer the field's to undo
    QVERIFY(settled(window));
    QCOMPARE(window.desk().document().text(), second);
    QTest::keyClick(&edit, Qt::Key_Z, Qt::ControlModifier);
    QVERIFY(settled(window));
    QCOMPARE(window.desk().document().text(), first);
    QCOMPARE(edit.text(), old);
    // A box that counts, too.
    auto *rounds = window.findChild<QDockWidget *>("shell")->findChild<QSpinBox *>();
    rounds->setFocus();
    QTest::keyClick(rounds, Qt::Key_Up);
    QVERIFY(settled(window));
    QVERIFY(window.desk().document().text() != first);
    QTest::keyClick(rounds, Qt::Key_Z, Qt::ControlModifier);
    QVERIFY(settled(window));
    QCOMPARE(window.desk().document().text(), first);
    window.close_document();
}

void KeyboardTest::undo_in_the_text_is_the_document_s() {
    MainWindow window(kept());
    put_up(window);
    const std::string first = window.desk().document().text();
    raise(window, "text");
    TextPanel &text = window.text_panel();
    text.setFocus();
    QTest::keyClicks(&text, "# one");
    QTest::keyClick(&text, Qt::Key_Z, Qt::ControlModifier); // before the pause in which it would be taken
    QCOMPARE(window.desk().document().text(), first);
    QCOMPARE(text.toPlainText().toStdString(), first);
    QTest::keyClick(&text, Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
    QVERIFY(window.desk().document().text() != first);
    QCOMPARE(text.toPlainText().toStdString(), window.desk().document().text());
    QTest::keyClick(&text, Qt::Key_Z, Qt::ControlModifier);
    QCOMPARE(window.desk().document().text(), first);
    window.close_document();
}

void KeyboardTest::keys_of_the_menu_are_the_menu_s_in_a_field() {
    MainWindow window(kept());
    put_up(window);
    MeasureEdit &edit = field_in(window, "shell", "thickness");
    edit.setFocus();
    QTest::keyClick(&edit, Qt::Key_U, Qt::ControlModifier); // not: empties the line
    QVERIFY(settled(window));
    QCOMPARE(window.desk().units(), UnitSystem::metric);
    QVERIFY(edit.text().endsWith(" mm"));
    bool exported = false;
    QTimer::singleShot(300, &window, [&] {
        if (auto *dialog = qobject_cast<QDialog *>(QApplication::activeModalWidget())) {
            exported = true;
            dialog->close();
        }
    });
    QTest::keyClick(&edit, Qt::Key_E, Qt::ControlModifier); // not: to the end of the line
    QVERIFY(exported);
    type(edit, "123");
    QTest::keyClick(&edit, Qt::Key_A, Qt::ControlModifier); // this is the line's own
    QCOMPARE(edit.selectedText(), QString("123"));
    QTest::keyClick(&edit, Qt::Key_Delete); // and does not remove an opening
    QCOMPARE(edit.text(), QString());
    QTest::keyClick(&edit, Qt::Key_Escape);
    window.close_document();
}

namespace {

QWidget *ring_of(const QWidget &window) {
    for (QObject *child : window.children()) // not deeper: it lies over all the rest
        if (child->objectName() == QLatin1String("focus-ring")) return static_cast<QWidget *>(child);
    return nullptr;
}

/// True where the ring's own colour is seen on all four sides of the widget that has the keyboard.
bool is_ringed(MainWindow &window) {
    const QWidget *ring = ring_of(window), *focus = QApplication::focusWidget();
    if (ring == nullptr || !ring->isVisible()) return false;
    const QRect about = ring->geometry();
    const QRect inside = QRect(focus->mapTo(&window, QPoint()), focus->size()) & window.rect();
    if (!about.intersects(inside)) return false;
    const QImage picture = window.grab().toImage();
    const double scale = picture.devicePixelRatio();
    const QRgb ink = window.palette().color(QPalette::Highlight).rgb();
    const auto seen = [&](QPoint p) { return picture.pixel((QPointF(p) * scale).toPoint()) == ink; };
    return seen({about.center().x(), about.top()}) && seen({about.center().x(), about.bottom()}) &&
           seen({about.left(), about.center().y()}) && seen({about.right(), about.center().y()});
}

} // namespace

void KeyboardTest::tab_goes_nowhere_unseen_and_its_ring_is_seen() {
    MainWindow window(kept());
    put_up(window);
    window.selection().choose_opening(*window.desk().state()->read.shell, 0);
    constexpr int most = 200;
    int steps = 0;
    window.plan().setFocus();
    for (; steps < most; ++steps) {
        QWidget *now = QApplication::focusWidget();
        QVERIFY(now != nullptr);
        if (steps > 0 && now == &window.plan()) break;
        const QString who =
            QString::fromLatin1(now->metaObject()->className()) + u' ' + now->accessibleName();
        QRect seen(now->mapTo(&window, QPoint()), now->size());
        for (const QWidget *p = now->parentWidget(); p != &window; p = p->parentWidget())
            seen &= QRect(p->mapTo(&window, QPoint()), p->size());
        QVERIFY2(!(seen & window.rect()).isEmpty(), qPrintable(who));
        QVERIFY2(is_ringed(window), qPrintable(who));
        QTest::keyClick(now, Qt::Key_Tab);
    }
    QVERIFY2(steps > 8 && steps < most, qPrintable(QString::number(steps)));
    window.close_document();
}

void KeyboardTest::f6_goes_through_the_panels() {
    MainWindow window(kept());
    put_up(window);
    const auto dock_of_focus = [&]() -> QString {
        for (QDockWidget *dock : window.findChildren<QDockWidget *>())
            if (dock->isAncestorOf(QApplication::focusWidget())) return dock->objectName();
        return QStringLiteral("centre");
    };
    window.plan().setFocus();
    QStringList seen;
    for (int i = 0; i < 20; ++i) {
        seen << dock_of_focus();
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_F6);
        if (dock_of_focus() == "plan") break;
    }
    // Those that are in front; the model's own controls are off where there is no OpenGL.
    for (const char *name : {"plan", "elevation", "log", "findings"})
        QVERIFY2(seen.contains(name), name);
    QVERIFY(!seen.contains("text") && !seen.contains("shell"));
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_F6, Qt::ShiftModifier);
    QCOMPARE(dock_of_focus(), seen.back());
    window.close_document();
}

void KeyboardTest::letters_of_the_menus_are_no_field_s_data() {
    QTest::addColumn<QString>("language");
    QTest::newRow("English") << "en";
    QTest::newRow("French") << "fr";
}

/// All panels at once: whichever are in front, the menus' letters are the menus'.
void KeyboardTest::letters_of_the_menus_are_no_field_s() {
    QFETCH(QString, language);
    const auto spoken = own_translator(QLocale(language));
    if (spoken) QCoreApplication::installTranslator(spoken.get());
    {
        MainWindow window(kept());
        put_up(window);
        QMap<QString, QString> menus;
        for (const QAction *menu : window.menuBar()->actions()) {
            const QString letter = QKeySequence::mnemonic(menu->text()).toString();
            QVERIFY2(!letter.isEmpty() && !menus.contains(letter), qPrintable(menu->text()));
            menus.insert(letter, menu->text());
        }
        int fields = 0;
        const auto check = [&](const QString &words) {
            const QString letter = QKeySequence::mnemonic(words).toString();
            if (letter.isEmpty()) return;
            ++fields;
            QVERIFY2(!menus.contains(letter), qPrintable(words + " takes " + menus.value(letter)));
        };
        for (const QLabel *label : window.findChildren<QLabel *>())
            if (label->buddy() != nullptr) check(label->text());
        for (const QAbstractButton *button : window.findChildren<QAbstractButton *>())
            check(button->text());
        QVERIFY2(fields > 30, qPrintable(QString::number(fields)));
        window.close_document();
    }
    if (spoken) QCoreApplication::removeTranslator(spoken.get());
}

void KeyboardTest::f10_opens_the_menus() {
    MainWindow window(kept());
    put_up(window);
    for (QWidget *from : {static_cast<QWidget *>(&window.plan()),
                          static_cast<QWidget *>(&field_in(window, "shell", "thickness"))}) {
        from->setFocus();
        QTest::keyClick(from, Qt::Key_F10);
        QVERIFY(QApplication::activePopupWidget() != nullptr);
        QCOMPARE(window.menuBar()->activeAction(), window.menuBar()->actions().front());
        QTest::keyClick(QApplication::activePopupWidget(), Qt::Key_Escape);
        while (QApplication::activePopupWidget() != nullptr)
            QApplication::activePopupWidget()->close();
    }
    window.close_document();
}

void KeyboardTest::a_panel_that_is_chosen_comes_to_the_front() {
    MainWindow window(kept());
    put_up(window);
    const auto front = [&](const char *dock) {
        return !window.findChild<QDockWidget *>(QLatin1String(dock))->visibleRegion().isEmpty();
    };
    QAction *floors = window.action("panel_floors");
    raise(window, "plan");
    QVERIFY(!front("floors") && floors->isChecked());
    floors->trigger(); // it is behind
    QTRY_VERIFY(front("floors") && !front("plan") && floors->isChecked());
    QTRY_VERIFY(window.floors().isAncestorOf(QApplication::focusWidget()) ||
                &window.floors() == QApplication::focusWidget());
    floors->trigger(); // it is seen
    QTRY_VERIFY(window.findChild<QDockWidget *>("floors")->isHidden() && !floors->isChecked());
    raise(window, "plan");
    floors->trigger(); // and comes again before all that share its place
    QTRY_VERIFY(front("floors") && !front("plan") && floors->isChecked());
    window.findChild<QDockWidget *>("floors")->close(); // by its own button
    QVERIFY(!floors->isChecked());
    window.close_document();
}

void KeyboardTest::enter_does_what_looks_ready() {
    {
        MainWindow window(kept());
        window.show();
        QVERIFY(QTest::qWaitForWindowActive(&window));
        QCommandLinkButton *demo = window.findChildren<QCommandLinkButton *>().back();
        demo->setFocus();
        QTest::keyClick(demo, Qt::Key_Return);
        QVERIFY(window.desk().is_open());
        window.close_document();
    }
    NewShellDialog dialog(UnitSystem::metric);
    dialog.show();
    QVERIFY(QTest::qWaitForWindowActive(&dialog));
    LengthEdit *first = dialog.findChild<LengthEdit *>();
    QVERIFY(first != nullptr);
    type(*first, "8000");
    QTest::keyClick(first, Qt::Key_Return); // takes what is typed
    QVERIFY(dialog.isVisible());
    QTest::keyClick(first, Qt::Key_Return); // there is nothing to take
    QCOMPARE(dialog.result(), static_cast<int>(QDialog::Accepted));
}

int main(int argc, char **argv) {
    return run_test<KeyboardTest>(argc, argv);
}

#include "keyboard_test.moc"
