#include "modeler/window/desk/recovery.h"

#include "exporters/files/safe_file.h"

#include <QDir>
#include <QJsonDocument>
#include <QJsonObject>
#include <QStandardPaths>
#include <QUuid>

namespace roundlay::window {

namespace {

constexpr std::size_t largest = std::size_t{32} << 20; // twice a document's limit, with its escapes in JSON

const QString suffix = QStringLiteral(".unsaved");

std::unique_ptr<QLockFile> lock_of(const QString &file) {
    auto lock = std::make_unique<QLockFile>(file + QStringLiteral(".lock"));
    lock->setStaleLockTime(0); // however long a session lives, only its end frees its work
    return lock;
}

std::optional<Rescued> read_rescued(const QString &file) {
    const auto bytes = read_file(file.toStdString(), largest);
    const auto *found = std::get_if<std::string>(&bytes);
    if (found == nullptr) return {};
    const QJsonObject o = QJsonDocument::fromJson(QByteArray::fromStdString(*found)).object();
    if (!o.contains(QStringLiteral("text"))) return {};
    Rescued work{file,
                 o[QStringLiteral("path")].toString(),
                 o[QStringLiteral("title")].toString(),
                 o[QStringLiteral("text")].toString().toStdString(),
                 {}};
    if (const QJsonValue held = o[QStringLiteral("on_disk")]; held.isString())
        work.on_disk = held.toString().toStdString();
    return work;
}

} // namespace

Recovery::Recovery(QString folder) : folder_(std::move(folder)) {
    QDir().mkpath(folder_);
}

QString Recovery::usual_folder() {
    return QStandardPaths::writableLocation(QStandardPaths::AppDataLocation) + QStringLiteral("/unsaved");
}

std::vector<Rescued> Recovery::left_behind() const {
    std::vector<Rescued> all;
    const QDir folder(folder_);
    for (const QString &name : folder.entryList({u'*' + suffix}, QDir::Files, QDir::Time)) {
        const QString file = folder.filePath(name);
        if (file == file_) continue;
        const auto lock = lock_of(file);
        if (!lock->tryLock()) continue; // its session lives
        if (auto work = read_rescued(file)) all.push_back(std::move(*work));
    }
    return all;
}

bool Recovery::own(const QString &file) {
    auto lock = lock_of(file);
    if (!lock->tryLock()) return false;
    lock_ = std::move(lock);
    file_ = file;
    return true;
}

bool Recovery::take_over(const Rescued &work) {
    clear();
    return own(work.file);
}

void Recovery::forget(const Rescued &work) {
    const auto lock = lock_of(work.file);
    if (lock->tryLock()) QFile::remove(work.file);
}

QString Recovery::new_file() const {
    return folder_ + u'/' + QUuid::createUuid().toString(QUuid::WithoutBraces) + suffix;
}

bool Recovery::keep(const Rescued &work) {
    if (file_.isEmpty() && !own(new_file())) return false;
    QJsonObject o;
    o[QStringLiteral("path")] = work.path;
    o[QStringLiteral("title")] = work.title;
    o[QStringLiteral("text")] = QString::fromStdString(work.text);
    if (work.on_disk) o[QStringLiteral("on_disk")] = QString::fromStdString(*work.on_disk);
    return !write_file(file_.toStdString(), QJsonDocument(o).toJson().toStdString());
}

void Recovery::clear() {
    if (!file_.isEmpty()) QFile::remove(file_);
    lock_.reset();
    file_.clear();
}

} // namespace roundlay::window
