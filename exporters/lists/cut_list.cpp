#include "exporters/lists/cut_list.h"

#include "exporters/lists/cut_words.h"
#include "exporters/lists/list_cells.h"
#include "exporters/lists/table.h"
#include "kernel/layout/courses/standing.h"
#include "kernel/layout/cuts/asked.h"
#include "kernel/trade/wood_physics.h"

#include <algorithm>
#include <map>
#include <set>

namespace roundlay {

namespace {

/// The crossing logs that each piece is notched to, by the half of the piece. Of two round logs that cross
/// only the upper one is cut.
class Crossings {
  public:
    explicit Crossings(const Layout &layout) {
        std::map<std::string, const Piece *> by_tag;
        for (const Piece &piece : layout.pieces)
            by_tag[piece.tag] = &piece;
        for (const Piece &piece : layout.pieces)
            for (const Cut &cut : piece.cuts) {
                const Neighbour met = neighbour_of(cut);
                const auto end = end_of(cut);
                if (met.what != Met::crossing_log || !end) continue;
                const std::string other(met.name);
                add(piece, *end, other);
                if (const auto lower = by_tag.find(other); !met.cut_too && lower != by_tag.end())
                    add(*lower->second, half_under(*lower->second, piece), piece.tag);
            }
    }

    /// In tag order, each once.
    std::vector<std::string> at(const Piece &piece, End end) const {
        const auto found = known_.find({piece.tag, end});
        return found == known_.end() ? std::vector<std::string>{}
                                     : std::vector<std::string>(found->second.begin(), found->second.end());
    }

  private:
    void add(const Piece &piece, End end, const std::string &other) {
        known_[{piece.tag, end}].insert(other);
    }

    /// Which half of the lower log the upper one's axis runs over.
    static End half_under(const Piece &lower, const Piece &upper) {
        const Vec3 along = lower.frame.direction_to_local(upper.frame.x);
        const Vec3 from = lower.frame.to_local(upper.frame.to_world({0, upper.blank.width / 2, 0}));
        const double x = from.x + along.x / along.y * (lower.blank.width / 2 - from.y);
        return x < lower.blank.length / 2 ? End::datum : End::far;
    }

    std::map<std::pair<std::string, End>, std::set<std::string>> known_;
};

std::string percent(double value) {
    return number(value, 1).digits + " %";
}

/// From the moisture of cutting to 12 %, the middle of what wood comes to under a roof (common practice, no
/// source).
std::string shrinkage_words(const Wood &wood, const Voice &voice) {
    constexpr double air_dry = 12;
    const auto found = find_species(species_of(wood));
    const auto *species = std::get_if<const Species *>(&found);
    if (!species || wood.moisture.value_or(fibre_saturation) <= air_dry) return {};
    const Shrinkage &s = (*species)->shrinkage;
    const auto lost = [&](double whole) {
        return partial_shrinkage(whole, air_dry) -
               partial_shrinkage(whole, wood.moisture.value_or(fibre_saturation));
    };
    const std::string name = voice.word((*species)->name), radial = percent(lost(s.radial)),
                      tangential = percent(lost(s.tangential)), source(s.origin.source),
                      mark = voice.word(words(s.origin.mark));
    return s.origin.conflict.empty()
               ? voice.say("%1: %2 (radial) to %3 (tangential) of heights and widths, none of lengths, by %4 "
                           "(%5) and Eq. 4-9; walls settle by more than that",
                           name, radial, tangential, source, mark)
               : voice.say("%1: %2 (radial) to %3 (tangential) of heights and widths, none of lengths, by %4 "
                           "(%5) and Eq. 4-9, though %6; walls settle by more than that",
                           name, radial, tangential, source, mark, voice.word(s.origin.conflict));
}

using WeightNotes = std::map<std::string, std::string>;

/// By species, and whether it is weighed green.
WeightNotes weight_notes(const Shell &shell, const Layout &layout, const Voice &voice) {
    WeightNotes notes;
    for (const Piece &piece : layout.pieces) {
        const Wood wood = weighed_wood(shell, piece);
        if (std::string &note = notes[note_key(species_of(wood), !wood.moisture)]; note.empty())
            note = voice.words(weight_note(weigh(0, wood)));
    }
    return notes;
}

std::string basis_words(const Shell &shell, const Layout &layout, const Voice &voice) {
    std::string all;
    for (const Said &basis : weight_bases(shell, layout.pieces))
        all += (all.empty() ? "" : " ") + voice.words(basis);
    return all;
}

class Collector {
  public:
    Collector(const Shell &shell, const Layout &layout, const Indexed<PieceStock, Piece> &stock,
              const WeightNotes &notes, const Voice &voice)
        : shell_(shell), layout_(layout), stock_(stock), notes_(notes), crossings_(layout), voice_(voice) {}

    Stick stick(Index<Piece> index) const {
        const Piece &piece = layout_.pieces[index];
        const auto &[blank, volume, l] = stock_[index];
        const Wood wood = weighed_wood(shell_, piece);
        const std::string species = species_of(wood);
        return {kind_words(piece),
                blank,
                volume,
                l.piece.low_kg,
                l.piece.high_kg,
                l.blank.low_kg,
                l.blank.high_kg,
                l.log.low_kg,
                l.log.high_kg,
                voice_.word(species),
                notes_.at(note_key(species, !wood.moisture)),
                cut_words(piece, voice_)};
    }

    PieceRow piece_row(Index<Piece> index) const {
        const Piece &piece = layout_.pieces[index];
        const Model &model = layout_.models.at(piece.model);
        return {piece.tag,
                part_letter(layout_, part_of(layout_, piece)),
                voice_.word(name_of(piece.finish)),
                voice_.word(name_of(piece.fabric)),
                piece.mark,
                piece.bow,
                piece.note,
                piece.round,
                piece.number,
                piece.raise,
                at(model.pieces.front()).tag,
                stick(index),
                piece.butt_at_datum,
                place_of(piece.datum, voice_),
                place_of(piece.far, voice_),
                piece.above,
                piece.below,
                crossings_.at(piece, End::datum),
                crossings_.at(piece, End::far)};
    }

    ModelRow model_row(const Model &model) const {
        ModelRow row;
        row.stick = stick(model.pieces.front());
        std::vector<std::string> kinds{row.stick.kind};
        for (const Index<Piece> index : model.pieces) {
            row.tags.push_back(at(index).tag);
            row.butt_left += at(index).butt_at_datum ? 1 : 0;
            const std::string kind = kind_words(at(index));
            if (std::find(kinds.begin(), kinds.end(), kind) != kinds.end()) continue;
            kinds.push_back(kind);
            row.stick.kind += ", " + kind;
        }
        return row;
    }

  private:
    const Piece &at(Index<Piece> index) const { return layout_.pieces.at(index); }

    /// Nobody orders old wood: it says what it is wherever it stands beside new.
    std::string kind_words(const Piece &piece) const {
        const std::string kind = kind_of(layout_, piece, voice_);
        return is_old_wood(piece) ? voice_.say("%1 (%2)", kind, voice_.word(name_of(piece.fabric))) : kind;
    }

    const Shell &shell_;
    const Layout &layout_;
    const Indexed<PieceStock, Piece> &stock_;
    const WeightNotes &notes_;
    Crossings crossings_;
    const Voice &voice_;
};

} // namespace

CutList collect_cut_list(const Shell &shell, const Layout &layout,
                         const Indexed<double, Model> &model_volumes, Language language) {
    const Indexed<PieceStock, Piece> stock = stock_of_pieces(shell, layout, model_volumes);
    const Voice voice = voice_of(shell, layout, language);
    const Totals totals = totals_of(layout, stock);
    const WeightNotes notes = weight_notes(shell, layout, voice);
    const Collector collector(shell, layout, stock, notes, voice);
    CutList list{called(shell),
                 shell.units,
                 voice,
                 basis_words(shell, layout, voice),
                 totals.weights_known() ? "" : voice.words(not_weighed_words(totals, layout)),
                 shrinkage_words(shell.wood, voice),
                 std::ranges::any_of(stock, [](const PieceStock &each) { return each.lifted.piece.known; }),
                 notes.size() > 1,
                 {},
                 {},
                 pegs_by_size(shell, layout),
                 sticks_to_order(shell, layout),
                 notes,
                 totals,
                 order_step(shell.units).mm(),
                 peg_step(shell.units).mm(),
                 shell.pegs.bored == PegBoring::in_place};
    const WallStanding stands = standing_in_all(layout);
    list.rounds = layout.rounds, list.most_logs = stands.logs;
    list.height = layout.height, list.lowest = stands.lowest, list.highest = stands.highest;
    for (const auto i : layout.pieces.indices())
        list.pieces.push_back(collector.piece_row(i));
    for (const Model &model : layout.models)
        list.models.push_back(collector.model_row(model));
    return list;
}

} // namespace roundlay
