#include "exporters/picture/section.h"
#include "tests/mesh/layout_by_hand.h"
#include "tests/support/catch.h"

#include <map>

using namespace roundlay;

namespace {

double total_length(const std::vector<std::array<Vec3, 2>> &lines) {
    double sum = 0;
    for (const auto &[a, b] : lines)
        sum += length(b - a);
    return sum;
}

/// Ends meet in pairs: rounded to a thousandth, since bodies are drawn in single precision.
bool closes(const std::vector<std::array<Vec3, 2>> &lines) {
    std::map<std::array<long, 3>, int> ends;
    for (const auto &line : lines)
        for (const Vec3 p : line)
            ends[{std::lround(p.x * 100), std::lround(p.y * 100), std::lround(p.z * 100)}] += 1;
    for (const auto &[place, count] : ends)
        if (count % 2 != 0) return false;
    return !ends.empty();
}

Scene scene_of_small_shell() {
    const auto shell = by_hand::small_shell();
    return scene_of(shell.layout, shell.bodies);
}

} // namespace

TEST_CASE("A cut across plain logs outlines each section") {
    const Scene scene = scene_of_small_shell();
    // Wall A at x = 1700.5 m: three logs of 200 x 220, the tailed ones without bore, slot or sill there; wall
    // B lies elsewhere.
    const auto lines = section_outline(scene, {{1, 0, 0}, 1700.5});
    CHECK(closes(lines));
    CHECK(total_length(lines) == Approx(3 * 2 * (200 + 220)).epsilon(1e-5));
    for (const auto &line : lines)
        for (const Vec3 p : line)
            CHECK(p.x == Approx(1700.5).epsilon(1e-6));
}

TEST_CASE("A level cut goes round slots and bores") {
    Scene scene = scene_of_small_shell();
    for (std::size_t i = 1; i < scene.instances.size(); ++i)
        scene.instances[i].visible = false;
    const auto lines = section_outline(scene, {{0, 0, 1}, 111.1});
    CHECK(closes(lines));
    // The log with tails, 4000 x 200, parted by the slot of 400; bores of 32 at four places (one blind from
    // 90 up) and of 25; the one of 38 ends at 110.
    const double circles = 24 * (4 * 32 + 25) * std::sin(std::numbers::pi / 24);
    CHECK(total_length(lines) == Approx(2 * (3600 + 2 * 200) + circles).epsilon(1e-5));
}

TEST_CASE("A plane beside the wood or hidden pieces give nothing") {
    Scene scene = scene_of_small_shell();
    CHECK(section_outline(scene, {{0, 0, 1}, -5}).empty());
    for (Instance &i : scene.instances)
        i.visible = false;
    CHECK(section_outline(scene, {{0, 0, 1}, 111.1}).empty());
}
