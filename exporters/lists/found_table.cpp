#include "exporters/lists/found_table.h"

#include "exporters/lists/list_cells.h"

namespace roundlay {

namespace {

std::string wood_word(Soundness what, const Voice &voice) {
    switch (what) {
    case Soundness::sound:
        return voice.say("sound");
    case Soundness::checked:
        return voice.say("checked");
    case Soundness::soft:
        return voice.say("soft");
    case Soundness::rotten:
        return voice.say("rotten");
    case Soundness::missing:
        break;
    }
    return voice.say("missing");
}

std::string face_word(FoundFace face, const Voice &voice) {
    switch (face) {
    case FoundFace::outside:
        return voice.say("outside");
    case FoundFace::inside:
        return voice.say("inside");
    case FoundFace::top:
        return voice.say("top");
    case FoundFace::under:
        break;
    }
    return voice.say("under");
}

std::vector<std::string> faces_of(const ConditionZone &zone, const Voice &voice) {
    std::vector<std::string> all;
    for (const FoundFace face : zone.faces)
        all.push_back(face_word(face, voice));
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
    if (!what) return voice.say("not decided");
    switch (*what) {
    case Decision::keep:
        return voice.say("keep");
    case Decision::mend:
        return voice.say("mend");
    case Decision::replace:
        return voice.say("replace");
    case Decision::turn:
        return voice.say("turn end for end");
    case Decision::use_elsewhere:
        return voice.say("use elsewhere");
    case Decision::leave_out:
        break;
    }
    return voice.say("leave out");
}

Table found_table(const Record &record, const Voice &voice) {
    Table table{{{"tag", voice.say("tag")},
                 {"wall", voice.say("wall")},
                 {"round", voice.say("round")},
                 {"piece", ""},
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
                              log.condition, log.cause, log.urgency, decision_word(what, voice), last.why,
                              last.by, last.on, log.photographs, log.note});
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
            table.rows.push_back({log.tag, wood_word(zone.what, voice), zone.from.written, zone.to.written,
                                  log.zero, in_mm_of(zone.from), in_mm_of(zone.to), faces_of(zone, voice),
                                  zone.depth.written, in_mm_of(zone.depth), zone.note});
    return table;
}

} // namespace roundlay
