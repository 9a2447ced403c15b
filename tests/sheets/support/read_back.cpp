#include "tests/sheets/support/read_back.h"

#include "exporters/sheets/pdf/pdf.h"
#include "kernel/document/document.h"
#include "tests/sheets/support/paper_compare.h"
#include "tests/sheets/support/paper_reader.h"

#include <cmath>
#include <numbers>

namespace roundlay::test {

using namespace sheets;

double precision(UnitSystem units) {
    return units == UnitSystem::metric ? 0.5 : 25.4 / 16 / 2;
}

double printed_precision(const Body &body, double half_digit) {
    double area_of_all = 0;
    for (const Face &face : body.hewn.faces)
        area_of_all += area(body.hewn, face);
    double bores = 0;
    for (const Bore &b : body.bores)
        bores += std::numbers::pi * (b.diameter / 2 * (b.z_to - b.z_from) + b.diameter * b.diameter / 4);
    return (area_of_all + bores) * half_digit;
}

std::string read_back(const LaidShell &shell, const Model &model, const CutSheetOptions &options,
                      std::size_t &sheets) {
    const Piece &piece = shell.layout.pieces[model.pieces[0]];
    const Body body = body_of(piece);
    const double half_digit = precision(shell.shell.units);
    Book book;
    book.created = 0;
    book.sheets = cut_sheet(shell.shell, shell.layout, model, body, options);
    sheets += book.sheets.size();
    const Piece read = test::piece_on_paper(test::words_of_pdf(write_pdf(book)));
    const Body again = body_of(read);
    std::string wrong = test::differences(piece, read, half_digit);
    if (std::abs(again.volume - body.volume) > printed_precision(body, half_digit)) wrong += " volume";
    return wrong;
}

} // namespace roundlay::test
