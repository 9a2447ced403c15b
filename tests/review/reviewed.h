// A shell as the review sees it.
#pragma once

#include "kernel/layout/lay_out.h"
#include "kernel/review/review.h"
#include "tests/support/catch.h"

#include <algorithm>

namespace roundlay::test {

inline Findings reviewed(const Shell &shell) {
    const Layout layout = lay_out(shell);
    REQUIRE_FALSE(has_errors(layout.findings));
    return review(shell, layout, bodies_of(layout));
}

inline int count(const Findings &findings, const std::string &code) {
    return static_cast<int>(
        std::count_if(findings.begin(), findings.end(), [&](const Finding &f) { return f.code == code; }));
}

} // namespace roundlay::test
