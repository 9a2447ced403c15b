// What is typed into a text, without what showing it changed.
#pragma once

#include <QString>
#include <string>

namespace roundlay::window {

/// The document `stood`, which was shown as `shown` and typed into until it read `typed`. Lines that were not
/// typed in stay byte by byte: ends of lines as another system writes them, and marks that are not shown.
std::string with_typed(const std::string &stood, const QString &shown, const QString &typed);

} // namespace roundlay::window
