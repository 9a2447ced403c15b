#include "exporters/lists/cut_words.h"

#include "exporters/lists/measured_words.h"
#include "kernel/layout/cuts/match.h"
#include "kernel/layout/fastenings/bore_marks.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace roundlay {

namespace {

std::string side_of(End end, const Voice &voice) {
    return end == End::datum ? voice.say("left end") : voice.say("right end");
}

/// A piece's cuts as they are told together.
class Sorted {
  public:
    Sorted(const Piece &piece, const HewnFaces &log, const Voice &voice) : log_(log), voice_(voice) {
        for (const Cut &cut : piece.cuts)
            match(cut, *this);
        std::stable_sort(pockets.begin(), pockets.end(),
                         [](const PocketCut &a, const PocketCut &b) { return a.x < b.x; });
        std::sort(passed.begin(), passed.end(),
                  [](const auto &a, const auto &b) { return a.front().x_from < b.front().x_from; });
    }

    void operator()(const FaceCut &cut) { faces.push_back(cut); }
    void operator()(const RoundCut &cut) { along.push_back(stick_words(cut, voice_)); }
    void operator()(const SeamCut &cut) {
        if (!cut.runs_on) return at(cut.end).seams.push_back(cut);
        const auto same = std::find_if(passed.begin(), passed.end(),
                                       [&](const auto &n) { return n.front().corner == cut.corner; });
        if (same == passed.end())
            passed.push_back({cut});
        else
            same->push_back(cut);
    }
    void operator()(const ScopeCut &cut) {
        scoped = true;
        along.push_back(scope_words(log_, cut, voice_));
    }
    void operator()(const BoxCut &cut) { along.push_back(box_words(log_, cut, voice_)); }
    void operator()(const PocketCut &cut) { pockets.push_back(cut); }
    void operator()(const CheekCut &cut) { at(cut.end).tailed = true; }
    void operator()(const MendCut &cut) { along.push_back(mend_words(log_, cut, voice_)); }
    void operator()(const Bore &cut) { bores.push_back(cut); }

    struct AtEnd {
        std::vector<SeamCut> seams;
        bool tailed = false;
    };
    const AtEnd &at(End end) const { return end == End::datum ? datum_ : far_; }

    std::vector<FaceCut> faces;
    std::vector<std::vector<SeamCut>>
        passed;                     ///< notches of walls that it runs past, corner by corner from the left
    std::vector<std::string> along; ///< words of what is told by itself, in cutting order
    std::vector<PocketCut> pockets; ///< from the left
    std::vector<Bore> bores;
    bool scoped = false;

  private:
    AtEnd &at(End end) { return end == End::datum ? datum_ : far_; }

    const HewnFaces &log_;
    const Voice &voice_;
    AtEnd datum_, far_;
};

std::string sides_of(const std::vector<SeamCut> &seams, const Voice &voice) {
    const auto on = [&](Side side) {
        return std::any_of(seams.begin(), seams.end(), [&](const SeamCut &s) { return s.side == side; });
    };
    if (on(Side::top) && on(Side::under)) return voice.say("on top and underside");
    return on(Side::top) ? voice.say("on top") : voice.say("on the underside");
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

std::string housed_words(const HewnFaces &faces, const std::vector<SeamCut> &seams, const Voice &voice) {
    const CutStretch at = stretch_of(faces, seams);
    return voice.say("housed notch %1 from %2 to %3", sides_of(seams, voice), place_words(at.from, voice),
                     place_words(at.to, voice));
}

/// A shoulder is measured from the log's end on each side face: at a slanting end only there are both.
std::string notch_words(const HewnFaces &faces, End end, const std::vector<SeamCut> &seams,
                        const Voice &voice) {
    const CutStretch at = stretch_of(faces, seams);
    const bool datum = end == End::datum;
    if (!(datum ? at.at_datum : at.at_far)) return housed_words(faces, seams, voice);
    const SawLine &saw = datum ? faces.datum_end : faces.far_end, &neck = datum ? at.to : at.from;
    const SawLine shoulder{std::abs(neck.outside - saw.outside), std::abs(neck.inside - saw.inside)};
    return voice.say("tail cut %1, shoulder %2 from the end", sides_of(seams, voice),
                     place_words(shoulder, voice));
}

/// An end of a timber that lies in a wall or another timber.
std::string pocketed_words(const Piece &piece, const Sorted &cuts, End end, const Voice &voice) {
    const PieceEnd &there = end == End::datum ? piece.datum : piece.far;
    const LengthAmount bearing =
        in_mm(end == End::datum ? there.shoulder : piece.blank.length - there.shoulder);
    return cuts.at(end).tailed ? voice.say("tailed, %1 of it in the pocket", bearing)
                               : voice.say("square, %1 of it in the pocket", bearing);
}

/// How the end is cut, whichever it is.
std::string cut_of_end(const Piece &piece, const Sorted &cuts, const HewnFaces &faces, End end,
                       const Voice &voice) {
    const std::vector<SeamCut> &seams = cuts.at(end).seams;
    if (!seams.empty()) return notch_words(faces, end, seams, voice);
    const PieceEnd &there = end == End::datum ? piece.datum : piece.far;
    const std::string sawn =
        slant_words(faces, end, voice).empty() ? voice.say("square") : voice.say("at a slant");
    switch (there.kind) {
    case EndKind::corner:
        return cuts.scoped ? voice.say("%1, past the corner", sawn) : sawn;
    case EndKind::jamb:
        return voice.say("%1 at a jamb", sawn);
    case EndKind::butt:
        return voice.say("%1 against the crossing wall", sawn);
    case EndKind::step:
        return voice.say("%1 against %2 of the foundation", sawn, voice.name(there.at));
    case EndKind::let_in:
        return voice.say("%1 in the log that it mends", sawn);
    case EndKind::lap:
        return voice.say("%1, lapped", sawn);
    case EndKind::pocket:
        break;
    }
    return pocketed_words(piece, cuts, end, voice);
}

std::string end_words(const Piece &piece, const Sorted &cuts, const HewnFaces &faces, End end,
                      const Voice &voice) {
    return voice.say("%1: %2", side_of(end, voice), cut_of_end(piece, cuts, faces, end, voice));
}

/// "2 rod bores", "1 hole as found".
std::string counted(std::size_t count, const std::optional<BoreUse> &use, const Voice &voice) {
    const bool one = count == 1;
    if (!use) return one ? voice.say("%1 peg bore", count) : voice.say("%1 peg bores", count);
    switch (*use) {
    case BoreUse::bolt:
        return one ? voice.say("%1 bolt bore", count) : voice.say("%1 bolt bores", count);
    case BoreUse::rod:
        return one ? voice.say("%1 rod bore", count) : voice.say("%1 rod bores", count);
    case BoreUse::wire:
        return one ? voice.say("%1 wiring bore", count) : voice.say("%1 wiring bores", count);
    case BoreUse::hole:
        break;
    }
    return one ? voice.say("%1 hole as found", count) : voice.say("%1 holes as found", count);
}

bool alike(const Bore &a, const Bore &b, const Voice &voice) {
    return a.use == b.use && a.through == b.through && a.from_top == b.from_top &&
           voice.length(a.diameter) == voice.length(b.diameter) &&
           (a.through || voice.length(a.z_to - a.z_from) == voice.length(b.z_to - b.z_from));
}

std::string bore_words(const Bore &first, const std::vector<Bore> &bores, const Voice &voice) {
    const LengthAmount deep = in_mm(first.z_to - first.z_from);
    const std::string depth = first.through    ? voice.say("right through")
                              : first.from_top ? voice.say("%1 deep from the top", deep)
                                               : voice.say("%1 deep from the underside", deep);
    std::string places;
    for (const Bore &bore : bores)
        places += (places.empty() ? "" : ", ") + voice.length(bore.x);
    return voice.say("%1 %2 %3 at %4", counted(bores.size(), first.use, voice), in_mm(first.diameter), depth,
                     places);
}

/// Bores of one kind share an entry; kinds in the order in which they first come.
std::vector<std::string> all_bore_words(std::vector<Bore> bores, const Voice &voice) {
    std::stable_sort(bores.begin(), bores.end(), [](const Bore &a, const Bore &b) { return a.x < b.x; });
    std::vector<std::string> words;
    while (!bores.empty()) {
        const Bore first = bores.front();
        const auto others = std::stable_partition(bores.begin(), bores.end(),
                                                  [&](const Bore &b) { return alike(first, b, voice); });
        words.push_back(bore_words(first, {bores.begin(), others}, voice));
        bores.erase(bores.begin(), others);
    }
    return words;
}

} // namespace

std::vector<std::string> cut_words(const Piece &piece, const Voice &voice) {
    const HewnFaces faces = hewn_faces(piece);
    const Sorted cuts(piece, faces, voice);
    std::vector<std::string> words;
    for (const FaceCut &face : cuts.faces)
        if (std::string hewn = is_long(face.face) ? face_words(piece, face, voice) : ""; !hewn.empty())
            words.push_back(std::move(hewn));
    if (faces.under_footing() == Footing::touched)
        words.push_back(
            voice.say("snap the lowest line and mark every cut from it before the first cut, which "
                      "takes it away"));
    for (const End end : {End::datum, End::far})
        if (std::string slant = slant_words(faces, end, voice); !slant.empty())
            words.push_back(std::move(slant));
    words.push_back(end_words(piece, cuts, faces, End::datum, voice));
    for (const auto &notch : cuts.passed)
        words.push_back(
            voice.say("%1 at corner %2", housed_words(faces, notch, voice), notch.front().corner));
    words.insert(words.end(), cuts.along.begin(), cuts.along.end());
    for (const PocketCut &pocket : cuts.pockets)
        words.push_back(pocket_words(piece, faces, pocket, voice));
    for (std::string &entry : all_bore_words(cuts.bores, voice))
        words.push_back(std::move(entry));
    words.push_back(end_words(piece, cuts, faces, End::far, voice));
    return words;
}

std::string place_of(const PieceEnd &end, const Voice &voice) {
    switch (end.kind) {
    case EndKind::corner:
        return voice.say("corner %1", end.at);
    case EndKind::jamb:
        return end.at.empty() ? voice.say("jamb") : voice.say("jamb of %1", voice.name(end.at));
    case EndKind::butt:
        return voice.say("against the wall at corner %1", end.at);
    case EndKind::step:
        return voice.say("against %1 of the foundation", voice.name(end.at));
    case EndKind::lap:
        return voice.say("lapped with %1", end.at);
    case EndKind::let_in:
    case EndKind::pocket:
        break;
    }
    return voice.say("in %1", end.at);
}

std::string new_wood_words(const Piece &piece, const Voice &voice) {
    const bool lapped = piece.datum.kind == EndKind::lap || piece.far.kind == EndKind::lap;
    return lapped ? voice.say("new end of a log") : voice.say("piece let into a log");
}

std::string kind_of(const Layout &layout, const Piece &piece, const Voice &voice) {
    if (piece.timber) return voice.word(name_of(layout.timbers.at(*piece.timber).use));
    if (piece.mends) return new_wood_words(piece, voice);
    if (piece.island) return voice.say("island");
    const bool full = piece.log == LogKind::full;
    if (piece.round == 1) return full ? voice.say("sill log") : voice.say("sill half log");
    if (piece.round == layout.rounds) return full ? voice.say("plate log") : voice.say("plate half log");
    return full ? voice.say("log") : voice.say("half log");
}

} // namespace roundlay
