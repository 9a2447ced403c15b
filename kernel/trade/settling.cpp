#include "kernel/trade/settling.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace roundlay {

namespace {

constexpr std::array<SettlingRule, 4> rules = {{
    {SettlingRuleName::per_300_mm,
     13.0 / 300,
     "13 mm for each 300 mm of height",
     "least clearance above openings in walls of horizontal logs that can shrink",
     {Mark::seen, "Ontario Building Code, O. Reg. 332/12, Division B, section 9.37", ""}},
    {SettlingRuleName::six_percent,
     0.06,
     "60 mm per metre; also quoted as 3/4 in per foot",
     "green round logs, scribed",
     {Mark::second_hand, "log building standards of 2000 for scribed round logs, settling",
      "3/4 in per foot is 6.25 %, and 6 % is 0.72 in per foot; the standard leaves hewn chinked dovetail "
      "out"}},
    {SettlingRuleName::four_percent,
     0.04,
     "about 4 cm per metre",
     "fresh log walls",
     {Mark::seen, "repair card of the Finnish heritage agency on moving log houses", ""}},
    {SettlingRuleName::per_chinked_log,
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

const SettlingRule &settling_rule(SettlingRuleName id) {
    return *std::find_if(rules.begin(), rules.end(), [&](const SettlingRule &r) { return r.id == id; });
}

const SettlingRule &longest_settling_rule() {
    return *std::max_element(rules.begin(), rules.end(),
                             [](const SettlingRule &a, const SettlingRule &b) { return a.part < b.part; });
}

SettlingChoice settling_by_wall(const Shell &shell) {
    if (shell.notch.kind != NotchKind::saddle)
        return {&settling_rule(SettlingRuleName::per_300_mm),
                "as the logs are not round ones scribed over one another; it is a code's least, for dry wood "
                "too"};
    if (shell.wood.moisture && *shell.wood.moisture <= seasoned_moisture)
        return {&settling_rule(SettlingRuleName::per_300_mm),
                "as the logs are round and scribed, but stated at 19 % of moisture or less"};
    return {&settling_rule(SettlingRuleName::six_percent),
            "as the logs are round and scribed, and not stated to be seasoned"};
}

SettlingChoice choose_settling(const Shell &shell) {
    if (shell.trim.settling)
        return {&settling_rule(*shell.trim.settling), "as the document says of all openings"};
    return settling_by_wall(shell);
}

SettlingChoice choose_settling(const Shell &shell, const Opening &opening) {
    if (opening.trim.settling)
        return {&settling_rule(*opening.trim.settling), "as the document says of this opening"};
    return choose_settling(shell);
}

const SettlingRule &settling_asked_for(const Shell &shell, const Opening &opening) {
    const SettlingRule &by_wall = *settling_by_wall(shell).rule,
                       &chosen = *choose_settling(shell, opening).rule;
    return chosen.part > by_wall.part ? chosen : by_wall;
}

Length settling_space(Length height, const SettlingRule &rule) {
    return std::max(height, Length()) * rule.part;
}

Length shown_settling_space(Length height, const SettlingRule &rule, UnitSystem units) {
    constexpr double noise = 1e-9;
    const double step = units == UnitSystem::metric ? 1 : mm_per_inch / LengthStyle().denominator;
    return Length::mm(std::ceil(settling_space(height, rule).mm() / step - noise) * step);
}

} // namespace roundlay
