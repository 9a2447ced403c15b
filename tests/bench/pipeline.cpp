// Document -> layout -> solids -> STEP, each stage timed and held against the plain way in the same process:
// one box and one boolean per cut, one after another, and one compound through the library's plain writer.
//
// Ratios are the figures to quote; absolute times depend on the machine and on what else it does.
//   bench_pipeline [--small] [--once]     --small: only the 160-piece shell; --once: one run, no plain way

#include "exporters/step/step.h"
#include "exporters/words/words.h"
#include "kernel/document/document.h"
#include "kernel/layout/lay_out.h"
#include "kernel/layout/wood/interference.h"
#include "kernel/solid/build_all.h"
#include "tests/bench/plain_step.h"
#include "tests/bench/shells.h"

#include <sys/resource.h>

#include <algorithm>
#include <chrono>
#include <cmath>
#include <cstdio>
#include <cstring>
#include <functional>

using namespace roundlay;

namespace {

double milliseconds(const std::function<void()> &work) {
    const auto start = std::chrono::steady_clock::now();
    work();
    return std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - start).count();
}

double median(int runs, const std::function<void()> &work) {
    std::vector<double> times;
    for (int i = 0; i < runs; ++i)
        times.push_back(milliseconds(work));
    std::sort(times.begin(), times.end());
    return times[times.size() / 2];
}

double peak_mb() {
    rusage use{};
    getrusage(RUSAGE_SELF, &use);
    return static_cast<double>(use.ru_maxrss) / 1024;
}

struct Times {
    std::size_t pieces = 0, models = 0;
    double document = 0, layout = 0, bodies = 0, solids = 0, overlaps = 0, step = 0;
    double each_alone = 0; ///< layout, bodies and solids with no piece sharing another's
    double to_solids() const { return layout + bodies + solids; }
};

/// Every piece cut and built for itself, equal or not.
double build_each_alone(const Layout &layout) {
    double sum = 0;
    for (const Piece &piece : layout.pieces)
        sum += volume(body_of(piece).hewn) + build(body_of(piece)).solid.empty();
    return sum;
}

Times time_own(const Shell &shell, int runs) {
    const std::string text = write_document(shell);
    Times t;
    Layout layout = lay_out(shell);
    for (const Finding &f : layout.findings)
        if (f.weight == Weight::error) std::printf("%s\n", sentence_of(f, in_english(shell.units)).c_str());
    Bodies bodies = bodies_of(layout);
    t.pieces = layout.pieces.size();
    t.models = layout.models.size();
    t.document = median(runs, [&] { read_document(text, "bench"); });
    t.layout = median(runs, [&] { layout = lay_out(shell); });
    t.bodies = median(runs, [&] { bodies = bodies_of(layout); });
    t.solids = median(runs, [&] { build_all(bodies, 1); });
    t.overlaps = median(runs, [&] { overlaps(layout, bodies); });
    t.each_alone = t.layout + median(std::max(1, runs / 3), [&] { build_each_alone(layout); });
    t.step = median(std::max(1, runs / 3), [&] { write_shell_step(shell, layout, bodies); });
    return t;
}

/// A step of a drag that is refused: the window's first opening in a corner, with the advice where it would
/// fit, against the same shell as it stands.
void print_refused(const char *name, const Shell &shell, int runs) {
    Shell refused = shell;
    refused.openings.front().from_left = Length::mm(1);
    if (!has_errors(lay_out(refused).findings)) return;
    const double stands = median(runs, [&] { lay_out(shell); }),
                 advised = median(runs, [&] { lay_out(refused); });
    std::printf("%s: an opening refused, with advice: %.2f ms; RATIO to the layout that stands %.1f\n", name,
                advised, advised / stands);
}

struct PlainTimes {
    double solids = 0, step = 0;
    double worst = 0; ///< relative difference of volume, direct body against plain boolean
};

PlainTimes time_plain(const Shell &shell) {
    const Layout layout = lay_out(shell);
    PlainTimes t;
    std::vector<Solid> solids;
    t.solids = milliseconds([&] {
        for (const Piece &piece : layout.pieces)
            solids.push_back(build_plainly(piece));
    });
    for (std::size_t i = 0; i < solids.size(); ++i)
        t.worst = std::max(t.worst,
                           std::abs(volume(solids[i]) / body_of(layout.pieces[Index<Piece>(i)]).volume - 1));
    t.step = milliseconds([&] { bench::write_plain_step(layout, solids); });
    return t;
}

void print(const char *name, const Times &t) {
    std::printf("%s: %zu pieces, %zu different\n", name, t.pieces, t.models);
    std::printf("  document %.2f ms, layout %.2f, bodies %.2f, solids %.2f; overlap check %.2f; STEP %.2f\n",
                t.document, t.layout, t.bodies, t.solids, t.overlaps, t.step);
    std::printf("  layout to exact solids %.2f ms; %.2f with every piece built for itself\n", t.to_solids(),
                t.each_alone);
}

void print_against(const Times &t, const PlainTimes &p) {
    std::printf("  the plain way: solids %.0f ms, STEP %.0f ms; volumes agree to %.1e\n", p.solids, p.step,
                p.worst);
    std::printf("  RATIO plain : own, layout to solids %.0f (every piece for itself %.0f), STEP %.1f\n",
                p.solids / t.to_solids(), p.solids / t.each_alone, p.step / t.step);
}

} // namespace

int main(int argc, char **argv) {
    bool small = false, once = false;
    for (int i = 1; i < argc; ++i) {
        small = small || std::strcmp(argv[i], "--small") == 0;
        once = once || std::strcmp(argv[i], "--once") == 0;
    }
    const Times house = time_own(bench::house(), once ? 1 : 15);
    print("house", house);
    Times hall;
    if (!small) {
        hall = time_own(bench::hall(), once ? 1 : 7);
        print("hall", hall);
        const double growth =
            (hall.each_alone / house.each_alone) / (double(hall.pieces) / double(house.pieces));
        std::printf("  RATIO growth from house to hall, every piece for itself: %.2f x linear\n", growth);
    }
    const Times round = time_own(bench::round_house(), once ? 1 : 3);
    print("round house", round);
    print_refused("house", bench::house(), once ? 1 : 15);
    print_refused("cabin", bench::cabin(), once ? 1 : 15);
    std::printf("peak memory of the own way %.0f MB\n", peak_mb());
    if (once) return house.pieces == 0 || round.pieces == 0;
    print_against(round, time_plain(bench::round_house()));
    print_against(house, time_plain(bench::house()));
    if (!small) print_against(hall, time_plain(bench::hall()));
}
