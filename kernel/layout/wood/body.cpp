#include "kernel/layout/wood/body.h"

#include "kernel/geometry/tolerance.h"
#include "kernel/layout/cuts/match.h"
#include "kernel/layout/cuts/region.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <numbers>

namespace roundlay {

namespace {

Cell blank_cell(const Blank &blank) {
    return box_cell({{0, 0, 0}, {blank.length, blank.width, blank.height}});
}

double distance_to_edge(Vec2 p, Vec2 a, Vec2 b) {
    const Vec2 d = b - a;
    const double t = std::clamp(dot(p - a, d) / dot(d, d), 0.0, 1.0);
    return length(p - (a + t * d));
}

/// Even-odd over all loops: holes are outside.
bool within(const Polyhedron &solid, const Face &face, Vec2 p) {
    bool in = false;
    for (const auto &loop : face.loops)
        for (std::size_t i = 0; i < loop.size(); ++i) {
            const Vec3 a = solid.vertices[static_cast<std::size_t>(loop[i])];
            const Vec3 b = solid.vertices[static_cast<std::size_t>(loop[(i + 1) % loop.size()])];
            if ((a.y > p.y) != (b.y > p.y) && p.x < a.x + (p.y - a.y) / (b.y - a.y) * (b.x - a.x)) in = !in;
        }
    return in;
}

bool clear_of_edges(const Polyhedron &solid, const Face &face, Vec2 p, double keep) {
    for (const auto &loop : face.loops)
        for (std::size_t i = 0; i < loop.size(); ++i) {
            const Vec3 a = solid.vertices[static_cast<std::size_t>(loop[i])];
            const Vec3 b = solid.vertices[static_cast<std::size_t>(loop[(i + 1) % loop.size()])];
            if (distance_to_edge(p, {a.x, a.y}, {b.x, b.y}) < keep) return false;
        }
    return true;
}

/// A bore may open on a face that slants with the log's taper (up to 8 degrees), not on a steeper one.
constexpr double flat_enough = 0.99;

/// Does the bore come near this face anywhere between its ends, other than by leaving the wood squarely
/// through its middle?
bool keeps_clear_of(const Bore &bore, const Polyhedron &solid, const Face &face) {
    const Vec2 p{bore.x, bore.y};
    const double keep = bore.diameter / 2 + tolerance::clear;
    const Vec3 n = face.plane.normal;
    if (std::abs(n.z) < tolerance::weld) { // an upright face: keep clear of it where heights meet
        double low = std::numeric_limits<double>::max(), high = -low;
        bool near = false;
        const auto &loop = face.loops[0];
        for (std::size_t i = 0; i < loop.size(); ++i) {
            const Vec3 a = solid.vertices[static_cast<std::size_t>(loop[i])];
            const Vec3 b = solid.vertices[static_cast<std::size_t>(loop[(i + 1) % loop.size()])];
            low = std::min(low, a.z);
            high = std::max(high, a.z);
            if (a.x == b.x && a.y == b.y) continue;
            near = near || distance_to_edge(p, {a.x, a.y}, {b.x, b.y}) < keep;
        }
        return !near || high <= bore.z_from || low >= bore.z_to;
    }
    const bool flat = std::abs(n.z) > flat_enough;
    const bool in = within(solid, face, p), clear = clear_of_edges(solid, face, p, keep);
    if (!in && clear) return true;
    const double z = face.plane.height_at(p.x, p.y);
    if (z < bore.z_from - keep || z > bore.z_to + keep) return true;
    const bool at_end =
        std::abs(z - bore.z_from) < tolerance::weld || std::abs(z - bore.z_to) < tolerance::weld;
    return flat && in && clear && at_end;
}

/// The bore opens exactly where it says it does, and nowhere else.
bool is_clear(const Bore &bore, const Polyhedron &solid) {
    int open = 0;
    for (const Face &face : solid.faces) {
        if (!keeps_clear_of(bore, solid, face)) return false;
        if (std::abs(face.plane.normal.z) < tolerance::weld) continue;
        const double z = face.plane.height_at(bore.x, bore.y);
        const bool at_end =
            std::abs(z - bore.z_from) < tolerance::weld || std::abs(z - bore.z_to) < tolerance::weld;
        if (at_end && within(solid, face, {bore.x, bore.y})) ++open;
    }
    return open == (bore.through ? 2 : 1);
}

bool clear_of_one_another(const std::vector<Bore> &bores) {
    for (std::size_t i = 0; i < bores.size(); ++i)
        for (std::size_t j = i + 1; j < bores.size(); ++j) {
            const Bore &a = bores[i], &b = bores[j];
            const double apart = length(Vec2{a.x - b.x, a.y - b.y});
            if (apart < (a.diameter + b.diameter) / 2 + tolerance::clear &&
                std::min(a.z_to, b.z_to) > std::max(a.z_from, b.z_from) - tolerance::clear)
                return false;
        }
    return true;
}

double bore_volume(const Bore &b) {
    return std::numbers::pi / 4 * b.diameter * b.diameter * (b.z_to - b.z_from);
}

/// What its ends lack where they open in round surfaces.
double round_ends(const Bore &b, const std::vector<RoundSurface> &rounds) {
    double fall = 0;
    for (const RoundSurface &s : rounds)
        fall += s.hollow ? -mean_fall(s, b, b.z_from) : mean_fall(s, b, b.z_to);
    return std::numbers::pi / 4 * b.diameter * b.diameter * fall;
}

void measure(Body &body) {
    body.volume = volume(body.hewn);
    Vec3 moment = body.volume * centroid(body.hewn);
    for (const Face &face : body.hewn.faces) {
        if (face.plane.round == 0) continue;
        const Sagitta s =
            sagitta_of(body.hewn, face, body.rounds[static_cast<std::size_t>(face.plane.round - 1)]);
        body.volume += s.volume;
        moment = moment + s.volume * s.centre;
    }
    for (const Bore &b : body.bores) {
        const double v = bore_volume(b) - round_ends(b, body.rounds);
        body.volume -= v;
        moment = moment - v * Vec3{b.x, b.y, (b.z_from + b.z_to) / 2};
    }
    body.centroid = (1 / body.volume) * moment;
}

/// Cuts cells by each cut in turn; bores stay beside them.
class Cutter {
  public:
    Cutter(Body &body, const Blank &blank) : body_(body), blank_(blank) {}

    void operator()(const FaceCut &cut) { take(region_of(cut)); }
    void operator()(const SeamCut &cut) { take(region_of(cut, blank_)); }
    void operator()(const BoxCut &cut) { take(region_of(cut)); }
    void operator()(const PocketCut &cut) { take(region_of(cut, blank_)); }
    void operator()(const CheekCut &cut) { take(region_of(cut, blank_)); }
    void operator()(const MendCut &cut) { take(region_of(cut, blank_)); }
    void operator()(const Bore &cut) { body_.bores.push_back(cut); }
    void operator()(const RoundCut &cut) {
        body_.rounds.push_back(surface_of(cut));
        body_.stick.push_back(cut);
        for (Cell &cell : body_.cells)
            for (const Plane &flat : flats_of(cut, static_cast<int>(body_.rounds.size())))
                cell = clipped(cell, flat);
        std::erase_if(body_.cells, [](const Cell &cell) { return cell.empty(); });
    }
    void operator()(const ScopeCut &cut) {
        body_.rounds.push_back(surface_of(cut));
        body_.scopes.push_back(cut);
        take(region_of(cut, blank_.length, static_cast<int>(body_.rounds.size())));
    }

  private:
    void take(const std::vector<Plane> &region) { body_.cells = without(std::move(body_.cells), region); }

    Body &body_;
    const Blank &blank_;
};

/// Faces of the blank that lie at or outside the round surface are no faces of the piece: moved out a little
/// they do not touch it, which solids of exact surfaces could not be told from cutting it.
Cell stock_cell(const Blank &blank, const std::vector<RoundCut> &stick) {
    constexpr double touching = 0.01, out = 5; // less than open cuts reach past the blank
    Box3 box{{0, 0, 0}, {blank.length, blank.width, blank.height}};
    for (const RoundCut &round : stick) {
        const auto outside = [&](double Vec3::*axis, double face, double sign) {
            return std::min(sign * (face - round.from.*axis), sign * (face - round.to.*axis)) >
                   round.radius - touching;
        };
        if (outside(&Vec3::y, 0, -1)) box.low.y = -out;
        if (outside(&Vec3::y, blank.width, 1)) box.high.y = blank.width + out;
        if (outside(&Vec3::z, 0, -1)) box.low.z = -out;
        if (outside(&Vec3::z, blank.height, 1)) box.high.z = blank.height + out;
    }
    return box_cell(box);
}

/// Of the surfaces that a cut leaves: a round one, of the stick or of a log that this one lies on.
bool leaves_round(const Cut &cut) {
    return match(cut, giving<RoundCut, ScopeCut>(true),
                 giving<FaceCut, SeamCut, BoxCut, PocketCut, CheekCut, MendCut, Bore>(false));
}

bool is_long_groove(const Cut &cut) {
    return match(
        cut, [](const ScopeCut &scope) { return scope.use == ScopeUse::groove; },
        giving<FaceCut, RoundCut, SeamCut, BoxCut, PocketCut, CheekCut, MendCut, Bore>(false));
}

std::vector<Cell> planed(const Piece &piece, const std::vector<RoundCut> &stick) {
    Body body;
    body.cells = {stock_cell(piece.blank, stick)};
    Cutter cutter(body, piece.blank);
    for (const Cut &cut : piece.cuts)
        if (!leaves_round(cut)) match(cut, cutter);
    return body.cells;
}

} // namespace

Body body_of(const Piece &piece) {
    Body body;
    body.cells = {blank_cell(piece.blank)};
    Cutter cutter(body, piece.blank);
    // Long grooves last: each of their flats would be cut again by every saddle.
    for (const bool grooves : {false, true})
        for (const Cut &cut : piece.cuts)
            if (is_long_groove(cut) == grooves) match(cut, cutter);
    body.hewn = border_of(body.cells);
    if (!body.rounds.empty()) {
        body.planed_cells = planed(piece, body.stick);
        body.planed = border_of(body.planed_cells);
    }
    body.bores_clear = body.bores_apart = clear_of_one_another(body.bores);
    for (const Bore &bore : body.bores)
        body.bores_clear = body.bores_clear && is_clear(bore, body.hewn);
    measure(body);
    return body;
}

} // namespace roundlay
