// Can this machine draw the model at all? Asked before any view is made: a view without OpenGL stays black.
#pragma once

#include <QString>
#include <optional>

namespace roundlay::window {

/// For main, before the QApplication is made.
void set_surface_format();

/// Nothing = it can; else one plain sentence.
std::optional<QString> why_no_model_view();

} // namespace roundlay::window
