// Writes STEP files of several shells into a folder, for checkers outside of this program.
// Use: write_step_samples FOLDER
#include "tests/step/samples.h"

#include <filesystem>
#include <fstream>
#include <iostream>

int main(int argc, char **argv) {
    if (argc != 2) return 2;
    const std::filesystem::path folder = argv[1];
    for (const roundlay::test::StepSample &sample : roundlay::test::step_samples()) {
        std::ofstream out(folder / (sample.name + ".step"), std::ios::binary);
        out << sample.write();
        if (!out.flush()) {
            std::cerr << "cannot write " << sample.name << '\n';
            return 1;
        }
    }
    return 0;
}
