#include "exporters/sheets/cut_sheet/hidden_lines.h"

#include <algorithm>
#include <array>
#include <tuple>

namespace roundlay::sheets {
namespace {

constexpr double same_line = 1e-3;  ///< mm of wood: two stretches this near are one line on paper
constexpr double least_rest = 0.05; ///< mm of wood: a shorter rest is not drawn

struct Span {
    double from, to;
};

/// All stretches on one infinite line.
struct Track {
    Vec2 origin, direction;
    std::array<std::vector<Span>, 3> spans; ///< visible, cut off, hidden

    bool holds(Vec2 p) const { return std::abs(cross(direction, p - origin)) < same_line; }
    double along(Vec2 p) const { return dot(p - origin, direction); }
};

std::size_t rank(const Stretch &s) {
    return s.seen == Seen::hidden ? 2 : s.cut_off ? 1 : 0;
}

std::vector<Span> joined_spans(std::vector<Span> spans) {
    std::sort(spans.begin(), spans.end(), [](Span a, Span b) { return a.from < b.from; });
    std::vector<Span> out;
    for (const Span s : spans) {
        if (!out.empty() && s.from <= out.back().to + same_line)
            out.back().to = std::max(out.back().to, s.to);
        else
            out.push_back(s);
    }
    return out;
}

std::vector<Span> less(const std::vector<Span> &spans, const std::vector<Span> &taken) {
    std::vector<Span> rest = spans;
    for (const Span t : taken) {
        std::vector<Span> next;
        for (const Span s : rest) {
            if (t.to <= s.from || s.to <= t.from) {
                next.push_back(s);
                continue;
            }
            if (t.from - s.from > least_rest) next.push_back({s.from, t.from});
            if (s.to - t.to > least_rest) next.push_back({t.to, s.to});
        }
        rest = std::move(next);
    }
    return rest;
}

Track &track_for(std::vector<Track> &tracks, const Stretch &s) {
    for (Track &track : tracks)
        if (track.holds(s.from) && track.holds(s.to)) return track;
    const Vec2 d = s.to - s.from;
    tracks.push_back({s.from, (1 / length(d)) * d, {}});
    return tracks.back();
}

void add_spans(std::vector<Stretch> &out, const Track &track, const std::vector<Span> &spans,
               std::size_t kind) {
    for (const Span s : spans) {
        Vec2 from = track.origin + s.from * track.direction, to = track.origin + s.to * track.direction;
        if (std::tuple(to.x, to.y) < std::tuple(from.x, from.y)) std::swap(from, to);
        out.push_back({from, to, kind == 2 ? Seen::hidden : Seen::visible, kind == 1});
    }
}

} // namespace

std::vector<Stretch> tidied(const std::vector<Stretch> &stretches) {
    // The longest first: they give their lines the surest direction.
    std::vector<Stretch> ordered = stretches;
    std::stable_sort(ordered.begin(), ordered.end(), [](const Stretch &a, const Stretch &b) {
        return length(a.to - a.from) > length(b.to - b.from);
    });
    std::vector<Track> tracks;
    for (const Stretch &s : ordered) {
        if (length(s.to - s.from) < same_line) continue;
        Track &track = track_for(tracks, s);
        const auto [low, high] = std::minmax({track.along(s.from), track.along(s.to)});
        track.spans[rank(s)].push_back({low, high});
    }
    std::vector<Stretch> out;
    for (const Track &track : tracks) {
        std::vector<Span> drawn;
        for (std::size_t kind = 0; kind < track.spans.size(); ++kind) {
            const std::vector<Span> rest = less(joined_spans(track.spans[kind]), drawn);
            add_spans(out, track, rest, kind);
            drawn.insert(drawn.end(), rest.begin(), rest.end());
        }
    }
    std::sort(out.begin(), out.end(), [](const Stretch &a, const Stretch &b) {
        return std::tuple(rank(a), a.from.x, a.from.y, a.to.x, a.to.y) <
               std::tuple(rank(b), b.from.x, b.from.y, b.to.x, b.to.y);
    });
    return out;
}

} // namespace roundlay::sheets
