#include "kernel/progress/ticked.h"

#include "kernel/layout/piece_places.h"
#include "kernel/stock/lifted.h"

#include <algorithm>
#include <map>
#include <stdexcept>

namespace roundlay {

namespace {

constexpr Deed with_its_log[] = {Deed::down, Deed::up, Deed::pegged};

std::optional<Tick> &tick_of(Ticked &ticked, Index<Piece> piece, Deed what) {
    return ticked.ticks[piece][static_cast<std::size_t>(what)];
}

void mend_with_its_log(const Layout &layout, Ticked &ticked) {
    for (const Index<Piece> piece : layout.pieces.indices()) {
        const auto log = layout.pieces[piece].mends;
        if (!log) continue;
        for (const Deed what : with_its_log)
            tick_of(ticked, piece, what) = ticked.tick(*log, what);
    }
}

std::vector<Index<Piece>> those(const Ticked &ticked, const std::vector<Index<Piece>> &pieces, Deed what,
                                bool are) {
    std::vector<Index<Piece>> some;
    for (const Index<Piece> piece : pieces)
        if (ticked.is(piece, what) == are) some.push_back(piece);
    return some;
}

void append(std::vector<Index<Piece>> &to, const std::vector<Index<Piece>> &more) {
    to.insert(to.end(), more.begin(), more.end());
}

void only_up_or_down(Deed deed) {
    if (deed != Deed::up && deed != Deed::down)
        throw std::logic_error("only raising and taking down have an order");
}

/// Leads alone, in the order of the raise or back.
std::vector<Index<Piece>> in_order(const Layout &layout, const Ticked &ticked, Deed deed) {
    only_up_or_down(deed);
    std::vector<Index<Piece>> pieces;
    for (const Index<Piece> piece : layout.pieces.indices())
        if (!layout.pieces[piece].mends && !(deed == Deed::down && ticked.is_gone(piece)))
            pieces.push_back(piece);
    std::ranges::sort(pieces, {}, [&](Index<Piece> i) { return layout.pieces[i].raise; });
    if (deed == Deed::down) std::ranges::reverse(pieces);
    return pieces;
}

void add_lift(const Lift &lift, Index<Piece> piece, Left &all) {
    all.left += lift.pieces;
    all.low_kg += lift.low_kg;
    all.high_kg += lift.high_kg;
    all.weights_known = all.weights_known && lift.known;
    if (all.heaviest && lift.high_kg <= all.heaviest_high_kg) return;
    all.heaviest = piece;
    all.heaviest_low_kg = lift.low_kg;
    all.heaviest_high_kg = lift.high_kg;
}

} // namespace

bool Ticked::is_gone(Index<Piece> piece) const {
    return std::ranges::binary_search(gone, piece);
}

bool Ticked::any(Deed what) const {
    return std::ranges::any_of(
        ticks, [&](const auto &of) { return of[static_cast<std::size_t>(what)].has_value(); });
}

namespace {

bool lies_there(const Layout &layout, const Piece &piece, const FoundPlace &place) {
    if (!place.timber.empty()) return piece.tag == place.timber;
    return is_log(piece) && layout.walls[piece.wall].name == place.wall && piece.round == place.round &&
           (!place.piece || piece.number == *place.piece);
}

/// A log that comes in the place of one that is missing is there.
std::vector<Index<Piece>> gone_of(const Record &record, const Layout &layout) {
    std::vector<Index<Piece>> gone;
    for (const Index<Piece> i : layout.pieces.indices()) {
        const Piece &piece = layout.pieces[i];
        if (!piece.mends && piece.fabric != Fabric::replacement &&
            std::ranges::any_of(record.logs, [&](const FoundLog &log) {
                return is_gone(log) && lies_there(layout, piece, log.place);
            }))
            gone.push_back(i);
    }
    return gone;
}

} // namespace

Ticked ticked_of(const Record &record, const Layout &layout, const std::string &state) {
    std::map<std::string, Index<Piece>> by_tag;
    for (const Index<Piece> piece : layout.pieces.indices())
        by_tag[layout.pieces[piece].tag] = piece;
    Ticked ticked{Indexed<std::array<std::optional<Tick>, deeds>, Piece>(layout.pieces.size())};
    for (std::size_t i = 0; i < record.done.size(); ++i) {
        const Done &done = record.done[i];
        if (!done.state.empty() && done.state != state) continue;
        for (const std::string &tag : done.pieces)
            if (const auto found = by_tag.find(tag); found != by_tag.end())
                if (auto &tick = tick_of(ticked, found->second, done.what); !tick)
                    tick = Tick{done.by, done.on, i};
    }
    mend_with_its_log(layout, ticked);
    ticked.gone = gone_of(record, layout);
    return ticked;
}

Site site_of(const Record &record, const Shell &shell, const Layout &layout, const Bodies &bodies) {
    return {raising_order(layout, bodies), ticked_of(record, layout, shell.state)};
}

Turn turn_up(const Layout &layout, const Site &site, Index<Piece> piece) {
    const Neighbours &of = site.order[log_with(layout.pieces, piece)];
    const Ticked &ticked = site.ticked;
    Turn turn;
    turn.waits_for = those(ticked, of.rests_on, Deed::up, false);
    append(turn.waits_for, those(ticked, of.lies_over, Deed::up, false));
    turn.shut_in_by = those(ticked, of.lies_under, Deed::up, true);
    turn.pegs_first = those(ticked, of.covers, Deed::pegged, false);
    turn.may = ticked.is(piece, Deed::up) ? May::done
               : !turn.shut_in_by.empty() ? May::shut_in
               : !turn.waits_for.empty()  ? May::waits
                                          : May::now;
    return turn;
}

Turn turn_down(const Layout &layout, const Site &site, Index<Piece> piece) {
    const Neighbours &of = site.order[log_with(layout.pieces, piece)];
    Turn turn;
    turn.waits_for = those(site.ticked, of.lies_under, Deed::down, false);
    std::erase_if(turn.waits_for, [&](Index<Piece> over) { return site.ticked.is_gone(over); });
    turn.may = site.ticked.is_gone(piece)          ? May::gone
               : site.ticked.is(piece, Deed::down) ? May::done
               : !turn.waits_for.empty()           ? May::waits
                                                   : May::now;
    return turn;
}

Turn turn_of(const Layout &layout, const Site &site, Deed deed, Index<Piece> piece) {
    only_up_or_down(deed);
    return deed == Deed::up ? turn_up(layout, site, piece) : turn_down(layout, site, piece);
}

Deed deed_at_hand(const Ticked &ticked) {
    return ticked.any(Deed::down) && !ticked.any(Deed::up) ? Deed::down : Deed::up;
}

std::vector<Index<Piece>> may_now(const Layout &layout, const Site &site, Deed deed) {
    std::vector<Index<Piece>> pieces = in_order(layout, site.ticked, deed);
    std::erase_if(pieces,
                  [&](Index<Piece> piece) { return turn_of(layout, site, deed, piece).may != May::now; });
    return pieces;
}

Lift lift_of(const Shell &shell, const Layout &layout, const Bodies &bodies, Index<Piece> log) {
    Lift lift;
    const auto add = [&](Index<Piece> i) {
        const Piece &piece = layout.pieces[i];
        const WeightEstimate weight = lifted(shell, piece, bodies[piece.model].volume).piece;
        lift.known = lift.known && weight.known;
        lift.low_kg += weight.low_kg;
        lift.high_kg += weight.high_kg;
        ++lift.pieces;
    };
    add(log);
    for (const Index<Piece> comes : new_wood_in(layout.pieces, log))
        add(comes);
    return lift;
}

Left what_is_left(const Shell &shell, const Layout &layout, const Bodies &bodies, const Ticked &ticked,
                  Deed deed) {
    Left all;
    for (const Index<Piece> piece : in_order(layout, ticked, deed)) {
        const Lift lift = lift_of(shell, layout, bodies, piece);
        if (ticked.is(piece, deed))
            all.done += lift.pieces;
        else
            add_lift(lift, piece, all);
    }
    if (!all.weights_known) all.heaviest.reset();
    return all;
}

std::vector<Index<Piece>> pieces_called(const Layout &layout, const std::string &name, Deed deed) {
    const bool with_log = std::ranges::find(with_its_log, deed) != std::end(with_its_log);
    std::vector<Index<Piece>> exact, begun;
    for (const Index<Piece> piece : layout.pieces.indices()) {
        const std::string &tag = layout.pieces[piece].tag;
        const Index<Piece> meant = with_log ? log_with(layout.pieces, piece) : piece;
        if (tag == name) exact.push_back(meant);
        const bool is_new = begun.empty() || begun.back() != meant;
        if (tag.starts_with(name + "-") && is_new) begun.push_back(meant);
    }
    return exact.empty() ? begun : exact;
}

} // namespace roundlay
