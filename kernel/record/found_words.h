// What the words of a record say of found wood, for people: the one place where they stand.
#pragma once

#include "kernel/measure/said.h"
#include "kernel/record/found_log.h"

namespace roundlay {

Said said_of(Soundness what);
Said said_of(FoundFace face);
Said said_of(Decision what);

} // namespace roundlay
