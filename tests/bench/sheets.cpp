// Times the paper of a house of about 160 pieces against writing the same strokes with no sheet behind them:
// what laying out a careful drawing costs beside the bare ink.

#include "exporters/sheets/book/book.h"
#include "exporters/sheets/drawing/clash.h"
#include "exporters/sheets/pdf/pdf.h"
#include "kernel/layout/lay_out.h"
#include "kernel/layout/wood/interference.h"
#include "tests/bench/shells.h"

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <vector>

using namespace roundlay;
using namespace roundlay::sheets;

namespace {

double seconds_since(std::chrono::steady_clock::time_point start) {
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
}

/// The same strokes in the same places, with nothing else.
std::vector<Sheet> strokes_only(const std::vector<Sheet> &sheets) {
    std::vector<Sheet> all;
    for (const Sheet &sheet : sheets) {
        Sheet bare;
        bare.size = sheet.size;
        for (const Item &item : sheet.items)
            for (const auto &[from, to] : strokes_of(item))
                bare.items.emplace_back(Path{{from, to}, false, Line::visible, ""});
        all.push_back(std::move(bare));
    }
    return all;
}

std::size_t size_of_book(const std::vector<Sheet> &sheets) {
    Book book;
    book.created = 0;
    book.sheets = sheets;
    return write_pdf(book).size();
}

/// What one more sheet of its kind adds to a book: no fonts, which are there once.
std::size_t median_sheet(const std::vector<Sheet> &sheets) {
    std::vector<std::size_t> sizes;
    for (const Sheet &sheet : sheets)
        sizes.push_back(size_of_book({sheet, sheet}) - size_of_book({sheet}));
    std::sort(sizes.begin(), sizes.end());
    return sizes[sizes.size() / 2];
}

} // namespace

int main() {
    const Shell shell = bench::house();
    const Layout layout = lay_out(shell);
    const Bodies bodies = bodies_of(layout);
    const SheetOptions options;

    auto start = std::chrono::steady_clock::now();
    const std::vector<Sheet> sheets = composed(whole_set(layout), {shell, layout, bodies, options});
    const double composing = seconds_since(start);
    start = std::chrono::steady_clock::now();
    Book book = bound_book(shell, options, {}, sheets);
    book.created = 0;
    const std::size_t bytes = write_pdf(book).size();
    const double writing = seconds_since(start);
    start = std::chrono::steady_clock::now();
    const std::size_t bare_bytes = size_of_book(strokes_only(sheets));
    const double bare = seconds_since(start);

    const double count = static_cast<double>(book.sheets.size());
    std::printf("%zu pieces, %zu distinct, a book of %.0f pages\n", layout.pieces.size(),
                layout.models.size(), count);
    std::printf("  drawn in %.2f s, written in %.2f s, %zu bytes, %.1f kB a page, %.1f kB at the median\n",
                composing, writing, bytes, static_cast<double>(bytes) / 1024 / count,
                static_cast<double>(median_sheet(sheets)) / 1024);
    std::printf("  the same strokes alone: %.2f s, %zu bytes\n", bare, bare_bytes);
    std::printf("  RATIO time %.1f, size %.2f\n", (composing + writing) / bare,
                static_cast<double>(bytes) / static_cast<double>(bare_bytes));
    return sheets.empty() ? 1 : 0;
}
