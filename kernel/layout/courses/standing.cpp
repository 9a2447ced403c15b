#include "kernel/layout/courses/standing.h"

#include "kernel/geometry/tolerance.h"
#include "kernel/layout/cuts/asked.h"

#include <algorithm>
#include <cmath>

namespace roundlay {

namespace {

/// Less than a rule shows is not out of level.
constexpr double told = 1;

/// The top of a log at its lower end: hewn level, or at a slant.
double lowest_top(const Piece &piece) {
    double low = piece.blank.height;
    for (const Cut &cut : piece.cuts)
        if (const Plane *top = hewn_plane(cut, LogFace::top))
            for (const double x : {0.0, piece.blank.length})
                low = std::min(low, top->height_at(x, 0));
    return piece.frame.origin.z + low;
}

std::string printed(double mm, UnitSystem units) {
    return print_length(Length::mm(mm), {.system = units});
}

/// "B", "B and D", "A, B and D".
Said listed(const std::vector<std::string> &names) {
    std::string text;
    for (std::size_t i = 0; i + 1 < names.size(); ++i)
        text += (i == 0 ? "" : ", ") + names[i];
    return text.empty() ? said("%1", names.back()) : said("%1 and %2", text, names.back());
}

} // namespace

Indexed<WallStanding, WallPlace> standing_of(const Layout &layout) {
    Indexed<WallStanding, WallPlace> all;
    if (layout.pieces.empty()) return all;
    for (const auto w : layout.walls.indices())
        all.push_back({w, 0, 0, 0});
    for (const Piece &p : layout.pieces) {
        if (!is_log(p)) continue;
        WallStanding &s = all[p.wall];
        if (p.round < s.logs) continue;
        const double low = lowest_top(p), high = p.frame.origin.z + p.blank.height;
        const bool first = p.round > s.logs;
        s = {p.wall, p.round, first ? low : std::min(s.lowest, low),
             first ? high : std::max(s.highest, high)};
    }
    return all;
}

WallStanding standing_in_all(const Layout &layout) {
    const auto walls = standing_of(layout);
    if (walls.empty()) return {};
    WallStanding all = walls.front();
    for (const WallStanding &s : walls) {
        if (s.logs > all.logs) all.wall = s.wall, all.logs = s.logs;
        all.lowest = std::min(all.lowest, s.lowest);
        all.highest = std::max(all.highest, s.highest);
    }
    return all;
}

Said height_words(const Layout &layout, UnitSystem units) {
    const WallStanding s = standing_in_all(layout);
    const LengthAmount nominal = in_mm(layout.height), low = in_mm(s.lowest), high = in_mm(s.highest);
    if (s.logs == 0) return said("%1 high", nominal);
    const bool level = printed(s.lowest, units) == printed(s.highest, units);
    if (!level) return said("%1 to %2 high (%3 by its rounds)", low, high, nominal);
    if (printed(s.highest, units) == printed(layout.height, units)) return said("%1 high", high);
    return said("%1 high (%2 by its rounds)", high, nominal);
}

Said round_words(const Layout &layout) {
    const bool one = layout.rounds == 1;
    Said rounds = one ? said("%1 round", layout.rounds) : said("%1 rounds", layout.rounds);
    const int most = standing_in_all(layout).logs;
    if (most <= layout.rounds) return rounds;
    std::vector<std::string> names;
    for (const WallStanding &s : standing_of(layout))
        if (s.logs == most) names.push_back(layout.walls[s.wall].name);
    return names.size() == 1 ? said("%1 (%2 logs in wall %3)", rounds, most, listed(names))
                             : said("%1 (%2 logs in walls %3)", rounds, most, listed(names));
}

std::optional<Finding> note_pitch_left_out(const Shell &shell, const Layout &layout) {
    const WallStanding all = standing_in_all(layout);
    if (!(shell.logs.butt_height || shell.logs.tip_height) || all.logs == 0) return {};
    if (std::abs(all.highest - layout.height) < layout.pitch / 2) return {};
    return Finding{Weight::note,
                   "pitch-left-out",
                   {about::All::rounds},
                   said("the heights stated of logs count, not the pitch: the walls stand %1 high, "
                        "where %2 rounds of %3 make %4",
                        in_mm(all.highest), layout.rounds, in_mm(layout.pitch), in_mm(layout.height)),
                   {},
                   "rounds.pitch"};
}

std::optional<Finding> check_level_top(const Shell &shell, const Layout &layout) {
    if (shell.rounds.top != TopRule::level) return {};
    const auto walls = standing_of(layout);
    if (walls.empty()) return {};
    const auto lowest = std::ranges::min_element(walls, {}, &WallStanding::lowest);
    const auto highest = std::ranges::max_element(walls, {}, &WallStanding::highest);
    const double off = highest->highest - lowest->lowest;
    if (off < told) return {};
    const auto name = [&](const WallStanding &s) { return layout.walls[s.wall].name; };
    return Finding{
        off > taken_up_by_plate ? Weight::warning : Weight::note,
        "top-not-level",
        {about::All::top_of_walls},
        said("the top is to be level but ends %1 out of it: wall %2 reaches %3, wall %4 only %5 at its "
             "lower end",
             in_mm(off), name(*highest), in_mm(highest->highest), name(*lowest), in_mm(lowest->lowest)),
        said("other logs in the rounds below, or a plate hewn to suit, make it so"),
        "rounds.top"};
}

} // namespace roundlay
