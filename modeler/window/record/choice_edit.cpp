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
    if (!is_meant_for_others(*event)) QComboBox::keyPressEvent(event);
    by_keys_ = false;
}

/// Letters that come to none of the words were meant for another box: what their first ones came to is not
/// taken.
bool ChoiceEdit::is_meant_for_others(const QKeyEvent &event) {
    const QString letters = event.text();
    if (letters.isEmpty() || !letters.front().isPrint() || event.modifiers() & Qt::ControlModifier) {
        typed_.clear();
        return false;
    }
    if (!pause_.isActive()) typed_.clear();
    typed_ += letters;
    pause_.start();
    for (int at = 0; at < count(); ++at)
        if (itemText(at).startsWith(typed_, Qt::CaseInsensitive)) return false;
    if (typed_.count(typed_.front(), Qt::CaseInsensitive) == typed_.size()) return false; // goes through them
    setCurrentIndex(shown_);
    return true;
}

void ChoiceEdit::focusOutEvent(QFocusEvent *event) {
    QComboBox::focusOutEvent(event);
    if (event->reason() != Qt::PopupFocusReason) finish();
}

} // namespace roundlay::window
