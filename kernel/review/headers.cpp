#include "kernel/review/headers.h"

#include "kernel/geometry/tolerance.h"
#include "kernel/layout/advice/trial.h"
#include "kernel/layout/cuts/match.h"
#include "kernel/layout/lay_out.h"
#include "kernel/layout/openings/openings.h"
#include "kernel/layout/text.h"
#include "kernel/review/opening_facts.h"

#include <algorithm>
#include <cmath>

namespace roundlay {

namespace {

/// A log that carries what lies on it over an opening with less of its wood than this part of the opening's
/// width is told of. Common practice, no source: it screens nothing.
constexpr double least_over_width = 1.0 / 20;

/// The wood of a log over an opening, between its jambs, at its least: under 0 where another opening over it
/// meets it there.
class WoodOver {
  public:
    WoodOver(const Layout &layout, const Piece &log, const Opening &o) : log_(log), high_(log.blank.height) {
        const Vec3 at = layout.walls[log.wall].frame.to_local(log.frame.origin);
        left_ = o.from_left.mm() - at.x, right_ = left_ + o.width.mm();
        top_ = (o.sill + o.height).mm() - at.z;
        for (const Cut &cut : log.cuts)
            match(
                cut, [&](const BoxCut &box) { take(box); }, [&](const FaceCut &face) { take(face); },
                [&](const RoundCut &round) { take(round); }, [&](const ScopeCut &scope) { take(scope); },
                [&](const PocketCut &pocket) { take(pocket); },
                passing<SeamCut>,   // at corners, which keep clear of openings
                passing<Bore>,      // upright: as much height is left beside it
                passing<MendCut>,   // logs are looked at as they are without mends
                passing<CheekCut>); // of a joist's end
    }

    /// A housing is taken off right through the log, though it is let into one side only.
    double mm() const {
        double housed = 0;
        for (const auto &[bed, ceiling] : pockets_)
            housed = std::max(housed, std::min(ceiling, high_) - std::max(bed, low_));
        return high_ - low_ - housed;
    }

  private:
    void take(const BoxCut &cut) {
        if (cut.box.high.x <= left_ || cut.box.low.x >= right_) return;
        if (cut.box.low.z >= top_ - tolerance::weld) // an opening over this one, its sill at its lowest
            high_ = std::min(high_, cut.box.low.z - cut.fall * cut.fall_from);
        else if (cut.use != BoxUse::sill)
            low_ = std::max(low_, cut.box.high.z);
    }
    void take(const RoundCut &cut) { high_ = std::min(high_, std::max(cut.from.z, cut.to.z) + cut.radius); }
    /// As deep as it is in the middle of the log.
    void take(const ScopeCut &cut) {
        const double from = cut.use == ScopeUse::groove ? cut.x_from : cut.at.x - cut.half_width(),
                     to = cut.use == ScopeUse::groove ? cut.x_to : cut.at.x + cut.half_width();
        if (to > left_ && from < right_) low_ = std::max(low_, cut.at.z + cut.radius);
    }
    void take(const PocketCut &cut) {
        const double half = std::max(cut.half_at_face, cut.half_at_back);
        if (cut.x + half <= left_ || cut.x - half >= right_) return;
        pockets_.emplace_back(cut.bed.height_at(cut.x, (cut.y_face + cut.y_back) / 2), cut.z_top);
    }
    void take(const FaceCut &cut) {
        for (const double x : {left_, right_}) {
            if (cut.face == LogFace::top)
                high_ = std::min(high_, cut.plane.height_at(x, log_.blank.width / 2));
            if (cut.face == LogFace::under)
                low_ = std::max(low_, cut.plane.height_at(x, log_.blank.width / 2));
        }
    }

    const Piece &log_;
    double left_ = 0, right_ = 0, top_ = 0; ///< of the opening, in the log's own frame
    double low_ = 0, high_ = 0;
    std::vector<std::pair<double, double>> pockets_; ///< bed and ceiling of those over the opening
};

void check_thin_header(const Shell &shell, const Layout &layout, std::size_t opening,
                       const OpeningFacts &facts, Findings &findings) {
    const Opening &o = shell.openings[opening];
    const double width = o.width.mm();
    const double left = WoodOver(layout, layout.pieces[*facts.header], o).mm();
    if (left >= least_over_width * width - tolerance::weld) return;
    const std::string &log = layout.pieces[*facts.header].tag;
    findings.push_back(
        {Weight::warning,
         "thin-header",
         opening_place(shell, opening),
         left >= tolerance::clear
             ? said("of the log over it, %1, %2 are left to carry over %3. What it carries is "
                    "not worked out here: local "
                    "code and a licensed professional decide",
                    log, in_mm(left), in_mm(width))
             : said("of the log over it, %1, nothing is left to carry over %2: an opening over "
                    "it cuts it through by %3. Local code and a licensed professional decide",
                    log, in_mm(width), in_mm(std::max(0.0, -left))),
         {},
         subject("opening", opening, "height")});
}

bool bears(const Shell &shell, const Layout &layout, std::size_t opening, double least) {
    const OpeningFacts facts = opening_facts(shell, layout)[opening];
    return !facts.header || std::min(facts.runs_left, facts.runs_right) >= least - tolerance::weld;
}

/// The shell is laid out with the opening moved, by so much (to the right) and then further: told is where it
/// bears and nothing else comes of it.
Said bearing_advice(const Shell &shell, const Layout &layout, std::size_t opening, double least,
                    double short_by) {
    const double way = short_by < 0 ? -1 : 1;
    for (const double further : {0.0, 50.0, 100.0, 200.0}) {
        const double by = rounded_up(shell, std::abs(short_by) + further);
        Shell moved = shell;
        moved.openings[opening].from_left = moved.openings[opening].from_left + Length::mm(way * by);
        const Layout tried = lay_out_to_try(moved);
        if (tried.pieces.empty() || warnings_in(tried.findings) > warnings_in(layout.findings) ||
            !bears(moved, tried, opening, least))
            continue;
        const LengthAmount wanted = in_mm(least), far = exactly_in_mm(by);
        return way > 0 ? said("%1 is asked for: move the opening %2 to the right, or change a height", wanted,
                              far)
                       : said("%1 is asked for: move the opening %2 to the left, or change a height", wanted,
                              far);
    }
    return said("%1 is asked for: another place or height of the opening gives it", in_mm(least));
}

} // namespace

Findings review_headers(const Shell &shell, const Layout &layout, bool advises) {
    Findings findings;
    const auto facts = opening_facts(shell, layout);
    for (std::size_t i = 0; i < facts.size(); ++i) {
        const OpeningFacts &f = facts[i];
        const double runs = std::min(f.runs_left, f.runs_right);
        const double least = trim_of(shell, shell.openings[i]).header_bearing.mm();
        if (f.header) check_thin_header(shell, layout, i, f, findings);
        if (!f.header || runs >= least - tolerance::weld) continue;
        const bool left = f.runs_left < f.runs_right;
        findings.push_back(
            {Weight::warning, "header-bears-short", opening_place(shell, i),
             said("the log over it, %1, runs only %2 past its %3 jamb", layout.pieces[*f.header].tag,
                  in_mm(runs), left ? said("left") : said("right")),
             advises
                 ? std::optional(bearing_advice(shell, layout, i, least, left ? least - runs : runs - least))
                 : std::nullopt,
             subject("opening", i, "from_left")});
    }
    return findings;
}

} // namespace roundlay
