// The form for a new shell: whatever it has to say of a field, all fields can be seen and reached.
#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/selection.h"
#include "modeler/window/frame/application.h"
#include "modeler/window/frame/new_shell.h"
#include "modeler/window/panels/length_edit.h"
#include "tests/window/support/typing.h"

#include <QAbstractSpinBox>
#include <QApplication>
#include <QComboBox>
#include <QLabel>
#include <QScrollArea>
#include <QTemporaryDir>
#include <QTest>
#include <QTranslator>

using namespace roundlay;
using namespace roundlay::window;

namespace {

/// By the place in the form, whatever the language.
QList<LengthEdit *> seen_lengths(const QWidget &dialog) {
    QList<LengthEdit *> seen;
    for (LengthEdit *edit : dialog.findChildren<LengthEdit *>())
        if (edit->isVisible()) seen << edit;
    std::sort(seen.begin(), seen.end(),
              [](const LengthEdit *a, const LengthEdit *b) { return a->y() < b->y(); });
    return seen;
}

/// What has less height than it asks for, or lies over something else of the form. Empty where all is well.
QString covered(const QWidget &form) {
    QList<QWidget *> parts;
    for (QWidget *part : form.findChildren<QWidget *>(Qt::FindDirectChildrenOnly))
        if (part->isVisible()) parts << part;
    for (const QWidget *a : parts) {
        const auto *label = qobject_cast<const QLabel *>(a);
        const int least = label != nullptr && label->wordWrap() ? label->heightForWidth(a->width())
                                                                : a->minimumSizeHint().height();
        if (a->height() < least)
            return QStringLiteral("%1 %2 is %3 high and needs %4")
                .arg(a->metaObject()->className(), a->accessibleName())
                .arg(a->height())
                .arg(least);
        for (const QWidget *b : parts)
            if (a != b && a->geometry().intersects(b->geometry()))
                return a->metaObject()->className() + QStringLiteral(" over ") + b->metaObject()->className();
    }
    return {};
}

/// Of what a scrolled form holds; what stands beside it is always.
bool in_sight(const QWidget &widget) {
    for (QWidget *at = widget.parentWidget(); at != nullptr; at = at->parentWidget())
        if (const auto *area = qobject_cast<QScrollArea *>(at))
            return area->viewport()->rect().contains(
                QRect(widget.mapTo(area->viewport(), QPoint()), widget.size()));
    return widget.isVisible();
}

} // namespace

class NewShellFormTest : public QObject {
    Q_OBJECT

  private slots:
    void a_reason_covers_no_field_data();
    void a_reason_covers_no_field();
    void nor_does_it_in_a_panel();

  private:
    QTemporaryDir folder_;
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
        MainWindow window(folder_.filePath(QStringLiteral("unsaved")));
        window.resize(1000, 560);
        window.show();
        window.begin(*shell_of(usual_shell(Shape::rectangle, UnitSystem::metric, kind)), "Room");
        QVERIFY(settled(window));
        QVERIFY(QTest::qWaitForWindowActive(&window));
        const Layout &layout = window.desk().standing()->job.layout;
        window.selection().choose_piece(layout, piece_tagged(layout, "A-02-1"));
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
    const TestProgram program(argc, argv);
    NewShellFormTest test;
    return QTest::qExec(&test, argc, argv);
}

#include "new_shell_form_test.moc"
