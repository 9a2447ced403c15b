#include "exporters/sheets/bench/bench.h"

#include <algorithm>
#include <optional>
#include <utility>

namespace roundlay::sheets {
namespace {

/// A piece's rows with their numbers taken out: pieces of the same key are a family.
struct Shape {
    std::string key;
    std::vector<std::string> numbers;
};

/// What the drawing shows of its joints, and what no number says.
std::string sorts_of(const JointNames &names, const std::map<std::string, std::string> &sorts) {
    std::string all;
    const auto add = [&](const std::string &name) { all += (name.empty() ? "-" : sorts.at(name)) + ' '; };
    add(names.datum);
    add(names.far);
    for (const auto &[corner, name] : names.at_corner)
        add(name);
    return all;
}

Shape shape_of(const BenchPiece &piece, const Piece &of, bool inches) {
    Shape shape;
    shape.key = of.timber ? "timber" : of.log == LogKind::full ? (of.island ? "island" : "log") : "half";
    for (const BenchRow &row : piece.rows) {
        shape.key += '\n' + row.mark + '\t';
        Numbered apart = taken_apart(row.words, inches);
        for (const std::string &words : apart.between)
            shape.key += words + '\x01';
        shape.numbers.insert(shape.numbers.end(), apart.numbers.begin(), apart.numbers.end());
    }
    return shape;
}

/// Whether one of those pieces has it.
bool is_of(const Joint &joint, const std::vector<Index<Piece>> &pieces, const Layout &layout) {
    return std::ranges::any_of(pieces, [&](Index<Piece> i) {
        return std::ranges::find(joint.tags, layout.pieces[i].tag) != joint.tags.end();
    });
}

struct Member {
    Index<Piece> index{0};
    BenchPiece piece;
    std::vector<std::string> numbers;
};

/// The rows of the first with what stands in each place instead of its numbers.
std::vector<BenchRow> with_letters(const std::vector<BenchRow> &rows, const Letters &letters, bool inches) {
    std::vector<BenchRow> all;
    std::size_t place = 0;
    for (const BenchRow &row : rows) {
        const Numbered apart = taken_apart(row.words, inches);
        std::string words = apart.between.front();
        for (std::size_t i = 0; i < apart.numbers.size(); ++i)
            words += letters.in_place.at(place++) + apart.between[i + 1];
        all.push_back({row.mark, words});
    }
    return all;
}

/// What each printed number of one piece is called on the drawing. How many numbers would stand for two
/// things.
int rename(const Letters &letters, const std::vector<std::string> &numbers,
           std::map<std::string, std::string> &renamed) {
    int clashes = 0;
    for (std::size_t p = 0; p < numbers.size(); ++p) {
        const auto [known, is_new] = renamed.emplace(numbers[p], letters.in_place[p]);
        if (is_new || known->second == letters.in_place[p]) continue;
        ++clashes;
        if (known->second.find(letters.in_place[p]) == std::string::npos)
            known->second += " / " + letters.in_place[p];
    }
    return clashes;
}

void choose_drawn(Family &family, const std::vector<Member> &members) {
    int least = -1;
    for (std::size_t i = 0; i < members.size() && least != 0; ++i) {
        std::map<std::string, std::string> renamed;
        const int clashes = rename(family.letters, members[i].numbers, renamed);
        if (least >= 0 && clashes >= least) continue;
        least = clashes;
        family.drawn = i;
        family.renamed = std::move(renamed);
    }
}

/// Bores of one kind in all pieces of a family.
class KindOfBores {
  public:
    explicit KindOfBores(std::size_t pieces) : by_piece_(pieces) {}

    void add(std::size_t piece, const std::vector<BenchBore> &bores) { by_piece_[piece] = bores; }

    /// What all have in common stands in the heading, the rest in the cells.
    std::pair<std::string, std::vector<std::string>> column(const std::string &kind) const {
        const auto depth = common(&BenchBore::depth), across = common(&BenchBore::across);
        std::string heading = kind;
        for (const auto &each : {depth, across})
            if (each && !each->empty()) heading += ", " + *each;
        std::vector<std::string> cells;
        for (const auto &bores : by_piece_) {
            std::string cell;
            for (const BenchBore &bore : bores) {
                cell += (cell.empty() ? "" : "; ") + bore.at;
                if (!depth) cell += ", " + bore.depth;
                if (!across) cell += ", " + bore.across;
            }
            cells.push_back(std::move(cell));
        }
        return {std::move(heading), std::move(cells)};
    }

  private:
    /// Nothing where they differ.
    std::optional<std::string> common(std::string BenchBore::*what) const {
        std::optional<std::string> all;
        for (const auto &bores : by_piece_)
            for (const BenchBore &bore : bores) {
                if (all && *all != bore.*what) return std::nullopt;
                all = bore.*what;
            }
        return all ? all : std::optional<std::string>("");
    }

    std::vector<std::vector<BenchBore>> by_piece_;
};

void collect_bores(Family &family, const std::vector<Member> &members) {
    std::map<std::string, KindOfBores> by_kind;
    for (std::size_t i = 0; i < members.size(); ++i)
        for (const BenchBores &bores : members[i].piece.bores)
            by_kind.try_emplace(bores.kind, members.size()).first->second.add(i, bores.bores);
    for (const auto &[kind, bores] : by_kind)
        family.bores.push_back(bores.column(kind));
}

Family family_of(const std::vector<Member> &members, std::size_t number, bool inches) {
    Family family;
    family.name = "F" + std::to_string(number);
    std::vector<std::vector<std::string>> numbers;
    for (const Member &m : members) {
        family.pieces.push_back(m.index);
        family.openings.push_back(m.piece.openings);
        family.holds.push_back(m.piece.holds);
        numbers.push_back(m.numbers);
    }
    family.letters = lettered(numbers);
    family.is_cut = members.front().piece.is_cut;
    family.rows = with_letters(members.front().piece.rows, family.letters, inches);
    collect_bores(family, members);
    choose_drawn(family, members);
    return family;
}

} // namespace

bool stands_by_itself(const Piece &piece) {
    return is_old_wood(piece) || piece.mends.has_value();
}

Families families_of(const Draft &draft, const Words &words, const OnlyPieces &only) {
    Families families;
    FoundJoints found = joints_found(draft.layout, words.system());
    const bool inches = words.system() == UnitSystem::imperial;
    std::map<std::string, std::string> sorts; // by the joint's name
    for (const Joint &joint : found.joints)
        sorts[joint.name] = sort_of(joint);
    std::vector<std::string> keys;
    std::vector<std::vector<Member>> members;
    for (const Index<Piece> i : pieces_of(draft.layout, only)) {
        const Piece &piece = draft.layout.pieces[i];
        if (stands_by_itself(piece)) continue;
        Member member{i, bench_piece(features_of(piece, words.system()), found.names[i], words), {}};
        Shape shape = shape_of(member.piece, piece, inches);
        shape.key += sorts_of(found.names[i], sorts);
        member.numbers = std::move(shape.numbers);
        const auto known = std::ranges::find(keys, shape.key);
        const auto at = static_cast<std::size_t>(known - keys.begin());
        if (known == keys.end()) {
            keys.push_back(std::move(shape.key));
            members.emplace_back();
        }
        members[at].push_back(std::move(member));
    }
    for (const auto &each : members)
        families.all.push_back(family_of(each, families.all.size() + 1, inches));
    families.joints = std::move(found.joints);
    if (only)
        std::erase_if(families.joints,
                      [&](const Joint &joint) { return !is_of(joint, *only, draft.layout); });
    return families;
}

} // namespace roundlay::sheets
