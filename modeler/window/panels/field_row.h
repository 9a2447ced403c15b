// A field in a form, with the reason below it why what was typed is not taken.
#pragma once

#include <QString>
#include <functional>

class QFormLayout;
class QLabel;
class QScrollArea;
class QToolButton;
class QWidget;

namespace roundlay::window {

class Desk;
class CountBox;
class MeasureEdit;

/// Of the label with the reason, which takes a row of its own only while there is one.
inline const QString why_name = QStringLiteral("why");

void add_field(QFormLayout &form, QLabel *label, MeasureEdit &edit);
void add_field(QFormLayout &form, const QString &label, MeasureEdit &edit);
void add_field(QFormLayout &form, const QString &label, CountBox &box);

/// A sign for a button, such as +; what it does is told in words to whoever asks.
QToolButton *sign_button(const QString &sign, const QString &words);

/// What a panel complains of, in the colour of errors as it is now.
void write_in_red(QLabel &complaint);

/// What stands in the fields of a panel goes: it was of a document that is not here any more.
void blank_fields(QWidget &panel);

/// The fields of a panel. While they are out of reach whoever presses there takes the keyboard away from
/// where it was: nothing that is typed then goes elsewhere.
void put_in_reach(QScrollArea &panel, QWidget &fields, bool on);

/// Does what the field's commit asks for. Where the desk refuses, the field says why and keeps what was
/// typed; the document stays as it was.
void commit(MeasureEdit &edit, Desk &desk, const std::function<void()> &deed);

} // namespace roundlay::window
