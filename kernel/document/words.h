// The format's words for what is chosen among few, as they are written.
#pragma once

#include "kernel/shell/shell.h"

namespace roundlay {

const char *word(UnitSystem system);
const char *word(NotchKind kind);
const char *word(TopRule rule);
const char *word(OpeningKind kind);
const char *word(LogEnd end);
inline const char *word(Finish finish) { return name_of(finish); }
inline const char *word(Fabric fabric) { return name_of(fabric); }
inline const char *word(SettlingRuleName rule) { return name_of(rule); }
const char *word(PocketKind kind);
const char *word(BoreUse use);

} // namespace roundlay
