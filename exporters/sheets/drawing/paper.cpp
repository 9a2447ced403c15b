#include "exporters/sheets/drawing/paper.h"

#include "kernel/measure/measure.h"

#include <algorithm>
#include <array>
#include <cctype>

namespace roundlay::sheets {
namespace {

struct Entry {
    Paper paper;
    const char *name;
    PaperSize size;
};

constexpr PaperSize in_inches(double w, double h) {
    return {w * mm_per_inch, h * mm_per_inch};
}

// ISO 216 (second-hand) for the A series, ANSI/ASME Y14.1 (from memory) sizes A and B for the others.
constexpr std::array<Entry, 6> entries{{
    {Paper::a4, "A4", {210, 297}},
    {Paper::a3, "A3", {420, 297}},
    {Paper::a2, "A2", {594, 420}},
    {Paper::a1, "A1", {841, 594}},
    {Paper::letter, "Letter", in_inches(8.5, 11)},
    {Paper::tabloid, "Tabloid", in_inches(17, 11)},
}};

const Entry &entry(Paper paper) {
    return *std::find_if(entries.begin(), entries.end(), [&](const Entry &e) { return e.paper == paper; });
}

bool same_letters(std::string_view a, std::string_view b) {
    return std::equal(a.begin(), a.end(), b.begin(), b.end(),
                      [](unsigned char x, unsigned char y) { return std::tolower(x) == std::tolower(y); });
}

} // namespace

PaperSize size_of(Paper paper) {
    return entry(paper).size;
}

PaperSize turned(PaperSize size) {
    return {size.height, size.width};
}

std::string name_of(Paper paper) {
    return entry(paper).name;
}

std::optional<Paper> paper_named(std::string_view name) {
    for (const Entry &e : entries)
        if (same_letters(e.name, name)) return e.paper;
    return std::nullopt;
}

} // namespace roundlay::sheets
