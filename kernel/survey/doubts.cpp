#include "kernel/layout/piece_places.h"
#include "kernel/record/check_numbers.h"
#include "kernel/record/numbers.h"
#include "kernel/record/places.h"
#include "kernel/survey/survey.h"

#include <algorithm>
#include <set>

namespace roundlay {

namespace {

/// The piece of the plan that lies there. Null where none does, or several and nobody said which.
const Piece *piece_of(const FoundLog &log, const Layout &layout) {
    const Piece *found = nullptr;
    for (const Piece &piece : layout.pieces) {
        if (!log.place.timber.empty()) {
            if (piece.timber && piece.tag == log.place.timber) return &piece;
            continue;
        }
        if (!is_log(piece) || layout.walls[piece.wall].name != log.place.wall ||
            piece.round != log.place.round || (log.place.piece && piece.number != *log.place.piece))
            continue;
        if (found) return nullptr;
        found = &piece;
    }
    return found;
}

/// From end to end of all logs of its round, mm: places may be told from the far corner of the wall.
double round_length(const Layout &layout, const Piece &piece) {
    if (piece.timber) return piece.blank.length;
    AlongWall all = along_wall(layout.walls, piece);
    for (const Piece &other : layout.pieces) {
        if (!is_log_of(other, piece.wall) || other.round != piece.round) continue;
        const AlongWall one = along_wall(layout.walls, other);
        all = {std::min(all.from, one.from), std::max(all.to, one.to)};
    }
    return all.to - all.from;
}

/// Shares of what the plan has: our choice, no source. Hewn logs differ more in height than in length.
struct Likely {
    double least, most;
    bool holds(double share) const { return share >= least && share <= most; }
};
constexpr Likely likely_length{0.7, 1.3}, likely_section{0.6, 1.6};

/// Of one log, held against the piece of the plan.
class Doubting {
  public:
    /// `strange`: paths of numbers that the record asks after already.
    Doubting(const FoundLog &log, std::string path, const std::set<std::string> &strange,
             std::vector<SurveyDoubt> &doubts)
        : log_(log), path_(std::move(path)), strange_(strange), doubts_(doubts) {}

    void ask(const Layout &layout, const Piece &piece, const std::pair<std::string, std::string> &ends) {
        if (is_asked(log_.length, "length")) ask_length(piece);
        for (std::size_t i = 0; i < log_.ends.size(); ++i)
            ask_section(log_.ends[i].height, log_.ends[i].width, "end", i, log_.ends[i].corner, piece);
        for (std::size_t i = 0; i < log_.stations.size(); ++i)
            ask_section(log_.stations[i].height, log_.stations[i].width, "station", i,
                        log_.stations[i].at.written, piece);
        if (log_.length.value) return ask_places_on_taped();
        const bool from_its_end = log_.zero == ends.first || log_.zero == ends.second;
        ask_places(from_its_end ? piece.blank.length : round_length(layout, piece));
    }

    /// A zone that begins past the end ends there too, and is told once.
    void ask_places_on_taped() {
        if (!log_.length.value) return;
        for (const PlaceAlong &place : places_along(log_))
            if (place.key != "from" && place.number.value && *place.number.value > *log_.length.value)
                tell(
                    known_by(place),
                    said("\"%1\" lies past the end of the log, whose length was measured \"%2\": it is taken "
                         "as "
                         "it stands and drawn nowhere; look at both numbers again, and at the corner that it "
                         "is told from",
                         place.number.written, log_.length.written),
                    place.key);
    }

  private:
    /// In the plan.
    Said where() const {
        const FoundPlace &place = log_.place;
        if (!place.timber.empty()) return said("timber %1 of a floor", place.timber);
        return said("wall %1, round %2", place.wall, place.round.value_or(0));
    }
    bool is_asked(const NotedLength &number, const std::string &at) const {
        return number.value && !strange_.contains(path_ + "." + at);
    }
    void tell(std::string of, Said what, std::string_view key = {}) {
        doubts_.push_back({log_.tag, std::move(of), std::move(what), std::string(key)});
    }

    void ask_length(const Piece &piece) {
        const double share = log_.length.value->mm() / piece.blank.length;
        if (likely_length.holds(share)) return;
        tell("", share < 1
                     ? said("length \"%1\" is much less than the %2 that the log of the plan has in %3: "
                            "was the tape read right?",
                            log_.length.written, in_mm(piece.blank.length), where())
                     : said("length \"%1\" is much more than the %2 that the log of the plan has in %3: "
                            "was the tape read right?",
                            log_.length.written, in_mm(piece.blank.length), where()));
    }

    void ask_section(const NotedLength &height, const NotedLength &width, const char *part, std::size_t i,
                     const std::string &known_by, const Piece &piece) {
        const std::string at = std::string(part) + "[" + std::to_string(i) + "].",
                          of = part + (" " + known_by);
        if (is_asked(height, at + "height")) ask_height(height, of, piece.blank.height);
        if (is_asked(width, at + "width")) ask_width(width, of, piece.blank.width);
    }

    void ask_height(const NotedLength &height, const std::string &of, double plan) {
        const double share = height.value->mm() / plan;
        if (likely_section.holds(share)) return;
        tell(of, share < 1
                     ? said("height \"%1\" is much less than the %2 that the log of the plan has in %3: "
                            "was it read right?",
                            height.written, in_mm(plan), where())
                     : said("height \"%1\" is much more than the %2 that the log of the plan has in %3: "
                            "was it read right?",
                            height.written, in_mm(plan), where()));
    }

    void ask_width(const NotedLength &width, const std::string &of, double plan) {
        const double share = width.value->mm() / plan;
        if (likely_section.holds(share)) return;
        tell(of, share < 1 ? said("width \"%1\" is much less than the %2 that the log of the plan has in %3: "
                                  "was it read right?",
                                  width.written, in_mm(plan), where())
                           : said("width \"%1\" is much more than the %2 that the log of the plan has in %3: "
                                  "was it read right?",
                                  width.written, in_mm(plan), where()));
    }

    void ask_places(double length) {
        for (const PlaceAlong &place : places_along(log_))
            ask_place(place, length);
    }

    /// As people find it again: by the number as it was noted, a zone by both of its own.
    std::string known_by(const PlaceAlong &place) const {
        if (place.list != "zone") return std::string(place.list) + " " + place.number.written;
        const ConditionZone &zone = log_.zones[place.index];
        return "zone " + zone.from.written + " to " + zone.to.written;
    }

    void ask_place(const PlaceAlong &place, double length) {
        const NotedLength &at = place.number;
        if (!at.value || at.value->mm() <= likely_length.most * length) return;
        tell(known_by(place),
             said("\"%1\" lies past the end of the log, which is %2 long in the plan: was it read right?",
                  at.written, in_mm(length)),
             place.key);
    }

    const FoundLog &log_;
    std::string path_;
    const std::set<std::string> &strange_;
    std::vector<SurveyDoubt> &doubts_;
};

} // namespace

bool is_measured(const FoundLog &log) {
    FoundLog place;
    place.tag = log.tag, place.place = log.place;
    for (const FoundEnd &end : log.ends) {
        place.ends.emplace_back();
        place.ends.back().corner = end.corner;
    }
    return log != place;
}

std::vector<SurveyDoubt> doubtful_sizes(const Record &record, const Layout &layout) {
    std::vector<RecordProblem> told;
    tell_strange_numbers(record, told);
    std::set<std::string> strange;
    for (const RecordProblem &problem : told)
        strange.insert(problem.path);
    std::vector<SurveyDoubt> doubts;
    for (std::size_t i = 0; i < record.logs.size(); ++i) {
        Doubting doubting(record.logs[i], log_path(i), strange, doubts);
        if (const Piece *piece = piece_of(record.logs[i], layout))
            doubting.ask(layout, *piece, end_names(record, layout, *piece));
        else
            doubting.ask_places_on_taped();
    }
    return doubts;
}

} // namespace roundlay
