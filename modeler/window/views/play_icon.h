// The sign on a button that lets something run, or stops it.
#pragma once

#include <QIcon>

namespace roundlay::window {

/// In the ink of whatever palette is worn when it is drawn: the library's own is dark on any ground.
QIcon play_icon(bool running);

} // namespace roundlay::window
