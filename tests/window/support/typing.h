// A person at the keyboard, in a form of a panel or while drawing.
#pragma once

#include "tests/window/support/window.h"

namespace roundlay::window {

class DrawingView;
class MeasureEdit;

MeasureEdit &field_in(MainWindow &window, const char *dock, const char *name);
void type(MeasureEdit &edit, const QString &words);
void enter(MeasureEdit &edit, const QString &words);

/// A length while a hand draws: its first key, then the rest in the field that it opens.
void type_length(DrawingView &view, const char *first, const char *rest);

/// What the form tells below that field; empty where it tells nothing.
QString told_beside(const QWidget &field);

/// An imperial house with floors, openings and a log to state things of.
void put_up(MainWindow &window);

} // namespace roundlay::window
