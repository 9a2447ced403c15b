#include "kernel/layout/fastenings/cut_marks.h"

#include "kernel/layout/cuts/asked.h"
#include "kernel/layout/cuts/match.h"
#include "kernel/layout/fastenings/bore_marks.h"

#include <algorithm>
#include <map>

namespace roundlay {

namespace {

/// What is counted by itself, from the datum end.
struct Counted {
    std::string letter;
    double x = 0;
    std::size_t cut = 0;
};

std::vector<Counted> counted_of(const Piece &piece) {
    std::vector<Counted> all;
    for (std::size_t i = 0; i < piece.cuts.size(); ++i)
        match(
            piece.cuts[i],
            [&](const PocketCut &pocket) {
                all.push_back({"K", pocket.x, i});
            },
            [&](const Bore &bore) {
                all.push_back({letter_of(bore.use), bore.x, i});
            },
            passing<FaceCut, RoundCut, SeamCut, ScopeCut, BoxCut, CheekCut, MendCut>); // numbered, or hewn
    std::ranges::stable_sort(all, {}, &Counted::x);
    return all;
}

} // namespace

std::vector<std::string> cut_marks(const Piece &piece) {
    std::vector<std::string> marks(piece.cuts.size());
    int number = 0;
    for (std::size_t i = 0; i < piece.cuts.size(); ++i)
        if (is_numbered(piece.cuts[i])) marks[i] = std::to_string(++number);
    std::map<std::string, int> counts;
    for (const Counted &each : counted_of(piece))
        marks[each.cut] = each.letter + std::to_string(++counts[each.letter]);
    return marks;
}

} // namespace roundlay
