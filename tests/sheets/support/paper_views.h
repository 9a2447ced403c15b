// The faces on a cut sheet, read by where their numbers stand.
#pragma once

#include "tests/sheets/support/paper_words.h"

#include <string>
#include <vector>

namespace roundlay::test {

/// A place along the log as the sheet gives it: on the outside and on the inside face.
struct PaperPlace {
    double outside = 0, inside = 0;
};

class PaperViews {
  public:
    /// `length` and `height` of the blank.
    PaperViews(const std::vector<PaperWord> &words, double length, double height);

    /// Heights that may belong to the edge of a cut there: beside it in the wood on that side (-1 toward the
    /// datum end, 1 toward the far), or off the end of the log.
    std::vector<double> heights(const PaperPlace &place, bool outside, int side) const;

  private:
    /// One stretch of the log as it is drawn: four faces under one another.
    struct Stretch {
        int page = 0;
        double y0 = 0, y1 = 0;         ///< on that page, millimetres from its top
        double datum_x = 0, far_x = 0; ///< where its ends stand, if it shows them
        bool has(const PaperWord &w) const { return w.page == page && w.y() > y0 && w.y() < y1; }
    };
    /// A running dimension over or under the outside face.
    struct Mark {
        std::size_t stretch = 0;
        double x = 0;     ///< on paper
        double value = 0; ///< along the log
    };
    struct Row {
        double top = 0, bottom = 0; ///< of the outline on paper
    };

    const PaperWord &find(const std::string &text) const;
    double scale() const;
    void find_stretches();
    void read_marks();
    Row row(std::size_t stretch, bool outside) const;
    std::vector<PaperWord> near(std::size_t stretch, const Row &row) const;
    void add_beside(std::vector<double> &all, double x, bool outside, int side) const;
    void add_off_end(std::vector<double> &all, bool outside, int side) const;

    const std::vector<PaperWord> &words_;
    double length_, height_;
    double scale_ = 0; ///< paper per wood
    std::vector<Stretch> stretches_;
    std::vector<Mark> marks_;
};

} // namespace roundlay::test
