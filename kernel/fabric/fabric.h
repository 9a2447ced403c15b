// What becomes of the logs that were found, and how much old wood stays: sums, and no verdict.
#pragma once

#include "kernel/layout/wood/body.h"
#include "kernel/measure/said.h"
#include "kernel/record/record.h"
#include "kernel/shell/finding.h"
#include "kernel/shell/shell.h"

#include <optional>
#include <string>
#include <vector>

namespace roundlay {

/// One found log in a layout of the house as it was found.
struct DecidedLog {
    std::size_t log = 0;                ///< in Record::logs
    std::optional<Decision> what;       ///< the last one; none: nobody has decided
    std::vector<Index<Piece>> found_as; ///< where it was found; several where openings part its round, none
                                        ///< where the layout has no such log
};

/// One for each found log, in the order of the record. `decisions`: how many of each log's count, the first
/// ones, so that a figure can be told as it was before a change of mind; all of them where it is left out.
std::vector<DecidedLog> decided_logs(const Record &record, const Layout &layout,
                                     std::optional<std::size_t> decisions = {});

/// New wood that comes into a found log.
struct NewWood {
    std::size_t log = 0;  ///< in Record::logs
    std::string tag;      ///< of the new piece
    Mend mend;            ///< as it is stated
    double from_left = 0; ///< mm along the log as it lies without mends, from its left end as seen from
    double to_left = 0;   ///< outside: where the new wood begins and ends
    double from_right = 0, to_right = 0; ///< the same from its right end, to_right the lesser
    double low = 0, high = 1;            ///< parts of the log's height, from below
};

/// Of all found logs that `now` shows mended, in the order of the record, of each from left to right.
/// `shell`: that is laid out so.
std::vector<NewWood> new_wood(const Record &record, const Shell &shell, const Layout &now);

struct FabricSum {
    int logs = 0;       ///< found logs
    double volume = 0;  ///< mm3 of the wood of their pieces, joints and bores taken off
    double outside = 0; ///< mm2 of their outside faces
    void add(const FabricSum &other);
};

/// Of all logs that were found and of those of each decision, where only what is left of a mended log counts
/// as old. A log that the layout has no piece of counts as a log, without volume or face; one of which
/// nothing is left (is_gone) is in no sum.
struct FabricFigures {
    FabricSum found;
    FabricSum of[6]; ///< by Decision
    FabricSum undecided;
    FabricSum
        cut_out; ///< old wood that new wood has come for, in logs that are mended: in none of the decisions
    FabricSum not_standing; ///< that is to stay, and stands nowhere in the state: in none of the decisions
    int without_place = 0;  ///< logs that the layout has no piece of
    int gone = 0;           ///< logs that are recorded as missing from end to end
    std::size_t most = 0;   ///< decisions of one log, one after the other

    const FabricSum &of_decision(Decision what) const { return of[static_cast<std::size_t>(what)]; }
    /// What stays in the house: kept, mended, turned end for end, and used elsewhere.
    FabricSum stays() const;
};

FabricFigures fabric_figures(const Record &record, const Layout &layout, const Bodies &bodies,
                             std::optional<std::size_t> decisions = {});

/// Takes what mends of the house as it shall stand cut out of found logs off the figures of the house as it
/// was found, which had none: of those that are to be mended, and of all where `decisions` is left out.
void take_out_mends(FabricFigures &figures, const Record &record, const Layout &now, const Bodies &bodies,
                    std::optional<std::size_t> decisions = {});

/// Takes found logs out of those that stay by their decisions where their old wood does not stand in `now`:
/// there new wood is shown in their place, or nothing. `found`: what the figures are summed over. To be done
/// before the mends are taken out.
void take_out_what_is_gone(FabricFigures &figures, const Record &record, const Layout &found,
                           const Bodies &found_bodies, const Layout &now,
                           std::optional<std::size_t> decisions = {});

/// mm2: the area of all its surfaces that look more outward than up, down or along, each as it is seen square
/// on; of a round log that is its length times its diameter. Of a partition the side that its outside is.
double outside_face(const Body &body);
/// The same without the beds that new wood lies on or is lapped with, which nobody sees.
double outside_face(const Layout &layout, const Bodies &bodies, Index<Piece> piece);

/// What a decision cannot be: told at the statement that `path` names.
struct DecisionProblem {
    std::string path; ///< "found[3].decision[1].wall"
    Said what;
    Weight weight = Weight::warning; ///< a note: asked, for it may be meant so
};

/// May a log by that decision stay in the house?
inline bool stays(Decision what) {
    return what != Decision::replace && what != Decision::leave_out;
}

/// Against the shell as it shall stand: places that it does not have, two logs that come to one place, logs
/// that are too short or too thin for the place that they go to; logs that are to go or to be turned, and are
/// shown as they were found; logs that are to be kept or turned and are shown mended. Only last decisions
/// count. `found`: the house as it was found, where that is another one: by it logs that are to stay and in
/// whose place new wood is shown are told.
std::vector<DecisionProblem> decision_problems(const Record &record, const Layout &layout,
                                               const Layout *found = nullptr);

/// Zones that were found soft, rotten or missing in logs that stay, and that no mend of `shell`, which is
/// laid out as `now`, takes out: asked, and no verdict. A zone without a depth is held along the log alone.
/// `found`: the house as it was found, or `now`.
std::vector<DecisionProblem> harm_that_stays(const Record &record, const Shell &shell, const Layout &now,
                                             const Layout &found);

/// Logs that are to be kept as they are and have another shape in `now`, by what that states of others: told
/// once, with their tags. Mends of their own do not count.
std::optional<DecisionProblem> kept_and_cut_anew(const Record &record, const Layout &now,
                                                 const Layout &found);

/// Places that were noted further along a log than `found`, the house as it was found, has it. Of logs whose
/// own length was taped the record itself tells.
std::vector<DecisionProblem> places_past_log(const Record &record, const Layout &found);

/// A state that stands on the measured one and states no log and no mend otherwise is held to be the house as
/// it once stood: decisions about its logs are not about it. That is told, once, where logs are to become
/// anything else than they are; nothing where decisions are to be held against the state. `measured`: the
/// shell under the record, as it is stated.
std::optional<DecisionProblem> stood_once(const Record &record, const std::optional<Shell> &measured,
                                          const Shell &state);

} // namespace roundlay
