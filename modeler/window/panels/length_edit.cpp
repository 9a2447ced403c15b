#include "modeler/window/panels/length_edit.h"

#include "kernel/measure/load.h"
#include "kernel/measure/spelling.h"
#include "modeler/window/desk/kernel_words.h"
#include "modeler/window/desk/words.h"
#include "modeler/window/views/tints.h"

#include <QKeyEvent>
#include <QMetaMethod>
#include <QRegularExpression>
#include <QToolTip>
#include <cmath>

namespace roundlay::window {

MeasureEdit::MeasureEdit(QWidget *parent) : QLineEdit(parent) {}

void MeasureEdit::show_value() {
    complain({});
    put(shown());
    setModified(false);
}

/// Whoever has the whole of it chosen, to type over it, still has so; where the same stands already, the
/// caret stays too. What is taken is the document's to undo, no longer the field's, which forgets it.
void MeasureEdit::put(const QString &value) {
    if (value == QLineEdit::text()) {
        if (!isUndoAvailable() && !isRedoAvailable()) return;
        const int caret = cursorPosition(), from = selectionStart(), chosen = selectionLength();
        setText(value);
        from >= 0 ? setSelection(from, chosen) : setCursorPosition(caret);
        return;
    }
    const bool to_be_replaced = hasFocus() && selectedText() == QLineEdit::text();
    setText(value);
    if (to_be_replaced) selectAll();
    if (!hasFocus()) setCursorPosition(0); // of what is longer than the field its beginning is seen
}

void MeasureEdit::let_go() {
    if (isModified()) show_other();
}

void MeasureEdit::show_other() {
    const QString typed = isModified() && !complaint_.isEmpty() ? QLineEdit::text() : QString();
    show_value();
    if (!typed.isEmpty()) emit dropped(typed);
}

void MeasureEdit::blank() {
    complain({});
    doubt({});
    clear();
    setModified(false);
}

/// A menu of the field's own takes the keyboard for a moment only.
void MeasureEdit::focusOutEvent(QFocusEvent *event) {
    QLineEdit::focusOutEvent(event);
    if (event->reason() != Qt::PopupFocusReason) finish();
}

void MeasureEdit::keyPressEvent(QKeyEvent *event) {
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
        event->setAccepted(isModified()); // with nothing to take it is the form's
        return finish();
    }
    if (event->key() == Qt::Key_Escape && isModified()) return show_value();
    QLineEdit::keyPressEvent(event);
}

void MeasureEdit::finish() {
    if (!isModified()) return;
    const QString typed = QLineEdit::text();
    if (typed == shown()) return show_value();
    if (const auto error = read(typed))
        return complain(
            tr("%1; expected %2").arg(kernel_words(error->message), kernel_words(error->expected)));
    if (!differs()) return show_value();
    take(typed);
}

void MeasureEdit::take_waiting() {
    if (differs()) take(shown());
}

void MeasureEdit::take(const QString &typed) {
    exchange();
    show_value();
    refused_.clear();
    emit committed();
    if (refused_.isEmpty()) return;
    exchange();
    setText(typed);
    setModified(true);
    complain(refused_);
}

void MeasureEdit::doubt(const QString &remark) {
    if (remark == remark_) return;
    remark_ = remark;
    if (complaint_.isEmpty()) setAccessibleDescription(remark);
    emit remarked();
}

/// Whoever shows the field may tell beside it why; else the field does so itself.
bool MeasureEdit::is_told_beside() const {
    static const QMetaMethod told = QMetaMethod::fromSignal(&MeasureEdit::complained);
    return isSignalConnected(told);
}

void MeasureEdit::complain(const QString &sentence) {
    if (!sentence.isEmpty() && !is_told_beside())
        QToolTip::showText(mapToGlobal(QPoint(0, height())), sentence, this);
    if (sentence == complaint_) return;
    complaint_ = sentence;
    setAccessibleDescription(sentence.isEmpty() ? remark_ : sentence);
    QPalette p; // as the window's: what is out of reach looks so
    for (const auto group : {QPalette::Active, QPalette::Inactive})
        if (!sentence.isEmpty()) p.setColor(group, QPalette::Text, tints().error);
    setPalette(p);
    emit complained(sentence);
    if (sentence.isEmpty()) emit mended();
}

void LengthEdit::set_length(std::optional<Length> length, UnitSystem units) {
    const bool same_looks = units == units_;
    units_ = units;
    setToolTip(bare_number_words(units));
    set_value(length, same_looks);
}

QString LengthEdit::shown() const {
    return value_ ? length_text(value_->mm(), units_) : QString();
}

std::optional<MeasureError> LengthEdit::read(const QString &typed) {
    static const QRegularExpression bare(QStringLiteral(R"(^-?[\d.,/ ]*\d$)"));
    QString words = typed.trimmed();
    waiting_.reset();
    if (words.isEmpty() && optional_) return {};
    if (bare.match(words).hasMatch())
        words += units_ == UnitSystem::metric ? QStringLiteral(" mm") : QStringLiteral(" in");
    const auto read = parse_length(words.toStdString());
    if (const auto *error = std::get_if<MeasureError>(&read)) return *error;
    waiting_ = std::get<Length>(read);
    return {};
}

QString SlopeEdit::shown() const {
    return window::text(print_slope(value_));
}

std::optional<MeasureError> SlopeEdit::read(const QString &typed) {
    const auto read = parse_slope(typed.toStdString());
    if (const auto *error = std::get_if<MeasureError>(&read)) return *error;
    waiting_ = std::get<Slope>(read);
    return {};
}

QString LoadEdit::shown() const {
    return value_ ? QString::fromStdString(print_load(*value_, units_)) : QString();
}

/// A comma is a decimal point too: the keyboards of half the world have no other.
std::optional<MeasureError> LoadEdit::read(const QString &typed) {
    const QString words = typed.trimmed().replace(u',', u'.');
    waiting_.reset();
    if (words.isEmpty()) return {};
    waiting_ = parse_load(words.toStdString());
    if (!waiting_)
        if (const auto number = parse_load(words.toStdString(), UnitSystem::metric)) return bare(*number);
    return taken();
}

/// Without a unit it is read as the document reads it, in kPa, and only in a shell that is shown in those.
std::optional<MeasureError> LoadEdit::bare(double number) {
    const std::string stated = with_unit_stated(number);
    if (stated.empty() || (units_ == UnitSystem::metric && number <= most_bare_load)) {
        waiting_ = number;
        return taken();
    }
    return MeasureError{0,
                        tr("this has no unit, and %1 is %2")
                            .arg(QString::fromStdString(spell_number(number) + " kPa"),
                                 QString::fromStdString(print_load(number, UnitSystem::imperial)))
                            .toStdString(),
                        "the unit stated: " + stated};
}

std::optional<MeasureError> LoadEdit::taken() {
    constexpr double part = 1e-4; // kPa: finer would fill the document with digits that say nothing
    if (waiting_) waiting_ = std::round(*waiting_ / part) * part;
    if (waiting_) return {};
    return MeasureError{0, tr("this is no load").toStdString(),
                        tr("a load such as 1.9 kPa or 40 psf").toStdString()};
}

std::optional<MeasureError> NameEdit::read(const QString &typed) {
    waiting_ = typed;
    return {};
}

} // namespace roundlay::window
