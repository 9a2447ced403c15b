#include "kernel/layout/advice/opening_advice.h"

#include "kernel/layout/rounded.h"
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
        put_others_away(layout);
        Shell without = shell_;
        without.openings.erase(without.openings.begin() + static_cast<std::ptrdiff_t>(opening_));
        const Findings left = try_out(without).findings;
        warnings_without_ = warnings_in(left);
        errors_without_ = errors_in(left);
    }

    std::optional<Said> said_of_it() const {
        const auto left = nearest(-1), right = nearest(1);
        if (left && right) return said("at %1 or at %2 from the left it fits", just(*left), just(*right));
        if (left || right) return said("at %1 from the left it fits", just(left ? *left : *right));
        if (places_.empty()) return said("wall %1 has no place as wide as that", stated().wall);
        return {};
    }

    /// Where it is stated, or else at the nearest place.
    std::optional<Said> said_of_width() const {
        const LengthAmount wide = exactly_in_mm(stated().width.mm());
        if (within_a_place(stated().from_left.mm()) && at(stated().from_left) != Holds::no)
            return said("a width of %1 at most fits there", wide);
        const auto left = nearest(-1), right = left ? std::nullopt : nearest(1);
        if (!left && !right) return {};
        return said("a width of %1 at most fits, at %2 from the left", wide, just(left ? *left : *right));
    }

  private:
    const Opening &stated() const { return shell_.openings[opening_]; }

    /// Other openings that are refused themselves: with them there are no logs, nor pegs that could be told
    /// of.
    void put_others_away(const Layout &layout) {
        for (std::size_t i = shell_.openings.size(); i-- > 0;) {
            const bool refused = std::ranges::any_of(layout.findings, [i](const Finding &f) {
                return f.weight == Weight::error && f.subject.starts_with(subject("opening", i, ""));
            });
            if (i == opening_ || !refused) continue;
            shell_.openings.erase(shell_.openings.begin() + static_cast<std::ptrdiff_t>(i));
            if (i < opening_) --opening_;
        }
    }

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
        if (errors_in(laid.findings) > errors_without_) return Holds::no;
        return warnings_in(laid.findings) > warnings_without_ ? Holds::with_warnings : Holds::well;
    }

    std::optional<Length> nearest(int side) const {
        const auto start = edge(side);
        if (!start) return {};
        std::optional<Length> built;
        for (const double by : further) {
            const double x = *start + side * by;
            if (!within_a_place(x)) continue;
            std::vector<Length> lengths = round_lengths(shell_, x);
            if (by > 0) lengths.resize(1); // only at the edge does it matter how it is rounded
            for (const Length from_left : lengths) {
                const Holds holds = at(from_left);
                if (holds == Holds::well) return from_left;
                if (holds == Holds::with_warnings && !built) built = from_left;
            }
        }
        return built;
    }

    Shell shell_;
    std::size_t opening_;
    std::vector<Span> places_;
    const LayOut &try_out_;
    std::ptrdiff_t warnings_without_ = 0;
    std::ptrdiff_t errors_without_ = 0; ///< of others: they stay, wherever this one is
};

Shell as_wide_as(Shell shell, std::size_t opening, double width) {
    shell.openings[opening].width = Length::mm(width);
    return shell;
}

/// The widest that an opening can be somewhere in its wall, between corners, partitions and other openings.
double widest_place(const Shell &shell, const Layout &layout, std::size_t opening) {
    constexpr double near = 1e-7; // mm: nearer than what a length is rounded down from
    double fits = 0, wide = shell.openings[opening].width.mm();
    while (wide - fits > near) {
        const double middle = (fits + wide) / 2;
        (places_beside(as_wide_as(shell, opening, middle), layout, opening).empty() ? wide : fits) = middle;
    }
    return fits;
}

/// The narrower ones leave room for pegs.
Said advice_on_width(const Shell &shell, const Layout &layout, std::size_t opening, const LayOut &try_out) {
    const double widest = rounded_down(shell, widest_place(shell, layout, opening));
    const std::string &wall = shell.openings[opening].wall;
    for (const double by : further) {
        if (widest - by <= 0) break;
        const Shell narrower = as_wide_as(shell, opening, widest - by);
        if (const auto advice = OpeningAdvice(narrower, layout, opening, try_out).said_of_width())
            return *advice;
    }
    return widest > 0 ? said("wall %1 has no place wider than %2", wall, no_more(shell, widest))
                      : said("wall %1 has no place for an opening", wall);
}

} // namespace

void advise_on_openings(const Shell &shell, Layout &layout, const LayOut &try_out) {
    if (layout.walls.empty()) return; // what wood lies beside an opening is known once the plan stands
    for (std::size_t i = 0; i < shell.openings.size(); ++i) {
        std::optional<std::optional<Said>> advice; // the same for all that is found of it: tried once
        for (Finding &f : layout.findings) {
            if (f.code == "opening-too-wide" && f.subject == subject("opening", i, "width"))
                f.advice = advice_on_width(shell, layout, i, try_out);
            if (std::ranges::find(codes, f.code) == codes.end() ||
                f.subject != subject("opening", i, "from_left"))
                continue;
            if (!advice) advice = OpeningAdvice(shell, layout, i, try_out).said_of_it();
            f.advice = *advice;
        }
    }
}

} // namespace roundlay
