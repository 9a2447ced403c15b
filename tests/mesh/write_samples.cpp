// Writes glTF files into a folder, for checkers that are no part of this program.
#include "exporters/mesh/glb.h"
#include "kernel/layout/lay_out.h"
#include "tests/mesh/layout_by_hand.h"
#include "tests/picture/house.h"

#include <fstream>
#include <iostream>

int main(int argc, char **argv) {
    using namespace roundlay;
    if (argc != 2) {
        std::cerr << "usage: write_samples FOLDER\n";
        return 2;
    }
    const auto shell = by_hand::small_shell();
    const auto save = [&](const std::string &name, const std::string &bytes) {
        std::ofstream file(std::string(argv[1]) + "/" + name, std::ios::binary);
        file << bytes;
        return file.good();
    };
    const Layout house = lay_out(test::house());
    const bool good = !house.pieces.empty() && save("house.glb", write_glb(house, bodies_of(house))) &&
                      save("plain.glb", write_glb(shell.layout, shell.bodies)) &&
                      save("edges.glb", write_glb(shell.layout, shell.bodies, {24, true})) &&
                      save("empty.glb", write_glb({}, {}));
    return good ? 0 : 1;
}
