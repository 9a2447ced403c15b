#include "kernel/layout/corners/notch.h"

namespace roundlay {

TailTop tail_top(const NotchRule &rule) {
    const double s = rule.slope.ratio();
    switch (rule.kind) {
    case NotchKind::full_dovetail:
        return {s, -s};
    case NotchKind::half_dovetail:
        return {0, -s};
    case NotchKind::square_lap:
    case NotchKind::saddle:
        return {0, 0};
    case NotchKind::stated:
        return {rule.along.ratio(), rule.across.ratio()};
    }
    return {};
}

double lock(const TailTop &own, const TailTop &other) {
    return own.along - other.across;
}

} // namespace roundlay
