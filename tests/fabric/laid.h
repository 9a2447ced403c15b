// A shell with its layout and bodies, and found logs of its wall A that somebody decided about.
#pragma once

#include "kernel/layout/lay_out.h"
#include "kernel/layout/wood/interference.h"
#include "kernel/record/record.h"

#include <optional>
#include <string>
#include <vector>

namespace roundlay::test {

struct Laid {
    Shell shell;
    Layout layout = lay_out(shell);
    Bodies bodies = bodies_of(layout);
};

inline FoundLog found_log(const std::string &tag, const FoundPlace &place,
                          const std::vector<Decision> &decided) {
    FoundLog log;
    log.tag = tag;
    log.place = place;
    for (const Decision what : decided)
        log.decisions.push_back({what, "R. Hale", "3 May", "", {}});
    return log;
}

} // namespace roundlay::test
