#include "exporters/picture/targets.h"

#include <stdexcept>

namespace roundlay {
namespace {

void require_complete() {
    if (glCheckFramebufferStatus(GL_FRAMEBUFFER) != GL_FRAMEBUFFER_COMPLETE)
        throw std::runtime_error("the graphics driver refuses a picture of this size");
}

} // namespace

void Targets::resize(gl::Size size, int samples) {
    if (size == size_ && samples == samples_) return;
    size_ = size;
    samples_ = samples;
    colour_ = gl::make_texture(size, GL_RGBA8, GL_NEAREST);
    depth_ = gl::make_texture(size, GL_DEPTH24_STENCIL8, GL_NEAREST);
    into_one_ = gl::make_framebuffer();
    glBindFramebuffer(GL_FRAMEBUFFER, into_one_.id());
    glFramebufferTexture2D(GL_FRAMEBUFFER, GL_COLOR_ATTACHMENT0, GL_TEXTURE_2D, colour_.id(), 0);
    glFramebufferTexture2D(GL_FRAMEBUFFER, GL_DEPTH_STENCIL_ATTACHMENT, GL_TEXTURE_2D, depth_.id(), 0);
    require_complete();
    if (samples == 0) return;
    colour_many_ = gl::make_multisample_renderbuffer(size, GL_RGBA8, samples);
    depth_many_ = gl::make_multisample_renderbuffer(size, GL_DEPTH24_STENCIL8, samples);
    into_many_ = gl::make_framebuffer();
    glBindFramebuffer(GL_FRAMEBUFFER, into_many_.id());
    glFramebufferRenderbuffer(GL_FRAMEBUFFER, GL_COLOR_ATTACHMENT0, GL_RENDERBUFFER, colour_many_.id());
    glFramebufferRenderbuffer(GL_FRAMEBUFFER, GL_DEPTH_STENCIL_ATTACHMENT, GL_RENDERBUFFER, depth_many_.id());
    require_complete();
}

void Targets::bind() const {
    glBindFramebuffer(GL_FRAMEBUFFER, samples_ == 0 ? into_one_.id() : into_many_.id());
}

void Targets::resolve() const {
    if (samples_ == 0) return;
    glBindFramebuffer(GL_READ_FRAMEBUFFER, into_many_.id());
    glBindFramebuffer(GL_DRAW_FRAMEBUFFER, into_one_.id());
    glBlitFramebuffer(0, 0, size_.width, size_.height, 0, 0, size_.width, size_.height,
                      GL_COLOR_BUFFER_BIT | GL_DEPTH_BUFFER_BIT, GL_NEAREST);
}

} // namespace roundlay
