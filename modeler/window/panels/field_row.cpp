#include "modeler/window/panels/field_row.h"

#include "modeler/window/desk/desk.h"
#include "modeler/window/panels/length_edit.h"
#include "modeler/window/views/tints.h"

#include <QFormLayout>
#include <QLabel>

namespace roundlay::window {

namespace {

const QString why_name = QStringLiteral("why");

/// Its row comes and goes: a form keeps room for rows that are only hidden.
void tell_below(QFormLayout &form, MeasureEdit &edit, const QString &sentence) {
    int row = -1;
    QFormLayout::ItemRole role{};
    form.getWidgetPosition(&edit, &row, &role);
    const QLayoutItem *below =
        row + 1 < form.rowCount() ? form.itemAt(row + 1, QFormLayout::SpanningRole) : nullptr;
    auto *why = below != nullptr ? qobject_cast<QLabel *>(below->widget()) : nullptr;
    if (why != nullptr && why->objectName() != why_name) why = nullptr;
    if (sentence.isEmpty()) {
        if (why != nullptr) form.removeRow(why);
        return;
    }
    if (why == nullptr) {
        why = new QLabel;
        why->setObjectName(why_name);
        why->setWordWrap(true);
        QPalette red = why->palette();
        red.setColor(QPalette::WindowText, tints().error);
        why->setPalette(red);
        form.insertRow(row + 1, why);
        why->show(); // at once, not when the form looks again
    }
    why->setText(sentence);
}

} // namespace

void add_field(QFormLayout &form, const QString &label, MeasureEdit &edit) {
    if (edit.accessibleName().isEmpty()) edit.setAccessibleName(QString(label).remove(u'&'));
    add_field(form, new QLabel(label), edit);
}

void add_field(QFormLayout &form, QLabel *label, MeasureEdit &edit) {
    label->setBuddy(&edit);
    form.addRow(label, &edit);
    QObject::connect(&edit, &MeasureEdit::complained, &edit,
                     [&form, &edit](const QString &sentence) { tell_below(form, edit, sentence); });
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
