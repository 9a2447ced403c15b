#include "kernel/shell/shell.h"

namespace roundlay {

std::string called(const Shell &shell) {
    if (shell.name.empty() || shell.state.empty()) return shell.name + shell.state;
    return shell.name + " (" + shell.state + ")";
}

std::string species_of(const Wood &wood) {
    return wood.species.empty() ? "eastern hemlock" : wood.species;
}

Wood wood_of(const Shell &shell, const std::string &own) {
    Wood wood = shell.wood;
    if (!own.empty()) wood.species = own;
    return wood;
}

const char *name_of(SettlingRuleName rule) {
    switch (rule) {
    case SettlingRuleName::six_percent:
        return "6 percent";
    case SettlingRuleName::four_percent:
        return "4 percent";
    case SettlingRuleName::per_chinked_log:
        return "3/16 in per log";
    case SettlingRuleName::per_300_mm:
        break;
    }
    return "13 mm in 300 mm";
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

const char *name_of(MendKind kind) {
    switch (kind) {
    case MendKind::face:
        return "face";
    case MendKind::splice:
        return "splice";
    case MendKind::let_in:
        break;
    }
    return "let in";
}

Trim trim_of(const Shell &shell, const Opening &opening) {
    Trim trim = shell.trim;
    const OwnTrim &own = opening.trim;
    if (own.spline_width) trim.spline_width = *own.spline_width;
    if (own.spline_depth) trim.spline_depth = *own.spline_depth;
    if (own.sill_slope) trim.sill_slope = *own.sill_slope;
    if (own.settling) trim.settling = own.settling, trim.settle_space.reset();
    if (own.settle_space) trim.settle_space = *own.settle_space;
    if (own.header_bearing) trim.header_bearing = *own.header_bearing;
    if (trim.spline_width.mm() <= 0 || trim.spline_depth.mm() <= 0)
        trim.spline_width = trim.spline_depth = {};
    return trim;
}

} // namespace roundlay
