// How long the STEP file of a shell takes, and how long it is. Prints; not a test.
// Use: bench_step ROUNDS [alike] [library] [OUTPUT]
#include "exporters/step/step.h"
#include "tests/step/hand_made_shell.h"

#include <sys/resource.h>

#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <ctime>
#include <fstream>

using namespace roundlay;

int main(int argc, char **argv) {
    const int rounds = argc > 1 ? std::atoi(argv[1]) : 40;
    bool alike = false;
    StepOptions options;
    options.seconds = 0;
    std::string output;
    for (int i = 2; i < argc; ++i) {
        if (std::strcmp(argv[i], "alike") == 0)
            alike = true;
        else if (std::strcmp(argv[i], "library") == 0)
            options.route = StepRoute::library;
        else
            output = argv[i];
    }
    const hand_made::HandMadeShell made = hand_made::four_walls(rounds, alike);
    const auto start = std::chrono::steady_clock::now();
    const std::clock_t work = std::clock();
    const std::string bytes = write_shell_step(made.shell, made.layout, made.bodies, options);
    const double cpu = 1e3 * static_cast<double>(std::clock() - work) / CLOCKS_PER_SEC;
    const std::chrono::duration<double, std::milli> wall = std::chrono::steady_clock::now() - start;
    rusage use{};
    getrusage(RUSAGE_SELF, &use);
    std::printf("%zu pieces, %zu products: %.1f ms (%.1f ms of work), %.2f MB, peak memory %.0f MB\n",
                made.layout.pieces.size(), made.layout.models.size(), wall.count(), cpu,
                static_cast<double>(bytes.size()) / 1e6, static_cast<double>(use.ru_maxrss) / 1024);
    if (!output.empty()) std::ofstream(output, std::ios::binary) << bytes;
}
