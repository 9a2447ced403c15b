// How long it takes to look for what fits: as long as a thread that drew would stand still, did it look by
// itself.
#include "kernel/design/floor_edits.h"
#include "kernel/design/opening_edits.h"
#include "kernel/design/shell_edits.h"
#include "kernel/design/step_edits.h"
#include "kernel/document/document.h"
#include "kernel/layout/lay_out.h"
#include "tests/bench/shells.h"

#include <chrono>
#include <cstdio>
#include <fstream>
#include <functional>
#include <sstream>
#include <string>

using namespace roundlay;

namespace {

Shell demo(const char *name) {
    std::ostringstream text;
    text << std::ifstream(std::string(ROUNDLAY_DEMOS "/") + name + ".roundlay").rdbuf();
    return *read_document(text.str(), name).shell;
}

void time(const char *what, const std::function<bool()> &search) {
    const auto start = std::chrono::steady_clock::now();
    const bool found = search();
    const std::chrono::duration<double, std::milli> took = std::chrono::steady_clock::now() - start;
    std::printf("  %-42s %8.1f ms, %s\n", what, took.count(), found ? "found" : "refused");
}

void time_all(const char *name, const Shell &shell) {
    const Layout layout = lay_out(shell);
    std::printf("%s, %zu pieces\n", name, layout.pieces.size());
    const double middle = layout.walls.front().length / 2;
    const auto opening = [&](OpeningKind kind, double along) {
        return with_new_opening(shell, kind, "A", {along, {}}).placed.has_value();
    };
    time("one layout", [&] { return !lay_out_to_try(shell).pieces.empty(); });
    time("a window in the middle of A", [&] { return opening(OpeningKind::window, middle); });
    time("a window near the end of A", [&] { return opening(OpeningKind::window, 300); });
    time("a door in the middle of A", [&] { return opening(OpeningKind::door, middle); });
    time("a partition from A", [&] { return bool(with_fitting_partition(shell, "A")); });
    time("a step under A", [&] { return bool(with_new_step(shell, "A", middle)); });
    const Fitted floor = with_fitting_floor(shell);
    time("a floor", [&] { return bool(with_fitting_floor(shell)); });
    const Shell &floored = floor ? *floor.shell : shell;
    time("another floor", [&] { return bool(with_fitting_floor(floored)); });
    time("a beam", [&] { return bool(with_fitting_beam(floored, 0)); });
    time("a stair", [&] { return bool(with_fitting_floor_opening(floored, 0)); });
    time("a partition at one place, as while drawing",
         [&] { return with_partition_there(shell, "A", Length::mm(middle)).has_value(); });
    time("saddles for tails", [&] { return with_kind(shell, NotchKind::saddle) != shell; });
}

} // namespace

int main() {
    time_all("L-shaped demo", demo("ell-house"));
    time_all("bench house", bench::house());
    time_all("round cabin", bench::cabin());
}
