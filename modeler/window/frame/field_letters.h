// Whose a letter with Alt is: the menu's before any field's.
#pragma once

class QMenuBar;
class QWidget;

namespace roundlay::window {

/// Labels and buttons below `inside` that are reached by a letter of a menu get another of their letters that
/// is free there; where none is, none. In every language: whose a letter is, is seen when all words are
/// there.
void leave_letters_to(const QMenuBar &menus, const QWidget &inside);

} // namespace roundlay::window
