#include "kernel/layout/advice/opening_advice.h"

#include "kernel/layout/text.h"

#include <algorithm>
#include <array>

namespace roundlay {

namespace {

constexpr std::array codes{"opening-cuts-corner", "opening-cuts-tee", "openings-too-close"};

/// How much further than the nearest place is tried, so that pegs find theirs, mm. Each trial lays the whole
/// shell out.
constexpr std::array<double, 6> further{0, 50, 100, 200, 400, 800};

class OpeningAdvice {
  public:
    OpeningAdvice(const Shell &shell, const Layout &layout, std::size_t opening, const LayOut &try_out)
        : shell_(shell), opening_(opening), places_(places_beside(shell, layout, opening)),
          try_out_(try_out) {
        Shell without = shell;
        without.openings.erase(without.openings.begin() + static_cast<std::ptrdiff_t>(opening));
        const Findings left = try_out(without).findings;
        warnings_without_ = warnings_in(left);
        others_refused_ = has_errors(left);
    }

    std::optional<Said> said_of_it() const {
        const auto left = nearest(-1), right = nearest(1);
        if (left && right) return said("at %1 or at %2 from the left it fits", just(*left), just(*right));
        if (left || right) return said("at %1 from the left it fits", just(left ? *left : *right));
        if (places_.empty()) return said("wall %1 has no place as wide as that", stated().wall);
        return {};
    }

  private:
    const Opening &stated() const { return shell_.openings[opening_]; }

    /// The stretches run from left to right, and none holds where it stands.
    std::optional<double> edge(int side) const {
        const double x = stated().from_left.mm();
        if (side > 0) {
            const auto next = std::ranges::find_if(places_, [&](const Span &s) { return s.to >= x; });
            return next == places_.end() ? std::nullopt : std::optional(std::max(x, next->from));
        }
        const auto last = std::ranges::find_if(places_.rbegin(), places_.rend(),
                                               [&](const Span &s) { return s.from <= x; });
        return last == places_.rend() ? std::nullopt : std::optional(std::min(x, last->to));
    }

    bool within_a_place(double x) const {
        return std::ranges::any_of(places_, [&](const Span &s) { return x >= s.from && x <= s.to; });
    }

    enum class Holds { no, with_warnings, well };

    Holds at(Length from_left) const {
        Shell next = shell_;
        next.openings[opening_].from_left = from_left;
        const Layout laid = try_out_(next);
        if (has_errors(laid.findings)) return Holds::no;
        return warnings_in(laid.findings) > warnings_without_ ? Holds::with_warnings : Holds::well;
    }

    std::optional<Length> nearest(int side) const {
        const auto start = edge(side);
        if (!start || others_refused_) return {};
        std::optional<Length> built;
        for (const double by : further) {
            const double x = *start + side * by;
            if (!within_a_place(x)) continue;
            std::vector<Length> lengths = as_said(shell_, x);
            lengths.erase(std::unique(lengths.begin(), lengths.end()), lengths.end());
            if (by > 0) lengths.resize(1); // only at the edge does it matter how it is rounded
            for (const Length from_left : lengths) {
                const Holds holds = at(from_left);
                if (holds == Holds::well) return from_left;
                if (holds == Holds::with_warnings && !built) built = from_left;
            }
        }
        return built;
    }

    const Shell &shell_;
    std::size_t opening_;
    std::vector<Span> places_;
    const LayOut &try_out_;
    std::ptrdiff_t warnings_without_ = 0;
    bool others_refused_ = false; ///< then no place of this one makes the shell one that can be built
};

} // namespace

void advise_on_openings(const Shell &shell, Layout &layout, const LayOut &try_out) {
    for (std::size_t i = 0; i < shell.openings.size(); ++i) {
        std::optional<std::optional<Said>> advice; // the same for all that is found of it: tried once
        for (Finding &f : layout.findings) {
            if (std::ranges::find(codes, f.code) == codes.end() ||
                f.subject != subject("opening", i, "from_left"))
                continue;
            if (!advice) advice = OpeningAdvice(shell, layout, i, try_out).said_of_it();
            f.advice = *advice;
        }
    }
}

} // namespace roundlay
