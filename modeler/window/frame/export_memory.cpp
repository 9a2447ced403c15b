#include "modeler/window/frame/export_memory.h"

#include <QCryptographicHash>
#include <QDir>
#include <QSettings>
#include <QStringList>

namespace roundlay::window {

namespace {

const QString documents_key = QStringLiteral("export/documents");
constexpr qsizetype most = 50; // documents

QString group_of(const QString &document) {
    const QByteArray path = QDir::cleanPath(document).toUtf8();
    return QStringLiteral("export/") +
           QString::fromLatin1(QCryptographicHash::hash(path, QCryptographicHash::Sha1).toHex());
}

/// The last ones stay.
void remember(const QString &group) {
    QSettings settings;
    QStringList groups = settings.value(documents_key).toStringList();
    groups.removeAll(group);
    groups.prepend(group);
    for (; groups.size() > most; groups.removeLast())
        settings.remove(groups.last());
    settings.setValue(documents_key, groups);
}

} // namespace

ExportMemory::ExportMemory(const QString &document)
    : key_(document.isEmpty() ? QString() : group_of(document)) {}

QString ExportMemory::stated(const QString &option) const {
    return key_.isEmpty() ? QString() : QSettings().value(key_ + u'/' + option).toString();
}

void ExportMemory::keep(const QString &option, const QString &stated) {
    if (key_.isEmpty()) return;
    if (stated.isEmpty()) return QSettings().remove(key_ + u'/' + option);
    remember(key_);
    QSettings().setValue(key_ + u'/' + option, stated);
}

} // namespace roundlay::window
