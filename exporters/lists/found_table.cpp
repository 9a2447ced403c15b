#include "exporters/lists/found_table.h"

#include "exporters/lists/list_cells.h"
#include "kernel/record/found_words.h"

namespace roundlay {

namespace {

std::vector<std::string> faces_of(const ConditionZone &zone, const Voice &voice) {
    std::vector<std::string> all;
    for (const FoundFace face : zone.faces)
        all.push_back(voice.words(said_of(face)));
    return all;
}

Entry counted(std::optional<int> count) {
    return count ? Entry(number(*count, 0)) : Entry(std::string());
}

Entry in_mm_of(const NotedLength &noted) {
    return noted.value ? Entry(number(noted.value->mm(), mm_decimals)) : Entry(std::string());
}

} // namespace

std::string decision_word(std::optional<Decision> what, const Voice &voice) {
    return what ? voice.words(said_of(*what)) : voice.say("not decided");
}

Table found_table(const Record &record, const Voice &voice) {
    Table table{{{"tag", voice.say("tag")},
                 {"wall", voice.say("wall")},
                 {"round", voice.say("round")},
                 {"piece", ""},
                 {"timber", ""},
                 {"condition", voice.say("condition")},
                 {"cause", voice.say("cause")},
                 {"urgency", voice.say("urgency")},
                 {"decision", voice.say("decision")},
                 {"why", voice.say("why")},
                 {"by", voice.say("by")},
                 {"on", voice.say("on")},
                 {"photographs", ""},
                 {"note", ""}},
                {}};
    for (const FoundLog &log : record.logs) {
        const FoundDecision last = log.decisions.empty() ? FoundDecision() : log.decisions.back();
        const auto what = log.decisions.empty() ? std::nullopt : std::optional(last.what);
        table.rows.push_back({log.tag, log.place.wall, counted(log.place.round), counted(log.place.piece),
                              log.place.timber, log.condition, log.cause, log.urgency,
                              decision_word(what, voice), last.why, last.by, last.on, log.photographs,
                              log.note});
    }
    return table;
}

Table zone_table(const Record &record, const Voice &voice) {
    Table table{{{"tag", voice.say("tag")},
                 {"wood", voice.say("wood")},
                 {"from", voice.say("from")},
                 {"to", voice.say("to")},
                 {"measured_from", voice.say("measured from")},
                 {"from_mm", ""},
                 {"to_mm", ""},
                 {"faces", voice.say("faces")},
                 {"depth", voice.say("depth")},
                 {"depth_mm", ""},
                 {"note", voice.say("note")}},
                {}};
    for (const FoundLog &log : record.logs)
        for (const ConditionZone &zone : log.zones)
            table.rows.push_back({log.tag, voice.words(said_of(zone.what)), zone.from.written,
                                  zone.to.written, log.zero, in_mm_of(zone.from), in_mm_of(zone.to),
                                  faces_of(zone, voice), zone.depth.written, in_mm_of(zone.depth),
                                  zone.note});
    return table;
}

} // namespace roundlay
