#include "modeler/window/panels/field_row.h"

#include "modeler/window/desk/desk.h"
#include "modeler/window/panels/count_box.h"
#include "modeler/window/panels/length_edit.h"
#include "modeler/window/panels/wrapped_label.h"
#include "modeler/window/views/tints.h"

#include <QApplication>
#include <QComboBox>
#include <QFormLayout>
#include <QPointer>
#include <QScrollArea>
#include <QTimer>
#include <QToolButton>
#include <algorithm>

namespace roundlay::window {

namespace {

WrappedLabel *told_below(const QFormLayout &form, int row) {
    const QLayoutItem *below =
        row + 1 < form.rowCount() ? form.itemAt(row + 1, QFormLayout::SpanningRole) : nullptr;
    auto *why = below != nullptr ? qobject_cast<WrappedLabel *>(below->widget()) : nullptr;
    return why != nullptr && why->objectName() == why_name ? why : nullptr;
}

WrappedLabel *new_row(QFormLayout &form, int row) {
    auto *why = new WrappedLabel;
    why->setObjectName(why_name);
    why->resize(form.contentsRect().width(), why->height()); // as wide as it will be, so as high
    form.insertRow(row + 1, why);
    why->show(); // at once, not when the form looks again
    return why;
}

QScrollArea *scrolls(const QWidget *inside) {
    for (QWidget *at = inside->parentWidget(); at != nullptr; at = at->parentWidget())
        if (auto *area = qobject_cast<QScrollArea *>(at)) return area;
    return nullptr;
}

/// What the library does alike is content with the place where letters come.
void show_whole(QScrollArea &area, const QWidget &part) {
    constexpr int beside = 4; // pixels
    const QPoint middle = part.mapTo(area.widget(), part.rect().center());
    area.ensureVisible(middle.x(), middle.y(), std::min(part.width(), area.viewport()->width()) / 2,
                       part.height() / 2 + beside);
}

/// A row that comes moves those below it: whoever types there must still see it, and the reason of what they
/// typed.
void keep_in_sight(QWidget &field, const QPointer<WrappedLabel> &why) {
    QTimer::singleShot(0, &field, [&field, why] {
        QScrollArea *area = scrolls(&field);
        QWidget *now = QApplication::focusWidget();
        if (area == nullptr || now == nullptr || !area->widget()->isAncestorOf(now)) return;
        constexpr int passes = 2; // as high as the sentence once that has its width
        for (int pass = 0; pass < passes; ++pass)
            QCoreApplication::sendPostedEvents(area->widget(), QEvent::LayoutRequest);
        if (now == &field && why) show_whole(*area, *why);
        show_whole(*area, *now);
    });
}

/// Its row comes and goes: a form keeps room for rows that are only hidden.
void tell_below(QFormLayout &form, QWidget &field, const QString &sentence,
                const QColor &colour = tints().error) {
    int row = -1;
    QFormLayout::ItemRole role{};
    form.getWidgetPosition(&field, &row, &role);
    if (row < 0) return; // taken out of the form
    WrappedLabel *why = told_below(form, row);
    if (sentence.isEmpty()) {
        if (why != nullptr) form.removeRow(why);
        return;
    }
    if (why == nullptr) why = new_row(form, row);
    QPalette ink = why->palette();
    ink.setColor(QPalette::WindowText, colour);
    why->setPalette(ink);
    why->setText(sentence);
    keep_in_sight(field, why);
}

} // namespace

void add_field(QFormLayout &form, const QString &label, MeasureEdit &edit) {
    if (edit.accessibleName().isEmpty()) edit.setAccessibleName(QString(label).remove(u'&'));
    add_field(form, new QLabel(label), edit);
}

void add_field(QFormLayout &form, QLabel *label, MeasureEdit &edit) {
    label->setBuddy(&edit);
    form.addRow(label, &edit);
    const auto tell = [&form, &edit] {
        if (edit.complaint().isEmpty())
            tell_below(form, edit, edit.remark(), tints().ink);
        else
            tell_below(form, edit, edit.complaint());
    };
    QObject::connect(&edit, &MeasureEdit::complained, &edit, tell);
    QObject::connect(&edit, &MeasureEdit::remarked, &edit, tell);
}

void add_field(QFormLayout &form, const QString &label, CountBox &box) {
    if (box.accessibleName().isEmpty()) box.setAccessibleName(QString(label).remove(u'&'));
    form.addRow(label, &box);
    QObject::connect(&box, &CountBox::complained, &box,
                     [&form, &box](const QString &sentence) { tell_below(form, box, sentence); });
}

void write_in_red(QLabel &complaint) {
    QPalette red = complaint.parentWidget()->palette();
    red.setColor(QPalette::WindowText, tints().error);
    complaint.setPalette(red);
}

QToolButton *sign_button(const QString &sign, const QString &words) {
    auto *made = new QToolButton;
    made->setText(sign);
    made->setToolTip(words);
    made->setAccessibleName(words);
    return made;
}

void blank_fields(QWidget &panel) {
    for (MeasureEdit *edit : panel.findChildren<MeasureEdit *>())
        edit->blank();
    for (CountBox *box : panel.findChildren<CountBox *>()) {
        const QSignalBlocker by_the_program(box);
        box->let_go();
        box->clear();
    }
    for (QComboBox *box : panel.findChildren<QComboBox *>())
        box->setCurrentIndex(-1);
}

void put_in_reach(QScrollArea &panel, QWidget &fields, bool on) {
    fields.setEnabled(on);
    panel.setFocusPolicy(on ? Qt::NoFocus : Qt::ClickFocus);
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
