#include "kernel/layout/mends/called_anew.h"

#include "kernel/geometry/tolerance.h"
#include "kernel/layout/cuts/asked.h"
#include "kernel/layout/cuts/moved.h"
#include "kernel/layout/piece_places.h"

#include <algorithm>
#include <map>
#include <vector>

namespace roundlay {

namespace {

using Tags = std::vector<std::string>;

/// Has it a joint for the piece of that tag, at that corner?
bool meets(const Piece &piece, const std::string &tag, std::string_view corner) {
    return std::ranges::any_of(piece.cuts, [&](const Cut &cut) {
        const Neighbour n = neighbour_of(cut);
        return n.name == tag && n.what != Met::mend && corner_of(cut) == corner;
    });
}

bool ends_at(const Piece &piece, std::string_view corner) {
    const auto there = [&](const PieceEnd &end) { return end.kind == EndKind::corner && end.at == corner; };
    return there(piece.datum) || there(piece.far);
}

/// A log and the new wood in it.
struct MendedLog {
    Index<Piece> stays;
    std::vector<Index<Piece>> comes;
};

class CallingAnew {
  public:
    CallingAnew(Indexed<Piece> &pieces, const Plan &plan) : pieces_(pieces), plan_(plan) {
        for (const Index<Piece> i : pieces.indices()) {
            by_tag_.emplace(pieces[i].tag, i);
            if (const auto log = pieces[i].mends) mended_[*log].push_back(i);
        }
    }

    void call() {
        for (const auto &[stays, comes] : mended_)
            for (const Index<Piece> i : pieces_.indices())
                if (i != stays) call_in(pieces_[i], {stays, comes});
        for (const auto &[stays, comes] : mended_)
            lay({stays, comes});
    }

  private:
    /// What the neighbour names of that log, by where the joint lies now.
    void call_in(Piece &neighbour, const MendedLog &log) {
        const Piece &stays = pieces_[log.stays];
        for (Cut &cut : neighbour.cuts) {
            const Neighbour n = neighbour_of(cut);
            if (n.name != stays.tag || n.what == Met::mend || n.what == Met::log_below) continue;
            const std::string corner(corner_of(cut));
            if (const auto other = wood_that_meets(neighbour, log, corner))
                call_neighbour(cut, pieces_[*other].tag);
        }
        if (!neighbour.timber) return;
        for (std::string &tag : neighbour.below)
            if (tag == stays.tag)
                if (const auto other = wood_that_meets(neighbour, log, "")) tag = pieces_[*other].tag;
    }

    /// None: the joint is where it was.
    std::optional<Index<Piece>> wood_that_meets(const Piece &neighbour, const MendedLog &log,
                                                const std::string &corner) const {
        if (meets(pieces_[log.stays], neighbour.tag, corner)) return std::nullopt;
        for (const Index<Piece> i : log.comes)
            if (meets(pieces_[i], neighbour.tag, corner)) return i;
        for (const Index<Piece> i : log.comes) // a log that another is scoped over has no joint of its own
            if (!corner.empty() && ends_at(pieces_[i], corner) && !ends_at(pieces_[log.stays], corner))
                return i;
        return std::nullopt;
    }

    /// Over and under which logs of its wall the new wood lies.
    void lay(const MendedLog &log) {
        Piece &stays = pieces_[log.stays];
        const Tags above = stays.above, below = stays.below;
        for (const Index<Piece> i : log.comes) {
            pieces_[i].above.clear(), pieces_[i].below.clear();
            for (const std::string &tag : above)
                put(i, log, tag, &Piece::above, &Piece::below);
            for (const std::string &tag : below)
                put(i, log, tag, &Piece::below, &Piece::above);
        }
        for (const std::string &tag : above)
            leave(stays, tag, &Piece::above, &Piece::below);
        for (const std::string &tag : below)
            leave(stays, tag, &Piece::below, &Piece::above);
    }

    void put(Index<Piece> comes, const MendedLog &log, const std::string &tag, Tags Piece::*there,
             Tags Piece::*back) {
        const auto other = by_tag_.find(tag);
        if (other == by_tag_.end() || !side_by_side(pieces_[comes], pieces_[other->second])) return;
        if (!reaches(pieces_[comes], pieces_[log.stays], there == &Piece::above)) return;
        (pieces_[comes].*there).push_back(tag);
        (pieces_[other->second].*back).push_back(pieces_[comes].tag);
    }

    /// A log that is shorter now may not come to a neighbour any more.
    void leave(Piece &stays, const std::string &tag, Tags Piece::*there, Tags Piece::*back) {
        const auto other = by_tag_.find(tag);
        if (other == by_tag_.end() || side_by_side(stays, pieces_[other->second])) return;
        std::erase(stays.*there, tag);
        std::erase(pieces_[other->second].*back, stays.tag);
    }

    bool side_by_side(const Piece &a, const Piece &b) const {
        const AlongWall one = along_wall(plan_.walls, a), other = along_wall(plan_.walls, b);
        return std::min(one.to, other.to) - std::max(one.from, other.from) > tolerance::clear;
    }
    /// Does it come out at the log's top or under face?
    static bool reaches(const Piece &comes, const Piece &log, bool top) {
        const double low = comes.frame.origin.z, under = log.frame.origin.z;
        return top ? low + comes.blank.height > under + log.blank.height - tolerance::clear
                   : low < under + tolerance::clear;
    }

    Indexed<Piece> &pieces_;
    const Plan &plan_;
    std::map<std::string, Index<Piece>> by_tag_;
    std::map<Index<Piece>, std::vector<Index<Piece>>> mended_;
};

} // namespace

void name_mends(Piece &piece, const std::string &tag) {
    for (Cut &cut : piece.cuts)
        if (is_mend(cut) && neighbour_of(cut).what == Met::nothing) call_neighbour(cut, tag);
}

void call_anew(Indexed<Piece> &pieces, const Plan &plan) {
    CallingAnew(pieces, plan).call();
}

} // namespace roundlay
