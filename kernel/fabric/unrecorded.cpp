#include "kernel/fabric/unrecorded.h"

#include "kernel/fabric/standing.h"
#include "kernel/measured/found_piece.h"
#include "kernel/record/numbers.h"

namespace roundlay {

namespace {

std::vector<Index<Piece>> unrecorded(const Record &record, const Layout &layout) {
    Indexed<char, Piece> recorded(layout.pieces.size());
    for (const FoundLog &log : record.logs)
        for (const Index<Piece> piece : pieces_at(layout, log.place))
            recorded[piece] = true;
    std::vector<Index<Piece>> all;
    for (const Index<Piece> piece : layout.pieces.indices())
        if (is_log(layout.pieces[piece]) && !recorded[piece]) all.push_back(piece);
    return all;
}

} // namespace

std::vector<std::string> unrecorded_logs(const Record &record, const Layout &layout) {
    std::vector<std::string> tags;
    for (const Index<Piece> piece : unrecorded(record, layout))
        tags.push_back(layout.pieces[piece].tag);
    return tags;
}

std::optional<DecisionProblem> unrecorded_and_ordered(const Record &record, const Layout &now) {
    if (record.logs.empty() || !tells_of_old_wood(now)) return {};
    std::vector<std::string> tags;
    for (const Index<Piece> piece : unrecorded(record, now))
        if (now.pieces[piece].fabric == Fabric::newly_cut) tags.push_back(now.pieces[piece].tag);
    if (tags.empty()) return {};
    return DecisionProblem{
        log_path(0),
        said("%1 {log that nobody recorded is|logs that nobody recorded are} new wood in this state, %2 "
             "first: "
             "they are ordered and count nowhere as old wood; record them, or state what wood they are of",
             tags.size(), tags.front())};
}

} // namespace roundlay
