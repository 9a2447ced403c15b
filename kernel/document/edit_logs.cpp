#include "kernel/document/edit_logs.h"

#include "kernel/document/statements.h"
#include "kernel/document/toml_text.h"

#include <map>
#include <tuple>

namespace roundlay {

namespace {

using Place = std::tuple<std::string, int, std::optional<int>>; // wall, round, piece

Place place_of(const OwnLog &log) {
    return {log.wall, log.round, log.piece};
}

std::map<Place, std::size_t> stated_logs(const Document &document) {
    std::map<Place, std::size_t> at;
    if (const auto shell = document.read().shell)
        for (std::size_t i = 0; i < shell->own_logs.size(); ++i)
            at[place_of(shell->own_logs[i])] = i; // of two, the later one counts
    return at;
}

/// All that is measured: neither where the log lies nor how its ends are cut.
Document::Keys keys_of(OwnLog log, UnitSystem units) {
    const OwnLog fresh;
    log.notch = {};
    Document::Keys keys;
    for (StatedKey &each : stated_keys(format::table_of("log"), &log, &fresh, units))
        if (each.key != "wall" && each.key != "round" && each.key != "piece")
            keys.emplace_back(std::move(each.key), std::move(each.text));
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
