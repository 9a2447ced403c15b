// The found log that the panel shows: what the record says of it, or where it lies if nobody has recorded it.
#pragma once

#include "exporters/sheets/form/form_logs.h"
#include "modeler/window/desk/state.h"

#include <QString>
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace roundlay::window {

struct EndAtHand {
    std::string name;                        ///< empty: neither the record nor the plan says which end it is
    std::map<std::string, QString> proposed; ///< by the plan, where nobody measured; by the box's name
};

struct LogAtHand {
    FoundLog found;
    bool recorded = false; ///< else only its tag is proposed
    std::string wall;      ///< of the plan, of a timber its floor; empty: the plan has no such log
    std::vector<Index<Piece>> pieces;
    EndAtHand ends[2];
};

/// All logs that can be recorded, in the order in which a person types down the walls: wall by wall from the
/// bottom up, then timbers of floors, then those of the record that the plan does not have.
std::vector<LogAtHand> logs_at_hand(const Record &record, const Layout &layout);

/// With the numbers that the plan proposes for its ends.
void propose(LogAtHand &log, const Layout &layout, UnitSystem units);

/// Of the log that lies there; none where no log does.
std::optional<std::size_t> log_of_piece(const std::vector<LogAtHand> &logs, Index<Piece> piece);
std::optional<std::size_t> log_tagged(const std::vector<LogAtHand> &logs, const std::string &tag);

} // namespace roundlay::window
