#include "exporters/sheets/cut_sheet/features.h"

#include <algorithm>
#include <map>
#include <string>

namespace roundlay::sheets {
namespace {

/// The plane of a slanting face, as the value of one coordinate along the log.
HewnFace slanting(const Plane &plane, double across) {
    return {plane.offset / across, -plane.normal.x / across};
}

void set_faces(Features &features) {
    const Blank &blank = features.piece->blank;
    const auto end = [&](const Plane &plane) { // upright, so y alone tells x
        const auto x = [&](double y) { return (plane.offset - plane.normal.y * y) / plane.normal.x; };
        return SawLine{x(0), x(blank.width)};
    };
    features.far_end = {blank.length, blank.length};
    features.top = {blank.height, 0};
    features.inside = {blank.width, 0};
    for (const Cut &cut : features.piece->cuts) {
        const FaceCut *face = std::get_if<FaceCut>(&cut);
        if (face == nullptr) continue;
        switch (face->face) {
        case LogFace::top:
            features.top = slanting(face->plane, face->plane.normal.z);
            break;
        case LogFace::under:
            features.under = slanting(face->plane, face->plane.normal.z);
            break;
        case LogFace::outside:
            features.outside = slanting(face->plane, face->plane.normal.y);
            break;
        case LogFace::inside:
            features.inside = slanting(face->plane, face->plane.normal.y);
            break;
        case LogFace::datum_end:
            features.datum_end = end(face->plane);
            break;
        case LogFace::far_end:
            features.far_end = end(face->plane);
            break;
        }
    }
}

/// Where the shoulder through x on the middle of the blank meets the two side faces.
SawLine shoulder_at(const Features &features, const SeamCut &cut, double x) {
    const double middle = features.piece->blank.width / 2;
    return {x + cut.skew * (features.outside.at(x) - middle),
            x + cut.skew * (features.inside.at(x) - middle)};
}

Notch notch_of(const SeamCut &cut, const Features &features, int number) {
    const Piece &piece = *features.piece;
    Notch n;
    n.number = number;
    n.cut = &cut;
    // a cut that reaches the blank's end is open there: it ends with the piece
    const double lean = std::abs(cut.skew) * piece.blank.width / 2;
    const bool at_datum =
        cut.x_from - lean<same_station, at_far = cut.x_to + lean> piece.blank.length - same_station;
    n.from = at_datum ? features.datum_end : shoulder_at(features, cut, cut.x_from);
    n.to = at_far ? features.far_end : shoulder_at(features, cut, cut.x_to);
    const auto level = [&](double x, const HewnFace &face) { return cut.seam.height_at(x, face.at(x)); };
    n.outside_from = level(n.from.outside, features.outside);
    n.outside_to = level(n.to.outside, features.outside);
    n.inside_from = level(n.from.inside, features.inside);
    n.inside_to = level(n.to.inside, features.inside);
    const double slope_x = -cut.seam.normal.x / cut.seam.normal.z,
                 slope_y = -cut.seam.normal.y / cut.seam.normal.z;
    n.along = cut.end == End::far ? slope_x : -slope_x;
    n.across = -slope_y;
    n.tail = at_datum || at_far;
    return n;
}

BoxPart box_of(const BoxCut &cut, const Blank &blank, int number) {
    BoxPart b;
    b.number = number;
    b.cut = &cut;
    b.x_from = std::max(0.0, cut.box.low.x);
    b.x_to = std::min(blank.length, cut.box.high.x);
    b.z_from = std::max(0.0, cut.box.low.z);
    b.z_to = std::min(blank.height, cut.box.high.z);
    b.opens_top = cut.box.high.z >= blank.height;
    b.opens_under = cut.box.low.z <= 0;
    b.z_outside = b.z_inside = b.z_from;
    if (cut.fall > 0) {
        b.z_outside = cut.box.low.z - cut.fall * cut.fall_from;
        b.z_inside = b.z_outside + cut.fall * blank.width;
        b.z_from = std::min(b.z_outside, blank.height);
    }
    return b;
}

Pocket pocket_of(const PocketCut &cut, const Blank &blank) {
    Pocket p;
    p.cut = &cut;
    p.bed_at_face = cut.bed.height_at(cut.x, cut.y_face);
    p.bed_at_back = cut.bed.height_at(cut.x, cut.y_back);
    p.depth = std::abs(cut.y_face - cut.y_back);
    p.inside = cut.y_face > cut.y_back;
    p.open_top = cut.z_top > blank.height - same_level;
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

Scope scope_of(const ScopeCut &cut, const Blank &blank, int number) {
    Scope s;
    s.number = number;
    s.cut = &cut;
    s.top = cut.at.z + cut.radius;
    double from = cut.x_from, to = cut.x_to;
    if (cut.use ==
        ScopeUse::saddle) { // its axis at the outside face, its sides as far along the log as they lie there
        s.x = cut.at.x - cut.at.y * cut.along.x / cut.along.y;
        from = s.x - cut.radius / std::abs(cut.along.y);
        to = s.x + cut.radius / std::abs(cut.along.y);
    }
    s.x_from = std::max(0.0, from);
    s.x_to = std::min(blank.length, to);
    return s;
}

void add_station(std::vector<Station> &all, double x, bool from_top, const Blank &blank) {
    if (x < same_station || x > blank.length - same_station) return;
    for (Station &s : all)
        if (std::abs(s.x - x) < same_station) {
            s.from_top = s.from_top || from_top;
            return;
        }
    all.push_back({x, from_top});
}

void add_level(std::vector<Level> &all, const Level &level, const Blank &blank) {
    if (level.z < same_level || level.z > blank.height - same_level) return;
    for (const Level &known : all)
        if (known.on_outside == level.on_outside && known.side == level.side &&
            std::abs(known.x - level.x) < same_station && std::abs(known.z - level.z) < same_level)
            return;
    all.push_back(level);
}

} // namespace

Features features_of(const Piece &piece) {
    Features features;
    features.piece = &piece;
    set_faces(features);
    int number = 0;
    for (const Cut &cut : piece.cuts) {
        if (const SeamCut *seam = std::get_if<SeamCut>(&cut))
            features.notches.push_back(notch_of(*seam, features, ++number));
        else if (const BoxCut *box = std::get_if<BoxCut>(&cut))
            features.boxes.push_back(box_of(*box, piece.blank, ++number));
        else if (const PocketCut *pocket = std::get_if<PocketCut>(&cut))
            features.pockets.push_back(pocket_of(*pocket, piece.blank));
        else if (const CheekCut *cheek = std::get_if<CheekCut>(&cut))
            add_cheek(features.tails, *cheek, piece.blank);
        else if (const Bore *bore = std::get_if<Bore>(&cut))
            features.pegs.push_back({0, bore});
        else if (const ScopeCut *scope = std::get_if<ScopeCut>(&cut))
            features.scopes.push_back(scope_of(*scope, piece.blank, ++number));
        else if (const RoundCut *round = std::get_if<RoundCut>(&cut))
            features.round = round;
    }
    std::stable_sort(features.pockets.begin(), features.pockets.end(),
                     [](const Pocket &a, const Pocket &b) { return a.cut->x < b.cut->x; });
    for (std::size_t i = 0; i < features.pockets.size(); ++i)
        features.pockets[i].number = static_cast<int>(i) + 1;
    std::stable_sort(features.pegs.begin(), features.pegs.end(),
                     [](const PegHole &a, const PegHole &b) { return a.bore->x < b.bore->x; });
    std::map<std::optional<BoreUse>, int> counts;
    for (PegHole &peg : features.pegs)
        peg.number = ++counts[peg.bore->use];
    return features;
}

std::vector<Station> stations_of(const Features &features) {
    std::vector<Station> all;
    const Blank &blank = features.piece->blank;
    for (const Notch &n : features.notches)
        for (const double x : {n.from.outside, n.to.outside})
            add_station(all, x, n.cut->side == Side::top, blank);
    for (const BoxPart &b : features.boxes)
        for (const double x : {b.x_from, b.x_to})
            add_station(all, x, b.opens_top || !b.opens_under, blank);
    for (const Scope &s : features.scopes)
        for (const double x : {s.x_from, s.x_to})
            add_station(all, x, false, blank);
    for (const SawLine &end : {features.datum_end, features.far_end})
        add_station(all, end.outside, true, blank);
    for (const TailedEnd &t : features.tails)
        add_station(all, t.end == End::datum ? t.length : blank.length - t.length, true, blank);
    std::sort(all.begin(), all.end(), [](Station a, Station b) { return a.x < b.x; });
    return all;
}

std::vector<SawLine> slanting_places(const Features &features) {
    std::vector<SawLine> all;
    const auto add = [&](const SawLine &line) {
        const auto same = [&](const SawLine &o) {
            return std::abs(o.outside - line.outside) < same_station &&
                   std::abs(o.inside - line.inside) < same_station;
        };
        if (std::abs(line.outside - line.inside) > same_station && std::none_of(all.begin(), all.end(), same))
            all.push_back(line);
    };
    add(features.datum_end);
    add(features.far_end);
    for (const Notch &n : features.notches) {
        add(n.from);
        add(n.to);
    }
    std::sort(all.begin(), all.end(),
              [](const SawLine &a, const SawLine &b) { return a.outside < b.outside; });
    return all;
}

std::vector<WorkedPlace> places_of(const Features &features) {
    std::vector<WorkedPlace> all;
    for (const Station &s : stations_of(features))
        all.push_back({s.x});
    for (const SawLine &line : slanting_places(features))
        all.push_back({(line.outside + line.inside) / 2, true, std::abs(line.outside - line.inside) / 2});
    for (const PegHole &peg : features.pegs)
        all.push_back({peg.bore->x, false});
    for (const Pocket &pocket : features.pockets)
        for (const double side : {-1.0, 1.0})
            all.push_back({pocket.cut->x + side * pocket.cut->half_at_back, false});
    return all;
}

std::vector<Level> levels_of(const Features &features) {
    std::vector<Level> all;
    const Blank &blank = features.piece->blank;
    for (const Notch &n : features.notches) {
        add_level(all, {true, n.from.outside, n.outside_from, -1}, blank);
        add_level(all, {true, n.to.outside, n.outside_to, 1}, blank);
        add_level(all, {false, n.from.inside, n.inside_from, -1}, blank);
        add_level(all, {false, n.to.inside, n.inside_to, 1}, blank);
    }
    for (const HewnFace &face : {features.top, features.under}) {
        if (!face.tapers()) continue;
        add_level(all, {true, 0, face.at(0), -1}, blank);
        add_level(all, {true, blank.length, face.at(blank.length), 1}, blank);
    }
    for (const BoxPart &b : features.boxes) {
        const bool from = b.x_from > same_station; // else there is no wood on that side
        for (const double z : {b.z_outside, b.z_to})
            add_level(all, {true, from ? b.x_from : b.x_to, z, from ? -1 : 1}, blank);
        if (b.z_inside != b.z_outside)
            add_level(all, {false, from ? b.x_from : b.x_to, b.z_inside, from ? -1 : 1}, blank);
    }
    return all;
}

std::string tapering_faces(const Features &features) {
    std::vector<std::string> names;
    if (features.top.tapers()) names.emplace_back("top");
    if (features.under.tapers()) names.emplace_back("under");
    if (features.outside.tapers()) names.emplace_back("outside");
    if (features.inside.tapers()) names.emplace_back("inside");
    std::string all;
    for (std::size_t i = 0; i < names.size(); ++i)
        all += (i == 0 ? "" : i + 1 == names.size() ? " and " : ", ") + names[i];
    return all;
}

std::vector<double> widths_at(const Features &features, End end) {
    if (!features.outside.tapers() && !features.inside.tapers()) return {};
    const Blank &blank = features.piece->blank;
    const double x = end == End::datum ? 0 : blank.length;
    std::vector<double> widths;
    for (const double y : {features.outside.at(x), features.inside.at(x)})
        if (y > same_level && y < blank.width - same_level) widths.push_back(y);
    return widths;
}

} // namespace roundlay::sheets
