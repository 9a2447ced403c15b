// Meshes of pieces that were met before: a drag changes few of them.
#pragma once

#include "exporters/picture/scene.h"

#include <string>
#include <unordered_map>

namespace roundlay::window {

class ModelCache {
  public:
    /// As models_of; equal bodies come back as the same object, also from one call to the next.
    SceneModels models(const std::vector<Body> &bodies);

  private:
    using Known = std::unordered_map<std::string, std::shared_ptr<const SceneModel>>;
    Known known_; ///< of the last call only: what is not shown any more is let go
};

} // namespace roundlay::window
