#include "kernel/layout/pieces/log_notes.h"

namespace roundlay {

namespace {

void note(Piece &p, const OwnLog &own) {
    if (own.sizes.finish) p.finish = *own.sizes.finish;
    if (own.fabric) p.fabric = *own.fabric;
    if (own.bow) p.bow = own.bow->mm();
    if (!own.mark.empty()) p.mark = own.mark;
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

} // namespace roundlay
