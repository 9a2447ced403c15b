#include "modeler/window/desk/about.h"

#include "kernel/layout/pieces/finding_pieces.h"
#include "modeler/window/desk/faults.h"

#include <algorithm>

namespace roundlay::window {

namespace {

/// Named itself, not only by its pieces: also while there are none.
bool names(const Finding &finding, const Chosen &thing, const State &state) {
    if (thing.kind == Chosen::Kind::corner) return is_corner(finding.about, thing.name);
    const Faults about = about_of(state, finding);
    if (thing.kind == Chosen::Kind::opening) return about.openings.contains(thing.opening);
    return thing.kind == Chosen::Kind::wall && about.walls.contains(thing.name);
}

} // namespace

bool is_part_of(const Chosen &thing, const Piece &piece, const Layout &layout, const Shell &shell) {
    switch (thing.kind) {
    case Chosen::Kind::piece:
        return piece.tag == thing.name;
    case Chosen::Kind::wall:
        return !piece.timber && layout.walls[piece.wall].name == thing.name;
    case Chosen::Kind::corner:
        return !piece.timber && (piece.datum.at == thing.name || piece.far.at == thing.name);
    case Chosen::Kind::opening: {
        if (thing.opening < 0 || thing.opening >= static_cast<int>(shell.openings.size())) return false;
        const std::string &name = shell.openings[static_cast<std::size_t>(thing.opening)].name;
        return !name.empty() && (piece.datum.at == name || piece.far.at == name);
    }
    case Chosen::Kind::nothing:
        break;
    }
    return false;
}

std::vector<int> findings_about(const Chosen &thing, const State &state) {
    std::vector<int> found;
    const ExportJob &job = state.job;
    for (std::size_t i = 0; i < job.findings.size(); ++i) {
        const auto pieces = pieces_of(job.findings[i], job.shell, job.layout);
        const bool by_piece =
            thing.kind == Chosen::Kind::piece && std::ranges::any_of(pieces, [&](Index<Piece> piece) {
                return is_part_of(thing, job.layout.pieces[piece], job.layout, job.shell);
            });
        if (by_piece || names(job.findings[i], thing, state)) found.push_back(static_cast<int>(i));
    }
    return found;
}

} // namespace roundlay::window
