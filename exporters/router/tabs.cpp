#include "exporters/router/tabs.h"

#include <algorithm>
#include <cmath>

namespace roundlay {

namespace {

constexpr double rounding = 1e-3; // of the library's whole numbers
constexpr std::size_t fewest_tabs = 2;

/// Left of the way, where the wood goes.
Vec2 away(Vec2 along) {
    return {-along.y, along.x};
}

struct Straight {
    Vec2 from, to;
    Vec2 at(double so_far) const { return from + so_far / length(to - from) * (to - from); }
    Vec2 direction() const { return 1 / length(to - from) * (to - from); }
};

class Placer {
  public:
    Placer(const WayRound &way, const std::vector<Vec2> &outline, const RouterOptions &stated)
        : way_(way), outline_(outline), tool_(*stated.tool), stated_(stated) {}

    std::optional<RouterContour> placed() {
        RouterContour contour;
        const auto first = start();
        if (!first) return {};
        begin(contour, *first);
        if (!add_tabs(contour)) return {};
        return contour;
    }

  private:
    Vec2 begin_of(std::size_t move) const { return move == 0 ? way_.start : way_.moves[move - 1].to; }

    /// Whether the wood that goes is that wide there, seen from the template's edge.
    bool is_open(const Straight &line, double so_far, double wide) const {
        const Vec2 out = line.at(so_far) + (wide - tool_ / 2) * away(line.direction());
        return distance_to(outline_, out) > wide - rounding;
    }

    /// The longest straight move whose middle has room for the lead.
    std::optional<std::size_t> start() const {
        std::optional<std::size_t> best;
        double longest = 0;
        for (std::size_t i = 0; i < way_.moves.size(); ++i) {
            if (way_.moves[i].centre) continue;
            const Straight line{begin_of(i), way_.moves[i].to};
            const double along = length(line.to - line.from);
            if (along < longest + rounding || !is_open(line, along / 2, tool_)) continue;
            longest = along, best = i;
        }
        return best;
    }

    void begin(RouterContour &contour, std::size_t first) const {
        const Straight line{begin_of(first), way_.moves[first].to};
        contour.start = line.at(length(line.to - line.from) / 2);
        const double lead = tool_ / 2;
        contour.lead_centre = contour.start + lead * away(line.direction());
        contour.lead_from = contour.lead_centre - lead * line.direction();
        contour.lead_to = contour.lead_centre + lead * line.direction();
        const std::size_t n = way_.moves.size();
        for (std::size_t k = 0; k < n; ++k)
            contour.moves.push_back(way_.moves[(first + k) % n]);
        contour.moves.push_back({contour.start});
    }

    /// Where the middle of a tab may be, by the length of way from the start.
    struct Room {
        double along;
        std::size_t move;
        double in_move;
    };

    std::vector<Room> rooms(const RouterContour &contour, double &total) const {
        const double half = (stated_.tab_width + tool_) / 2, step = 1;
        std::vector<Room> all;
        Vec2 at = contour.start;
        total = 0;
        for (std::size_t i = 0; i < contour.moves.size(); ++i) {
            const RouterMove &move = contour.moves[i];
            const Straight line{at, move.to};
            const double along = length(move.to - at);
            const bool first = i == 0, last = i + 1 == contour.moves.size();
            if (!move.centre)
                for (double so = half + (first ? tool_ : 0); so < along - half - (last ? tool_ : 0);
                     so += step)
                    if (holds(line, so)) all.push_back({total + so, i, so});
            total += along; // of an arc its chord: tabs are only spread by it
            at = move.to;
        }
        return all;
    }

    bool holds(const Straight &line, double so_far) const {
        const double half = stated_.tab_width / 2, wide = 2 * tool_;
        return is_open(line, so_far - half, wide) && is_open(line, so_far, wide) &&
               is_open(line, so_far + half, wide);
    }

    bool add_tabs(RouterContour &contour) const {
        double total = 0;
        const std::vector<Room> all = rooms(contour, total);
        std::vector<Room> taken;
        const double apart = stated_.tab_width + 2 * tool_;
        for (int tab = 0; tab < stated_.tabs; ++tab) {
            const double wanted = total * (tab + 0.5) / stated_.tabs;
            const Room *best = nullptr;
            for (const Room &room : all) {
                const bool free = std::ranges::none_of(
                    taken, [&](const Room &other) { return std::abs(other.along - room.along) < apart; });
                if (free && (!best || std::abs(room.along - wanted) < std::abs(best->along - wanted)))
                    best = &room;
            }
            if (best) taken.push_back(*best);
        }
        if (taken.size() < fewest_tabs) return false;
        std::ranges::sort(taken, [](const Room &a, const Room &b) { return a.along > b.along; });
        for (const Room &room : taken)
            cut_up(contour, room);
        return true;
    }

    /// From the last tab to the first, so that those before it stay where they are.
    void cut_up(RouterContour &contour, const Room &room) const {
        const Vec2 from = room.move == 0 ? contour.start : contour.moves[room.move - 1].to;
        const Straight line{from, contour.moves[room.move].to};
        const double half = (stated_.tab_width + tool_) / 2;
        RouterMove before{line.at(room.in_move - half)}, over{line.at(room.in_move + half)};
        over.over_tab = true;
        const auto here = contour.moves.begin() + static_cast<std::ptrdiff_t>(room.move);
        contour.moves.insert(here, {before, over});
    }

    const WayRound &way_;
    const std::vector<Vec2> &outline_;
    double tool_;
    const RouterOptions &stated_;
};

} // namespace

std::optional<RouterContour> contour_with_tabs(const WayRound &way, const std::vector<Vec2> &outline,
                                               const RouterOptions &complete) {
    return Placer(way, outline, complete).placed();
}

} // namespace roundlay
