// What was found soft, rotten or missing and stays in a log by what is decided and drawn.
#include "kernel/fabric/along_log.h"
#include "kernel/fabric/fabric.h"
#include "kernel/fabric/standing.h"
#include "kernel/measured/found_piece.h"
#include "kernel/measured/house_numbers.h"
#include "kernel/measured/measured_shell.h"
#include "kernel/record/found_words.h"
#include "kernel/record/numbers.h"

#include <algorithm>
#include <cmath>

namespace roundlay {

namespace {

bool is_harm(Soundness what) {
    return what == Soundness::soft || what == Soundness::rotten || what == Soundness::missing;
}

FoundFace face_of(LogSide side) {
    switch (side) {
    case LogSide::outside:
        return FoundFace::outside;
    case LogSide::inside:
        return FoundFace::inside;
    case LogSide::top:
        return FoundFace::top;
    case LogSide::under:
        break;
    }
    return FoundFace::under;
}

/// What one mend takes out of a log over a part of its length.
struct Taken {
    AlongWall part;   ///< in the wall's own x
    bool all = false; ///< the whole section
    FoundFace face = FoundFace::outside;
    double depth = 0; ///< from that face
};

/// The parts of `whole` that no `taken` covers, from left to right.
std::vector<AlongWall> left_of(const AlongWall &whole, std::vector<AlongWall> taken) {
    std::ranges::sort(taken, {}, &AlongWall::from);
    std::vector<AlongWall> left;
    double at = whole.from;
    for (const AlongWall &part : taken) {
        if (part.from - at > told_from) left.push_back({at, std::min(part.from, whole.to)});
        at = std::max(at, part.to);
        if (at >= whole.to) return left;
    }
    if (whole.to - at > told_from) left.push_back({at, whole.to});
    return left;
}

class HarmLeft {
  public:
    HarmLeft(const Record &record, const Shell &shell, const Layout &now, const Layout &found)
        : record_(record), shell_(shell), now_(now), found_(found) {}

    std::vector<DecisionProblem> problems() {
        for (std::size_t i = 0; i < record_.logs.size(); ++i) {
            const FoundLog &log = record_.logs[i];
            if (log.decisions.empty() || !stays(log.decisions.back().what) || is_gone(log)) continue;
            ask(i, log);
        }
        return std::move(problems_);
    }

  private:
    void ask(std::size_t index, const FoundLog &log) {
        const bool is_mended = log.decisions.back().what == Decision::mend;
        const auto mends = is_mended ? taken_out(log) : std::vector<Taken>();
        if (is_mended && mends.empty()) return; // that nothing is mended is told of the log as a whole
        for (std::size_t i = 0; i < log.zones.size(); ++i) {
            const ConditionZone &zone = log.zones[i];
            if (!is_harm(zone.what)) continue;
            const std::string path = log_path(index) + ".zone[" + std::to_string(i) + "]";
            is_mended ? hold(log, zone, mends, path) : ask_whether_it_stays(log, zone, path);
        }
    }

    /// "rotten from 1200 mm to 1900 mm", "rotten"
    static Said words_of(const ConditionZone &zone) {
        const bool from = zone.from.value.has_value(), to = zone.to.value.has_value();
        if (from && to)
            return said("%1 from %2 to %3", said_of(zone.what), in_mm(zone.from.value->mm()),
                        in_mm(zone.to.value->mm()));
        if (from) return said("%1 from %2 on", said_of(zone.what), in_mm(zone.from.value->mm()));
        if (to) return said("%1 up to %2", said_of(zone.what), in_mm(zone.to.value->mm()));
        return said_of(zone.what);
    }

    void ask_whether_it_stays(const FoundLog &log, const ConditionZone &zone, const std::string &path) {
        problems_.push_back({path,
                             said("log %1 is decided “%2”, and was found %3: is that meant to stay in it?",
                                  log.tag, said_of(log.decisions.back().what), words_of(zone)),
                             Weight::note});
    }

    /// By all mends of the log that it is in this state.
    std::vector<Taken> taken_out(const FoundLog &log) const {
        std::vector<Taken> all;
        for (const Index<Piece> was : pieces_at(found_, log.place))
            for (const Index<Piece> is : standing_as(found_, was, now_))
                for (const Index<Piece> comes : new_wood_in(now_.pieces, is))
                    add_taken(all, shell_.mends[now_.pieces[comes].mended.front()], now_.pieces[comes],
                              now_.pieces[is]);
        return all;
    }

    void add_taken(std::vector<Taken> &all, const Mend &mend, const Piece &comes, const Piece &log) const {
        const AlongWall part = along_wall(now_.walls, comes);
        const double depth = mend.depth ? mend.depth->mm() : depth_of(mend, log) / 2;
        if (mend.kind != MendKind::splice) {
            all.push_back({part, depth >= depth_of(mend, log), face_of(mend.face), depth});
            return;
        }
        const double lap = mend.lap ? mend.lap->mm() : 0;
        const bool left = mend.end == LogEnd::left;
        const double meets = left ? part.to - lap : part.from + lap;
        all.push_back({left ? AlongWall{part.from, meets} : AlongWall{meets, part.to}, true});
        all.push_back({left ? AlongWall{meets, part.to} : AlongWall{part.from, meets}, false,
                       face_of(mend.face), depth});
    }

    /// Of the log across the face that the mend opens to.
    static double depth_of(const Mend &mend, const Piece &log) {
        const bool side = mend.face == LogSide::outside || mend.face == LogSide::inside;
        return side ? log.blank.width : log.blank.height;
    }

    void hold(const FoundLog &log, const ConditionZone &zone, const std::vector<Taken> &mends,
              const std::string &path) {
        const auto run = run_of(record_, found_, log);
        const auto whole = run ? stretch_of(*run, zone) : std::nullopt;
        if (!whole) return; // where it lies nobody knows, which is told
        std::vector<AlongWall> along;
        for (const Taken &mend : mends)
            along.push_back(mend.part);
        if (const auto left = left_of(*whole, along); !left.empty())
            return tell_along(log, zone, *run, left, path);
        hold_depth(log, zone, *run, *whole, mends, path);
    }

    static std::optional<AlongWall> stretch_of(const LogRun &run, const ConditionZone &zone) {
        if ((zone.from.is_taken() && !zone.from.value) || (zone.to.is_taken() && !zone.to.value)) return {};
        const double near = run.zero_at_left ? run.log.from : run.log.to,
                     away = run.zero_at_left ? run.log.to : run.log.from;
        const double a = zone.from.value ? run.place(zone.from.value->mm()) : near,
                     b = zone.to.value ? run.place(zone.to.value->mm()) : away;
        const AlongWall stretch{std::max(run.log.from, std::min(a, b)), std::min(run.log.to, std::max(a, b))};
        return stretch.from < stretch.to ? std::optional(stretch) : std::nullopt;
    }

    void tell_along(const FoundLog &log, const ConditionZone &zone, const LogRun &run,
                    const std::vector<AlongWall> &left, const std::string &path) {
        double stays = 0;
        for (const AlongWall &part : left)
            stays += part.to - part.from;
        const double a = run.dimension(left.front().from), b = run.dimension(left.back().to);
        problems_.push_back(
            {path,
             said("log %1 was found %2, and of that its mends leave a length of %3 in it, between %4 and "
                  "%5 from %6: is that meant to stay?",
                  log.tag, words_of(zone), in_mm(stays), in_mm(std::min(a, b)), in_mm(std::max(a, b)),
                  log.zero)});
    }

    /// A zone that says how deep it goes, against the mends that reach so far in from one of its faces.
    void hold_depth(const FoundLog &log, const ConditionZone &zone, const LogRun &run, const AlongWall &whole,
                    const std::vector<Taken> &mends, const std::string &path) {
        const auto depth = taken(zone.depth);
        if (!depth) return;
        const auto opens_to_it = [&](const Taken &mend) {
            return zone.faces.empty() || std::ranges::find(zone.faces, mend.face) != zone.faces.end();
        };
        std::vector<AlongWall> deep;
        for (const Taken &mend : mends)
            if (mend.all || (opens_to_it(mend) && mend.depth > *depth - told_from)) deep.push_back(mend.part);
        const auto left = left_of(whole, deep);
        if (left.empty()) return;
        const double a = run.dimension(left.front().from), b = run.dimension(left.back().to);
        problems_.push_back(
            {path, said("log %1 was found %2, %3 deep, and its mends do not reach so deep there between "
                        "%4 and %5 from %6: is the rest meant to stay?",
                        log.tag, words_of(zone), in_mm(*depth), in_mm(std::min(a, b)), in_mm(std::max(a, b)),
                        log.zero)});
    }

    const Record &record_;
    const Shell &shell_;
    const Layout &now_, &found_;
    std::vector<DecisionProblem> problems_;
};

} // namespace

std::vector<DecisionProblem> harm_that_stays(const Record &record, const Shell &shell, const Layout &now,
                                             const Layout &found) {
    return HarmLeft(record, shell, now, found).problems();
}

} // namespace roundlay
