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

constexpr double likely_least = 0.7, likely_most = 1.3; ///< of what the plan has: our choice, no source

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

std::vector<std::pair<std::string, Said>> doubtful_lengths(const Record &record, const Layout &layout) {
    std::vector<std::pair<std::string, Said>> doubts;
    for (const FoundLog &log : record.logs) {
        const Piece *piece = log.length.value ? piece_of(log, layout) : nullptr;
        if (!piece) continue;
        const double share = log.length.value->mm() / piece->blank.length;
        if (share >= likely_least && share <= likely_most) continue;
        doubts.emplace_back(log.tag, share < 1
                                         ? said("length \"%1\" is much less than the log of the plan in its "
                                                "place has: was the tape read right?",
                                                log.length.written)
                                         : said("length \"%1\" is much more than the log of the plan in its "
                                                "place has: was the tape read right?",
                                                log.length.written));
    }
    return doubts;
}

} // namespace roundlay
