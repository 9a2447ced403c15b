#include "kernel/layout/courses/courses.h"
#include "kernel/layout/piece_places.h"
#include "kernel/levelling/levelling.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <map>
#include <numeric>

namespace roundlay {

namespace {

struct PiecePlace {
    int number = 1;
    double from = 0, to = 0; ///< wall x
    std::optional<Index<RunningTop>> left_top, right_top;
};

/// One wall's logs of one round.
struct Round {
    Index<WallPlace> wall;
    int round = 1;
    double share = 1, less = 0;
    std::vector<PiecePlace> pieces; ///< from left to right
    bool parted = false;            ///< each piece from a log of its own

    double in_one() const {
        double length = saw_cut * static_cast<double>(pieces.size() - 1);
        for (const PiecePlace &p : pieces)
            length += p.to - p.from;
        return length;
    }
    std::vector<double> lengths() const {
        if (!parted) return {in_one()};
        std::vector<double> all;
        for (const PiecePlace &p : pieces)
            all.push_back(p.to - p.from);
        return all;
    }
};

void set_half(const Shell &shell, const Layout &layout, const Piece &piece, Round &round) {
    if (piece.log == LogKind::full) return;
    round.share = 0.5;
    round.less = round.share * layout.heights[piece.wall].log_height -
                 nominal_log_height(shell, layout, piece.wall, piece.log, piece.round == 1);
}

std::vector<Round> rounds_of(const Shell &shell, const Layout &layout) {
    std::map<std::pair<int, Index<WallPlace>>, Round> all; // by round, wall
    for (const Piece &piece : layout.pieces) {
        if (!is_log(piece)) continue;
        Round &round = all[{piece.round, piece.wall}];
        round.wall = piece.wall, round.round = piece.round;
        set_half(shell, layout, piece, round);
        const auto [from, to] = along_wall(layout.walls, piece);
        round.pieces.push_back({piece.number, from, to, {}, {}});
    }
    std::vector<Round> rounds;
    rounds.reserve(all.size());
    for (auto &[place, round] : all)
        rounds.push_back(std::move(round));
    return rounds;
}

/// The outer ends of a round carry the wall's two tops; islands that lie on one another have tops of their
/// own.
void number_tops(std::vector<Round> &rounds, std::size_t walls) {
    constexpr double same = 1;
    const Index<RunningTop> first_island(2 * walls);
    std::size_t next = first_island.at();
    std::map<Index<WallPlace>, const Round *> below;
    for (Round &round : rounds) {
        const Round *under = below[round.wall];
        for (PiecePlace &p : round.pieces) {
            const bool first = &p == &round.pieces.front(), last = &p == &round.pieces.back();
            if (first) p.left_top = Index<RunningTop>(2 * round.wall.at());
            if (last) p.right_top = Index<RunningTop>(2 * round.wall.at() + 1);
            if (first || last) continue;
            for (const PiecePlace &q : under ? under->pieces : std::vector<PiecePlace>{})
                if (q.left_top >= first_island && std::abs(q.from - p.from) < same &&
                    std::abs(q.to - p.to) < same)
                    p.left_top = q.left_top, p.right_top = q.right_top;
            if (!p.left_top) {
                p.left_top = Index<RunningTop>(next++);
                p.right_top = Index<RunningTop>(next++);
            }
        }
        below[round.wall] = &round;
    }
}

std::vector<double> lengths_of(const std::vector<Round> &rounds) {
    std::vector<double> need;
    for (const Round &round : rounds)
        for (const double length : round.lengths())
            need.push_back(length);
    std::ranges::sort(need, std::greater());
    return need;
}

/// Which rounds to part. Longest log to longest place: where the pile's log is too short for its place, one
/// of the rounds that ask for a longer one than that has to be parted, whatever else is. So every way that
/// goes is come upon.
class Parting {
  public:
    Parting(std::vector<Round> &rounds, std::vector<double> have)
        : rounds_(rounds), have_(std::move(have)), kept_(rounds.size()) {
        std::ranges::sort(have_, std::greater());
    }

    bool found() { return go(); }
    bool gave_up() const { return tries_ > most_tries; }

  private:
    static constexpr int most_tries = 20'000;

    bool go() {
        if (++tries_ > most_tries) return false;
        const std::vector<double> need = lengths_of(rounds_);
        if (need.size() > have_.size()) return false; // parting only asks for more
        const auto [short_of, too_short] = std::ranges::mismatch(need, have_, std::less_equal());
        return short_of == need.end() || part_one(*too_short);
    }

    /// One that asks for more than this; what was tried and did not go stays whole in what is tried after it.
    bool part_one(double longer_than) {
        std::vector<std::size_t> tried;
        bool went = false;
        while (!went) {
            const std::size_t next = longest(longer_than);
            if (next == rounds_.size()) break;
            rounds_[next].parted = true;
            went = go();
            if (went) break;
            rounds_[next].parted = false;
            keep_alike(next, tried);
        }
        for (const std::size_t i : tried)
            kept_[i] = false;
        return went;
    }

    std::size_t longest(double longer_than) const {
        std::size_t best = rounds_.size();
        for (std::size_t i = 0; i < rounds_.size(); ++i) {
            const Round &round = rounds_[i];
            if (round.parted || kept_[i] || round.pieces.size() < 2 || round.in_one() <= longer_than)
                continue;
            if (best == rounds_.size() || round.in_one() > rounds_[best].in_one()) best = i;
        }
        return best;
    }

    /// Rounds that would be parted into the same lengths need not be tried one by one.
    void keep_alike(std::size_t like, std::vector<std::size_t> &tried) {
        for (std::size_t i = 0; i < rounds_.size(); ++i) {
            if (rounds_[i].parted || kept_[i] || !alike(rounds_[i], rounds_[like])) continue;
            kept_[i] = true;
            tried.push_back(i);
        }
    }

    static bool alike(const Round &a, const Round &b) {
        constexpr double same = 1e-6;
        return std::ranges::equal(a.pieces, b.pieces, [](const PiecePlace &p, const PiecePlace &q) {
            return std::abs((p.to - p.from) - (q.to - q.from)) < same;
        });
    }

    std::vector<Round> &rounds_;
    std::vector<double> have_;
    std::vector<bool> kept_; ///< not to be parted in what is being tried
    int tries_ = 0;
};

std::vector<double> lengths_of(const std::vector<PileLog> &pile) {
    std::vector<double> have;
    have.reserve(pile.size());
    for (const PileLog &log : pile)
        have.push_back(log.length);
    return have;
}

/// Of one way to part the rounds: no round, or every one.
std::string missing_if(std::vector<Round> rounds, bool parted, const std::vector<PileLog> &pile,
                       UnitSystem units) {
    for (Round &round : rounds)
        round.parted = parted && round.pieces.size() > 1;
    return missing_logs(lengths_of(rounds), lengths_of(pile), units);
}

std::string cannot_be_cut(const Shell &shell, const Layout &layout, const std::vector<PileLog> &pile,
                          const std::vector<Round> &rounds, bool gave_up) {
    const auto pieces = std::ranges::count_if(layout.pieces, is_log);
    const std::string tried =
        gave_up
            ? "in none of the many ways tried to cut the rounds beside openings from one log or from several"
            : "in no way of cutting the rounds beside openings from one log or from several";
    const std::string whole = missing_if(rounds, false, pile, shell.units),
                      parted = missing_if(rounds, true, pile, shell.units);
    return "the " + std::to_string(pieces) + " pieces of the shell cannot be cut from the " +
           std::to_string(pile.size()) + " logs of the pile, " + tried +
           "; missing where each round is one log: " + (whole.empty() ? "none" : whole) +
           "; where each piece is a log of its own: " + (parted.empty() ? "none" : parted);
}

std::vector<LogPlace> places_of(const std::vector<Round> &rounds) {
    std::vector<LogPlace> places;
    for (const Round &r : rounds) {
        const int count = count_of(r.pieces);
        if (!r.parted)
            places.push_back({r.wall, r.round, r.in_one(), r.share, r.pieces.front().left_top,
                              r.pieces.back().right_top, 1, count, count, r.less});
        else
            for (const PiecePlace &p : r.pieces)
                places.push_back({r.wall, r.round, p.to - p.from, r.share, p.left_top, p.right_top, p.number,
                                  p.number, count, r.less});
    }
    return places;
}

} // namespace

std::variant<std::vector<LogPlace>, std::string> log_places(const Shell &shell, const Layout &layout,
                                                            const std::vector<PileLog> &pile) {
    std::vector<Round> rounds = rounds_of(shell, layout);
    number_tops(rounds, layout.walls.size());
    const std::vector<LogPlace> in_one = places_of(rounds);
    const bool openings = std::ranges::any_of(rounds, [](const Round &r) { return r.pieces.size() > 1; });
    if (pile.size() < rounds.size() || !openings) return in_one; // what is short is told by level_logs
    Parting parting(rounds, lengths_of(pile));
    if (parting.found()) return places_of(rounds);
    return cannot_be_cut(shell, layout, pile, rounds, parting.gave_up());
}

} // namespace roundlay
