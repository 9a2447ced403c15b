#include "exporters/lists/cut_words.h"

#include "kernel/layout/bore_marks.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace roundlay {

namespace {

constexpr double at_the_end = 1e-3; // mm: a cut this near to the blank's end reaches it

std::string said(double mm, const LengthStyle &style) {
    return print_length(Length::mm(mm), style);
}

const char *side_of(End end) {
    return end == End::datum ? "left end" : "right end";
}

std::vector<SeamCut> seams_at(const Piece &piece, End end) {
    std::vector<SeamCut> seams;
    for (const Cut &cut : piece.cuts)
        if (const auto *seam = std::get_if<SeamCut>(&cut); seam && seam->end == end && !seam->runs_on)
            seams.push_back(*seam);
    return seams;
}

/// Notches of walls that this log runs past, corner by corner from the left.
std::vector<std::vector<SeamCut>> notches_passed(const Piece &piece) {
    std::vector<std::vector<SeamCut>> notches;
    for (const Cut &cut : piece.cuts) {
        const auto *seam = std::get_if<SeamCut>(&cut);
        if (!seam || !seam->runs_on) continue;
        const auto same = std::find_if(notches.begin(), notches.end(),
                                       [&](const auto &n) { return n.front().corner == seam->corner; });
        if (same == notches.end())
            notches.push_back({*seam});
        else
            same->push_back(*seam);
    }
    std::sort(notches.begin(), notches.end(),
              [](const auto &a, const auto &b) { return a.front().x_from < b.front().x_from; });
    return notches;
}

std::string sides_of(const std::vector<SeamCut> &seams) {
    const auto on = [&](Side side) {
        return std::any_of(seams.begin(), seams.end(), [&](const SeamCut &s) { return s.side == side; });
    };
    if (on(Side::top) && on(Side::under)) return "on top and underside";
    return on(Side::top) ? "on top" : "on the underside";
}

std::pair<double, double> stretch_of(const Piece &piece, const std::vector<SeamCut> &seams) {
    double from = piece.blank.length, to = 0;
    for (const SeamCut &seam : seams) {
        from = std::min(from, seam.x_from);
        to = std::max(to, seam.x_to);
    }
    return {from, to};
}

std::string housed_words(const Piece &piece, const std::vector<SeamCut> &seams, const LengthStyle &style) {
    const auto [from, to] = stretch_of(piece, seams);
    return "housed notch " + sides_of(seams) + " from " + said(from, style) + " to " + said(to, style);
}

std::string notch_words(const Piece &piece, End end, const std::vector<SeamCut> &seams,
                        const LengthStyle &style) {
    const double length = piece.blank.length;
    const auto [from, to] = stretch_of(piece, seams);
    const bool tail = end == End::datum ? from < at_the_end : to > length - at_the_end;
    if (tail) {
        const double shoulder = end == End::datum ? to : length - from;
        return "tail cut " + sides_of(seams) + ", shoulder " + said(shoulder, style) + " from the end";
    }
    return housed_words(piece, seams, style);
}

/// An end of a timber that lies in a wall or another timber.
std::string pocketed_words(const Piece &piece, End end, const LengthStyle &style) {
    const PieceEnd &there = end == End::datum ? piece.datum : piece.far;
    const double bearing = end == End::datum ? there.shoulder : piece.blank.length - there.shoulder;
    const auto tailed = [&](const Cut &cut) {
        const auto *cheek = std::get_if<CheekCut>(&cut);
        return cheek && cheek->end == end;
    };
    const bool tail = std::any_of(piece.cuts.begin(), piece.cuts.end(), tailed);
    return (tail ? "tailed, " : "square, ") + said(bearing, style) + " of it in the pocket";
}

bool scoped(const Piece &piece) {
    return std::any_of(piece.cuts.begin(), piece.cuts.end(),
                       [](const Cut &cut) { return std::holds_alternative<ScopeCut>(cut); });
}

std::string end_words(const Piece &piece, End end, const LengthStyle &style) {
    const std::string side = std::string(side_of(end)) + ": ";
    const auto seams = seams_at(piece, end);
    if (!seams.empty()) return side + notch_words(piece, end, seams, style);
    const PieceEnd &there = end == End::datum ? piece.datum : piece.far;
    switch (there.kind) {
    case EndKind::corner:
        return side + (scoped(piece) ? "square, past the corner" : "square");
    case EndKind::jamb:
        return side + "square at a jamb";
    case EndKind::butt:
        return side + "square against the crossing wall";
    case EndKind::step:
        return side + "square against " + there.at + " of the foundation";
    case EndKind::pocket:
        return side + pocketed_words(piece, end, style);
    }
    return side;
}

std::string box_words(const Piece &piece, const BoxCut &cut, const LengthStyle &style) {
    const double from = std::max(0.0, cut.box.low.x), to = std::min(piece.blank.length, cut.box.high.x);
    const double low = std::clamp(cut.box.low.z, 0.0, piece.blank.height),
                 high = std::min(piece.blank.height, cut.box.high.z);
    const std::string where = " from " + said(from, style) + " to " + said(to, style);
    switch (cut.use) {
    case BoxUse::sill:
        return "sill cut " + said(high - low, style) + " deep from the top" + where +
               (cut.fall > 0 ? ", falling " + said(cut.fall * piece.blank.width, style) + " outward" : "");
    case BoxUse::header:
        return "header cut " + said(high - low, style) + " up from the underside" + where;
    case BoxUse::through:
        return "opening cut " + said(low, style) + " to " + said(high, style) + " high" + where;
    case BoxUse::step:
        return "cut level " + said(high, style) + " up from the underside over " + cut.opening + where;
    case BoxUse::groove:
        return "groove " + said(cut.box.high.y - cut.box.low.y, style) + " wide for a spline, " +
               said(to - from, style) + " deep" + where;
    case BoxUse::seat:
        return "seat " + said(high, style) + " up from the underside" + where;
    }
    return "cut" + where;
}

/// How high a pocket is in this log, said from the side that it opens to.
std::string pocket_height(const Piece &piece, const PocketCut &cut, const LengthStyle &style) {
    const double bed = cut.bed.height_at(cut.x, cut.y_face);
    const bool open_above = cut.z_top > piece.blank.height - at_the_end, open_below = bed < at_the_end;
    if (open_above && open_below) return "through the log's height";
    if (open_above) return said(piece.blank.height - bed, style) + " deep from the top";
    if (open_below) return said(cut.z_top, style) + " up from the underside";
    return said(bed, style) + " to " + said(cut.z_top, style) + " over the underside";
}

/// A timber has no outside: seen from its datum end, its outside face is the right one.
std::string pocket_words(const Piece &piece, const PocketCut &cut, const LengthStyle &style) {
    const double depth = std::abs(cut.y_face - cut.y_back);
    const bool tailed = cut.half_at_back > cut.half_at_face + at_the_end;
    return std::string(tailed ? "tailed " : "") + "pocket " + said(2 * cut.half_at_back, style) + " wide, " +
           said(depth, style) + " into the " + side_word(piece, cut.y_face > cut.y_back) + " face, " +
           pocket_height(piece, cut, style) + ", middle " + said(cut.x, style) + " from the left end";
}

std::vector<std::string> all_pocket_words(const Piece &piece, const LengthStyle &style) {
    std::vector<PocketCut> pockets;
    for (const Cut &cut : piece.cuts)
        if (const auto *pocket = std::get_if<PocketCut>(&cut)) pockets.push_back(*pocket);
    std::stable_sort(pockets.begin(), pockets.end(), [](const PocketCut &a, const PocketCut &b) { return a.x < b.x; });
    std::vector<std::string> words;
    for (const PocketCut &pocket : pockets) words.push_back(pocket_words(piece, pocket, style));
    return words;
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

/// How much of the blank's face is hewn away at x, on the log's middle line.
double hewn_away(const Blank &blank, const FaceCut &cut, double x) {
    const Plane &p = cut.plane;
    const double y = (p.offset - p.normal.x * x - p.normal.z * blank.height / 2) / p.normal.y;
    const double z = p.height_at(x, blank.width / 2);
    switch (cut.face) {
    case LogFace::top:
        return blank.height - z;
    case LogFace::under:
        return z;
    case LogFace::outside:
        return y;
    case LogFace::inside:
        return blank.width - y;
    case LogFace::datum_end:
    case LogFace::far_end:
        break;
    }
    return 0;
}

std::string face_words(const Piece &piece, const FaceCut &cut, const LengthStyle &style) {
    return std::string(name_of(cut.face)) + " hewn back " + said(hewn_away(piece.blank, cut, 0), style) +
           " at the left end, " + said(hewn_away(piece.blank, cut, piece.blank.length), style) +
           " at the right end";
}

/// "2 rod bores", "1 hole as found".
std::string counted(std::size_t count, const std::optional<BoreUse> &use) {
    const std::string number = std::to_string(count) + " ", s = count == 1 ? "" : "s";
    if (use == BoreUse::hole) return number + "hole" + s + " as found";
    return number + roundlay::name_of(use) + " bore" + s;
}

std::string stick_words(const RoundCut &cut, const LengthStyle &style) {
    return "round stick of " + said(2 * cut.radius, style) + ": what lies outside it is wane";
}

std::string scope_words(const ScopeCut &cut, const LengthStyle &style) {
    const std::string clear = cut.scribe > 0 ? ", " + said(cut.scribe, style) + " clear" : "";
    const std::string top = ", its top " + said(cut.at.z + cut.radius, style) + " over the blank's underside" + clear;
    if (cut.use == ScopeUse::groove) return "long groove of radius " + said(cut.radius, style) + top;
    const double x = cut.at.x - cut.at.y * cut.along.x / cut.along.y;
    return "saddle of radius " + said(cut.radius, style) + " at " + said(x, style) + " over " + cut.other + top;
}

bool alike(const Bore &a, const Bore &b, const LengthStyle &style) {
    return a.use == b.use && a.through == b.through && a.from_top == b.from_top &&
           said(a.diameter, style) == said(b.diameter, style) &&
           (a.through || said(a.z_to - a.z_from, style) == said(b.z_to - b.z_from, style));
}

std::string bore_words(const Bore &first, const std::vector<Bore> &bores, const LengthStyle &style) {
    const std::string depth = first.through ? std::string("right through")
                                            : said(first.z_to - first.z_from, style) + " deep from " +
                                                  (first.from_top ? "the top" : "the underside");
    std::string text = counted(bores.size(), first.use) + " " + said(first.diameter, style) + " " + depth + " at ";
    for (std::size_t i = 0; i < bores.size(); ++i)
        text += (i ? ", " : "") + said(bores[i].x, style);
    return text;
}

/// Bores of one kind share an entry; kinds in the order in which they first come.
std::vector<std::string> all_bore_words(std::vector<Bore> bores, const LengthStyle &style) {
    std::stable_sort(bores.begin(), bores.end(), [](const Bore &a, const Bore &b) { return a.x < b.x; });
    std::vector<std::string> words;
    while (!bores.empty()) {
        const Bore first = bores.front();
        const auto others = std::stable_partition(bores.begin(), bores.end(),
                                                  [&](const Bore &b) { return alike(first, b, style); });
        words.push_back(bore_words(first, {bores.begin(), others}, style));
        bores.erase(bores.begin(), others);
    }
    return words;
}

} // namespace

std::vector<std::string> cut_words(const Piece &piece, const LengthStyle &style) {
    std::vector<std::string> words;
    for (const Cut &cut : piece.cuts)
        if (const auto *face = std::get_if<FaceCut>(&cut)) words.push_back(face_words(piece, *face, style));
    words.push_back(end_words(piece, End::datum, style));
    for (const auto &notch : notches_passed(piece))
        words.push_back(housed_words(piece, notch, style) + " at corner " + notch.front().corner);
    std::vector<Bore> bores;
    for (const Cut &cut : piece.cuts) {
        if (const auto *box = std::get_if<BoxCut>(&cut)) words.push_back(box_words(piece, *box, style));
        if (const auto *bore = std::get_if<Bore>(&cut)) bores.push_back(*bore);
        if (const auto *stick = std::get_if<RoundCut>(&cut)) words.push_back(stick_words(*stick, style));
        if (const auto *scope = std::get_if<ScopeCut>(&cut)) words.push_back(scope_words(*scope, style));
    }
    for (std::string &entry : all_pocket_words(piece, style)) words.push_back(std::move(entry));
    for (std::string &entry : all_bore_words(bores, style))
        words.push_back(std::move(entry));
    words.push_back(end_words(piece, End::far, style));
    return words;
}

std::string place_of(const PieceEnd &end) {
    switch (end.kind) {
    case EndKind::corner:
        return "corner " + end.at;
    case EndKind::jamb:
        return end.at.empty() ? "jamb" : "jamb of " + end.at;
    case EndKind::butt:
        return "against the wall at corner " + end.at;
    case EndKind::step:
        return "against " + end.at + " of the foundation";
    case EndKind::pocket:
        return "in " + end.at;
    }
    return end.at;
}

std::string kind_of(const Layout &layout, const Piece &piece) {
    if (piece.timber >= 0) return name_of(layout.timbers.at(static_cast<std::size_t>(piece.timber)).use);
    if (piece.island) return "island";
    const std::string log = piece.log == LogKind::full ? "log" : "half log";
    if (piece.round == 1) return "sill " + log;
    return piece.round == layout.rounds ? "plate " + log : log;
}

} // namespace roundlay
