// bench_levelling [LOGS]: a pile of so many logs (200), measured ends drawn from a fixed start, into 8 walls.
#include "kernel/levelling/levelling.h"

#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <random>

using namespace roundlay;

namespace {

double seconds_since(std::chrono::steady_clock::time_point start) {
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
}

std::vector<PileLog> pile_of(int count, std::mt19937 &random) {
    const auto between = [&](double low, double high) {
        return low + (high - low) * static_cast<double>(random()) / static_cast<double>(std::mt19937::max());
    };
    std::vector<PileLog> pile;
    for (int i = 0; i < count; ++i) {
        const double butt = between(230, 280);
        pile.push_back({std::to_string(i), 7000, butt, butt - between(10, 50), {}, {}});
    }
    return pile;
}

void print(const char *what, const Arrangement &a) {
    std::printf("  %s: largest error %.1f mm, squares %.0f mm2\n", what, a.worst, a.squares);
}

} // namespace

int main(int argc, char **argv) {
    const int count = argc > 1 ? std::atoi(argv[1]) : 200;
    constexpr int walls = 8;
    std::mt19937 random(7);
    std::vector<LogPlace> places;
    for (int i = 0; i < count; ++i)
        places.push_back({Index<WallPlace>(i % walls), 1 + i / walls, 6500, 1, {}, {}});
    const std::vector<PileLog> pile = pile_of(count, random);
    const auto start = std::chrono::steady_clock::now();
    const auto result = level_logs(pile, places);
    const double taken = seconds_since(start);
    const Levelled &l = std::get<Levelled>(result);
    std::printf("%d logs into %d walls: %.2f s\n", count, walls, taken);
    print("as they come", l.before);
    print("levelled    ", l.after);
    std::printf(
        "  bounds: no largest error under %.1f mm (RATIO %.2f), no squares under %.0f mm2 (RATIO %.2f)\n",
        l.least_worst, l.after.worst / l.least_worst, l.least_squares, l.after.squares / l.least_squares);
    return l.after.squares <= l.before.squares ? 0 : 1;
}
