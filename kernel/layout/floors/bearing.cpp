#include "kernel/layout/floors/bearing.h"

#include "kernel/layout/cuts/match.h"

#include <algorithm>
#include <cmath>

namespace roundlay {

namespace {

/// Where a timber's end lies, in the frame of the log that carries it.
struct Lying {
    double x = 0, half = 0; ///< its middle along the log, and half its width
    double y = 0;           ///< of the wall's face
    double bed = 0;         ///< height of the timber's under side
    bool inside = true;     ///< else it comes in through the outside face
};

const Piece *carrier_of(const Layout &layout, const Timber &timber, End end) {
    const Piece &own = layout.pieces[timber.piece];
    const std::size_t place = end == End::datum ? 0 : 1;
    if (own.below.size() <= place) return nullptr;
    const auto found = std::find_if(layout.pieces.begin(), layout.pieces.end(),
                                    [&](const Piece &p) { return !p.timber && p.tag == own.below[place]; });
    return found == layout.pieces.end() ? nullptr : &*found;
}

Lying lying_in(const Layout &layout, const Timber &timber, End end, const Piece &log) {
    const FloorPlace &floor = layout.floors[timber.floor];
    const Piece &own = layout.pieces[timber.piece];
    const TimberHold &hold = end == End::datum ? timber.hold_from : timber.hold_to;
    const double top = own.frame.origin.z + own.blank.height;
    const auto local = [&](Vec2 at) {
        const Vec3 flat = floor.frame.to_world({at.x, at.y, 0});
        return log.frame.to_local({flat.x, flat.y, top - hold.height});
    };
    const Vec3 near = local(end == End::datum ? timber.from : timber.to);
    const Vec3 away = local(end == End::datum ? timber.to : timber.from);
    return {near.x, own.blank.width / 2, near.y, std::min(near.z, log.blank.height), away.y > near.y};
}

/// How far behind the wall's face the log's wood begins at x along it, over the bed.
struct WoodBehind {
    const Piece &log;
    const Lying &end;
    double x = 0;

    double behind(double y) const { return end.inside ? end.y - y : y - end.y; }

    double operator()(const FaceCut &cut) const {
        if (cut.face != (end.inside ? LogFace::inside : LogFace::outside)) return 0;
        return behind((cut.plane.offset - cut.plane.normal.x * x) / cut.plane.normal.y);
    }
    double operator()(const RoundCut &cut) const {
        const Vec3 middle = cut.from + x / log.blank.length * (cut.to - cut.from);
        const double up = end.bed - middle.z;
        const double half = std::sqrt(std::max(0.0, cut.radius * cut.radius - up * up));
        return behind(end.inside ? middle.y + half : middle.y - half);
    }
};

double gap_at(const Piece &log, const Lying &end, double x) {
    const WoodBehind wood{log, end, x};
    double gap = 0;
    for (const Cut &cut : log.cuts)
        gap = std::max(gap, match(
                                cut, [&](const FaceCut &face) { return wood(face); },
                                [&](const RoundCut &round) { return wood(round); },
                                // corners, openings, bores and other timbers' ends lie beside a timber's
                                // end, and where a log is mended the new wood carries it
                                giving<SeamCut, ScopeCut, BoxCut, PocketCut, CheekCut, MendCut, Bore>(0.0)));
    return gap;
}

} // namespace

Bearing bearing_of(const Layout &layout, const Timber &timber, End end) {
    const double asked = end == End::datum ? timber.bearing_from : timber.bearing_to;
    const TimberHold &hold = end == End::datum ? timber.hold_from : timber.hold_to;
    const Piece *log = hold.carrier ? nullptr : carrier_of(layout, timber, end);
    if (!log) return {0, asked};
    const Lying lying = lying_in(layout, timber, end, *log);
    const double gap =
        std::max(gap_at(*log, lying, lying.x - lying.half), gap_at(*log, lying, lying.x + lying.half));
    return {gap, std::max(0.0, asked - gap)};
}

std::vector<double> clear_spans(const Layout &layout, const Timber &timber) {
    std::vector<double> spans = timber.spans;
    if (spans.empty()) return spans;
    spans.front() += bearing_of(layout, timber, End::datum).gap;
    spans.back() += bearing_of(layout, timber, End::far).gap;
    return spans;
}

} // namespace roundlay
