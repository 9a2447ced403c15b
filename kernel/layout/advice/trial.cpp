#include "kernel/layout/advice/trial.h"

#include <algorithm>

namespace roundlay {

std::ptrdiff_t errors_in(const Findings &findings) {
    return std::ranges::count_if(findings, [](const Finding &f) { return f.weight == Weight::error; });
}

std::ptrdiff_t warnings_in(const Findings &findings) {
    return std::ranges::count_if(findings, [](const Finding &f) { return f.weight != Weight::note; });
}

} // namespace roundlay
