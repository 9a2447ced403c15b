// The colours of the drawn views, in a light and a dark set.
#pragma once

#include <QColor>
#include <QPalette>

namespace roundlay::window {

struct Tints {
    QColor paper, ink, faint, grid;
    QColor wood, wood_edge, end_grain, island, hollow;
    QColor accent, accent_soft, warning, error, good;
    bool dark = false;
};

const Tints &tints(); ///< of the appearance that holds now

enum class Appearance { system, light, dark };

/// Gives the application its palette; views repaint themselves on the change of palette.
void wear(Appearance appearance);

} // namespace roundlay::window
