#include "kernel/document/describe_found_parts.h"

#include "kernel/document/limits.h"
#include "kernel/document/table_reading.h"

namespace roundlay::format {

namespace {

constexpr char level_what[] = "how high its upper edge lies over the plane; a sign says up or down";
constexpr char plane_what[] = "the `[[record.level]]` that its level is read from";
constexpr char note_what[] = "whatever should be known of it";
constexpr char at_what[] = "where, running from the log's zero";
constexpr char face_what[] = "on which face";
constexpr char by_what[] = "who says so";
constexpr char on_what[] = "when, in any words";
constexpr char as_log[] = "as its log says";

const TableOf<FoundEnd> &end_table() {
    static constexpr char tail_what[] = "how high the tail is at its shoulder and at its end, on both faces";
    static const TableOf<FoundEnd> table{
        {.name = "found.end",
         .summary = "An end of the log, named by its corner: left and right swap between inside and outside.",
         .items = items<FoundEnd>(
             {text<&FoundEnd::corner>("corner", "it lies in; at an opening whatever tells the two ends apart",
                                      {.missing = "the corner it lies in: corner = \"NE\""}),
              noted<&FoundEnd::height>("height", "of the log at the shoulder"),
              noted<&FoundEnd::width>("width", "of the log at the shoulder"),
              noted<&FoundEnd::shoulder_outside>("shoulder_outside", tail_what),
              noted<&FoundEnd::shoulder_inside>("shoulder_inside", tail_what),
              noted<&FoundEnd::end_outside>("end_outside", tail_what),
              noted<&FoundEnd::end_inside>("end_inside", tail_what),
              noted<&FoundEnd::overhang>("overhang", "past the crossing wall"),
              noted<&FoundEnd::gap>("gap", "between the tail and what it lies on"),
              noted<&FoundEnd::level>("level", level_what), text<&FoundEnd::plane>("plane", plane_what),
              text<&FoundEnd::joint>("joint", "what kind it is, and how water leaves it"),
              text<&FoundEnd::note>("note", note_what)})}};
    return table;
}

const TableOf<FoundStation> &station_table() {
    static const TableOf<FoundStation> table{
        {.name = "found.station",
         .summary = "A place along the log where it was measured: mid-length, both sides of openings.",
         .items = items<FoundStation>(
             {noted<&FoundStation::at>("at", at_what),
              noted<&FoundStation::height>("height", "of the log there"),
              noted<&FoundStation::width>("width", "of the log there"),
              noted<&FoundStation::gap_below>("gap_below", "to the log below and above it"),
              noted<&FoundStation::gap_above>("gap_above", "to the log below and above it"),
              noted<&FoundStation::level>("level", level_what),
              text<&FoundStation::plane>("plane", plane_what),
              text<&FoundStation::note>("note", note_what)})}};
    return table;
}

const TableOf<ConditionZone> &zone_table() {
    static const TableOf<ConditionZone> table{
        {.name = "found.zone",
         .summary = "A stretch of the log and what its wood is like there.",
         .items = items<ConditionZone>(
             {one_of<&ConditionZone::what>("what", "what its wood is like",
                                           {.missing = "what its wood is like: what = \"rotten\""}),
              noted<&ConditionZone::from>("from", "where it begins and ends, running from the log's zero"),
              noted<&ConditionZone::to>("to", "where it begins and ends, running from the log's zero"),
              some_of<&ConditionZone::faces>("faces", "on which faces"),
              noted<&ConditionZone::depth>("depth", "how deep from the face"),
              text<&ConditionZone::note>("note", note_what)})}};
    return table;
}

const TableOf<WoodTest> &test_table() {
    static const TableOf<WoodTest> table{
        {.name = "found.test",
         .summary = "What was tried on the wood and what it showed; never a verdict.",
         .items = items<WoodTest>({text<&WoodTest::tool>("tool", "probe, pick, hammer, drill or another"),
                                   noted<&WoodTest::at>("at", at_what),
                                   one_of<&WoodTest::face>("face", face_what, {.left_out = "not said"}),
                                   noted<&WoodTest::depth>("depth", "how deep from the face"),
                                   text<&WoodTest::showed>("showed", "what it showed"),
                                   text<&WoodTest::by>("by", by_what, {.left_out = as_log}),
                                   text<&WoodTest::on>("on", on_what, {.left_out = as_log})})}};
    return table;
}

const TableOf<MoistureReading> &moisture_table() {
    static const TableOf<MoistureReading> table{
        {.name = "found.moisture",
         .summary = "Moisture as measured. It is not decay, and says little without its depth and season.",
         .items = items<MoistureReading>(
             {number<&MoistureReading::percent>("percent",
                                                {0, true, limits::moisture, "a number from 0 to 300"},
                                                "of ovendry mass", {.missing = "the moisture: percent = 18"}),
              noted<&MoistureReading::at>("at", at_what),
              one_of<&MoistureReading::face>("face", face_what, {.left_out = "not said"}),
              noted<&MoistureReading::depth>("depth", "of the probe, from the face"),
              one_of<&MoistureReading::season>("season", "of the year", {.left_out = "not said"}),
              text<&MoistureReading::probe>("probe", "what kind it is"),
              text<&MoistureReading::by>("by", by_what, {.left_out = as_log}),
              text<&MoistureReading::on>("on", on_what, {.left_out = as_log})})}};
    return table;
}

const TableOf<FoundPeg> &peg_table() {
    static const TableOf<FoundPeg> table{
        {.name = "found.peg",
         .summary = "A peg, or the bore of one that is gone.",
         .items = items<FoundPeg>(
             {one_of<&FoundPeg::state>("state", "what became of it",
                                       {.missing = "what became of the peg: state = \"missing\""}),
              noted<&FoundPeg::at>("at", at_what), noted<&FoundPeg::diameter>("diameter", "of the peg"),
              noted<&FoundPeg::depth>("depth", "of its bore, from the top of the log"),
              text<&FoundPeg::note>("note", note_what)})}};
    return table;
}

const TableOf<LaterCut> &later_cut_table() {
    static const TableOf<LaterCut> table{
        {.name = "found.later_cut",
         .summary = "What was cut after the house was built: an end cut flush, a kerf, an overhang left "
                    "where a wall ran on.",
         .items = items<LaterCut>({text<&LaterCut::what>("what", "what was cut"),
                                   noted<&LaterCut::at>("at", at_what),
                                   text<&LaterCut::why>("why", "why one thinks so")})}};
    return table;
}

/// Only a log that is used elsewhere goes anywhere.
void check_where_to(TableReading &at, FoundDecision &decision) {
    if (decision.what != Decision::use_elsewhere) {
        for (const char *key : {"wall", "round", "piece"})
            warn_unused(at, key, "what = \"use elsewhere\"");
        return;
    }
    at.table.require("wall", "the wall that the log goes to: wall = \"A\"");
    at.table.require("round", "the round that the log goes to, the sill log being 1");
}

const TableOf<FoundDecision> &decision_table() {
    static const TableOf<FoundDecision> table{
        {.name = "found.decision",
         .summary =
             "What becomes of the log. Decisions are never taken out: another one is added, and the last "
             "one holds.",
         .items = items<FoundDecision>(
             {one_of<&FoundDecision::what>("what", "what becomes of it",
                                           {.missing = "what becomes of the log: what = \"keep\""}),
              text<&FoundDecision::by>("by", "who decided"), text<&FoundDecision::on>("on", on_what),
              text<&FoundDecision::why>("why", "in any words"),
              text<&FoundDecision::to, &FoundPlace::wall>(
                  "wall", "where it comes to lie; only for `\"use elsewhere\"`, and needed there",
                  {.left_out = "where it was found"}),
              count<&FoundDecision::to, &FoundPlace::round>(
                  "round", {1, limits::logs_high},
                  "where it comes to lie; only for `\"use elsewhere\"`, and needed there",
                  {.left_out = "where it was found"}),
              count<&FoundDecision::to, &FoundPlace::piece>(
                  "piece", {1, limits::pieces},
                  "which of the logs it becomes that openings part the round into, from the left",
                  {.left_out = "the whole round"})}),
         .check = checked<FoundDecision, check_where_to>}};
    return table;
}

} // namespace

std::vector<Section> lists_of_found() {
    return {list_in_lines<&FoundLog::ends>(end_table(), 2),
            list_in_lines<&FoundLog::stations>(station_table(), limits::found_parts),
            list_in_lines<&FoundLog::zones>(zone_table(), limits::found_parts),
            list_in_lines<&FoundLog::tests>(test_table(), limits::found_parts),
            list_in_lines<&FoundLog::moistures>(moisture_table(), limits::found_parts),
            list_in_lines<&FoundLog::pegs>(peg_table(), limits::found_parts),
            list_in_lines<&FoundLog::later_cuts>(later_cut_table(), limits::found_parts),
            list_in_lines<&FoundLog::decisions>(decision_table(), limits::found_parts)};
}

} // namespace roundlay::format
