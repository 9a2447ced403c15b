// What is added to a PDF once it is drawn, said in plain values: the only place that sees qpdf, and one that
// Clang 14 takes in C++17 only (that library's header in Debian 12), so nothing here asks for more.
#pragma once

#include <array>
#include <cstddef>
#include <string>
#include <vector>

namespace roundlay::sheets::pdf {

/// A place on a page that leads to another page.
struct PageLink {
    std::size_t page;             ///< that it lies on, from 0
    std::array<double, 4> box_mm; ///< left, bottom, right, top
    std::size_t target;           ///< page that it leads to
};

/// Adds the links and the document's language (BCP 47), asks viewers to show the title and printers not to
/// scale, and packs the file. Throws std::runtime_error naming the cause, also where qpdf would have to mend
/// what it was given.
std::string packed(const std::string &pdf, const std::vector<PageLink> &links, const std::string &language);

} // namespace roundlay::sheets::pdf
