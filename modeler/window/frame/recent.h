// Documents of before, newest first.
#pragma once

#include <QStringList>

namespace roundlay::window {

QStringList recent_files(); ///< that are still there
void remember_file(const QString &path);

} // namespace roundlay::window
