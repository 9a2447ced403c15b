#include "modeler/window/desk/mishaps.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QStandardPaths>
#include <cstdio>
#include <cstdlib>
#include <exception>
#include <mutex>

namespace roundlay::window {

namespace {

constexpr qint64 longest = qint64{256} << 10; // bytes: what is older goes into a second file, and then away

class Words {
    Q_DECLARE_TR_FUNCTIONS(Mishap)
};

void append(const QString &line) {
    static std::mutex one_at_a_time;
    const std::lock_guard lock(one_at_a_time);
    const QString path = mishap_log(), older = path + QStringLiteral(".old");
    QDir().mkpath(QFileInfo(path).path());
    if (QFileInfo(path).size() > longest) {
        QFile::remove(older);
        QFile::rename(path, older);
    }
    QFile file(path);
    if (file.open(QIODevice::Append | QIODevice::Text)) file.write(line.toUtf8());
}

[[noreturn]] void note_and_end() {
    if (std::current_exception()) try {
            throw;
        } catch (...) {
            note_mishap(QStringLiteral("nobody caught it"), words_of_what_is_thrown());
        }
    std::abort();
}

} // namespace

QString mishap_log() {
    return QStandardPaths::writableLocation(QStandardPaths::AppDataLocation) + QStringLiteral("/mishaps.log");
}

void note_mishap(const QString &doing, const QString &what) noexcept {
    try {
        std::fprintf(stderr, "roundlay-modeler: %s: %s\n", qPrintable(doing), qPrintable(what));
        append(QStringLiteral("%1  %2  %3: %4\n")
                   .arg(QDateTime::currentDateTime().toString(Qt::ISODate),
                        QCoreApplication::applicationVersion(), doing, what));
    } catch (...) { // nothing is left to note it with
    }
}

QString words_of_what_is_thrown() {
    try {
        throw;
    } catch (const std::exception &wrong) {
        return QString::fromLocal8Bit(wrong.what());
    } catch (...) {
        return Words::tr("it is not known what");
    }
}

std::optional<QString> what_it_throws(const QString &doing, const std::function<void()> &deed) {
    try {
        deed();
        return {};
    } catch (...) {
        const QString what = words_of_what_is_thrown();
        note_mishap(doing, what);
        return what;
    }
}

void note_what_nobody_catches() {
    std::set_terminate(note_and_end);
}

} // namespace roundlay::window
