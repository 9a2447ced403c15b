#include "exporters/lists/progress_words.h"

#include "kernel/measure/weights.h"

#include <algorithm>

namespace roundlay {

namespace {

std::vector<std::string> tags(const Layout &layout, const std::vector<Index<Piece>> &pieces) {
    std::vector<std::string> all;
    for (const Index<Piece> piece : pieces)
        all.push_back(layout.pieces[piece].tag);
    return all;
}

std::string weight_words(const Voice &voice, double low_kg, double high_kg) {
    const bool metric = voice.system() == UnitSystem::metric;
    const double unit = metric ? 1 : kg_per_pound;
    const auto low = static_cast<long long>(shown_low_weight(low_kg / unit));
    const auto high = static_cast<long long>(shown_high_weight(high_kg / unit));
    return metric ? voice.say("%1 to %2 kg", low, high) : voice.say("%1 to %2 lb", low, high);
}

std::string count_words(const Voice &voice, const Left &left, Deed deed) {
    const std::size_t all = left.done + left.left;
    return deed == Deed::up ? voice.say("Up: %1 of %2 pieces.", left.done, all)
                            : voice.say("Down: %1 of %2 pieces.", left.done, all);
}

std::string left_words(const Voice &voice, const Layout &layout, const Left &left) {
    if (left.left == 0) return voice.say("Nothing is left.");
    if (!left.weights_known)
        return voice.say("Left: %1 {piece|pieces}; what they weigh is not known.", left.left);
    return voice.say("Left: %1 {piece|pieces}, %2; the heaviest lift of them %3, %4.", left.left,
                     weight_words(voice, left.low_kg, left.high_kg), layout.pieces[*left.heaviest].tag,
                     weight_words(voice, left.heaviest_low_kg, left.heaviest_high_kg));
}

std::string now_words(const Voice &voice, const Layout &layout, const std::vector<Index<Piece>> &now,
                      Deed deed) {
    std::string all;
    for (const std::string &tag : tags(layout, now))
        all += (all.empty() ? "" : ", ") + tag;
    return deed == Deed::up ? voice.say("May go up now: %1.", all) : voice.say("May come down now: %1.", all);
}

} // namespace

std::string tick_words(const std::optional<Tick> &tick, const Voice &voice) {
    if (!tick) return {};
    if (tick->by.empty() && tick->on.empty()) return voice.say("yes");
    return tick->on + (tick->on.empty() || tick->by.empty() ? "" : ", ") + tick->by;
}

std::string may_words(May may, Deed deed, const Voice &voice) {
    switch (may) {
    case May::done:
        return deed == Deed::up ? voice.say("is up") : voice.say("is down");
    case May::now:
        return voice.say("now");
    case May::waits:
        return voice.say("waits");
    case May::shut_in:
        return voice.say("shut in");
    case May::gone:
        return voice.say("missing");
    }
    return {};
}

std::vector<Column> turn_columns(const CutList &list, Deed deed) {
    const Voice &voice = list.voice;
    std::vector<Column> columns{
        {"turn", deed == Deed::up ? voice.say("may go up") : voice.say("may come down")},
        {"waits_for", voice.say("waits for")}};
    if (deed == Deed::up) {
        columns.push_back({"shut_in_by", ""});
        columns.push_back({"pegs_first", ""});
    }
    return columns;
}

std::vector<Entry> turn_cells(const CutList &list, const Layout &layout, const Site &site, Deed deed,
                              Index<Piece> piece) {
    const Turn turn = turn_of(layout, site, deed, piece);
    const bool open = turn.may != May::done;
    std::vector<Entry> cells{may_words(turn.may, deed, list.voice),
                             open ? tags(layout, turn.waits_for) : std::vector<std::string>()};
    if (deed == Deed::up) {
        cells.emplace_back(open ? tags(layout, turn.shut_in_by) : std::vector<std::string>());
        cells.emplace_back(open ? tags(layout, turn.pegs_first) : std::vector<std::string>());
    }
    return cells;
}

std::string order_caution(const Voice &voice) {
    return voice.say("The order is geometry alone: what lies free to rise. Whether a wall, a corner or a "
                     "roof stands meanwhile, what is braced, and with what is lifted, is for a licensed "
                     "professional and whoever is on the site.");
}

std::string gone_words(const Voice &voice, const Layout &layout, const Ticked &ticked, Deed deed) {
    if (deed != Deed::down || ticked.gone.empty()) return {};
    std::string all;
    for (const std::string &tag : tags(layout, ticked.gone))
        all += (all.empty() ? "" : ", ") + tag;
    return voice.say("Recorded as missing and left out: %1.", all);
}

std::vector<std::string> progress_words(const Voice &voice, const Shell &shell, const Layout &layout,
                                        const Bodies &bodies, const Site &site, Deed deed) {
    const Left left = what_is_left(shell, layout, bodies, site.ticked, deed);
    std::vector<std::string> words{count_words(voice, left, deed) + " " + left_words(voice, layout, left)};
    const auto now = may_now(layout, site, deed);
    if (!now.empty()) words.push_back(now_words(voice, layout, now, deed));
    if (std::string gone = gone_words(voice, layout, site.ticked, deed); !gone.empty())
        words.push_back(std::move(gone));
    return words;
}

} // namespace roundlay
