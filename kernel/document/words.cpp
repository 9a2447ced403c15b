#include "kernel/document/words.h"

namespace roundlay {

const char *word(UnitSystem system) {
    return system == UnitSystem::metric ? "metric" : "imperial";
}

const char *word(NotchKind kind) {
    switch (kind) {
    case NotchKind::full_dovetail:
        return "full dovetail";
    case NotchKind::half_dovetail:
        return "half dovetail";
    case NotchKind::square_lap:
        return "square lap";
    case NotchKind::saddle:
        return "saddle";
    case NotchKind::stated:
        break;
    }
    return "stated";
}

const char *word(TopRule rule) {
    return rule == TopRule::level ? "level" : "staggered";
}

const char *word(OpeningKind kind) {
    return kind == OpeningKind::door ? "door" : "window";
}

const char *word(LogEnd end) {
    return end == LogEnd::left ? "left" : "right";
}

const char *word(PocketKind kind) {
    return kind == PocketKind::square ? "square" : "tailed";
}

const char *word(BoreUse use) {
    switch (use) {
    case BoreUse::bolt:
        return "bolt";
    case BoreUse::rod:
        return "rod";
    case BoreUse::wire:
        return "wire";
    case BoreUse::hole:
        break;
    }
    return "hole";
}

} // namespace roundlay
