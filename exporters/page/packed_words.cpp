#include "exporters/page/parts.h"
#include "exporters/page/phrases.h"

#include <nlohmann/json.hpp>

#include <array>
#include <cmath>
#include <cstdio>

namespace roundlay {

namespace {

using Json = nlohmann::ordered_json;

Json place(const Frame &frame) {
    constexpr double hundredths = 100, millionths = 1e6;
    Json numbers = Json::array();
    const Vec3 &o = frame.origin;
    for (const double mm : {o.x, o.y, o.z})
        numbers.push_back(std::round(mm * hundredths) / hundredths + 0.0);
    for (const Vec3 &axis : {frame.x, frame.y, frame.z})
        for (const double part : {axis.x, axis.y, axis.z})
            numbers.push_back(std::round(part * millionths) / millionths + 0.0);
    return numbers;
}

Json line_json(const YardLine &line, Phrases &phrases) {
    if (line.tags.empty()) return Json::array({phrases(line.name), phrases(line.words)});
    return Json::array({phrases(line.name), line.tags});
}

Json log_json(const YardLog &log, Phrases &phrases) {
    Json lines = Json::array();
    for (const YardLine &line : log.lines)
        lines.push_back(line_json(line, phrases));
    return {{"tag", log.tag},   {"code", log.code},       {"model", log.model.number()},
            {"part", log.part}, {"at", place(log.frame)}, {"lines", lines}};
}

Json step_json(const YardStep &step, Phrases &phrases) {
    Json logs = Json::array();
    for (const Index<YardLog> log : step.logs)
        logs.push_back(log.number());
    return Json::array({logs, phrases(step.lift), phrases(step.then)});
}

std::string colour_text(Colour colour) {
    std::array<char, 8> room{};
    std::snprintf(room.data(), room.size(), "#%02x%02x%02x", colour.r, colour.g, colour.b);
    return room.data();
}

/// Whatever a name holds, nothing in a page of HTML ends what it stands in.
std::string without_signs(std::string json) {
    std::string out;
    for (const char sign : json)
        if (sign == '<')
            out += "\\u003c";
        else
            out += sign;
    return out;
}

} // namespace

std::string packed_words(const Yard &yard) {
    Phrases phrases;
    Json logs = Json::array(), steps = Json::array(), parts = Json::array(), labels = Json::object();
    for (const YardLog &log : yard.logs)
        logs.push_back(log_json(log, phrases));
    for (const YardStep &step : yard.steps)
        steps.push_back(step_json(step, phrases));
    for (const YardPart &part : yard.parts)
        parts.push_back(Json::array({part.name, colour_text(part.colour)}));
    for (const YardLabel &label : yard.labels)
        labels[label.key] = label.words;
    const Json all{{"name", yard.name}, {"caution", yard.caution}, {"up", yard.up}, {"say", labels},
                   {"parts", parts},    {"steps", steps},          {"logs", logs},  {"words", phrases.all()}};
    return without_signs(all.dump(-1, ' ', false, Json::error_handler_t::replace));
}

} // namespace roundlay
