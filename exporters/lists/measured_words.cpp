#include "exporters/lists/measured_words.h"

#include "kernel/layout/pieces/stock.h"

#include <algorithm>
#include <cmath>

namespace roundlay {

namespace {

constexpr double same = 1e-3; // mm

/// A measure at the two ends of a cut from left to right, which is one number unless the log tapers.
std::string from_to(double left, double right, const Voice &voice) {
    const std::string a = voice.length(std::max(left, 0.0)), b = voice.length(std::max(right, 0.0));
    return a == b ? a : voice.say("%1 (left) to %2 (right)", a, b);
}

/// What heights are over: a round log without a flat has no underside.
std::string under_name(const HewnFaces &faces, const Voice &voice) {
    return faces.under_footing() == Footing::touched ? voice.say("the lowest line")
                                                     : voice.say("the underside");
}

std::string name_of(LogFace face, const Voice &voice) {
    switch (face) {
    case LogFace::top:
        return voice.say("top");
    case LogFace::under:
        return voice.say("underside");
    case LogFace::outside:
        return voice.say("outside face");
    case LogFace::inside:
        return voice.say("inside face");
    case LogFace::datum_end:
        return voice.say("left end");
    case LogFace::far_end:
        break;
    }
    return voice.say("right end");
}

/// A timber has no outside: seen from its datum end, its outside face is the right one.
std::string side_face(const Piece &piece, bool inside, const Voice &voice) {
    if (piece.timber) return inside ? voice.say("the left face") : voice.say("the right face");
    return inside ? voice.say("the inside face") : voice.say("the outside face");
}

} // namespace

std::string place_words(const SawLine &place, const Voice &voice) {
    const std::string outside = voice.length(place.outside), inside = voice.length(place.inside);
    return outside == inside ? outside : voice.say("%1 (outside) / %2 (inside)", outside, inside);
}

std::string slant_words(const HewnFaces &faces, End end, const Voice &voice) {
    const SawLine &saw = end == End::datum ? faces.datum_end : faces.far_end;
    const double whole = end == End::datum ? 0 : faces.blank.length;
    const SawLine off{std::abs(whole - saw.outside), std::abs(whole - saw.inside)};
    if (std::abs(off.outside - off.inside) < same || voice.length(off.outside) == voice.length(off.inside))
        return "";
    const std::string place = place_words(off, voice);
    return end == End::datum ? voice.say("left end sawn at a slant, %1 off the blank's end", place)
                             : voice.say("right end sawn at a slant, %1 off the blank's end", place);
}

bool is_long(LogFace face) {
    return face != LogFace::datum_end && face != LogFace::far_end;
}

std::string face_words(const Piece &piece, const FaceCut &cut, const Voice &voice) {
    const Stock stock = stock_of(piece);
    const double left = hewn_off(piece, stock, cut, 0),
                 right = hewn_off(piece, stock, cut, piece.blank.length);
    const std::string none = voice.length(0);
    if (voice.length(left) == none && voice.length(right) == none) return "";
    return voice.say("%1 hewn back %2 at the left end, %3 at the right end", name_of(cut.face, voice),
                     in_mm(left), in_mm(right));
}

std::string box_words(const HewnFaces &faces, const BoxCut &cut, const Voice &voice) {
    const double from = std::max(0.0, cut.box.low.x), to = std::min(faces.blank.length, cut.box.high.x);
    const LengthAmount a = in_mm(from), b = in_mm(to);
    const std::string under = under_name(faces, voice);
    const auto up = [&](double z) { return from_to(faces.height(from, z), faces.height(to, z), voice); };
    const auto width = [&](double x) { return faces.innermost(x) - faces.outermost(x); };
    // a sill that falls is measured at the inside face
    const auto floor = [&](double x) {
        return cut.box.low.z + (cut.fall > 0 ? cut.fall * (faces.innermost(x) - cut.fall_from) : 0.0);
    };
    const auto down = [&](double x) { return faces.highest(x) - floor(x); };
    const auto sill = [&] {
        const std::string deep = from_to(down(from), down(to), voice);
        if (cut.fall <= 0) return voice.say("sill cut %1 deep from the top from %2 to %3", deep, a, b);
        return voice.say("sill cut %1 deep from the top from %2 to %3, falling %4 outward", deep, a, b,
                         from_to(cut.fall * width(from), cut.fall * width(to), voice));
    };
    switch (cut.use) {
    case BoxUse::sill:
        return sill();
    case BoxUse::header:
        return voice.say("header cut %1 up from %2 from %3 to %4", up(cut.box.high.z), under, a, b);
    case BoxUse::through:
        return voice.say("opening cut %1 up to %2 over %3 from %4 to %5", up(cut.box.low.z),
                         up(cut.box.high.z), under, a, b);
    case BoxUse::step:
        return voice.say("cut level %1 up from %2 over %3 from %4 to %5", up(cut.box.high.z), under,
                         voice.name(cut.opening), a, b);
    case BoxUse::groove:
        return voice.say("groove %1 wide for a spline, %2 deep from %3 to %4",
                         in_mm(cut.box.high.y - cut.box.low.y), in_mm(to - from), a, b);
    case BoxUse::seat:
        break;
    }
    return voice.say("seat %1 up from %2 from %3 to %4", up(cut.box.high.z), under, a, b);
}

namespace {

/// How high a pocket is in this log, said from the side that it opens to.
std::string pocket_height(const HewnFaces &faces, const PocketCut &cut, double y_face, const Voice &voice) {
    const double bed = cut.bed.height_at(cut.x, y_face), top = faces.highest(cut.x);
    const std::string under = under_name(faces, voice);
    const bool open_above = cut.z_top > top - same, open_below = faces.height(cut.x, bed) < same;
    if (open_above && open_below) return voice.say("through the log's height");
    if (open_above) return voice.say("%1 deep from the top", in_mm(top - bed));
    const LengthAmount ceiling = in_mm(faces.height(cut.x, cut.z_top));
    if (open_below) return voice.say("%1 up from %2", ceiling, under);
    return voice.say("%1 up to %2 over %3", in_mm(faces.height(cut.x, bed)), ceiling, under);
}

} // namespace

std::string pocket_words(const Piece &piece, const HewnFaces &faces, const PocketCut &cut,
                         const Voice &voice) {
    const bool inside = cut.y_face > cut.y_back;
    const double face = inside ? faces.innermost(cut.x) : faces.outermost(cut.x);
    const bool tailed = cut.half_at_back > cut.half_at_face + same;
    const LengthAmount wide = in_mm(2 * cut.half_at_back), deep = in_mm(std::abs(face - cut.y_back)),
                       middle = in_mm(cut.x);
    const std::string side = side_face(piece, inside, voice), height = pocket_height(faces, cut, face, voice);
    return tailed ? voice.say("tailed pocket %1 wide, %2 into %3, %4, middle %5 from the left end", wide,
                              deep, side, height, middle)
                  : voice.say("pocket %1 wide, %2 into %3, %4, middle %5 from the left end", wide, deep, side,
                              height, middle);
}

namespace {

/// What of the face's height or width it takes; empty where it takes all.
std::string edges_words(const HewnFaces &faces, const MendCut &cut, double x, const Voice &voice) {
    const bool side = cut.face == LogFace::outside || cut.face == LogFace::inside;
    const double least = side ? faces.lowest(x) : faces.outermost(x),
                 most = side ? faces.highest(x) : faces.innermost(x);
    if (cut.low < least + same && cut.high > most - same) return {};
    const LengthAmount low = in_mm(std::max(0.0, cut.low - least)),
                       high = in_mm(std::min(most, cut.high) - least);
    return side ? voice.say(", %1 up to %2 over %3", low, high, under_name(faces, voice))
                : voice.say(", %1 to %2 from the outside face", low, high);
}

std::string the_face(LogFace face, const Voice &voice) {
    switch (face) {
    case LogFace::top:
        return voice.say("the top face");
    case LogFace::under:
        return voice.say("the under face");
    case LogFace::inside:
        return voice.say("the inside face");
    case LogFace::outside:
    case LogFace::datum_end:
    case LogFace::far_end:
        break;
    }
    return voice.say("the outside face");
}

} // namespace

std::string mend_words(const HewnFaces &faces, const MendCut &cut, const Voice &voice) {
    const double from = std::max(0.0, cut.x_from), to = std::min(faces.blank.length, cut.x_to);
    const std::string face = the_face(cut.face, voice),
                      deep = from_to(depth_of(faces, cut, from), depth_of(faces, cut, to), voice),
                      edges = edges_words(faces, cut, from, voice);
    const LengthAmount a = in_mm(from), b = in_mm(to);
    return cut.use == MendUse::lap
               ? voice.say("lap cut %1 deep into %2 from %3 to %4", deep, face, a, b) + edges
               : voice.say("recess for a mend %1 deep into %2 from %3 to %4", deep, face, a, b) + edges;
}

std::string stick_words(const RoundCut &cut, const Voice &voice) {
    return voice.say("round stick of %1: what lies outside it is wane", in_mm(2 * cut.radius));
}

std::string scope_words(const HewnFaces &faces, const ScopeCut &cut, const Voice &voice) {
    const bool groove = cut.use == ScopeUse::groove;
    const double lean = groove ? 0 : cut.along.x / cut.along.y;
    const SawLine middle = groove ? SawLine{} : faces.across(cut.at.x - lean * cut.at.y, lean);
    const LengthAmount radius = in_mm(cut.radius),
                       top = in_mm(faces.height(middle.outside, cut.at.z + cut.radius));
    const std::string under = under_name(faces, voice);
    const std::string shape =
        cut.cheeks > 0 ? voice.say("%1, upright cheeks %2 from its middle,", radius, in_mm(cut.cheeks))
                       : voice.length(cut.radius);
    const std::string what =
        groove ? voice.say("long groove of radius %1, its top %2 over %3", radius, top, under)
               : voice.say("saddle of radius %1 at %2 over %3, its top %4 over %5", shape,
                           place_words(middle, voice), cut.other, top, under);
    return cut.scribe > 0 ? voice.say("%1, %2 clear", what, in_mm(cut.scribe)) : what;
}

} // namespace roundlay
