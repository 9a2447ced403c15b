#include "exporters/registry/one_piece.h"

#include "exporters/registry/paper.h"
#include "exporters/sheets/pdf/pdf.h"
#include "exporters/step/step.h"

namespace roundlay {

namespace {

const Piece &piece_at(const ExportJob &job, Index<Piece> piece) {
    return job.layout.pieces.at(piece);
}

} // namespace

std::string one_piece_step(const ExportJob &job, Index<Piece> piece) {
    const Piece &p = piece_at(job, piece);
    return write_piece_step(job.shell, job.layout, p, job.bodies.at(p.model));
}

std::string one_piece_pdf(const ExportJob &job, Index<Piece> piece) {
    const Index<Model> model = piece_at(job, piece).model;
    sheets::Book book;
    const Said what = said("the cut sheet of %1", piece_at(job, piece).tag);
    book.subject = voice_of(job).words(what);
    book.title = paper_title(job, what);
    book.language = tag_of(job.options.language);
    book.sheets = *cut_sheet_of(job, model);
    return sheets::write_pdf(book);
}

} // namespace roundlay
