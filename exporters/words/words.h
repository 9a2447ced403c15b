// What the kernel has to say, in words: the only place where sentences are made.
#pragma once

#include "exporters/words/speech.h"
#include "kernel/shell/finding.h"

#include <string>

namespace roundlay {

/// The text in that language, its holes filled. What has no translation stays English.
std::string words_of(const Said &said, const Speech &speech);
/// The same, lengths printed in that style.
std::string words_of(const Said &said, Language language, const LengthStyle &style);

/// "wall C, round 7": the things with commas between.
std::string words_of(const About &about, const Speech &speech);

/// What is wrong and, behind a semicolon, what would fit. Without the place.
std::string message_of(const Finding &finding, const Speech &speech);

/// All of it: "wall C, round 7: the message"; the message alone where it is about nothing in particular.
std::string sentence_of(const Finding &finding, const Speech &speech);

/// The same without what would fit, for where there is little room.
std::string short_sentence_of(const Finding &finding, const Speech &speech);

} // namespace roundlay
