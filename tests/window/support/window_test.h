// What every test of the window stands on: a folder of its own, and the program around it.
#pragma once

#include "tests/window/support/window.h"

#include <QFile>
#include <QObject>
#include <QTemporaryDir>
#include <QTest>

namespace roundlay::window {

class WindowTest : public QObject {
  protected:
    /// Where a window of this test keeps what is not saved.
    QString kept() const { return folder_.filePath(QStringLiteral("unsaved")); }
    /// A file of these bytes.
    QString written(const QString &name, const QByteArray &bytes) const {
        QFile file(folder_.filePath(name));
        if (file.open(QIODevice::WriteOnly)) file.write(bytes);
        return file.fileName();
    }
    /// Another one at each call, which may be written to.
    QString copy_of(const QString &demo) {
        const QString path = folder_.filePath(QStringLiteral("%1-%2.roundlay").arg(demo).arg(++copies_));
        QFile::copy(demo_file(demo), path);
        QFile(path).setPermissions(QFile::ReadOwner | QFile::WriteOwner);
        return path;
    }

    QTemporaryDir folder_;

  private:
    int copies_ = 0;
};

/// All of a test, as its program's main function.
template <typename Test> int run_test(int argc, char **argv) {
    const TestProgram program(argc, argv);
    Test test;
    return QTest::qExec(&test, argc, argv);
}

} // namespace roundlay::window
