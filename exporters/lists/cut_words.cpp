#include "exporters/lists/cut_words.h"

#include "exporters/lists/measured_words.h"
#include "kernel/layout/fastenings/bore_marks.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace roundlay {

namespace {

constexpr const char *lines_first =
    "snap the lowest line and mark every cut from it before the first cut, which takes it away";

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

/// Over all of them, on either side face.
CutStretch stretch_of(const HewnFaces &faces, const std::vector<SeamCut> &seams) {
    CutStretch all = stretch_of(faces, seams.front());
    for (const SeamCut &seam : seams) {
        const CutStretch s = stretch_of(faces, seam);
        all.from = {std::min(all.from.outside, s.from.outside), std::min(all.from.inside, s.from.inside)};
        all.to = {std::max(all.to.outside, s.to.outside), std::max(all.to.inside, s.to.inside)};
        all.at_datum = all.at_datum || s.at_datum;
        all.at_far = all.at_far || s.at_far;
    }
    return all;
}

std::string housed_words(const HewnFaces &faces, const std::vector<SeamCut> &seams,
                         const LengthStyle &style) {
    const CutStretch at = stretch_of(faces, seams);
    return "housed notch " + sides_of(seams) + " from " + place_words(at.from, style) + " to " +
           place_words(at.to, style);
}

/// A shoulder is measured from the log's end on each side face: at a slanting end only there are both.
std::string notch_words(const HewnFaces &faces, End end, const std::vector<SeamCut> &seams,
                        const LengthStyle &style) {
    const CutStretch at = stretch_of(faces, seams);
    const bool datum = end == End::datum;
    if (!(datum ? at.at_datum : at.at_far)) return housed_words(faces, seams, style);
    const SawLine &saw = datum ? faces.datum_end : faces.far_end, &neck = datum ? at.to : at.from;
    const SawLine shoulder{std::abs(neck.outside - saw.outside), std::abs(neck.inside - saw.inside)};
    return "tail cut " + sides_of(seams) + ", shoulder " + place_words(shoulder, style) + " from the end";
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

std::string end_words(const Piece &piece, const HewnFaces &faces, End end, const LengthStyle &style) {
    const std::string side = std::string(side_of(end)) + ": ";
    const auto seams = seams_at(piece, end);
    if (!seams.empty()) return side + notch_words(faces, end, seams, style);
    const PieceEnd &there = end == End::datum ? piece.datum : piece.far;
    const std::string sawn = slant_words(faces, end, style).empty() ? "square" : "at a slant";
    switch (there.kind) {
    case EndKind::corner:
        return side + sawn + (scoped(piece) ? ", past the corner" : "");
    case EndKind::jamb:
        return side + sawn + " at a jamb";
    case EndKind::butt:
        return side + sawn + " against the crossing wall";
    case EndKind::step:
        return side + sawn + " against " + there.at + " of the foundation";
    case EndKind::pocket:
        return side + pocketed_words(piece, end, style);
    }
    return side;
}

std::vector<std::string> all_pocket_words(const Piece &piece, const HewnFaces &faces,
                                          const LengthStyle &style) {
    std::vector<PocketCut> pockets;
    for (const Cut &cut : piece.cuts)
        if (const auto *pocket = std::get_if<PocketCut>(&cut)) pockets.push_back(*pocket);
    std::stable_sort(pockets.begin(), pockets.end(),
                     [](const PocketCut &a, const PocketCut &b) { return a.x < b.x; });
    std::vector<std::string> words;
    for (const PocketCut &pocket : pockets)
        words.push_back(pocket_words(piece, faces, pocket, style));
    return words;
}

/// "2 rod bores", "1 hole as found".
std::string counted(std::size_t count, const std::optional<BoreUse> &use) {
    const std::string number = std::to_string(count) + " ", s = count == 1 ? "" : "s";
    if (use == BoreUse::hole) return number + "hole" + s + " as found";
    return number + roundlay::name_of(use) + " bore" + s;
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
    std::string text =
        counted(bores.size(), first.use) + " " + said(first.diameter, style) + " " + depth + " at ";
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
    const HewnFaces faces = hewn_faces(piece);
    std::vector<std::string> words;
    for (const Cut &cut : piece.cuts)
        if (const auto *face = std::get_if<FaceCut>(&cut); face && is_long(face->face))
            words.push_back(face_words(piece, *face, style));
    if (faces.under_footing() == Footing::touched) words.emplace_back(lines_first);
    for (const End end : {End::datum, End::far})
        if (std::string slant = slant_words(faces, end, style); !slant.empty())
            words.push_back(std::move(slant));
    words.push_back(end_words(piece, faces, End::datum, style));
    for (const auto &notch : notches_passed(piece))
        words.push_back(housed_words(faces, notch, style) + " at corner " + notch.front().corner);
    std::vector<Bore> bores;
    for (const Cut &cut : piece.cuts) {
        if (const auto *box = std::get_if<BoxCut>(&cut)) words.push_back(box_words(faces, *box, style));
        if (const auto *bore = std::get_if<Bore>(&cut)) bores.push_back(*bore);
        if (const auto *stick = std::get_if<RoundCut>(&cut)) words.push_back(stick_words(*stick, style));
        if (const auto *scope = std::get_if<ScopeCut>(&cut))
            words.push_back(scope_words(faces, *scope, style));
    }
    for (std::string &entry : all_pocket_words(piece, faces, style))
        words.push_back(std::move(entry));
    for (std::string &entry : all_bore_words(bores, style))
        words.push_back(std::move(entry));
    words.push_back(end_words(piece, faces, End::far, style));
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
