#include "exporters/lists/measured_words.h"

#include "kernel/layout/pieces/stock.h"

#include <algorithm>
#include <cmath>

namespace roundlay {

namespace {

constexpr double same = 1e-3; // mm

/// A measure at the two ends of a cut from left to right, which is one number unless the log tapers.
std::string from_to(double left, double right, const LengthStyle &style) {
    const std::string a = said(std::max(left, 0.0), style), b = said(std::max(right, 0.0), style);
    return a == b ? a : a + " (left) to " + b + " (right)";
}

/// What heights are over: a round log without a flat has no underside.
const char *under_name(const HewnFaces &faces) {
    return faces.under_footing() == Footing::touched ? "the lowest line" : "the underside";
}

const char *name_of(LogFace face) {
    switch (face) {
    case LogFace::top:
        return "top";
    case LogFace::under:
        return "underside";
    case LogFace::outside:
        return "outside face";
    case LogFace::inside:
        return "inside face";
    case LogFace::datum_end:
        return "left end";
    case LogFace::far_end:
        return "right end";
    }
    return "face";
}

} // namespace

std::string said(double mm, const LengthStyle &style) {
    return print_length(Length::mm(mm), style);
}

std::string place_words(const SawLine &place, const LengthStyle &style) {
    const std::string outside = said(place.outside, style), inside = said(place.inside, style);
    return outside == inside ? outside : outside + " (outside) / " + inside + " (inside)";
}

std::string slant_words(const HewnFaces &faces, End end, const LengthStyle &style) {
    const SawLine &saw = end == End::datum ? faces.datum_end : faces.far_end;
    const double whole = end == End::datum ? 0 : faces.blank.length;
    const SawLine off{std::abs(whole - saw.outside), std::abs(whole - saw.inside)};
    if (std::abs(off.outside - off.inside) < same) return "";
    return std::string(end == End::datum ? "left" : "right") + " end sawn at a slant, " +
           place_words(off, style) + " off the blank's end";
}

bool is_long(LogFace face) {
    return face != LogFace::datum_end && face != LogFace::far_end;
}

std::string face_words(const Piece &piece, const FaceCut &cut, const LengthStyle &style) {
    const Stock stock = stock_of(piece);
    return std::string(name_of(cut.face)) + " hewn back " + said(hewn_off(piece, stock, cut, 0), style) +
           " at the left end, " + said(hewn_off(piece, stock, cut, piece.blank.length), style) +
           " at the right end";
}

std::string box_words(const HewnFaces &faces, const BoxCut &cut, const LengthStyle &style) {
    const double from = std::max(0.0, cut.box.low.x), to = std::min(faces.blank.length, cut.box.high.x);
    const std::string where = " from " + said(from, style) + " to " + said(to, style),
                      under = under_name(faces);
    const auto up = [&](double z) { return from_to(faces.height(from, z), faces.height(to, z), style); };
    const auto width = [&](double x) { return faces.innermost(x) - faces.outermost(x); };
    // a sill that falls is measured at the inside face
    const auto floor = [&](double x) {
        return cut.box.low.z + (cut.fall > 0 ? cut.fall * (faces.innermost(x) - cut.fall_from) : 0.0);
    };
    const auto down = [&](double x) { return faces.highest(x) - floor(x); };
    switch (cut.use) {
    case BoxUse::sill:
        return "sill cut " + from_to(down(from), down(to), style) + " deep from the top" + where +
               (cut.fall > 0
                    ? ", falling " + from_to(cut.fall * width(from), cut.fall * width(to), style) + " outward"
                    : "");
    case BoxUse::header:
        return "header cut " + up(cut.box.high.z) + " up from " + under + where;
    case BoxUse::through:
        return "opening cut " + up(cut.box.low.z) + " up to " + up(cut.box.high.z) + " over " + under + where;
    case BoxUse::step:
        return "cut level " + up(cut.box.high.z) + " up from " + under + " over " + cut.opening + where;
    case BoxUse::groove:
        return "groove " + said(cut.box.high.y - cut.box.low.y, style) + " wide for a spline, " +
               said(to - from, style) + " deep" + where;
    case BoxUse::seat:
        return "seat " + up(cut.box.high.z) + " up from " + under + where;
    }
    return "cut" + where;
}

namespace {

/// How high a pocket is in this log, said from the side that it opens to.
std::string pocket_height(const HewnFaces &faces, const PocketCut &cut, double y_face,
                          const LengthStyle &style) {
    const double bed = cut.bed.height_at(cut.x, y_face), top = faces.highest(cut.x);
    const std::string under = under_name(faces);
    const bool open_above = cut.z_top > top - same, open_below = faces.height(cut.x, bed) < same;
    if (open_above && open_below) return "through the log's height";
    if (open_above) return said(top - bed, style) + " deep from the top";
    if (open_below) return said(faces.height(cut.x, cut.z_top), style) + " up from " + under;
    return said(faces.height(cut.x, bed), style) + " up to " + said(faces.height(cut.x, cut.z_top), style) +
           " over " + under;
}

} // namespace

std::string pocket_words(const Piece &piece, const HewnFaces &faces, const PocketCut &cut,
                         const LengthStyle &style) {
    const bool inside = cut.y_face > cut.y_back;
    const double face = inside ? faces.innermost(cut.x) : faces.outermost(cut.x);
    const bool tailed = cut.half_at_back > cut.half_at_face + same;
    return std::string(tailed ? "tailed " : "") + "pocket " + said(2 * cut.half_at_back, style) + " wide, " +
           said(std::abs(face - cut.y_back), style) + " into the " + side_word(piece, inside) + " face, " +
           pocket_height(faces, cut, face, style) + ", middle " + said(cut.x, style) + " from the left end";
}

std::string stick_words(const RoundCut &cut, const LengthStyle &style) {
    return "round stick of " + said(2 * cut.radius, style) + ": what lies outside it is wane";
}

std::string scope_words(const HewnFaces &faces, const ScopeCut &cut, const LengthStyle &style) {
    const std::string clear = cut.scribe > 0 ? ", " + said(cut.scribe, style) + " clear" : "";
    const double lean = cut.use == ScopeUse::groove ? 0 : cut.along.x / cut.along.y;
    const SawLine middle =
        cut.use == ScopeUse::groove ? SawLine{} : faces.across(cut.at.x - lean * cut.at.y, lean);
    const std::string top = ", its top " + said(faces.height(middle.outside, cut.at.z + cut.radius), style) +
                            " over " + under_name(faces) + clear;
    if (cut.use == ScopeUse::groove) return "long groove of radius " + said(cut.radius, style) + top;
    const std::string cheeks =
        cut.cheeks > 0 ? ", upright cheeks " + said(cut.cheeks, style) + " from its middle," : "";
    return "saddle of radius " + said(cut.radius, style) + cheeks + " at " + place_words(middle, style) +
           " over " + cut.other + top;
}

} // namespace roundlay
