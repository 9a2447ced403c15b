// What is said as a value, findings above all, in the language of the window.
#pragma once

#include "exporters/words/speech.h"
#include "kernel/shell/finding.h"

#include <QString>

namespace roundlay::window {

/// The language that the window speaks, as its translation says of itself.
Language language();

QString in_words(const Said &said, UnitSystem units = UnitSystem::metric);

/// "wall C, round 7".
QString place_text(const Finding &finding, UnitSystem units);
/// What is wrong and what would fit, without the place.
QString message_text(const Finding &finding, UnitSystem units);
/// Both.
QString sentence_text(const Finding &finding, UnitSystem units);

} // namespace roundlay::window
