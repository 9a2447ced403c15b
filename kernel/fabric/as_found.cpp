#include "kernel/fabric/as_found.h"

#include "kernel/fabric/fabric.h"
#include "kernel/measured/found_piece.h"
#include "kernel/record/found_words.h"

#include <algorithm>

namespace roundlay {

namespace {

Amount amount_of(const NotedLength &noted) {
    if (noted.value) return in_mm(noted.value->mm());
    return noted.written;
}

/// `turn end for end` is no change of what the wood is like, `keep` none of what becomes of it.
std::optional<Said> word_of(Decision what) {
    switch (what) {
    case Decision::keep:
    case Decision::turn:
        return {};
    case Decision::mend:
        return said("decided: mend");
    case Decision::replace:
        return said("decided: replace");
    case Decision::use_elsewhere:
        return said("decided: use elsewhere");
    case Decision::leave_out:
        break;
    }
    return said("decided: leave out");
}

/// The phrases of one found log.
class Telling {
  public:
    Telling(const FoundLog &log, AsFound &into) : log_(log), into_(into) {}

    void tell(const std::string &tag) {
        if (log_.tag != tag) add(said("found as %1", log_.tag));
        for (const Soundness what :
             {Soundness::missing, Soundness::rotten, Soundness::soft, Soundness::checked})
            for (const ConditionZone &zone : log_.zones)
                if (zone.what == what) add_zone(zone);
        add_pegs();
        for (const LaterCut &cut : log_.later_cuts)
            add_later_cut(cut);
        add_shape();
        add_notes();
        if (places_)
            add(log_.zero.empty() ? said("places from a corner that nobody recorded")
                                  : said("places from %1", log_.zero));
    }

  private:
    void add(Said phrase) { into_.phrases.push_back(std::move(phrase)); }

    Said stretch_of(const ConditionZone &zone) {
        const bool from = zone.from.is_taken(), to = zone.to.is_taken();
        places_ = places_ || from || to;
        if (from && to)
            return said("%1 from %2 to %3", said_of(zone.what), amount_of(zone.from), amount_of(zone.to));
        if (from) return said("%1 from %2 on", said_of(zone.what), amount_of(zone.from));
        if (to) return said("%1 up to %2", said_of(zone.what), amount_of(zone.to));
        return said_of(zone.what);
    }

    void add_zone(const ConditionZone &zone) {
        Said phrase = stretch_of(zone);
        for (const FoundFace face : zone.faces)
            phrase = said("%1, %2", std::move(phrase), said_of(face));
        if (zone.depth.is_taken()) phrase = said("%1, %2 deep", std::move(phrase), amount_of(zone.depth));
        if (!zone.note.empty()) phrase = said("%1 (%2)", std::move(phrase), zone.note);
        add(std::move(phrase));
    }

    void count(const FoundPeg &peg) {
        PegCount &pegs = into_.pegs;
        ++(peg.state == PegState::found     ? pegs.found
           : peg.state == PegState::missing ? pegs.missing
           : peg.state == PegState::broken  ? pegs.broken
                                            : pegs.sawn);
    }

    static Said word_of_peg(PegState state) {
        return state == PegState::missing  ? said("peg missing")
               : state == PegState::broken ? said("peg broken")
                                           : said("peg sawn");
    }

    void add_pegs() {
        for (const FoundPeg &peg : log_.pegs) {
            count(peg);
            if (peg.state == PegState::found && peg.note.empty()) continue;
            Said phrase = peg.state == PegState::found ? said("peg") : word_of_peg(peg.state);
            places_ = places_ || peg.at.is_taken();
            if (peg.at.is_taken()) phrase = said("%1 at %2", std::move(phrase), amount_of(peg.at));
            if (!peg.note.empty()) phrase = said("%1 (%2)", std::move(phrase), peg.note);
            add(std::move(phrase));
        }
    }

    void add_later_cut(const LaterCut &cut) {
        places_ = places_ || cut.at.is_taken();
        Said phrase = said("later cut: %1", cut.what);
        if (cut.at.is_taken()) phrase = said("%1 at %2", std::move(phrase), amount_of(cut.at));
        add(std::move(phrase));
    }

    void add_shape() {
        if (log_.bow.is_taken())
            add(log_.bow_to ? said("bow %1 to the %2", amount_of(log_.bow), said_of(*log_.bow_to))
                            : said("bow %1", amount_of(log_.bow)));
        if (log_.wind.is_taken()) add(said("wind %1", amount_of(log_.wind)));
    }

    void add_notes() {
        if (!log_.condition.empty()) add(said("condition: %1", log_.condition));
        if (!log_.note.empty()) add(said("note: %1", log_.note));
        for (const FoundEnd &end : log_.ends)
            if (!end.note.empty()) add(said("end in %1: %2", end.corner, end.note));
        if (log_.decisions.empty()) return;
        if (auto phrase = word_of(log_.decisions.back().what)) add(std::move(*phrase));
    }

    const FoundLog &log_;
    AsFound &into_;
    bool places_ = false; ///< some phrase tells one
};

} // namespace

namespace {

/// Where a log is that comes from elsewhere: its own tag is written on it there.
std::vector<Index<Piece>> used_as(const FoundLog &log, const Layout &layout) {
    std::vector<Index<Piece>> used;
    if (log.decisions.empty() || log.decisions.back().what != Decision::use_elsewhere) return used;
    for (const Index<Piece> piece : pieces_at(layout, log.decisions.back().to))
        if (layout.pieces[piece].mark == log.tag) used.push_back(piece);
    return used;
}

Said comes_from(const FoundLog &log) {
    if (!log.place.timber.empty()) return said("log %1, timber %2 of a floor", log.tag, log.place.timber);
    if (log.place.wall.empty()) return said("log %1, from elsewhere", log.tag);
    if (!log.place.round) return said("log %1, from wall %2", log.tag, log.place.wall);
    return said("log %1, from wall %2, round %3", log.tag, log.place.wall, *log.place.round);
}

} // namespace

Indexed<AsFound, Piece> as_found(const Record &record, const Layout &layout) {
    Indexed<AsFound, Piece> all(layout.pieces.size());
    Indexed<char, Piece> from_elsewhere(layout.pieces.size());
    for (const FoundLog &log : record.logs)
        for (const Index<Piece> piece : used_as(log, layout)) {
            from_elsewhere[piece] = true;
            all[piece].phrases.push_back(comes_from(log));
            Telling(log, all[piece]).tell(layout.pieces[piece].tag);
        }
    for (const DecidedLog &log : decided_logs(record, layout))
        for (const Index<Piece> piece : log.found_as)
            if (layout.pieces[piece].fabric != Fabric::replacement && !from_elsewhere[piece])
                Telling(record.logs[log.log], all[piece]).tell(layout.pieces[piece].tag);
    return all;
}

} // namespace roundlay
