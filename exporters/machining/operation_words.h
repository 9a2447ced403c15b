// Operations said in words, and the caution that goes with them.
#pragma once

#include "exporters/machining/operation.h"
#include "exporters/words/voice.h"

namespace roundlay::machining {

/// For machines: "plane", "far_end".
const char *key_of(OperationKind kind);
const char *key_of(LogFace side);
const char *key_of(Hold hold);

/// For people: "plane cut", "far end".
std::string words_of(OperationKind kind, const Voice &voice);
std::string words_of(LogFace side, const Voice &voice);

/// That none of it is proved, and who decides.
std::string caution(const Voice &voice);

} // namespace roundlay::machining
