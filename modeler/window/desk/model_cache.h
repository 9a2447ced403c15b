// Wood and meshes of pieces that were met before: an edit changes few of them.
#pragma once

#include "exporters/picture/scene.h"
#include "kernel/layout/wood/interference.h"

#include <functional>
#include <string>
#include <unordered_map>

namespace roundlay::window {

class ModelCache {
  public:
    /// As bodies_of; what was not cut by the last call is cut now.
    Bodies bodies(const Layout &layout);

    /// As models_of, of what bodies() gave last; equal pieces come back as the same object, also from one
    /// call to the next. New ones whose bores have to be carved out of round wood, which takes its time, are
    /// without bores yet.
    SceneModels models();
    bool lacks_bores() const; ///< what models() gave last
    /// Empty where it is to stop before all are carved; those that are stay so.
    SceneModels models_with_bores(const std::function<bool()> &stop);

    int cut() const { return cut_; } ///< pieces that the last bodies() had to cut

    /// For a review of what bodies() gave last.
    KnownMeetings &meetings() { return meetings_; }

  private:
    struct Known {
        Body body;
        std::uint64_t number = 0;
        std::shared_ptr<const SceneModel> model; ///< none: not asked for yet
        bool lacks_bores = false;
    };
    using KnownPtr = std::shared_ptr<Known>;
    KnownPtr newly_cut(const Piece &piece);

    std::unordered_map<std::string, KnownPtr>
        known_;                 ///< of the last call only: what is not shown any more is let go
    std::vector<KnownPtr> now_; ///< by model of the layout
    KnownMeetings meetings_;
    std::uint64_t newest_ = 0;
    int cut_ = 0;
};

} // namespace roundlay::window
