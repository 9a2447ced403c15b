#include "kernel/layout/cuts/asked.h"

#include "kernel/layout/cuts/match.h"

namespace roundlay {

namespace {

Met met_by(BoxUse use) {
    switch (use) {
    case BoxUse::sill:
    case BoxUse::header:
    case BoxUse::through:
    case BoxUse::groove:
        return Met::opening;
    case BoxUse::seat:
        return Met::timber;
    case BoxUse::step:
        break;
    }
    return Met::step;
}

/// Nothing lies where a log has no neighbour: at the foundation, at the top.
Neighbour named(Met what, const std::string &name, bool cut_too) {
    return name.empty() ? Neighbour{} : Neighbour{what, name, cut_too};
}

bool is_end(LogFace face) {
    return face == LogFace::datum_end || face == LogFace::far_end;
}

} // namespace

Neighbour neighbour_of(const Cut &cut) {
    return match(
        cut, [](const SeamCut &seam) { return named(Met::crossing_log, seam.other, true); },
        [](const BoxCut &box) { return named(met_by(box.use), box.opening, false); },
        [](const PocketCut &pocket) { return named(Met::timber, pocket.holds, false); },
        [](const ScopeCut &scope) {
            return named(scope.use == ScopeUse::groove ? Met::log_below : Met::crossing_log, scope.other,
                         false);
        },
        [](const MendCut &mend) { return named(Met::mend, mend.piece, true); },
        giving<FaceCut, RoundCut, CheekCut, Bore>(Neighbour{}));
}

bool is_for_opening(const Cut &cut, std::string_view name) {
    const Neighbour n = neighbour_of(cut);
    return n.what == Met::opening && n.name == name;
}

std::optional<End> end_of(const Cut &cut) {
    using At = std::optional<End>;
    return match(
        cut,
        [](const FaceCut &face) {
            return is_end(face.face) ? At(face.face == LogFace::datum_end ? End::datum : End::far) : At();
        },
        [](const SeamCut &seam) { return At(seam.end); },
        [](const ScopeCut &scope) { return scope.use == ScopeUse::saddle ? At(scope.end) : At(); },
        [](const CheekCut &cheek) { return At(cheek.end); },
        giving<RoundCut, BoxCut, PocketCut, MendCut, Bore>(At()));
}

std::string_view corner_of(const Cut &cut) {
    return match(
        cut, [](const SeamCut &seam) { return std::string_view(seam.corner); },
        [](const ScopeCut &scope) { return std::string_view(scope.corner); },
        giving<FaceCut, RoundCut, BoxCut, PocketCut, CheekCut, MendCut, Bore>(std::string_view()));
}

const SeamCut *top_seam_at(const Cut &cut, std::string_view corner) {
    return match(
        cut,
        [&](const SeamCut &seam) {
            return seam.side == Side::top && seam.corner == corner ? &seam : nullptr;
        },
        giving<FaceCut, RoundCut, ScopeCut, BoxCut, PocketCut, CheekCut, MendCut, Bore>(nullptr));
}

const BoxCut *header_cut(const Cut &cut) {
    return match(
        cut, [](const BoxCut &box) { return box.use == BoxUse::header ? &box : nullptr; },
        giving<FaceCut, RoundCut, SeamCut, ScopeCut, PocketCut, CheekCut, MendCut, Bore>(nullptr));
}

bool is_numbered(const Cut &cut) {
    return match(cut, giving<SeamCut, BoxCut, ScopeCut, MendCut>(true),
                 giving<FaceCut, RoundCut, PocketCut, CheekCut, Bore>(false));
}

bool is_mend(const Cut &cut) {
    return match(cut, giving<MendCut>(true),
                 giving<FaceCut, RoundCut, SeamCut, ScopeCut, BoxCut, PocketCut, CheekCut, Bore>(false));
}

const Plane *hewn_plane(const Cut &cut, LogFace face) {
    return match(
        cut, [&](const FaceCut &hewn) { return hewn.face == face ? &hewn.plane : nullptr; },
        giving<RoundCut, SeamCut, ScopeCut, BoxCut, PocketCut, CheekCut, MendCut, Bore>(nullptr));
}

const Bore *bore_of(const Cut &cut) {
    return match(
        cut, [](const Bore &bore) { return &bore; },
        giving<FaceCut, RoundCut, SeamCut, ScopeCut, BoxCut, PocketCut, CheekCut, MendCut>(nullptr));
}

bool holds(const Cut &cut, const void *of_its_kind) {
    return std::visit([](const auto &each) { return static_cast<const void *>(&each); }, cut) == of_its_kind;
}

} // namespace roundlay
