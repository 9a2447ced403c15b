// What goes wrong inside the program: in whatever thread, it ends nowhere, and is kept in a log.
#pragma once

#include <QString>
#include <functional>
#include <optional>

namespace roundlay::window {

/// The file they are noted in, of the person's own; the newest at the end.
QString mishap_log();

/// Notes what went wrong while something was done. Any thread; never throws.
void note_mishap(const QString &doing, const QString &what) noexcept;

/// What is being thrown, in words. Only while it is being caught.
QString words_of_what_is_thrown();

/// Does it; what it throws is noted, and told to whoever called. Any thread.
std::optional<QString> what_it_throws(const QString &doing, const std::function<void()> &deed);

/// What nobody catches ends the program: from now on it is noted first.
void note_what_nobody_catches();

} // namespace roundlay::window
