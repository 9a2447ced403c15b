#include "kernel/layout/pieces/log_notes.h"

#include "kernel/layout/text.h"

#include <algorithm>

namespace roundlay {

namespace {

void note(Piece &p, const OwnLog &own) {
    if (own.sizes.finish) p.finish = *own.sizes.finish;
    if (own.fabric) p.fabric = *own.fabric;
    if (own.bow) p.bow = own.bow->mm();
    if (!own.mark.empty()) p.mark = own.mark;
    if (!own.species.empty()) p.species = own.species;
    if (!own.note.empty()) p.note = own.note;
}

} // namespace

void note_own(const Shell &shell, const std::string &wall, Piece &piece) {
    if (shell.notch.kind == NotchKind::saddle) piece.finish = Finish::peeled;
    if (shell.logs.finish) piece.finish = *shell.logs.finish;
    for (const bool of_piece : {false, true})
        for (const OwnLog &own : shell.own_logs)
            if (own.wall == wall && own.round == piece.round && own.piece.has_value() == of_piece &&
                own.piece.value_or(piece.number) == piece.number)
                note(piece, own);
}

Findings check_own_pieces(const Shell &shell, const Plan &plan, const Indexed<Piece> &pieces) {
    Findings findings;
    for (std::size_t i = 0; i < shell.own_logs.size(); ++i) {
        const OwnLog &own = shell.own_logs[i];
        if (!own.piece) continue;
        const auto count = std::ranges::count_if(pieces, [&](const Piece &p) {
            return p.round == own.round && plan.walls[p.wall].name == own.wall;
        });
        if (*own.piece <= count) continue;
        findings.push_back(
            {Weight::error,
             "log-nowhere",
             round_place(own.wall, own.round),
             count == 1 ? said("something is stated of piece %1, but this round has %2 piece, counted from "
                               "the left",
                               *own.piece, count)
                        : said("something is stated of piece %1, but this round has %2 pieces, counted "
                               "from the left",
                               *own.piece, count),
             {},
             subject("log", i, "piece")});
    }
    return findings;
}

} // namespace roundlay
