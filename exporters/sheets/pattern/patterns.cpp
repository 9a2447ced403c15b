#include "exporters/sheets/pattern/patterns.h"

#include <algorithm>
#include <cmath>

namespace roundlay::sheets {
namespace {

bool known(const std::vector<double> &all, double v) {
    return std::any_of(all.begin(), all.end(), [&](double o) { return std::abs(o - v) < alike_by; });
}

/// Upright lines at the shoulders that the outline does not show: from seam to seam through the tail's root.
std::vector<Path> shoulder_marks(const Joint &joint, bool on_outside, bool mirrored) {
    std::vector<Path> marks;
    std::vector<double> done;
    for (const JointCut &cut : joint.cuts)
        for (const SawLine &line : {cut.near, cut.far}) {
            const double x = on_outside ? line.outside : line.inside;
            if (x < (on_outside ? joint.starts.outside : joint.starts.inside) + alike_by ||
                x > joint.length - alike_by || known(done, x))
                continue;
            done.push_back(x);
            double low = joint.under.at(x), high = joint.top.at(x);
            for (const JointCut &c : joint.cuts) {
                const double near = on_outside ? c.near.outside : c.near.inside,
                             far = on_outside ? c.far.outside : c.far.inside;
                if (std::abs(near - x) > alike_by && std::abs(far - x) > alike_by) continue;
                const bool at_near = std::abs(near - x) < alike_by;
                const double z = on_outside ? (at_near ? c.outside_near : c.outside_far)
                                            : (at_near ? c.inside_near : c.inside_far);
                c.side == Side::top ? high = z : low = z;
            }
            const double px = mirrored ? -x : x;
            marks.push_back({{{px, low}, {px, high}}, false, Line::dimension, score_layer});
        }
    return marks;
}

/// The level line, by which the template is hung on the log.
Path level_mark(const Joint &joint, bool on_outside, bool mirrored) {
    const double way = mirrored ? -1 : 1, from = on_outside ? joint.starts.outside : joint.starts.inside;
    return {{{way * from, joint.line.at(from)}, {way * joint.length, joint.line.at(joint.length)}},
            false,
            Line::centre,
            score_layer};
}

/// Across the end face, where the saw leaves it.
std::vector<Path> end_level_mark(const Joint &joint, const std::vector<Vec2> &end) {
    const double z = (joint.line.at(joint.starts.outside) + joint.line.at(joint.starts.inside)) / 2;
    const auto [low, high] = std::ranges::minmax(end, {}, &Vec2::x);
    return {{{{low.x, z}, {high.x, z}}, false, Line::centre, score_layer}};
}

/// The upper half of a shape that is even about its axis, and the lower one with it; counter-clockwise.
std::vector<Vec2> evenly_about_axis(const std::vector<Vec2> &lower) {
    std::vector<Vec2> ring = lower;
    for (auto p = lower.rbegin(); p != lower.rend(); ++p)
        ring.push_back({p->x, -p->y});
    return ring;
}

/// Half of what the timber is wide so far from that end, as it is hewn: joists may taper.
double half_width(const Features &features, End end, double from_end) {
    const double x = end == End::datum ? from_end : features.blank.length - from_end;
    return (features.innermost(x) - features.outermost(x)) / 2;
}

/// The log from above or from underneath, as far as the template goes, with what is bored from there; no
/// holes where nothing is.
PatternFace bored_face(const Joint &joint, bool above, const Words &words) {
    const bool mirrored = above == (joint.end == End::far);
    const auto seen = [&](double x, double y) { return Vec2{mirrored ? -x : x, y}; };
    const SawLine &starts = joint.starts;
    const double to = joint.length;
    PatternFace face{above ? words.say("%1 above", joint.name) : words.say("%1 underneath", joint.name),
                     {seen(starts.outside, joint.outside.at(starts.outside)), seen(to, joint.outside.at(to)),
                      seen(to, joint.inside.at(to)), seen(starts.inside, joint.inside.at(starts.inside))},
                     {}};
    if (mirrored) std::ranges::reverse(face.outline);
    for (const JointBore &bore : joint.bores)
        if (bore.from_top == above)
            face.holes.push_back({seen(bore.x, bore.y), bore.diameter / 2, Line::visible, ""});
    return face;
}

/// What is bored through a timber's end from above, or from both sides, seen from above with its axis along
/// x.
std::vector<Circle> holes_in(End end, double beyond, const Features &features) {
    std::vector<Circle> holes;
    for (const PegHole &hole : features.pegs) {
        const Bore &bore = *hole.bore;
        const double x = end == End::datum ? bore.x : features.blank.length - bore.x;
        const double y = bore.y - (features.innermost(bore.x) + features.outermost(bore.x)) / 2;
        if ((bore.from_top || bore.through) && x > 0 && x + bore.diameter / 2 < beyond)
            holes.push_back({{x, end == End::datum ? y : -y}, bore.diameter / 2, Line::visible, ""});
    }
    return holes;
}

/// From the joist's end, its axis along x; the shoulder at the neck is part of the outline where there is
/// one.
Pattern pattern_of(const TailedEnd &tail, const Features &features, const Words &words) {
    const double at_neck = half_width(features, tail.end, tail.length), beyond = tail.length + past_shoulder;
    std::vector<Vec2> lower{{0, -tail.width_at_end / 2}, {tail.length, -tail.width_at_neck / 2}};
    if (std::abs(tail.width_at_neck / 2 - at_neck) > alike_by) lower.push_back({tail.length, -at_neck});
    lower.push_back({beyond, -half_width(features, tail.end, beyond)});
    return {"",
            words.say("joist's end from above"),
            features.blank.width,
            features.blank.height,
            false,
            {},
            {{"", evenly_about_axis(lower), {}, holes_in(tail.end, beyond, features)}}};
}

/// From the face that it opens in as that is hewn, into the log along x.
Pattern pattern_of(const Pocket &pocket, const Words &words) {
    const double at_face = pocket.width_at_face / 2, at_back = pocket.cut->half_at_back;
    return {"",
            words.say("pocket from above"),
            2 * at_face,
            pocket.depth,
            false,
            {},
            {{"", evenly_about_axis({{0, -at_face}, {pocket.depth, -at_back}}), {}}}};
}

bool alike(const Pattern &a, const Pattern &b) {
    if (a.where != b.where) return false;
    const auto &p = a.faces.at(0).outline, &q = b.faces.at(0).outline;
    return std::equal(p.begin(), p.end(), q.begin(), q.end(),
                      [](Vec2 u, Vec2 v) { return length(u - v) < alike_by; }) &&
           std::ranges::equal(a.faces.at(0).holes, b.faces.at(0).holes, [](const Circle &u, const Circle &v) {
               return length(u.centre - v.centre) < alike_by && std::abs(u.radius - v.radius) < alike_by;
           });
}

/// Adds a shape seen from above, or the tag to one that is alike.
void add(std::vector<Pattern> &all, std::size_t first, Pattern pattern, const std::string &tag,
         const Words &words) {
    for (std::size_t i = first; i < all.size(); ++i)
        if (alike(all[i], pattern)) {
            if (all[i].tags.back() != tag) all[i].tags.push_back(tag);
            return;
        }
    pattern.name = "T" + std::to_string(all.size() + 1);
    pattern.tags = {tag};
    pattern.faces[0].name = words.say("%1 above", pattern.name);
    all.push_back(std::move(pattern));
}

} // namespace

Pattern pattern_of(const Joint &joint, const Words &words) {
    const std::string where = joint.within              ? words.say("within the log")
                              : joint.end == End::datum ? words.say("datum end")
                                                        : words.say("far end");
    Pattern pattern{joint.name, where, joint.width, joint.height, true, joint.tags, {}};
    for (const bool outside : {true, false}) {
        const bool mirrored = outside == (joint.end == End::far);
        pattern.faces.push_back(
            {outside ? words.say("%1 outside", joint.name) : words.say("%1 inside", joint.name),
             outline_of(joint, outside), shoulder_marks(joint, outside, mirrored)});
        pattern.faces.back().marks.push_back(level_mark(joint, outside, mirrored));
    }
    const std::vector<Vec2> end = end_outline_of(joint);
    if (!end.empty())
        pattern.faces.push_back({words.say("%1 end", joint.name), end, end_level_mark(joint, end)});
    for (const bool above : {true, false})
        if (PatternFace face = bored_face(joint, above, words); !face.holes.empty())
            pattern.faces.push_back(std::move(face));
    return pattern;
}

std::vector<Pattern> patterns_of(const Layout &layout, const Words &words) {
    std::vector<Pattern> all;
    for (const Joint &joint : distinct_joints(layout, words.system()))
        all.push_back(pattern_of(joint, words));
    const std::size_t joints = all.size();
    std::vector<Features> features;
    for (const Piece &piece : layout.pieces)
        features.push_back(features_of(piece));
    for (const Features &f : features) {
        const auto &[notches, boxes, scopes, pegs, pockets, tails, mends] = f.parts();
        static_cast<void>(notches), static_cast<void>(pockets); // by joint; below
        static_cast<void>(boxes), static_cast<void>(scopes), static_cast<void>(pegs),
            static_cast<void>(mends); // marked without a template
        for (const TailedEnd &tail : tails)
            add(all, joints, pattern_of(tail, f, words), f.piece->tag, words);
    }
    for (const Features &f : features)
        for (const Pocket &pocket : f.pockets)
            add(all, joints, pattern_of(pocket, words), f.piece->tag, words);
    return all;
}

} // namespace roundlay::sheets
