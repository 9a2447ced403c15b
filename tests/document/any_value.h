// Random values of every kind that a key of the format takes, each within its bounds.
#pragma once

#include "kernel/document/key.h"
#include "kernel/shell/shell.h"

#include <string>

namespace roundlay::test {

// Inside a rapidcheck property.

bool once_in(int times);

/// Over 0, up to `most` mm: whole millimetres, 64ths and 12ths of an inch, and doubles as they come.
Length any_size(double most);

/// The name of one of its walls.
std::string any_wall(const Shell &shell);

/// Gives the key of that owner a value, over all that its kind takes.
void draw_key(const format::Key &key, void *owner, const Shell &shell);

} // namespace roundlay::test
