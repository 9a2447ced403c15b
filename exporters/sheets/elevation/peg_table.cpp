#include "exporters/sheets/elevation/peg_table.h"

#include "exporters/sheets/drawing/columns.h"
#include "exporters/sheets/drawing/listed.h"

#include <algorithm>
#include <map>

namespace roundlay::sheets {
namespace {

struct Place {
    double along = 0; ///< from the wall's left outside corner
    std::string depth;
};

std::map<int, std::vector<Place>> places_by_round(const Layout &layout, Index<WallPlace> wall,
                                                  const Words &words) {
    std::map<int, std::vector<Place>> rounds;
    for (const Peg &peg : layout.pegs) {
        const Piece &upper = layout.pieces.at(peg.upper);
        if (upper.wall != wall) continue;
        const double along = layout.walls[wall].frame.to_local(peg.top).x;
        rounds[upper.round].push_back({along, words.length(peg.length)});
    }
    for (auto &[round, places] : rounds)
        std::ranges::sort(places, {}, &Place::along);
    return rounds;
}

std::vector<std::string> row_of(int round, const std::vector<Place> &places, const Words &words) {
    const bool alike =
        std::ranges::all_of(places, [&](const Place &p) { return p.depth == places[0].depth; });
    std::vector<std::string> told;
    for (const Place &place : places) {
        const std::string along = words.length(place.along);
        told.push_back(alike ? along : words.say("%1 (%2 deep)", along, place.depth));
    }
    return {std::to_string(round), listed(told), alike ? places[0].depth : words.say("each its own")};
}

} // namespace

Table pegs_in_place(const Shell &shell, const Layout &layout, Index<WallPlace> wall, const Words &words) {
    Table table = table_called(
        words, words.say("Pegs of this wall, bored in place, of %1", in_mm(shell.pegs.diameter.mm())));
    table.columns = {flush_left(words.say("Through round"), 20),
                     flush_left(words.say("From the left outside corner, seen from outside"), 110),
                     flush_left(words.say("Depth from the top"), 30)};
    if (shell.pegs.bored != PegBoring::in_place) return table;
    for (const auto &[round, places] : places_by_round(layout, wall, words))
        table.rows.push_back(row_of(round, places, words));
    return table;
}

} // namespace roundlay::sheets
