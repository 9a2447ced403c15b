#include "modeler/command_line/format_schema.h"

#include "kernel/document/limits.h"
#include "kernel/document/noted_text.h"
#include "kernel/document/reference.h"
#include "kernel/measure/load.h"

#include <nlohmann/json.hpp>

namespace roundlay {

using namespace format;

namespace {

using Json = nlohmann::ordered_json;

/// `[Ll][Ee][Vv][Ee][Ll]`: a word in capitals or not, - and _ for its blanks.
std::string pattern_of(const std::string &word) {
    std::string pattern;
    for (const char c : word)
        if (c == ' ')
            pattern += "[ _-]";
        else if (c >= 'a' && c <= 'z')
            pattern += std::string("[") + static_cast<char>(c - 'a' + 'A') + c + "]";
        else
            pattern += c;
    return pattern;
}

struct TypeOf {
    Json operator()(const YesNo &) const { return {{"type", "boolean"}}; }
    Json operator()(const Count &kind) const {
        return {{"type", "integer"}, {"minimum", kind.low}, {"maximum", kind.high}};
    }
    Json operator()(const Number &kind) const {
        return {{"type", "number"},
                {kind.low_is_in ? "minimum" : "exclusiveMinimum", kind.low},
                {"maximum", kind.high}};
    }
    Json operator()(const Load &) const {
        return {{"anyOf",
                 {Json{{"type", "string"}, {"minLength", 1}},
                  Json{{"type", "number"}, {"exclusiveMinimum", 0}, {"maximum", most_bare_load}}}}};
    }
    Json operator()(const Size &) const {
        return {{"anyOf", {Json{{"type", "string"}, {"minLength", 1}}, Json{{"const", 0}}}}};
    }
    Json operator()(const Incline &) const { return {{"type", {"string", "number"}}}; }
    Json operator()(const Direction &) const { return {{"type", "string"}, {"minLength", 1}}; }
    Json operator()(const Text &) const {
        return {{"type", "string"}, {"maxLength", limits::name_characters}};
    }
    Json operator()(const TagName &) const {
        return {{"type", "string"},
                {"pattern", "^[A-Za-z0-9]{1," + std::to_string(limits::wall_letters) + "}$"}};
    }
    Json operator()(const WallName &) const { return {{"type", "string"}}; }
    Json operator()(const WallPair &) const {
        return {{"type", "array"}, {"items", {{"type", "string"}}}, {"minItems", 2}, {"maxItems", 2}};
    }
    Json operator()(const Texts &) const {
        return {{"type", "array"},
                {"items", {{"type", "string"}, {"maxLength", limits::name_characters}}},
                {"maxItems", limits::texts}};
    }
    Json operator()(const SomeOf &kind) const {
        return {{"type", "array"}, {"items", (*this)(OneOf{kind.words})}, {"maxItems", limits::texts}};
    }
    Json operator()(const Noted &) const {
        const Json text = {{"type", "string"}, {"maxLength", limits::name_characters}};
        Json parts = {{"note", text}, {"is", (*this)(OneOf{certainty_words()})}, {"by", text}, {"on", text}};
        return {{"anyOf",
                 {text, Json{{"type", "object"},
                             {"additionalProperties", false},
                             {"properties", std::move(parts)},
                             {"required", {"note"}}}}}};
    }
    /// The words first, which editors offer; then what is read as one of them.
    Json operator()(const OneOf &kind) const {
        std::string any;
        for (const std::string &word : kind.words)
            any += (any.empty() ? "" : "|") + pattern_of(word);
        return {{"anyOf",
                 {Json{{"enum", kind.words}}, Json{{"type", "string"}, {"pattern", "^(" + any + ")$"}}}}};
    }
};

void add_row(Json &properties, const Section &section, const ReferenceRow &row) {
    for (const Item &item : section.table->items) {
        const auto *key = std::get_if<Key>(&item);
        if (!key || std::find(row.keys.begin(), row.keys.end(), key->name) == row.keys.end()) continue;
        Json property = {{"description", row.what + " (takes " + row.takes + ")" +
                                             (row.needed ? "" : "; left out: " + row.left_out)}};
        property.update(std::visit(TypeOf(), key->kind));
        properties[key->name] = std::move(property);
    }
}

void add_keys(Json &properties, const Section &section);

/// The keys of another table stand in this one too.
void add_shared(Json &properties, const std::string &header_of) {
    for (const Section &section : sections())
        if (header(section) == header_of) add_keys(properties, section);
}

void add_keys(Json &properties, const Section &section) {
    for (const ReferenceRow &row : reference_rows(section))
        if (row.shared.empty())
            add_row(properties, section, row);
        else
            add_shared(properties, row.shared);
}

Json schema_of(const Section &section) {
    Json properties = Json::object(), required = Json::array();
    add_keys(properties, section);
    for (const Item &item : section.table->items)
        if (const auto *key = std::get_if<Key>(&item); key && key->missing) required.push_back(key->name);
    for (const Section &inner : section.table->lists)
        properties[inner.table->key()] = schema_of(inner);
    Json table = {{"type", "object"}, {"additionalProperties", false}, {"properties", std::move(properties)}};
    if (!required.empty()) table["required"] = std::move(required);
    if (section.is_list())
        table = {{"type", "array"}, {"maxItems", section.most}, {"items", std::move(table)}};
    table["description"] = section.table->summary;
    return table;
}

/// As it stands in a state: nothing is required, and words of change stand beside the keys.
Json changed(Json table, const Section &section) {
    Json &owner = section.is_list() ? table["items"] : table;
    owner.erase("required");
    for (const Section &inner : section.table->lists)
        owner["properties"][inner.table->key()] = changed(owner["properties"][inner.table->key()], inner);
    owner["properties"]["gone"] = {{"description", "it is not there any more"}, {"type", "boolean"}};
    owner["properties"]["left_out"] = {{"description", "keys that are not stated any more"},
                                       {"type", "array"},
                                       {"items", {{"type", "string"}}}};
    if (!section.is_list()) return table;
    owner["properties"]["new"] = {{"description", "it comes with this state"}, {"type", "boolean"}};
    owner["properties"]["before"] = {{"description", "the name of the entry that it stands before"},
                                     {"type", "string"}};
    return table;
}

Json schema_of_states() {
    Json states = schema_of(state_section());
    for (const Section &section : sections())
        if (!section.of_record)
            states["items"]["properties"][section.table->name] = changed(schema_of(section), section);
    return states;
}

} // namespace

std::string format_schema() {
    Json properties = {{"roundlay", {{"description", "version of the format"}, {"const", limits::version}}}};
    Json required = {"roundlay"};
    for (const Section &section : sections()) {
        properties[section.table->name] = schema_of(section);
        if (section.missing) required.push_back(section.table->name);
    }
    properties["state"] = schema_of_states();
    return Json{{"$schema", "http://json-schema.org/draft-07/schema#"},
                {"title", "A roundlay document"},
                {"type", "object"},
                {"additionalProperties", false},
                {"required", std::move(required)},
                {"properties", std::move(properties)}}
               .dump(2) +
           "\n";
}

} // namespace roundlay
