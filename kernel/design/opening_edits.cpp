#include "kernel/design/opening_edits.h"

#include "kernel/design/round_figures.h"
#include "kernel/layout/advice/trial.h"
#include "kernel/layout/lay_out.h"
#include "kernel/layout/openings/openings.h"
#include "kernel/layout/openings/openings_on_steps.h"
#include "kernel/measure/tidied.h"
#include "kernel/review/headers.h"

#include <algorithm>
#include <cmath>
#include <iterator>

namespace roundlay {

namespace {

std::string free_name(const Shell &shell, OpeningKind kind, const WantedPlace &wanted) {
    const std::string english = kind == OpeningKind::door ? "door" : "window";
    const std::string base = (wanted.called.empty() ? english : wanted.called) + " ";
    for (std::size_t number = 1;; ++number) {
        std::string name = base + std::to_string(number);
        const auto same = [&](const Opening &o) { return o.name == name; };
        if (std::none_of(shell.openings.begin(), shell.openings.end(), same)) return name;
    }
}

/// Warnings of thin logs over and under the last opening, which a sill or height on a seam has not.
std::size_t complaints_of_last(const Shell &shell) {
    const std::string own = "opening[" + std::to_string(shell.openings.size() - 1) + "]";
    const Layout layout = lay_out_to_try(shell);
    return static_cast<std::size_t>(
        std::count_if(layout.findings.begin(), layout.findings.end(), [&](const Finding &f) {
            return f.weight != Weight::note && f.subject.starts_with(own);
        }));
}

/// The nearest length about the part of the last opening with which it complains least, within half a pitch.
void ease(Shell &shell, Length Opening::*part) {
    const Length usual = shell.openings.back().*part;
    const double step = fine_step(shell.units);
    const double far = shell.rounds.pitch ? shell.rounds.pitch->mm() / 2 : 10 * step;
    std::size_t least = complaints_of_last(shell);
    Length best = usual;
    for (int i = 2; least > 0; ++i) { // up and down by turns
        const int steps = i / 2;
        if (steps * step > far) break;
        shell.openings.back().*part = usual + Length::mm((i % 2 == 0 ? steps : -steps) * step);
        const std::size_t now = complaints_of_last(shell);
        if (now >= least) continue;
        least = now;
        best = shell.openings.back().*part;
    }
    shell.openings.back().*part = best;
}

/// Sill and height on seams where there are some near: whoever adds an opening is told of nothing at once.
Shell eased(Shell shell, OpeningKind kind) {
    if (kind == OpeningKind::window) ease(shell, &Opening::sill);
    ease(shell, &Opening::height);
    return shell;
}

/// Puts the last opening of a shell here and there.
class Placer {
  public:
    Placer(const Shell &shell, const Opening &opening) : shell_(shell), layout_(lay_out_to_try(shell)) {
        errors_ = errors_in(layout_.findings);
        told_before_ = layout_.findings;
        std::ranges::move(review_headers(shell, layout_, false), std::back_inserter(told_before_));
        layout_.pieces.clear(); // what is asked of it lies before them
        bare_errors_ = bare_errors();
        shell_.openings.push_back(opening);
    }

    std::optional<PlacedOpening> placed(const WantedPlace &wanted) {
        const auto wall = wall_named(layout_, own().wall);
        if (!wall) return {};
        const double from = on_grid(wanted.along - own().width.mm() / 2);
        for (const auto &[x, sill] : corners_in_turn(*wall, from, wanted.up))
            if (fits(x, sill)) {
                const bool there = x == from && is_there(sill, wanted);
                shell_ = eased_where_it_can();
                if (!there) go_where_nothing_is_told(from);
                return PlacedOpening{shell_, there, told_of_it()};
            }
        return {};
    }

    /// As wide, as high and with its sill as usual; then as placed() finds a place for it.
    void resize(const Opening &size) {
        own().sill = size.sill;
        own().width = size.width;
        own().height = size.height;
    }

    /// What is against it where it is wanted.
    std::optional<Finding> against(const WantedPlace &wanted) {
        own().from_left = tidied(Length::mm(std::max(0.0, on_grid(wanted.along - own().width.mm() / 2))));
        const std::string subject = "opening[" + std::to_string(shell_.openings.size() - 1) + "]";
        const Findings all = lay_out_to_try(shell_).findings;
        const Finding *first = nullptr;
        for (const Finding &f : all) {
            if (f.weight != Weight::error) continue;
            if (f.subject.starts_with(subject)) return f;
            if (first == nullptr) first = &f;
        }
        return first != nullptr ? std::optional(*first) : std::nullopt;
    }

    /// As usual, then ever lower, a round at a time: of a window the sill comes down as its height does.
    std::vector<Opening> ever_lower(const Opening &usual) const {
        std::vector<Opening> all{usual};
        const auto w = wall_named(layout_, usual.wall);
        if (!w) return all;
        if (layout_.heights.empty()) return all;
        const WallHeights &wall = layout_.heights[*w];
        constexpr int fewest = 2; // rounds from the foundation to its top
        const double usual_top = (usual.sill + usual.height).mm(), share = usual.sill.mm() / usual_top;
        for (int rounds = wall.pitch > 0 ? static_cast<int>(wall.top / wall.pitch) : 0; rounds >= fewest;
             --rounds) {
            const double top = rounds * wall.pitch;
            if (top >= std::min(usual_top, wall.top)) continue;
            const int sill =
                share > 0 ? std::clamp(static_cast<int>(std::lround(share * rounds)), 1, rounds - 1) : 0;
            Opening lower = usual;
            lower.sill = rounded_down(sill * wall.pitch);
            lower.height = rounded_down(top - lower.sill.mm());
            all.push_back(lower);
        }
        return all;
    }

  private:
    Opening &own() { return shell_.openings.back(); }

    /// What a check warns of in its wall that it did not warn of without it.
    Findings told_of_it() {
        const Layout layout = lay_out_to_try(shell_);
        Findings all = layout.findings;
        std::ranges::move(review_headers(shell_, layout, false), std::back_inserter(all));
        std::erase_if(all, [&](const Finding &f) {
            const auto *wall = first_of<about::Wall>(f.about);
            return f.weight == Weight::note || !wall || wall->name != own().wall || was_told(f);
        });
        return all;
    }

    bool was_told(const Finding &finding) const {
        return std::ranges::any_of(told_before_, [&](const Finding &f) {
            return f.code == finding.code && f.about == finding.about && f.subject == finding.subject;
        });
    }

    /// To the nearest place beside where it stands of which least is told: it could not stand where the hand
    /// pointed anyhow.
    void go_where_nothing_is_told(double wanted) {
        std::size_t least = told_of_it().size();
        const Length first = own().from_left;
        Length best = first;
        const double length = layout_.walls[*wall_named(layout_, own().wall)].length; // where it stands
        for (const double x : places(wanted, own().sill.mm(), length)) {
            if (least == 0) break;
            if (std::abs(x - first.mm()) > round_figure(shell_.units, 1200, 48).mm() ||
                !fits(x, own().sill.mm()))
                continue;
            const std::size_t told = told_of_it().size();
            if (told < least) least = told, best = own().from_left;
        }
        own().from_left = best;
    }
    /// Onto a quarter of an inch, or 5 mm.
    Length rounded_down(double mm) const {
        const double step = fine_step(shell_.units);
        return tidied(Length::mm(std::floor(mm / step + 1e-9) * step));
    }
    double on_grid(double mm) const {
        const double step = grid_step(shell_.units);
        return std::round(mm / step) * step;
    }
    bool is_there(double sill, const WantedPlace &wanted) {
        return !wanted.up || own().kind == OpeningKind::door ||
               std::abs(sill - on_grid(*wanted.up - own().height.mm() / 2)) < grid_step(shell_.units);
    }
    /// Lower left corners. A window keeps its height as long as it can, a door its place along the wall.
    std::vector<Vec2> corners_in_turn(Index<WallPlace> wall, double from, std::optional<double> up) {
        const std::vector<double> heights = sills(wall, up);
        std::vector<Vec2> all;
        for (const double sill : heights)
            for (const double x : places(from, sill, layout_.walls[wall].length))
                all.push_back({x, sill});
        if (own().kind == OpeningKind::door)
            std::ranges::stable_sort(all, {}, [&](Vec2 p) { return std::abs(p.x - from); });
        return all;
    }

    /// 0 where no heights are known.
    double top_of(Index<WallPlace> wall) const {
        return layout_.heights.empty() ? 0 : layout_.heights[wall].top;
    }

    /// The nearest first; a door stands on the foundation or on one of its steps.
    std::vector<double> sills(Index<WallPlace> wall, std::optional<double> up) {
        const double usual = own().sill.mm();
        std::vector<double> all{usual};
        if (own().kind == OpeningKind::door) {
            for (const StepPlace &step : layout_.steps)
                if (step.wall == wall) all.push_back(step.rise);
            return all;
        }
        const double highest = std::max(0.0, top_of(wall) - own().height.mm());
        const double wanted =
            up ? std::clamp(on_grid(*up - own().height.mm() / 2), 0.0, on_grid(highest)) : usual;
        all.front() = wanted;
        const double step = wide_step(shell_.units);
        for (int i = 1; i * step <= highest; ++i)
            for (const double sill : {wanted + i * step, wanted - i * step})
                if (sill >= 0 && sill <= highest) all.push_back(sill);
        return all;
    }

    /// Where it is wanted, then where the wall has wood enough beside it, the nearest first.
    std::vector<double> places(double wanted, double sill, double length) {
        own().sill = tidied(Length::mm(sill));
        std::vector<double> all{wanted};
        if (layout_.corners.empty()) return all;
        const double fine = grid_step(shell_.units), wide = wide_step(shell_.units);
        for (const Span &s : places_beside(shell_, layout_, shell_.openings.size() - 1)) {
            const double low = std::ceil(s.from / fine) * fine, high = std::floor(s.to / fine) * fine;
            if (low > high) continue;
            const double nearest = std::clamp(wanted, low, high);
            for (int i = 0; i * wide <= length; ++i)
                for (const double x : {nearest + i * wide, nearest - i * wide})
                    if (x >= low && x <= high) all.push_back(x);
        }
        std::ranges::stable_sort(all, {}, [&](double x) { return std::abs(x - wanted); });
        return all;
    }

    /// What openings alone have against it, which costs next to nothing.
    std::ptrdiff_t bare_errors() {
        if (layout_.corners.empty()) return 0;
        const auto found = check_openings(shell_, layout_, layout_);
        return errors_in(found.findings) + errors_in(check_trim(shell_, layout_, layout_)) +
               errors_in(check_openings_on_steps(shell_, layout_, layout_, found).findings);
    }

    bool fits(double from_left, double sill) {
        own().from_left = tidied(Length::mm(from_left));
        own().sill = tidied(Length::mm(sill));
        if (bare_errors() > bare_errors_ || tries_ == most_tries) return false;
        ++tries_;
        return errors_in(lay_out_to_try(shell_).findings) <= errors_;
    }

    Shell eased_where_it_can() {
        const Shell easy = eased(shell_, own().kind);
        return errors_in(lay_out_to_try(easy).findings) <= errors_ ? easy : shell_;
    }

    static constexpr int most_tries = 200; ///< each lays the whole shell out
    Shell shell_;
    Layout layout_; ///< of the shell without it
    Findings told_before_;
    std::ptrdiff_t errors_ = 0, bare_errors_ = 0;
    int tries_ = 0;
};

} // namespace

Opening usual_opening(OpeningKind kind, const std::string &wall, UnitSystem units) {
    Opening o;
    o.kind = kind;
    o.wall = wall;
    const bool door = kind == OpeningKind::door;
    o.sill = door ? Length() : round_figure(units, 900, 36);
    o.width = round_figure(units, 900, 36);
    o.height = door ? round_figure(units, 2100, 82) : round_figure(units, 1200, 48);
    return o;
}

std::optional<PlacedOpening> with_opening(const Shell &shell, Opening opening, const WantedPlace &wanted) {
    if (opening.name.empty()) opening.name = free_name(shell, opening.kind, wanted);
    return Placer(shell, opening).placed(wanted);
}

namespace {

std::vector<Length> ever_narrower(UnitSystem units, Length usual) {
    return {usual, round_figure(units, 600, 24), round_figure(units, 450, 18)};
}

} // namespace

NewOpening with_new_opening(const Shell &shell, OpeningKind kind, const std::string &wall,
                            const WantedPlace &wanted) {
    const Opening usual = usual_opening(kind, wall, shell.units);
    Opening named = usual;
    named.name = free_name(shell, kind, wanted);
    Placer placer(shell, named);
    for (const Length width : ever_narrower(shell.units, usual.width))
        for (Opening &size : placer.ever_lower(usual)) {
            size.width = width;
            placer.resize(size);
            if (auto placed = placer.placed(wanted))
                return {std::move(placed), width == usual.width && size.height == usual.height, {}};
        }
    return {{}, false, placer.against(wanted)};
}

} // namespace roundlay
