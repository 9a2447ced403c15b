#include "kernel/layout/mends/mends.h"

#include "kernel/geometry/tolerance.h"
#include "kernel/layout/mends/called_anew.h"
#include "kernel/layout/mends/part_log.h"
#include "kernel/layout/mends/stated_mends.h"
#include "kernel/layout/no_wood.h"
#include "kernel/layout/text.h"
#include "kernel/layout/wood/body.h"

#include <algorithm>
#include <numeric>

namespace roundlay {

namespace {

/// A log with the mends that were made in it so far.
struct InWork {
    Piece whole;                          ///< as it lies without mends
    Piece stays;                          ///< what stays of it now
    std::vector<Piece> comes;             ///< the new wood
    std::vector<std::vector<Cell>> taken; ///< by each of these, in the frame of `whole`
};

bool share_wood(const std::vector<Cell> &a, const std::vector<Cell> &b) {
    double sum = 0;
    for (const Cell &one : a)
        for (const Cell &other : b)
            sum += common_volume(one, other);
    return sum > tolerance::overlap;
}

/// How many bodies that do not hang together.
int parts_of(const Polyhedron &solid) {
    std::vector<int> first(solid.vertices.size());
    std::iota(first.begin(), first.end(), 0);
    const auto root = [&](int v) {
        while (first[static_cast<std::size_t>(v)] != v)
            v = first[static_cast<std::size_t>(v)];
        return v;
    };
    for (const Face &face : solid.faces)
        for (const auto &loop : face.loops)
            for (const int v : loop)
                first[static_cast<std::size_t>(root(v))] = root(face.loops[0][0]);
    int parts = 0;
    for (int v = 0; v < count_of(first); ++v)
        parts += root(v) == v ? 1 : 0;
    return parts;
}

/// The region in the frame of a piece of that log, which lies the same way.
MendRegion moved(MendRegion region, Vec3 origin) {
    const double across = is_side(region.face) ? origin.z : origin.y;
    region.from -= origin.x, region.to -= origin.x, region.low -= across, region.high -= across;
    region.bed.offset -= dot(region.bed.normal, origin);
    return region;
}

class Mending {
  public:
    Mending(const Shell &shell, const Plan &plan, Indexed<Piece> pieces)
        : shell_(shell), plan_(plan), logs_(pieces.size()) {
        for (const Index<Piece> i : pieces.indices())
            logs_[i].stays = pieces[i];
        pieces_ = std::move(pieces);
    }

    Found<MendedPieces> all() {
        for (std::size_t i = 0; i < shell_.mends.size(); ++i)
            make(i);
        Found<MendedPieces> made = together();
        if (made.pieces.size() > made.now.size()) call_anew(made.pieces, plan_);
        made.findings = std::move(findings_);
        return made;
    }

  private:
    void make(std::size_t mend) {
        const auto found = log_of_mend(shell_, mend, plan_, pieces_, findings_);
        if (!found) return;
        InWork &log = logs_[*found];
        if (log.comes.empty()) log.whole = pieces_[*found];
        const auto region = region_of_mend(shell_, mend, log.whole, findings_);
        if (!region || !is_free(log, *region, mend)) return;
        const Vec3 origin = log.whole.frame.to_local(log.stays.frame.origin);
        Parting parting = part_log(log.stays, moved(*region, origin));
        if (!parting.parts) return refuse(log.whole, parting, origin, mend);
        if (!is_wood(log.whole, parting.parts->comes, mend) ||
            !is_wood(log.whole, parting.parts->stays, mend))
            return;
        log.taken.push_back(cells_of(*region, log.whole.blank));
        take(log, std::move(*parting.parts), mend);
    }

    bool is_free(const InWork &log, const MendRegion &region, std::size_t mend) {
        const std::vector<Cell> takes = cells_of(region, log.whole.blank);
        const bool meets = std::ranges::any_of(
            log.taken, [&](const std::vector<Cell> &other) { return share_wood(takes, other); });
        if (!meets) return true;
        tell(log.whole, "mends-meet", mend, said("two mends take the same wood of this log"),
             said("state one mend for both, or let them lie apart"));
        return false;
    }

    void refuse(const Piece &log, const Parting &parting, Vec3 origin, std::size_t mend) {
        if (parting.why == NotParted::bore)
            return tell(log, "mend-splits-bore", mend,
                        said("an edge of this mend runs through a bore, %1 from the log's left end",
                             in_mm(parting.at + origin.x)),
                        said("move the edge clear of the bore"));
        tell(log, "mend-parts-shoulder", mend,
             said("this mend ends within the slant of a shoulder, at a corner that is not square"),
             said("let it end clear of the notch"));
    }

    /// One piece of wood, and enough of it to be held in a hand.
    bool is_wood(const Piece &log, const Piece &part, std::size_t mend) {
        constexpr double least = no_wood * no_wood * no_wood;
        const Body body = body_of(part);
        if (!(body.volume > least)) {
            tell(log, "mend-no-wood", mend, said("cuts leave no wood of this log where the mend lies"),
                 said("let it lie where there is wood"));
            return false;
        }
        if (parts_of(body.hewn) == 1) return true;
        tell(log, "mend-in-parts", mend, said("a notch or an opening parts the wood along this mend"),
             said("state a mend on either side of it"));
        return false;
    }

    void tell(const Piece &log, const char *code, std::size_t mend, Said what, Said advice) {
        findings_.push_back({Weight::error,
                             code,
                             {about::Piece{log.tag}},
                             std::move(what),
                             std::move(advice),
                             subject("mend", mend, "to")});
    }

    void take(InWork &log, PartedLog parts, std::size_t mend) {
        const Mend &stated = shell_.mends[mend];
        parts.stays.mended.push_back(mend);
        if (parts.stays.fabric == Fabric::kept) parts.stays.fabric = Fabric::patched;
        Piece &comes = parts.comes;
        comes.tag = log.whole.tag + "-M" + std::to_string(log.comes.size() + 1);
        comes.mended = {mend};
        comes.fabric = Fabric::replacement;
        comes.island = false;
        comes.mark.clear(), comes.bow = 0;
        comes.note = stated.note;
        if (!stated.species.empty()) comes.species = stated.species; // else the log's
        if (stated.finish) comes.finish = *stated.finish;
        for (PieceEnd *end : {&comes.datum, &comes.far})
            if (end->kind == EndKind::let_in || end->kind == EndKind::lap) end->at = log.whole.tag;
        for (PieceEnd *end : {&parts.stays.datum, &parts.stays.far})
            if (end->kind == EndKind::lap && end->at.empty()) end->at = comes.tag;
        name_cuts(parts);
        log.stays = std::move(parts.stays);
        log.comes.push_back(std::move(comes));
    }

    /// The last mend of each part is the one that was made now; others have their names already.
    static void name_cuts(PartedLog &parts) {
        name_mends(parts.stays, parts.comes.tag);
        name_mends(parts.comes, parts.stays.tag);
    }

    Found<MendedPieces> together() {
        Found<MendedPieces> made;
        made.now = Indexed<Index<Piece>, Piece>(logs_.size());
        for (const Index<Piece> i : logs_.indices()) {
            const Index<Piece> now = made.pieces.push_back(std::move(logs_[i].stays));
            made.now[i] = now;
            for (Piece &comes : logs_[i].comes) {
                comes.mends = now;
                made.pieces.push_back(std::move(comes));
            }
        }
        return made;
    }

    const Shell &shell_;
    const Plan &plan_;
    Indexed<Piece> pieces_; ///< as they lie without mends
    Indexed<InWork, Piece> logs_;
    Findings findings_;
};

} // namespace

Found<MendedPieces> mend(const Shell &shell, const Plan &plan, Indexed<Piece> pieces) {
    return Mending(shell, plan, std::move(pieces)).all();
}

} // namespace roundlay
