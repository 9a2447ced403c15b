// The words of problems and file errors in the person's language. Those of findings are values:
// finding_words.h.
#pragma once

#include <QString>
#include <string>

namespace roundlay::window {

/// A word or sentence of the document's reader, the lists or the exporters. What is unknown stays as it is.
QString kernel_words(const QString &english);
QString kernel_words(const std::string &english);

} // namespace roundlay::window
