#include "exporters/router/program.h"

#include "exporters/router/plain_text.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>

namespace roundlay {

namespace {

constexpr int hundredths = 2, thousandths = 3;

std::string mm(double value) {
    return number(value, hundredths).digits + " mm";
}

/// Thousandths of a millimetre, as they are printed: what is worked out from them is what a control reads.
struct Place {
    long long x = 0, y = 0;
    bool operator==(const Place &) const = default;
};

long long in_thousandths(double mm) {
    return std::llround(mm * 1000);
}

Place printed(Vec2 p) {
    return {in_thousandths(p.x), in_thousandths(p.y)};
}

/// "-12.300": always three decimals, and no "-0.000".
std::string decimals(long long value) {
    const long long whole = std::llabs(value) / 1000, part = std::llabs(value) % 1000;
    std::array<char, 48> room{};
    std::snprintf(room.data(), room.size(), "%s%lld.%03lld", value < 0 ? "-" : "", whole, part);
    return room.data();
}

class Writer {
  public:
    Writer(const RouterJob &job, std::size_t board) : job_(job), board_(board) {}

    std::string text() {
        line("G17 G21 G40 G90 G94");
        rapid_up();
        line("M3 S" + std::to_string(std::llround(*job_.stated.spindle)));
        for (const RouterPlace &place : job_.boards[board_])
            add(place);
        rapid_up();
        line("M5");
        line("M30");
        return std::move(text_);
    }

  private:
    void line(const std::string &words) { text_ += words + "\n"; }

    void rapid_up() { line("G0 Z" + decimals(in_thousandths(job_.stated.safe_height))); }

    std::string speed(double feed) {
        if (feed == feed_) return "";
        feed_ = feed;
        return " F" + decimals(in_thousandths(feed));
    }

    void rapid_to(Place to) {
        rapid_up();
        at_ = to;
        line("G0 X" + decimals(at_.x) + " Y" + decimals(at_.y));
    }

    void add(const RouterPlace &place) {
        const RouterTemplate &which = job_.templates[place.which];
        const RouterContour &contour = which.contour;
        const auto put = [&](Vec2 p) { return printed(on_board(job_, place, p)); };
        text_ += as_comment(which.uses.front().name);
        for (const RouterMark &mark : which.marks) { // while the board still holds the template
            rapid_to(put(mark.from));
            down_or_up(-*job_.stated.scribe);
            straight(put(mark.to));
        }
        for (const RouterHole &hole : which.holes)
            clear(place, hole);
        rapid_to(put(contour.lead_from));
        const std::vector<double> depths = pass_depths(job_.stated);
        for (const double depth : depths) {
            if (depth != depths.front()) straight(put(contour.lead_from));
            down_or_up(depth);
            turn(put(contour.start), put(contour.lead_centre), true);
            round(place, contour, depth);
            turn(put(contour.lead_to), put(contour.lead_centre), true);
        }
        rapid_up();
    }

    /// From its middle outward at each depth, counter-clockwise: the template's wood lies to the right of the
    /// tool, as it does outside.
    void clear(const RouterPlace &place, const RouterHole &hole) {
        const auto put = [&](double off) {
            return printed(on_board(job_, place, hole.middle) + Vec2{off, 0});
        };
        const std::vector<double> rings = rings_of(hole, *job_.stated.tool);
        rapid_to(put(0));
        for (const double depth : pass_depths(job_.stated)) {
            straight(put(0));
            down_or_up(depth);
            for (const double ring : rings) {
                straight(put(ring));
                turn(put(-ring), put(0), true);
                turn(put(ring), put(0), true);
            }
        }
    }

    void round(const RouterPlace &place, const RouterContour &contour, double depth) {
        const double top = job_.stated.tab_height - job_.stated.board->thickness;
        for (const RouterMove &move : contour.moves) {
            const bool lifted = move.over_tab && depth < top;
            if (lifted) down_or_up(top);
            const Place to = printed(on_board(job_, place, move.to));
            if (move.centre)
                turn(to, printed(on_board(job_, place, *move.centre)), move.counter_clockwise);
            else
                straight(to);
            if (lifted) down_or_up(depth);
        }
    }

    void down_or_up(double depth) {
        line("G1 Z" + decimals(in_thousandths(depth)) + speed(*job_.stated.plunge));
    }

    void straight(Place to) {
        if (to == at_) return;
        line("G1 X" + decimals(to.x) + " Y" + decimals(to.y) + speed(*job_.stated.feed));
        at_ = to;
    }

    /// An arc that ends where it begins would be a whole circle.
    void turn(Place to, Place centre, bool counter_clockwise) {
        if (to == at_) return;
        line((counter_clockwise ? "G3 X" : "G2 X") + decimals(to.x) + " Y" + decimals(to.y) + " I" +
             decimals(centre.x - at_.x) + " J" + decimals(centre.y - at_.y) + speed(*job_.stated.feed));
        at_ = to;
    }

    const RouterJob &job_;
    std::size_t board_;
    std::string text_;
    Place at_;
    double feed_ = -1;
};

std::string joined(const std::vector<std::string> &names) {
    std::string all;
    for (const std::string &name : names)
        all += (all.empty() ? "" : ", ") + name;
    return all;
}

std::string what_it_is_for(const RouterTemplate &which, const Voice &voice) {
    std::vector<std::string> all;
    for (const RouterUse &use : which.uses)
        all.push_back(use.turned_over ? voice.say("%1 turned over", use.name) : use.name);
    return joined(all);
}

void add_stated(std::string &head, const RouterOptions &o, const std::vector<RouterTemplate> &templates,
                const Voice &voice) {
    const auto say = [&](const std::string &sentence) { head += as_comment(sentence); };
    say(voice.say("Board %1 by %2, %3 thick, its length along X. Zero: its lower left corner, Z at its top.",
                  mm(o.board->length), mm(o.board->width), mm(o.board->thickness)));
    say(voice.say("Numbers are millimetres (G21), whatever the document is in."));
    say(voice.say("Tool: straight, %1, cuts to its centre: it goes straight down. Its radius is in the path.",
                  mm(*o.tool)));
    say(voice.say(
        "Stated: feed %1 a minute, plunge %2 a minute, spindle %3 turns a minute, passes of at most "
        "%4.",
        mm(*o.feed), mm(*o.plunge), std::llround(*o.spindle), mm(*o.depth_step)));
    say(voice.say("The deepest cut is %1 below the top, %2 into what the board lies on; the tool moves from "
                  "place to place %3 over the top.",
                  mm(o.board->thickness + o.through), mm(o.through), mm(o.safe_height)));
    if (o.scribe)
        say(voice.say(
            "Marks of shoulders and level lines are grooves %1 deep and as wide as the tool: the line "
            "is their middle.",
            mm(*o.scribe)));
    const bool holes =
        std::ranges::any_of(templates, [](const RouterTemplate &t) { return !t.holes.empty(); });
    if (holes)
        say(voice.say(
            "Holes are cut before the outline, through and from their middle outward; nothing is left "
            "standing in them."));
    say(voice.say("Each template is held by tabs %1 wide and %2 high: cut them when the board is off the "
                  "machine.",
                  mm(o.tab_width), mm(o.tab_height)));
    say(voice.say("Round each template clockwise. The program does not wait for the spindle: it must run at "
                  "its speed before the first cut."));
}

std::string head_of(const RouterJob &job, std::size_t board, const std::string &house, const Voice &voice) {
    std::string head =
        as_comment(voice.say("%1: templates, board %2 of %3", house, board + 1, job.boards.size()));
    head += as_comment(voice.words(router_caution()));
    add_stated(head, job.stated, job.templates, voice);
    for (const Said &left_out : job.left_out)
        head += as_comment(voice.words(left_out));
    for (const RouterPlace &place : job.boards[board]) {
        const RouterTemplate &which = job.templates[place.which];
        head += as_comment(voice.say("X%1 Y%2: %3", number(place.at.x, hundredths).digits,
                                     number(place.at.y, hundredths).digits, what_it_is_for(which, voice)));
        if (!which.corners.empty())
            head += as_comment(voice.say("%1 inner {corner keeps|corners keep} the tool's radius, see "
                                         "corners.csv: to be pared by hand",
                                         which.corners.size()));
    }
    return head;
}

} // namespace

Said router_caution() {
    return said(
        "CAUTION: try this program in a simulator and in the air before it cuts. It knows nothing of "
        "your machine, your clamps and your wood; speeds and depths are those that were stated. Whoever "
        "runs the machine answers for it.");
}

std::string program_text(const RouterJob &job, std::size_t board, const std::string &house,
                         const Voice &voice) {
    return head_of(job, board, house, voice) + Writer(job, board).text();
}

Table places_of(const RouterJob &job) {
    Table table;
    table.columns = {{"board", ""},       {"template", ""}, {"count", ""}, {"for", ""},
                     {"turned_over", ""}, {"x_mm", ""},     {"y_mm", ""},  {"size_x_mm", ""},
                     {"size_y_mm", ""},   {"turned", ""}};
    for (std::size_t board = 0; board < job.boards.size(); ++board)
        for (const RouterPlace &place : job.boards[board]) {
            const RouterTemplate &which = job.templates[place.which];
            std::vector<std::string> as_it_lies, over;
            for (const RouterUse &use : which.uses)
                (use.turned_over ? over : as_it_lies).push_back(use.name);
            const Vec2 size = place.turned ? Vec2{which.size.y, which.size.x} : which.size;
            table.rows.push_back({number(static_cast<double>(board + 1), 0), which.uses.front().name,
                                  number(static_cast<double>(which.uses.size()), 0), joined(as_it_lies),
                                  joined(over), number(place.at.x, thousandths),
                                  number(place.at.y, thousandths), number(size.x, thousandths),
                                  number(size.y, thousandths), place.turned ? "yes" : "no"});
        }
    return table;
}

Table corners_of(const RouterJob &job) {
    Table table;
    table.columns = {{"board", ""}, {"template", ""},  {"x_mm", ""},
                     {"y_mm", ""},  {"radius_mm", ""}, {"left_mm", ""}};
    for (std::size_t board = 0; board < job.boards.size(); ++board)
        for (const RouterPlace &place : job.boards[board]) {
            const RouterTemplate &which = job.templates[place.which];
            for (const InnerCorner &corner : which.corners) {
                const Vec2 at = on_board(job, place, corner.at);
                table.rows.push_back({number(static_cast<double>(board + 1), 0), which.uses.front().name,
                                      number(at.x, thousandths), number(at.y, thousandths),
                                      number(*job.stated.tool / 2, thousandths),
                                      number(corner.left, thousandths)});
            }
        }
    return table;
}

} // namespace roundlay
