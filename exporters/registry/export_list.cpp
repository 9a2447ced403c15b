#include "exporters/lists/bore_table.h"
#include "exporters/lists/down_table.h"
#include "exporters/lists/found_words.h"
#include "exporters/lists/shell_tables.h"
#include "exporters/lists/state_column.h"
#include "exporters/lists/tables.h"
#include "exporters/registry/exporters.h"

#include <iterator>

namespace roundlay {

namespace {

/// With the state that the job shows, where its document has several.
std::string csv(Table table, const ExportJob &job) {
    return to_csv(with_state(std::move(table), job.shell));
}

std::optional<ExportFailure> add_cut_lists(const ExportJob &job, const CutList &list, OutputFolder &folder,
                                           Progress &progress) {
    const struct {
        const char *name;
        Table (*table)(const CutList &);
        const char *what;
    } files[] = {
        {"cut-list.csv", model_table,
         "cut list, one row for each distinct piece; weights are estimates, see totals.csv"},
        {"pieces.csv", piece_table, "cut list, one row for each tag; weights are estimates, see totals.csv"},
        {"pegs.csv", peg_table, "pegs by size"},
        {"order-list.csv", order_table, "sticks to order, by section and length"},
        {"totals.csv", total_table, "counts, volumes, weights and what they rest on"},
    };
    int done = 0;
    for (const auto &file : files) {
        progress.at("cut lists", done++, static_cast<int>(std::size(files)));
        if (auto failure = add_file(folder, file.name, csv(file.table(list), job), file.what)) return failure;
    }
    return {};
}

std::optional<ExportFailure> add_orders_of_work(const ExportJob &job, const CutList &list,
                                                OutputFolder &folder) {
    const auto steps = taking_down(job.layout, job.bodies);
    const Site site = site_of(*job.record, job.shell, job.layout, job.bodies);
    if (auto failure =
            add_file(folder, "taking-down.csv", csv(down_table(list, job.layout, site, steps), job),
                     "taking down: what is free to rise, one after the other; geometry alone"))
        return failure;
    if (auto failure = add_file(folder, "raising.csv", csv(raising_table(list, job.layout, site), job),
                                "raising: one piece after the other, to be ticked off; geometry alone"))
        return failure;
    return {};
}

/// Each only where the shell has such things.
std::optional<ExportFailure> add_tables_of_parts(const ExportJob &job, OutputFolder &folder) {
    const Language language = job.options.language;
    if (!job.shell.openings.empty())
        if (auto failure =
                add_file(folder, "openings.csv", csv(opening_table(job.shell, job.layout, language), job),
                         "openings: spaces over their frames, and the logs over and under them"))
            return failure;
    if (!job.shell.bores.empty())
        if (auto failure =
                add_file(folder, "bores.csv", csv(bore_table(job.shell, job.layout, language), job),
                         "rods, bolts, wiring and holes as found, log by log"))
            return failure;
    if (!job.layout.timbers.empty())
        if (auto failure =
                add_file(folder, "floors.csv", csv(floor_table(job.shell, job.layout, language), job),
                         "joists, beams and trimmers, with a screen of their spans; no approval"))
            return failure;
    return {};
}

} // namespace

std::optional<ExportFailure> export_list(const ExportJob &job, OutputFolder &folder, Progress &progress) {
    CutList list = collect_cut_list(job.shell, job.layout, volumes_of(job.bodies), job.options.language);
    tell_found(list, *job.record, job.layout);
    if (auto failure = add_cut_lists(job, list, folder, progress)) return failure;
    if (auto failure = add_orders_of_work(job, list, folder)) return failure;
    return add_tables_of_parts(job, folder);
}

} // namespace roundlay
