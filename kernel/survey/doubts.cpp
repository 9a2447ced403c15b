#include "kernel/survey/survey.h"

namespace roundlay {

namespace {

/// The piece of the plan that lies there. Null where none does, or several and nobody said which.
const Piece *piece_of(const FoundLog &log, const Layout &layout) {
    const Piece *found = nullptr;
    for (const Piece &piece : layout.pieces) {
        if (!is_log(piece) || layout.walls[piece.wall].name != log.place.wall ||
            piece.round != log.place.round || (log.place.piece && piece.number != *log.place.piece))
            continue;
        if (found) return nullptr;
        found = &piece;
    }
    return found;
}

/// Shares of what the plan has: our choice, no source. Hewn logs differ more in height than in length.
struct Likely {
    double least, most;
    bool holds(double share) const { return share >= least && share <= most; }
};
constexpr Likely likely_length{0.7, 1.3}, likely_height{0.6, 1.6};

class Doubting {
  public:
    explicit Doubting(const Layout &layout) : layout_(layout) {}

    void ask(const FoundLog &log) {
        const Piece *piece = piece_of(log, layout_);
        if (!piece) return;
        if (log.length.value) ask_length(log, *piece);
        for (const FoundEnd &end : log.ends)
            ask_height(log, end.height, *piece);
        for (const FoundStation &station : log.stations)
            ask_height(log, station.height, *piece);
    }
    std::vector<std::pair<std::string, Said>> doubts() && { return std::move(doubts_); }

  private:
    void ask_length(const FoundLog &log, const Piece &piece) {
        const double share = log.length.value->mm() / piece.blank.length;
        if (likely_length.holds(share)) return;
        const auto &[wall, round, part] = log.place;
        doubts_.emplace_back(
            log.tag, share < 1
                         ? said("length \"%1\" is much less than the %2 that the log of the plan has in "
                                "wall %3, round %4: was the tape read right?",
                                log.length.written, in_mm(piece.blank.length), wall, *round)
                         : said("length \"%1\" is much more than the %2 that the log of the plan has in "
                                "wall %3, round %4: was the tape read right?",
                                log.length.written, in_mm(piece.blank.length), wall, *round));
    }

    void ask_height(const FoundLog &log, const NotedLength &height, const Piece &piece) {
        if (!height.value) return;
        const double share = height.value->mm() / piece.blank.height;
        if (likely_height.holds(share)) return;
        const auto &[wall, round, part] = log.place;
        doubts_.emplace_back(
            log.tag, share < 1
                         ? said("height \"%1\" is much less than the %2 that the log of the plan has in "
                                "wall %3, round %4: was it read right?",
                                height.written, in_mm(piece.blank.height), wall, *round)
                         : said("height \"%1\" is much more than the %2 that the log of the plan has in "
                                "wall %3, round %4: was it read right?",
                                height.written, in_mm(piece.blank.height), wall, *round));
    }

    const Layout &layout_;
    std::vector<std::pair<std::string, Said>> doubts_;
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

std::vector<std::pair<std::string, Said>> doubtful_sizes(const Record &record, const Layout &layout) {
    Doubting doubting(layout);
    for (const FoundLog &log : record.logs)
        doubting.ask(log);
    return std::move(doubting).doubts();
}

} // namespace roundlay
