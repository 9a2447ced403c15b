#include "exporters/sheets/pattern/joints.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace roundlay::sheets {
namespace {

bool near(double a, double b) {
    return std::abs(a - b) < alike_by;
}

bool alike(const SawLine &a, const SawLine &b) {
    return near(a.outside, b.outside) && near(a.inside, b.inside);
}

bool alike(const JointCut &a, const JointCut &b) {
    return a.side == b.side && alike(a.near, b.near) && alike(a.far, b.far) &&
           near(a.outside_near, b.outside_near) && near(a.outside_far, b.outside_far) &&
           near(a.inside_near, b.inside_near) && near(a.inside_far, b.inside_far);
}

/// Slants are compared over a length such as templates have.
bool alike(const HewnFace &a, const HewnFace &b) {
    constexpr double reach = 500;
    return near(a.at_datum, b.at_datum) && near(a.at(reach), b.at(reach));
}

HewnFace from_end(const HewnFace &face, End end, double length) {
    return end == End::datum ? face : HewnFace{face.at(length), -face.per_mm};
}

bool alike(const JointBore &a, const JointBore &b) {
    return near(a.x, b.x) && near(a.y, b.y) && near(a.diameter, b.diameter) && a.from_top == b.from_top;
}

/// Where nothing is bored nobody looks at the side faces.
bool are_bored_alike(const Joint &a, const Joint &b) {
    const auto same = [](const JointBore &x, const JointBore &y) { return alike(x, y); };
    return std::ranges::equal(a.bores, b.bores, same) &&
           (a.bores.empty() || (alike(a.outside, b.outside) && alike(a.inside, b.inside)));
}

bool alike(const Joint &a, const Joint &b) {
    return are_bored_alike(a, b) && a.end == b.end && a.within == b.within && near(a.length, b.length) &&
           alike(a.starts, b.starts) && near(a.width, b.width) && near(a.height, b.height) &&
           near(a.across_end, b.across_end) && alike(a.top, b.top) && alike(a.under, b.under) &&
           alike(a.line, b.line) &&
           std::equal(a.cuts.begin(), a.cuts.end(), b.cuts.begin(), b.cuts.end(),
                      [](const JointCut &x, const JointCut &y) { return alike(x, y); });
}

SawLine from_far(const SawLine &line, double length) {
    return {length - line.outside, length - line.inside};
}

JointCut from_end(const Notch &n, double length) {
    if (n.cut->end == End::datum)
        return {n.cut->side, n.from, n.to, n.outside_from, n.outside_to, n.inside_from, n.inside_to};
    return {n.cut->side, from_far(n.to, length), from_far(n.from, length), n.outside_to, n.outside_from,
            n.inside_to, n.inside_from};
}

/// What is bored from above or underneath in that stretch of log, and shows whole on its template. `place`:
/// where along the template a place along the log is.
template <typename Place>
std::vector<JointBore> bores_in(const Features &features, double length, const Place &place) {
    std::vector<JointBore> bores;
    for (const PegHole &hole : features.pegs) {
        const Bore &bore = *hole.bore;
        const double x = place(bore.x), half = bore.diameter / 2;
        if (x - half > 0 && x + half < length)
            bores.push_back({x, bore.y, bore.diameter, bore.from_top || bore.through});
    }
    std::ranges::sort(bores, {}, &JointBore::x);
    return bores;
}

Joint joint_at(const Features &features, End end) {
    const Piece &piece = *features.piece;
    Joint joint;
    joint.end = end;
    joint.width = piece.blank.width;
    joint.height = piece.blank.height;
    joint.top = from_end(features.top, end, piece.blank.length);
    joint.under = from_end(features.under, end, piece.blank.length);
    joint.line = from_end(features.level.at, end, piece.blank.length);
    const SawLine &saw = end == End::datum ? features.datum_end : features.far_end;
    joint.starts = end == End::datum ? saw : from_far(saw, piece.blank.length);
    joint.across_end = features.innermost(saw.inside) - features.outermost(saw.outside);
    for (const Notch &n : features.notches)
        if (n.cut->end == end && !n.cut->runs_on) joint.cuts.push_back(from_end(n, piece.blank.length));
    std::sort(joint.cuts.begin(), joint.cuts.end(),
              [](const JointCut &a, const JointCut &b) { return a.side < b.side; });
    for (const JointCut &cut : joint.cuts)
        joint.length = std::max(joint.length, std::max(cut.far.outside, cut.far.inside) + past_shoulder);
    joint.length = std::min(joint.length, piece.blank.length);
    joint.outside = from_end(features.outside, end, piece.blank.length);
    joint.inside = from_end(features.inside, end, piece.blank.length);
    joint.bores = bores_in(features, joint.length,
                           [&](double x) { return end == End::datum ? x : piece.blank.length - x; });
    return joint;
}

std::vector<std::string> corners_run_past(const Features &features) {
    std::vector<std::string> corners;
    for (const Notch &n : features.notches)
        if (n.cut->runs_on && std::find(corners.begin(), corners.end(), n.cut->corner) == corners.end())
            corners.push_back(n.cut->corner);
    return corners;
}

bool is_run_past(const Notch &n, const std::string &corner) {
    return n.cut->runs_on && n.cut->corner == corner;
}

/// The stretch of the log round its notch at that corner.
std::pair<double, double> stretch_round(const Features &features, const std::string &corner) {
    const double length = features.piece->blank.length;
    double from = length, to = 0;
    for (const Notch &n : features.notches) {
        if (!is_run_past(n, corner)) continue;
        from = std::min({from, n.from.outside, n.from.inside});
        to = std::max({to, n.to.outside, n.to.inside});
    }
    return {std::max(0.0, from - past_shoulder), std::min(length, to + past_shoulder)};
}

JointCut cut_from(const Notch &n, double from) {
    return {n.cut->side,
            {n.from.outside - from, n.from.inside - from},
            {n.to.outside - from, n.to.inside - from},
            n.outside_from,
            n.outside_to,
            n.inside_from,
            n.inside_to};
}

/// A notch in the run of a log, with some log on either side of it.
Joint joint_within(const Features &features, const std::string &corner) {
    const Blank &blank = features.piece->blank;
    Joint joint;
    joint.within = true;
    joint.width = blank.width;
    joint.height = blank.height;
    const auto [from, to] = stretch_round(features, corner);
    joint.length = to - from;
    joint.top = {features.top.at(from), features.top.per_mm};
    joint.under = {features.under.at(from), features.under.per_mm};
    joint.line = {features.level.at.at(from), features.level.at.per_mm};
    for (const Notch &n : features.notches)
        if (is_run_past(n, corner)) joint.cuts.push_back(cut_from(n, from));
    std::sort(joint.cuts.begin(), joint.cuts.end(),
              [](const JointCut &a, const JointCut &b) { return a.side < b.side; });
    joint.outside = {features.outside.at(from), features.outside.per_mm};
    joint.inside = {features.inside.at(from), features.inside.per_mm};
    joint.bores = bores_in(features, joint.length, [from = from](double x) { return x - from; });
    return joint;
}

/// Of the cut's line on that face, toward the log's end and away from it.
std::pair<Vec2, Vec2> ends_of(const JointCut &cut, bool on_outside) {
    if (on_outside) return {{cut.near.outside, cut.outside_near}, {cut.far.outside, cut.outside_far}};
    return {{cut.near.inside, cut.inside_near}, {cut.far.inside, cut.inside_far}};
}

/// Heights along one edge of the face, from the log's end to the template's: level but for the cuts.
std::vector<Vec2> edge(const Joint &joint, Side side, bool on_outside) {
    const HewnFace &face = side == Side::top ? joint.top : joint.under;
    const double start = on_outside ? joint.starts.outside : joint.starts.inside;
    std::vector<Vec2> points;
    const auto add = [&](Vec2 p) {
        if (points.empty() || length(points.back() - p) > alike_by) points.push_back(p);
    };
    bool started = false;
    for (const JointCut &cut : joint.cuts) {
        if (cut.side != side) continue;
        const auto [near, far] = ends_of(cut, on_outside);
        if (near.x > start + alike_by) {
            add({start, face.at(start)});
            add({near.x, face.at(near.x)});
        }
        add(near);
        add(far);
        add({far.x, face.at(far.x)});
        started = true;
    }
    if (!started) add({start, face.at(start)});
    add({joint.length, face.at(joint.length)});
    return points;
}

/// To those that are alike, or as a new one; what it is called, which is nothing where nothing is cut.
std::string add_joint(std::vector<Joint> &joints, Joint joint, const std::string &tag) {
    if (joint.cuts.empty()) return "";
    auto same = std::find_if(joints.begin(), joints.end(), [&](const Joint &j) { return alike(j, joint); });
    if (same == joints.end()) {
        joint.name = "T" + std::to_string(joints.size() + 1);
        same = joints.insert(joints.end(), std::move(joint));
    }
    same->tags.push_back(tag);
    return same->name;
}

} // namespace

FoundJoints joints_found(const Layout &layout, UnitSystem units) {
    FoundJoints found;
    for (const Piece &piece : layout.pieces) {
        const Features features = features_of(piece, units);
        JointNames names;
        names.datum = add_joint(found.joints, joint_at(features, End::datum), piece.tag);
        names.far = add_joint(found.joints, joint_at(features, End::far), piece.tag);
        for (const std::string &corner : corners_run_past(features))
            names.at_corner[corner] = add_joint(found.joints, joint_within(features, corner), piece.tag);
        found.names.push_back(std::move(names));
    }
    return found;
}

std::vector<Joint> distinct_joints(const Layout &layout, UnitSystem units) {
    return joints_found(layout, units).joints;
}

// Seen from outside, the datum end is left: x runs from the end to the right. From the inside, or at the far
// end, the picture is mirrored; both together are not.
std::vector<Vec2> outline_of(const Joint &joint, bool on_outside) {
    std::vector<Vec2> ring = edge(joint, Side::under, on_outside);
    std::vector<Vec2> top = edge(joint, Side::top, on_outside);
    ring.insert(ring.end(), top.rbegin(), top.rend());
    const bool mirrored = on_outside == (joint.end == End::far);
    if (!mirrored) return ring;
    for (Vec2 &p : ring)
        p.x = -p.x;
    std::reverse(ring.begin(), ring.end());
    return ring;
}

std::vector<Vec2> end_outline_of(const Joint &joint) {
    const auto ends = [&](const HewnFace &face) {
        return SawLine{face.at(joint.starts.outside), face.at(joint.starts.inside)};
    };
    auto [low_out, low_in] = ends(joint.under);
    auto [high_out, high_in] = ends(joint.top);
    bool cut_at_end = false;
    for (const JointCut &cut : joint.cuts) {
        if (cut.near.outside > joint.starts.outside + alike_by) continue;
        cut_at_end = true;
        if (cut.side == Side::under) low_out = cut.outside_near, low_in = cut.inside_near;
        if (cut.side == Side::top) high_out = cut.outside_near, high_in = cut.inside_near;
    }
    if (!cut_at_end) return {};
    // seen from beyond the datum end the outside is right, from beyond the far end it is left
    const double width =
        std::hypot(joint.across_end, joint.starts.outside - joint.starts.inside); // true on a slant
    const double out = joint.end == End::datum ? width : 0, in = width - out;
    std::vector<Vec2> ring{{out, low_out}, {out, high_out}, {in, high_in}, {in, low_in}};
    if (joint.end == End::far) std::reverse(ring.begin(), ring.end());
    return ring;
}

} // namespace roundlay::sheets
