#include "modeler/window/frame/application.h"

#include "exporters/registry/version.h"
#include "modeler/window/desk/mishaps.h"
#include "modeler/window/desk/words.h"
#include "modeler/window/frame/focus_ring.h"
#include "modeler/window/frame/main_window.h"
#include "modeler/window/frame/wheel_guard.h"
#include "modeler/window/views/gl_probe.h"
#include "modeler/window/views/tints.h"

#include <QApplication>
#include <QCommandLineParser>
#include <QIcon>
#include <QLibraryInfo>
#include <QLocale>
#include <QRegularExpression>
#include <QSessionManager>
#include <QSettings>
#include <QTimer>
#include <QTranslator>
#include <cstdio>

// Resources of a static library are taken in only when they are asked for; outside any namespace.
static void take_resources() {
    Q_INIT_RESOURCE(window);
    Q_INIT_RESOURCE(translations);
}

namespace roundlay::window {

bool Application::notify(QObject *receiver, QEvent *event) {
    try {
        return QApplication::notify(receiver, event);
    } catch (...) {
        return tell_of(words_of_what_is_thrown());
    }
}

/// Not at once: whoever threw may be in the middle of things.
bool Application::tell_of(const QString &what) {
    note_mishap(QStringLiteral("answering the person or the system"), what);
    QMetaObject::invokeMethod(
        this, [this, what] { emit failed(what); }, Qt::QueuedConnection);
    return false;
}

namespace {

/// The tool that collects strings names a class without its namespace, the running program with it.
class Translator : public QTranslator {
  public:
    using QTranslator::QTranslator;
    QString translate(const char *context, const char *source, const char *remark, int n) const override {
        const QByteArrayView whole(context);
        const qsizetype colons = whole.lastIndexOf("::");
        return QTranslator::translate(colons < 0 ? context : context + colons + 2, source, remark, n);
    }
};

} // namespace

void prepare_application() {
    take_resources();
    set_surface_format();
    QCoreApplication::setOrganizationName(QStringLiteral("roundlay"));
    QCoreApplication::setApplicationName(QStringLiteral("roundlay"));
    QCoreApplication::setApplicationVersion(text(program_version));
    QGuiApplication::setDesktopFileName(QStringLiteral("org.roundlay.modeler"));
}

namespace {

const QString language_key = QStringLiteral("language");

} // namespace

QString language_choice() {
    const QString code = QSettings().value(language_key).toString();
    return code == QStringLiteral("en") || code == QStringLiteral("fr") ? code : QString();
}

void choose_language(const QString &code) {
    QSettings().setValue(language_key, code);
}

/// Numbers and dates are the system's as long as it speaks that language anyway.
QLocale chosen_locale() {
    const QString code = language_choice();
    const QLocale system = QLocale::system(), chosen = code.isEmpty() ? system : QLocale(code);
    return chosen.language() == system.language() ? system : chosen;
}

std::unique_ptr<QTranslator> own_translator(const QLocale &locale) {
    auto own = std::make_unique<Translator>();
    if (!own->load(locale, QStringLiteral("roundlay"), QStringLiteral("_"), QStringLiteral(":/translations")))
        return nullptr;
    return own;
}

std::unique_ptr<QTranslator> library_translator(const QLocale &locale) {
    auto library = std::make_unique<QTranslator>();
    if (!library->load(locale, QStringLiteral("qtbase"), QStringLiteral("_"),
                       QLibraryInfo::path(QLibraryInfo::TranslationsPath)))
        return nullptr;
    return library;
}

void dress(QApplication &application) {
    if (!language_choice().isEmpty()) QLocale::setDefault(chosen_locale());
    for (const auto translator_of : {own_translator, library_translator})
        if (auto translator = translator_of(QLocale())) {
            QApplication::installTranslator(translator.get());
            translator.release()->setParent(&application);
        }
    QApplication::setWindowIcon(QIcon(QStringLiteral(":/roundlay.svg")));
    new FocusRing(&application);
    new WheelGuard(&application);
    wear(static_cast<Appearance>(QSettings().value(QStringLiteral("appearance"), 0).toInt()));
}

namespace {

/// Options only tell something: they need no screen.
bool asks_for_words(int argc, char **argv) {
    return std::any_of(argv + 1, argv + argc, [](const char *argument) { return argument[0] == '-'; });
}

/// Without one the library ends the program with words that help nobody.
bool has_display() {
    const auto stated = [](const char *name) { return !qEnvironmentVariableIsEmpty(name); };
    return stated("DISPLAY") || stated("WAYLAND_DISPLAY") || stated("QT_QPA_PLATFORM");
}

QStringList files_of(const QCoreApplication &application) {
    QCommandLineParser parser;
    parser.setApplicationDescription(
        QCoreApplication::translate("Application", "Plans, shows and checks a shell of hewn logs."));
    parser.addHelpOption();
    parser.addVersionOption();
    parser.addPositionalArgument(QStringLiteral("FILE"),
                                 QCoreApplication::translate("Application", "A document to open"),
                                 QStringLiteral("[FILE]"));
    parser.process(application);
    return parser.positionalArguments();
}

} // namespace

namespace {

int run_window(int argc, char **argv) {
    if (asks_for_words(argc, argv)) {
        int count = argc;
        const QCoreApplication words(count, argv);
        const auto own = own_translator(chosen_locale());
        if (own) QCoreApplication::installTranslator(own.get());
        if (const QStringList arguments = QCoreApplication::arguments();
            arguments.filter(QRegularExpression(QStringLiteral("^(-h|--help|--help-all|-v|--version)$")))
                .size() > 0)
            files_of(words); // tells, and ends the program
    }
    if (!has_display()) {
        std::fputs("roundlay-modeler: there is no display here to open a window on; roundlay, the command "
                   "line, needs none\n",
                   stderr);
        return 1;
    }
    Application application(argc, argv);
    dress(application);
    const QStringList files = files_of(application);
    MainWindow window;
    QObject::connect(&application, &QGuiApplication::commitDataRequest, &window,
                     [&window](QSessionManager &session) {
                         if (!window.end_session(session.allowsInteraction())) session.cancel();
                     });
    window.show();
    QTimer::singleShot(0, &window, [&window, files] {
        if (files.isEmpty() || window.open(files.front())) window.offer_recovery();
    });
    return QApplication::exec();
}

} // namespace

/// Before there is a window to say it in, the terminal and the log are told.
int run(int argc, char **argv) {
    prepare_application();
    note_what_nobody_catches();
    int end = 1;
    what_it_throws(QStringLiteral("starting or ending"), [&] { end = run_window(argc, argv); });
    return end;
}

} // namespace roundlay::window
