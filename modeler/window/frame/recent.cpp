#include "modeler/window/frame/recent.h"

#include <QFileInfo>
#include <QSettings>

namespace roundlay::window {

namespace {

constexpr qsizetype most = 10;
const QString key = QStringLiteral("recent");

} // namespace

QStringList recent_files() {
    QStringList there;
    for (const QString &path : QSettings().value(key).toStringList())
        if (QFileInfo::exists(path)) there << path;
    return there;
}

void remember_file(const QString &path) {
    QStringList all = QSettings().value(key).toStringList();
    const QString whole = QFileInfo(path).absoluteFilePath();
    all.removeAll(whole);
    all.prepend(whole);
    QSettings().setValue(key, all.mid(0, most));
}

} // namespace roundlay::window
