#include "kernel/document/edit_logs.h"

#include "kernel/document/toml_text.h"
#include "kernel/document/words.h"

#include <map>
#include <tuple>

namespace roundlay {

namespace {

using Place = std::tuple<std::string, int, std::optional<int>>; // wall, round, piece

Place place_of(const OwnLog &log) { return {log.wall, log.round, log.piece}; }

std::map<Place, std::size_t> stated_logs(const Document &document) {
    std::map<Place, std::size_t> at;
    if (const auto shell = document.read().shell)
        for (std::size_t i = 0; i < shell->own_logs.size(); ++i)
            at[place_of(shell->own_logs[i])] = i; // of two, the later one counts
    return at;
}

Document::Keys keys_of(const OwnLog &log, UnitSystem units) {
    Document::Keys keys;
    const auto length = [&](const char *key, const std::optional<Length> &value) {
        if (value) keys.emplace_back(key, toml_text(*value, units));
    };
    if (!log.mark.empty()) keys.emplace_back("mark", toml_text(log.mark));
    length("butt_height", log.sizes.butt_height);
    length("tip_height", log.sizes.tip_height);
    length("butt_width", log.sizes.butt_width);
    length("tip_width", log.sizes.tip_width);
    length("diameter", log.sizes.diameter);
    if (log.sizes.butt) keys.emplace_back("butt", toml_text(word(*log.sizes.butt)));
    if (log.sizes.finish) keys.emplace_back("finish", toml_text(word(*log.sizes.finish)));
    length("bow", log.bow);
    if (log.fabric) keys.emplace_back("fabric", toml_text(word(*log.fabric)));
    if (!log.note.empty()) keys.emplace_back("note", toml_text(log.note));
    return keys;
}

Document::Edited stated_anew(Document document, std::size_t index, const Document::Keys &keys) {
    for (const auto &[key, value] : keys) {
        auto edited = document.with("log[" + std::to_string(index) + "]." + key, value);
        if (std::holds_alternative<Problem>(edited)) return edited;
        document = std::get<Document>(std::move(edited));
    }
    return document;
}

} // namespace

Document::Edited with_logs(const Document &document, const std::vector<OwnLog> &logs, UnitSystem units) {
    const auto stated = stated_logs(document);
    Document result = document;
    for (const OwnLog &log : logs) {
        Document::Keys keys = keys_of(log, units);
        const auto at = stated.find(place_of(log));
        if (at == stated.end()) {
            if (log.piece) keys.insert(keys.begin(), {"piece", std::to_string(*log.piece)});
            keys.insert(keys.begin(), {{"wall", toml_text(log.wall)}, {"round", std::to_string(log.round)}});
        }
        auto edited =
            at == stated.end() ? result.with_entry("log", keys) : stated_anew(result, at->second, keys);
        if (std::holds_alternative<Problem>(edited)) return edited;
        result = std::get<Document>(std::move(edited));
    }
    return result;
}

} // namespace roundlay
