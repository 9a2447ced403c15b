#include "exporters/sheets/cut_sheet/features.h"

#include <algorithm>
#include <string>

namespace roundlay::sheets {
namespace {

/// The plane of a slanting face, as the value of one coordinate along the log.
HewnFace slanting(const Plane &plane, double across) {
    return {plane.offset / across, -plane.normal.x / across};
}

void set_faces(Features &features) {
    const Blank &blank = features.piece->blank;
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
        case LogFace::far_end:
            break; // no long face
        }
    }
}

Notch notch_of(const SeamCut &cut, const Features &features, int number) {
    const Piece &piece = *features.piece;
    Notch n;
    n.number = number;
    n.cut = &cut;
    const auto level = [&](double x, const HewnFace &face) { return cut.seam.height_at(x, face.at(x)); };
    n.outside_from = level(cut.x_from, features.outside);
    n.outside_to = level(cut.x_to, features.outside);
    n.inside_from = level(cut.x_from, features.inside);
    n.inside_to = level(cut.x_to, features.inside);
    const double slope_x = -cut.seam.normal.x / cut.seam.normal.z,
                 slope_y = -cut.seam.normal.y / cut.seam.normal.z;
    n.along = cut.end == End::far ? slope_x : -slope_x;
    n.across = -slope_y;
    n.tail = cut.x_from < same_station || cut.x_to > piece.blank.length - same_station;
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
    return b;
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
        else if (const Bore *bore = std::get_if<Bore>(&cut))
            features.pegs.push_back({0, bore});
    }
    std::stable_sort(features.pegs.begin(), features.pegs.end(),
                     [](const PegHole &a, const PegHole &b) { return a.bore->x < b.bore->x; });
    for (std::size_t i = 0; i < features.pegs.size(); ++i)
        features.pegs[i].number = static_cast<int>(i) + 1;
    return features;
}

std::vector<Station> stations_of(const Features &features) {
    std::vector<Station> all;
    const Blank &blank = features.piece->blank;
    for (const Notch &n : features.notches)
        for (const double x : {n.cut->x_from, n.cut->x_to})
            add_station(all, x, n.cut->side == Side::top, blank);
    for (const BoxPart &b : features.boxes)
        for (const double x : {b.x_from, b.x_to})
            add_station(all, x, b.opens_top || !b.opens_under, blank);
    std::sort(all.begin(), all.end(), [](Station a, Station b) { return a.x < b.x; });
    return all;
}

std::vector<Level> levels_of(const Features &features) {
    std::vector<Level> all;
    const Blank &blank = features.piece->blank;
    for (const Notch &n : features.notches) {
        add_level(all, {true, n.cut->x_from, n.outside_from, -1}, blank);
        add_level(all, {true, n.cut->x_to, n.outside_to, 1}, blank);
        add_level(all, {false, n.cut->x_from, n.inside_from, -1}, blank);
        add_level(all, {false, n.cut->x_to, n.inside_to, 1}, blank);
    }
    for (const HewnFace &face : {features.top, features.under}) {
        if (!face.tapers()) continue;
        add_level(all, {true, 0, face.at(0), -1}, blank);
        add_level(all, {true, blank.length, face.at(blank.length), 1}, blank);
    }
    for (const BoxPart &b : features.boxes) {
        const bool from = b.x_from > same_station; // else there is no wood on that side
        for (const double z : {b.z_from, b.z_to})
            add_level(all, {true, from ? b.x_from : b.x_to, z, from ? -1 : 1}, blank);
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
