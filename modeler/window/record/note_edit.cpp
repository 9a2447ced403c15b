#include "modeler/window/record/note_edit.h"

#include "modeler/window/record/found_words.h"
#include "modeler/window/views/tints.h"

#include <QContextMenuEvent>
#include <QMenu>
#include <QPainter>
#include <algorithm>
#include <memory>

namespace roundlay::window {

namespace {

constexpr int mark_room = 16; // pixels

} // namespace

QString sign_of(const NotedLength &number) {
    if (!number.is_taken()) return {};
    if (number.certainty == Certainty::proposed) return QStringLiteral("\u2248");
    if (number.certainty == Certainty::contradicted) return QStringLiteral("\u2260");
    return number.value ? QString() : QStringLiteral("?");
}

QString words_of(const NotedLength &number) {
    if (!number.is_taken()) return {};
    QString words = certainty_word(number.certainty);
    if (!number.value) words += NoteEdit::tr(", not read yet: its sheet does not say how");
    if (!number.by.empty()) words += NoteEdit::tr(", by %1").arg(QString::fromStdString(number.by));
    if (!number.on.empty()) words += NoteEdit::tr(", on %1").arg(QString::fromStdString(number.on));
    return words;
}

NoteEdit::NoteEdit(QWidget *parent) : ValueEdit(parent) {}

void NoteEdit::set_number(const NotedLength &number) {
    set_value(number);
    const QString words = words_of(number);
    if (words != toolTip()) setToolTip(words);
    if (complaint().isEmpty()) setAccessibleDescription(words);
    setTextMargins(0, 0, sign_of(number).isEmpty() ? 0 : mark_room, 0);
    update();
}

void NoteEdit::propose(const QString &length) {
    setPlaceholderText(length.isEmpty() ? QString() : QStringLiteral("\u2248 ") + length);
}

void NoteEdit::call(Certainty certainty) {
    if (!value_.is_taken()) return;
    waiting_ = value_;
    waiting_.certainty = certainty;
    take_waiting();
}

/// What is typed anew somebody else may say, and it is measured until it is called otherwise.
std::optional<MeasureError> NoteEdit::read(const QString &typed) {
    waiting_ = NotedLength();
    waiting_.written = typed.trimmed().toStdString();
    return {};
}

void NoteEdit::contextMenuEvent(QContextMenuEvent *event) {
    const std::unique_ptr<QMenu> menu(createStandardContextMenu());
    menu->setObjectName(QStringLiteral("note_menu"));
    menu->addSeparator();
    for (const Certainty certainty : {Certainty::measured, Certainty::proposed, Certainty::contradicted}) {
        QAction *choice = menu->addAction(certainty_word(certainty));
        choice->setObjectName(QStringLiteral("certainty_%1").arg(static_cast<int>(certainty)));
        choice->setCheckable(true);
        choice->setChecked(value_.is_taken() && value_.certainty == certainty);
        choice->setEnabled(value_.is_taken() && !isModified());
        connect(choice, &QAction::triggered, this, [this, certainty] { call(certainty); });
    }
    menu->exec(event->globalPos());
}

void NoteEdit::paintEvent(QPaintEvent *event) {
    QLineEdit::paintEvent(event);
    const QString sign = isModified() ? QString() : sign_of(value_);
    if (sign.isEmpty()) return;
    QPainter painter(this);
    QFont bold = font();
    bold.setBold(true);
    painter.setFont(bold);
    painter.setPen(value_.certainty == Certainty::contradicted ? tints().error : tints().warning);
    painter.drawText(rect().adjusted(0, 0, -4, 0), Qt::AlignRight | Qt::AlignVCenter, sign);
}

std::optional<MeasureError> FacesEdit::read(const QString &typed) {
    waiting_.clear();
    const QStringList words =
        QString(typed).replace(u';', u' ').replace(u',', u' ').split(u' ', Qt::SkipEmptyParts);
    for (const QString &word : words) {
        std::vector<FoundFace> meant;
        for (const FoundFace face : all_faces)
            if (face_word(face).startsWith(word, Qt::CaseInsensitive)) meant.push_back(face);
        if (meant.size() != 1)
            return MeasureError{
                0, tr("“%1” is no face").arg(word).toStdString(),
                tr("outside, inside, top or under, or as many letters as tell them apart").toStdString()};
        if (std::ranges::find(waiting_, meant.front()) == waiting_.end()) waiting_.push_back(meant.front());
    }
    std::ranges::sort(waiting_);
    return {};
}

QString FacesEdit::shown() const {
    return faces_words(value_);
}

} // namespace roundlay::window
