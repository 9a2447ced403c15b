#include "kernel/record/check_names.h"

#include "kernel/record/numbers.h"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>

namespace roundlay {

namespace {

std::string entry(const std::string &list, std::size_t index) {
    return list + "[" + std::to_string(index) + "]";
}

class Names {
  public:
    Names(const Record &record, std::vector<RecordProblem> &problems) : record_(record), problems_(problems) {
        for (std::size_t i = 0; i < record.logs.size(); ++i)
            logs_.emplace(record.logs[i].tag, i);
    }

    void check() {
        check_notations();
        check_own_names();
        for (std::size_t i = 0; i < record_.logs.size(); ++i)
            check_log(i);
        check_replaced();
        check_cut_up();
        check_places();
    }

  private:
    void refuse(std::string path, Said what) {
        problems_.push_back({true, std::move(path), std::move(what)});
    }
    void tell(std::string path, Said what) { problems_.push_back({false, std::move(path), std::move(what)}); }

    void check_notation(const std::string &path, const Notation &notation);
    void check_notations();
    template <typename Part>
    void once(const std::string &list, const std::vector<Part> &parts, const char *key);
    void check_own_names();
    template <typename Part> void sheets_of(const std::string &list, const std::vector<Part> &parts);
    void check_sheet(const std::string &path, const std::string &sheet);
    void check_plane(const std::string &path, const std::string &plane);
    void check_log(std::size_t index);
    void check_tag(std::size_t index);
    void check_ends(std::size_t index);
    void check_corner(const std::string &path, const FoundLog &log, const std::string &corner);
    bool is_of_the_wall(const FoundLog &log, const std::string &corner) const;
    void check_other(const std::string &path, std::size_t index, const std::string &tag);
    void check_replaced();
    void check_cut_up();
    void check_timber(std::size_t index, std::map<std::string, std::size_t> &taken);
    void check_places();
    bool belong_together(const FoundLog &a, const FoundLog &b) const;

    const Record &record_;
    std::vector<RecordProblem> &problems_;
    std::map<std::string, std::size_t> logs_; ///< by tag, the first of each
};

void Names::check_notation(const std::string &path, const Notation &notation) {
    if (notation.denominator &&
        std::ranges::find(note_denominators, *notation.denominator) == std::end(note_denominators))
        refuse(path + ".denominator",
               said("a sheet counts quarters, eighths or sixteenths of an inch: state 4, 8 or 16"));
}

void Names::check_notations() {
    check_notation("record", record_.notation);
    for (std::size_t i = 0; i < record_.sheets.size(); ++i)
        check_notation(entry("record.sheet", i), record_.sheets[i].notation);
}

template <typename Part>
void Names::once(const std::string &list, const std::vector<Part> &parts, const char *key) {
    std::set<std::string> seen;
    for (std::size_t i = 0; i < parts.size(); ++i)
        if (!seen.insert(parts[i].name).second)
            refuse(entry(list, i) + "." + key,
                   said("%1 is stated twice: give each its own name", parts[i].name));
}

template <typename Part> void Names::sheets_of(const std::string &list, const std::vector<Part> &parts) {
    for (std::size_t i = 0; i < parts.size(); ++i)
        check_sheet(entry(list, i), parts[i].sheet);
}

void Names::check_own_names() {
    once("record.sheet", record_.sheets, "name");
    once("record.level", record_.planes, "name");
    once("record.corner", record_.corners, "name");
    once("record.opening", record_.openings, "name");
    sheets_of("record.level", record_.planes);
    sheets_of("record.wall", record_.walls);
    sheets_of("record.corner", record_.corners);
    sheets_of("record.diagonal", record_.diagonals);
    sheets_of("record.opening", record_.openings);
    for (std::size_t i = 0; i < record_.corners.size(); ++i)
        check_plane(entry("record.corner", i), record_.corners[i].plane);
    for (std::size_t i = 0; i < record_.openings.size(); ++i)
        check_plane(entry("record.opening", i), record_.openings[i].plane);
}

void Names::check_sheet(const std::string &path, const std::string &sheet) {
    if (!sheet.empty() && std::ranges::find(record_.sheets, sheet, &FieldSheet::name) == record_.sheets.end())
        tell(path + ".sheet",
             said("no sheet of the record is called %1: state it with its denominator", sheet));
}

void Names::check_plane(const std::string &path, const std::string &plane) {
    if (!plane.empty() && std::ranges::find(record_.planes, plane, &LevelPlane::name) == record_.planes.end())
        tell(path + ".plane",
             said("no level plane of the record is called %1: state it with its offset", plane));
}

void Names::check_tag(std::size_t index) {
    const std::string &tag = record_.logs[index].tag;
    if (tag.empty())
        refuse(log_path(index) + ".tag",
               said("a log has no tag: give it one of its own, which it keeps for ever"));
    else if (logs_.at(tag) != index)
        refuse(log_path(index) + ".tag",
               said("two logs have the tag %1: give each its own, which it keeps for ever", tag));
}

/// The other log is there, and another.
void Names::check_other(const std::string &path, std::size_t index, const std::string &tag) {
    const auto found = logs_.find(tag);
    if (found == logs_.end())
        refuse(
            path,
            said("no log of the record has the tag %1: record it, even where it is missing, or mend the tag",
                 tag));
    else if (found->second == index)
        refuse(path, said("log %1 names itself: name the other log", tag));
}

/// Along the logs that were replaced one after the other none ever comes round again.
void Names::check_replaced() {
    constexpr std::size_t none = 0;
    std::vector<std::size_t> walked(record_.logs.size(), none);
    for (std::size_t i = 0; i < record_.logs.size(); ++i) {
        const std::size_t walk = i + 1;
        std::size_t at = i;
        while (walked[at] == none) {
            walked[at] = walk;
            const auto next = logs_.find(record_.logs[at].replaces);
            if (next == logs_.end() || next->second == at) break; // told already
            at = next->second;
            if (walked[at] == walk)
                refuse(log_path(at) + ".replaces",
                       said("log %1 replaces itself by way of others: one of them came first",
                            record_.logs[at].tag));
        }
    }
}

/// While only one end is noted the other may be meant.
void Names::check_corner(const std::string &path, const FoundLog &log, const std::string &corner) {
    constexpr std::size_t both = 2;
    if (!corner.empty() && log.ends.size() >= both &&
        std::ranges::find(log.ends, corner, &FoundEnd::corner) == log.ends.end())
        tell(path, said("no end of the log lies in corner %1: name an end's corner", corner));
}

/// A log that begins at an opening is measured from a corner of its wall too, where none of its ends lies.
bool Names::is_of_the_wall(const FoundLog &log, const std::string &corner) const {
    const std::string &wall = log.place.wall;
    if (!log.place.piece || wall.empty() || corner.empty()) return false;
    const auto meets = [&](const RecordedCorner &each) {
        return each.name == corner && std::ranges::find(each.walls, wall) != each.walls.end();
    };
    const auto ends_there = [&](const FoundLog &other) {
        return other.place.wall == wall &&
               std::ranges::find(other.ends, corner, &FoundEnd::corner) != other.ends.end();
    };
    return corner.starts_with(wall) || corner.ends_with(wall) || // as the plan calls them by its walls
           std::ranges::any_of(record_.corners, meets) || std::ranges::any_of(record_.logs, ends_there);
}

void Names::check_ends(std::size_t index) {
    const FoundLog &log = record_.logs[index];
    const std::string path = log_path(index);
    if (log.ends.size() > 1 && log.ends[0].corner == log.ends[1].corner)
        refuse(path + ".end[1].corner",
               said("both ends of the log are in corner %1: ends are told apart by their corner",
                    log.ends[1].corner));
    for (std::size_t i = 0; i < log.ends.size(); ++i)
        check_plane(entry(path + ".end", i), log.ends[i].plane);
    for (std::size_t i = 0; i < log.stations.size(); ++i)
        check_plane(entry(path + ".station", i), log.stations[i].plane);
    if (!is_of_the_wall(log, log.zero)) check_corner(path + ".zero", log, log.zero);
    check_corner(path + ".butt", log, log.butt);
}

void Names::check_log(std::size_t index) {
    const FoundLog &log = record_.logs[index];
    check_tag(index);
    check_sheet(log_path(index), log.sheet);
    check_ends(index);
    for (const std::string &other : log.scarfed_to)
        check_other(log_path(index) + ".scarfed_to", index, other);
    if (!log.replaces.empty()) check_other(log_path(index) + ".replaces", index, log.replaces);
}

/// What only one log says it was cut from may be a slip of the pen.
void Names::check_cut_up() {
    std::map<std::string, int> said_by;
    for (const FoundLog &log : record_.logs)
        if (!log.cut_from.empty()) ++said_by[log.cut_from];
    for (std::size_t i = 0; i < record_.logs.size(); ++i) {
        const std::string &whole = record_.logs[i].cut_from;
        if (!whole.empty() && said_by[whole] == 1 && !logs_.contains(whole))
            tell(log_path(i) + ".cut_from",
                 said("no other log says that it was cut from %1, and none is called so: "
                      "look whether the name is the same in its other pieces",
                      whole));
    }
}

bool Names::belong_together(const FoundLog &a, const FoundLog &b) const {
    const auto names = [](const FoundLog &log, const std::string &tag) {
        return log.replaces == tag || std::ranges::find(log.scarfed_to, tag) != log.scarfed_to.end();
    };
    return names(a, b.tag) || names(b, a.tag) || (!a.cut_from.empty() && a.cut_from == b.cut_from);
}

/// A timber of a floor lies in no wall's round.
void Names::check_timber(std::size_t index, std::map<std::string, std::size_t> &taken) {
    const FoundLog &log = record_.logs[index];
    if (!log.place.wall.empty() || log.place.round)
        refuse(log_path(index) + ".timber",
               said("log %1 is told to be timber %2 of a floor, and to lie in a wall: one of the two is "
                    "wrong",
                    log.tag, log.place.timber));
    const auto [before, first] = taken.emplace(log.place.timber, index);
    if (first || belong_together(log, record_.logs[before->second])) return;
    tell(log_path(index),
         said("logs %1 and %2 are both told to be timber %3: say which replaces or is scarfed to which",
              record_.logs[before->second].tag, log.tag, log.place.timber));
}

void Names::check_places() {
    std::map<std::tuple<std::string, int, std::optional<int>>, std::size_t> taken;
    std::map<std::string, std::size_t> timbers;
    for (std::size_t i = 0; i < record_.logs.size(); ++i) {
        const FoundLog &log = record_.logs[i];
        if (!log.place.timber.empty()) check_timber(i, timbers);
        if (log.place.wall.empty() || !log.place.round) continue;
        const auto [before, first] =
            taken.emplace(std::tuple(log.place.wall, *log.place.round, log.place.piece), i);
        if (first || belong_together(log, record_.logs[before->second])) continue;
        tell(log_path(i),
             said("log %1 lies where log %2 lies, in wall %3, round %4: say which piece each is, or which "
                  "replaces or is scarfed to which",
                  log.tag, record_.logs[before->second].tag, log.place.wall, *log.place.round));
    }
}

} // namespace

void tell_wrong_names(const Record &record, std::vector<RecordProblem> &problems) {
    Names(record, problems).check();
}

} // namespace roundlay
