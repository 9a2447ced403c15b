// From box to box by the keyboard.
#include "modeler/window/panels/length_edit.h"
#include "modeler/window/record/choice_edit.h"
#include "modeler/window/record/into_box.h"
#include "modeler/window/record/record_form.h"

#include <QKeyEvent>
#include <QToolButton>
#include <algorithm>

namespace roundlay::window {

QString RecordForm::name_of(const QWidget &widget) const {
    return widget.objectName().section(u'_', 1);
}

/// All that can be typed into now, in order; what is folded away is passed by.
std::vector<QWidget *> RecordForm::chain() const {
    std::vector<QWidget *> all;
    const auto add = [&](const QString &name) {
        QWidget *widget = boxes_.value(name).widget;
        if (widget->isVisibleTo(this) && widget->isEnabled()) all.push_back(widget);
    };
    for (const QString &name : order_) {
        if (boxes_.contains(name)) add(name);
        for (const List &list : lists_)
            if (list.list.name == name)
                for (const Part &part : list.parts)
                    for (const QString &box : part.boxes)
                        add(box);
    }
    return all;
}

void RecordForm::go_to(const QString &name) {
    const auto all = chain();
    QWidget *named = name.isEmpty() ? nullptr : boxes_.value(name).widget;
    if (named != nullptr && std::ranges::find(all, named) != all.end()) return go_into(*named);
    if (!all.empty()) go_into(*all.front());
}

void RecordForm::go_to_last() {
    const auto all = chain();
    if (!all.empty()) go_into(*all.back());
}

bool RecordForm::go_on(QWidget &from, int step, bool same_box) {
    if (auto *edit = qobject_cast<MeasureEdit *>(&from)) {
        edit->finish();
        if (!edit->complaint().isEmpty()) return true; // to be put right first
    }
    if (auto *choice = qobject_cast<ChoiceEdit *>(&from)) choice->finish();
    if (same_box) {
        emit left(step, name_of(from));
        return true;
    }
    const auto all = chain();
    const auto at = std::ranges::find(all, &from);
    const auto next = at - all.begin() + step;
    if (at == all.end() || next < 0 || next >= static_cast<std::ptrdiff_t>(all.size()))
        emit left(step, {});
    else
        go_into(*all[static_cast<std::size_t>(next)]);
    return true;
}

void RecordForm::go_to_head(const QString &group, int step) {
    const auto at = std::ranges::find(head_order_, group) - head_order_.begin() + step;
    if (at >= 0 && at < std::ssize(head_order_))
        go_into(*heads_.value(head_order_[static_cast<std::size_t>(at)]));
}

/// Space folds, up and down go to the titles beside it, Enter into its boxes.
bool RecordForm::key_on_head(QToolButton &head, int key) {
    const QString group = heads_.key(&head);
    if (key == Qt::Key_Up || key == Qt::Key_Down) return go_to_head(group, key == Qt::Key_Up ? -1 : 1), true;
    if (key != Qt::Key_Return && key != Qt::Key_Enter) return false;
    for (QWidget *box : chain())
        if (boxes_.value(name_of(*box)).group == group) return go_into(*box), true;
    return true;
}

bool RecordForm::eventFilter(QObject *object, QEvent *event) {
    if (event->type() != QEvent::KeyPress) return false;
    const auto &key = *static_cast<QKeyEvent *>(event);
    if (auto *head = qobject_cast<QToolButton *>(object)) return key_on_head(*head, key.key());
    if (key.key() == Qt::Key_Up && key.modifiers() == Qt::ControlModifier)
        return go_to_head(boxes_.value(name_of(*qobject_cast<QWidget *>(object))).group, 0), true;
    if (key.key() != Qt::Key_Return && key.key() != Qt::Key_Enter) return false;
    auto *box = qobject_cast<QWidget *>(object);
    return go_on(*box, key.modifiers() & Qt::ShiftModifier ? -1 : 1, key.modifiers() & Qt::ControlModifier);
}

} // namespace roundlay::window
