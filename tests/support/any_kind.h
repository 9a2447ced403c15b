// A random shell of any kind of log. Inside a rapidcheck property.
#pragma once

#include "tests/support/shells.h"

#include <rapidcheck.h>

namespace roundlay::test {

inline Shell any_kind_of_shell() {
    switch (*rc::gen::inRange(0, 7)) {
    case 0:
        return any_saddle_shell();
    case 1:
        return any_stepped_shell();
    case 2:
        return any_waned_shell();
    case 3:
        return any_tapered_shell();
    case 4:
        return any_family_shell();
    case 5:
        return any_stepped_saddle_shell();
    default:
        return any_fitted_shell();
    }
}

} // namespace roundlay::test
