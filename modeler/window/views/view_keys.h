// Keys that do the same in every view.
#pragma once

#include <QtCore/qnamespace.h>

#include <functional>

class QKeyEvent;

namespace roundlay::window {

/// Plus and minus zoom about the middle, Home shows everything. False where the key is none of them.
bool zoom_by_key(const QKeyEvent &event, const std::function<void(double factor)> &zoom,
                 const std::function<void()> &show_everything);

/// Shift, or Alt: a drag lets go of lines, grids and right angles. Many a desk takes what is pressed with Alt
/// for moving windows.
inline bool lets_go(Qt::KeyboardModifiers keys) {
    return keys & (Qt::ShiftModifier | Qt::AltModifier);
}

} // namespace roundlay::window
