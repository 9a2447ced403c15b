#include "kernel/layout/courses.h"
#include "kernel/levelling/levelling.h"

#include <algorithm>
#include <map>
#include <numeric>

namespace roundlay {

namespace {

struct PiecePlace {
    int number = 1;
    double from = 0, to = 0; ///< wall x
    int left_top = -1, right_top = -1;
};

/// One wall's logs of one round.
struct Round {
    int wall = 0, round = 1;
    double share = 1, less = 0;
    std::vector<PiecePlace> pieces; ///< from left to right
    bool parted = false;            ///< each piece from a log of its own

    double in_one() const {
        double length = saw_cut * static_cast<double>(pieces.size() - 1);
        for (const PiecePlace &p : pieces) length += p.to - p.from;
        return length;
    }
    std::vector<double> lengths() const {
        if (!parted) return {in_one()};
        std::vector<double> all;
        for (const PiecePlace &p : pieces) all.push_back(p.to - p.from);
        return all;
    }
};

void set_half(const Shell &shell, const Layout &layout, const Piece &piece, Round &round) {
    if (piece.log == LogKind::full) return;
    const WallPlace &wall = layout.walls[static_cast<std::size_t>(piece.wall)];
    round.share = 0.5;
    round.less = round.share * wall.log_height - nominal_log_height(shell, layout, wall, piece.log, piece.round == 1);
}

std::vector<Round> rounds_of(const Shell &shell, const Layout &layout) {
    std::map<std::pair<int, int>, Round> all; // by round, wall
    for (const Piece &piece : layout.pieces) {
        if (piece.timber >= 0) continue;
        Round &round = all[{piece.round, piece.wall}];
        round.wall = piece.wall, round.round = piece.round;
        set_half(shell, layout, piece, round);
        const double from =
            layout.walls[static_cast<std::size_t>(piece.wall)].frame.to_local(piece.frame.origin).x;
        round.pieces.push_back({piece.number, from, from + piece.blank.length, -1, -1});
    }
    std::vector<Round> rounds;
    for (auto &[place, round] : all) rounds.push_back(std::move(round));
    return rounds;
}

/// The outer ends of a round carry the wall's two tops; islands that lie on one another have tops of their own.
void number_tops(std::vector<Round> &rounds, int walls) {
    constexpr double same = 1;
    int next = 2 * walls;
    std::map<int, const Round *> below; // by wall
    for (Round &round : rounds) {
        const Round *under = below[round.wall];
        for (PiecePlace &p : round.pieces) {
            const bool first = &p == &round.pieces.front(), last = &p == &round.pieces.back();
            if (first) p.left_top = 2 * round.wall;
            if (last) p.right_top = 2 * round.wall + 1;
            if (first || last) continue;
            for (const PiecePlace &q : under ? under->pieces : std::vector<PiecePlace>{})
                if (q.left_top >= 2 * walls && std::abs(q.from - p.from) < same && std::abs(q.to - p.to) < same)
                    p.left_top = q.left_top, p.right_top = q.right_top;
            if (p.left_top < 0) p.left_top = next, p.right_top = next + 1, next += 2;
        }
        below[round.wall] = &round;
    }
}

/// Longest to longest: if that does not go, nothing does.
bool goes(const std::vector<Round> &rounds, const std::vector<double> &have) {
    std::vector<double> need;
    for (const Round &round : rounds)
        for (const double length : round.lengths()) need.push_back(length);
    std::ranges::sort(need, std::greater());
    if (need.size() > have.size()) return false;
    return std::equal(need.begin(), need.end(), have.begin(), [](double n, double h) { return n <= h; });
}

/// Parts the round that asks for the longest log, as long as the pile has none for it.
bool part_as_needed(std::vector<Round> &rounds, const std::vector<PileLog> &pile) {
    std::vector<double> have;
    for (const PileLog &log : pile) have.push_back(log.length);
    std::ranges::sort(have, std::greater());
    while (!goes(rounds, have)) {
        Round *longest = nullptr;
        for (Round &round : rounds)
            if (!round.parted && round.pieces.size() > 1 && (!longest || round.in_one() > longest->in_one()))
                longest = &round;
        if (!longest) return false;
        longest->parted = true;
    }
    return true;
}

std::vector<LogPlace> places_of(const std::vector<Round> &rounds) {
    std::vector<LogPlace> places;
    for (const Round &r : rounds) {
        const int count = static_cast<int>(r.pieces.size());
        if (!r.parted)
            places.push_back({r.wall, r.round, r.in_one(), r.share, r.pieces.front().left_top, r.pieces.back().right_top, 1,
                              count, count, r.less});
        else
            for (const PiecePlace &p : r.pieces)
                places.push_back({r.wall, r.round, p.to - p.from, r.share, p.left_top, p.right_top, p.number, p.number, count,
                                  r.less});
    }
    return places;
}

} // namespace

std::variant<std::vector<LogPlace>, std::string> log_places(const Shell &shell, const Layout &layout,
                                                            const std::vector<PileLog> &pile) {
    std::vector<Round> rounds = rounds_of(shell, layout);
    number_tops(rounds, static_cast<int>(layout.walls.size()));
    const std::vector<LogPlace> in_one = places_of(rounds);
    const bool openings = std::ranges::any_of(rounds, [](const Round &r) { return r.pieces.size() > 1; });
    if (pile.size() < rounds.size() || !openings) return in_one; // what is short is told by level_logs
    if (part_as_needed(rounds, pile)) return places_of(rounds);
    const auto pieces = std::ranges::count_if(layout.pieces, [](const Piece &p) { return p.timber < 0; });
    return "the " + std::to_string(pieces) + " pieces of the shell cannot be cut from the " + std::to_string(pile.size()) +
           " logs of the pile, neither those beside an opening from one log nor each from its own; more logs, or longer "
           "ones, would do";
}

} // namespace roundlay
