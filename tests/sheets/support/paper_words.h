// The words of a PDF and where they stand, as an independent reader (pdftotext) finds them.
#pragma once

#include <string>
#include <vector>

namespace roundlay::test {

/// One word of a page; a number in feet, inches and fractions is one word too.
struct PaperWord {
    std::string text;
    double x0 = 0, y0 = 0, x1 = 0, y1 = 0; ///< millimetres from the page's upper left corner
    int page = 0;                          ///< from 1
    bool upright = false;                  ///< reads from below

    double x() const { return (x0 + x1) / 2; }
    double y() const { return (y0 + y1) / 2; }
    bool is_count() const;  ///< digits only
    bool is_length() const; ///< digits only, or an imperial length
    int count() const;
    double mm() const; ///< of a length; digits alone are millimetres
};

std::vector<PaperWord> words_of_pdf(const std::string &pdf);

} // namespace roundlay::test
