// Ticks that cannot be. The person sees the house and we do not: all of it is told, nothing refused.
#include "kernel/measure/nearest_name.h"
#include "kernel/progress/ticked.h"

#include <algorithm>
#include <map>
#include <set>

namespace roundlay {

namespace {

using Pieces = std::vector<Index<Piece>>;

class Looking {
  public:
    Looking(const Record &record, const Shell &shell, const Layout &layout, const RaisingOrder &order)
        : record_(record), shell_(shell),
          layout_(layout), site_{order, ticked_of(record, layout, shell.state)} {}

    std::vector<TickProblem> problems(const std::vector<std::string> &states) {
        for (std::size_t i = 0; i < record_.done.size(); ++i)
            look_at_names(i, states);
        for (const Index<Piece> piece : layout_.pieces.indices())
            look_at(piece);
        return std::move(problems_);
    }

  private:
    const std::string &tag(Index<Piece> piece) const { return layout_.pieces[piece].tag; }

    /// "A-01-1, A-02-1 and so on": as many as a sentence bears.
    std::string tags(const Pieces &pieces) const {
        constexpr std::size_t most = 4;
        std::string text;
        for (std::size_t i = 0; i < std::min(most, pieces.size()); ++i)
            text += (i == 0 ? "" : ", ") + tag(pieces[i]);
        return pieces.size() > most ? text + ", ..." : text;
    }

    void tell(std::size_t entry, const char *key, Said what) {
        problems_.push_back({"done[" + std::to_string(entry) + "]." + key, std::move(what)});
    }
    void tell(Index<Piece> piece, Deed deed, Said what) {
        tell(site_.ticked.tick(piece, deed)->entry, "pieces", std::move(what));
    }

    void look_at_names(std::size_t entry, const std::vector<std::string> &states);
    void look_for(std::size_t entry, const std::string &named);
    void look_at(Index<Piece> piece);
    void look_at_up(Index<Piece> piece);
    void look_at_down(Index<Piece> piece);
    void look_at_new_wood(Index<Piece> piece);

    const Record &record_;
    const Shell &shell_;
    const Layout &layout_;
    Site site_;
    std::vector<TickProblem> problems_;
};

void Looking::look_at_names(std::size_t entry, const std::vector<std::string> &states) {
    const Done &done = record_.done[entry];
    if (!done.state.empty() && done.state != shell_.state &&
        std::ranges::find(states, done.state) == states.end())
        return tell(entry, "state",
                    said("the house has no state %1: name one that it has, or leave it out", done.state));
    if (!done.state.empty() && done.state != shell_.state) return; // pieces of another house
    for (const std::string &named : done.pieces)
        look_for(entry, named);
}

void Looking::look_for(std::size_t entry, const std::string &named) {
    if (std::ranges::find(layout_.pieces, named, &Piece::tag) != layout_.pieces.end()) return;
    std::vector<std::string> known;
    for (const Piece &piece : layout_.pieces)
        known.push_back(piece.tag);
    const auto near = nearest_name(named, known);
    tell(entry, "pieces",
         near ? said("the shell has no piece %1, and what was ticked of it counts for none: was it %2?",
                     named, *near)
              : said("the shell has no piece %1, and what was ticked of it counts for none: mend the tag, or "
                     "leave it where the piece may come back",
                     named));
}

void Looking::look_at(Index<Piece> piece) {
    if (layout_.pieces[piece].mends) return look_at_new_wood(piece);
    if (site_.ticked.is(piece, Deed::up)) look_at_up(piece);
    if (site_.ticked.is(piece, Deed::down)) look_at_down(piece);
    if (site_.ticked.is(piece, Deed::pegged) && !site_.ticked.is(piece, Deed::up))
        tell(piece, Deed::pegged,
             said("%1 is ticked as pegged and not as up: a piece is pegged where it lies", tag(piece)));
}

void Looking::look_at_up(Index<Piece> piece) {
    const Neighbours &of = site_.order[piece];
    const auto lacking = [&](const Pieces &pieces, Deed what) {
        Pieces some;
        std::ranges::copy_if(pieces, std::back_inserter(some),
                             [&](Index<Piece> each) { return !site_.ticked.is(each, what); });
        return some;
    };
    if (const Pieces air = lacking(of.rests_on, Deed::up); !air.empty())
        tell(piece, Deed::up,
             said("%1 is ticked as up, and what it rests on is not: %2. It would stand on air: look which of "
                  "them is up",
                  tag(piece), tags(air)));
    if (const Pieces shut = lacking(of.lies_over, Deed::up); !shut.empty())
        tell(
            piece, Deed::up,
            said("%1 is ticked as up and lies over what is not: %2. It could not be lowered past %1 any more",
                 tag(piece), tags(shut)));
    if (!site_.ticked.any(Deed::pegged)) return; // nobody notes pegs here
    if (const Pieces bare = lacking(of.covers, Deed::pegged); !bare.empty())
        tell(piece, Deed::up,
             said("%1 is ticked as up and covers pegs that are not ticked as driven, of %2", tag(piece),
                  tags(bare)));
}

void Looking::look_at_down(Index<Piece> piece) {
    if (site_.ticked.is_gone(piece))
        return tell(
            piece, Deed::down,
            said("%1 is ticked as down, and it is recorded as missing: take the tick back, or the zone "
                 "that says so out of the record",
                 tag(piece)));
    const Turn turn = turn_down(layout_, site_, piece);
    if (!turn.waits_for.empty())
        tell(piece, Deed::down,
             said("%1 is ticked as down, and what lies over it is not: %2. It could not rise past that: look "
                  "which of them is down",
                  tag(piece), tags(turn.waits_for)));
}

/// It is lifted with its log, whose tick counts; one of its own that says otherwise is a slip.
void Looking::look_at_new_wood(Index<Piece> piece) {
    for (std::size_t i = 0; i < record_.done.size(); ++i) {
        const Done &done = record_.done[i];
        const bool lifts = done.what == Deed::up || done.what == Deed::down;
        if (!lifts || (!done.state.empty() && done.state != shell_.state)) continue;
        if (std::ranges::find(done.pieces, tag(piece)) == done.pieces.end()) continue;
        const Index<Piece> log = *layout_.pieces[piece].mends;
        if (!site_.ticked.is(log, done.what))
            tell(i, "pieces",
                 said("%1 is new wood in %2 and lifted with it: tick %2, which counts for both", tag(piece),
                      tag(log)));
    }
}

} // namespace

std::vector<TickProblem> tick_problems(const Record &record, const Shell &shell, const Layout &layout,
                                       const RaisingOrder &order, const std::vector<std::string> &states) {
    return Looking(record, shell, layout, order).problems(states);
}

} // namespace roundlay
