// The kernel's words in the person's language, without the kernel knowing of languages.
#pragma once

#include <QString>
#include <string>

namespace roundlay::window {

/// A word, place or sentence of the kernel or the exporters; in English as it is. What is unknown stays as it is.
QString kernel_words(const QString &english);
QString kernel_words(const std::string &english);

/// Several of them with commas between: "wall C, round 7".
QString kernel_place(const std::string &english);

/// True where it is one of the kernel's phrases.
bool is_kernel_phrase(const QString &english);

} // namespace roundlay::window
