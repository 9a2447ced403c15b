#include "exporters/report/marks.h"
#include "exporters/report/parts.h"
#include "exporters/sheets/drawing/columns.h"
#include "exporters/words/decimal_mark.h"
#include "kernel/fabric/along_log.h"
#include "kernel/record/found_words.h"
#include "kernel/record/places.h"

#include <algorithm>

namespace roundlay::sheets {

namespace {

std::string faces_of(const std::vector<FoundFace> &faces, const Words &words) {
    std::vector<std::string> all;
    for (const FoundFace face : faces)
        all.push_back(words.words(said_of(face)));
    return joined(all);
}

/// Among what is told here: stations are told with the sizes.
bool has_place_without_zero(FoundLog log) {
    log.stations.clear();
    return lacks_zero(log);
}

Table zone_table(const Telling &of) {
    const Record &record = of.record;
    const Words &words = of.words;
    Table table = table_called(words, words.say("Zones of the wood"));
    table.columns = {flush_left(words.say("Tag"), 20),   flush_left(words.say("Wood"), 24),
                     flush_left(words.say("From"), 30),  flush_left(words.say("To"), 30),
                     flush_left(words.say("Faces"), 30), flush_left(words.say("Depth"), 20),
                     flush_left(words.say("Note"), 40)};
    for (const FoundLog &log : record.logs)
        for (const ConditionZone &zone : log.zones) {
            const MarkOf mark = mark_of(zone.what, words);
            const bool whole = !zone.from.is_taken() && !zone.to.is_taken();
            table.rows.push_back({log.tag, words.say("%1 %2", mark.letter, mark.meaning),
                                  whole ? words.say("its whole length") : where(zone.from, log, of),
                                  where(zone.to, log, of), faces_of(zone.faces, words),
                                  noted_words(zone.depth, words), zone.note});
        }
    return table;
}

Table test_table(const Telling &of) {
    const Record &record = of.record;
    const Words &words = of.words;
    Table table = table_called(words, words.say("Tests, and what they showed"));
    table.columns = {flush_left(words.say("Tag"), 20),   flush_left(words.say("Tool"), 28),
                     flush_left(words.say("Where"), 34), flush_left(words.say("Face"), 20),
                     flush_left(words.say("Depth"), 18), flush_left(words.say("Showed"), 45),
                     flush_left(words.say("By, on"), 30)};
    for (const FoundLog &log : record.logs)
        for (const WoodTest &test : log.tests)
            table.rows.push_back({log.tag, test.tool, where(test.at, log, of),
                                  test.face ? words.words(said_of(*test.face)) : "",
                                  noted_words(test.depth, words), test.showed,
                                  by_and_on(test.by, test.on, words)});
    return table;
}

std::string season_word(Season season, const Words &words) {
    switch (season) {
    case Season::spring:
        return words.say("spring");
    case Season::summer:
        return words.say("summer");
    case Season::autumn:
        return words.say("autumn");
    case Season::winter:
        break;
    }
    return words.say("winter");
}

std::string percent_of(double value) {
    std::string text = std::to_string(value);
    while (text.ends_with('0'))
        text.pop_back();
    return text.ends_with('.') ? text.substr(0, text.size() - 1) : text;
}

Table moisture_table(const Telling &of) {
    const Record &record = of.record;
    const Words &words = of.words;
    Table table = table_called(words, words.say("Moisture, percent of ovendry mass"));
    table.columns = {flush_left(words.say("Tag"), 20),   flush_right("%", 14),
                     flush_left(words.say("Where"), 34), flush_left(words.say("Face"), 22),
                     flush_left(words.say("Depth"), 18), flush_left(words.say("Season"), 20),
                     flush_left(words.say("Probe"), 30), flush_left(words.say("By, on"), 30)};
    for (const FoundLog &log : record.logs)
        for (const MoistureReading &m : log.moistures)
            table.rows.push_back({log.tag, with_decimal_mark(percent_of(m.percent), words.language()),
                                  where(m.at, log, of), m.face ? words.words(said_of(*m.face)) : "",
                                  noted_words(m.depth, words), m.season ? season_word(*m.season, words) : "",
                                  m.probe, by_and_on(m.by, m.on, words)});
    return table;
}

Table peg_table(const Telling &of) {
    const Record &record = of.record;
    const Words &words = of.words;
    Table table = table_called(words, words.say("Pegs that are missing, broken or sawn off"));
    table.columns = {flush_left(words.say("Tag"), 20),   flush_left(words.say("Peg"), 34),
                     flush_left(words.say("Where"), 40), flush_left(words.say("Diameter"), 22),
                     flush_left(words.say("Depth"), 20), flush_left(words.say("Note"), 50)};
    for (const FoundLog &log : record.logs)
        for (const FoundPeg &peg : log.pegs)
            if (peg.state != PegState::found)
                table.rows.push_back({log.tag, mark_of_peg(peg.state, words).meaning, where(peg.at, log, of),
                                      noted_words(peg.diameter, words), noted_words(peg.depth, words),
                                      peg.note});
    return table;
}

Table later_table(const Telling &of) {
    const Record &record = of.record;
    const Words &words = of.words;
    Table table = table_called(words, words.say("Cut after the house was built"));
    table.columns = {flush_left(words.say("Tag"), 20), flush_left(words.say("What"), 55),
                     flush_left(words.say("Where"), 32), flush_left(words.say("Why one thinks so"), 65)};
    for (const FoundLog &log : record.logs)
        for (const LaterCut &cut : log.later_cuts)
            table.rows.push_back({log.tag, cut.what, where(cut.at, log, of), cut.why});
    return table;
}

} // namespace

void wood_part(ReportPages &pages, const Draft &draft, const ReportSource &source) {
    const Record &record = *source.record;
    const Words &words = pages.words();
    const Telling of{record, draft.layout, words};
    pages.begin_part(words.say("Wood, pegs and later cuts"), "report-wood");
    for (const Table &table :
         {zone_table(of), test_table(of), moisture_table(of), peg_table(of), later_table(of)})
        if (!table.rows.empty()) pages.add(table);
    if (std::ranges::any_of(record.logs, has_place_without_zero))
        pages.add_text(said_of_places_without_zero(words));
    if (!moisture_table(of).rows.empty())
        pages.add_text(words.say("Moisture is not decay: one sound rafter was 16 % in summer and over 20 % "
                                 "in winter at its surface "
                                 "(surveyors' guidance on biodeterioration). Second-hand: rot infects wood "
                                 "by spores from about 29 %, "
                                 "and may spread from wetter wood down to 20 %; some fungi rot wood well "
                                 "below. None of these figures "
                                 "says that a log is safe."));
}

} // namespace roundlay::sheets
