#include "modeler/window/panels/length_edit.h"

#include "modeler/window/desk/kernel_words.h"
#include "modeler/window/desk/words.h"
#include "modeler/window/views/tints.h"

#include <QKeyEvent>
#include <QToolTip>

namespace roundlay::window {

MeasureEdit::MeasureEdit(QWidget *parent) : QLineEdit(parent) {}

void MeasureEdit::show_value() {
    complain({});
    setText(shown());
    setModified(false);
}

void MeasureEdit::focusOutEvent(QFocusEvent *event) {
    QLineEdit::focusOutEvent(event);
    finish();
    if (!complaint_.isEmpty()) show_value(); // whoever goes away finds the old value again
}

void MeasureEdit::keyPressEvent(QKeyEvent *event) {
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) return finish();
    if (event->key() == Qt::Key_Escape && isModified()) return show_value();
    QLineEdit::keyPressEvent(event);
}

void MeasureEdit::finish() {
    if (!isModified()) return;
    const auto error = take();
    if (!error) return;
    complain(tr("%1; expected %2").arg(kernel_words(error->message), kernel_words(error->expected)));
    QToolTip::showText(mapToGlobal(QPoint(0, height())), complaint_, this);
}

void MeasureEdit::complain(const QString &sentence) {
    if (sentence == complaint_) return;
    complaint_ = sentence;
    setAccessibleDescription(sentence);
    QPalette p = palette();
    p.setColor(QPalette::Text, sentence.isEmpty() ? tints().ink : tints().error);
    setPalette(p);
    emit complained(sentence);
}

void LengthEdit::set_length(std::optional<Length> length, UnitSystem units) {
    const bool same = length == length_ && units == units_;
    length_ = length;
    units_ = units;
    if (!same || !isModified()) show_value();
}

QString LengthEdit::shown() const {
    return length_ ? length_text(length_->mm(), units_) : QString();
}

std::optional<MeasureError> LengthEdit::take() {
    const QString typed = QLineEdit::text().trimmed();
    std::optional<Length> next;
    if (!typed.isEmpty() || !optional_) {
        const auto read = parse_length(typed.toStdString());
        if (const auto *error = std::get_if<MeasureError>(&read)) return *error;
        next = std::get<Length>(read);
    }
    const bool differs = next != length_;
    length_ = next;
    show_value();
    if (differs) emit committed();
    return {};
}

void SlopeEdit::set_slope(Slope slope) {
    const bool same = slope == slope_;
    slope_ = slope;
    if (!same || !isModified()) show_value();
}

QString SlopeEdit::shown() const {
    return window::text(print_slope(slope_));
}

std::optional<MeasureError> SlopeEdit::take() {
    const auto read = parse_slope(QLineEdit::text().toStdString());
    if (const auto *error = std::get_if<MeasureError>(&read)) return *error;
    const bool differs = std::get<Slope>(read) != slope_;
    slope_ = std::get<Slope>(read);
    show_value();
    if (differs) emit committed();
    return {};
}

void NumberEdit::set_number(std::optional<double> number) {
    const bool same = number == number_;
    number_ = number;
    if (!same || !isModified()) show_value();
}

QString NumberEdit::shown() const {
    return number_ ? QString::number(*number_) : QString();
}

/// A comma is a decimal point too: the keyboards of half the world have no other.
std::optional<MeasureError> NumberEdit::take() {
    const QString typed = QLineEdit::text().trimmed().replace(u',', u'.');
    std::optional<double> next;
    if (!typed.isEmpty()) {
        bool is_number = false;
        next = typed.toDouble(&is_number);
        if (!is_number)
            return MeasureError{0, tr("this is no number").toStdString(),
                                tr("a number such as 1.9").toStdString()};
    }
    const bool differs = next != number_;
    number_ = next;
    show_value();
    if (differs) emit committed();
    return {};
}

} // namespace roundlay::window
