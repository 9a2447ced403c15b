// Seams: where they are in words, how high on the faces.
#include "tests/sheets/support/paper_cuts.h"
#include "tests/sheets/support/paper_table.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace roundlay::test {
namespace {

const std::string len = a_length;

/// "up 1:8", "down 1:19.3", "level"
double slope_of(const std::string &words) {
    static const std::regex form("(up|down) ([0-9.]+):([0-9.]+)");
    std::smatch m;
    if (!std::regex_match(words, m, form)) return 0;
    return (m[1] == "up" ? 1 : -1) * std::stod(m[2]) / std::stod(m[3]);
}

/// One of the four corners of a seam and the heights that may be its.
struct Corner {
    double x = 0, y = 0, lowest = 0, highest = 0, line = 0;
    std::vector<double> heights;
    double chosen = 0; ///< in the piece frame
    bool known = false;
};

struct SeamWords {
    bool top = true, far = false;
    PaperPlace from, to;
    double slope_x = 0, slope_y = 0;
};

PaperPlace place_at(double outside, const std::vector<PaperPlace> &slants) {
    for (const PaperPlace &slant : slants)
        if (slant.outside == outside) return slant;
    return {outside, outside};
}

std::vector<Corner> corners_of(const SeamWords &seam, const PaperLog &log, const PaperViews &views) {
    std::vector<Corner> all;
    for (const int side : {-1, 1})
        for (const bool outside : {true, false}) {
            const PaperPlace &place = side < 0 ? seam.from : seam.to;
            Corner c;
            c.x = outside ? place.outside : place.inside;
            c.y = outside ? log.outermost(c.x) : log.innermost(c.x);
            c.lowest = log.lowest(c.x);
            c.highest = log.highest(c.x);
            c.line = log.line.at(c.x);
            c.heights = views.heights(place, outside, side);
            all.push_back(std::move(c));
        }
    return all;
}

/// Where the seam's plane would cut the datum end's outside arris if a corner were that high.
double foot(const SeamWords &seam, const Corner &c, double height) {
    return c.line + height - seam.slope_x * c.x - seam.slope_y * c.y;
}

/// How many corners have a number that agrees with that plane, and by how much they are off in all.
std::pair<int, double> agreement(const SeamWords &seam, std::vector<Corner> &corners, double at,
                                 double near) {
    int count = 0;
    double off = 0;
    for (Corner &c : corners) {
        c.known = false;
        for (const double h : c.heights) {
            const double away = std::abs(foot(seam, c, h) - at);
            if (away > near || (c.known && away >= std::abs(foot(seam, c, c.chosen - c.line) - at))) continue;
            c.chosen = c.line + h;
            c.known = true;
        }
        if (!c.known) continue;
        ++count;
        off += std::abs(foot(seam, c, c.chosen - c.line) - at);
    }
    return {count, off};
}

/// Corners at which the plane is in the wood have a number; at the others there is nothing to be marked.
int in_wood(const SeamWords &seam, const std::vector<Corner> &corners, double at, double near) {
    return static_cast<int>(std::count_if(corners.begin(), corners.end(), [&](const Corner &c) {
        const double z = at + seam.slope_x * c.x + seam.slope_y * c.y;
        return z > c.lowest + near && z < c.highest - near;
    }));
}

/// Chooses the numbers that lie in one plane of the slopes stated.
std::vector<Corner> chosen(const SeamWords &seam, std::vector<Corner> corners, double near) {
    const bool level = std::abs(seam.slope_x) + std::abs(seam.slope_y) < 1e-2;
    std::pair<int, double> best{0, 0};
    std::vector<Corner> best_corners;
    double best_at = 0;
    for (std::size_t i = 0; i < corners.size(); ++i)
        for (const double h : std::vector<double>(corners[i].heights)) {
            const double at = foot(seam, corners[i], h);
            const auto got = agreement(seam, corners, at, near);
            const bool same = std::abs(at - best_at) < near;
            // two level laps, one over the other: the upper is the top's, even where one of its numbers is
            // not found
            const int enough = level ? 3 : 4;
            const int more = std::min(got.first, enough) - std::min(best.first, enough);
            const bool nicer = same ? got.second < best.second : seam.top == (at > best_at);
            if (more < 0 || (more == 0 && best.first > 0 && !nicer)) continue;
            best = got;
            best_corners = corners;
            best_at = at;
        }
    if (best.first == 0) throw std::runtime_error("no height beside a seam");
    if (best.first < in_wood(seam, corners, best_at, near))
        throw std::runtime_error("only " + std::to_string(best.first) + " heights of a seam agree");
    return best_corners;
}

/// The plane through the numbers: with its stated slopes where they are less than three, else its own.
Plane plane_through(const SeamWords &seam, const std::vector<Corner> &corners) {
    const auto known = std::count_if(corners.begin(), corners.end(), [](const Corner &c) { return c.known; });
    double along = seam.slope_x, across = seam.slope_y, at = 0;
    if (known == 4) {
        const auto &c = corners; // from: outside, inside; to: outside, inside
        along = ((c[2].chosen - c[0].chosen) / (c[2].x - c[0].x) +
                 (c[3].chosen - c[1].chosen) / (c[3].x - c[1].x)) /
                2;
        across = 0;
        for (const int i : {0, 2})
            across +=
                (c[i + 1].chosen - c[i].chosen - along * (c[i + 1].x - c[i].x)) / (c[i + 1].y - c[i].y) / 2;
    }
    for (const Corner &c : corners)
        if (c.known) at += (c.chosen - along * c.x - across * c.y) / static_cast<double>(known);
    return plane_over(at, along, across);
}

} // namespace

bool add_seam(const PaperStep &step, const PaperLog &log, const std::vector<PaperPlace> &slants,
              const PaperViews &views, std::vector<Cut> &cuts) {
    static const std::regex form("(Top|Underside) of (?:tail|notch) (?:at|near) (.*), from (" + len +
                                 ") to (" + len + ")(?:, leave (" + len + ") proud at the shoulders)?");
    std::smatch m;
    if (!std::regex_match(step.words, m, form)) return false;
    SeamWords seam;
    seam.top = m[1] == "Top";
    seam.from = place_at(printed_mm(m[3]), slants);
    seam.to = place_at(printed_mm(m[4]), slants);
    seam.far = m[2] == "far end" || (m[2] != "datum end" && seam.from.outside + seam.to.outside > log.length);
    const bool at_an_end = m[2] == "far end" || m[2] == "datum end";
    const std::string slope = step.along.substr(0, step.along.find(" to the far end"));
    if (!at_an_end && slope != "level" && slope == step.along) return false; // up to which end?
    seam.slope_x = (seam.far || !at_an_end ? 1 : -1) * slope_of(slope);
    seam.slope_y = -slope_of(step.across);
    const double digit = step.words.find('"') == std::string::npos ? 1 : 25.4 / 16;
    const double near = digit * (log.under.per_mm == 0 ? 1.3 : 2.2);
    const auto corners = chosen(seam, corners_of(seam, log, views), near);
    SeamCut cut;
    cut.side = seam.top ? Side::top : Side::under;
    cut.end = seam.far ? End::far : End::datum;
    // between the two faces as they are hewn, put to the middle of the blank
    const auto middle = [&](const PaperPlace &p, double &skew) {
        const double y0 = log.outermost(p.outside), y1 = log.innermost(p.inside);
        skew = (p.inside - p.outside) / (y1 - y0);
        return p.outside + skew * (log.width / 2 - y0);
    };
    double from_skew = 0, to_skew = 0;
    cut.x_from = middle(seam.from, from_skew);
    cut.x_to = middle(seam.to, to_skew);
    cut.skew = (from_skew + to_skew) / 2;
    cut.seam = plane_through(seam, corners);
    if (!seam.top) cut.seam = cut.seam.flipped();
    if (m[5].matched) cut.proud = printed_mm(m[5]);
    cuts.emplace_back(cut);
    return true;
}

} // namespace roundlay::test
