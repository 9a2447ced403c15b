#include "kernel/trade/settling.h"

#include <algorithm>
#include <array>

namespace roundlay {

namespace {

constexpr std::array<SettlingRule, 3> rules = {{
    {"13 mm in 300 mm",
     13.0 / 300,
     "13 mm for each 300 mm of height",
     "least clearance above openings in walls of horizontal logs that can shrink",
     {Mark::seen, "Ontario Building Code, O. Reg. 332/12, Division B, section 9.37", ""}},
    {"6 percent",
     0.06,
     "60 mm per metre; also quoted as 3/4 in per foot",
     "green round logs, scribed",
     {Mark::second_hand, "log building standards of 2000 for scribed round logs, settling",
      "3/4 in per foot is 6.25 %, and 6 % is 0.72 in per foot; the standard leaves hewn chinked dovetail "
      "out"}},
    {"3/16 in per log",
     3.0 / 16 / 16,
     "3/16 in for each log of 12 in with its chink of 4 in",
     "hewn chinked walls",
     {Mark::second_hand, "a newspaper article of 1999, a rule of thumb",
      "less than a fifth of the 6 % rule"}},
}};

} // namespace

std::span<const SettlingRule> settling_rules() {
    return rules;
}

Length settling_space(Length height, const SettlingRule &rule) {
    return std::max(height, Length()) * rule.part;
}

} // namespace roundlay
