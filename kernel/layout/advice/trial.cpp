#include "kernel/layout/advice/trial.h"

#include "kernel/layout/text.h"
#include "kernel/measure/spelling.h"

#include <algorithm>

namespace roundlay {

std::vector<Length> as_said(const Shell &shell, double mm) {
    std::vector<Length> all;
    for (const std::string &text : {say(shell, mm), spell_length(Length::mm(mm), shell.units)})
        if (const auto read = parse_length(text); std::holds_alternative<Length>(read))
            all.push_back(std::get<Length>(read));
    return all;
}

std::ptrdiff_t warnings_in(const Findings &findings) {
    return std::ranges::count_if(findings, [](const Finding &f) { return f.weight != Weight::note; });
}

} // namespace roundlay
