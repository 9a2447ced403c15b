#include "kernel/layout/layout.h"

namespace roundlay {

const char *name_of(TimberUse use) {
    switch (use) {
    case TimberUse::trimmed:
        return "trimmed joist";
    case TimberUse::trimmer:
        return "trimmer";
    case TimberUse::beam:
        return "beam";
    case TimberUse::joist:
        break;
    }
    return "joist";
}

const char *name_of(Finish finish) {
    switch (finish) {
    case Finish::sawn:
        return "sawn";
    case Finish::peeled:
        return "peeled";
    case Finish::hewn:
        break;
    }
    return "hewn";
}

const char *name_of(Fabric fabric) {
    switch (fabric) {
    case Fabric::kept:
        return "kept";
    case Fabric::patched:
        return "patched";
    case Fabric::replacement:
        return "replacement";
    case Fabric::newly_cut:
        break;
    }
    return "new";
}

} // namespace roundlay
