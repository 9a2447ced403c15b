// The words of a cut sheet's tables, read into the cuts that they describe.
#pragma once

#include "kernel/layout/layout.h"
#include "tests/sheets/support/paper_views.h"

#include <string>
#include <vector>

namespace roundlay::test {

/// What the uncut log reaches, as the sheet says it: hewn faces at a slant, or a round stick.
struct PaperLog {
    double length = 0, width = 0, height = 0;
    struct Face {
        double at_datum = 0, per_mm = 0;
        double at(double x) const { return at_datum + per_mm * x; }
    };
    Face top, under, outside, inside;
    Face line; ///< that heights are measured from
    RoundCut stick;
    bool round = false;

    double lowest(double x) const;
    double highest(double x) const;
    double outermost(double x) const;
    double innermost(double x) const;
};

/// One line of the table of cuts.
struct PaperStep {
    std::string mark, words, along, across;
};

std::vector<PaperStep> steps_on(const std::vector<PaperWord> &words);
/// The level line, in words: how high over the under face, or over the stick's lowest line.
struct PaperLine {
    bool axis = false, over_stick = false; ///< through the stick's heart; told over its lowest line
    bool over_blank = false;               ///< told over the blank, which is hewn to tapers afterwards
    double datum = 0, far = 0;
};
PaperLine line_on(const std::vector<PaperWord> &words);
PaperLine line_called(const std::string &words); ///< throws std::runtime_error where that is none
/// Told over the under face as it is hewn, or over the lowest line of a stick that does not reach the
/// blank's.
void set_line(PaperLog &log, const PaperLine &line);
/// Outside and inside of everything that is not square across.
std::vector<PaperPlace> slants_on(const std::vector<PaperWord> &words);

// Each adds the cuts of such a line; false where the line is of another kind.
bool add_taper(const PaperStep &step, PaperLog &log, std::vector<Cut> &cuts);
/// The level line is told over the face that the taper leaves.
bool add_tapers(const PaperStep &step, const PaperLine &line, PaperLog &log, std::vector<Cut> &cuts);
bool holds_flats(const PaperStep &step, const PaperLog &log);
bool add_stick(const PaperStep &step, const PaperLine &line, PaperLog &log, std::vector<Cut> &cuts);
bool add_slanted_end(const PaperStep &step, const PaperLog &log, std::vector<Cut> &cuts);
bool add_seam(const PaperStep &step, const PaperLog &log, const std::vector<PaperPlace> &slants,
              const PaperViews &views, std::vector<Cut> &cuts);
bool add_scope(const PaperStep &step, const PaperLog &log, std::vector<Cut> &cuts);
bool add_box(const PaperStep &step, const PaperLog &log, std::vector<Cut> &cuts);
bool add_mend(const PaperStep &step, const PaperLog &log, std::vector<Cut> &cuts);
bool add_tail(const PaperStep &step, const PaperLog &log, std::vector<Cut> &cuts);

/// A bore as it is printed: `use` is "peg", "rod" …, `depth` empty where it goes through.
struct PrintedBore {
    std::string use, depth;
    double x = 0, y = 0, diameter = 0;
    bool from_top = true;
};
/// From the face that it is bored from, in wood that a long groove among `cuts` has hollowed.
void add_bore(const PrintedBore &printed, const PaperLog &log, std::vector<Cut> &cuts);

/// A pocket's cells from "Middle" to "Up to"; a bed or top that is no number is where the wood ends.
PocketCut pocket_read(const std::vector<std::string> &cells, const PaperLog &log);

void add_pockets(const std::vector<PaperWord> &words, const PaperLog &log, std::vector<Cut> &cuts);
void add_bores(const std::vector<PaperWord> &words, const PaperLog &log, std::vector<Cut> &cuts);

} // namespace roundlay::test
