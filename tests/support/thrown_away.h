// What a random test throws away: only for reasons that it names, and counted, so that it can say how many
// were too many.
#pragma once

#include "tests/support/findings.h"

#include <rapidcheck.h>

#include <algorithm>
#include <map>
#include <string>
#include <vector>

namespace roundlay::test {

/// What a shell of the whole family with all its fittings may rightly be refused for.
inline std::vector<std::string> refusals() {
    return {"floor-does-not-fit",     "timber-misses-wall",  "bore-misses-log",    "trim-does-not-fit",
            "tail-too-thin",          "tee-too-near",        "walls-run-together", "overhang-hits-wall",
            "opening-cuts-tee",       "opening-cuts-corner", "opening-over-wall",  "openings-too-close",
            "walls-do-not-alternate", "corner-not-square",   "wall-too-short",     "opening-too-wide",
            "tee-off-wall",           "stick-too-thin",      "opening-meets-step", "step-cuts-corner",
            "steps-too-close",        "step-over-wall",      "floor-over-wall"};
}

class ThrownAway {
  public:
    /// Codes of errors that random shells may rightly be refused with.
    explicit ThrownAway(std::vector<std::string> reasons) : reasons_(std::move(reasons)) {}

    /// Inside a property. Throws a shell away that is refused for one of the reasons; any other error fails.
    /// Warnings are no reason: what can be cut is held to everything.
    void discard_refused(const Findings &findings) {
        const auto is_error = [](const Finding &f) { return f.weight == Weight::error; };
        const auto first = std::find_if(findings.begin(), findings.end(), is_error);
        if (first == findings.end()) {
            ++kept_;
            return;
        }
        for (const Finding &f : findings)
            if (is_error(f) && std::find(reasons_.begin(), reasons_.end(), f.code) == reasons_.end())
                RC_FAIL(test::words(findings));
        ++thrown_[first->code];
        RC_DISCARD("cannot be built");
    }

    /// Of all that were drawn.
    double share() const {
        double thrown = 0;
        for (const auto &[code, times] : thrown_)
            thrown += times;
        return thrown / std::max(1.0, thrown + kept_);
    }

    /// More than seven in ten of what was drawn (shells with all fittings alone lose nine), once enough was
    /// drawn to tell.
    bool too_many() const {
        constexpr int tell = 30;
        int drawn = kept_;
        for (const auto &[code, times] : thrown_)
            drawn += times;
        return drawn >= tell && share() > 0.7;
    }

    std::string words() const {
        std::string text = std::to_string(static_cast<int>(100 * share() + 0.5)) + " % thrown away:";
        for (const auto &[code, times] : thrown_)
            text += " " + code + " " + std::to_string(times);
        return text;
    }

  private:
    std::vector<std::string> reasons_;
    std::map<std::string, int> thrown_;
    int kept_ = 0;
};

} // namespace roundlay::test
