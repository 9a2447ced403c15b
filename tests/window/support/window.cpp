#include "tests/window/support/window.h"

#include "modeler/window/desk/desk.h"
#include "modeler/window/frame/application.h"
#include "modeler/window/frame/new_shell.h"
#include "modeler/window/views/drawing_view.h"

#include <QApplication>
#include <QDockWidget>
#include <QFile>
#include <QMouseEvent>
#include <QProgressDialog>
#include <QScreen>
#include <QSettings>
#include <QTemporaryDir>
#include <QTest>

namespace roundlay::window {

TestProgram::TestProgram(int &argc, char **argv) {
    static const QTemporaryDir own; // several tests run at once; Qt's test mode has one place for all of them
    for (const char *kind : {"XDG_CONFIG_HOME", "XDG_DATA_HOME", "XDG_CACHE_HOME", "XDG_STATE_HOME"})
        qputenv(kind, own.filePath(QLatin1String(kind)).toUtf8());
    QCoreApplication::setAttribute(Qt::AA_DontUseNativeDialogs);
    prepare_application();
    if (!QSettings().fileName().startsWith(own.path())) qFatal("the test would share its settings");
    application_ = std::make_unique<Application>(argc, argv);
    QApplication::setQuitOnLastWindowClosed(false);
    dress(*application_);
}

TestProgram::~TestProgram() = default;

QString demo_file(const QString &name) {
    return QStringLiteral(ROUNDLAY_DEMOS "/") + name + QStringLiteral(".roundlay");
}

std::string text_of(const QString &path) {
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll().toStdString() : std::string();
}

bool settled(MainWindow &window) {
    constexpr int patience = 60'000;
    return QTest::qWaitFor([&] { return window.desk().is_current(); }, patience);
}

bool shown(MainWindow &window, const Shell &shell, const QString &title) {
    window.show();
    window.begin(shell, title);
    return settled(window);
}

bool shown_demo(MainWindow &window, int demo) {
    window.show();
    window.begin_demo(demo);
    return settled(window);
}

const Shell &shell(MainWindow &window) {
    return window.desk().standing()->job.shell;
}

const Shell &as_written(MainWindow &window) {
    return *window.desk().state()->read.shell;
}

bool has_error(MainWindow &window) {
    return has_errors(window.desk().state()->job.findings);
}

void raise(MainWindow &window, const char *dock) {
    auto *d = window.findChild<QDockWidget *>(QLatin1String(dock));
    d->show();
    d->raise();
    QTest::qWait(50);
}

Shell a_room() {
    return *shell_of(usual_shell(Shape::rectangle, UnitSystem::metric));
}

Shell a_room_with_a_door() {
    Shell shell = a_room();
    shell.openings.push_back(
        {"door", OpeningKind::door, "A", Length::metres(2), {}, Length::metres(1), Length::metres(2), {}});
    return shell;
}

Shell named(const Shell &shell, const char *name) {
    Shell next = shell;
    next.name = name;
    return next;
}

namespace {

void send(QWidget &widget, QEvent::Type type, QPointF at, Qt::MouseButton button, Qt::MouseButtons buttons,
          Qt::KeyboardModifiers keys) {
    QMouseEvent event(type, at, widget.mapToGlobal(at), button, buttons, keys);
    QApplication::sendEvent(&widget, &event);
}

} // namespace

void press(QWidget &widget, QPointF at) {
    send(widget, QEvent::MouseButtonPress, at, Qt::LeftButton, Qt::LeftButton, Qt::NoModifier);
}

void move(QWidget &widget, QPointF to, Qt::KeyboardModifiers keys) {
    send(widget, QEvent::MouseMove, to, Qt::NoButton, Qt::LeftButton, keys);
}

void hover(QWidget &widget, QPointF at) {
    send(widget, QEvent::MouseMove, at, Qt::NoButton, Qt::NoButton, Qt::NoModifier);
}

void release(QWidget &widget, QPointF at) {
    send(widget, QEvent::MouseButtonRelease, at, Qt::LeftButton, Qt::NoButton, Qt::NoModifier);
}

void click(DrawingView &view, Vec2 at) {
    hover(view, view.to_screen(at));
    press(view, view.to_screen(at));
    release(view, view.to_screen(at));
}

void drag(DrawingView &view, Vec2 from, Vec2 to) {
    constexpr int steps = 6;
    const QPointF a = view.to_screen(from), b = view.to_screen(to);
    press(view, a);
    for (int i = 1; i <= steps; ++i) {
        move(view, a + (b - a) * i / steps);
        QTest::qWait(5);
    }
    release(view, b);
}

QImage greys(QWidget &view) {
    return view.grab().toImage().convertToFormat(QImage::Format_Grayscale8);
}

namespace {

/// How many colours are in it; no more than two are counted.
int tones(const QImage &image) {
    if (image.isNull()) return 0;
    for (int y = 0; y < image.height(); ++y)
        for (int x = 0; x < image.width(); ++x)
            if (image.pixel(x, y) != image.pixel(0, 0)) return 2;
    return 1;
}

} // namespace

void keep_picture(QWidget &window, const QString &name) {
    constexpr int until_drawn = 400;
    QTest::qWait(until_drawn);
    const QPixmap picture = window.screen()->grabWindow(window.winId());
    const QString path = QStringLiteral(ROUNDLAY_SCREENSHOTS "/%1.png").arg(name);
    QVERIFY2(picture.save(path), qPrintable(path));
    QVERIFY2(tones(picture.toImage()) > 1, qPrintable(name + QStringLiteral(" is a picture of nothing")));
}

DialogCloser::DialogCloser() {
    constexpr int often = 30;
    startTimer(often);
}

void DialogCloser::timerEvent(QTimerEvent *) {
    QWidget *dialog = QApplication::activeModalWidget();
    if (qobject_cast<QProgressDialog *>(dialog) != nullptr) return; // goes by itself
    if (dialog != nullptr) {
        dialog->close();
        ++closed_;
    } else if (QWidget *popup = QApplication::activePopupWidget()) {
        popup->close();
    }
}

} // namespace roundlay::window
