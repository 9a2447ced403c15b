// How long a usual log takes: directly, by one boolean. Prints; not a test.
#include "kernel/solid/solid.h"
#include "tests/solid/hand_made.h"

#include <algorithm>
#include <cstdio>
#include <ctime>
#include <vector>

using namespace roundlay;

namespace {

template <typename Work> double microseconds_each(int runs, int count, Work work) {
    std::vector<double> times;
    for (int r = 0; r < runs; ++r) {
        const std::clock_t start = std::clock();
        for (int i = 0; i < count; ++i)
            work(i);
        const double taken = 1e6 * static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC;
        times.push_back(taken / count);
    }
    std::sort(times.begin(), times.end());
    return times[times.size() / 2];
}

} // namespace

int main() {
    std::vector<Body> bodies;
    for (int i = 0; i < 155; ++i)
        bodies.push_back(hand_made::usual_log(4000 + 3.7 * i));
    std::vector<Solid> kept(bodies.size());
    const double direct = microseconds_each(15, 155, [&](int i) {
        kept[static_cast<std::size_t>(i)] = build(bodies[static_cast<std::size_t>(i)]).solid;
    });
    for (Body &body : bodies)
        body.bores_clear = false;
    const double boolean = microseconds_each(3, 155, [&](int i) {
        kept[static_cast<std::size_t>(i)] = build(bodies[static_cast<std::size_t>(i)]).solid;
    });
    std::printf("plane faces %zu, bores %zu\n", bodies[0].hewn.faces.size(), bodies[0].bores.size());
    std::printf("direct      %8.1f us per log\none boolean %8.1f us per log\n", direct, boolean);
}
