// The rows of a card under its sizes: where jambs meet it, looks and pegs, condition.
#include "exporters/sheets/drawing/number.h"
#include "exporters/sheets/form/card_measures.h"
#include "exporters/sheets/form/log_card.h"
#include "exporters/words/decimal_mark.h"

#include <algorithm>

namespace roundlay::sheets {
namespace {

constexpr double finish_width = 24, marks_width = 27, species_width = 22, moisture_width = 34;

std::string joined(const std::vector<std::string> &parts) {
    std::string text;
    for (const std::string &part : parts)
        text += (text.empty() ? "" : "; ") + part;
    return text;
}

/// As the label of the box calls what became of a peg.
std::string peg_letter(const Words &words, PegState state) {
    return state == PegState::missing  ? words.say("m (missing)").substr(0, 1)
           : state == PegState::broken ? words.say("b (broken)").substr(0, 1)
                                       : words.say("s (sawn)").substr(0, 1);
}

} // namespace

/// Where its top lies, the seam under it, and how it has moved.
double LogCard::draw_shape(FormPen &pen, double x, double y, double right) const {
    const double top = y - print_line, low = top - box_height;
    const auto box = [&](double width, const char *layer, const char *letter, const std::string &label,
                         const Known &known) {
        pen.print({x + 1, top}, width - 1.5, label);
        pen.box({x, low, x + width, top}, layer, letter, known);
        x += width;
    };
    for (const int end : {0, 1})
        box(size_width, size_box, "g", words_.say("level at %1", short_name(end)),
            shown_[end].found ? known(shown_[end].found->level, {}, words_) : Known{});
    box(size_width, size_box, "h", words_.say("gap under it"), gap_below());
    box(size_width, size_box, "i", words_.say("bow"), known(log_.found.bow, {}, words_));
    ConditionZone bows;
    if (log_.found.bow_to) bows.faces = {*log_.found.bow_to};
    const auto faces = face_ticks(words_, &bows);
    pen.print({x + 1, top}, FormPen::width_of(faces), words_.say("bows out to"));
    pen.ticks({x + 1, low, x + 1 + FormPen::width_of(faces), top}, faces);
    x += FormPen::width_of(faces) + 2;
    box(size_width, size_box, "k", words_.say("wind"), known(log_.found.wind, {}, words_));
    box(right - x, words_box, "", words_.say("later cut, replaces"), {later_cuts(), ""});
    return y - line_height;
}

/// Where somebody has measured it first.
Known LogCard::gap_below() const {
    for (const FoundStation &station : log_.found.stations)
        if (station.gap_below.is_taken()) return known(station.gap_below, {}, words_);
    return {};
}

std::string LogCard::later_cuts() const {
    std::vector<std::string> all;
    for (const LaterCut &cut : log_.found.later_cuts)
        all.push_back(cut.what + (cut.at.is_taken() ? ", " + cut.at.written : ""));
    if (!log_.found.replaces.empty()) all.push_back(words_.say("replaces %1", log_.found.replaces));
    return joined(all);
}

std::string LogCard::moistures() const {
    std::vector<std::string> all;
    for (const MoistureReading &reading : log_.found.moistures)
        all.push_back(with_decimal_mark(number_text(reading.percent, 1), words_.language()) + " %" +
                      (reading.depth.is_taken() ? ", " + reading.depth.written : "") +
                      (reading.at.is_taken() ? ", " + reading.at.written : ""));
    return joined(all);
}

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
    std::vector<std::string> found, gone;
    for (const FoundPeg &peg : log_.found.pegs) {
        const std::string at = peg.at.is_taken() ? peg.at.written : "?";
        if (peg.state == PegState::found)
            found.push_back(at);
        else
            gone.push_back(at + " " + peg_letter(words_, peg.state));
    }
    return {{joined(found), ""}, {joined(gone), ""}};
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
    const double rest = right - x - 2 * finish_width - marks_width - species_width - moisture_width;
    box(finish_width, words_.say("face outside"), {finish.outside, ""});
    box(finish_width, words_.say("face inside"), {finish.inside, ""});
    box(marks_width, words_.say("old marks"), {joined(log_.found.marks), ""});
    box(species_width, words_.say("species"), {log_.found.species, ""});
    box(moisture_width, words_.say("moisture, deep, at"), {moistures(), ""});
    box(rest / 2, words_.say("pegs found, at (e)"), all.found);
    box(right - x, words_.say("pegs m, b or s, at (e)"), all.gone);
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
