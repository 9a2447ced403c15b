// A graphics context without any window or display, for the command line.
#pragma once

#include "exporters/picture/failure.h"

#include <memory>

namespace roundlay {

/// OpenGL 3.3 core by surfaceless EGL: needs no X, no Wayland, no graphics card. Current on the thread that
/// made it until it is destroyed; what was current before is then current again.
class OffscreenContext {
  public:
    static Drawn<std::unique_ptr<OffscreenContext>> create();
    ~OffscreenContext();
    OffscreenContext(const OffscreenContext &) = delete;
    OffscreenContext &operator=(const OffscreenContext &) = delete;

  private:
    struct Egl;
    explicit OffscreenContext(std::unique_ptr<Egl> egl);
    std::unique_ptr<Egl> egl_;
};

} // namespace roundlay
