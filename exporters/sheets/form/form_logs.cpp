#include "exporters/sheets/form/form_logs.h"

#include "kernel/survey/survey.h"

#include <algorithm>

namespace roundlay::sheets {
namespace {

bool lies_at(const FoundLog &log, const Piece &piece, const Layout &layout) {
    if (!log.place.timber.empty()) return piece.timber && piece.tag == log.place.timber;
    return is_log(piece) && log.place.round && log.place.wall == layout.walls[piece.wall].name &&
           piece.round == *log.place.round && (!log.place.piece || piece.number == *log.place.piece);
}

std::vector<Index<Piece>> pieces_of(const FoundLog &log, const Layout &layout) {
    std::vector<Index<Piece>> pieces;
    for (const auto i : layout.pieces.indices())
        if (lies_at(log, layout.pieces[i], layout)) pieces.push_back(i);
    return pieces;
}

/// Takes the end of that name out of those that are left; none: nobody has told of it.
std::optional<FoundEnd> taken(std::vector<FoundEnd> &left, const std::string &name) {
    const auto end = std::ranges::find(left, name, &FoundEnd::corner);
    if (end == left.end()) return {};
    FoundEnd found = *end;
    left.erase(end);
    return found;
}

/// Which of its ends is which, by their names. One alone that is called otherwise is the one that is left.
void pair_ends(FormLog &log, const Record &record, const Layout &layout) {
    std::vector<FoundEnd> left = log.found.ends;
    if (!log.pieces.empty()) {
        const Piece &first = layout.pieces[log.pieces.front()], &last = layout.pieces[log.pieces.back()];
        const std::string names[2] = {end_names(record, layout, first).first,
                                      end_names(record, layout, last).second};
        for (const int i : {0, 1})
            log.ends[i] = {names[i], taken(left, names[i]), i == 0 ? End::datum : End::far,
                           i == 0 ? log.pieces.front() : log.pieces.back()};
    }
    const auto untold = std::ranges::count_if(log.ends, [](const FormEnd &e) { return !e.found; });
    for (FormEnd &end : log.ends) {
        if (end.found || left.empty()) continue;
        if (untold > 1) end.of_plan.reset(), end.piece.reset(), end.name.clear();
        end.name = left.front().corner;
        end.found = left.front();
        left.erase(left.begin());
    }
    if (untold > 1 && !log.found.ends.empty()) // whose ends the record calls otherwise: it may be either
        for (FormEnd &end : log.ends)
            if (!end.found) end = {};
}

FormLog form_log(const FoundLog &found, bool recorded, const Record &record, const Layout &layout) {
    FormLog log{found, recorded, pieces_of(found, layout), {}};
    pair_ends(log, record, layout);
    return log;
}

} // namespace

FormLogs form_logs(const Record &record, const Layout &layout) {
    FormLogs all;
    all.walls = Indexed<std::vector<FormLog>, WallPlace>(layout.walls.size());
    const Record whole = with_logs_to_measure(record, layout);
    for (std::size_t i = 0; i < whole.logs.size(); ++i) {
        FormLog log = form_log(whole.logs[i], i < record.logs.size(), record, layout);
        if (log.pieces.empty())
            all.elsewhere.push_back(std::move(log));
        else if (layout.pieces[log.pieces.front()].timber)
            all.timbers.push_back(std::move(log));
        else
            all.walls[layout.pieces[log.pieces.front()].wall].push_back(std::move(log));
    }
    const auto from_the_bottom = [&](const FormLog &a, const FormLog &b) {
        return a.pieces.front() < b.pieces.front(); // pieces lie by wall, round and number
    };
    for (std::vector<FormLog> &logs : all.walls)
        std::ranges::stable_sort(logs, from_the_bottom);
    std::ranges::stable_sort(all.timbers, from_the_bottom);
    return all;
}

std::string form_tag(const std::vector<FormLog> &logs, Index<Piece> piece, const Layout &layout) {
    for (const FormLog &log : logs)
        if (std::ranges::count(log.pieces, piece) > 0) return log.found.tag;
    return layout.pieces[piece].tag;
}

} // namespace roundlay::sheets
