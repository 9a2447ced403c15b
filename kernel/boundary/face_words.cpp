#include "kernel/boundary/face_words.h"

#include "kernel/layout/cuts/asked.h"
#include "kernel/layout/cuts/match.h"
#include "kernel/layout/fastenings/cut_marks.h"

namespace roundlay {

namespace {

const char *word_of(FacePart part) {
    switch (part) {
    case FacePart::top:
        return "top";
    case FacePart::under:
        return "under";
    case FacePart::outside:
        return "outside";
    case FacePart::inside:
        return "inside";
    case FacePart::datum_end:
        return "datum end";
    case FacePart::far_end:
        return "far end";
    case FacePart::wane:
        return "wane";
    case FacePart::seam:
        return "seam";
    case FacePart::shoulder:
        return "shoulder";
    case FacePart::scope:
        return "saddle"; // or the groove: its cut says which
    case FacePart::cheek:
        return "cheek";
    case FacePart::sill:
        return "sill";
    case FacePart::head:
        return "head";
    case FacePart::jamb:
        return "jamb";
    case FacePart::bottom:
        return "bottom";
    case FacePart::side:
        return "side";
    case FacePart::seat:
        return "seat";
    case FacePart::bed:
        return "bed";
    case FacePart::back:
        return "back";
    case FacePart::ceiling:
        return "ceiling";
    case FacePart::end:
        return "end";
    case FacePart::bore:
        break;
    }
    return ""; // its mark says all
}

/// A timber's sides are its left and right ones: it has no outside.
std::string word_of(FacePart part, const Piece &piece) {
    if (part == FacePart::outside || part == FacePart::inside)
        return side_word(piece, part == FacePart::inside);
    return word_of(part);
}

/// What sheets call the round face of that cut.
const char *scope_word(const Cut &cut) {
    return match(
        cut, [](const ScopeCut &scope) { return scope.use == ScopeUse::groove ? "groove" : "saddle"; },
        // they leave no such face
        giving<FaceCut, RoundCut, SeamCut, BoxCut, PocketCut, CheekCut, MendCut, Bore>(
            word_of(FacePart::scope)));
}

/// The corner that it is cut at, else what it is cut for.
std::string_view made_for(const Cut &cut) {
    const std::string_view corner = corner_of(cut);
    return corner.empty() ? neighbour_of(cut).name : corner;
}

void add(std::string &name, std::string_view word) {
    if (word.empty()) return;
    if (!name.empty()) name += ' ';
    name += word;
}

} // namespace

FaceNames::FaceNames(const Piece &piece, bool alone)
    : piece_(piece), marks_(cut_marks(piece)), alone_(alone) {}

std::string FaceNames::name(const MadeBy &made) const {
    std::string name = made.cut ? marks_[*made.cut] : "";
    add(name, made.cut && made.part == FacePart::scope ? scope_word(piece_.cuts[*made.cut])
                                                       : word_of(made.part, piece_));
    if (made.cut && alone_) add(name, made_for(piece_.cuts[*made.cut]));
    return name.empty() ? "bore" : name; // of a body that was made by hand
}

std::vector<std::string> face_names(const Piece &piece, const Boundary &border, bool alone) {
    const FaceNames all(piece, alone);
    std::vector<std::string> names;
    for (const MadeBy &made : made_by(piece, border))
        names.push_back(all.name(made));
    return names;
}

std::vector<std::string> face_names(const Piece &piece, const std::vector<std::optional<FaceSeen>> &faces,
                                    bool alone) {
    const FaceNames all(piece, alone);
    std::vector<std::string> names;
    for (const std::optional<FaceSeen> &face : faces)
        names.push_back(face ? all.name(made_by(piece, *face)) : "");
    return names;
}

} // namespace roundlay
