// The rows of a card under its sizes: where jambs meet it, looks and pegs, condition.
#include "exporters/sheets/form/card_measures.h"
#include "exporters/sheets/form/log_card.h"

#include <algorithm>

namespace roundlay::sheets {
namespace {

constexpr double finish_width = 26, marks_width = 34, gone_width = 35, missing_width = 32;

std::string joined(const std::vector<std::string> &parts) {
    std::string text;
    for (const std::string &part : parts)
        text += (text.empty() ? "" : "; ") + part;
    return text;
}

} // namespace

double LogCard::draw_stations(FormPen &pen, double x, double y, double right) const {
    const double from = x, pitch = place_width + size_width;
    const auto in_a_row = static_cast<std::size_t>((right - x) / pitch);
    for (std::size_t i = 0; i < stations_.size(); ++i) {
        const CardStation &station = stations_[i];
        if (i > 0 && i % in_a_row == 0) x = from, y -= line_height;
        const double top = y - print_line, low = top - box_height;
        pen.print({x + 1, top}, pitch - 2, station.called);
        pen.box({x, low, x + place_width, top}, place_box, "e", station.at);
        pen.box({x + place_width, low, x + pitch, top}, size_box, "f", station.height);
        if (x == from && !station.height.proposed.empty()) draw_proposed(pen, x, low);
        x += pitch;
    }
    return stations_.empty() ? y : y - line_height;
}

std::string LogCard::proposed_pegs() const {
    if (!log_.found.pegs.empty()) return "";
    std::string places;
    for (const Index<Piece> i : log_.pieces) {
        std::vector<double> at;
        for (const double place : peg_places(draft_.layout, i))
            if (const auto from_zero = place_in_log(i, place)) at.push_back(*from_zero);
        std::ranges::sort(at);
        for (const double place : at)
            places += (places.empty() ? "" : "; ") + words_.length(place);
    }
    return places.empty() ? "" : words_.say("pegs from %1: %2", words_.name(zero_name()), places);
}

LogCard::Pegs LogCard::pegs() const {
    std::vector<std::string> found, missing, gone;
    for (const FoundPeg &peg : log_.found.pegs) {
        auto &list = peg.state == PegState::found ? found : peg.state == PegState::missing ? missing : gone;
        list.push_back(peg.at.is_taken() ? peg.at.written : "?");
    }
    return {{joined(found), ""}, {joined(missing), ""}, {joined(gone), ""}};
}

double LogCard::draw_looks(FormPen &pen, double x, double y, double right) const {
    const double top = y - print_line, low = top - box_height;
    const auto box = [&](double width, const std::string &label, const Known &known) {
        pen.print({x + 1, top}, width - 1.5, label);
        pen.box({x, low, x + width, top}, words_box, "", known);
        x += width;
    };
    const FaceFinish &finish = log_.found.finish;
    const Pegs all = pegs();
    const std::string proposed = proposed_pegs();
    if (!proposed.empty()) {
        draw_proposed(pen, x, low);
        pen.print({x + 1, low - print_line}, right - x - 2, proposed);
    }
    box(finish_width, words_.say("face outside"), {finish.outside, ""});
    box(finish_width, words_.say("face inside"), {finish.inside, ""});
    box(marks_width, words_.say("old marks"), {joined(log_.found.marks), ""});
    box(right - x - missing_width - gone_width, words_.say("pegs found, at (e)"), all.found);
    box(missing_width, words_.say("pegs missing, at"), all.missing);
    box(gone_width, words_.say("broken, sawn, at"), all.gone);
    return y - line_height;
}

double LogCard::draw_zones(FormPen &pen, double x, double y, double right) const {
    const ZoneColumns columns = zone_columns(words_, x);
    const double top = y - zone_label;
    pen.print({columns.what, top}, columns.from - columns.what, words_.say("condition"));
    pen.print({columns.from + 1, top}, place_width - 1, words_.say("from (e)"));
    pen.print({columns.to + 1, top}, place_width - 1, words_.say("to (e)"));
    pen.print({columns.faces, top}, columns.depth - columns.faces, words_.say("on the face"));
    pen.print({columns.depth + 1, top}, size_width - 1, words_.say("how deep"));
    if (right - columns.note > 8)
        pen.print({columns.note + 1, top}, right - columns.note, words_.say("note"));
    y = top;
    for (std::size_t i = 0; i < zone_rows(); ++i) {
        const bool noted = i < zones_.size();
        draw_zone(pen, columns, y, right, noted ? &zones_[i] : nullptr);
        y -= box_height;
    }
    return y;
}

void LogCard::draw_zone(FormPen &pen, const ZoneColumns &c, double y, double right,
                        const ConditionZone *zone) const {
    const double low = y - box_height;
    pen.ticks({c.what, low, c.from, y}, condition_ticks(words_, zone));
    pen.box({c.from, low, c.from + place_width, y}, place_box, "",
            zone ? known(zone->from, {}, words_) : Known{});
    pen.box({c.to, low, c.to + place_width, y}, place_box, "", zone ? known(zone->to, {}, words_) : Known{});
    pen.ticks({c.faces, low, c.depth, y}, face_ticks(words_, zone));
    pen.box({c.depth, low, c.depth + size_width, y}, size_box, "",
            zone ? known(zone->depth, {}, words_) : Known{});
    if (right - c.note > 8)
        pen.box({c.note, low, right, y}, words_box, "", zone ? Known{zone->note, ""} : Known{});
}

} // namespace roundlay::sheets
