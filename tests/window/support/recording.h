// A person who types a record: keys alone, wherever the keyboard is.
#pragma once

#include "kernel/record/record.h"
#include "tests/window/support/window.h"

#include <optional>
#include <string>

namespace roundlay::window {

QString at_hand(); ///< the object name of what has the keyboard
void press_enter(Qt::KeyboardModifiers keys = Qt::NoModifier);
void type_here(const QString &words);

/// Of the text as it is now.
Record record(MainWindow &window);
std::optional<FoundLog> found(MainWindow &window, const std::string &tag);

/// The window with that shell, its record in front.
void open_record(MainWindow &window, const Shell &shell);

} // namespace roundlay::window
