#include "kernel/record/found_words.h"

namespace roundlay {

Said said_of(Soundness what) {
    switch (what) {
    case Soundness::sound:
        return said("sound");
    case Soundness::checked:
        return said("checked");
    case Soundness::soft:
        return said("soft");
    case Soundness::rotten:
        return said("rotten");
    case Soundness::missing:
        break;
    }
    return said("missing");
}

Said said_of(FoundFace face) {
    switch (face) {
    case FoundFace::outside:
        return said("outside");
    case FoundFace::inside:
        return said("inside");
    case FoundFace::top:
        return said("top");
    case FoundFace::under:
        break;
    }
    return said("under");
}

Said said_of(Decision what) {
    switch (what) {
    case Decision::keep:
        return said("keep");
    case Decision::mend:
        return said("mend");
    case Decision::replace:
        return said("replace");
    case Decision::turn:
        return said("turn end for end");
    case Decision::use_elsewhere:
        return said("use elsewhere");
    case Decision::leave_out:
        break;
    }
    return said("leave out");
}

} // namespace roundlay
