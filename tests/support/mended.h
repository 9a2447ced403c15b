// A log with a new end.
#pragma once

#include "kernel/shell/shell.h"

namespace roundlay::test {

/// Of wall A in round 2: 1200 mm long with a lap of 300.
inline Mend spliced_end() {
    Mend mend;
    mend.wall = "A", mend.round = 2, mend.kind = MendKind::splice;
    mend.to = Length::mm(1200), mend.lap = Length::mm(300);
    return mend;
}

} // namespace roundlay::test
