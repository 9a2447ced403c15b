#include "exporters/sheets/cut_sheet/features.h"

#include "kernel/layout/cuts/asked.h"
#include "kernel/layout/cuts/match.h"

#include <algorithm>
#include <map>
#include <string>

namespace roundlay::sheets {
namespace {

Notch notch_of(const SeamCut &cut, const Features &features, int number) {
    Notch n;
    n.number = number;
    n.cut = &cut;
    const CutStretch stretch = stretch_of(features, cut);
    n.from = stretch.from;
    n.to = stretch.to;
    const auto outside = [&](double x) { return cut.seam.height_at(x, features.outermost(x)); };
    const auto inside = [&](double x) { return cut.seam.height_at(x, features.innermost(x)); };
    n.outside_from = outside(n.from.outside);
    n.outside_to = outside(n.to.outside);
    n.inside_from = inside(n.from.inside);
    n.inside_to = inside(n.to.inside);
    const double slope_x = -cut.seam.normal.x / cut.seam.normal.z,
                 slope_y = -cut.seam.normal.y / cut.seam.normal.z;
    n.along = cut.end == End::far || cut.runs_on ? slope_x : -slope_x;
    n.across = -slope_y;
    n.tail = stretch.at_datum || stretch.at_far;
    return n;
}

BoxPart box_of(const BoxCut &cut, const Features &features, int number) {
    const Blank &blank = features.piece->blank;
    BoxPart b;
    b.number = number;
    b.cut = &cut;
    b.x_from = std::max(0.0, cut.box.low.x);
    b.x_to = std::min(blank.length, cut.box.high.x);
    b.z_from = std::max(0.0, cut.box.low.z);
    b.z_to = std::min(blank.height, cut.box.high.z);
    b.opens_top = cut.box.high.z >= blank.height;
    b.opens_under = cut.box.low.z <= 0;
    b.floor_from = b.floor_to = {b.z_from, b.z_from};
    if (cut.fall > 0) {
        const auto level = [&](double y) { return cut.box.low.z + cut.fall * (y - cut.fall_from); };
        const auto floor = [&](double x) {
            return FloorLevel{level(features.outermost(x)), level(features.innermost(x))};
        };
        b.floor_from = floor(b.x_from), b.floor_to = floor(b.x_to);
        b.z_from = std::min({b.floor_from.outside, b.floor_to.outside, blank.height});
    }
    return b;
}

Pocket pocket_of(const PocketCut &cut, const Features &features) {
    Pocket p;
    p.cut = &cut;
    p.inside = cut.y_face > cut.y_back;
    const double face = p.inside ? features.innermost(cut.x) : features.outermost(cut.x);
    const double widens = (cut.half_at_face - cut.half_at_back) / (cut.y_face - cut.y_back);
    p.bed_at_face = cut.bed.height_at(cut.x, face);
    p.bed_at_back = cut.bed.height_at(cut.x, cut.y_back);
    p.width_at_face = 2 * (cut.half_at_back + widens * (face - cut.y_back));
    p.depth = std::abs(face - cut.y_back);
    p.open_top = cut.z_top > features.highest(cut.x) - same_level;
    return p;
}

/// Both cheeks of an end make one tail.
void add_cheek(std::vector<TailedEnd> &tails, const CheekCut &cut, const Blank &blank) {
    const auto y = [&](double x) { return (cut.plane.offset - cut.plane.normal.x * x) / cut.plane.normal.y; };
    const double tip = cut.end == End::datum ? cut.x_from : cut.x_to;
    const double neck = cut.end == End::datum ? cut.x_to : cut.x_from;
    const double sign = cut.side == LogFace::outside ? -1 : 1; // the two sides lie evenly about the middle
    const auto half = [&](double x) { return sign * (y(x) - blank.width / 2); };
    const auto same = [&](const TailedEnd &t) { return t.end == cut.end; };
    if (std::none_of(tails.begin(), tails.end(), same))
        tails.push_back({cut.end, std::abs(tip - neck), 2 * half(tip), 2 * half(neck)});
}

Scope scope_of(const ScopeCut &cut, const Features &features, int number) {
    const Blank &blank = features.piece->blank;
    Scope s;
    s.number = number;
    s.cut = &cut;
    s.top = cut.at.z + cut.radius;
    double from = cut.x_from, to = cut.x_to;
    s.whole = from < same_station && to > blank.length - same_station;
    if (cut.use == ScopeUse::saddle) {
        const double lean = cut.along.x / cut.along.y;
        s.middle = features.across(cut.at.x - lean * cut.at.y, lean);
        from = s.middle.outside - cut.half_width() / std::abs(cut.along.y);
        to = s.middle.outside + cut.half_width() / std::abs(cut.along.y);
    }
    s.x_from = std::max(0.0, from);
    s.x_to = std::min(blank.length, to);
    return s;
}

MendPart mend_of(const MendCut &cut, const Features &features, int number) {
    MendPart m;
    m.number = number;
    m.cut = &cut;
    m.x_from = std::max(0.0, cut.x_from), m.x_to = std::min(features.blank.length, cut.x_to);
    m.depth_from = depth_of(features, cut, m.x_from), m.depth_to = depth_of(features, cut, m.x_to);
    const bool side = cut.face == LogFace::outside || cut.face == LogFace::inside;
    const double x = m.x_from, least = side ? features.lowest(x) : features.outermost(x),
                 most = side ? features.highest(x) : features.innermost(x);
    if (cut.low > least + same_level || cut.high < most - same_level)
        m.low = std::max(least, cut.low) - (side ? 0 : least),
        m.high = std::min(most, cut.high) - (side ? 0 : least);
    m.opens_top = cut.face == LogFace::top || (side && !m.low);
    return m;
}

/// Sorts cuts, numbering them as they come.
class Sorter {
  public:
    explicit Sorter(Features &features) : features_(features) {
        for (const Cut &cut : features.piece->cuts) {
            if (is_numbered(cut)) ++number_;
            match(cut, *this);
        }
    }

    void operator()(const SeamCut &cut) { features_.notches.push_back(notch_of(cut, features_, number_)); }
    void operator()(const BoxCut &cut) { features_.boxes.push_back(box_of(cut, features_, number_)); }
    void operator()(const ScopeCut &cut) { features_.scopes.push_back(scope_of(cut, features_, number_)); }
    void operator()(const PocketCut &cut) { features_.pockets.push_back(pocket_of(cut, features_)); }
    void operator()(const CheekCut &cut) { add_cheek(features_.tails, cut, features_.blank); }
    void operator()(const MendCut &cut) { features_.mends.push_back(mend_of(cut, features_, number_)); }
    void operator()(const Bore &cut) { features_.pegs.push_back({0, &cut}); }
    void operator()(const FaceCut &) {}  // HewnFaces has them
    void operator()(const RoundCut &) {} // and the stick

  private:
    Features &features_;
    int number_ = 0;
};

} // namespace

Features features_of(const Piece &piece, UnitSystem units) {
    Features features{hewn_faces(piece), {}, &piece, {}, {}};
    features.level = level_line_of(features, units);
    const Sorter sorted(features);
    std::stable_sort(features.pockets.begin(), features.pockets.end(),
                     [](const Pocket &a, const Pocket &b) { return a.cut->x < b.cut->x; });
    for (std::size_t i = 0; i < features.pockets.size(); ++i)
        features.pockets[i].number = static_cast<int>(i) + 1;
    std::stable_sort(features.pegs.begin(), features.pegs.end(),
                     [](const PegHole &a, const PegHole &b) { return a.bore->x < b.bore->x; });
    std::map<std::optional<BoreUse>, int> counts;
    for (PegHole &peg : features.pegs)
        peg.number = ++counts[peg.bore->use];
    features.end_line = end_line_of(features, units);
    return features;
}

} // namespace roundlay::sheets
