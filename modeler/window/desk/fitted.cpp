#include "modeler/window/desk/fitted.h"

#include "kernel/layout/lay_out.h"

#include <algorithm>

namespace roundlay::window {

namespace {

bool is_error(const Finding &finding) {
    return finding.weight == Weight::error;
}

std::size_t errors_in(const Findings &findings) {
    return static_cast<std::size_t>(std::count_if(findings.begin(), findings.end(), is_error));
}

std::size_t warnings_in(const Findings &findings) {
    return static_cast<std::size_t>(std::count_if(
        findings.begin(), findings.end(), [](const Finding &f) { return f.weight == Weight::warning; }));
}

} // namespace

FittingTrial::FittingTrial(const Shell &before) {
    const Findings findings = lay_out_to_try(before).findings;
    errors_before_ = errors_in(findings);
    warnings_before_ = warnings_in(findings);
}

bool FittingTrial::holds(const Shell &changed, const std::string &subject) {
    ++trials_;
    const Findings findings = lay_out_to_try(changed).findings;
    clean_ = warnings_in(findings) <= warnings_before_;
    if (errors_in(findings) <= errors_before_) return true;
    why_.reset();
    for (const Finding &f : findings) {
        if (!is_error(f)) continue;
        const bool own = !subject.empty() && f.subject.starts_with(subject);
        if (!why_ || own) why_ = f;
        if (own) break;
    }
    return false;
}

} // namespace roundlay::window
