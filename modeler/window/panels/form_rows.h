// Rows of a form that come and go.
//
// The library's form can hide rows, but then gives too little height to others as soon as one of them wraps.
// A row that goes is taken out here, and put back where it was.
#pragma once

class QFormLayout;
class QWidget;

namespace roundlay::window {

/// `field` is the row's widget beside its label.
void show_row(QFormLayout &form, QWidget &field, bool on);

} // namespace roundlay::window
