#include "exporters/sheets/drawing/text.h"
#include "exporters/sheets/form/key_figure.h"
#include "exporters/sheets/form/key_marks.h"

namespace roundlay::sheets {
namespace {

// On paper: the arris that is measured from at x = 0, and the opening beside it.
constexpr double near = 46, far = 86, sill = 10, head = 34, plane = 22;

void add_wall(Board &board) {
    add_stroke(board, {0, 0}, {0, head + 12}, Line::visible);
    add_stroke(board, {0, 0}, {far + 34, 0}, Line::visible);
    board.add(Path{{{near, sill}, {far, sill}, {far, head}, {near, head}}, true, Line::visible, ""});
    add_stroke(board, {-6, plane}, {near, plane}, Line::centre);
    add_stroke(board, {far, plane}, {far + 34, plane}, Line::centre);
}

/// From the arris to the two jambs, above the head and under the sill.
void add_jambs(Board &board) {
    add_measure(board, {0, sill - 1}, {near, sill - 1}, "1");
    add_measure(board, {0, head + 1}, {near, head + 1}, "2");
    add_measure(board, {0, sill - 6}, {far, sill - 6}, "3");
    add_measure(board, {0, head + 7}, {far, head + 7}, "4");
    for (const double x : {near, far}) {
        add_stroke(board, {x, head}, {x, head + (x > near ? 8 : 2)});
        add_stroke(board, {x, sill}, {x, sill - (x > near ? 7 : 2)});
    }
}

void add_sizes(Board &board) {
    add_measure(board, {near, head - 6}, {far, head - 6}, "5");
    add_measure(board, {near + 12, sill}, {near + 12, head}, "6");
    add_stroke(board, {far, sill}, {far + 14, sill});
    add_stroke(board, {far, head}, {far + 24, head});
    add_measure(board, {far + 12, plane}, {far + 12, sill}, "7");
    add_measure(board, {far + 22, plane}, {far + 22, head}, "8");
}

} // namespace

Block key_of_opening(const Words &words) {
    Board board;
    add_wall(board);
    add_jambs(board);
    add_sizes(board);
    board.add(lettered(words.say("outside face"), {0, head + 15}, least_lettering, true, Role::caption));
    return figure_block(std::move(board));
}

} // namespace roundlay::sheets
