// From box to box of the record: the next one comes into sight, and what stands there is chosen, to be typed
// over.
#pragma once

class QWidget;

namespace roundlay::window {

void go_into(QWidget &box);

} // namespace roundlay::window
