#include "kernel/layout/advice/trial.h"

#include "kernel/layout/text.h"
#include "kernel/measure/spelling.h"

#include <algorithm>
#include <cmath>

namespace roundlay {

namespace {

/// mm: a sixty-fourth of an inch, the finest that a rule has.
constexpr double finest_inch = 25.4 / 64;

} // namespace

std::vector<Length> as_said(const Shell &shell, double mm) {
    std::vector<std::string> texts = {say(shell, mm)};
    if (shell.units == UnitSystem::imperial)
        for (const double parts : {std::ceil(mm / finest_inch), std::floor(mm / finest_inch)})
            texts.push_back(spell_length(Length::mm(parts * finest_inch), shell.units));
    texts.push_back(spell_length(Length::mm(mm), shell.units));
    std::vector<Length> all;
    for (const std::string &text : texts)
        if (const auto read = parse_length(text);
            std::holds_alternative<Length>(read) && (all.empty() || all.back() != std::get<Length>(read)))
            all.push_back(std::get<Length>(read));
    return all;
}

std::ptrdiff_t errors_in(const Findings &findings) {
    return std::ranges::count_if(findings, [](const Finding &f) { return f.weight == Weight::error; });
}

std::ptrdiff_t warnings_in(const Findings &findings) {
    return std::ranges::count_if(findings, [](const Finding &f) { return f.weight != Weight::note; });
}

} // namespace roundlay
