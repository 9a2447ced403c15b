#include "exporters/picture/context.h"

#include <dlfcn.h>
#include <epoxy/egl.h>

#include <cstring>

namespace roundlay {

/// What was current before.
struct EglCurrent {
    EGLDisplay display = eglGetCurrentDisplay();
    EGLSurface draw = eglGetCurrentSurface(EGL_DRAW), read = eglGetCurrentSurface(EGL_READ);
    EGLContext context = eglGetCurrentContext();
};

struct OffscreenContext::Egl {
    EglCurrent before;
    EGLDisplay display = EGL_NO_DISPLAY;
    EGLContext context = EGL_NO_CONTEXT;
};

namespace {

/// epoxy ends the program when a library is missing, so that is asked first.
bool can_load(const char *library) {
    void *const handle = dlopen(library, RTLD_LAZY | RTLD_LOCAL);
    if (handle != nullptr) dlclose(handle);
    return handle != nullptr;
}

bool has_extension(const char *all, const char *wanted) {
    return all != nullptr && std::strstr(all, wanted) != nullptr;
}

EGLDisplay surfaceless_display() {
    const char *const offered = eglQueryString(EGL_NO_DISPLAY, EGL_EXTENSIONS);
    if (!has_extension(offered, "EGL_EXT_platform_base") ||
        !has_extension(offered, "EGL_MESA_platform_surfaceless"))
        return EGL_NO_DISPLAY;
    return eglGetPlatformDisplayEXT(EGL_PLATFORM_SURFACELESS_MESA, EGL_DEFAULT_DISPLAY, nullptr);
}

EGLContext core_context(EGLDisplay display) {
    const EGLint wanted[] = {EGL_SURFACE_TYPE, EGL_PBUFFER_BIT, EGL_RENDERABLE_TYPE, EGL_OPENGL_BIT,
                             EGL_NONE};
    EGLConfig config = nullptr;
    EGLint count = 0;
    if (!eglBindAPI(EGL_OPENGL_API)) return EGL_NO_CONTEXT;
    if (!eglChooseConfig(display, wanted, &config, 1, &count) || count < 1) return EGL_NO_CONTEXT;
    const EGLint version[] = {EGL_CONTEXT_MAJOR_VERSION,
                              3,
                              EGL_CONTEXT_MINOR_VERSION,
                              3,
                              EGL_CONTEXT_OPENGL_PROFILE_MASK,
                              EGL_CONTEXT_OPENGL_CORE_PROFILE_BIT,
                              EGL_NONE};
    return eglCreateContext(display, config, EGL_NO_CONTEXT, version);
}

PictureFailure failure(const std::string &what) {
    return {"No picture can be drawn: " + what +
            "; install the packages libegl1 and libgl1-mesa-dri (no display or graphics card is needed)."};
}

} // namespace

OffscreenContext::OffscreenContext(std::unique_ptr<Egl> egl) : egl_(std::move(egl)) {}

Drawn<std::unique_ptr<OffscreenContext>> OffscreenContext::create() {
    if (!can_load("libEGL.so.1")) return failure("the EGL library is not installed");
    if (!can_load("libOpenGL.so.0") && !can_load("libGL.so.1"))
        return failure("the OpenGL library is not installed");
    auto egl = std::make_unique<Egl>();
    egl->display = surfaceless_display();
    EGLint major = 0, minor = 0;
    if (egl->display == EGL_NO_DISPLAY || !eglInitialize(egl->display, &major, &minor))
        return failure("EGL finds no driver that draws without a display");
    egl->context = core_context(egl->display);
    std::unique_ptr<OffscreenContext> made(new OffscreenContext(std::move(egl)));
    const Egl &held = *made->egl_;
    if (held.context == EGL_NO_CONTEXT) return failure("the driver offers no OpenGL 3.3 core context");
    if (!eglMakeCurrent(held.display, EGL_NO_SURFACE, EGL_NO_SURFACE, held.context))
        return failure("the driver does not draw without a surface");
    return made;
}

OffscreenContext::~OffscreenContext() {
    // The display is shared by the process and stays initialised: others may use it.
    if (egl_->context == EGL_NO_CONTEXT) return;
    const EglCurrent &before = egl_->before;
    if (before.context != EGL_NO_CONTEXT)
        eglMakeCurrent(before.display, before.draw, before.read, before.context);
    else
        eglMakeCurrent(egl_->display, EGL_NO_SURFACE, EGL_NO_SURFACE, EGL_NO_CONTEXT);
    eglDestroyContext(egl_->display, egl_->context);
}

} // namespace roundlay
