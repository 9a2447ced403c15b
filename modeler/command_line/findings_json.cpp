#include "exporters/words/words.h"
#include "kernel/layout/courses/standing.h"
#include "kernel/measure/plain_numbers.h"
#include "kernel/shell/weight_words.h"
#include "modeler/command_line/findings.h"

#include <nlohmann/json.hpp>

namespace roundlay {

namespace {

using Json = nlohmann::ordered_json;

constexpr int places = 6; ///< of millimetres and kilopascals

void add_place(Json &json, const Place &place) {
    json["line"] = place.line;
    json["column"] = place.column;
}

Json problem_json(const Problem &problem) {
    Json json = {
        {"weight", name_of(problem.weight)}, {"message", problem.message}, {"expected", problem.expected}};
    add_place(json, problem.place);
    return json;
}

Json said_json(const Said &said);

/// One amount by its kind, as a machine takes it.
struct AmountJson {
    Json operator()(const LengthAmount &length) const {
        return {{"length_mm", to_places(length.mm, places)}};
    }
    Json operator()(const LoadAmount &load) const { return {{"load_kpa", to_places(load.kpa, places)}}; }
    Json operator()(long long count) const { return {{"count", count}}; }
    Json operator()(const std::string &name) const { return {{"name", name}}; }
    Json operator()(const std::vector<Said> &phrase) const { return said_json(phrase.front()); }
};

/// A text with holes, and what stands in %1, %2 and so on.
Json said_json(const Said &said) {
    Json amounts = Json::array();
    for (const Amount &amount : said.amounts)
        amounts.push_back(std::visit(AmountJson(), amount.value()));
    return {{"text", said.text}, {"amounts", amounts}};
}

Json finding_json(const Input &input, const Finding &finding, const Speech &speech) {
    Json json = {{"weight", name_of(finding.weight)},
                 {"code", finding.code},
                 {"place", words_of(finding.about, speech)},
                 {"message", message_of(finding, speech)},
                 {"what", said_json(finding.what)},
                 {"advice", finding.advice ? said_json(*finding.advice) : Json()},
                 {"subject", finding.subject}};
    add_place(json, input.read.places.locate(finding.subject).value_or(Place{}));
    return json;
}

/// `height_mm` is that of the rounds; what stands is beside it.
Json shell_json(const ExportJob &job) {
    const Layout &layout = job.layout;
    const WallStanding stands = standing_in_all(layout);
    return {{"name", job.shell.name},
            {"state", job.shell.state.empty() ? Json() : Json(job.shell.state)},
            {"walls", layout.walls.size()},
            {"rounds", layout.rounds},
            {"pieces", layout.pieces.size()},
            {"distinct_pieces", layout.models.size()},
            {"pegs", layout.pegs.size()},
            {"height_mm", to_places(layout.height, places)},
            {"stands_lowest_mm", to_places(stands.lowest, places)},
            {"stands_highest_mm", to_places(stands.highest, places)},
            {"most_logs_in_a_wall", stands.logs}};
}

/// All that the document has; none where it has but the one shell.
Json states_json(const std::vector<HouseState> &states) {
    Json all = Json::array();
    for (const HouseState &state : states)
        all.push_back({{"name", state.name},
                       {"on", &state == &states.front() ? Json()
                              : state.on.empty()        ? Json(states.front().name)
                                                        : Json(state.on)},
                       {"readable", state.readable}});
    return all;
}

Json all_json(const Input &input, const ExportJob *job) {
    Json problems = Json::array(), findings = Json::array();
    for (const Problem &problem : input.read.problems)
        problems.push_back(problem_json(problem));
    if (job)
        for (const Finding &finding : job->findings)
            findings.push_back(finding_json(input, finding, voice_of(*job).speech()));
    const Counts counts = counts_of(input, job);
    const bool built = job && !job->layout.pieces.empty();
    return {{"document", input.file},
            {"readable", job != nullptr},
            {"states", states_json(input.read.states)},
            {"shell", built ? shell_json(*job) : Json()},
            {"problems", problems},
            {"findings", findings},
            {"errors", counts.errors},
            {"warnings", counts.warnings},
            {"notes", counts.notes}};
}

std::string text_of(const Json &all) {
    constexpr int indent = 2;
    return with_short_numbers(all.dump(indent, ' ', false, Json::error_handler_t::replace)) + "\n";
}

} // namespace

std::string findings_json(const Input &input, const ExportJob *job) {
    return text_of(all_json(input, job));
}

std::string written_json(const Input &made, const ExportJob &job) {
    Json all = all_json(made, &job);
    all["text"] = made.bytes;
    return text_of(all);
}

} // namespace roundlay
