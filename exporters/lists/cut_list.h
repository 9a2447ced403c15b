// The cut list as values: what to order, what to cut, what it weighs.
#pragma once

#include "exporters/words/voice.h"
#include "kernel/layout/layout.h"
#include "kernel/stock/order.h"
#include "kernel/stock/peg_sizes.h"
#include "kernel/stock/totals.h"

#include <map>
#include <string>
#include <vector>

namespace roundlay {

/// Of a species, as documents have it, that is weighed green or at the stated moisture.
inline std::string note_key(const std::string &species, bool green) {
    return green ? species : species + ", as stated";
}

/// What one blank becomes. Millimetres, mm3, kilograms.
struct Stick {
    std::string kind;                           ///< `log`, `sill log`, `island`, ...
    Blank blank;                                ///< of its stock: along the log, as it is ordered
    double volume = 0;                          ///< of the finished piece
    double low_kg = 0, high_kg = 0;             ///< estimated, not rounded
    double blank_low_kg = 0, blank_high_kg = 0; ///< of the squared blank, before it is cut; 0: a round stick
    double log_low_kg = 0, log_high_kg = 0;     ///< of the round log, before it is hewn
    std::string species;                        ///< in words
    std::string weight_note;                    ///< on what its weights rest, with the caution
    std::vector<std::string> cuts;              ///< in words
};

/// One piece, by its tag.
struct PieceRow {
    std::string tag, wall;
    std::string finish, fabric, mark; ///< in words; mark: what is written on the log
    double bow = 0;                   ///< as measured on the whole log, mm
    std::string note;                 ///< as stated of its log
    int round = 0, number = 0, raise = 0;
    std::string like; ///< tag of the first piece that is equal
    Stick stick;
    bool butt_left = true;                      ///< butt at the datum end
    std::string left, right;                    ///< where the ends are
    std::vector<std::string> above, below;      ///< tags in the same wall
    std::vector<std::string> at_left, at_right; ///< tags of the crossing logs it is notched to
    std::string pegs_found = {}, as_found = {}; ///< what the record says of it (tell_found); else empty
};

/// All pieces that are equal.
struct ModelRow {
    std::vector<std::string> tags; ///< in tag order; the first names the model
    Stick stick;
    int butt_left = 0; ///< how many have their butt left
};

struct CutList {
    std::string shell;
    UnitSystem units = UnitSystem::metric;
    Voice voice;                ///< that its words are said by, and its tables
    std::string weight_basis;   ///< a sentence for each wood
    std::string not_weighed;    ///< why there is no weight of all; else empty
    std::string shrinkage;      ///< what its wood loses in drying, with source; empty where that is not known
    bool weights_known = false; ///< of any of its pieces
    bool several_woods = false;
    std::vector<PieceRow> pieces;               ///< by wall, round, number
    std::vector<ModelRow> models;               ///< by their first piece
    std::vector<PegRow> pegs;                   ///< thick and long first
    std::vector<OrderRow> order;                ///< by section, long first
    std::map<std::string, std::string> notes;   ///< weight notes by note_key
    Totals totals;                              ///< of the pieces
    double order_step = 0;                      ///< mm
    double peg_step = 0;                        ///< mm
    bool pegs_in_place = false;                 ///< no cut sheet has their bores
    int rounds = 0, most_logs = 0;              ///< as stated, and one on another in the walls that have most
    double height = 0, lowest = 0, highest = 0; ///< mm: by its rounds, and of the wood that stands
};

/// `model_volumes`: mm3, one for each of layout.models (body_of(piece).volume). Where no person has chosen a
/// language it is English.
CutList collect_cut_list(const Shell &shell, const Layout &layout,
                         const Indexed<double, Model> &model_volumes, Language language = Language::english);

} // namespace roundlay
