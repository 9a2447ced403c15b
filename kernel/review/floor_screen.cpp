#include "kernel/review/floor_screen.h"

#include "kernel/layout/cuts/match.h"
#include "kernel/layout/floors/bearing.h"
#include "kernel/measure/load.h"
#include "kernel/trade/species.h"
#include "kernel/trade/weight.h"

#include <algorithm>
#include <cmath>

namespace roundlay {

namespace {

constexpr double n_per_mm2 = 1e-3; ///< 1 kPa
constexpr double no_bearing = 1;   ///< mm: an end that reaches no wood is told, and its stress is past any
constexpr double no_lift = 1;      ///< N

/// What is left of a timber's blank along all its length.
class LeastWood {
  public:
    explicit LeastWood(const Piece &piece) : blank_(piece.blank), section_(piece.blank) {
        for (const Cut &cut : piece.cuts)
            match(cut, *this);
    }

    /// Its least section: joists of tapered logs are thinner at the tip.
    const Blank &section() const { return section_; }
    /// How deep housings for other timbers go into its two sides, together.
    double housed() const { return right_ + left_; }

    void operator()(const FaceCut &cut) {
        for (const double x : {0.0, blank_.length}) {
            const Plane &p = cut.plane;
            if (cut.face == LogFace::under)
                section_.height = std::min(section_.height, blank_.height - p.height_at(x, 0));
            if (cut.face == LogFace::inside) // the two sides lie evenly about the middle
                section_.width = std::min(section_.width,
                                          2 * ((p.offset - p.normal.x * x) / p.normal.y - blank_.width / 2));
        }
    }
    void operator()(const PocketCut &cut) {
        double &side = cut.y_face < cut.y_back ? right_ : left_;
        side = std::max(side, std::abs(cut.y_back - cut.y_face));
    }
    void operator()(const BoxCut &) {}   // seats: what is left over a beam and at an end is the timber's hold
    void operator()(const CheekCut &) {} // tails: its neck is the timber's hold
    // Only logs of walls have these.
    void operator()(const SeamCut &) {}
    void operator()(const ScopeCut &) {}
    void operator()(const RoundCut &) {}
    void operator()(const MendCut &) {}
    void operator()(const Bore &) {}

  private:
    Blank blank_, section_;
    double right_ = 0, left_ = 0;
};

/// What one timber lays on another.
struct Landed {
    double at = 0; ///< along the carrier's clear length
    double live = 0, total = 0, sure = 0;
};

/// One timber under its loads, its spans from middle to middle of its bearings.
class Loaded {
  public:
    Loaded(const Layout &layout, const Timber &timber, const TimberScreen &even,
           const std::vector<Landed> &landed)
        : timber_(timber), from_(bearing_of(layout, timber, End::datum)),
          to_(bearing_of(layout, timber, End::far)) {
        supports_.push_back(-from_.gap - from_.length / 2);
        for (const TimberRest &rest : timber.rests)
            supports_.push_back(rest.at);
        supports_.push_back(length(timber.to - timber.from) + to_.gap + to_.length / 2);
        for (std::size_t k = 0; k + 1 < supports_.size(); ++k) {
            const double from = supports_[k], span = supports_[k + 1] - from;
            live_.push_back({span, even.live, {}});
            total_.push_back({span, even.total, {}});
            sure_.push_back({span, even.sure, {}});
            const bool last = k + 2 == supports_.size();
            for (const Landed &l : landed) {
                if (l.at < from || (l.at >= supports_[k + 1] && !last)) continue;
                live_.back().points.push_back({l.at - from, l.live});
                total_.back().points.push_back({l.at - from, l.total});
                sure_.back().points.push_back({l.at - from, l.sure});
            }
        }
    }

    std::size_t supports() const { return supports_.size(); }

    /// What lies on a support; sure: the least, below 0 where it pulls up.
    Landed on_support(std::size_t k) const {
        return {0, reaction(live_, k), reaction(total_, k), least()[k]};
    }

    std::vector<double> least() const {
        std::vector<SpanLoad> may = total_;
        for (std::size_t k = 0; k < may.size(); ++k) {
            may[k].per_length -= sure_[k].per_length;
            for (std::size_t i = 0; i < may[k].points.size(); ++i)
                may[k].points[i].force -= sure_[k].points[i].force;
        }
        return least_reactions(sure_, may);
    }

    void judge(TimberScreen &s, double housing) const {
        const double inertia = section_inertia(s.width, s.height), net = s.width - housing;
        double worst = -1;
        for (std::size_t k = 0; k < live_.size(); ++k) {
            const double bends = most_deflection(live_[k], s.elasticity, inertia);
            if (bends / live_[k].span > worst) {
                worst = bends / live_[k].span;
                s.span = live_[k].span;
                s.deflection = bends;
            }
            s.bending = std::max(s.bending, largest_moment(total_[k]) / section_modulus(net, s.height));
            for (const double v : {left_reaction(total_[k]), right_reaction(total_[k])})
                s.shear = std::max(s.shear, shear_stress(v, net, s.height));
        }
        judge_end(s, timber_.hold_from, from_.length, reaction(total_, 0));
        judge_end(s, timber_.hold_to, to_.length, reaction(total_, supports_.size() - 1));
        for (std::size_t i = 0; i < timber_.rests.size(); ++i)
            judge_rest(s, timber_.rests[i], net, i);
        for (const double on : least())
            s.lifts.push_back(on < -no_lift ? -on : 0);
    }

  private:
    static double reaction(const std::vector<SpanLoad> &spans, std::size_t k) {
        if (k == 0) return left_reaction(spans.front());
        if (k == spans.size()) return right_reaction(spans.back());
        return reaction_between(spans[k - 1], spans[k]);
    }

    static void judge_end(TimberScreen &s, const TimberHold &hold, double bearing, double force) {
        s.shear = std::max(s.shear, notched_shear_stress(force, hold.neck, hold.full, hold.height));
        s.bearing = std::max(s.bearing, bearing_stress(force, hold.neck, std::max(bearing, no_bearing)));
    }

    /// Where it runs over a beam it may be cut from below.
    void judge_rest(TimberScreen &s, const TimberRest &rest, double net, std::size_t i) const {
        const SpanLoad &before = total_[i], &behind = total_[i + 1];
        const double left = std::min(rest.height, s.height);
        s.bending = std::max(s.bending, moment_between(before, behind) / section_modulus(net, left));
        s.shear = std::max(s.shear, notched_shear_stress(shear_between(before, behind), net,
                                                         std::max(s.height, rest.full), left));
        s.bearing =
            std::max(s.bearing, bearing_stress(reaction_between(before, behind), s.width, rest.width));
    }

    const Timber &timber_;
    Bearing from_, to_;
    std::vector<double> supports_; ///< along the clear length
    std::vector<SpanLoad> live_, total_, sure_;
};

/// Of a floor's timbers; nullptr where no values are known of it.
const Species *known_species(const Shell &shell, const Floor &floor) {
    const auto found = find_species(species_of(wood_of(shell, floor.species)));
    const auto *species = std::get_if<const Species *>(&found);
    return species ? *species : nullptr;
}

/// Takes the timbers of all floors from what is carried to what carries.
class Screener {
  public:
    Screener(const Shell &shell, const Layout &layout)
        : shell_(shell), layout_(layout), landed_(layout.timbers.size()) {}

    std::vector<TimberScreen> all() {
        std::vector<TimberScreen> screens;
        for (std::size_t k = layout_.timbers.size(); k-- > 0;) // a carrier comes before what it carries
            if (const Index<Timber> i(k); is_screened(floor_of(layout_.timbers[i])))
                screens.push_back(screen(i));
        std::reverse(screens.begin(), screens.end());
        return screens;
    }

  private:
    const Floor &floor_of(const Timber &timber) const { return shell_.floors[timber.floor.at()]; }
    bool is_screened(const Floor &floor) const { return floor.live_load && known_species(shell_, floor); }

    TimberScreen screen(Index<Timber> i) {
        const Timber &timber = layout_.timbers[i];
        const Piece &piece = layout_.pieces[timber.piece];
        TimberScreen s = unloaded(piece, *known_species(shell_, floor_of(timber)));
        s.timber = i;
        load(s, timber, piece, landed_[i].empty());
        for (const Landed &l : landed_[i])
            s.points.push_back({l.at, l.total});
        const Loaded loaded(layout_, timber, s, landed_[i]);
        loaded.judge(s, LeastWood(piece).housed());
        hand_on(timber, loaded);
        return s;
    }

    static TimberScreen unloaded(const Piece &piece, const Species &species) {
        const Blank section = LeastWood(piece).section();
        TimberScreen s;
        s.width = section.width;
        s.height = section.height;
        s.elasticity = species.bending.elasticity_green;
        return s;
    }

    /// Beams and trimmers get theirs from what lies on them; a trimmer that carries nothing, from the boards.
    void load(TimberScreen &s, const Timber &timber, const Piece &piece, bool carries_none) const {
        const Floor &floor = floor_of(timber);
        const bool by_others = timber.use == TimberUse::beam || timber.use == TimberUse::trimmer;
        const double strip = by_others && !carries_none ? 0 : timber.load_width;
        s.live = *floor.live_load * n_per_mm2 * strip;
        const Wood wood = wood_of(shell_, piece.species);
        const WeightEstimate own = weigh(piece.blank.width * piece.blank.height, wood);
        s.total = s.live + floor.dead_load.value_or(assumed_dead_load) * n_per_mm2 * strip +
                  own.high_kg * newtons_per_kilogram;
        const Blank least = LeastWood(piece).section();
        s.sure = floor.dead_load.value_or(0) * n_per_mm2 * strip +
                 weigh(least.width * least.height, wood).low_kg * newtons_per_kilogram;
    }

    void hand_on(const Timber &timber, const Loaded &loaded) {
        const auto land = [&](std::optional<Index<Timber>> carrier, double at, std::size_t support) {
            if (!carrier) return;
            Landed landed = loaded.on_support(support);
            landed.at = at;
            landed_[*carrier].push_back(landed);
        };
        land(timber.hold_from.carrier, timber.hold_from.reach, 0);
        for (std::size_t i = 0; i < timber.rests.size(); ++i)
            land(timber.rests[i].beam, timber.rests[i].reach, i + 1);
        land(timber.hold_to.carrier, timber.hold_to.reach, loaded.supports() - 1);
    }

    const Shell &shell_;
    const Layout &layout_;
    Indexed<std::vector<Landed>, Timber> landed_;
};

Said loads_of(const Shell &shell) {
    std::optional<Said> all;
    for (const Floor &floor : shell.floors) {
        if (!floor.live_load || !known_species(shell, floor)) continue;
        const LoadAmount live = in_kpa(*floor.live_load),
                         dead = in_kpa(floor.dead_load.value_or(assumed_dead_load));
        const Said one =
            floor.dead_load
                ? said("floor %1 live %2, dead %3", floor.name, live, dead)
                : said("floor %1 live %2, dead %3 (none is stated, so 10 lb/ft2 rounded up is taken)",
                       floor.name, live, dead);
        all = all ? said("%1; %2", *all, one) : one;
    }
    return all.value_or(Said());
}

Said formulas() {
    return said(
        "Each span as a simple one from middle to middle of its bearings, which is no less than its clear "
        "span and half the bearing needed at each end (NDS 3.2.1, from memory), least section: deflection 5 "
        "w L^4 / (384 E I) for even loads and P b (L^2 - b^2)^1.5 / (9 sqrt(3) L E I) for single ones under "
        "the live load; stresses under the whole load: M / S and 3 V / (2 b h) (Wood Handbook chapter 9, "
        "second-hand), less the housings cut in it; at notched ends 3 V / (2 b dn) x (d / dn)^2 (NDS 2018, "
        "3.4.3.2, second-hand), at tailed ends over the neck; bearing R / (b x bearing). Over a beam two "
        "neighbouring spans are taken as one that runs on, so the beam carries 1.25 w L of equal ones "
        "(statics, derived). Beams, trimmers and joists beside openings carry what the others lay on them. "
        "No allowable stress is published for logs of this wood, hewn and graded by eye, so none stands "
        "beside the stresses: whether they may be allowed is for a licensed person to judge, by the grade's "
        "design values.");
}

/// To a whole megapascal, or to a thousand pounds on a square inch.
std::string stress_words(double mpa, UnitSystem units) {
    if (units == UnitSystem::metric) return std::to_string(std::lround(mpa)) + " MPa";
    constexpr long step = 1000;
    return std::to_string(std::lround(mpa / mpa_per_psi / step) * step) + " psi";
}

/// Of the floors that are screened, each once.
std::vector<const Species *> species_of_floors(const Shell &shell) {
    std::vector<const Species *> all;
    for (const Floor &floor : shell.floors) {
        const Species *species = known_species(shell, floor);
        if (floor.live_load && species && std::ranges::find(all, species) == all.end())
            all.push_back(species);
    }
    return all;
}

Said source_of(const Species &species) {
    const Origin &origin = species.bending.origin;
    const Said mark = phrase(words(origin.mark));
    const std::string source(origin.source);
    return origin.conflict.empty() ? said("%1, %2", source, mark)
                                   : said("%1, %2, though %3", source, mark, phrase(origin.conflict));
}

Said inputs_of(const Shell &shell, const std::vector<const Species *> &woods) {
    const auto stress = [&](const Species &of) {
        return stress_words(of.bending.elasticity_green, shell.units);
    };
    const Species &first = *woods.front();
    Said text =
        said("Loads: %1; and each timber's own weight, at the high end. E %2 is a mean of small clear green "
             "%3, no design value: sticks with knots bend more (%4).",
             loads_of(shell), stress(first), phrase(first.name), source_of(first));
    for (std::size_t i = 1; i < woods.size(); ++i)
        text = said("%1 E %2 is one of small clear green %3 (%4).", text, stress(*woods[i]),
                    phrase(woods[i]->name), source_of(*woods[i]));
    const bool assumed =
        shell.wood.species.empty() && std::ranges::any_of(shell.floors, [](const Floor &floor) {
            return floor.live_load && floor.species.empty();
        });
    return assumed ? said("%1 No species is stated: eastern hemlock is taken.", text) : text;
}

} // namespace

FloorScreen screen_floors(const Shell &shell, const Layout &layout) {
    FloorScreen result;
    const auto woods = species_of_floors(shell);
    if (woods.empty() || layout.timbers.empty()) return result;
    result.formulas = formulas();
    result.inputs = inputs_of(shell, woods);
    result.basis = said("%1 %2 %3", result.formulas, result.inputs, phrase(joist_caution));
    result.timbers = Screener(shell, layout).all();
    return result;
}

} // namespace roundlay
