// Whether all of a form can be seen.
#pragma once

#include <QList>
#include <QString>

class QWidget;

namespace roundlay::window {

class LengthEdit;

/// The fields for lengths that are shown, from top to bottom, whatever the language.
QList<LengthEdit *> seen_lengths(const QWidget &dialog);

/// What has less height than it asks for, or lies over something else of the form. Empty where all is well.
QString covered(const QWidget &form);

/// Of what a scrolled form holds; what stands beside it is always.
bool in_sight(const QWidget &widget);

} // namespace roundlay::window
