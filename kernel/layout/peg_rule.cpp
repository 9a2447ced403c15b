// Whether pegs as they are stated can be bored, and what practice says of them.

#include "kernel/geometry/tolerance.h"
#include "kernel/layout/bore_room.h"
#include "kernel/layout/pegs.h"
#include "kernel/layout/text.h"

#include <algorithm>
#include <cmath>

namespace roundlay {

namespace {

class PegRuleCheck {
  public:
    PegRuleCheck(const Shell &shell, Layout &layout) : shell_(shell), layout_(layout), rule_(shell.pegs) {}

    bool check() {
        if (!rule_.wanted) return true;
        for (const WallPlace &w : layout_.walls) thinnest_ = std::min(thinnest_, w.thickness);
        if (!check_diameter() || !check_distances()) return false;
        note_practice();
        return true;
    }

  private:
    bool say_of(Weight weight, const std::string &message, const std::string &key) {
        layout_.findings.push_back({weight, "peg-rule", "pegs", message, "pegs." + key});
        return weight != Weight::error;
    }
    bool refuse(const std::string &message, const std::string &key) { return say_of(Weight::error, message, key); }

    bool check_diameter() {
        const double d = rule_.diameter.mm();
        if (!(d > 0) || d > thinnest_ - 2 * least_beside_bore)
            return refuse(leaves_no_wood(shell_, d, thinnest_, thinnest_ / 2), "diameter");
        if (d > thinnest_ / 2) say_of(Weight::warning, bores_half_away(shell_, d, thinnest_), "diameter");
        return true;
    }

    bool check_distances() {
        if (rule_.between.mm() < rule_.diameter.mm() + 2 * tolerance::clear)
            return refuse("bores " + say(shell_, rule_.between.mm()) + " apart run into one another; keep more than the diameter",
                          "between");
        if (rule_.end_distance.mm() < rule_.diameter.mm() / 2 + tolerance::clear)
            return refuse("a bore " + say(shell_, rule_.end_distance.mm()) + " from an end breaks out of it", "end_distance");
        if (rule_.draw.mm() >= rule_.diameter.mm())
            return refuse("a draw of " + say(shell_, rule_.draw.mm()) + " leaves no way through for a peg of " +
                              say(shell_, rule_.diameter.mm()) + "; " + say(shell_, rule_.diameter.mm() / 4) + " at most",
                          "draw");
        if (rule_.square && rule_.square->mm() <= 0) return refuse("square pegs need a side above zero", "square");
        return true;
    }

    /// What can be bored, but does not hold as it should. Common practice, no source.
    void note_practice() {
        const double d = rule_.diameter.mm();
        if (rule_.draw.mm() > d / 4)
            say_of(Weight::warning,
                   "a draw of " + say(shell_, rule_.draw.mm()) + " would break a peg of " + say(shell_, d) + "; " + say(shell_, d / 4) +
                       " at most",
                   "draw");
        if (rule_.square && (rule_.square->mm() <= d / std::sqrt(2.0) || rule_.square->mm() >= d))
            say_of(Weight::warning,
                   "square pegs of " + say(shell_, rule_.square->mm()) + " do not hold in bores of " + say(shell_, d) +
                       "; their arrises bite where the side is between " + say(shell_, d / std::sqrt(2.0)) + " and that",
                   "square");
    }

    const Shell &shell_;
    Layout &layout_;
    const PegRule &rule_;
    double thinnest_ = HUGE_VAL;
};

} // namespace

bool check_peg_rule(const Shell &shell, Layout &layout) { return PegRuleCheck(shell, layout).check(); }

} // namespace roundlay
