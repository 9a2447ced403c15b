// The form for a new shell: whatever it has to say of a field, all fields can be seen and reached.
#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/selection.h"
#include "modeler/window/frame/application.h"
#include "modeler/window/frame/new_shell.h"
#include "modeler/window/panels/length_edit.h"
#include "tests/window/support/sight.h"
#include "tests/window/support/typing.h"
#include "tests/window/support/window_test.h"

#include <QAbstractSpinBox>
#include <QApplication>
#include <QComboBox>
#include <QLabel>
#include <QScrollArea>
#include <QTest>
#include <QTranslator>

using namespace roundlay;
using namespace roundlay::window;

class NewShellFormTest : public WindowTest {
    Q_OBJECT

  private slots:
    void a_reason_covers_no_field_data();
    void a_reason_covers_no_field();
    void nor_does_it_in_a_panel();
};

void NewShellFormTest::a_reason_covers_no_field_data() {
    QTest::addColumn<QString>("language");
    QTest::addColumn<int>("shape");
    QTest::addColumn<QSize>("size");
    const QSize usual, low(640, 320); // as the form likes it; a screen of 683 x 384 points
    for (const char *language : {"en", "fr"})
        for (const Shape shape : {Shape::rectangle, Shape::ell, Shape::inset, Shape::cross})
            for (const QSize size : {usual, low})
                QTest::addRow("%s, shape %d, %d wide", language, static_cast<int>(shape), size.width())
                    << language << static_cast<int>(shape) << size;
}

void NewShellFormTest::a_reason_covers_no_field() {
    QFETCH(QString, language);
    QFETCH(int, shape);
    QFETCH(QSize, size);
    const auto words = own_translator(QLocale(language));
    if (words) QApplication::installTranslator(words.get());
    NewShellDialog dialog(UnitSystem::imperial);
    dialog.choose(static_cast<Shape>(shape));
    if (size.isValid()) dialog.resize(size);
    dialog.show();
    QVERIFY(QTest::qWaitForWindowActive(&dialog));
    const auto all = seen_lengths(dialog);
    for (LengthEdit *edit : all) {
        type(*edit, QStringLiteral("abc"));
        QTest::keyClick(edit, Qt::Key_Tab);
        QTest::qWait(20);
        QVERIFY(!edit->complaint().isEmpty());
        const QString wrong = covered(*edit->parentWidget());
        QVERIFY2(wrong.isEmpty(), qPrintable(wrong));
        const QWidget *next = QApplication::focusWidget();
        QVERIFY(next != nullptr && next != edit);
        QVERIFY2(in_sight(*next), qPrintable(next->accessibleName() + " cannot be seen"));
    }
    for (LengthEdit *edit : all) { // and goes again
        edit->setFocus();
        QTest::keyClick(edit, Qt::Key_Escape);
        QTest::qWait(20);
        const QString wrong = covered(*edit->parentWidget());
        QVERIFY2(wrong.isEmpty(), qPrintable(wrong));
    }
    if (words) QApplication::removeTranslator(words.get());
}

/// Some rows are not there: heights of a round log, slopes that are not stated.
void NewShellFormTest::nor_does_it_in_a_panel() {
    for (const auto &[kind, dock, field] :
         {std::tuple(NotchKind::saddle, "log", "mark"), std::tuple(NotchKind::saddle, "log", "diameter"),
          std::tuple(NotchKind::full_dovetail, "joint", "joint_slope")}) {
        MainWindow window(kept());
        window.resize(1000, 560);
        QVERIFY(shown(window, *shell_of(usual_shell(Shape::rectangle, UnitSystem::metric, kind)), "Room"));
        QVERIFY(QTest::qWaitForWindowActive(&window));
        const Layout &layout = window.desk().standing()->job.layout;
        window.selection().choose_piece(layout, *piece_tagged(layout, "A-02-1"));
        MeasureEdit &edit = field_in(window, dock, field);
        enter(edit, QString(300, u'x'));
        QTest::qWait(50);
        QVERIFY(!told_beside(edit).isEmpty());
        const QString wrong = covered(*edit.parentWidget());
        QVERIFY2(wrong.isEmpty(), qPrintable(QLatin1String(field) + ": " + wrong));
        edit.let_go();
        QTest::qWait(50);
        const QString still = covered(*edit.parentWidget());
        QVERIFY2(still.isEmpty(), qPrintable(QLatin1String(field) + ": " + still));
        window.close_document();
    }
}

int main(int argc, char **argv) {
    return run_test<NewShellFormTest>(argc, argv);
}

#include "new_shell_form_test.moc"
