#include "modeler/window/record/choice_edit.h"

#include <QFocusEvent>
#include <QSignalBlocker>
#include <utility>

namespace roundlay::window {

ChoiceEdit::ChoiceEdit(QWidget *parent) : QComboBox(parent) {
    constexpr int rest_ms = 600;
    pause_.setSingleShot(true);
    pause_.setInterval(rest_ms);
    connect(&pause_, &QTimer::timeout, this, &ChoiceEdit::finish);
    connect(this, &QComboBox::currentIndexChanged, this, [this] {
        pause_.start();
        if (!by_keys_) finish();
    });
}

void ChoiceEdit::finish() {
    pause_.stop();
    if (currentIndex() == shown_) return;
    shown_ = currentIndex();
    emit chosen(shown_);
}

void ChoiceEdit::show_choice(int index) {
    if (pause_.isActive()) return;
    const QSignalBlocker by_the_program(this);
    setCurrentIndex(index);
    shown_ = index;
}

void ChoiceEdit::keyPressEvent(QKeyEvent *event) {
    by_keys_ = true;
    QComboBox::keyPressEvent(event);
    by_keys_ = false;
}

void ChoiceEdit::focusOutEvent(QFocusEvent *event) {
    QComboBox::focusOutEvent(event);
    if (event->reason() != Qt::PopupFocusReason) finish();
}

} // namespace roundlay::window
