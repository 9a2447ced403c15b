#include "modeler/window/frame/demo_files.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QTemporaryDir>

namespace roundlay::window {

namespace {

bool copied(const QString &inside, const QString &to) {
    const QDir from(inside);
    const QString folder = QDir(to).filePath(from.dirName());
    bool all = QDir().mkpath(folder);
    for (const QString &name : from.entryList(QDir::Files)) {
        const QString made = QDir(folder).filePath(name);
        if (QFile::exists(made)) continue;
        all = QFile::copy(from.filePath(name), made) && all;
        QFile(made).setPermissions(QFile::ReadOwner | QFile::WriteOwner | QFile::ReadGroup |
                                   QFile::ReadOther);
    }
    return all;
}

} // namespace

DemoFiles::DemoFiles() = default;
DemoFiles::~DemoFiles() = default;

QString DemoFiles::put_out(const QString &demo_file) {
    let_go();
    const QFileInfo demo(demo_file);
    inside_ = demo.path() + u'/' + demo.completeBaseName();
    if (QDir(inside_).entryList(QDir::Files).isEmpty()) return {};
    auto folder = std::make_unique<QTemporaryDir>();
    if (!folder->isValid() || !copied(inside_, folder->path())) return {};
    folder_ = std::move(folder);
    return folder_->path();
}

bool DemoFiles::put_beside(const QString &folder) const {
    return copied(inside_, folder);
}

void DemoFiles::let_go() {
    folder_.reset();
}

} // namespace roundlay::window
