#include "exporters/lists/fabric_table.h"

#include "exporters/lists/found_table.h"
#include "exporters/lists/list_cells.h"

#include <array>

namespace roundlay {

namespace {

constexpr std::array all_decisions{Decision::keep,          Decision::mend,    Decision::turn,
                                   Decision::use_elsewhere, Decision::replace, Decision::leave_out};

Entry counted(std::optional<int> count) {
    return count ? Entry(number(*count, 0)) : Entry(std::string());
}

Entry share(double part, double whole) {
    constexpr double percent = 100;
    return whole > 0 ? Entry(number(percent * part / whole, 1)) : Entry(std::string());
}

constexpr double mm2_per_m2 = mm_per_m * mm_per_m, mm2_per_ft2 = mm_per_foot * mm_per_foot;

/// Left out where the house as found has no wood at all: nothing is known then, not none.
Entry size(double of, double whole, int decimals) {
    return whole > 0 ? Entry(number(of, decimals)) : Entry(std::string());
}

std::vector<Entry> sum_row(const std::string &what, const FabricSum &sum, const FabricSum &all) {
    return {what,
            number(sum.logs, 0),
            size(sum.volume / mm3_per_m3, all.volume, volume_decimals),
            size(sum.volume / mm3_per_ft3, all.volume, volume_decimals - 1),
            size(sum.outside / mm2_per_m2, all.outside, volume_decimals - 1),
            size(sum.outside / mm2_per_ft2, all.outside, volume_decimals - 2),
            share(sum.logs, all.logs),
            share(sum.volume, all.volume),
            share(sum.outside, all.outside)};
}

} // namespace

Table decision_table(const Record &record, const Layout &layout, const Voice &voice) {
    Table table{{{"tag", voice.say("tag")},
                 {"wall", voice.say("wall")},
                 {"round", voice.say("round")},
                 {"piece", ""},
                 {"timber", ""},
                 {"decision", voice.say("decision")},
                 {"to_wall", voice.say("to wall")},
                 {"to_round", voice.say("round")},
                 {"to_piece", ""},
                 {"by", voice.say("by")},
                 {"on", voice.say("on")},
                 {"why", voice.say("why")},
                 {"earlier", ""},
                 {"found_as", ""}},
                {}};
    for (const DecidedLog &decided : decided_logs(record, layout)) {
        const FoundLog &log = record.logs[decided.log];
        const FoundDecision last = log.decisions.empty() ? FoundDecision() : log.decisions.back();
        std::vector<std::string> earlier, found_as;
        for (std::size_t i = 0; i + 1 < log.decisions.size(); ++i)
            earlier.push_back(decision_word(log.decisions[i].what, voice));
        for (const Index<Piece> piece : decided.found_as)
            found_as.push_back(layout.pieces[piece].tag);
        table.rows.push_back({log.tag, log.place.wall, counted(log.place.round), counted(log.place.piece),
                              log.place.timber, decision_word(decided.what, voice), last.to.wall,
                              counted(last.to.round), counted(last.to.piece), last.by, last.on, last.why,
                              earlier, found_as});
    }
    return table;
}

Table fabric_table(const FabricFigures &figures, const std::vector<FabricFigures> &earlier,
                   const Voice &voice) {
    const bool metric = voice.system() == UnitSystem::metric;
    Table table{{{"what", voice.say("old logs")},
                 {"logs", voice.say("count")},
                 {"volume_m3", metric ? voice.say("m3") : ""},
                 {"volume_ft3", metric ? "" : voice.say("ft3")},
                 {"outside_face_m2", metric ? voice.say("outside face m2") : ""},
                 {"outside_face_ft2", metric ? "" : voice.say("outside face ft2")},
                 {"percent_of_logs", voice.say("% of count")},
                 {"percent_of_volume", voice.say("% of volume")},
                 {"percent_of_outside_face", voice.say("% of face")}},
                {}};
    const auto add = [&](const std::string &what, const FabricSum &sum) {
        table.rows.push_back(sum_row(what, sum, figures.found));
    };
    for (const Decision what : all_decisions)
        add(decision_word(what, voice), figures.of_decision(what));
    add(voice.say("not decided"), figures.undecided);
    if (figures.not_standing.volume > 0 || figures.not_standing.logs > 0)
        add(voice.say("to stay, and not standing in this state"), figures.not_standing);
    if (figures.cut_out.volume > 0) add(voice.say("cut out of mended logs"), figures.cut_out);
    add(voice.say("stays: keep, mend, turn, use elsewhere"), figures.stays());
    for (std::size_t i = 0; i < earlier.size(); ++i)
        add(voice.say("stayed by decision %1 of each log", i + 1), earlier[i].stays());
    add(voice.say("all that was found"), figures.found);
    return table;
}

std::vector<std::string> fabric_words(const FabricFigures &figures, const Voice &voice) {
    std::vector<std::string> all{
        voice.say("Count: logs of the record. Volume: the wood of the pieces that they were found as, "
                  "joints, openings and bores taken off. Outside face: the area of all surfaces of "
                  "these pieces that look more outward than up, down or along, each as it is seen square on. "
                  "Percent: 100 x part / all that was found."),
        voice.say(
            "Of a mended log the old wood alone counts, as far as a mend that is drawn in the state shown "
            "cuts it out; what is cut off one that is used elsewhere is not taken off. These are sums "
            "and no verdict on what should stay.")};
    if (figures.not_standing.logs > 0)
        all.push_back(
            voice.say("Logs that are to stay by their decisions, and in whose place this state shows "
                      "new wood or none: %1. They are not counted as old wood that stays.",
                      figures.not_standing.logs));
    if (figures.found.logs > 0 && figures.found.logs == figures.without_place) {
        all.push_back(voice.say("No log of the record is a piece of the house as it was found, or that house "
                                "cannot be laid out: no volume and no face is known."));
        return all;
    }
    if (figures.without_place > 0)
        all.push_back(voice.say("Logs of the record that the house as found has no piece of, without volume "
                                "and face here: %1.",
                                figures.without_place));
    if (figures.gone > 0)
        all.push_back(voice.say("Logs that are recorded as missing from end to end, in no sum here: %1.",
                                figures.gone));
    return all;
}

} // namespace roundlay
