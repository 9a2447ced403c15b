#include "kernel/layout/mends/part_log.h"

#include "kernel/geometry/tolerance.h"
#include "kernel/layout/cuts/asked.h"
#include "kernel/layout/cuts/match.h"
#include "kernel/layout/cuts/moved.h"
#include "kernel/layout/cuts/region.h"
#include "kernel/layout/wood/round_flats.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace roundlay {

namespace {

constexpr double past_blank = 10; ///< how far an open cut reaches past the blank, as those of openings do

std::array<Vec3, 8> corners_of(const Blank &blank) {
    std::array<Vec3, 8> all;
    for (std::size_t i = 0; i < all.size(); ++i)
        all[i] = {i & 1U ? blank.length : 0, i & 2U ? blank.width : 0, i & 4U ? blank.height : 0};
    return all;
}

/// Does what is hewn take anything of the blank?
struct HewsAny {
    const Blank &blank;

    bool operator()(const FaceCut &cut) const {
        return std::ranges::any_of(corners_of(blank), [&](const Vec3 &corner) {
            return cut.plane.distance(corner) > tolerance::thinnest;
        });
    }
    bool operator()(const RoundCut &cut) const {
        return std::ranges::any_of(corners_of(blank), [&](const Vec3 &corner) {
            const Vec3 middle = corner.x > 0 ? cut.to : cut.from;
            return std::hypot(corner.y - middle.y, corner.z - middle.z) > cut.radius;
        });
    }
};

/// Does any wood lie in what a cut takes?
struct TakesAny {
    const std::vector<Cell> &wood;
    const Blank &blank;

    bool within(const std::vector<Plane> &region) const {
        return std::ranges::any_of(wood, [&](Cell cell) {
            for (const Plane &plane : region)
                if (cell = clipped(cell, plane); cell.empty()) return false;
            return true;
        });
    }
    bool operator()(const SeamCut &cut) const { return within(region_of(cut, blank)); }
    bool operator()(const ScopeCut &cut) const { return within(region_of(cut, blank.length, 1)); }
    bool operator()(const BoxCut &cut) const { return within(region_of(cut)); }
    bool operator()(const PocketCut &cut) const { return within(region_of(cut, blank)); }
    bool operator()(const CheekCut &cut) const { return within(region_of(cut, blank)); }
    bool operator()(const MendCut &cut) const { return within(region_of(cut, blank)); }
    // Parted by themselves, before this is asked.
    bool operator()(const FaceCut &) const { return true; }
    bool operator()(const RoundCut &) const { return true; }
    bool operator()(const Bore &) const { return true; }
};

/// The blank less its hewn faces.
std::vector<Cell> hewn_wood(const Piece &piece) {
    std::vector<Cell> wood{
        box_cell({{0, 0, 0}, {piece.blank.length, piece.blank.width, piece.blank.height}})};
    for (const Cut &cut : piece.cuts)
        match(
            cut, [&](const FaceCut &face) { wood = without(std::move(wood), region_of(face)); },
            passing<RoundCut>, // what is wane lies in a cut or not, as the faces around it do
            passing<SeamCut, ScopeCut, BoxCut, PocketCut, CheekCut, MendCut, Bore>);
    return wood;
}

std::vector<Cell> less_mends(std::vector<Cell> wood, const Piece &piece) {
    for (const Cut &cut : piece.cuts)
        match(
            cut, [&](const MendCut &mend) { wood = without(std::move(wood), region_of(mend, piece.blank)); },
            passing<FaceCut, RoundCut, SeamCut, ScopeCut, BoxCut, PocketCut, CheekCut, Bore>);
    return wood;
}

/// A joint or a mend that lies wholly in the other part is none of this one.
void drop_lost(Piece &piece) {
    const std::vector<Cell> hewn = hewn_wood(piece), left = less_mends(hewn, piece);
    const auto lost = [&](const Cut &cut) {
        return !match(cut, TakesAny{is_mend(cut) ? hewn : left, piece.blank});
    };
    std::erase_if(piece.cuts, lost);
}

/// Does a slanting shoulder lie at that end, where it would not be cut?
bool slants_at(const Cut &cut, const Blank &blank, End end) {
    return match(
        cut,
        [&](const SeamCut &seam) {
            const double lean = std::abs(seam.skew) * blank.width / 2;
            const double x = end == End::datum ? 0 : blank.length;
            return lean > 0 &&
                   std::min(std::abs(seam.x_from - x), std::abs(seam.x_to - x)) < lean + tolerance::clear;
        },
        giving<FaceCut, RoundCut, ScopeCut, BoxCut, PocketCut, CheekCut, MendCut, Bore>(false));
}

bool is_hewing(const Cut &cut) {
    return match(cut, giving<FaceCut, RoundCut>(true),
                 giving<SeamCut, ScopeCut, BoxCut, PocketCut, CheekCut, MendCut, Bore>(false));
}

bool hews_any(const Cut &cut, const Blank &blank) {
    const HewsAny hews{blank};
    return match(
        cut, [&](const FaceCut &face) { return hews(face); },
        [&](const RoundCut &round) { return hews(round); },
        giving<SeamCut, ScopeCut, BoxCut, PocketCut, CheekCut, MendCut, Bore>(true));
}

/// The stretch of a bore within those heights, opened where it goes on in the other part.
std::optional<Bore> bore_between(const Bore &bore, double from, double to) {
    if (to - from < tolerance::weld) return std::nullopt;
    const bool top = bore.through || bore.from_top || to < bore.z_to,
               under = bore.through || !bore.from_top || from > bore.z_from;
    Bore part = bore;
    part.z_from = from, part.z_to = to;
    part.through = top && under;
    part.from_top = top;
    return part;
}

/// Cuts what is left of a log in a box of it.
class Restricting {
  public:
    Restricting(const Piece &log, const Box3 &box) : log_(log), part_(log), origin_(box.low) {
        const Vec3 size = box.high - box.low;
        part_.blank = {size.x, size.y, size.z};
        part_.frame.origin = log.frame.to_world(origin_);
        part_.cuts.clear();
        part_.datum.shoulder = within(log.datum.shoulder), part_.far.shoulder = within(log.far.shoulder);
        for (const Cut &cut : log.cuts) {
            if (bore_of(cut)) continue;
            const Cut here = moved(cut, origin_, log.blank, part_.blank);
            if (is_hewing(here) && !hews_any(here, part_.blank)) continue;
            part_.cuts.push_back(here);
        }
    }

    Cut here(const Cut &cut) const { return moved(cut, origin_, log_.blank, part_.blank); }
    Piece &part() { return part_; }

  private:
    double within(double x) const { return std::clamp(x - origin_.x, 0.0, part_.blank.length); }

    const Piece &log_;
    Piece part_;
    Vec3 origin_;
};

MendCut cut_for(const MendRegion &region) {
    return {region.new_end ? MendUse::lap : MendUse::let_in,
            region.face,
            region.from,
            region.to,
            region.low,
            region.high,
            region.bed,
            {}};
}

/// Both halves of a lap run out at the end that is the other's.
MendCut run_out(MendCut cut, End end, const Blank &blank) {
    (end == End::datum ? cut.x_from : cut.x_to) = end == End::datum ? -past_blank : blank.length + past_blank;
    return cut;
}

/// The box of the log that new wood is let into.
Box3 box_of(const MendRegion &region, const Blank &blank) {
    const bool side = is_side(region.face);
    const double whole = side ? blank.height : blank.width;
    Box3 box{{std::max(0.0, region.from), 0, 0},
             {std::min(blank.length, region.to), blank.width, blank.height}};
    (side ? box.low.z : box.low.y) = std::max(0.0, region.low);
    (side ? box.high.z : box.high.y) = std::min(whole, region.high);
    const auto bed = [&](double x) {
        const Vec3 &n = region.bed.normal;
        return (region.bed.offset - n.x * x) / (side ? n.y : n.z);
    };
    double Vec3::*const out = side ? &Vec3::y : &Vec3::z;
    const double a = bed(region.from), b = bed(region.to);
    if (region.face == LogFace::outside || region.face == LogFace::under)
        box.high.*out = std::max(a, b);
    else
        box.low.*out = std::min(a, b);
    return box;
}

class PartingLog {
  public:
    PartingLog(const Piece &log, const MendRegion &region)
        : log_(log), region_(region), stays_(log, box_of_stays()), comes_(log, box_of_comes()) {}

    Parting parted() {
        region_.new_end ? lap() : let_in();
        for (Restricting *part : {&stays_, &comes_}) {
            drop_lost(part->part());
            if (parts_shoulder(part->part())) return {{}, NotParted::shoulder, 0};
        }
        if (const auto split = part_bores()) return {{}, NotParted::bore, *split};
        return {PartedLog{std::move(stays_.part()), std::move(comes_.part())}};
    }

  private:
    Box3 whole() const { return {{0, 0, 0}, {log_.blank.length, log_.blank.width, log_.blank.height}}; }
    Box3 box_of_stays() const {
        Box3 box = whole();
        if (region_.new_end == End::datum) box.low.x = region_.from;
        if (region_.new_end == End::far) box.high.x = region_.to;
        return box;
    }
    Box3 box_of_comes() const {
        if (!region_.new_end) return box_of(region_, log_.blank);
        Box3 box = whole();
        (*region_.new_end == End::datum ? box.high.x : box.low.x) =
            *region_.new_end == End::datum ? region_.to : region_.from;
        return box;
    }
    /// At an end that the mend makes.
    static bool parts_shoulder(const Piece &part) {
        const auto made = [](const PieceEnd &end) {
            return end.kind == EndKind::let_in || end.kind == EndKind::lap;
        };
        return std::ranges::any_of(part.cuts, [&](const Cut &cut) {
            return (made(part.datum) && slants_at(cut, part.blank, End::datum)) ||
                   (made(part.far) && slants_at(cut, part.blank, End::far));
        });
    }

    /// Last of all joinery, for what is let in is cut with the joints of the log.
    static void add(Restricting &part, MendCut cut) { part.part().cuts.emplace_back(std::move(cut)); }

    void let_in() {
        add(stays_, cut_for(region_));
        Piece &comes = comes_.part();
        std::erase_if(comes.cuts, [&](const Cut &cut) { return hewn_plane(cut, opposite(region_.face)); });
        if (region_.bed.normal.x != 0)
            add_face(comes, comes_.here(FaceCut{opposite(region_.face), region_.bed.flipped()}));
        if (region_.from > tolerance::weld) comes.datum = {EndKind::let_in, {}, 0};
        if (region_.to < log_.blank.length - tolerance::weld)
            comes.far = {EndKind::let_in, {}, comes.blank.length};
    }

    /// Among the hewn faces, which come in the order of their kinds.
    static void add_face(Piece &piece, const Cut &face) {
        const int rank = rank_of(face);
        piece.cuts.insert(
            std::ranges::find_if(piece.cuts, [&](const Cut &cut) { return rank_of(cut) > rank; }), face);
    }
    static int rank_of(const Cut &cut) {
        constexpr int later = 100;
        return match(
            cut, [](const FaceCut &face) { return static_cast<int>(face.face); },
            giving<RoundCut, SeamCut, ScopeCut, BoxCut, PocketCut, CheekCut, MendCut, Bore>(later));
    }

    void lap() {
        const End end = *region_.new_end, other = end == End::datum ? End::far : End::datum;
        const double lap = region_.to - region_.from;
        MendCut cut = cut_for(region_);
        add(stays_, as_lap(stays_.here(run_out(cut, end, log_.blank))));
        cut.face = opposite(region_.face), cut.bed = region_.bed.flipped();
        add(comes_, as_lap(comes_.here(run_out(cut, other, log_.blank))));
        Piece &stays = stays_.part(), &comes = comes_.part();
        (end == End::datum ? stays.datum : stays.far) = {
            EndKind::lap, {}, end == End::datum ? lap : stays.blank.length - lap};
        (end == End::datum ? comes.far : comes.datum) = {
            EndKind::lap, {}, end == End::datum ? comes.blank.length - lap : lap};
    }

    static MendCut as_lap(const Cut &cut) {
        return match(
            cut, [](const MendCut &mend) { return mend; },
            giving<FaceCut, RoundCut, SeamCut, ScopeCut, BoxCut, PocketCut, CheekCut, Bore>(MendCut{}));
    }

    /// Where an edge runs through one, if any does.
    std::optional<double> part_bores() {
        for (const Cut &cut : log_.cuts) {
            const Bore *bore = bore_of(cut);
            if (!bore) continue;
            const BoreInRegion taken = bore_in(region_, *bore, log_.blank);
            if (taken.split) return bore->x;
            const bool any = taken.from < taken.to;
            put(comes_, any ? bore_between(*bore, taken.from, taken.to) : std::nullopt);
            put(stays_, bore_between(*bore, bore->z_from, any ? taken.from : bore->z_to));
            if (any) put(stays_, bore_between(*bore, taken.to, bore->z_to));
        }
        return std::nullopt;
    }
    static void put(Restricting &part, const std::optional<Bore> &bore) {
        if (bore) part.part().cuts.push_back(part.here(*bore));
    }

    const Piece &log_;
    const MendRegion &region_;
    Restricting stays_, comes_;
};

} // namespace

Parting part_log(const Piece &log, const MendRegion &region) {
    return PartingLog(log, region).parted();
}

} // namespace roundlay
