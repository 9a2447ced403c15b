#include "exporters/sheets/elevation/wall_bores.h"

#include "exporters/sheets/drawing/text.h"
#include "exporters/sheets/shell_view/bore_symbols.h"

#include <algorithm>
#include <cmath>

namespace roundlay::sheets {
namespace {

constexpr double lettering = 2.5;
constexpr double least_drawn = 0.3; ///< a radius smaller than this on paper is its centre line only

} // namespace

WallBores::WallBores(const Shell &shell, const Layout &layout, Index<WallPlace> wall, AlongPaper along,
                     const Words &words)
    : shell_(shell), wall_(layout.walls.at(wall)), along_(along), scale_(std::abs(along.scale)) {
    for (PlacedBore &bore : named_bores(shell, layout, words))
        if (bore.wall == wall && !bore.logs.empty()) bores_.push_back(std::move(bore));
}

WallBores::Stretch WallBores::stretch_of(const BoredLog &log) const {
    const Vec3 foot = wall_.frame.to_local(log.foot);
    return {along_(foot.x), foot.z * scale_, (foot.z + log.length) * scale_};
}

double WallBores::diameter_of(const PlacedBore &bore) const {
    return shell_.bores[bore.stated].diameter.mm() * scale_;
}

void WallBores::add_lines(Board &board) const {
    constexpr double past = 1.5;
    for (const PlacedBore &bore : bores_)
        for (const BoredLog &log : bore.logs) {
            const Stretch s = stretch_of(log);
            const double r = diameter_of(bore) / 2;
            const double low = s.low - (&log == &bore.logs.front() ? past : 0);
            const double high = s.high + (&log == &bore.logs.back() ? past : 0);
            board.add(Path{{{s.x, low}, {s.x, high}}, false, Line::centre, ""});
            for (const double side : {s.x - r, s.x + r})
                if (r > least_drawn)
                    board.add(Path{{{side, s.low}, {side, s.high}}, false, Line::hidden, ""});
        }
}

std::vector<Vec2> WallBores::places_for(const PlacedBore &bore) const {
    std::vector<Vec2> places;
    const double aside = text_width(bore.mark, lettering) / 2 + diameter_of(bore) / 2 + 0.8;
    const Stretch top = stretch_of(bore.logs.back());
    for (const double up : {3.2, 6.5, 10.0})
        for (const double shift : {0.0, aside, -aside})
            places.push_back({top.x + shift, top.high + up});
    for (auto log = bore.logs.rbegin(); log != bore.logs.rend(); ++log) {
        const Stretch s = stretch_of(*log);
        for (const double part : {0.5, 0.25, 0.75})
            for (const double way : {aside, -aside})
                places.push_back({s.x + way, s.low + part * (s.high - s.low)});
    }
    return places;
}

void WallBores::add_marks(Board &board, std::vector<std::string> &without) const {
    for (const PlacedBore &bore : bores_) {
        if (!board.put(mark_text(bore.mark), places_for(bore), 0.3)) without.push_back(bore.mark);
    }
}

void WallBores::add_places(std::vector<Mark> &marks, const Words &words, double same) const {
    for (const PlacedBore &bore : bores_) {
        const double place = wall_.frame.to_local(bore.logs.front().foot).x, at = along_(place);
        const auto known = std::find_if(marks.begin(), marks.end(), [&](const Mark &m) {
            return std::abs(m.at - at) < same && !m.origin;
        });
        if (known != marks.end())
            known->number += "  " + bore.mark;
        else
            marks.push_back({at, words.length(place) + "  " + bore.mark, false});
    }
}

} // namespace roundlay::sheets
