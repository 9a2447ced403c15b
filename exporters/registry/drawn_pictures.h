// Pictures that have been drawn, for everybody who shows them: each once.
#pragma once

#include "exporters/registry/registry.h"

#include <functional>
#include <map>
#include <mutex>
#include <string>
#include <variant>

namespace roundlay {

/// The bytes of a PNG, or why there are none.
using MadePicture = std::variant<std::string, ExportFailure>;

/// Belongs to one shell that is worked out. All of it may be asked by several threads at once.
class DrawnPictures {
  public:
    /// Draws it by `draw` where nobody has yet; waits where somebody is at it. What failed is tried again.
    MadePicture of(const PictureOptions &wanted, const std::function<MadePicture()> &draw);

    /// How many pictures have been drawn.
    std::size_t count() const;

  private:
    mutable std::mutex mutex_;
    std::map<PictureOptions, std::string> drawn_;
};

} // namespace roundlay
