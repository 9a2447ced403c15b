#include "modeler/window/panels/field_row.h"

#include "modeler/window/desk/desk.h"
#include "modeler/window/panels/length_edit.h"
#include "modeler/window/views/tints.h"

#include <QFormLayout>
#include <QLabel>

namespace roundlay::window {

void add_field(QFormLayout &form, const QString &label, MeasureEdit &edit) {
    if (edit.accessibleName().isEmpty()) edit.setAccessibleName(QString(label).remove(u'&'));
    form.addRow(label, &edit);
    auto *why = new QLabel;
    why->setObjectName(QStringLiteral("why"));
    why->setWordWrap(true);
    form.addRow(why);
    form.setRowVisible(why, false);
    QObject::connect(&edit, &MeasureEdit::complained, why, [&form, why](const QString &sentence) {
        QPalette red = why->palette();
        red.setColor(QPalette::WindowText, tints().error);
        why->setPalette(red);
        why->setText(sentence);
        form.setRowVisible(why, !sentence.isEmpty());
    });
}

void commit(MeasureEdit &edit, Desk &desk, const std::function<void()> &deed) {
    QString why;
    const auto listening =
        QObject::connect(&desk, &Desk::refused, &edit, [&why](const QString &words) { why = words; });
    deed();
    QObject::disconnect(listening);
    if (!why.isEmpty()) edit.refuse(why);
}

} // namespace roundlay::window
