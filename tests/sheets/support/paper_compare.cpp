#include "tests/sheets/support/paper_compare.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <vector>

namespace roundlay::test {
namespace {

constexpr double hair = 0.02; ///< beside the rounding of one print, for lengths that lie between two digits

template <typename Kind> std::vector<Kind> all_of(const Piece &piece) {
    std::vector<Kind> all;
    for (const Cut &cut : piece.cuts)
        if (const Kind *kind = std::get_if<Kind>(&cut)) all.push_back(*kind);
    return all;
}

/// Compares numbers and tells which are apart.
class Comparison {
  public:
    Comparison(const Piece &piece, double half_digit) : blank(piece.blank), half(half_digit) {}

    /// `prints`: how many printed numbers it was put together from.
    void near(const char *what, double a, double b, double prints = 1) {
        if (std::abs(a - b) <= prints * half + hair) return;
        char text[120];
        std::snprintf(text, sizeof text, " %s %.2f read as %.2f", what, a, b);
        told += where + text;
    }
    void same(const char *what, bool alike) {
        if (!alike) told += where + " " + what;
    }
    void at(const std::string &cut, double x) {
        where = "\n  " + cut + " at " + std::to_string(std::lround(x)) + ":";
    }

    const Blank blank;
    const double half;
    std::string where, told;
};

/// Where a log's hewn faces are, on which a carpenter marks: outside and inside.
struct HewnSides {
    Plane outside, inside;
    explicit HewnSides(const Piece &piece) : outside{{0, -1, 0}, 0}, inside{{0, 1, 0}, piece.blank.width} {
        for (const FaceCut &cut : all_of<FaceCut>(piece)) {
            if (cut.face == LogFace::outside) outside = cut.plane;
            if (cut.face == LogFace::inside) inside = cut.plane;
        }
    }
};

double y_on(const Plane &plane, double x) {
    return (plane.offset - plane.normal.x * x) / plane.normal.y;
}
double x_on(const Plane &plane, double y) {
    return (plane.offset - plane.normal.y * y) / plane.normal.x;
}

void compare(Comparison &c, const FaceCut &a, const FaceCut &b) {
    const bool end = a.face == LogFace::datum_end || a.face == LogFace::far_end;
    const bool level = a.face == LogFace::top || a.face == LogFace::under;
    c.at("face", 0);
    c.same("is another face", a.face == b.face);
    if (a.face != b.face) return;
    for (const double t : {0.0, 1.0}) {
        const double x = t * c.blank.length;
        const double lean = end ? std::abs(a.plane.normal.y / a.plane.normal.x) : 0;
        if (end) // read on the hewn faces, whose own places are read: put to the blank's by the slant
            c.near("end", x_on(a.plane, t * c.blank.width), x_on(b.plane, t * c.blank.width), 2 + 2 * lean);
        else if (level)
            c.near("taper", a.plane.height_at(x, 0), b.plane.height_at(x, 0), 2); // off the blank's own size
        else
            c.near("taper", y_on(a.plane, x), y_on(b.plane, x), 2);
    }
}

void compare(Comparison &c, const SeamCut &a, const SeamCut &b, bool tapers, const HewnSides &hewn) {
    c.at("seam", a.x_from);
    c.same("other side", a.side == b.side);
    c.same("other end", a.end == b.end);
    c.near("proud", a.proud, b.proud);
    const double width = c.blank.width;
    // put together from the places of both shoulders on both faces; of a log that tapers in width those faces
    // are themselves read from two prints, which a slant turns into lengths
    const double slant = a.skew == 0 ? 1 : 2.2 + (tapers ? 2 * std::abs(a.skew) : 0);
    for (const Plane &side : {hewn.outside, hewn.inside}) {
        const double y = y_on(side, (a.x_from + a.x_to) / 2);
        const auto x = [&](const SeamCut &s, double middle) { return middle + s.skew * (y - width / 2); };
        // an open end of a cut is where the wood ends, however far the cut reaches
        if (!a.open_at(End::datum, c.blank.length)) c.near("from", x(a, a.x_from), x(b, b.x_from), slant);
        if (!a.open_at(End::far, c.blank.length)) c.near("to", x(a, a.x_to), x(b, b.x_to), slant);
        for (const double at : {std::max(0.0, a.x_from), std::min(c.blank.length, a.x_to)})
            c.near("height", a.seam.height_at(at, y), b.seam.height_at(at, y), tapers ? 3.6 : 2);
    }
}

void compare(Comparison &c, const BoxCut &a, const BoxCut &b) {
    c.at("square cut", a.box.low.x);
    c.same("other use", a.use == b.use);
    const auto within = [](double v, double most) { return std::clamp(v, 0.0, most); };
    const double high = c.blank.height, length = c.blank.length;
    c.near("from", within(a.box.low.x, length), within(b.box.low.x, length));
    c.near("to", within(a.box.high.x, length), within(b.box.high.x, length));
    c.near("outside", within(a.box.low.y, c.blank.width), within(b.box.low.y, c.blank.width), 2);
    c.near("inside", within(a.box.high.y, c.blank.width), within(b.box.high.y, c.blank.width), 3);
    c.near("ceiling", within(a.box.high.z, high), within(b.box.high.z, high), 2);
    for (const double y : {0.0, c.blank.width}) {
        const auto floor = [&](const BoxCut &cut) {
            return within(cut.box.low.z + cut.fall * (y - cut.fall_from), high);
        };
        c.near("floor", floor(a), floor(b), 2.3);
    }
}

void compare(Comparison &c, const ScopeCut &a, const ScopeCut &b) {
    c.at(a.use == ScopeUse::saddle ? "saddle" : "groove", a.at.x);
    c.same("other use", a.use == b.use);
    c.near("radius", a.radius, b.radius);
    c.near("scribe", a.scribe, b.scribe);
    c.near("cheeks", a.cheeks, b.cheeks);
    c.near("top", a.at.z + a.radius, b.at.z + b.radius, 2);
    if (a.use == ScopeUse::groove) {
        c.near("from", std::max(0.0, a.x_from), std::max(0.0, b.x_from));
        c.near("to", std::min(c.blank.length, a.x_to), std::min(c.blank.length, b.x_to));
        c.near("middle", a.at.y, b.at.y);
        return;
    }
    c.same("other end", a.end == b.end);
    for (const double y : {0.0, c.blank.width}) {
        const auto x = [&](const ScopeCut &s) { return s.at.x + (y - s.at.y) * s.along.x / s.along.y; };
        c.near("place", x(a), x(b));
    }
}

void compare(Comparison &c, const RoundCut &a, const RoundCut &b) {
    c.at("stick", 0);
    c.near("diameter", 2 * a.radius, 2 * b.radius);
    for (const auto &[one, other] : {std::pair{a.from, b.from}, std::pair{a.to, b.to}}) {
        c.near("middle", one.z, other.z, 2);
        c.near("middle", one.y, other.y);
    }
}

void compare(Comparison &c, const CheekCut &a, const CheekCut &b) {
    c.at("cheek", a.x_from);
    c.same("other end", a.end == b.end && a.side == b.side);
    c.near("from", a.x_from, b.x_from, 2);
    c.near("to", a.x_to, b.x_to, 2);
    for (const double x : {a.x_from, a.x_to})
        c.near("side", y_on(a.plane, x), y_on(b.plane, x), 1.2);
}

void compare(Comparison &c, const PocketCut &a, const PocketCut &b) {
    c.at("pocket", a.x);
    c.near("middle", a.x, b.x);
    c.same("other face", (a.y_face > a.y_back) == (b.y_face > b.y_back));
    c.near("depth", a.y_back, b.y_back, 2);
    c.same("holds", a.holds == b.holds);
    const auto half = [](const PocketCut &p, double y) {
        return p.half_at_back + (y - p.y_back) * (p.half_at_face - p.half_at_back) / (p.y_face - p.y_back);
    };
    // its widths are printed where the wood is open and at its back: beyond the wood their prints grow
    const double beyond = std::abs(a.y_face - b.y_face) / std::abs(b.y_face - b.y_back);
    for (const double y : {a.y_face, a.y_back}) {
        c.near("width", 2 * half(a, y), 2 * half(b, y), 1.4 * (1 + 2 * beyond));
        // where the bed lies under the log the pocket goes on in the one below
        if (a.bed.height_at(a.x, y) > 1) c.near("bed", a.bed.height_at(a.x, y), b.bed.height_at(b.x, y), 2.4);
    }
    c.near("up to", std::min(c.blank.height, a.z_top), std::min(c.blank.height, b.z_top), 2);
}

void compare(Comparison &c, const MendCut &a, const MendCut &b) {
    c.at("mend", a.x_from);
    c.same("other use", a.use == b.use);
    c.same("other face", a.face == b.face);
    if (a.face != b.face) return;
    const bool side = a.face == LogFace::outside || a.face == LogFace::inside;
    const double length = c.blank.length, most = side ? c.blank.height : c.blank.width;
    const auto within = [](double v, double high) { return std::clamp(v, 0.0, high); };
    c.near("from", within(a.x_from, length), within(b.x_from, length));
    c.near("to", within(a.x_to, length), within(b.x_to, length));
    c.near("low", within(a.low, most), within(b.low, most), 2);
    c.near("high", within(a.high, most), within(b.high, most), 2);
    for (const double x : {within(a.x_from, length), within(a.x_to, length)})
        c.near("bed", side ? y_on(a.bed, x) : a.bed.height_at(x, 0),
               side ? y_on(b.bed, x) : b.bed.height_at(x, 0), 3.6);
}

void compare(Comparison &c, const Bore &a, const Bore &b) {
    c.at("bore", a.x);
    c.near("from datum end", a.x, b.x);
    c.near("across", a.y, b.y, 2);
    c.near("diameter", a.diameter, b.diameter);
    c.same("for another use", a.use == b.use);
    c.same("through or blind", a.through == b.through);
    c.same("from another face", a.from_top == b.from_top);
    if (!a.through) c.near("depth", a.z_to - a.z_from, b.z_to - b.z_from);
}

template <typename Kind, typename... More>
void compare_all(Comparison &c, const Piece &piece, const Piece &read, const char *kind, bool by_place,
                 More... more) {
    std::vector<Kind> a = all_of<Kind>(piece), b = all_of<Kind>(read);
    c.where = "\n  ";
    if (a.size() != b.size()) {
        c.told += c.where + std::to_string(a.size()) + " " + kind + ", read " + std::to_string(b.size());
        return;
    }
    if constexpr (requires(Kind k) { k.x; })
        if (by_place)
            for (auto *all : {&a, &b})
                std::stable_sort(all->begin(), all->end(),
                                 [](const Kind &p, const Kind &q) { return p.x < q.x; });
    for (std::size_t i = 0; i < a.size(); ++i)
        compare(c, a[i], b[i], more...);
}

} // namespace

std::string differences(const Piece &piece, const Piece &read, double half_digit) {
    static_assert(std::variant_size_v<Cut> == 9,
                  "a new kind of cut is read from the sheet and compared here");
    Comparison c(piece, half_digit);
    c.where = "\n  blank:";
    c.near("length", piece.blank.length, read.blank.length);
    c.near("width", piece.blank.width, read.blank.width);
    c.near("height", piece.blank.height, read.blank.height);
    const std::vector<FaceCut> faces = all_of<FaceCut>(piece);
    const bool tapers = std::any_of(faces.begin(), faces.end(), [](const FaceCut &f) {
        return f.face != LogFace::datum_end && f.face != LogFace::far_end;
    });
    compare_all<FaceCut>(c, piece, read, "faces", false);
    compare_all<RoundCut>(c, piece, read, "sticks", false);
    compare_all<SeamCut>(c, piece, read, "seams", false, tapers, HewnSides(piece));
    compare_all<ScopeCut>(c, piece, read, "saddles and grooves", false);
    compare_all<BoxCut>(c, piece, read, "square cuts", false);
    compare_all<CheekCut>(c, piece, read, "cheeks", false);
    compare_all<MendCut>(c, piece, read, "mends", false);
    compare_all<PocketCut>(c, piece, read, "pockets", true);
    compare_all<Bore>(c, piece, read, "bores", true);
    return c.told;
}

} // namespace roundlay::test
