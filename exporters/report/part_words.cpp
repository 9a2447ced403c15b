#include "exporters/report/parts.h"
#include "kernel/fabric/along_log.h"

namespace roundlay::sheets {

std::string joined(const std::vector<std::string> &words) {
    std::string all;
    for (const std::string &word : words)
        if (!word.empty()) all += (all.empty() ? "" : ", ") + word;
    return all;
}

std::optional<Decision> last_decision(const FoundLog &log) {
    return log.decisions.empty() ? std::nullopt : std::optional(log.decisions.back().what);
}

std::string place_words(const FoundPlace &place, const Words &words) {
    if (!place.timber.empty()) return words.say("timber %1 of a floor", place.timber);
    if (place.wall.empty()) return words.say("place not known");
    if (!place.round) return words.say("wall %1", place.wall);
    if (!place.piece) return words.say("wall %1, round %2", place.wall, *place.round);
    return words.say("wall %1, round %2, piece %3", place.wall, *place.round, *place.piece);
}

std::string by_and_on(const std::string &by, const std::string &on, const Words &words) {
    if (by.empty()) return on;
    return on.empty() ? by : words.say("%1, %2", by, on);
}

std::string noted_words(const NotedLength &number, const Words &words) {
    if (!number.is_taken()) return "";
    switch (number.certainty) {
    case Certainty::measured:
        break;
    case Certainty::proposed:
        return words.say("%1 (proposed)", number.written);
    case Certainty::contradicted:
        return words.say("%1 (contradicted)", number.written);
    }
    return number.written;
}

std::string where(const NotedLength &at, const FoundLog &log, const Telling &of) {
    const Words &words = of.words;
    if (!at.is_taken()) return "";
    if (lies_past(of.record, of.layout, log, at))
        return words.say("%1 from %2, past the end of the log: look at it again", noted_words(at, words),
                         log.zero.empty() ? "?" : log.zero);
    return log.zero.empty() ? noted_words(at, words) + " ?"
                            : words.say("%1 from %2", noted_words(at, words), log.zero);
}

std::string said_of_places_without_zero(const Words &words) {
    return words.say(
        "A place with ? behind it: nobody recorded the corner that it was measured from, and it is drawn "
        "nowhere.");
}

} // namespace roundlay::sheets
