// What a person should know about a shell that can be built: findings from the finished layout.
#pragma once

#include "kernel/layout/wood/interference.h"

namespace roundlay {

/// Checks that hold the layout against itself and against practice: pieces that share wood or cannot come
/// down, corners that do not lock, seams that lead water in, bores that run into something.
/// bodies: one for each of layout.models. Heaviest first, then in wall order. known: of earlier reviews,
/// where there is any.
Findings review(const Shell &shell, const Layout &layout, const Bodies &bodies,
                KnownMeetings *known = nullptr);

} // namespace roundlay
