// Runs the independent checkers of Debian (poppler-utils, qpdf, libxml2-utils) on what was written.
#pragma once

#include <string>

namespace roundlay::test {

struct Ran {
    int code = -1;
    std::string out; ///< stdout and stderr together
};

/// By the shell. `input` is put into a file whose path replaces every `%` of the command.
Ran run_on(const std::string &input, const std::string &command, const std::string &suffix = ".pdf");

/// A page as pdftoppm shows it.
struct GreyImage {
    int width = 0, height = 0;
    std::string pixels; ///< one byte each, row by row from the top
    bool dark(int x, int y) const;
};
GreyImage page_image(const std::string &pdf, int page, int dots_per_inch);

} // namespace roundlay::test
