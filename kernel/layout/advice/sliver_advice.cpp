#include "kernel/layout/advice/sliver_advice.h"

#include <algorithm>
#include <charconv>
#include <cmath>

namespace roundlay {

namespace {

/// Each trial lays the whole shell out; where there are more openings to mend, the first are a beginning.
constexpr int most_advised = 12;

struct Move {
    Length by;              ///< up; negative: down
    bool top_stays = false; ///< a sill that moves under a top that stays where it is
};

std::optional<std::size_t> opening_of(const Finding &finding) {
    constexpr std::string_view list = "opening[";
    std::size_t index = 0;
    const std::string &s = finding.subject;
    if (!s.starts_with(list)) return {};
    const auto read = std::from_chars(s.data() + list.size(), s.data() + s.size(), index);
    return read.ec == std::errc() ? std::optional(index) : std::nullopt;
}

Shell moved(const Shell &shell, std::size_t opening, bool over, const Move &move) {
    Shell next = shell;
    Opening &o = next.openings[opening];
    if (over)
        o.height = o.height + move.by;
    else
        o.sill = o.sill + move.by;
    if (move.top_stays) o.height = o.height - move.by;
    return next;
}

class Advisor {
  public:
    Advisor(const Shell &shell, const Layout &layout, const LayOut &try_out)
        : shell_(shell), before_(warnings_in(layout.findings)), errors_(errors_in(layout.findings)),
          try_out_(try_out) {}

    std::optional<Said> advice(const Finding &finding, double left) const {
        const auto opening = opening_of(finding);
        if (!opening || *opening >= shell_.openings.size()) return {};
        const bool over = finding.subject.ends_with(".height");
        for (const Move &move : moves(over, left))
            if (helps(finding, *opening, over, move)) return told(over, move);
        return said("no small change of this one figure mends it: a list of the seams tells which heights "
                    "cost no wood");
    }

  private:
    /// Over an opening the top goes up to the seam or down from it, under it the sill down or up; least
    /// first.
    std::vector<Move> moves(bool over, double left) const {
        std::vector<Move> all;
        const double up = over ? left : least_left_over - left, down = over ? least_left_over - left : left;
        for (const bool top_stays : {false, true}) {
            if (over && top_stays) continue;
            for (const Length by : round_lengths(shell_, up))
                all.push_back({by, top_stays});
            for (const Length by : round_lengths(shell_, down))
                if (down > 0) all.push_back({-by, top_stays});
        }
        std::ranges::stable_sort(
            all, {}, [](const Move &m) { return std::abs(m.by.mm()) + (m.top_stays ? 1e-3 : 0); });
        return all;
    }

    bool helps(const Finding &finding, std::size_t opening, bool over, const Move &move) const {
        const Shell next = moved(shell_, opening, over, move);
        const Opening &o = next.openings[opening];
        if (o.sill < Length() || o.height <= Length()) return false;
        const Findings after = try_out_(next).findings;
        const bool same = std::ranges::any_of(
            after, [&](const Finding &f) { return f.code == finding.code && opening_of(f) == opening; });
        return !same && errors_in(after) <= errors_ && warnings_in(after) < before_;
    }

    static Said told(bool over, const Move &move) {
        const LengthAmount by = just(move.by);
        const bool up = move.by > Length();
        if (over) return up ? said("raise its top by %1", by) : said("lower its top by %1", by);
        if (!move.top_stays) return up ? said("raise its sill by %1", by) : said("lower its sill by %1", by);
        return up ? said("raise its sill by %1 and take as much off its height", by)
                  : said("lower its sill by %1 and add as much to its height", by);
    }

    const Shell &shell_;
    std::ptrdiff_t before_;
    std::ptrdiff_t errors_; ///< of others: they stay, whatever is done to this one
    const LayOut &try_out_;
};

} // namespace

void advise_on_slivers(const Shell &shell, Layout &layout, const std::vector<Sliver> &slivers,
                       const LayOut &try_out) {
    const Advisor advisor(shell, layout, try_out);
    int advised = 0;
    for (const Sliver &sliver : slivers) {
        if (advised++ == most_advised) return;
        Finding &finding = layout.findings[sliver.finding];
        finding.advice = advisor.advice(finding, sliver.left);
    }
}

} // namespace roundlay
