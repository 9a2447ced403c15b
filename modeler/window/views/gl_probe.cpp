#include "modeler/window/views/gl_probe.h"

#include <QGuiApplication>
#include <QOffscreenSurface>
#include <QOpenGLContext>
#include <QSurfaceFormat>

namespace roundlay::window {

namespace {

constexpr int major = 3, minor = 3;

QString sentence() {
    return QCoreApplication::translate(
        "ModelPage",
        "This machine draws no OpenGL 3.3, so the model cannot be shown here. Plan, elevation, sheets and "
        "lists work all the same; a driver such as Mesa's software renderer would bring the model back.");
}

} // namespace

void set_surface_format() {
    QSurfaceFormat format;
    format.setVersion(major, minor);
    format.setProfile(QSurfaceFormat::CoreProfile);
    format.setSwapInterval(0); // the renderer's own target does the smoothing, edits set the pace
    QSurfaceFormat::setDefaultFormat(format);
}

std::optional<QString> why_no_model_view() {
    if (qEnvironmentVariableIsSet("ROUNDLAY_NO_MODEL_VIEW")) return sentence();
    QOpenGLContext context;
    if (!context.create()) return sentence();
    QOffscreenSurface surface;
    surface.setFormat(context.format());
    surface.create();
    if (!surface.isValid() || !context.makeCurrent(&surface)) return sentence();
    const QSurfaceFormat format = context.format();
    context.doneCurrent();
    if (std::pair(format.majorVersion(), format.minorVersion()) < std::pair(major, minor)) return sentence();
    // The off-screen platform gives contexts that no widget can draw with.
    if (QGuiApplication::platformName() == QLatin1String("offscreen")) return sentence();
    return {};
}

} // namespace roundlay::window
