// Whether pegs as they are stated can be bored, and what practice says of them.

#include "kernel/geometry/tolerance.h"
#include "kernel/layout/fastenings/bore_room.h"
#include "kernel/layout/fastenings/pegs.h"
#include "kernel/layout/text.h"

#include <algorithm>
#include <cmath>

namespace roundlay {

namespace {

class PegRuleCheck {
  public:
    explicit PegRuleCheck(const Shell &shell) : shell_(shell), rule_(shell.pegs) {
        for (const Wall &w : shell.walls)
            thinnest_ = std::min(thinnest_, w.thickness.value_or(shell.thickness).mm());
        for (const Partition &p : shell.partitions)
            thinnest_ = std::min(thinnest_, p.thickness.value_or(shell.thickness).mm());
    }

    Findings found() {
        if (rule_.wanted && check_diameter() && check_distances()) note_practice();
        return std::move(findings_);
    }

  private:
    bool say_of(Weight weight, const std::string &key, Said what, std::optional<Said> advice = {}) {
        findings_.push_back(
            {weight, "peg-rule", {about::All::pegs}, std::move(what), std::move(advice), "pegs." + key});
        return weight != Weight::error;
    }
    bool refuse(const std::string &key, Said what, std::optional<Said> advice = {}) {
        return say_of(Weight::error, key, std::move(what), std::move(advice));
    }

    bool check_diameter() {
        const double d = rule_.diameter.mm();
        if (!(d > 0) || d > thinnest_ - 2 * least_beside_bore)
            return refuse("diameter", leaves_no_wood(d, thinnest_), at_most(shell_, thinnest_ / 2));
        if (d > thinnest_ / 2) say_of(Weight::warning, "diameter", bores_half_away(d, thinnest_));
        return true;
    }

    bool check_distances() {
        if (rule_.between.mm() < rule_.diameter.mm() + 2 * tolerance::clear)
            return refuse("between", said("bores %1 apart run into one another", in_mm(rule_.between.mm())),
                          said("keep more than the diameter"));
        if (rule_.end_distance.mm() < rule_.diameter.mm() / 2 + tolerance::clear)
            return refuse("end_distance",
                          said("a bore %1 from an end breaks out of it", in_mm(rule_.end_distance.mm())));
        if (rule_.draw.mm() >= rule_.diameter.mm())
            return refuse("draw",
                          said("a draw of %1 leaves no way through for a peg of %2", in_mm(rule_.draw.mm()),
                               in_mm(rule_.diameter.mm())),
                          at_most(shell_, rule_.diameter.mm() / 4));
        if (rule_.draw.mm() > 0 && rule_.bored == PegBoring::in_place)
            return refuse("draw", said("pegs that are bored in place go straight down: nothing is drawn"),
                          said("leave draw out, or bored = \"at the bench\""));
        if (rule_.square && rule_.square->mm() <= 0)
            return refuse("square", said("square pegs need a side above zero"));
        return true;
    }

    /// What can be bored, but does not hold as it should. Common practice, no source.
    void note_practice() {
        const double d = rule_.diameter.mm();
        if (rule_.draw.mm() > d / 4)
            say_of(Weight::warning, "draw",
                   said("a draw of %1 would break a peg of %2", in_mm(rule_.draw.mm()), in_mm(d)),
                   at_most(shell_, d / 4));
        if (rule_.square && (rule_.square->mm() <= d / std::sqrt(2.0) || rule_.square->mm() >= d))
            say_of(Weight::warning, "square",
                   said("square pegs of %1 do not hold in bores of %2", in_mm(rule_.square->mm()), in_mm(d)),
                   said("their arrises bite where the side is between %1 and that",
                        no_less(shell_, d / std::sqrt(2.0))));
    }

    const Shell &shell_;
    const PegRule &rule_;
    double thinnest_ = HUGE_VAL;
    Findings findings_;
};

} // namespace

Findings check_peg_rule(const Shell &shell) {
    return PegRuleCheck(shell).found();
}

} // namespace roundlay
