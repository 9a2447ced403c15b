#include "kernel/layout/trial.h"

#include "kernel/layout/text.h"
#include "kernel/measure/spelling.h"

#include <algorithm>
#include <cmath>

namespace roundlay {

std::vector<Length> as_said(const Shell &shell, double mm) {
    std::vector<Length> all;
    for (const std::string &text : {say(shell, mm), spell_length(Length::mm(mm), shell.units)})
        if (const auto read = parse_length(text); std::holds_alternative<Length>(read))
            all.push_back(std::get<Length>(read));
    return all;
}

std::string in_words(const Shell &shell, Length by) {
    const double size = std::abs(by.mm());
    const std::string printed = say(shell, size);
    const auto read = parse_length(printed);
    const bool exact = std::holds_alternative<Length>(read) && std::abs(std::get<Length>(read).mm() - size) < 1e-9;
    return exact ? printed : spell_length(Length::mm(size), shell.units);
}

std::ptrdiff_t warnings_in(const Findings &findings) {
    return std::ranges::count_if(findings, [](const Finding &f) { return f.weight != Weight::note; });
}

} // namespace roundlay
