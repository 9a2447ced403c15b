#include "exporters/lists/bore_table.h"
#include "exporters/lists/down_table.h"
#include "exporters/lists/found_words.h"
#include "exporters/lists/shell_tables.h"
#include "exporters/lists/state_column.h"
#include "exporters/lists/tables.h"
#include "exporters/registry/exporters.h"
#include "exporters/registry/list_sheets.h"
#include "exporters/registry/paper.h"
#include "exporters/registry/shared_order.h"

#include <iterator>
#include <set>

namespace roundlay {

namespace {

/// Puts each list into the folder as CSV, and keeps it as a sheet.
class Lists {
  public:
    Lists(const ExportJob &job, OutputFolder &folder) : job_(job), folder_(folder), voice_(voice_of(job)) {}

    /// `name`: of the file; `sheet`: what the sheet is called, in the person's language.
    std::optional<ExportFailure> add(const std::string &name, const Said &sheet, Table list,
                                     const char *what) {
        const Table whole = with_state(std::move(list), job_.shell); // where its document has several
        sheets_.push_back(summed_sheet(whole, voice_.words(sheet), voice_));
        return add_file(folder_, name, to_csv(whole), what);
    }

    std::optional<ExportFailure> add_workbook() {
        return add_file(folder_, "lists.xlsx", xlsx_of(sheets_, called(job_.shell), sheets::book_time()),
                        Voice().say("all lists, a sheet each, with filters and sums by formulas"));
    }

  private:
    const ExportJob &job_;
    OutputFolder &folder_;
    Voice voice_;
    std::vector<SheetTable> sheets_;
};

std::optional<ExportFailure> add_cut_lists(const CutList &list, Lists &lists, Progress &progress) {
    const struct {
        const char *name;
        Said sheet;
        Table (*table)(const CutList &);
        const char *what;
    } files[] = {
        {"cut-list.csv", said("cut list"), model_table,
         "cut list, one row for each distinct piece; weights are estimates, see totals.csv"},
        {"pieces.csv", said("pieces"), piece_table,
         "cut list, one row for each tag; weights are estimates, see totals.csv"},
        {"pegs.csv", said("pegs"), peg_table, "pegs by size"},
        {"order-list.csv", said("sticks to order"), order_table, "sticks to order, by section and length"},
        {"totals.csv", said("totals"), total_table, "counts, volumes, weights and what they rest on"},
    };
    int done = 0;
    for (const auto &file : files) {
        progress.at("cut lists", done++, static_cast<int>(std::size(files)));
        if (auto failure = lists.add(file.name, file.sheet, file.table(list), file.what)) return failure;
    }
    return {};
}

std::optional<ExportFailure> add_orders_of_work(const ExportJob &job, const CutList &list, Lists &lists) {
    const Site site = site_of(job, *job.record);
    if (may_come_down(job)) {
        const auto steps = taking_down(job.layout, job.bodies);
        if (auto failure =
                lists.add("taking-down.csv", said("taking down"), down_table(list, job.layout, site, steps),
                          "taking down: what is free to rise, one after the other; geometry alone"))
            return failure;
    }
    if (auto failure = lists.add("raising.csv", said("raising"), raising_table(list, job.layout, site),
                                 "raising: one piece after the other, to be ticked off; geometry alone"))
        return failure;
    return {};
}

/// Each only where the shell has such things.
std::optional<ExportFailure> add_tables_of_parts(const ExportJob &job, Lists &lists) {
    const Language language = job.options.language;
    if (!job.shell.openings.empty())
        if (auto failure =
                lists.add("openings.csv", said("openings"), opening_table(job.shell, job.layout, language),
                          "openings: spaces over their frames, and the logs over and under them"))
            return failure;
    if (!job.shell.bores.empty())
        if (auto failure = lists.add("bores.csv", said("bores"), bore_table(job.shell, job.layout, language),
                                     "rods, bolts, wiring and holes as found, log by log"))
            return failure;
    if (!job.layout.timbers.empty())
        if (auto failure =
                lists.add("floors.csv", said("floors"), floor_table(job.shell, job.layout, language),
                          "joists, beams and trimmers, with a screen of their spans; no approval"))
            return failure;
    return {};
}

/// Sums, orders of work and equal pieces are of the whole shell; that list alone goes by the tag.
std::optional<ExportFailure> add_chosen(const ExportJob &job, CutList list, Lists &lists) {
    std::set<std::string> tags;
    for (const Index<Piece> piece : chosen_of(job).pieces)
        tags.insert(job.layout.pieces[piece].tag);
    std::erase_if(list.pieces, [&](const PieceRow &row) { return !tags.contains(row.tag); });
    return lists.add("pieces.csv", said("pieces"), piece_table(list),
                     "cut list of chosen pieces, one row for each tag; weights are estimates");
}

} // namespace

std::optional<ExportFailure> export_list(const ExportJob &job, OutputFolder &folder, Progress &progress) {
    CutList list = collect_cut_list(job.shell, job.layout, volumes_of(job.bodies), job.options.language);
    tell_found(list, *job.record, job.layout);
    Lists lists(job, folder);
    if (!job.options.pieces.is_all()) return add_chosen(job, std::move(list), lists);
    if (auto failure = add_cut_lists(list, lists, progress)) return failure;
    if (auto failure = add_orders_of_work(job, list, lists)) return failure;
    if (auto failure = add_tables_of_parts(job, lists)) return failure;
    return lists.add_workbook();
}

} // namespace roundlay
