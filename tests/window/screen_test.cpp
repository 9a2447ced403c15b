// The window and its dialogs on the screen there is, however small. Run on several.
#include "modeler/window/desk/desk.h"
#include "modeler/window/frame/export_dialog.h"
#include "modeler/window/frame/new_shell.h"
#include "tests/window/support/window.h"

#include <QGuiApplication>
#include <QScreen>
#include <QTemporaryDir>
#include <QTest>

using namespace roundlay;
using namespace roundlay::window;

class ScreenTest : public QObject {
    Q_OBJECT

  private slots:
    void the_window_with_a_document_fits_its_screen();

  private:
    QTemporaryDir folder_;
    QString kept() const { return folder_.filePath(QStringLiteral("unsaved")); }
};

/// Run on a screen of 1366 x 768 as well, and on the same at twice the size.
void ScreenTest::the_window_with_a_document_fits_its_screen() {
    MainWindow window(kept());
    const QSize room = QGuiApplication::primaryScreen()->availableGeometry().size();
    window.show();
    window.begin_demo(1);
    QVERIFY(settled(window));
    for (const char *dock : {"shell", "joint", "floors", "log", "plan"}) {
        raise(window, dock);
        const QString size =
            QStringLiteral("%1: %2 x %3").arg(QLatin1String(dock)).arg(window.width()).arg(window.height());
        QVERIFY2(window.width() <= room.width() && window.height() <= room.height(), qPrintable(size));
        QVERIFY2(window.minimumSizeHint().boundedTo(room) == window.minimumSizeHint(), qPrintable(size));
    }
    keep_picture(window, QStringLiteral("fits-%1-%2").arg(room.width()).arg(room.height()));
    NewShellDialog fresh(UnitSystem::imperial, &window);
    ExportDialog exporting(window.desk().state()->job, "export", &window);
    for (QDialog *dialog : std::initializer_list<QDialog *>{&fresh, &exporting}) {
        dialog->show();
        QTest::qWait(50);
        const QString size = QStringLiteral("%1 x %2").arg(dialog->width()).arg(dialog->height());
        QVERIFY2(dialog->width() <= room.width() && dialog->height() <= room.height(),
                 qPrintable(dialog->windowTitle() + size));
        keep_picture(*dialog,
                     QStringLiteral("fits-%1-%2").arg(room.width()).arg(dialog == &fresh ? "new" : "export"));
        dialog->hide();
    }
    window.close_document();
}

int main(int argc, char **argv) {
    const TestProgram program(argc, argv);
    ScreenTest test;
    return QTest::qExec(&test, argc, argv);
}

#include "screen_test.moc"
