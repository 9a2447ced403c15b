#include "tests/window/support/typing.h"

#include "modeler/window/panels/length_edit.h"
#include "modeler/window/views/drawing_view.h"

#include <QDockWidget>
#include <QFormLayout>
#include <QLabel>
#include <QTest>

namespace roundlay::window {

MeasureEdit &field_in(MainWindow &window, const char *dock, const char *name) {
    raise(window, dock);
    auto *d = window.findChild<QDockWidget *>(QLatin1String(dock));
    auto *edit = d->findChild<MeasureEdit *>(QLatin1String(name));
    Q_ASSERT(edit != nullptr);
    return *edit;
}

void type(MeasureEdit &edit, const QString &words) {
    edit.setFocus();
    edit.selectAll();
    QTest::keyClicks(&edit, words);
}

void enter(MeasureEdit &edit, const QString &words) {
    type(edit, words);
    QTest::keyClick(&edit, Qt::Key_Return);
}

void type_length(DrawingView &view, const char *first, const char *rest) {
    QTest::keyClicks(&view, first);
    auto *typed = view.findChild<LengthEdit *>();
    QVERIFY(typed->isVisible());
    QTest::keyClicks(typed, rest);
    QTest::keyClick(typed, Qt::Key_Return);
}

QString told_beside(const QWidget &field) {
    auto &edit = const_cast<QWidget &>(field);
    auto *form = qobject_cast<QFormLayout *>(edit.parentWidget()->layout());
    int row = -1;
    QFormLayout::ItemRole role{};
    if (form == nullptr) { // a form in a column
        for (QFormLayout *f : edit.parentWidget()->findChildren<QFormLayout *>())
            if (f->indexOf(&edit) >= 0) form = f;
    }
    form->getWidgetPosition(&edit, &row, &role);
    const QLayoutItem *below =
        row + 1 < form->rowCount() ? form->itemAt(row + 1, QFormLayout::SpanningRole) : nullptr;
    auto *why = below != nullptr ? qobject_cast<QLabel *>(below->widget()) : nullptr;
    return why != nullptr && why->objectName() == "why" && why->isVisible() ? why->text() : QString();
}

void put_up(MainWindow &window) {
    window.resize(1300, 800);
    window.show();
    window.begin_demo(1);
    QVERIFY(settled(window));
    QVERIFY(QTest::qWaitForWindowActive(&window));
}

} // namespace roundlay::window
