#include "modeler/window/panels/form_rows.h"

#include "modeler/window/panels/field_row.h"
#include "modeler/window/panels/length_edit.h"

#include <QFormLayout>
#include <QHash>
#include <QLabel>
#include <QList>
#include <algorithm>
#include <memory>

namespace roundlay::window {

namespace {

/// What the form once held, from top to bottom, and the labels of what is taken out.
class Rows : public QObject {
  public:
    explicit Rows(QFormLayout &form) : QObject(&form), form_(form) {}

    void take_out(QWidget &field) {
        remember();
        if (auto *edit = qobject_cast<MeasureEdit *>(&field)) edit->let_go(); // with the reason below it
        const QFormLayout::TakeRowResult row = form_.takeRow(&field);
        const std::unique_ptr<QLayoutItem> label(row.labelItem), beside(row.fieldItem);
        QWidget *words = label ? label->widget() : nullptr;
        out_.insert(&field, words);
        for (QWidget *part : {words, &field})
            if (part != nullptr) part->hide();
    }

    void put_back(QWidget &field) {
        QWidget *words = out_.take(&field);
        form_.insertRow(row_of(field), words, &field);
        for (QWidget *part : {words, &field})
            if (part != nullptr) part->show();
    }

    bool is_out(QWidget &field) const { return out_.contains(&field); }

  private:
    /// Rows that are in the form now come where they are, after what stood before them already.
    void remember() {
        qsizetype at = 0;
        for (int row = 0; row < form_.rowCount(); ++row) {
            const QLayoutItem *item = form_.itemAt(row, QFormLayout::FieldRole);
            QWidget *field = item != nullptr ? item->widget() : nullptr;
            if (field == nullptr || field->objectName() == why_name) continue; // comes and goes by itself
            if (!order_.contains(field)) order_.insert(at, field);
            at = order_.indexOf(field) + 1;
        }
    }

    /// Before the first of those that stood below it.
    int row_of(QWidget &field) const {
        for (qsizetype i = order_.indexOf(&field) + 1; i < order_.size(); ++i) {
            int row = -1;
            QFormLayout::ItemRole role{};
            form_.getWidgetPosition(order_[i], &row, &role);
            if (row >= 0) return row;
        }
        return form_.rowCount();
    }

    QFormLayout &form_;
    QList<QWidget *> order_;
    QHash<QWidget *, QWidget *> out_;
};

Rows &rows_of(QFormLayout &form) {
    for (QObject *child : form.children())
        if (auto *rows = dynamic_cast<Rows *>(child)) return *rows;
    return *new Rows(form);
}

} // namespace

void show_row(QFormLayout &form, QWidget &field, bool on) {
    Rows &rows = rows_of(form);
    if (rows.is_out(field) != on) return;
    if (on)
        rows.put_back(field);
    else
        rows.take_out(field);
}

} // namespace roundlay::window
