// What is written on sheets.
#pragma once

#include "exporters/sheets/drawing/sheet.h"

#include <functional>
#include <string>
#include <vector>

namespace roundlay::test {

/// All words of those sheets that `wanted` takes, one a line.
inline std::string words_of(const std::vector<sheets::Sheet> &all,
                            const std::function<bool(const sheets::Sheet &)> &wanted = {}) {
    std::string words;
    for (const sheets::Sheet &sheet : all) {
        if (wanted && !wanted(sheet)) continue;
        for (const sheets::Item &item : sheet.items)
            if (const auto *text = std::get_if<sheets::Text>(&item)) words += text->words + "\n";
    }
    return words;
}

} // namespace roundlay::test
