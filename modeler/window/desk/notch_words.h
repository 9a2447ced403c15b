// What kinds of notches are called, in the language of the window.
#pragma once

#include "kernel/shell/notch_kinds.h"

#include <QStringList>

namespace roundlay::window {

QString notch_word(NotchKind kind);
/// Of all kinds, in the order of NotchKind.
QStringList notch_words();

} // namespace roundlay::window
