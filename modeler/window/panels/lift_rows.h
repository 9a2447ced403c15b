// The lifts of a raise, or of taking down, as rows: what they weigh, what is done of them, what may come
// next.
#pragma once

#include "exporters/registry/job.h"
#include "kernel/progress/ticked.h"

#include <QString>
#include <array>
#include <optional>
#include <vector>

namespace roundlay::window {

/// What may be ticked of a piece, in one word, and what is done to it now ("Tick A-01-1: up").
QString deed_word(Deed deed);

struct LiftRow {
    Index<Piece> piece, log; ///< log: with which it is lifted; itself, but for new wood in a mended log
    int number = 0;          ///< in the order of the work, from 1; new wood has its log's
    QString tag, weight;
    bool is_next = false; ///< the first that may come now
    May may = May::now;
    QString turn, waits_for;
    std::array<bool, deeds> ticked{};
    std::array<QString, deeds> who; ///< did it, and when; empty where nobody said
    bool operator==(const LiftRow &) const = default;

    bool is_new_wood() const { return piece != log; }
};

/// New wood stands behind the log that it is lifted with. `deed`: Deed::up or Deed::down.
std::vector<LiftRow> lift_rows(const ExportJob &job, const Site &site, Deed deed);

} // namespace roundlay::window
