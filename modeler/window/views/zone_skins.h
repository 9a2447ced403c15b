// Zones of found wood as they lie on their logs: thin skins over the faces that a zone is on, in bands across
// the log, which eyes that tell no colours apart read too.
#pragma once

#include "exporters/picture/scene.h"
#include "modeler/window/desk/state.h"

#include <memory>
#include <vector>

namespace roundlay::window {

struct ZoneSkins {
    struct Skin {
        Index<Piece> piece;
        std::shared_ptr<const SceneModel> model; ///< closed, in the piece's frame
        std::size_t mark = 0;                    ///< of record_marks(Colouring::condition)
    };
    std::vector<Skin> skins;
    /// What each piece has beside them (PlacedZones).
    Indexed<std::size_t, Piece> whole;
};

/// Of a state that stands.
ZoneSkins zone_skins(const State &state);

/// Behind the pieces of a scene made of that state, where those stand in it.
void add_skins(Scene &scene, const ZoneSkins &skins);

/// How much of a band of that mark is painted, from over 0 to 1: the worse, the more.
double painted_share(std::size_t mark);

} // namespace roundlay::window
