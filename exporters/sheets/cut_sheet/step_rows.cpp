#include "exporters/sheets/cut_sheet/step_rows.h"

#include "kernel/layout/pieces/stock.h"

#include <algorithm>
#include <cmath>

namespace roundlay::sheets {

namespace {

std::string end_words(const Notch &n, const Words &words) {
    if (n.cut->runs_on) return words.say("notch at %1", n.cut->corner);
    if (n.cut->end == End::datum)
        return n.tail ? words.say("tail at datum end") : words.say("notch near datum end");
    return n.tail ? words.say("tail at far end") : words.say("notch near far end");
}

/// A tail and a notch near an end rise toward that end; a log that runs on has two, and says which.
std::string along_words(const Notch &n, double rise_per_run, const Words &words) {
    const std::string slope = words.slope(rise_per_run);
    return n.cut->runs_on && slope != words.say("level") ? words.say("%1 to the far end", slope) : slope;
}

/// What a slope makes over a run, less than anybody reads off a rule: a wall that stands a hair off square.
bool is_level(const Words &words, double rise) {
    return std::abs(rise) < same_station || words.length(std::abs(rise)) == words.length(0);
}

std::string rise_words(const Words &words, double rise, double run) {
    if (is_level(words, rise)) return "-";
    return words.say("%1 in %2", in_mm(std::abs(rise)), in_mm(run));
}

/// Where a cut begins and ends along the log, on the outside face where it goes at a slant.
std::string stretch_words(const Words &words, double from, double to) {
    return words.say(", from %1 to %2", in_mm(from), in_mm(to));
}

} // namespace

StepRow row_of(const Notch &n, const Features &features, const Words &words) {
    const double run = n.cut->x_to - n.cut->x_from;
    const double width = features.innermost(n.from.inside) - features.outermost(n.from.outside);
    const double along = is_level(words, n.along * run) ? 0 : n.along,
                 across = is_level(words, n.across * width) ? 0 : n.across;
    const std::string end = end_words(n, words);
    const std::string side =
        n.cut->side == Side::top ? words.say("Top of %1", end) : words.say("Underside of %1", end);
    const std::string proud =
        n.cut->proud > 0 ? words.say(", leave %1 proud at the shoulders", in_mm(n.cut->proud)) : "";
    return {std::to_string(n.number),     side + stretch_words(words, n.from.outside, n.to.outside) + proud,
            along_words(n, along, words), rise_words(words, along * run, run),
            words.slope(across),          rise_words(words, across * width, width)};
}

namespace {

/// A level as it is measured at both ends of the cut, which is one number unless the log tapers.
std::string level_words(const BoxPart &b, const Features &features, const Words &words,
                        const FloorLevel &floor_from, const FloorLevel &floor_to) {
    const auto at = [&](double x, const FloorLevel &floor) {
        const std::string outside = words.level(features.height(x, floor.outside));
        return floor.falls() ? words.say("%1 outside and %2 inside", outside,
                                         words.level(features.height(x, floor.inside)))
                             : outside;
    };
    const std::string from = at(b.x_from, floor_from), to = at(b.x_to, floor_to);
    if (from == to) return from;
    return words.say("%1 at %2, %3 at %4", from, in_mm(b.x_from), to, in_mm(b.x_to));
}

std::string height_words(const BoxPart &b, const Features &features, const Words &words) {
    const FloorLevel top{b.z_to, b.z_to};
    const std::string floor = level_words(b, features, words, b.floor_from, b.floor_to);
    const std::string ceiling = level_words(b, features, words, top, top);
    if (b.opens_top) return b.opens_under ? "" : words.say(", down to %1", floor);
    return b.opens_under ? words.say(", up to %1", ceiling) : words.say(", from %1 up to %2", floor, ceiling);
}

std::string what_for(const BoxPart &b, const Features &features, const Words &words) {
    const std::string name = b.cut->opening.empty() ? words.say("opening") : words.name(b.cut->opening);
    switch (b.cut->use) {
    case BoxUse::sill:
        return words.say("Sill cut for %1", name);
    case BoxUse::header:
        return words.say("Header cut for %1", name);
    case BoxUse::step:
        return words.say("Underside over %1", name);
    case BoxUse::seat:
        return words.say("Seat on %1", name);
    case BoxUse::groove:
        return words.say("Groove %1 wide, %2 from outside, at %3",
                         in_mm(b.cut->box.high.y - b.cut->box.low.y),
                         in_mm(b.cut->box.low.y - features.outermost(b.x_from)), name);
    case BoxUse::through:
        break;
    }
    return words.say("Hole for %1", name);
}

/// How far a sill falls over the log, at either end of the cut where the log narrows.
std::string fall_words(const BoxPart &b, const Features &features, const Words &words) {
    const auto at = [&](double x) {
        const double width = features.innermost(x) - features.outermost(x);
        return rise_words(words, -b.cut->fall * width, width);
    };
    const std::string from = at(b.x_from), to = at(b.x_to);
    return from == to ? from : words.say("%1 to %2", from, to);
}

} // namespace

StepRow row_of(const BoxPart &b, const Features &features, const Words &words) {
    const double fall = b.cut->fall;
    return {std::to_string(b.number),
            what_for(b, features, words) + stretch_words(words, b.x_from, b.x_to) +
                height_words(b, features, words),
            words.say("level"),
            "-",
            fall > 0 ? words.slope(-fall) : words.say("level"),
            fall > 0 ? fall_words(b, features, words) : "-"};
}

StepRow in_words(const std::string &mark, const std::string &words) {
    return {mark, words, "-", "-", "-", "-"};
}

StepRow row_of(const TailedEnd &t, const Words &words) {
    const LengthAmount length = in_mm(t.length), end = in_mm(t.width_at_end), neck = in_mm(t.width_at_neck);
    return in_words("E", t.end == End::datum
                             ? words.say("Tail of the datum end: %1 long, %2 wide at the end, %3 at its neck",
                                         length, end, neck)
                             : words.say("Tail of the far end: %1 long, %2 wide at the end, %3 at its neck",
                                         length, end, neck));
}

StepRow row_of(const Scope &s, const Features &features, const Words &words) {
    const bool groove = s.cut->use == ScopeUse::groove;
    const LengthAmount outside = in_mm(s.middle.outside), inside = in_mm(s.middle.inside);
    const bool slants = std::abs(s.middle.outside - s.middle.inside) > same_station;
    const std::string kind = groove   ? words.say("Long groove")
                             : slants ? words.say("Saddle at %1 outside and %2 inside", outside, inside)
                                      : words.say("Saddle at %1", outside);
    std::string what = words.say("%1, radius %2, its top at %3", kind, in_mm(s.cut->radius),
                                 words.level(features.height(s.middle.outside, s.top)));
    if (groove && !s.whole) what += stretch_words(words, s.x_from, s.x_to);
    if (s.cut->cheeks > 0) what += words.say(", upright cheeks %1 from its middle", in_mm(s.cut->cheeks));
    if (s.cut->scribe > 0) what += words.say(", scribed %1 clear", in_mm(s.cut->scribe));
    return in_words(std::to_string(s.number), what);
}

namespace {

std::string the_face(LogFace face, const Words &words) {
    switch (face) {
    case LogFace::top:
        return words.say("the top face");
    case LogFace::under:
        return words.say("the under face");
    case LogFace::inside:
        return words.say("the inside face");
    case LogFace::outside:
    case LogFace::datum_end:
    case LogFace::far_end:
        break;
    }
    return words.say("the outside face");
}

} // namespace

StepRow row_of(const MendPart &m, const Features &f, const Words &words) {
    const std::string a = words.length(m.depth_from), b = words.length(m.depth_to),
                      face = the_face(m.cut->face, words);
    const std::string deep =
        a == b ? a : words.say("%1 at %2, %3 at %4", a, in_mm(m.x_from), b, in_mm(m.x_to));
    std::string what = m.cut->use == MendUse::lap
                           ? words.say("Lap cut into %1, %2 deep", face, deep)
                           : words.say("Recess for new wood in %1, %2 deep", face, deep);
    what += stretch_words(words, m.x_from, m.x_to);
    if (m.low) {
        const bool side = m.cut->face == LogFace::outside || m.cut->face == LogFace::inside;
        what += side ? words.say(", from %1 up to %2", words.level(f.height(m.x_from, *m.low)),
                                 words.level(f.height(m.x_from, *m.high)))
                     : words.say(", %1 to %2 from the outside", in_mm(*m.low), in_mm(*m.high));
    }
    return in_words(std::to_string(m.number), what);
}

std::string taper_words(const Features &f, const Words &words) {
    const Blank &blank = f.piece->blank;
    std::string all;
    const auto add = [&](const std::string &name, const HewnFace &face, double whole) {
        if (!face.tapers()) return;
        const auto off = [&](double x) { return in_mm(std::abs(whole - face.at(x))); };
        add_part(all, words.say("%1 %2 and %3", name, off(0), off(blank.length)));
    };
    add(words.say("top"), f.top, blank.height);
    add(words.say("under"), f.under, 0);
    add(words.word(side_word(*f.piece, false)), f.outside, 0);
    add(words.word(side_word(*f.piece, true)), f.inside, blank.width);
    return is_boxed(*f.piece, stock_of(*f.piece))
               ? words.say("Hew to the tapers, off the level box at its datum and far end: %1", all)
               : words.say("Hew to the tapers, off the blank at its datum and far end: %1", all);
}

std::string wane_words(const Features &features, const Words &words) {
    const RoundCut &r = *features.round;
    const LengthAmount round = in_mm(2 * r.radius);
    if (features.level.runs == LevelRuns::axis)
        return words.say("Stick %1 round, in the middle of the width, the level line through its middle",
                         round);
    const std::string datum = words.level(features.height(0, r.from.z)),
                      far = words.level(features.height(r.to.x, r.to.z));
    return datum == far
               ? words.say("Stick %1 round, in the middle of the width: its middle at %2", round, datum)
               : words.say("Stick %1 round, in the middle of the width: its middle at %2 at the datum end, "
                           "%3 at the far",
                           round, datum, far);
}

std::string flat_words(const Features &f, const Words &words) {
    const RoundCut &r = *f.round;
    std::string all;
    const auto told = [&](double d) { // a half log's flat may lie on the other side of the middle
        return d < -same_level ? words.say("%1 beyond it", in_mm(-d)) : words.length(std::abs(d));
    };
    const auto add = [&](const std::string &name, const HewnFace &face, double from, double to,
                         double outward) {
        const double datum = outward * (face.at(0) - from), far = outward * (face.at(r.to.x) - to);
        if (face.tapers() || std::min(datum, far) > r.radius - same_level) return;
        const std::string a = told(datum), b = told(far);
        add_part(all, a == b ? words.say("%1 %2", name, a)
                             : words.say("%1 %2 at the datum end and %3 at the far", name, a, b));
    };
    add(words.word(side_word(*f.piece, false)), f.outside, r.from.y, r.to.y, -1);
    add(words.word(side_word(*f.piece, true)), f.inside, r.from.y, r.to.y, 1);
    add(words.say("top"), f.top, r.from.z, r.to.z, 1);
    add(words.say("under"), f.under, r.from.z, r.to.z, -1);
    return all.empty() ? all : words.say("Hew flat, from the stick's middle: %1", all);
}

} // namespace roundlay::sheets
