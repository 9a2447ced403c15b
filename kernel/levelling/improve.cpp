#include "kernel/levelling/search.h"
#include "kernel/levelling/tops.h"

#include <array>
#include <random>

namespace roundlay {

namespace {

constexpr double worth_it = -1e-6; // mm2: less is rounding, and could go round in circles
constexpr int disturbances = 30;
constexpr LogEnd both[] = {LogEnd::left, LogEnd::right};

std::vector<Index<PileLog>> spare_logs(const Stacks &stacks, const std::vector<Seat> &seats) {
    std::vector<bool> used(stacks.pile().size());
    for (const Seat &seat : seats)
        used[seat.log.at()] = true;
    std::vector<Index<PileLog>> spare;
    for (const auto log : stacks.logs())
        if (!used[log.at()]) spare.push_back(log);
    return spare;
}

bool turn(Tops &tops, std::size_t a) {
    const Seat was = tops.seats()[a];
    const Seat turned = {was.log, was.butt == LogEnd::left ? LogEnd::right : LogEnd::left};
    if (tops.growth(a, turned) > worth_it) return false;
    tops.lay(a, turned);
    return true;
}

bool swap(Tops &tops, std::size_t a, std::size_t b) {
    const Index<PileLog> log_a = tops.seats()[a].log, log_b = tops.seats()[b].log;
    if (!tops.fits(log_b, a) || !tops.fits(log_a, b)) return false;
    double best = worth_it;
    std::array<Seat, 2> seats;
    for (const LogEnd butt_a : both)
        for (const LogEnd butt_b : both)
            if (const double g = tops.growth(a, {log_b, butt_a}, b, {log_a, butt_b}); g < best)
                best = g, seats = {Seat{log_b, butt_a}, Seat{log_a, butt_b}};
    if (best == worth_it) return false;
    tops.lay(a, seats[0]);
    tops.lay(b, seats[1]);
    return true;
}

bool take(Tops &tops, std::size_t a, Index<PileLog> &spare) {
    if (!tops.fits(spare, a)) return false;
    for (const LogEnd butt : both) {
        if (tops.growth(a, {spare, butt}) > worth_it) continue;
        const Index<PileLog> was = tops.seats()[a].log;
        tops.lay(a, {spare, butt});
        spare = was;
        return true;
    }
    return false;
}

void descend(Tops &tops, std::vector<Index<PileLog>> &spare) {
    for (bool better = true; better;) {
        better = false;
        for (std::size_t a = 0; a < tops.seats().size(); ++a) {
            better |= turn(tops, a);
            for (std::size_t b = a + 1; b < tops.seats().size(); ++b)
                better |= swap(tops, a, b);
            for (Index<PileLog> &log : spare)
                better |= take(tops, a, log);
        }
    }
}

void disturb(Tops &tops, std::mt19937 &random) {
    constexpr int swaps = 3;
    for (int i = 0; i < swaps; ++i) {
        const std::size_t a = random() % tops.seats().size(), b = random() % tops.seats().size();
        const Seat seat_a = tops.seats()[a], seat_b = tops.seats()[b];
        if (a == b || !tops.fits(seat_a.log, b) || !tops.fits(seat_b.log, a)) continue;
        tops.lay(a, seat_b);
        tops.lay(b, seat_a);
    }
}

} // namespace

std::vector<Seat> improved(const Stacks &stacks, std::vector<Seat> seats) {
    std::vector<Index<PileLog>> spare = spare_logs(stacks, seats);
    Tops best(stacks, std::move(seats));
    descend(best, spare);
    std::mt19937 random(1); // any fixed start: the same pile gives the same arrangement
    for (int i = 0; i < disturbances && !best.seats().empty(); ++i) {
        Tops next = best;
        std::vector<Index<PileLog>> next_spare = spare;
        disturb(next, random);
        descend(next, next_spare);
        if (next.total() < best.total()) best = std::move(next), spare = std::move(next_spare);
    }
    return best.seats();
}

} // namespace roundlay
