#include "tests/sheets/support/paper_reader.h"

#include "tests/sheets/support/paper_cuts.h"
#include "tests/sheets/support/paper_table.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace roundlay::test {
namespace {

/// "Blank: length, width, height" and three numbers; of a log that lies at a slant "Level box around it",
/// which its sheet is measured in.
PaperLog blank_on(const std::vector<PaperWord> &words) {
    auto start =
        std::find_if(words.begin(), words.end(), [](const PaperWord &w) { return w.text == "Level"; });
    if (start == words.end())
        start =
            std::find_if(words.begin(), words.end(), [](const PaperWord &w) { return w.text == "Blank:"; });
    if (start == words.end()) throw std::runtime_error("the paper does not say what the blank is");
    std::vector<PaperWord> line;
    for (const PaperWord &w : words)
        if (w.page == start->page && w.y() > start->y() - 0.6 && w.y() < start->y() + 4.3 &&
            w.x0 > start->x1 && w.x0 < start->x0 + 115 && w.is_length())
            line.push_back(w); // they may be wrapped into a second line
    std::sort(line.begin(), line.end(), [](const PaperWord &a, const PaperWord &b) {
        return std::abs(a.y() - b.y()) > 1 ? a.y() < b.y() : a.x0 < b.x0;
    });
    PaperLog log;
    log.length = line.at(0).mm();
    log.width = line.at(1).mm();
    log.height = line.at(2).mm();
    log.top = {log.height, 0};
    log.inside = {log.width, 0};
    return log;
}

/// Says what is made of wood elsewhere in a list of its own.
bool is_pointer(const PaperStep &step) {
    return step.mark == "K" || step.words.starts_with("Bore ") || step.words.starts_with("As found: ");
}

} // namespace

Piece piece_on_paper(const std::vector<PaperWord> &words) {
    PaperLog log = blank_on(words);
    const PaperLine line = line_on(words);
    const PaperViews views(words, log.length, log.height);
    const std::vector<PaperPlace> slants = slants_on(words);
    Piece piece;
    piece.blank = {log.length, log.width, log.height};
    set_line(log, line);
    for (const PaperStep &step : steps_on(words)) {
        if (is_pointer(step)) continue;
        const bool known = holds_flats(step, log) || add_tapers(step, line, log, piece.cuts) ||
                           add_stick(step, line, log, piece.cuts) || add_slanted_end(step, log, piece.cuts) ||
                           add_seam(step, log, slants, views, piece.cuts) ||
                           add_scope(step, log, piece.cuts) || add_box(step, log, piece.cuts) ||
                           add_mend(step, log, piece.cuts) || add_tail(step, log, piece.cuts);
        if (!known) throw std::runtime_error("what is \"" + step.words + "\"?");
    }
    add_pockets(words, log, piece.cuts);
    add_bores(words, log, piece.cuts);
    return piece;
}

} // namespace roundlay::test
