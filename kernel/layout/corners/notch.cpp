#include "kernel/layout/corners/notch.h"

#include "kernel/shell/notch_kinds.h"

namespace roundlay {

TailTop tail_top(const NotchRule &rule) {
    if (rule.kind == NotchKind::stated) return {rule.along.ratio(), rule.across.ratio()};
    const KindOfNotch &kind = kind_of(rule.kind);
    const double s = rule.slope.ratio();
    return {kind.along * s, kind.across * s};
}

double lock(const TailTop &own, const TailTop &other) {
    return own.along - other.across;
}

} // namespace roundlay
