// Houses as IFC. What a file says as a whole is held against the standard and against other files by
// tests/external/ifc, which shares no code with the writer; here are random shells.
#include "exporters/building/building.h"
#include "exporters/building/guid.h"
#include "exporters/building/house_of.h"
#include "exporters/mesh/facets.h"
#include "kernel/layout/lay_out.h"
#include "kernel/layout/wood/interference.h"
#include "kernel/stock/piece_stock.h"
#include "tests/support/any_mends.h"
#include "tests/support/catch.h"
#include "tests/support/shells.h"

#include <rapidcheck.h>

#include <set>

using namespace roundlay;
using namespace roundlay::test;

namespace {

/// A shell that can be built, and all that is made of it.
struct Laid {
    explicit Laid(const Shell &stated)
        : shell(stated), layout(lay_out(stated)), bodies(bodies_of(layout)),
          list(collect_cut_list(shell, layout, volumes_of(bodies))) {}

    BuildingSource source() const { return {shell, layout, bodies, list, record}; }

    Shell shell;
    Layout layout;
    Bodies bodies;
    CutList list;
    Record record;
};

int count_of_text(const std::string &text, const std::string &part) {
    int count = 0;
    for (std::size_t at = text.find(part); at != std::string::npos; at = text.find(part, at + 1))
        ++count;
    return count;
}

double volume_of(const std::variant<Polyhedron, Mesh> &body) {
    return std::visit([](const auto &each) { return volume(each); }, body);
}

bool closed(const std::variant<Polyhedron, Mesh> &body) {
    return std::visit([](const auto &each) { return is_closed(each); }, body);
}

/// Wood that reaches into the box of an opening, mm3.
double wood_in_opening(const Laid &laid, const building::Void &opening, Index<WallPlace> wall) {
    const Frame &frame = laid.layout.walls[wall].frame;
    const Vec3 far{opening.width, opening.depth, opening.height};
    const Cell box = moved(moved(box_cell({{}, far}), Frame{opening.corner}), frame);
    double wood = 0;
    for (const Piece &piece : laid.layout.pieces) {
        if (!is_log_of(piece, wall)) continue;
        for (const Cell &cell : laid.bodies[piece.model].cells)
            wood += common_volume(moved(cell, piece.frame), box);
    }
    return wood;
}

void check_house(const Laid &laid) {
    const building::House house = building::house_of(laid.source());
    for (const auto m : laid.layout.models.indices()) {
        const Body &body = laid.bodies[m];
        const auto &shape = house.shapes[Index<building::Shape>(m.at())].body;
        RC_ASSERT(closed(shape));
        const bool is_exact = body.bores_clear && body.rounds.empty();
        RC_ASSERT(std::abs(volume_of(shape) / body.volume - 1) < (is_exact ? 1e-11 : 0.01));
        RC_ASSERT(facets_off(body, 16) < 5);
    }
    for (const building::Assembly &assembly : house.assemblies)
        for (const building::Void &opening : assembly.openings)
            RC_ASSERT(wood_in_opening(laid, opening, *wall_named(laid.layout, assembly.letter)) < 1);
}

void check_text(const Laid &laid) {
    const std::string text = write_ifc(laid.source(), 1780000000);
    RC_ASSERT(text == write_ifc(laid.source(), 1780000000));
    const int pieces = count_of(laid.layout.pieces);
    RC_ASSERT(count_of_text(text, "=IFCMEMBER(") + count_of_text(text, "=IFCBEAM(") == pieces);
    RC_ASSERT(count_of_text(text, "=IFCMECHANICALFASTENER(") == count_of(laid.layout.pegs));
    RC_ASSERT(count_of_text(text, "=IFCOPENINGELEMENT(") == count_of(laid.shell.openings));
    RC_ASSERT(count_of_text(text, "=IFCWALL(") == count_of(laid.layout.walls));
}

} // namespace

TEST_CASE("Identifiers are the same each time, and of one thing alone") {
    // Worked out once with Python's uuid.uuid5 and the digits that the standard spells a number by.
    CHECK(building::guid_of("Tarnfold\n", "piece A-01-1") == "0TUjRa0ZrURwScitsuw$WS");
    std::set<std::string> all;
    for (int i = 0; i < 1000; ++i)
        all.insert(building::guid_of("house " + std::to_string(i % 10), "piece " + std::to_string(i / 10)));
    CHECK(all.size() == 1000);
    for (const std::string &each : all) {
        CHECK(each.size() == 22);
        CHECK(each[0] <= '3');
    }
}

TEST_CASE("Any shell is a house of closed bodies whose openings are empty") {
    Shell (*const kinds[])() = {any_tapered_shell,       any_family_shell, any_fitted_shell,
                                any_stepped_shell,       any_waned_shell,  any_saddle_shell,
                                any_stepped_saddle_shell};
    for (const auto any : kinds)
        CHECK(rc::check([any] {
            const Laid laid(any());
            if (laid.layout.pieces.empty()) return; // cannot be built
            check_house(laid);
            check_text(laid);
        }));
}

TEST_CASE("Mended logs and their new wood are pieces of the house") {
    CHECK(rc::check([] {
        const Shell whole = any_shell();
        MendsDrawn told;
        const Laid laid(with_any_mends(whole, lay_out(whole), 6, told));
        if (laid.layout.pieces.empty()) return;
        check_house(laid);
        const std::string text = write_ifc(laid.source(), 1780000000);
        const auto mends = std::ranges::count_if(laid.layout.pieces,
                                                 [](const Piece &piece) { return piece.mends.has_value(); });
        RC_ASSERT(count_of_text(text, "'NEW_WOOD'") == static_cast<int>(mends));
    }));
}

TEST_CASE("Who owns a house is told where the document says so, and nowhere else") {
    Shell shell = plain_shell();
    CHECK(count_of_text(write_ifc(Laid(shell).source(), 0), "IFCOWNERHISTORY") == 0);
    shell.project.creator = "Ansel";
    const std::string text = write_ifc(Laid(shell).source(), 1780000000);
    CHECK(count_of_text(text, "=IFCOWNERHISTORY(") == 1);
    CHECK(count_of_text(text, "'Ansel'") == 2); // and in the header
    CHECK(count_of_text(text, ",1780000000);") == 1);
}

TEST_CASE("A house without pieces is no house") {
    const Shell shell;
    const Laid laid(shell);
    CHECK_THROWS_AS(write_ifc(laid.source()), std::invalid_argument);
}
