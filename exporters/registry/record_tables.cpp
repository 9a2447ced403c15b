#include "exporters/registry/record_tables.h"

#include "exporters/lists/fabric_table.h"
#include "exporters/lists/found_table.h"
#include "exporters/lists/state_column.h"
#include "kernel/fabric/standing.h"

namespace roundlay {

bool counts_by_state(const ExportJob &job) {
    return job.found && tells_of_old_wood(job.layout);
}

const Shell &counted_shell(const ExportJob &job) {
    return job.found && !counts_by_state(job) ? job.found->shell : job.shell;
}

FabricFigures fabric_by(const ExportJob &job, const Record &record, std::optional<std::size_t> decisions) {
    FabricFigures all = fabric_figures(record, found_layout(job), found_bodies(job), decisions);
    if (!counts_by_state(job)) return all;
    take_out_what_is_gone(all, record, found_layout(job), found_bodies(job), job.layout, decisions);
    take_out_mends(all, record, job.layout, job.bodies, decisions);
    return all;
}

std::vector<FabricFigures> fabric_of(const ExportJob &job) {
    const auto figures = [&](std::optional<std::size_t> decisions) {
        return fabric_by(job, *job.record, decisions);
    };
    std::vector<FabricFigures> all{figures({})};
    for (std::size_t i = 1; i < all.front().most; ++i)
        all.push_back(figures(i));
    return all;
}

std::vector<RecordTable> record_tables(const ExportJob &job) {
    const Voice voice = voice_of(job);
    const std::vector<FabricFigures> fabric = fabric_of(job);
    const std::vector<FabricFigures> earlier(fabric.begin() + 1, fabric.end());
    std::vector<RecordTable> tables{
        {"found-logs", said("each log that was found: condition, cause, urgency, decision"),
         found_table(*job.record, voice)},
        {"wood-zones", said("zones of the wood as they were found"), zone_table(*job.record, voice)},
        {"decisions", said("what becomes of each log, by whom, when and why"),
         decision_table(*job.record, found_layout(job), voice)},
        {"fabric", said("how much of the old wood stays: sums, no verdict"),
         fabric_table(fabric.front(), earlier, voice)}};
    for (RecordTable &each : tables)
        each.table = with_state(std::move(each.table), counted_shell(job));
    return tables;
}

std::string cell_text(const Entry &entry) {
    if (const auto *number = std::get_if<Number>(&entry)) return number->digits;
    if (const auto *text = std::get_if<std::string>(&entry)) return *text;
    std::string all;
    for (const std::string &one : std::get<std::vector<std::string>>(entry))
        all += (all.empty() ? "" : "; ") + one;
    return all;
}

} // namespace roundlay
