#include "modeler/window/frame/application.h"

#include "exporters/registry/version.h"
#include "modeler/window/desk/words.h"
#include "modeler/window/frame/main_window.h"
#include "modeler/window/views/gl_probe.h"
#include "modeler/window/views/tints.h"

#include <QApplication>
#include <QCommandLineParser>
#include <QIcon>
#include <QLibraryInfo>
#include <QLocale>
#include <QSettings>
#include <QTimer>
#include <QTranslator>

// Resources of a static library are taken in only when they are asked for; outside any namespace.
static void take_resources() {
    Q_INIT_RESOURCE(window);
    Q_INIT_RESOURCE(translations);
}

namespace roundlay::window {

void prepare_application() {
    take_resources();
    set_surface_format();
    QCoreApplication::setOrganizationName(QStringLiteral("roundlay"));
    QCoreApplication::setApplicationName(QStringLiteral("roundlay"));
    QCoreApplication::setApplicationVersion(text(program_version));
    QGuiApplication::setDesktopFileName(QStringLiteral("org.roundlay.modeler"));
}

void dress(QApplication &application) {
    auto *own = new QTranslator(&application);
    if (own->load(QLocale(), QStringLiteral("roundlay"), QStringLiteral("_"),
                  QStringLiteral(":/translations")))
        QApplication::installTranslator(own);
    auto *library = new QTranslator(&application);
    if (library->load(QLocale(), QStringLiteral("qtbase"), QStringLiteral("_"),
                      QLibraryInfo::path(QLibraryInfo::TranslationsPath)))
        QApplication::installTranslator(library);
    QApplication::setWindowIcon(QIcon(QStringLiteral(":/roundlay.svg")));
    wear(static_cast<Appearance>(QSettings().value(QStringLiteral("appearance"), 0).toInt()));
}

int run(int argc, char **argv) {
    prepare_application();
    QApplication application(argc, argv);
    dress(application);
    QCommandLineParser parser;
    parser.setApplicationDescription(
        QCoreApplication::translate("Application", "Plans, shows and checks a shell of hewn logs."));
    parser.addHelpOption();
    parser.addVersionOption();
    parser.addPositionalArgument(QStringLiteral("FILE"),
                                 QCoreApplication::translate("Application", "A document to open"),
                                 QStringLiteral("[FILE]"));
    parser.process(application);
    MainWindow window;
    window.show();
    const QStringList files = parser.positionalArguments();
    QTimer::singleShot(0, &window, [&window, files] {
        if (files.isEmpty() || !window.open(files.front())) window.offer_recovery();
    });
    return QApplication::exec();
}

} // namespace roundlay::window
