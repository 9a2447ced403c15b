// Pieces: what each is cut from and what is cut from it.
#pragma once

#include "kernel/layout/cuts/blank.h"
#include "kernel/layout/cuts/cut.h"
#include "kernel/layout/walls.h"
#include "kernel/shell/shell.h"

#include <string>
#include <vector>

namespace roundlay {

enum class LogKind { full, half_start, half_finish };

/// How an end of a piece is finished.
enum class EndKind {
    corner, ///< a tail (or housed notch) at a corner
    jamb,   ///< square, at an opening
    butt,   ///< square, against the crossing wall (a half log too thin for a tail)
    step,   ///< square, against a step of the foundation
    pocket, ///< of a floor's timber: let into a wall or another timber
    let_in, ///< square, of new wood in a log that it mends
    lap     ///< lapped: of a mended log or of its new end
};

struct PieceEnd {
    EndKind kind = EndKind::jamb;
    std::string at;      ///< corner ("AB"), opening name, name of the step, or tag of the wood that it joins
    double shoulder = 0; ///< x of the shoulder; the blank's end where there is none
};

struct Model;
struct Timber;

struct Piece {
    /// Wall-round-piece, e.g. "C-07-2": unique, stable under edits elsewhere. Of a floor: "G-J03". Of new
    /// wood in a log: "C-07-2-M1".
    std::string tag;
    std::optional<Index<Timber>> timber; ///< none: a log of a wall
    Index<WallPlace> wall;               ///< of a floor's timber: the wall that its floor starts in
    int round = 1;                       ///< 1 = the sill logs
    int number = 1;                      ///< in the wall's round, from the left seen from outside
    LogKind log = LogKind::full;
    bool island = false; ///< stands between two openings
    Frame frame;         ///< piece frame in the world; x along the log, y to the inside face, z up
    Blank blank;
    std::vector<Cut> cuts; ///< in cutting order: hewn faces, seam cuts, box cuts, bores
    PieceEnd datum, far;
    bool butt_at_datum = true; ///< butt (thick end) at the datum end
    /// Tags in the same wall that it meets through pegs or a gap; of a floor's timber: what it lies on.
    std::vector<std::string> above, below;
    int raise = 0; ///< place in the raise, 1 = first; of new wood in a mended log the log's
    Finish finish = Finish::hewn;
    Fabric fabric = Fabric::newly_cut;
    std::string mark;                  ///< what is written on its log, in the yard or in the house it lies in
    double bow = 0;                    ///< as measured on the whole log
    std::string note;                  ///< as stated of its log; of new wood in a mended one, of the mend
    std::optional<Index<Piece>> mends; ///< of new wood in a mended log: what stays of that log
    std::vector<std::size_t> mended;   ///< which of Shell::mends are cut into it, or the one that it is for
    std::string species;               ///< of its wood where that is stated of it; else empty: the shell's
    Index<Model> model;                ///< equal pieces share one
};

/// Is it wood of that wall? (A floor's timbers are of none.)
inline bool is_log_of(const Piece &piece, Index<WallPlace> wall) {
    return !piece.timber && piece.wall == wall;
}

/// Is it a log, or what openings and mends leave of one? Else a floor's timber, or new wood in a log.
inline bool is_log(const Piece &piece) {
    return !piece.timber && !piece.mends;
}

/// Does it come out of the house that was found, not out of new wood?
inline bool is_old_wood(const Piece &piece) {
    return piece.fabric == Fabric::kept || piece.fabric == Fabric::patched;
}

/// Of new wood in a mended log what stays of that log, with which it is put together before it is lifted;
/// else the piece itself.
inline Index<Piece> log_with(const Indexed<Piece> &pieces, Index<Piece> piece) {
    return pieces[piece].mends.value_or(piece);
}

/// "inside" or "outside"; a floor's timber has no outside: its two side faces are the left and the right one,
/// seen from its datum end.
const char *side_word(const Piece &piece, bool inside);

} // namespace roundlay
