#include "kernel/layout/pieces/finding_pieces.h"

#include "kernel/geometry/tolerance.h"
#include "kernel/layout/cuts/asked.h"
#include "kernel/layout/openings/openings.h"
#include "kernel/layout/piece_places.h"

#include <algorithm>
#include <charconv>
#include <optional>

namespace roundlay {

namespace {

bool ends_at(const Piece &piece, const std::string &place) {
    return piece.datum.at == place || piece.far.at == place;
}

/// Named by its tag.
bool names_piece(const About &about, const Piece &piece) {
    return std::any_of(about.begin(), about.end(), [&](const Thing &thing) {
        if (const auto *one = std::get_if<about::Piece>(&thing)) return one->tag == piece.tag;
        if (const auto *two = std::get_if<about::Pieces>(&thing))
            return two->one == piece.tag || two->other == piece.tag;
        const auto *timber = std::get_if<about::Timber>(&thing);
        return timber != nullptr && timber->tag == piece.tag;
    });
}

/// Of a round: what it says of pieces by their tags, as of two that pegs do not hold together.
bool is_spoken_of(const Finding &finding, const Piece &piece) {
    if (first_of<about::Round>(finding.about) == nullptr) return false;
    return std::ranges::any_of(finding.what.amounts, [&](const Amount &amount) {
        const auto *name = std::get_if<std::string>(&amount.value());
        return name != nullptr && *name == piece.tag;
    });
}

bool names_round(const About &about, const Layout &layout, const Piece &piece) {
    const auto *wall = first_of<about::Wall>(about);
    const auto *round = first_of<about::Round>(about);
    return wall != nullptr && round != nullptr && !piece.timber && piece.round == round->number &&
           layout.walls[piece.wall].name == wall->name;
}

/// Its wall or floor as a whole, or a corner that it ends at.
bool names_part_or_corner(const About &about, const Layout &layout, const Piece &piece) {
    if (const auto *corner = first_of<about::Corner>(about); corner && ends_at(piece, corner->name))
        return true;
    const std::string &own = part_letter(layout, part_of(layout, piece));
    if (!piece.timber) {
        const auto *wall = first_of<about::Wall>(about);
        return wall != nullptr && wall->name == own;
    }
    const auto *floor = first_of<about::Floor>(about);
    return floor != nullptr && floor->name == own;
}

std::optional<std::size_t> stated_entry(const std::string &subject, const std::string &list) {
    if (!subject.starts_with(list + "[")) return {};
    std::size_t index = 0;
    const char *begin = subject.data() + list.size() + 1;
    const auto read = std::from_chars(begin, subject.data() + subject.size(), index);
    return read.ec == std::errc() ? std::optional(index) : std::nullopt;
}

/// Cuts tell an opening by what people call it, and two may be called alike: the wall and the place tell them
/// apart.
bool touches_opening(const Shell &shell, const Layout &layout, const Piece &piece, std::size_t opening) {
    const Opening &o = shell.openings[opening];
    if (piece.timber || layout.walls[piece.wall].name != o.wall) return false;
    const auto [from, to] = along_wall(layout.walls, piece);
    if (to < o.from_left.mm() - tolerance::clear || from > (o.from_left + o.width).mm() + tolerance::clear)
        return false;
    const std::string name = name_of(shell, opening);
    return ends_at(piece, name) || std::any_of(piece.cuts.begin(), piece.cuts.end(),
                                               [&](const Cut &cut) { return is_for_opening(cut, name); });
}

template <typename Test> std::vector<Index<Piece>> pieces_where(const Layout &layout, Test test) {
    std::vector<Index<Piece>> found;
    for (const auto i : layout.pieces.indices())
        if (test(layout.pieces[i])) found.push_back(i);
    return found;
}

} // namespace

std::vector<Index<Piece>> pieces_of(const Finding &finding, const Shell &shell, const Layout &layout) {
    const About &about = finding.about;
    auto found = pieces_where(layout, [&](const Piece &p) { return names_piece(about, p); });
    if (!found.empty()) return found;
    found = pieces_where(layout, [&](const Piece &p) { return is_spoken_of(finding, p); });
    if (!found.empty()) return found;
    if (const auto index = stated_entry(finding.subject, "opening");
        index && *index < shell.openings.size()) {
        found =
            pieces_where(layout, [&](const Piece &p) { return touches_opening(shell, layout, p, *index); });
        if (!found.empty()) return found;
    }
    found = pieces_where(layout, [&](const Piece &p) { return names_round(about, layout, p); });
    if (!found.empty()) return found;
    return pieces_where(layout, [&](const Piece &p) { return names_part_or_corner(about, layout, p); });
}

} // namespace roundlay
