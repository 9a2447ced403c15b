// Sizes of paper.
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace roundlay::sheets {

enum class Paper { a4, a3, a2, a1, letter, tabloid };

/// A4 and Letter lie upright, the larger ones on their long side (ISO 5457, from memory).
struct PaperSize {
    double width = 0, height = 0; ///< millimetres
    bool operator==(const PaperSize &) const = default;
};

PaperSize size_of(Paper paper);
PaperSize turned(PaperSize size);
std::string name_of(Paper paper);                        ///< "A3", "Letter", "Tabloid"
std::optional<Paper> paper_named(std::string_view name); ///< upper or lower case

} // namespace roundlay::sheets
