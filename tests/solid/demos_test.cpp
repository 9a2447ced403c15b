// The demo shells, every piece.
#include "kernel/boundary/boundary.h"
#include "kernel/boundary/measures.h"
#include "kernel/document/document.h"
#include "kernel/layout/lay_out.h"
#include "kernel/layout/wood/interference.h"
#include "kernel/solid/build_all.h"
#include "tests/support/catch.h"

#include <filesystem>

using namespace roundlay;

namespace {

constexpr double most_shared = 1e-3; // mm3 of wood in two pieces at once

std::vector<std::filesystem::path> demos() {
    std::vector<std::filesystem::path> found;
    for (const auto &entry : std::filesystem::directory_iterator(ROUNDLAY_DEMOS))
        if (entry.path().extension() == ".roundlay") found.push_back(entry.path());
    return found;
}

} // namespace

TEST_CASE("No two pieces of a demo share wood, and every solid is valid and free of self-interference") {
    REQUIRE(demos().size() >= 4);
    for (const auto &path : demos()) {
        INFO(path);
        const auto read = read_document_file(path);
        REQUIRE(read.shell);
        const Layout layout = lay_out(*read.shell);
        REQUIRE_FALSE(layout.pieces.empty());
        const Bodies bodies = bodies_of(layout);
        for (const Overlap &o : overlaps(layout, bodies))
            CHECK(o.volume <= most_shared);
        const BuiltSolids solids = build_all(bodies);
        for (const auto m : solids.indices()) {
            INFO(layout.pieces[layout.models[m].pieces.front()].tag);
            CHECK(count_solids(solids[m].solid) == 1);
            CHECK(is_valid(solids[m].solid));
            CHECK(is_free_of_self_interference(solids[m].solid));
            // A body's volume is exact where nothing is round: see body.h.
            const double off = bodies[m].rounds.empty() ? 1e-12 : 1e-4;
            CHECK(volume(solids[m].solid) == Approx(bodies[m].volume).epsilon(off));
        }
    }
}
