// What a random test throws away: only for reasons that it names, and counted, so that it can say how many were too many.
#pragma once

#include "tests/support/findings.h"

#include <rapidcheck.h>

#include <algorithm>
#include <map>
#include <string>
#include <vector>

namespace roundlay::test {

class ThrownAway {
  public:
    /// Codes of errors that random shells may rightly be refused with.
    explicit ThrownAway(std::vector<std::string> reasons) : reasons_(std::move(reasons)) {}

    /// Inside a property. Throws a shell away that is refused for one of the reasons; any other error fails. Warnings are
    /// no reason: what can be cut is held to everything.
    void discard_refused(const Findings &findings) {
        const auto is_error = [](const Finding &f) { return f.weight == Weight::error; };
        const auto first = std::find_if(findings.begin(), findings.end(), is_error);
        if (first == findings.end()) {
            ++kept_;
            return;
        }
        for (const Finding &f : findings)
            if (is_error(f) && std::find(reasons_.begin(), reasons_.end(), f.code) == reasons_.end()) RC_FAIL(test::words(findings));
        ++thrown_[first->code];
        RC_DISCARD("cannot be built");
    }

    /// Of all that were drawn.
    double share() const {
        double thrown = 0;
        for (const auto &[code, times] : thrown_) thrown += times;
        return thrown / std::max(1.0, thrown + kept_);
    }

    std::string words() const {
        std::string text = std::to_string(static_cast<int>(100 * share() + 0.5)) + " % thrown away:";
        for (const auto &[code, times] : thrown_) text += " " + code + " " + std::to_string(times);
        return text;
    }

  private:
    std::vector<std::string> reasons_;
    std::map<std::string, int> thrown_;
    int kept_ = 0;
};

} // namespace roundlay::test
