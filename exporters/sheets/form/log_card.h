// What a form asks of one log of a wall: its numbers, finish, marks, pegs and condition, in boxes.
#pragma once

#include "exporters/sheets/form/condition_words.h"
#include "exporters/sheets/form/form_logs.h"
#include "exporters/sheets/form/form_sheets.h"
#include "exporters/sheets/form/proposed.h"

namespace roundlay::sheets {

/// A place along the log where its height is taken: noted already, or at a jamb.
struct CardStation {
    std::string called; ///< "door, jamb towards AB"
    Known at, height;
};

/// How much room a log's card takes, and what is on it, worked out before it is drawn.
class LogCard {
  public:
    /// `inside_out`: the wall is read from inside, so that what the plan has on the left stands right.
    LogCard(const Draft &draft, const Record &record, const Words &words, const FormLog &log,
            bool inside_out);
    /// Of a log that nobody knows of yet: all boxes empty, its tag too.
    LogCard(const Draft &draft, const Record &record, const Words &words);

    double height(double width) const;
    /// What does not fit a room of that size goes over to a card of its own, under the same tag; none: all
    /// fits.
    std::optional<LogCard> part_off(const Rect &room);
    void draw(FormPen &pen, const Rect &room) const;

  private:
    struct Pegs {
        Known found, gone; ///< gone: missing, broken or sawn
    };

    void set_stations(bool inside_out);
    void set_noted_stations();
    std::optional<double> place_in_log(Index<Piece> piece, double from_datum) const;
    std::string towards(std::size_t jamb_of, const Piece &piece, bool near_datum) const;
    Pegs pegs() const;
    std::string proposed_pegs() const;
    Known gap_below() const;
    std::string later_cuts() const;
    std::string moistures() const;
    std::string zero_name() const;

    std::vector<std::string> long_tag(double width) const;
    bool has_unnamed_end() const { return shown_[0].name.empty() || shown_[1].name.empty(); }
    double draw_long_tag(FormPen &pen, const Rect &room) const;
    double draw_names(FormPen &pen, double x, double y) const;
    std::string end_name(int end) const;
    void draw_tag(FormPen &pen, const Rect &room) const;
    double draw_sizes(FormPen &pen, double x, double y, double right) const;
    void draw_proposed(FormPen &pen, double x, double low) const;
    bool has_long_name() const;
    std::string short_name(int end) const;
    std::string end_label(int end) const;
    std::string whole_end_label(int end) const;
    void draw_end(FormPen &pen, double x, double y, int end) const;
    void draw_choice(FormPen &pen, const Rect &room, const std::string &label,
                     const std::string &chosen) const;
    double draw_shape(FormPen &pen, double x, double y, double right) const;
    double draw_stations(FormPen &pen, double x, double y, double right) const;
    double draw_looks(FormPen &pen, double x, double y, double right) const;
    double draw_zones(FormPen &pen, double x, double y, double right) const;
    void draw_zone(FormPen &pen, const ZoneColumns &columns, double y, double right,
                   const ConditionZone *zone) const;
    std::size_t zone_rows() const;
    std::size_t station_rows(double width) const;

    const Draft &draft_;
    const Record &record_;
    const Words &words_;
    FormLog log_;
    bool blank_ = false;
    bool goes_on_ = false;  ///< of another card: nothing but stations and zones
    std::size_t spare_ = 1; ///< zones to be filled in beside those that are noted
    std::vector<ConditionZone> zones_;
    FormEnd shown_[2]; ///< as they stand on the sheet
    std::vector<CardStation> stations_;
};

/// What the letters in the boxes of a card mean.
std::string card_letters(const Words &words);

} // namespace roundlay::sheets
