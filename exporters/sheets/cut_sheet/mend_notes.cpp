#include "exporters/sheets/cut_sheet/mend_notes.h"

#include "kernel/layout/courses/own_sizes.h"
#include "kernel/layout/cuts/asked.h"
#include "kernel/layout/mends/section_left.h"
#include "kernel/layout/piece_places.h"

#include <algorithm>
#include <utility>

namespace roundlay::sheets {
namespace {

std::string chosen_by(const Mend &mend, const Words &words) {
    return mend.by.empty() ? words.say("Length chosen by the maker: no least length is published.")
                           : words.say("Length chosen by %1: no least length is published.", mend.by);
}

/// Tag of the new wood that the mend brought.
std::string new_wood_of(const Layout &layout, Index<Piece> log, std::size_t mend) {
    for (const Index<Piece> i : new_wood_in(layout.pieces, log))
        if (const Piece &piece = layout.pieces[i]; piece.mended.front() == mend) return piece.tag;
    return {};
}

void add_new_wood(std::vector<std::string> &all, const Shell &shell, const Layout &layout, const Piece &piece,
                  const Words &words) {
    all.push_back(words.say("%1 is new wood for %2: fit it there before the log is raised.", piece.tag,
                            layout.pieces[*piece.mends].tag));
    all.push_back(chosen_by(shell.mends[piece.mended.front()], words));
}

std::vector<std::string> each_once(std::vector<std::string> all) {
    std::vector<std::string> once;
    for (std::string &note : all)
        if (std::ranges::find(once, note) == once.end()) once.push_back(std::move(note));
    return once;
}

} // namespace

std::vector<std::string> mend_notes(const Shell &shell, const Layout &layout, const Model &model,
                                    const Words &words) {
    std::vector<std::string> all;
    for (const Index<Piece> i : model.pieces) {
        const Piece &piece = layout.pieces[i];
        if (piece.mends) {
            add_new_wood(all, shell, layout, piece, words);
            continue;
        }
        for (const std::size_t mend : piece.mended) {
            all.push_back(words.say("%1 is mended with %2.", piece.tag, new_wood_of(layout, i, mend)));
            all.push_back(chosen_by(shell.mends[mend], words));
        }
    }
    const Piece &first = layout.pieces[model.pieces.front()];
    if (!first.mends)
        for (const SectionLeft &left : sections_left(first))
            all.push_back(words.say("At its mend %1.", said_of(left)));
    return each_once(std::move(all));
}

namespace {

bool is_old(const Layout &layout, std::string_view tag) {
    const auto piece = std::ranges::find(layout.pieces, tag, &Piece::tag);
    return piece != layout.pieces.end() && is_old_wood(*piece);
}

/// Each numbered cut that meets an old log, and the faces that old logs lie on or under.
std::string fitted_to(const Layout &layout, const Piece &piece, const Words &words) {
    std::string all;
    const auto add = [&](const std::string &one) { all += (all.empty() ? "" : ", ") + one; };
    int number = 0;
    for (const Cut &cut : piece.cuts) {
        if (!is_numbered(cut)) continue;
        ++number;
        const Neighbour met = neighbour_of(cut);
        if (met.what == Met::crossing_log && is_old(layout, met.name))
            add(words.say("cut %1 to %2", number, std::string(met.name)));
    }
    for (const std::string &tag : piece.below)
        if (is_old(layout, tag)) add(words.say("its under face to %1", tag));
    for (const std::string &tag : piece.above)
        if (is_old(layout, tag)) add(words.say("its top face to %1", tag));
    return all;
}

} // namespace

std::vector<std::string> fitted_notes(const Shell &shell, const Layout &layout, const Model &model,
                                      const Words &words) {
    std::vector<std::string> all;
    for (const Index<Piece> i : model.pieces) {
        const Piece &piece = layout.pieces[i];
        if (!is_log(piece) || piece.fabric != Fabric::replacement) continue;
        const std::string fitted = fitted_to(layout, piece, words);
        if (fitted.empty()) continue;
        all.push_back(words.say("%1 is fitted to old work: %2.", piece.tag, fitted));
        const double scribe = own_scribe_of(shell, layout.walls[piece.wall].name, piece.round);
        all.push_back(scribe > 0
                          ? words.say("Its seams at corners are cut %1 clear of it: scribe them at the "
                                      "wall.",
                                      in_mm(scribe))
                          : words.say("Hold every number of these against the old wood before it is "
                                      "cut: some may only have been proposed."));
    }
    return each_once(std::move(all));
}

} // namespace roundlay::sheets
