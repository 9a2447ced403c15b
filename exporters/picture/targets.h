// The textures a picture goes through. Private to this room.
#pragma once

#include "exporters/picture/gl.h"

namespace roundlay {

class Targets {
  public:
    /// Makes them anew when size or samples change. 0 samples = one, plain. Throws std::runtime_error when
    /// the driver refuses the size.
    void resize(gl::Size size, int samples);

    void bind() const;    ///< what is drawn into
    void resolve() const; ///< to one sample per texel, colour and depth

    const gl::Handle &colour() const { return colour_; }
    const gl::Handle &depth() const { return depth_; }

  private:
    gl::Size size_;
    int samples_ = -1;
    gl::Handle colour_, depth_, into_one_;
    gl::Handle colour_many_, depth_many_, into_many_;
};

} // namespace roundlay
