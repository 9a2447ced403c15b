// Keys that do the same in every view.
#pragma once

#include <functional>

class QKeyEvent;

namespace roundlay::window {

/// Plus and minus zoom about the middle, Home shows everything. False where the key is none of them.
bool zoom_by_key(const QKeyEvent &event, const std::function<void(double factor)> &zoom,
                 const std::function<void()> &show_everything);

} // namespace roundlay::window
