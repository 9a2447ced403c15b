#include "kernel/design/fitted.h"

#include "kernel/layout/advice/trial.h"
#include "kernel/layout/lay_out.h"

namespace roundlay {

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
        if (f.weight != Weight::error) continue;
        const bool own = !subject.empty() && f.subject.starts_with(subject);
        if (!why_ || own) why_ = f;
        if (own) break;
    }
    return false;
}

} // namespace roundlay
