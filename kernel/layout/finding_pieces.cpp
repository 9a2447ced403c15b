#include "kernel/layout/finding_pieces.h"

#include "kernel/layout/text.h"

#include <algorithm>
#include <cctype>
#include <charconv>
#include <optional>

namespace roundlay {

namespace {

bool goes_on(const std::string &text, std::size_t at) {
    return at < text.size() && (std::isalnum(static_cast<unsigned char>(text[at])) != 0 || text[at] == '-');
}

/// True where the words stand in the text for themselves, not as part of a longer tag or name.
bool names(const std::string &text, const std::string &words) {
    for (std::size_t at = text.find(words); at != std::string::npos; at = text.find(words, at + 1))
        if (!goes_on(text, at + words.size()) && (at == 0 || !goes_on(text, at - 1))) return true;
    return false;
}

bool ends_at(const Piece &piece, const std::string &place) {
    return piece.datum.at == place || piece.far.at == place;
}

std::optional<std::size_t> stated_entry(const std::string &subject, const std::string &list) {
    if (!subject.starts_with(list + "[")) return {};
    std::size_t index = 0;
    const char *begin = subject.data() + list.size() + 1;
    const auto read = std::from_chars(begin, subject.data() + subject.size(), index);
    return read.ec == std::errc() ? std::optional(index) : std::nullopt;
}

bool touches_opening(const Piece &piece, const std::string &opening) {
    if (ends_at(piece, opening)) return true;
    return std::any_of(piece.cuts.begin(), piece.cuts.end(), [&](const Cut &cut) {
        const auto *box = std::get_if<BoxCut>(&cut);
        return box != nullptr && box->opening == opening;
    });
}

template <typename Test> std::vector<int> pieces_where(const Layout &layout, Test test) {
    std::vector<int> found;
    for (std::size_t i = 0; i < layout.pieces.size(); ++i)
        if (test(layout.pieces[i])) found.push_back(static_cast<int>(i));
    return found;
}

} // namespace

std::vector<int> pieces_of(const Finding &finding, const Shell &shell, const Layout &layout) {
    const std::string &place = finding.place;
    auto found = pieces_where(layout, [&](const Piece &p) { return names(place, p.tag); });
    if (!found.empty()) return found;
    if (const auto index = stated_entry(finding.subject, "opening");
        index && *index < shell.openings.size()) {
        const std::string &name = shell.openings[*index].name;
        found =
            pieces_where(layout, [&](const Piece &p) { return !name.empty() && touches_opening(p, name); });
        if (!found.empty()) return found;
    }
    const auto in_round = [&](const Piece &p) {
        return p.timber < 0 && names(place, round_place(layout.walls[static_cast<std::size_t>(p.wall)].name, p.round));
    };
    found = pieces_where(layout, in_round);
    if (!found.empty()) return found;
    return pieces_where(layout, [&](const Piece &p) {
        return names(place, "corner " + p.datum.at) || names(place, "corner " + p.far.at) ||
               names(place, part_name(layout, part_of(layout, p)));
    });
}

} // namespace roundlay
